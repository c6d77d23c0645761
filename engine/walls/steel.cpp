// Steel that belongs to courses: bond beams, wire, grout pours; and the rules for bars.
#include <algorithm>
#include <utility>

#include "catalogue/rules.hpp"
#include "walls/draft.hpp"
#include "walls/resolve.hpp"

namespace stringcourse::walls {
namespace {

int course_count(const Draft& draft) { return static_cast<int>(draft.building.courses.size()); }

bool check_course(Draft& draft, int number, const std::string& place) {
  if (number >= 1 && number <= course_count(draft)) return true;
  refuse(draft, "course-range", place, fact("course-range", {number, course_count(draft)}),
         fact("name-course-up-to", {course_count(draft)}));
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
    find(draft, "bond-beam-half-high", "/steel/bond_beams", fact("bond-beam-half-high", {course.number}));
  }
  if (beams.empty() || is_stocked(draft.building, UnitKind::BondBeam)) return;
  find(draft, "bond-beam-not-stocked", "/steel/bond_beams", fact("bond-beam-not-stocked"));
}

/// Wire lies in the bed on top of every n-th course; on top of the last there is none.
void resolve_wire(Draft& draft) {
  const std::optional<int>& every = draft.job.steel.wire_every;
  if (!every) return;
  if (*every < 1) {
    refuse(draft, "wire-every", "/steel/wire_every", fact("wire-every", {*every}), fact("state-one-or-more"));
    return;
  }
  for (Course& course : draft.building.courses) {
    course.wire = course.number % *every == 0 && course.number < course_count(draft);
  }
  if (std::ranges::any_of(draft.building.courses, &Course::wire)) return;
  find(draft, "wire-none", "/steel/wire_every",
       fact("wire-none", {*every, course_count(draft), course_count(draft) - 1}));
}

/// Pour tops as stated, and the top of the wall after the last of them. Empty stays empty: not said.
void resolve_pours(Draft& draft) {
  const std::vector<int>& tops = draft.job.steel.pour_tops;
  for (std::size_t i = 0; i < tops.size(); ++i) {
    if (!check_course(draft, tops[i], pointer("/steel/pour_tops", i))) continue;
    if (!draft.building.pour_tops.empty() && tops[i] <= draft.building.pour_tops.back()) {
      refuse(draft, "pour-order", pointer("/steel/pour_tops", i),
             fact("pour-order", {tops[i], draft.building.pour_tops.back()}), fact("list-courses-upward"));
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
  const Length without = limit_of("cleanout-pour", draft.job.tape);
  for (const Pour& pour : pours) {
    if (pour.height <= without) continue;
    draft.building.cleanout_courses.push_back(pour.first);
    find(draft, "cleanout-pour", "/steel/pour_tops",
         fact("cleanout-pour", {pour.first, marked(pour.height), marked(without)}), "cleanout-pour", HoldPoint::Grout);
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
  find(draft, "pour-too-tall", "/steel/pour_tops", fact("pour-too-tall", {marked(tallest), marked(row->pour_at_most)}),
       "grout-space", HoldPoint::Grout);
}

FactValue bar_names() {
  std::vector<FactValue> names;
  for (const Bar& bar : catalogue_bars()) names.emplace_back(bar.name);
  return {FactValue::Kind::Commas, std::move(names)};
}

/// Bars of ASTM A615 are called by eighths of an inch, #5; all others are metric.
bool is_metric(const Bar& bar) { return !bar.name.starts_with('#'); }

/// A bar that yards which sell these blocks seldom have: a slip of a letter more often than a wish.
void find_other_system(Draft& draft, const Bar& bar, std::string_view place) {
  const bool metric = draft.building.series.front().tape == Tape::Millimetres;
  if (is_metric(bar) == metric) return;
  const Bar* nearest = nullptr;
  const auto off = [&](const Bar& one) { return magnitude(one.diameter - bar.diameter); };
  for (const Bar& one : catalogue_bars()) {
    if (is_metric(one) == metric && (nearest == nullptr || off(one) < off(*nearest))) nearest = &one;
  }
  if (nearest == nullptr) return;
  find(draft, "bar-other-system", std::string(place),
       fact(metric ? "bar-inch-in-metric" : "bar-metric-in-inch",
            {bar.name, draft.building.series.front().id, nearest->name}),
       {}, HoldPoint::Pour);
}

void check_size(Draft& draft, const std::string& size, std::string_view place) {
  if (const Bar* bar = find_bar(size)) {
    find_other_system(draft, *bar, place);
    return;
  }
  refuse(draft, "bar-size", std::string(place), fact("bar-size", {FactValue::typed(size)}),
         fact("name-one-of", {bar_names()}));
}

void check_spacing(Draft& draft, const Bars& bars) {
  if (!bars.spacing) return;
  const Length pitch = draft.building.series.front().pitch();
  if (*bars.spacing < pitch) {
    refuse(draft, "bar-spacing", "/steel/bars/spacing", fact("bar-spacing", {as_asked(*bars.spacing), marked(pitch)}),
           fact("state-or-more", {marked(pitch)}));
    return;
  }
  if (bars.spacing->is_multiple_of(pitch)) return;
  const Length below = pitch * bars.spacing->whole_multiples(pitch);
  find(draft, "spacing-off-cells", "/steel/bars/spacing",
       fact("spacing-off-cells", {as_asked(*bars.spacing), marked(pitch), marked(below), marked(below + pitch)}), {},
       HoldPoint::Pour);
}

bool check_cells(Draft& draft) {
  bool all = true;
  for (std::size_t i = 0; i < draft.building.series.size(); ++i) {
    const Series& series = draft.building.series[i];
    if (series.grouts) continue;
    if (i == 0) {
      all = false;
      refuse(draft, "bars-no-cell", "/steel/bars", fact("series-without-cells", {series.id}),
             fact("choose-series-with-cells"));
    } else {
      find(draft, "bars-no-cell", "/steel/bars", fact("walls-without-bars", {series.id}), {}, HoldPoint::Pour);
    }
  }
  return all;
}

void resolve_bar_rules(Draft& draft, const Bars& bars) {
  const Bar* bar = find_bar(bars.size);
  check_size(draft, bars.size, "/steel/bars/size");
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
  const Steel& steel = draft.job.steel;
  if (steel.bars) resolve_bar_rules(draft, *steel.bars);
  if (steel.beam_bars) check_size(draft, steel.beam_bars->size, "/steel/beam_bars/size");
  if (steel.lintel_bars) check_size(draft, steel.lintel_bars->size, "/steel/lintel_bars/size");
}

}  // namespace stringcourse::walls
