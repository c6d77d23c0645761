#include "solve/as_built.hpp"

#include <algorithm>
#include <array>
#include <expected>
#include <optional>
#include <set>
#include <utility>

#include "bond/assemble.hpp"
#include "bond/layout_parts.hpp"
#include "job/words.hpp"
#include "laying/as_laid.hpp"
#include "solve/changes.hpp"
#include "solve/found_places.hpp"
#include "walls/resolve.hpp"

namespace stringcourse {
namespace {

template <typename List>
auto& at(List& list, int index) {
  return list[static_cast<std::size_t>(index)];
}

/// Control joints stand in the courses laid and in the concrete's own joints: a rule does not move them any more.
void keep_control_joints(Job& job, const Building& planned) {
  if (job.control_joints.rule.value_or(JointRule::None) == JointRule::None) return;
  job.control_joints.rule = JointRule::None;
  for (const ControlJoint& joint : planned.control_joints) {
    if (!joint.by_rule) continue;
    const Wall& wall = at(planned.walls, joint.wall);
    const StatedLength from{joint.from.distance_from_start(), Basis::Actual};
    job.control_joints.placed.push_back({wall.name, {wall.interior ? "start" : wall.start_name, from, Face::Near}});
  }
}

/// Courses laid from the bottom up without a gap, by wall.
std::vector<int> laid_courses(const Job& job, const Building& building) {
  const std::vector<bool> counts = laying::entries_that_count(job);
  std::set<std::pair<int, int>> laid;
  for (std::size_t k = 0; k < job.laid.size(); ++k) {
    const auto& one = job.laid[k].laid;
    if (counts[k] && one) laid.emplace(laying::wall_named(building, one->on), one->course);
  }
  std::vector<int> to(building.walls.size(), 0);
  for (std::size_t wall = 0; wall < to.size(); ++wall) {
    while (laid.contains({static_cast<int>(wall), to[wall] + 1})) ++to[wall];
    to[wall] = std::min(to[wall], static_cast<int>(building.courses.size()));
  }
  return to;
}

/// Whether a bar may be kept there: masonry of the wall as it is now.
bool is_masonry(const Building& building, int wall, Length along) {
  const Position place = Position::from_start(along);
  return along > Length() && along < at(building.walls, wall).actual &&
         std::ranges::none_of(
             building.openings,
             [&](const ResolvedOpening& opening) {
               return opening.wall == wall && opening.from < place && place < opening.to;
             });
}

/// Which dowels the bars are kept over.
enum class KeptBars { All, OnOtherWalls, None };

/// What was found, ready to be laid.
struct Site {
  const Job& job;  // the user's
  const Building& planned;
  const Layout& printed;
  Job changed;            // with what was found
  Building building;      // of it
  std::set<int> walls;    // on which something was found
  std::vector<int> laid;  // by wall, as the log says

