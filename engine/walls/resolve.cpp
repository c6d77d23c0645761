#include "walls/resolve.hpp"

#include "walls/draft.hpp"

namespace stringcourse {

std::expected<Building, Refusals> resolve(const Job& job) {
  walls::Draft draft{.job = job};
  draft.building.tape = draft.refusals.tape = job.tape;
  walls::resolve_units(draft);
  walls::resolve_outline(draft);
  walls::resolve_courses(draft);
  walls::look_for_implausible(draft);
  walls::resolve_interior_walls(draft);
  walls::check_overlaps(draft);
  walls::check_jogs(draft);
  walls::resolve_openings(draft);
  walls::check_openings(draft);
  walls::resolve_control_joints(draft);
  walls::resolve_steel(draft);
  walls::resolve_corners(draft);
  walls::resolve_fixed_bars(draft);
  walls::check_bar_room(draft);
  walls::check_bars_apart(draft);
  walls::resolve_top(draft);
  if (!draft.refusals.empty()) return std::unexpected(std::move(draft.refusals));
  return std::move(draft.building);
}

}  // namespace stringcourse
