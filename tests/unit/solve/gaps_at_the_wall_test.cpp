// Closing gaps of a solved building, and the marks of its piers.
#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <optional>
#include <random>
#include <sstream>

#include "bond/layout_parts.hpp"
#include "job/read.hpp"
#include "laying/as_laid.hpp"
#include "solve/solve.hpp"

namespace stringcourse::laying {
namespace {

Job kiln_house() {
  std::ostringstream text;
  text << std::ifstream(std::string(STRINGCOURSE_ROOT) + "/examples/kiln-house.json").rdbuf();
  return *read_job(text.str());
}

LaidEntry gap_entry(const std::string& id, const std::string& on, int course, Length at, Length measured) {
  LaidEntry entry;
  entry.id = id;
  entry.gap = GapReading{on, course, at, measured};
  return entry;
}

Answer solved(std::vector<LaidEntry> log) {
  Job job = kiln_house();
  job.laid = std::move(log);
  return *solve(job, Wishes{});
}

std::int64_t start_of(const Piece& piece) { return piece.start.nearest_nanometre().in_nanometres(); }
std::int64_t end_of(const Piece& piece) { return start_of(piece) + piece.length.in_nanometres(); }

/// Centres of a course's head joints, from its pieces' faces, nanometres.
std::vector<std::int64_t> joints_of(const Answer& answer, int wall, int course) {
  std::vector<std::int64_t> centres;
  for (const stringcourse::Run& run : bond::runs_in(answer.layout, wall, course)) {
    const auto pieces = bond::pieces_of(answer.layout, run);
    for (std::size_t k = 1; k < pieces.size(); ++k)
      centres.push_back((end_of(pieces[k - 1]) + start_of(pieces[k])) / 2);
  }
  return centres;
}

TEST(Gaps, TwoCutsKeepAQuarterUnitFromTheJointsBelow) {
  // 17 1/8 in: two cuts of 8 in would put their joint over a joint of course 1 but for 3/8 in.
  const Answer answer =
      solved({gap_entry("g", "DA", 2, Length::sixteenths(71 * 16 + 10), Length::sixteenths(17 * 16 + 2))});
  ASSERT_EQ(answer.laid->gaps.size(), 1u);
  ASSERT_TRUE(answer.laid->gaps[0].closure);
  const Closure& closure = *answer.laid->gaps[0].closure;
  ASSERT_EQ(closure.pieces.size(), 2u);
  EXPECT_FALSE(closure.lost_over);
  const std::int64_t centre =
      (Length::sixteenths(71 * 16 + 10) + closure.joint + closure.pieces[0].length).in_nanometres() +
      closure.joint.in_nanometres() / 2;
  // A quarter of 15 5/8 in is 3 29/32 in.
  const std::int64_t quarter = Length::sixteenths(250).in_nanometres() / 4;
  for (const std::int64_t below : joints_of(answer, 3, 1)) EXPECT_GE(std::abs(below - centre), quarter) << below;
}

TEST(Gaps, WhereUnitsOfTheLayoutAreLeftOutTheyCloseAgainWithoutASawCut) {
  // Every one and every two neighbours of a course of whole and half units, taken out; the gap as their faces leave it.
  const Answer plain = solved({});
  std::vector<LaidEntry> log;
  std::vector<std::size_t> units;
  for (const int course : {1, 2, 5}) {
    for (std::size_t wall = 0; wall < plain.building.walls.size(); ++wall) {
      for (const stringcourse::Run& run : bond::runs_in(plain.layout, static_cast<int>(wall), course)) {
        const auto pieces = bond::pieces_of(plain.layout, run);
        for (std::size_t k = 1; k + 1 < pieces.size(); ++k) {
          for (std::size_t count = 1; count <= 2 && k + count < pieces.size(); ++count) {
            const auto taken = pieces.subspan(k, count);
            if (!std::ranges::all_of(
                    taken, [&](const Piece& one) { return one.cut == CutEnd::None && one.kind != UnitKind::Corner; }))
              continue;
            // Joints of 3/8 in; the tape reads sixteenths.
            const Length at = Length::nanometres(end_of(pieces[k - 1])),
                         end = Length::nanometres(start_of(pieces[k + count]));
            log.push_back(gap_entry(std::to_string(log.size()), plain.building.walls[wall].name, course, at, end - at));
            units.push_back(count);
          }
        }
      }
    }
  }
  const Answer answer = solved(log);
  ASSERT_EQ(answer.laid->gaps.size(), units.size());
  ASSERT_GT(units.size(), 100u);
  for (std::size_t k = 0; k < units.size(); ++k) {
    const GapAsLaid& gap = answer.laid->gaps[k];
    ASSERT_TRUE(gap.closure) << k;
    EXPECT_EQ(gap.closure->pieces.size(), units[k]) << k;
    EXPECT_FALSE(gap.closure->lost_over) << k;
    EXPECT_EQ(std::ranges::count(gap.closure->pieces, ClosurePiece::Kind::Cut, &ClosurePiece::kind), 0) << k;
  }
}

TEST(Gaps, InADoorwayNothingIsLaid) {
  // D1 of the kiln house begins 9'-4" from A and is 9 ft and more wide.
  const Answer answer = solved({gap_entry("g", "AB", 1, Length::feet(10), Length::sixteenths(16 * 16 + 6))});
  ASSERT_EQ(answer.laid->gaps.size(), 1u);
  EXPECT_FALSE(answer.laid->gaps[0].closure);
  ASSERT_GE(answer.laid->gaps[0].opening, 0);
  EXPECT_EQ(answer.building.openings[static_cast<std::size_t>(answer.laid->gaps[0].opening)].name, "D1");
  EXPECT_TRUE(std::ranges::contains(answer.findings, Code("gap-in-opening"), &Finding::code));
  // Over its head there is a wall again.
  const int over = answer.building.openings[0].last_course + 3;
  const Answer above = solved({gap_entry("g", "AB", over, Length::feet(10), Length::sixteenths(16 * 16 + 6))});
  EXPECT_TRUE(above.laid->gaps[0].closure);
}

/// A shed with two doorways 2'-8" apart: the pier between them is two units in every course.
Job two_doors() {
  return *read_job(R"({"stringcourse": 1, "name": "Slip shed", "tape": "inches", "units": {"series": "us-8"},
    "outline": {"closed": true, "sides": [
      {"from": "A", "to": "B", "length": "24'-0\"", "turn": "right"}, {"from": "B", "to": "C", "length": "12'-0\"", "turn": "right"},
      {"from": "C", "to": "D", "length": "24'-0\"", "turn": "right"}, {"from": "D", "to": "A", "length": "12'-0\"", "turn": "right"}]},
    "heights": {"courses": 12},
    "openings": [
      {"name": "D1", "on": "AB", "place": {"from": "A", "at": "5'-4\""}, "masonry": {"width": "3'-4\"", "height": "6'-8\""}},
      {"name": "D2", "on": "AB", "place": {"from": "A", "at": "11'-4\""}, "masonry": {"width": "3'-4\"", "height": "6'-8\""}}]})");
}

TEST(Piers, OfTwoUnitsTheSecondClosesAndItsEndIsTheJambOfTheNextDoorway) {
  const Answer answer = *solve(two_doors(), Wishes{});
  const HowLaid how = how_laid(answer.job, answer.building);
  int piers = 0;
  for (const int course : {1, 2, 3, 4}) {
    const CourseAsLaid read =
        course_as_laid(answer.job, answer.building, {answer.layout}, how, std::vector<bool>{}, 0, course);
    for (std::size_t run = 0; run < read.runs.size(); ++run) {
      if (read.runs[run].pieces != 2) continue;
      ++piers;
      std::vector<const WallMark*> ends;
      for (const WallMark& mark : read.marks) {
        if (mark.run == static_cast<int>(run)) ends.push_back(&mark);
      }
      ASSERT_EQ(ends.size(), 2u);
      EXPECT_FALSE(ends[0]->closes);
      EXPECT_TRUE(ends[1]->closes);
      // Where the pier starts the doorway before it ends: that far jamb is a mark of the course.
      EXPECT_TRUE(std::ranges::any_of(read.marks, [&](const WallMark& mark) {
        return mark.mark.kind == setout::MarkKind::FarJamb &&
               mark.mark.exact.nearest_nanometre() == read.runs[run].start;
      }));
    }
  }
  EXPECT_GT(piers, 0);
}

TEST(Piers, NoClosureEndsWhereADoorwayBegins) {
  // Of runs of three units and more: what closes lies between two that stand.
  const Answer answer = *solve(two_doors(), Wishes{});
  const HowLaid how = how_laid(answer.job, answer.building);
  for (int course = 1; course <= 8; ++course) {
    const CourseAsLaid read =
        course_as_laid(answer.job, answer.building, {answer.layout}, how, std::vector<bool>{}, 0, course);
    for (const WallMark& mark : read.marks) {
      if (!mark.closes || read.runs[static_cast<std::size_t>(mark.run)].pieces <= 2) continue;
      EXPECT_LT(mark.mark.exact.nearest_nanometre(), read.runs[static_cast<std::size_t>(mark.run)].end) << course;
    }
  }
}

TEST(Marks, NoneLiesBehindTheWallsStartOrBeyondItsEnd) {
  // Where the tape is hooked it reads zero: it cannot read less.
  for (const char* name :
       {"clay-store", "drying-shed", "glaze-store", "hillside-shed", "kiln-house", "pug-mill-shop", "wash-stand"}) {
    std::ostringstream text;
    text << std::ifstream(std::string(STRINGCOURSE_ROOT) + "/examples/" + name + ".json").rdbuf();
    const Answer answer = *solve(*read_job(text.str()), Wishes{});
    for (std::size_t wall = 0; wall < answer.building.walls.size(); ++wall) {
      for (std::size_t course = 1; course <= answer.building.courses.size(); ++course) {
        for (const setout::Mark& mark :
             setout::running_marks(answer.building, answer.layout, static_cast<int>(wall), static_cast<int>(course))) {
          EXPECT_GE(mark.at, Length()) << name << " " << answer.building.walls[wall].name << " " << course;
        }
      }
    }
  }
}

}  // namespace
}  // namespace stringcourse::laying
