#include "bond/stops.hpp"

#include <algorithm>
#include <optional>
#include <utility>

#include "bond/search.hpp"

namespace stringcourse::bond {
namespace {

/// Whether a run of this length could be filled, by itself.
bool fills(const Panel& panel, const Row& row, RowRun run, std::int64_t longer) {
  Panel alone = panel;
  alone.bars.clear();
  alone.rows.assign(1, row);
  run.end += longer;
  if (run.end < run.start) return false;
  alone.rows[0].runs.assign(1, run);
  alone.rows[0].uncut_zones.clear();
  alone.rows[0].courses = {1};
  alone.course_rows = {0};
  return bound_panel(alone).has_value();
}

/// The smallest change of a run's length, in steps of the saw, that lets it be filled; within one unit.
std::optional<std::int64_t> least_change(const Panel& panel, const Row& row, const RowRun& run,
                                         std::int64_t direction) {
  std::int64_t longest = panel.cut_step;
  for (const PieceChoice& choice : row.choices) longest = std::max(longest, choice.length + panel.joint);
  for (std::int64_t change = panel.cut_step; change <= longest; change += panel.cut_step) {
    if (fills(panel, row, run, change * direction)) return change;
  }
  return std::nullopt;
}

Fact remedy_of(const Panel& panel, const Row& row, const RowRun& run) {
  const std::optional<std::int64_t> longer = least_change(panel, row, run, 1),
                                    shorter = least_change(panel, row, run, -1);
  if (longer && shorter)
    return fact("stop-mend-longer-or-shorter", {Length::nanometres(*longer), Length::nanometres(*shorter)});
  if (longer) return fact("stop-mend-longer", {Length::nanometres(*longer)});
  if (shorter) return fact("stop-mend-shorter", {Length::nanometres(*shorter)});
  return fact("stop-mend-move-beside");
}

/// The run can be filled, were it not for bars in it and bearings on it.
bool by_itself_fills(const Panel& panel, const PanelStop& stop) {
  const Row& row = panel.rows[static_cast<std::size_t>(stop.row)];
  return fills(panel, row, row.runs[static_cast<std::size_t>(stop.run)], 0);
}

/// A lintel of this stretch asked to bear a little more than a half unit, which then leaves too little for the unit
/// beside it: what to ask for instead. Else `remedy` alone.
Fact with_bearing(const Building& building, const PanelSite& site, Fact remedy) {
  const Series& series = building.series_of(building.walls[static_cast<std::size_t>(site.wall)]);
  for (const std::int32_t index : site.one_piece) {
    const ResolvedOpening& opening = building.openings[static_cast<std::size_t>(index)];
    const Length over = opening.lintel->least_bearing - series.half;
    if (over <= Length() || over > series.joint) continue;
    return fact("stop-mend-bearing-or", {series.half, opening.name, std::move(remedy)});
  }
  return remedy;
}

Stopped stop_by_rule(const Building& building, const PanelSite& site, const Panel& panel, const PanelStop& stop) {
  Stopped stopped;
  stopped.wall = site.wall;
  stopped.start = Length::nanometres(site.from);
  stopped.end = Length::nanometres(site.to);
  stopped.last_course = static_cast<std::int32_t>(building.courses.size());
  if (!stop.proven) {
    stopped.rule = fact("stopped-by-limit");
    stopped.remedy = fact("stop-mend-split");
    return stopped;
  }
  if (std::ranges::any_of(panel.rows, [](const Row& row) { return row.choices.empty(); })) {
    stopped.rule = fact("stopped-by-bearing");
    stopped.remedy = fact("stop-mend-lintel");
    return stopped;
  }
  const bool run_is_known = stop.row >= 0 && stop.run >= 0;
  if (!run_is_known || by_itself_fills(panel, stop)) {
    stopped.rule = fact(stop.row < 0 ? "stopped-by-laps" : "stopped-by-bars");
    stopped.remedy = fact("stop-mend-bars");
    return stopped;
  }
  const Row& row = panel.rows[static_cast<std::size_t>(stop.row)];
  const RowRun& run = row.runs[static_cast<std::size_t>(stop.run)];
  stopped.first_course = row.courses.front();
  stopped.last_course = row.courses.back();
  stopped.start = Length::nanometres(run.start + site.from);
  stopped.end = Length::nanometres(run.end + site.from);
  if (run.end < run.start) {
    stopped.rule = fact("stopped-by-ends", {stopped.start - stopped.end});
  } else {
    stopped.rule =
        fact("stopped-by-pieces", {Length::nanometres(panel.least_piece), Length::nanometres(panel.joint_least),
                                   Length::nanometres(panel.joint_most), stopped.end - stopped.start});
  }
  stopped.remedy = remedy_of(panel, row, run);
  return stopped;
}

}  // namespace

Stopped stop_of(const Building& building, const PanelSite& site, const Panel& panel, const PanelStop& stop) {
  Stopped stopped = stop_by_rule(building, site, panel, stop);
  stopped.remedy = with_bearing(building, site, std::move(stopped.remedy));
  return stopped;
}

}  // namespace stringcourse::bond
