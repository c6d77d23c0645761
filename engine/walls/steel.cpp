// Steel that belongs to courses: bond beams, wire, grout pours; and the rules for bars.
#include <algorithm>

#include "walls/draft.hpp"
#include "walls/resolve.hpp"

namespace stringcourse::walls {
namespace {

int course_count(const Draft& draft) { return static_cast<int>(draft.building.courses.size()); }

bool check_course(Draft& draft, int number, const std::string& place) {
  if (number >= 1 && number <= course_count(draft)) return true;
  refuse(draft, "course-range", place,
         joined({"Course ", count_text(number), " is not one of the ", count_text(course_count(draft)), " courses."}),
         joined({"Name a course from 1 to ", count_text(course_count(draft)), "."}));
  return false;
}

void resolve_beams(Draft& draft) {
  const std::vector<int>& beams = draft.job.steel.bond_beams;
  for (std::size_t i = 0; i < beams.size(); ++i) {
    if (!check_course(draft, beams[i], pointer("/steel/bond_beams", i))) continue;
    draft.building.courses[static_cast<std::size_t>(beams[i] - 1)].bond_beam = true;
  }
  for (const Course& course : draft.building.courses) {
    if (!course.bond_beam || !course.half_high) continue;
    find(draft, "bond-beam-half-high", "/steel/bond_beams",
         joined({"Course ", count_text(course.number), " is half-high and a bond beam: no bond-beam unit is made so. Cut the webs of "
                 "half-high units down for it, or put the beam in a whole course."}));
  }
  if (beams.empty() || is_stocked(draft.building, Kind::BondBeam)) return;
  find(draft, "bond-beam-not-stocked", "/steel/bond_beams",
       "The yard stocks no bond-beam units: whole units with their webs cut down stand in the beam courses.");
}

/// Wire lies in the bed on top of every n-th course; on top of the last there is none.
void resolve_wire(Draft& draft) {
  const std::optional<int>& every = draft.job.steel.wire_every;
  if (!every) return;
  if (*every < 1) {
    refuse(draft, "wire-every", "/steel/wire_every", joined({"Wire every ", count_text(*every), " courses."}),
           "State 1 or more.");
    return;
  }
  for (Course& course : draft.building.courses) {
    course.wire = course.number % *every == 0 && course.number < course_count(draft);
  }
}

/// Pour tops as stated, and the top of the wall after the last of them. Empty stays empty: not said.
void resolve_pours(Draft& draft) {
  const std::vector<int>& tops = draft.job.steel.pour_tops;
  for (std::size_t i = 0; i < tops.size(); ++i) {
    if (!check_course(draft, tops[i], pointer("/steel/pour_tops", i))) continue;
    if (!draft.building.pour_tops.empty() && tops[i] <= draft.building.pour_tops.back()) {
      refuse(draft, "pour-order", pointer("/steel/pour_tops", i),
             joined({"A pour stops at course ", count_text(tops[i]), " after one at course ",
                     count_text(draft.building.pour_tops.back()), "."}),
             "List the courses from the bottom up, each once.");
      continue;
    }
    draft.building.pour_tops.push_back(tops[i]);
  }
  if (!draft.building.pour_tops.empty() && draft.building.pour_tops.back() != course_count(draft)) {
    draft.building.pour_tops.push_back(course_count(draft));
  }
}

struct Pour {
  int first = 1;  // course
  Length height;
};

/// The pours from the bearing up; one where none are said.
std::vector<Pour> pours_of(const Draft& draft) {
  std::vector<int> tops = draft.building.pour_tops;
  if (tops.empty()) tops.push_back(course_count(draft));
  std::vector<Pour> pours;
  int first = 1;
  for (const int top : tops) {
    pours.push_back({first, laid_height(draft.building, first, top)});
    first = top + 1;
  }
  return pours;
}

void find_cleanouts(Draft& draft, const std::vector<Pour>& pours) {
  for (const Pour& pour : pours) {
    if (pour.height <= kTallestPourWithoutCleanouts) continue;
    draft.building.cleanout_courses.push_back(pour.first);
    find(draft, "cleanout-pour", "/steel/pour_tops",
         joined({"The grout pour from course ", count_text(pour.first), " up is ", say(draft, pour.height), " high, over ",
                 say(draft, kTallestPourWithoutCleanouts), ": every bar's cell has a cleanout in that course, in a corner's unit too."}),
         cited("cleanout-pour"), HoldPoint::Grout);
  }
}

/// The table's row for a pour of this height: the lowest that reaches it, else the highest.
const GroutSpace* grout_space(Grout grout, Length pour) {
  const GroutSpace* best = nullptr;
  const auto reaches = [&](const GroutSpace& row) { return row.pour_at_most >= pour; };
  for (const GroutSpace& row : grout_spaces()) {
    if (row.grout != grout) continue;
    const bool nearer = best && (reaches(row) ? !reaches(*best) || row.pour_at_most < best->pour_at_most
                                              : !reaches(*best) && row.pour_at_most > best->pour_at_most);
    if (!best || nearer) best = &row;
  }
  return best;
}

void set_common_opening(Draft& draft, BarRules& rules, Length tallest) {
  const GroutSpace* row = grout_space(rules.grout, tallest);
  if (!row) return;
  rules.common_across = row->across;
  rules.common_along = row->along;
  if (row->pour_at_most >= tallest) return;
  find(draft, "pour-too-tall", "/steel/pour_tops",
       joined({"A grout pour of ", say(draft, tallest), " is taller than the grout-space table goes (",
               say(draft, row->pour_at_most), "): stop the grout at more courses."}),
       row->source.text, HoldPoint::Grout);
}

std::string bar_names() {
  std::string names;
  for (const Bar& bar : catalogue_bars()) names += (names.empty() ? "" : ", ") + bar.name;
  return names;
}

void check_spacing(Draft& draft, const Bars& bars) {
  if (!bars.spacing) return;
  const Length pitch = draft.building.series.front().pitch();
  if (*bars.spacing < pitch) {
    refuse(draft, "bar-spacing", "/steel/bars/spacing",
           joined({"A bar spacing of ", say_asked(draft, *bars.spacing), " is less than that of the cells, ", say(draft, pitch), "."}),
           joined({"State ", say(draft, pitch), " or more."}));
    return;
  }
  if (bars.spacing->is_multiple_of(pitch)) return;
  const Length below = pitch * bars.spacing->whole_multiples(pitch);
  find(draft, "spacing-off-cells", "/steel/bars/spacing",
       joined({"A bar every ", say_asked(draft, *bars.spacing), " would fall on webs: cells come every ", say(draft, pitch), ". Bars stand in cells, never farther apart than asked; every ",
               say(draft, below), " and every ", say(draft, below + pitch), " fall on cells."}),
       {}, HoldPoint::Pour);
}

bool check_cells(Draft& draft) {
  bool all = true;
  for (std::size_t i = 0; i < draft.building.series.size(); ++i) {
    const Series& series = draft.building.series[i];
    if (series.grouts) continue;
    if (i == 0) {
      all = false;
      refuse(draft, "bars-no-cell", "/steel/bars",
             joined({"Bars are asked for, but ", series.id, " has no known cell that takes grout."}),
             "Leave the bars out, or choose a series with cells (or state the cells of your own).");
    } else {
      find(draft, "bars-no-cell", "/steel/bars", joined({"Walls of ", series.id, " take no bars: no known cell takes grout."}),
           {}, HoldPoint::Pour);
    }
  }
  return all;
}

void resolve_bar_rules(Draft& draft, const Bars& bars) {
  const Bar* bar = find_bar(bars.size);
  if (!bar) {
    refuse(draft, "bar-size", "/steel/bars/size", joined({"No bar is called ", quoted(bars.size), "."}),
           joined({"Name one of ", bar_names(), "."}));
  }
  check_spacing(draft, bars);
  if (!check_cells(draft) || !bar) return;
  BarRules rules;
  rules.size = bar->name;
  rules.diameter = bar->diameter;
  rules.grout = bars.grout.value_or(Grout::Coarse);
  rules.clearance = bar_clearance(rules.grout);
  rules.spacing = bars.spacing;
  const std::vector<Pour> pours = pours_of(draft);
  set_common_opening(draft, rules, std::ranges::max(pours, {}, &Pour::height).height);
  find_cleanouts(draft, pours);
  draft.building.bars = rules;
}

}  // namespace

void resolve_steel(Draft& draft) {
  if (draft.building.courses.empty()) return;
  resolve_beams(draft);
  resolve_wire(draft);
  resolve_pours(draft);
  if (draft.job.steel.bars) resolve_bar_rules(draft, *draft.job.steel.bars);
}

}  // namespace stringcourse::walls
