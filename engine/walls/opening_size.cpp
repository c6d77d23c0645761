#include "walls/opening_size.hpp"

#include <algorithm>

namespace stringcourse::walls {
namespace {

Length actual_size(const StatedLength& stated, Length joint) {
  return stated.basis == Basis::Actual ? stated.length : stated.length + joint;
}

OpeningNeed door_need(const DoorSize& door) {
  const Length none;
  const Length packing = door.buck.value_or(none) + door.shim.value_or(none);
  return {OpeningUse::Door, door.leaf_width + (door.frame_jamb.value_or(none) + packing) * 2,
          door.leaf_height + door.frame_head.value_or(none) + packing, true};
}

OpeningNeed overhead_need(const OverheadSize& door) {
  const Length none;
  return {OpeningUse::Overhead, door.leaf_width + door.jamb_buck.value_or(none) * 2,
          door.leaf_height + door.head_buck.value_or(none), true};
}

OpeningNeed window_need(const WindowSize& window) {
  const Length none;
  return {OpeningUse::Window, window.width + window.each_side.value_or(none) * 2,
          window.height + window.above.value_or(none) + window.below.value_or(none), true};
}

int size_groups(const Opening& opening) {
  return int{opening.masonry.has_value()} + int{opening.door.has_value()} + int{opening.overhead.has_value()} +
         int{opening.window.has_value()};
}

OpeningNeed need_of(const Opening& opening, Length joint) {
  if (opening.door) return door_need(*opening.door);
  if (opening.overhead) return overhead_need(*opening.overhead);
  if (opening.window) return window_need(*opening.window);
  return {OpeningUse::Plain, actual_size(opening.masonry->width, joint), actual_size(opening.masonry->height, joint),
          false};
}

/// Its underside from the datum with every course whole: good enough to find the course under the head.
std::optional<Length> whole_underside(const Draft& draft, const Opening& opening) {
  const Series& own = draft.building.series.front();
  if (stands_on_floor(opening)) return floor_of(draft, opening, own.height);
  if (opening.sill) return opening.sill->length;
  if (opening.sill_course) return (own.height + own.joint) * (*opening.sill_course - 1);
  return std::nullopt;
}

std::optional<Length> head_asked(const Draft& draft, const Opening& opening) {
  const std::optional<Length> underside = whole_underside(draft, opening);
  if (size_groups(opening) != 1 || !underside) return std::nullopt;
  return *underside + need_of(opening, draft.building.joint).height;
}

}  // namespace

bool stands_on_floor(const Opening& opening) {
  if (opening.door || opening.overhead) return true;
  return !opening.window && !opening.sill && !opening.sill_course;
}

Length floor_of(const Draft& draft, const Opening& opening, Length first_unit_height) {
  return opening.floor ? opening.floor->length : -(first_unit_height + draft.building.joint);
}

std::optional<OpeningNeed> opening_need(Draft& draft, std::size_t index) {
  const Opening& opening = draft.job.openings[index];
  const std::string place = pointer("/openings", index);
  if (size_groups(opening) != 1) {
    refuse(draft, "choose-one", place, fact("opening-sizes"), fact("state-one-size"));
    return std::nullopt;
  }
  const OpeningNeed need = need_of(opening, draft.building.joint);
  if (need.width > draft.building.joint && need.height > draft.building.joint) return need;
  refuse(draft, "opening-size", place, fact("opening-size", {marked(need.width), marked(need.height)}),
         fact("state-sizes-above", {marked(draft.building.joint)}));
  return std::nullopt;
}

std::optional<Length> first_head_asked(const Draft& draft) {
  const auto& openings = draft.job.openings;
  auto first = std::ranges::find_if(openings, stands_on_floor);
  if (first == openings.end()) first = openings.begin();
  return first == openings.end() ? std::nullopt : head_asked(draft, *first);
}

}  // namespace stringcourse::walls
