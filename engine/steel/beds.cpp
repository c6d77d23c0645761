#include "steel/beds.hpp"

#include <algorithm>

#include "bond/layout_parts.hpp"

namespace stringcourse::steel {
namespace {

/// Whether units of the abutting wall, or a lintel's end, come up to the junction in this course.
bool comes_up(const Plan& plan, const Junction& junction, std::int32_t course) {
  const auto runs = bond::runs_in(plan.layout, junction.abutting, course);
  if (runs.empty()) return false;
  const Run& run = junction.at_abutting_start ? runs.front() : runs.back();
  const RunEnd beyond = junction.at_abutting_start ? run.at_end : run.at_start;
  return run.piece_count > 0 || (beyond == RunEnd::LintelEnd && run.end - run.start <= plan.building.joint_most);
}

}  // namespace

std::vector<Break> holes_of(const Plan& plan, std::int32_t wall, std::int32_t course) {
  std::vector<Break> holes;
  for (const ResolvedOpening& opening : plan.building.openings) {
    if (opening.wall != wall || course < opening.first_course || course > opening.last_course) continue;
    holes.push_back(
        {opening.from_in(course).distance_from_start(), opening.to_in(course).distance_from_start(), WireEnd::Jamb});
  }
  for (const PlacedLintel& placed : plan.layout.lintels) {
    const ResolvedOpening& opening = plan.building.openings[static_cast<std::size_t>(placed.opening)];
    if (opening.wall != wall || !opening.lintel || opening.lintel->make != LintelMake::OnePiece) continue;
    const std::int32_t first = opening.lintel->first_course, top = first + opening.lintel->courses - 1;
    if (course < first || course >= top) continue;
    holes.push_back({opening.from.distance_from_start() - placed.start_bearing,
                     opening.to.distance_from_start() + placed.end_bearing, WireEnd::Lintel});
  }
  return holes;
}

Length middle_of(const Junction& junction) {
  return junction.from.distance_from_start() + (junction.to - junction.from).half_down();
}

bool stands(const Plan& plan, const Junction& junction, std::int32_t course) {
  if (middle_of(junction) < Length() || wall_of(plan.building, junction.main).actual < middle_of(junction))
    return false;
  const Length actual = wall_of(plan.building, junction.abutting).actual, middle = middle_of(junction);
  const auto abutting = holes_of(plan, junction.abutting, course), main = holes_of(plan, junction.main, course);
  return comes_up(plan, junction, course) &&
         std::ranges::none_of(abutting,
                              [&](const Break& one) {
                                const Length joint = one.kind == WireEnd::Lintel ? plan.building.joint_most : Length();
                                return junction.at_abutting_start ? one.from <= joint : one.to >= actual - joint;
                              }) &&
         std::ranges::none_of(main, [&](const Break& one) { return one.from < middle && middle < one.to; });
}

}  // namespace stringcourse::steel
