// Lintels on the printed sets: what they say against a walk over the pieces and bars of the layout.
#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <set>

#include "measure/notation.hpp"
#include "print/solved_examples.hpp"

namespace stringcourse::print_test {
namespace {

using paper::Paper;
using paper::Sheet;

Length start_of(const Piece& piece) { return piece.start.nearest_nanometre(); }
Length end_of(const Piece& piece) { return start_of(piece) + piece.length; }

/// All lettering of the sheets of one title, as one text.
std::string text_under(const std::vector<Sheet>& sheets, const std::string& title) {
  std::string all;
  for (const Sheet& sheet : sheets) {
    if (!sheet.title.starts_with(title)) continue;
    for (const std::string& text : texts_of(sheet)) all += text + "\n";
  }
  return all;
}

/// One column of the tables of one title, its lines as one text.
std::string column_under(const std::vector<Sheet>& sheets, const std::string& title, std::size_t column) {
  std::string all;
  for (const Sheet& sheet : sheets) {
    if (!sheet.title.starts_with(title)) continue;
    visit_groups(sheet.groups, [&](const paper::Group& group) {
      if (group.role != paper::Role::TableRow || group.groups.size() <= column) return;
      for (const paper::Text& text : group.groups[column].texts) all += text.text + " ";
    });
  }
  return all;
}

bool is_lintel_kind(UnitKind kind) { return kind == UnitKind::Lintel || kind == UnitKind::LintelHalf; }

/// From both jambs outward, over as many pieces of lintel kind as stand side by side: the bearings as laid.
std::pair<Length, Length> walked(const Layout& layout, const ResolvedOpening& opening) {
  const Length from = opening.from.distance_from_start(), to = opening.to.distance_from_start();
  Length first = from, last = to;
  for (const stringcourse::Run& run : layout.runs) {
    if (run.wall != opening.wall || run.course != opening.lintel->first_course || run.end <= from || run.start >= to)
      continue;
    std::vector<const Piece*> pieces;
    for (std::uint32_t p = 0; p < run.piece_count; ++p) pieces.push_back(&layout.pieces[run.first_piece + p]);
    std::size_t over = 0;
    while (end_of(*pieces[over]) <= from) ++over;
    for (std::size_t k = over; k < pieces.size() && is_lintel_kind(pieces[k]->kind); ++k) last = end_of(*pieces[k]);
    for (std::size_t k = over; is_lintel_kind(pieces[k]->kind); --k) {
      first = start_of(*pieces[k]);
      if (k == 0) break;
    }
    if (start_of(*pieces[over]) >= from && over > 0 && is_lintel_kind(pieces[over - 1]->kind))
      first = start_of(*pieces[over - 1]);
  }
  return {from - first, last - to};
}

// The yards of the examples stock lintel units (all but the wash stand's, which has no opening): each lintel of units
// ends with its last lintel unit.
TEST(Lintels, BearAsTheirUnitsLieAndSayWhatWasAsked) {
  int seen = 0;
  for (const Solved& solved : solved_examples()) {
    SCOPED_TRACE(solved.name);
    const Building& building = solved.answer.building;
    const auto sheets = solved.sheets(Paper::Letter);
    for (const PlacedLintel& placed : solved.answer.layout.lintels) {
      const ResolvedOpening& opening = building.openings[static_cast<std::size_t>(placed.opening)];
      if (opening.lintel->make != LintelMake::BuiltUp) continue;
      SCOPED_TRACE(opening.name);
      const Wall& wall = building.walls[static_cast<std::size_t>(opening.wall)];
      const auto [start, end] = walked(solved.answer.layout, opening);
      EXPECT_EQ(placed.start_bearing, start);
      EXPECT_EQ(placed.end_bearing, end);
      const std::string schedule = column_under(sheets, "Opening schedule", 5);
      const auto says = [&](Length bearing, const std::string& toward) {
        return schedule.find("bears " + tape_text(bearing, building.tape) + " toward " + toward) != std::string::npos;
      };
      EXPECT_TRUE(says(start, wall.start_name));
      EXPECT_TRUE(says(end, wall.end_name));
      EXPECT_NE(schedule.find("asked: " + tape_text(opening.lintel->least_bearing, building.tape)), std::string::npos);
      ++seen;
    }
  }
  EXPECT_GE(seen, 15);
}

/// Every bar against every unit of its wall's courses: where a lintel unit stands over it.
std::multiset<std::string> floors_of(const Building& building, const Layout& layout) {
  std::multiset<std::string> places;
  for (const PlacedBar& bar : layout.bars) {
    for (const stringcourse::Run& run : layout.runs) {
      if (run.wall != bar.wall || run.course < bar.first_course || run.course > bar.last_course) continue;
      for (std::uint32_t p = 0; p < run.piece_count; ++p) {
        const Piece& piece = layout.pieces[run.first_piece + p];
        if (!is_lintel_kind(piece.kind) || bar.centre <= start_of(piece) || bar.centre >= end_of(piece)) continue;
        places.insert(building.walls[static_cast<std::size_t>(run.wall)].name + "-" + std::to_string(run.course) + "-" +
                      std::to_string(piece.number));
      }
    }
  }
  return places;
}

// No lintel of the examples reaches a corner, so that a walk over each bar's own wall meets every unit over it.
TEST(Lintels, EveryBarUnderALintelUnitIsListedMarkedAndFound) {
  std::size_t seen = 0;
  for (const Solved& solved : solved_examples()) {
    SCOPED_TRACE(solved.name);
    const Building& building = solved.answer.building;
    const auto sheets = solved.sheets(Paper::Letter);
    const std::multiset<std::string> floors = floors_of(building, solved.answer.layout);
    std::multiset<std::string> listed;
    std::size_t triangles = 0;
    for (const Sheet& sheet : sheets) {
      const bool elevation = sheet.title.starts_with("Elevation");
      visit_groups(sheet.groups, [&](const paper::Group& group) {
        if (group.role == paper::Role::TableRow && group.groups.size() == 6 && !group.groups[5].texts.empty() &&
            group.groups[5].texts[0].text == "break out its floor") {
          listed.insert(group.groups[2].texts.at(0).text);
        }
        for (const paper::Shape& shape : group.shapes)
          triangles += elevation && shape.points.size() == 3 && shape.fill == paper::Fill::Black;
      });
    }
    EXPECT_EQ(listed, floors);
    EXPECT_EQ(triangles, floors.size());
    std::string findings;
    for (const Finding& finding : solved.answer.findings)
      findings += finding.code == "lintel-floor" ? words::told(finding.says, {solved.answer.building.tape}) : "";
    for (const std::string& place : floors) EXPECT_NE(findings.find(place + " at "), std::string::npos) << place;
    if (!floors.empty())
      EXPECT_NE(text_under(sheets, "Summary").find(std::to_string(floors.size()) + " floors to break out"),
                std::string::npos);
    seen += floors.size();
  }
  EXPECT_GE(seen, 15u);
}

/// A shed: one side with a door, three without, a bond beam over the door or none.
std::string shed(const std::string& stocked, const std::string& beams) {
  return R"({"stringcourse": 1, "tape": "inches", "units": {"series": "us-8", "stocked": [)" + stocked + R"(]},
    "outline": {"closed": true, "sides": [{"from": "A", "to": "B", "length": "16'", "turn": "right"},
    {"from": "B", "to": "C", "length": "16'", "turn": "right"},
                {"from": "C", "to": "D", "length": "16'", "turn": "right"},
                {"from": "D", "to": "A", "length": "16'", "turn": "right"}]},
    "heights": {"courses": 12}, "steel": {"bond_beams": [)" +
         beams + R"(]},
    "openings": [{"name": "D1", "on": "AB", "place": {"from": "A", "at": "6'"},
                  "masonry": {"width": "4'", "height": "7'-4\""}}]})";
}

struct Spanned {
  std::map<UnitKind, int> over;  // the units over the door, by kind
  std::string findings, schedule;
};

Spanned spanned(const std::string& stocked, const std::string& beams) {
  const Solved solved = solved_job("shed", shed(stocked, beams));
  const ResolvedOpening& door = solved.answer.building.openings[0];
  Spanned is;
  for (const stringcourse::Run& run : solved.answer.layout.runs) {
    for (std::uint32_t p = 0; run.wall == 0 && run.course == 12 && p < run.piece_count; ++p) {
      const Piece& piece = solved.answer.layout.pieces[run.first_piece + p];
      if (end_of(piece) > door.from.distance_from_start() && start_of(piece) < door.to.distance_from_start())
        ++is.over[piece.kind];
    }
  }
  for (const Finding& finding : solved.answer.findings) is.findings += std::string(finding.code) + " ";
  is.schedule = column_under(solved.sheets(Paper::Letter), "Opening schedule", 5);
  return is;
}

// Course 12 is a bond beam too: what spans the door follows from what the yard stocks, not from that.
TEST(Lintels, WhatSpansAnOpeningIsWhatTheYardStocks) {
  const std::string plain = R"("full", "half", "corner")", beam = R"(, "bond-beam", "bond-beam-half")",
                    trough = R"(, "lintel", "lintel-half")";
  for (const std::string& beams : {"12", ""}) {
    SCOPED_TRACE(beams);
    const Spanned closed = spanned(plain + beam + trough, beams);
    for (const auto& [kind, count] : closed.over) EXPECT_TRUE(is_lintel_kind(kind)) << kind_name(kind) << count;
    EXPECT_EQ(closed.findings.find("lintel-soffit"), std::string::npos);

    const Spanned open = spanned(plain + beam, beams);
    for (const auto& [kind, count] : open.over)
      EXPECT_TRUE(kind == UnitKind::BondBeam || kind == UnitKind::BondBeamHalf) << kind_name(kind) << count;
    EXPECT_NE(open.findings.find("lintel-soffit"), std::string::npos);
    EXPECT_NE(open.schedule.find("open underneath"), std::string::npos);
    EXPECT_NE(open.schedule.find("soffit"), std::string::npos);

    const Spanned none = spanned(plain, beams);
    EXPECT_NE(none.findings.find("nothing-spans"), std::string::npos);
    EXPECT_NE(none.schedule.find("NOTHING SPANS IT"), std::string::npos);
  }
}

// The glaze store's four openings stand under its bond beam: 3 or 4 units over each, and what is ordered.
TEST(Lintels, OfTheGlazeStoreAreOrdered) {
  const Answer& answer = solved_example("glaze-store").answer;
  for (const ResolvedOpening& opening : answer.building.openings) {
    const auto [start, end] = walked(answer.layout, opening);
    EXPECT_GE(start, opening.lintel->least_bearing) << opening.name;
    EXPECT_GE(end, opening.lintel->least_bearing) << opening.name;
  }
  EXPECT_NE(text_under(solved_example("glaze-store").sheets(Paper::Letter), "Summary").find("lintel\n"),
            std::string::npos);
}

// Nobody in the job names such a date.
TEST(Lintels, NoSheetSpeaksOfADateToStripShores) {
  for (const Solved& solved : solved_examples()) {
    for (const Sheet& sheet : solved.sheets(Paper::Letter)) {
      EXPECT_FALSE(has_text(sheet, "strip date")) << sheet.title;
      if (!sheet.title.starts_with("Opening schedule")) continue;
      EXPECT_TRUE(has_text(sheet, "engineer")) << solved.name;
    }
  }
  EXPECT_EQ(words::kEnglish.caution_lintel.find("date"), std::string_view::npos);
}

}  // namespace
}  // namespace stringcourse::print_test