  bool is_kept(const PlacedBar& bar, KeptBars bars) const {
    const bool other = !walls.contains(bar.wall);
    return bar.reason != BarReason::Corner && bar.first_course == 1 && (bars == KeptBars::All || other) &&
           is_masonry(building, bar.wall, bar.centre);
  }
};

/// The dowels stand in the concrete: their bars stay over them. A corner's goes with its corner.
Job with_bars(const Site& site, KeptBars bars) {
  Job job = site.changed;
  if (!job.steel.bars || bars == KeptBars::None) return job;
  std::erase_if(job.steel.bars->dimensioned, [&](const DimensionedBar& bar) {
    return bars == KeptBars::All || !site.walls.contains(laying::wall_named(site.planned, bar.on));
  });
  for (const PlacedBar& bar : site.printed.bars) {
    if (!site.is_kept(bar, bars)) continue;
    const Wall& wall = at(site.planned.walls, bar.wall);
    Reading reading;
    const Length middle = site.planned.series_of(wall).thickness.half_down();
    reading.id = "as poured " + number_text(job.readings.size()) + ": " + wall.name;
    reading.dowel = DowelReading{wall.name, std::nullopt, bar.centre, middle};
    job.steel.kept_dowels.push_back(reading.id);
    job.readings.push_back(std::move(reading));
  }
  return job;
}

/// Courses laid stand at the jambs that they were laid to; and what a frame asks for is still what it asked for.
void stand_as_laid(Building& building, const Building& planned, const std::vector<int>& laid) {
  building.laid_to = laid;
  for (std::size_t k = 0; k < building.openings.size() && k < planned.openings.size(); ++k) {
    ResolvedOpening& opening = building.openings[k];
    const ResolvedOpening& was = planned.openings[k];
    opening.use = was.use, opening.asked_width = was.asked_width, opening.asked_height = was.asked_height;
    opening.packing_each_side = (opening.width() - was.asked_width).half_down();
    opening.packing_head = opening.height() - was.asked_height;
    if (opening.from == was.from && opening.to == was.to) continue;
    opening.laid_courses = at(laid, opening.wall), opening.laid_from = was.from, opening.laid_to = was.to;
  }
}

/// Openings that what goes into them no longer fits.
void find_too_narrow(const Building& building, std::vector<Finding>& findings) {
  for (const ResolvedOpening& opening : building.openings) {
    const Length lacks = opening.asked_width - opening.width();
    if (lacks <= Length()) continue;
    findings.push_back({"opening-too-narrow", opening.place,
                        fact("opening-too-narrow", {opening.name, opening.width(), lacks}), std::string(kFoundRule),
                        HoldPoint::FirstCourse});
  }
}

/// Courses laid have the very units that they were laid with, whatever stands over them now.
void keep_kinds(const Building& building, const Layout& printed, Layout& layout) {
  for (const Run& run : layout.runs) {
    if (run.course > at(building.laid_to, run.wall)) continue;
    for (const Run& before : bond::runs_in(printed, run.wall, run.course)) {
      if (before.start != run.start || before.piece_count != run.piece_count) continue;
      for (std::uint32_t k = 0; k < run.piece_count; ++k) {
        layout.pieces[run.first_piece + k].kind = printed.pieces[before.first_piece + k].kind;
      }
    }
  }
}

struct Laid {
  Job job;
  Building building;
  Layout layout;
  KeptBars bars = KeptBars::All;
  int up = 0;  // courses taken up on the walls on which something was found
};

/// With the top `up` courses of those walls taken up: as many bars over their dowels as lay.
std::optional<Laid> lay(const Site& site, int up, bond::PanelMemo& memo) {
  std::vector<int> laid = site.laid;
  for (const int wall : site.walls) at(laid, wall) = std::max(0, at(laid, wall) - up);
  for (const KeptBars bars : {KeptBars::All, KeptBars::OnOtherWalls, KeptBars::None}) {
    Job job = with_bars(site, bars);
    auto building = resolve(job);
    if (!building) continue;
    stand_as_laid(*building, site.planned, laid);
    Layout layout = bond::lay_out_from(site.printed, *building, memo);
    if (!layout.stopped.empty() || layout.cost.conceded > site.printed.cost.conceded) continue;
    keep_kinds(*building, site.printed, layout);
    return Laid{std::move(job), *std::move(building), std::move(layout), bars, up};
  }
  return std::nullopt;
}

/// The fewest courses taken up that lay; where none do, as it is, stopped.
Laid laid_out(const Site& site, bond::PanelMemo& memo) {
  if (auto kept = lay(site, 0, memo)) return *std::move(kept);
  int most = 0;
  for (const int wall : site.walls) most = std::max(most, at(site.laid, wall));
  auto best = most > 0 ? lay(site, most, memo) : std::nullopt;
  if (!best) {
    Building building = site.building;
    stand_as_laid(building, site.planned, site.laid);
    return {site.changed, building, bond::lay_out_from(site.printed, building, memo), KeptBars::None, 0};
  }
  for (int low = 1; low < best->up;) {
    const int middle = low + (best->up - low) / 2;
    if (auto fewer = lay(site, middle, memo)) best = std::move(fewer);
    else low = middle + 1;
  }
  return *std::move(best);
}

void say_taken_up(const Site& site, const Laid& laid, std::size_t entry, std::vector<Finding>& findings) {
  std::vector<Fact> courses;
  for (const int wall : site.walls) {
    const int first = at(laid.building.laid_to, wall) + 1, last = at(site.laid, wall);
    if (first > last) continue;
    const std::string& name = at(site.planned.walls, wall).name;
    courses.push_back(first == last ? fact("course-of-wall", {name, first})
                                    : fact("courses-of-wall", {name, first, last}));
  }
  findings.push_back({"laid-courses-do-not-fit", "/laid/" + number_text(entry),
                      fact("laid-courses-do-not-fit", {listed(FactValue::Kind::Commas, courses)}),
                      std::string(kFoundRule), HoldPoint::FirstCourse});
}

void say_bars(KeptBars bars, std::size_t entry, std::vector<Finding>& findings) {
  findings.push_back({"bars-do-not-fit", "/laid/" + number_text(entry),
                      fact(bars == KeptBars::None ? "bars-do-not-fit" : "bars-of-walls-do-not-fit"),
                      std::string(kFoundRule), HoldPoint::FirstCourse});
}

/// What was found, applied one by one; what cannot be built on is said.
std::vector<FoundHere> apply(Site& site, const std::vector<FoundHere>& places, std::vector<Finding>& findings) {
  std::vector<FoundHere> applied;
  for (const FoundHere& here : places) {
    const auto say = [&](const Fact& why) {
      findings.push_back({"found-place-not-built", "/laid/" + number_text(here.entry),
                          fact("found-place-not-built", {found_said(site.planned, here), why}), std::string(kFoundRule),
                          HoldPoint::FirstCourse});
    };
    auto changed = with_found(site.changed, site.building, here);
    if (!changed) {
      say(changed.error());
      continue;
    }
    auto building = resolve(*changed);
    if (!building) {
      say(building.error().shown.front().reason);
      continue;
    }
    site.changed = *std::move(changed), site.building = *std::move(building);
    applied.push_back(here);
  }
  for (std::size_t wall = 0; wall < site.planned.walls.size(); ++wall) {
    if (site.planned.walls[wall].actual != site.building.walls[wall].actual) site.walls.insert(static_cast<int>(wall));
  }
  for (const FoundHere& here : applied) site.walls.insert(here.wall);
  return applied;
}

}  // namespace

Resolved solve_from_here(const Job& job, const Building& planned, const Layout& printed, bond::PanelMemo& memo) {
  Resolved resolved;
  const std::vector<FoundHere> places = found_places(job, planned, resolved.findings);
  if (places.empty() || !printed.stopped.empty()) return resolved;
  Site site{job, planned, printed, job, planned, {}, laid_courses(job, planned)};
  keep_control_joints(site.changed, planned);
  const std::vector<FoundHere> applied = apply(site, places, resolved.findings);
  if (applied.empty()) return resolved;
  Laid laid = laid_out(site, memo);
  if (laid.up > 0) say_taken_up(site, laid, applied.front().entry, resolved.findings);
  if (laid.bars != KeptBars::All && job.steel.bars) say_bars(laid.bars, applied.front().entry, resolved.findings);
  for (const FoundHere& here : applied) {
    if (here.at != here.planned)
      resolved.findings.push_back(place_finding(planned, laid.building, laid.building.laid_to, here));
  }
  find_too_narrow(laid.building, resolved.findings);
  Rebuilt found;
  found.laid_kept = laid.up == 0;
  found.job = std::move(laid.job), found.building = std::move(laid.building), found.layout = std::move(laid.layout);
  found.planned = planned, found.printed = printed;
  find_changes(job, found, resolved.findings);
  resolved.rebuilt = std::move(found);
  return resolved;
}

}  // namespace stringcourse
