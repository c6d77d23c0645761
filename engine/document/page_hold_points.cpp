#include <algorithm>
#include <array>

#include "catalogue/series.hpp"
#include "document/page_parts.hpp"
#include "ground/findings.hpp"
#include "job/words.hpp"
#include "sheet/words.hpp"

namespace stringcourse {
namespace {

constexpr int kHoldPoints = 6;

// What is asked the day before, at each hold point.
constexpr std::array<std::array<std::string_view, 3>, kHoldPoints> kAsks{{
    {"Does every side close with whole units?", "Do heads and sills fall on course lines?",
     "Will the yard have the units?"},
    {"Where must each dowel stand so that it comes up inside a cell?", "Are the lines square and level?", ""},
    {"Is what was poured square, level and the right size?", "Where do the walls sit on it?",
     "Does every dowel come up in a cell?"},
    {"Do jambs, head course and the lintel's bearing agree?", "What holds the lintel up meanwhile?", ""},
    {"Is the right steel in the right cells?", "How high is each pour, and in what order?",
     "Are the cleanouts open and the cells clean?"},
    {"Are bolts in grouted cells, clear of trusses and splices?", "What size and level did the wall come to?", ""},
}};

std::string opening_name(const Opening& opening, std::size_t index) {
  return opening.name.empty() ? "opening " + number_text(index + 1) : opening.name;
}

void add_order(const Answer& answer, std::vector<Lack>& lacks) {
  if (answer.job.name.empty())
    lacks.push_back({HoldPoint::Order, "The job has no name; sheets are told apart by it.", "/name"});
  if (!answer.job.units.stocked) {
    lacks.push_back({HoldPoint::Order,
                     "What the yard stocks is not said: every kind that the series is made in is counted on.",
                     "/units"});
  }
  for (const Series& series : answer.building.series) {
    if (!series.cells_assumed) continue;
    lacks.push_back({HoldPoint::Order,
                     "The cells of the " + series.title + " are assumed: measure a block of the yard's.", "/units"});
  }
}

void add_pour(const Answer& answer, std::vector<Lack>& lacks) {
  if (!answer.job.steel.bars) {
    lacks.push_back(
        {HoldPoint::Pour,
         "No upright bars are asked for: size and spacing come from your drawings, the local code or an engineer.",
         "/steel"});
  }
  if (!answer.job.setting_out)
    lacks.push_back({HoldPoint::Pour,
                     "Boards, footing and line are not said (setting_out in the job): no setting-out card is printed.",
                     ""});
  if (answer.found.tape.lines.empty()) {
    lacks.push_back({HoldPoint::Pour, "Lines and boards: no readings of sides and diagonals yet.", "/readings"});
  }
}

/// Lines still to be taped: "A to C and B to D".
std::string lines_text(const Answer& answer) {
  std::vector<std::string> lines;
  for (const auto& [from, to] : answer.found.tape.missing) {
    lines.push_back(answer.building.corners[static_cast<std::size_t>(from)].name + " to " +
                    answer.building.corners[static_cast<std::size_t>(to)].name);
  }
  return ground::listed(lines);
}

void add_first_course(const Answer& answer, std::vector<Lack>& lacks) {
  const auto lack = [&](std::string text) { lacks.push_back({HoldPoint::FirstCourse, std::move(text), "/readings"}); };
  const ground::AsFound& found = answer.found;
  if (found.tape.lines.empty())
    lack("What was poured: no readings of sides and diagonals yet.");
  else if (!found.tape.missing.empty())
    lack("Sides and diagonals are not all read yet: tape " + lines_text(answer) + " too.");
  if (!found.tape.tape_again.empty()) lack("The tapings do not fit together: tape lines again before a peg is moved.");
  if (!found.levels)
    lack("No rod readings along the walls yet: the first bed is not known.");
  else if (!found.levels->bed)
    lack("The rod was not read on the footing or slab yet: read it at every corner.");
  if (!answer.dowels.empty() && answer.found_dowels.empty())
    lack("No dowel is measured yet: does each come up in a cell?");
  if (found.levels && found.levels->bed && !found.levels->bed->lacks.empty()) {
    const auto units = static_cast<std::size_t>(found.levels->bed->units_without);
    lack("The footing or slab under " + number_text(units) +
         " units of the first course is not read: read the rod at " + ground::listed(found.levels->bed->lacks) +
         " too.");
  }
}

void add_lintels(const Answer& answer, std::vector<Lack>& lacks) {
  for (std::size_t index = 0; index < answer.job.openings.size(); ++index) {
    if (answer.job.openings[index].lintel || index >= answer.building.openings.size()) continue;
    if (!answer.building.openings[index].lintel) continue;
    lacks.push_back({HoldPoint::Lintels,
                     "The lintel of " + opening_name(answer.job.openings[index], index) +
                         " is not said: one built of units, one course deep, is drawn. Its steel comes from an "
                         "engineer or the local code.",
                     "/openings/" + number_text(index)});
  }
}

void add_grout(const Answer& answer, std::vector<Lack>& lacks) {
  if (answer.job.steel.bars && answer.job.steel.pour_tops.empty()) {
    lacks.push_back({HoldPoint::Grout,
                     "Where grout pours stop is not said, so whether cleanouts are needed is not known.", "/steel"});
  }
}

void add_top(const Answer& answer, std::vector<Lack>& lacks) {
  const int top = static_cast<int>(answer.building.courses.size());
  if (std::ranges::find(answer.job.steel.bond_beams, top) == answer.job.steel.bond_beams.end()) {
    lacks.push_back(
        {HoldPoint::Top, "The top course is no bond beam: what the plate bolts into is not said.", "/steel"});
  }
  lacks.push_back({HoldPoint::Top, "The wall's size and level as laid: no readings yet.", ""});
}

}  // namespace

std::vector<Lack> lacks_of(const Answer& answer) {
  std::vector<Lack> lacks;
  add_order(answer, lacks);
  add_pour(answer, lacks);
  add_first_course(answer, lacks);
  add_lintels(answer, lacks);
  add_grout(answer, lacks);
  add_top(answer, lacks);
  return lacks;
}

void write_hold_points(JsonOut& out, const Answer& answer) {
  const std::vector<Lack> lacks = lacks_of(answer);
  out.list([&] {
    for (int point = 1; point <= kHoldPoints; ++point) {
      const HoldPoint hold_point = static_cast<HoldPoint>(point);
      out.object([&] {
        out.field("code", hold_point_name(hold_point));
        out.field("title", sheet::kEnglish.hold_points[point - 1]);
        out.list("asks", [&] {
          for (const std::string_view question : kAsks[static_cast<std::size_t>(point - 1)]) {
            if (!question.empty()) out.text(question);
          }
        });
        out.list("lacks", [&] {
          for (const Lack& lack : lacks) {
            if (lack.hold_point != hold_point) continue;
            out.object([&] {
              out.field("text", lack.text);
              out.field("place", lack.place);
            });
          }
        });
      });
    }
  });
}

}  // namespace stringcourse
