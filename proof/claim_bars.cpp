// Bars against the job: size, clearances, spacing, and that each bar with a place of its own is there.
#include <algorithm>

#include "proof/bar_cells.hpp"
#include "proof/claim.hpp"

namespace stringcourse::proof {
namespace {

template <typename List>
const auto& at(const List& list, int index) {
  return list[static_cast<std::size_t>(index)];
}

Violation differs(std::string where, std::string text) {
  return violation(kBuilding, std::move(where), std::move(text));
}

/// The tallest pour: from the bearing, or from where the last pour stopped, up to where this one stops; the top of the
/// wall ends the last.
Length tallest_pour(const Job& job, const Building& b) {
  Length tallest, pour;
  for (const Course& course : b.courses) {
    pour += course.unit_height + b.joint;
    tallest = std::max(tallest, pour);
    if (std::ranges::find(job.steel.pour_tops, course.number) != job.steel.pour_tops.end()) pour = Length();
  }
  return tallest;
}

/// The clear opening from cell to cell is the grout-space table's, for this grout: the lowest row that reaches the
/// tallest pour, or where none does the highest.
bool is_grout_space(const Job& job, const Building& b, const BarRules& rules) {
  const Length pour = tallest_pour(job, b);
  const GroutSpace* row = nullptr;
  for (const GroutSpace& space : grout_spaces()) {
    if (space.grout != rules.grout) continue;
    const bool reaches = pour <= space.pour_at_most, better = row && pour <= row->pour_at_most;
    if (!row || (reaches && (!better || space.pour_at_most < row->pour_at_most)) ||
        (!better && row->pour_at_most < space.pour_at_most))
      row = &space;
  }
  return row && row->along == rules.common_along && row->across == rules.common_across;
}

Violations claim_rules(const Job& job, const Building& b) {
  Violations found;
  const Bars& asked = *job.steel.bars;
  const BarRules& rules = *b.bars;
  const Bar* bar = find_bar(asked.size);
  if (rules.size != asked.size || !bar || rules.diameter != bar->diameter)
    found.push_back(differs("bars", "another bar size"));
  if (rules.grout != asked.grout.value_or(Grout::Coarse) || rules.clearance != bar_clearance(rules.grout))
    found.push_back(differs("bars", "another grout or clearance"));
  if (rules.spacing != asked.spacing) found.push_back(differs("bars", "another spacing"));
  if (!is_grout_space(job, b, rules))
    found.push_back(differs("bars", "the opening from cell to cell is not the grout-space table's"));
  return found;
}

/// Whether a fixed bar of this wall stands in from..to.
bool bar_between(const Building& b, int wall, Length from, Length to) {
  return std::ranges::any_of(b.fixed_bars, [&](const FixedBar& bar) {
    const Length centre = bar.centre.distance_from_start();
    return bar.wall == wall && from < centre && centre < to;
  });
}

/// Whether a bar stands just there: one of this wall, or one in a corner's cell as it is seen from this wall.
bool bar_at(const Building& b, int wall, Length centre) {
  return std::ranges::any_of(b.fixed_bars, [&](const FixedBar& bar) {
    if (bar.wall == wall) return bar.centre.distance_from_start() == centre;
    if (bar.corner < 0) return false;
    const Corner& corner = at(b.corners, bar.corner);
    if (corner.arriving != wall && corner.leaving != wall) return false;
    PlacedBar placed;
    placed.wall = bar.wall, placed.corner = bar.corner, placed.centre = bar.centre.distance_from_start(),
    placed.off_face = bar.off_face;
    return seen_from_other(b, placed).along == centre;
  });
}

/// A dowel that is kept stands here, ends counted.
bool kept_between(const Building& b, int wall, Length from, Length to) {
  return std::ranges::any_of(b.fixed_bars, [&](const FixedBar& bar) {
    const Length at = bar.centre.distance_from_start();
    return bar.wall == wall && bar.reason == BarReason::Cast && from <= at && at <= to;
  });
}

/// A kept dowel takes the place of a bar within 2 in of it along the wall (TMS 602 art. 3.4).
constexpr Length kKeptWithin = Length::inches(2);

/// ... or of the one dimensioned in its cell, and a finding says so. Two places in one cell are less than a half apart.
bool is_told_moved(const Building& b, int wall, Length centre, std::size_t index) {
  const std::string place = "/steel/bars/dimensioned/" + std::to_string(index);
  const Length reach = std::max(kKeptWithin, b.series_of(at(b.walls, wall)).half);
  const bool told = std::ranges::any_of(
      b.findings, [&](const Finding& f) { return f.code == "dimensioned-bar-moved" && f.place == place; });
  return told && kept_between(b, wall, centre - reach, centre + reach);
}

/// Whether the wall has masonry for a cell (half a unit) from..to: no opening, control joint or corner bar's cell
/// there.
bool is_clear(const Building& b, int wall, Length from, Length to) {
  const auto meets = [&](const auto& gap) {
    return gap.wall == wall && gap.from.distance_from_start() < to && from < gap.to.distance_from_start();
  };
  const Wall& w = at(b.walls, wall);
  const Length thickest = b.series_of(w).pitch();  // the corner's own bar may serve the jamb
  return thickest <= from && to <= w.actual - thickest && std::ranges::none_of(b.openings, meets) &&
         std::ranges::none_of(b.control_joints, meets);
}

/// A bar stands within a half-unit pitch of this edge, on its masonry side.
bool bar_beside(const Building& b, int wall, Length edge, bool before) {
  const Length pitch = b.series_of(at(b.walls, wall)).pitch();
  const Length from = before ? edge - pitch : edge, to = before ? edge : edge + pitch;
  return !is_clear(b, wall, from, to) || !b.series_of(at(b.walls, wall)).grouts || bar_between(b, wall, from, to) ||
         kept_between(b, wall, from - kKeptWithin, to + kKeptWithin);
}

Violations claim_fixed(const Job& job, const Building& b, const Names& names) {
  Violations found;
  const Bars& asked = *job.steel.bars;
  for (int c = 0; asked.corners && c < static_cast<int>(b.corners.size()); ++c)
    if (std::ranges::none_of(b.fixed_bars,
                             [&](const FixedBar& bar) { return bar.reason == BarReason::Corner && bar.corner == c; }))
      found.push_back(differs("corner " + at(b.corners, c).name, "has no bar"));
  for (const ResolvedOpening& o : b.openings)
    if (asked.jambs && !(bar_beside(b, o.wall, o.from.distance_from_start(), true) &&
                         bar_beside(b, o.wall, o.to.distance_from_start(), false)))
      found.push_back(differs("opening " + o.name, "has a jamb without a bar"));
  for (const ControlJoint& j : b.control_joints)
    if (asked.control_joints && !(bar_beside(b, j.wall, j.from.distance_from_start(), true) &&
                                  bar_beside(b, j.wall, j.to.distance_from_start(), false)))
      found.push_back(differs(name_of(b, j.wall), "has a control joint without a bar beside it"));
  for (std::size_t i = 0; i < asked.dimensioned.size(); ++i) {
    const DimensionedBar& bar = asked.dimensioned[i];
    const int wall = wall_named(job, names, bar.on);
    if (wall < 0) {
      found.push_back(differs("bar on " + bar.on, "stands in no wall"));
      continue;
    }
    const Measured place = measure(job, b, names, wall, bar.place);
    const Length centre = place.from_start ? place.to_middle : at(b.walls, wall).actual - place.to_middle;
    if (!bar_at(b, wall, centre) && !is_told_moved(b, wall, centre, i))
      found.push_back(differs("bar on " + bar.on, "is not where the job dimensions it"));
  }
  return found;
}

}  // namespace

Violations claim_bars(const Job& job, const Building& building, const Names& names) {
  if (job.steel.bars.has_value() != building.bars.has_value())
    return {differs("bars", "are asked for and missing, or the other way round")};
  if (!building.bars)
    return building.fixed_bars.empty() ? Violations{}
                                       : Violations{differs("bars", "are fixed that the job does not ask for")};
  return joined(claim_rules(job, building), claim_fixed(job, building, names));
}

}  // namespace stringcourse::proof
