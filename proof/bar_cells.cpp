#include "proof/bar_cells.hpp"

#include <algorithm>
#include <optional>

#include "proof/cells.hpp"
#include "proof/runs.hpp"

namespace stringcourse::proof {
namespace {

template <typename List>
const auto& at(const List& list, int index) { return list[static_cast<std::size_t>(index)]; }

/// A clear stretch along a wall that need not end at whole nanometres.
struct Stretch {
  ExactPosition from, to;
};

ExactPosition shifted(const ExactPosition& place, Length by) {
  return {place.numerator + by.in_nanometres() * place.denominator, place.denominator};
}
ExactPosition whole(Length place) { return {place.in_nanometres(), 1}; }

/// The stretch holds centre +- (diameter / 2 + clearance).
bool holds(const Stretch& cell, Length centre, const BarRules& rules) {
  const Length doubled = rules.diameter + rules.clearance * 2;
  const ExactPosition left{(centre * 2 - doubled).in_nanometres(), 2}, right{(centre * 2 + doubled).in_nanometres(), 2};
  return cell.from <= left && right <= cell.to;
}

/// Whether two stretches share at least `least`.
bool share(const Stretch& a, const Stretch& b, Length least) {
  return shifted(std::max(a.from, b.from), least) <= std::min(a.to, b.to);
}

const RunFacts* run_over(const CourseFacts& course, Length centre) {
  for (const RunFacts& run : course.runs)
    if (run.run->start < centre && centre < run.run->end) return &run;
  return nullptr;
}

/// Where piece number `index` of a run starts, counted again: start + pieces before + joints before.
ExactPosition start_of(const RunFacts& facts, std::size_t index) {
  const std::int64_t m = std::max<std::int64_t>(facts.joints, 1);
  Length before = facts.run->start;
  for (std::size_t i = 0; i < index; ++i) before += facts.pieces[i]->length;
  const std::int64_t joints = static_cast<std::int64_t>(index) + (has_joint(facts.run->at_start) ? 1 : 0);
  return {before.in_nanometres() * m + joints * facts.slack.in_nanometres(), m};
}

/// The last piece that starts at or before `centre`; all pieces are checked to stand where they say.
std::size_t piece_at(const RunFacts& facts, Length centre) {
  const auto after = std::ranges::partition_point(facts.pieces, [&](const Piece* piece) { return piece->start <= whole(centre); });
  return after == facts.pieces.begin() ? 0 : static_cast<std::size_t>(after - facts.pieces.begin()) - 1;
}

std::optional<Stretch> cell_around(const Series& series, const RunFacts& facts, Length centre, const BarRules& rules) {
  if (facts.pieces.empty() || facts.slack < Length()) return std::nullopt;
  const std::size_t index = piece_at(facts, centre);
  const ExactPosition start = start_of(facts, index);
  for (const CellSpan& span : whole_cells(series, *facts.pieces[index])) {
    const Stretch cell{shifted(start, span.from), shifted(start, span.to)};
    if (holds(cell, centre, rules)) return cell;
  }
  return std::nullopt;
}

/// Across the corner unit of the other wall, which runs through here: the clear stretch between its face shells, as seen
/// along this wall. Its outer face is `leg` away from the far side of the shells.
Stretch across_corner_unit(const Building& b, const Corner& corner, int wall) {
  const bool leaving = corner.leaving == wall;
  const Series& other = b.series_of(at(b.walls, leaving ? corner.arriving : corner.leaving));
  const Length deep = std::min(other.thickness, corner_leg(other, b.corner_sets_stocked));
  const Length outwards = corner.convex ? Length() : other.thickness;
  Length from = other.face_shell - outwards, to = deep - other.face_shell - outwards;  // inwards from the corner point
  if (leaving) return {whole(from), whole(to)};
  const Length end = at(b.walls, wall).actual;
  return {whole(end - to), whole(end - from)};
}

/// The entering end unit of a lapped wall that fills the slot of its main wall around `centre`.
const RunFacts* entering_run(const Building& b, const Layout& layout, const Facts& facts, int main, int course, Length centre) {
  for (int j = 0; j < static_cast<int>(b.junctions.size()); ++j) {
    const Junction& junction = at(b.junctions, j);
    const bool around = junction.from.distance_from_start() < centre && centre < junction.to.distance_from_start();
    if (junction.main != main || junction.kind != JunctionKind::Lapped || !around || !enters(layout, j, course)) continue;
    const auto& runs = at(at(facts.walls, junction.abutting).courses, course - 1).runs;
    if (!runs.empty()) return junction.at_abutting_start ? &runs.front() : &runs.back();
  }
  return nullptr;
}

/// Whether the unit in a slot has a cell on the middle of the main wall (there the bar stands, seen along the abutting wall).
bool slot_unit_holds(const Building& b, const RunFacts& facts, int main, const BarRules& rules) {
  const Wall& abutting = at(b.walls, facts.run->wall);
  const Length half_through = b.series_of(at(b.walls, main)).thickness.half_down();
  const bool at_start = facts.run->at_start == RunEnd::EnteringJunction && facts.run->start < Length();
  const Length centre = at_start ? -half_through : abutting.actual + half_through;
  return cell_around(b.series_of(abutting), facts, centre, rules).has_value();
}

/// What one course offers a bar: a cell along the wall, nothing there to pass, or an obstacle.
struct Passage {
  std::optional<Stretch> cell;
  std::string obstacle;
};

Passage passage_in(const Building& b, const Layout& layout, const Facts& facts, const PlacedBar& bar, int course) {
  const BarRules& rules = *b.bars;
  const Series& series = b.series_of(at(b.walls, bar.wall));
  if (const RunFacts* run = run_over(at(at(facts.walls, bar.wall).courses, course - 1), bar.centre)) {
    std::optional<Stretch> cell = cell_around(series, *run, bar.centre, rules);
    if (!cell) return {std::nullopt, "meets a web, a joint or a cut instead of a whole cell with its clearance"};
    return {cell, ""};
  }
  if (const RunFacts* run = entering_run(b, layout, facts, bar.wall, course, bar.centre))
    return {std::nullopt, slot_unit_holds(b, *run, bar.wall, rules) ? "" : "meets no cell of the unit that enters the wall here"};
  const bool corner = bar.reason == BarReason::Corner && bar.corner >= 0;
  if (!corner || runs_through(b, layout, bar.corner, bar.wall, course)) return {};
  const Stretch across = across_corner_unit(b, at(b.corners, bar.corner), bar.wall);
  if (!holds(across, bar.centre, rules)) return {std::nullopt, "stands outside the rectangle shared by both corner units"};
  return {across, ""};
}

}  // namespace

Violations check_cells_of(const Building& building, const Layout& layout, const Facts& facts, const PlacedBar& bar) {
  Violations found;
  std::optional<Stretch> below;
  for (int course = bar.first_course; course <= bar.last_course; ++course) {
    const std::string where = place_of(building, bar.wall, course);
    const std::string who = "the bar at " + in_millimetres(bar.centre) + " ";
    const Passage passage = passage_in(building, layout, facts, bar, course);
    if (!passage.obstacle.empty()) found.push_back(violation(kBars, where, who + passage.obstacle));
    if (passage.cell && below && !share(*below, *passage.cell, building.bars->common_along))
      found.push_back(violation(kBars, where, who + "finds its cell too far off the cell below"));
    below = passage.cell;
  }
  return found;
}

}  // namespace stringcourse::proof
