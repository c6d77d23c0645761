#include "bond/stops.hpp"

#include <algorithm>
#include <optional>
#include <string>

#include "bond/search.hpp"
#include "measure/notation.hpp"

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
std::optional<std::int64_t> least_change(const Panel& panel, const Row& row, const RowRun& run, std::int64_t direction) {
  std::int64_t longest = panel.cut_step;
  for (const PieceChoice& choice : row.choices) longest = std::max(longest, choice.length + panel.joint);
  for (std::int64_t change = panel.cut_step; change <= longest; change += panel.cut_step) {
    if (fills(panel, row, run, change * direction)) return change;
  }
  return std::nullopt;
}

std::string remedy_of(const Building& building, const Panel& panel, const Row& row, const RowRun& run) {
  const std::optional<std::int64_t> longer = least_change(panel, row, run, 1), shorter = least_change(panel, row, run, -1);
  const auto text = [&](std::int64_t change) { return tape_text(Length::nanometres(change), building.tape); };
  if (longer && shorter) return "make this part of the wall " + text(*longer) + " longer or " + text(*shorter) + " shorter";
  if (longer) return "make this part of the wall " + text(*longer) + " longer";
  if (shorter) return "make this part of the wall " + text(*shorter) + " shorter";
  return "move the opening or the corner beside it by half a unit";
}

/// The run can be filled, were it not for bars in it and bearings on it.
bool by_itself_fills(const Panel& panel, const PanelStop& stop) {
  const Row& row = panel.rows[static_cast<std::size_t>(stop.row)];
  return fills(panel, row, row.runs[static_cast<std::size_t>(stop.run)], 0);
}

/// A lintel of this stretch asked to bear a little more than a half unit, which then leaves too little for the unit beside
/// it: what to ask for instead.
std::string bearing_remedy(const Building& building, const PanelSite& site) {
  const Series& series = building.series_of(building.walls[static_cast<std::size_t>(site.wall)]);
  for (const std::int32_t index : site.one_piece) {
    const ResolvedOpening& opening = building.openings[static_cast<std::size_t>(index)];
    const Length over = opening.lintel->least_bearing - series.half;
    if (over <= Length() || over > series.joint) continue;
    return "ask for a bearing of " + tape_text(series.half, building.tape) + ", one half unit, at " + opening.name + "; or ";
  }
  return {};
}

Stopped stop_by_rule(const Building& building, const PanelSite& site, const Panel& panel, const PanelStop& stop) {
  Stopped stopped;
  stopped.wall = site.wall;
  stopped.start = Length::nanometres(site.from);
  stopped.end = Length::nanometres(site.to);
  stopped.last_course = static_cast<std::int32_t>(building.courses.size());
  if (!stop.proven) {
    stopped.rule = "the search ran out of its budget before any layout was found";
    stopped.remedy = "move an opening to a half-unit line, or split the wall with a control joint";
    return stopped;
  }
  if (std::ranges::any_of(panel.rows, [](const Row& row) { return row.choices.empty(); })) {
    stopped.rule = "a one-piece lintel finds no masonry of this wall to bear on, clear of corners and control joints";
    stopped.remedy = "move the opening from the corner or joint by half a unit, ask for a shorter bearing, or build the lintel of units";
    return stopped;
  }
  const bool run_is_known = stop.row >= 0 && stop.run >= 0;
  if (!run_is_known || by_itself_fills(panel, stop)) {
    stopped.rule = stop.row < 0 ? "each course can be filled, but no two rows keep a lap of a quarter unit with the bars in their cells"
                                : "no row keeps the fixed bars in whole cells and uncut units under the bearings";
    stopped.remedy = "move an opening or a bar to a half-unit line, or ask for another lintel bearing";
    return stopped;
  }
  const Row& row = panel.rows[static_cast<std::size_t>(stop.row)];
  const RowRun& run = row.runs[static_cast<std::size_t>(stop.run)];
  stopped.first_course = row.courses.front();
  stopped.last_course = row.courses.back();
  stopped.start = Length::nanometres(run.start + site.from);
  stopped.end = Length::nanometres(run.end + site.from);
  if (run.end < run.start) {
    stopped.rule = "the ends of this part of the wall overlap by " + tape_text(stopped.start - stopped.end, building.tape) +
                   ": the corner units or the lintel beside it take more room than there is";
    stopped.remedy = remedy_of(building, panel, row, run);
    return stopped;
  }
  stopped.rule = "no pieces of at least " + tape_text(Length::nanometres(panel.least_piece), building.tape) + " with joints from " +
                 tape_text(Length::nanometres(panel.joint_least), building.tape) + " to " +
                 tape_text(Length::nanometres(panel.joint_most), building.tape) + " fill " +
                 tape_text(stopped.end - stopped.start, building.tape);
  stopped.remedy = remedy_of(building, panel, row, run);
  return stopped;
}

}  // namespace

Stopped stop_of(const Building& building, const PanelSite& site, const Panel& panel, const PanelStop& stop) {
  Stopped stopped = stop_by_rule(building, site, panel, stop);
  stopped.remedy = bearing_remedy(building, site) + stopped.remedy;
  return stopped;
}

}  // namespace stringcourse::bond
