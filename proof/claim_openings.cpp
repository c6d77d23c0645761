// Openings, lintels and control joints against the job.
#include <algorithm>

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

/// What the opening must measure at least, and whether it must measure just that.
struct AskedSize {
  Length width, height;
  bool exact = false;
};

Length value(const std::optional<Length>& length) { return length.value_or(Length()); }

/// A hole in nominal sizes is a joint wider and higher. Width of a door: leaf + 2 (frame + buck + shim).
AskedSize asked_size(const Opening& o, Length j) {
  const auto actual = [&](const StatedLength& s) { return s.basis == Basis::Nominal ? s.length + j : s.length; };
  if (o.masonry) return {actual(o.masonry->width), actual(o.masonry->height), true};
  if (o.door)
    return {o.door->leaf_width + (value(o.door->frame_jamb) + value(o.door->buck) + value(o.door->shim)) * 2,
            o.door->leaf_height + value(o.door->frame_head)};
  if (o.overhead)
    return {o.overhead->leaf_width + value(o.overhead->jamb_buck) * 2,
            o.overhead->leaf_height + value(o.overhead->head_buck)};
  if (o.window)
    return {o.window->width + value(o.window->each_side) * 2,
            o.window->height + value(o.window->above) + value(o.window->below)};
  return {};
}

/// The hole itself is as wide as said; a hole round a door or window is the next whole number of half units, plus j.
bool width_is_lawful(const AskedSize& asked, Length got, const Series& s) {
  if (asked.exact) return got == asked.width;
  return asked.width <= got && got - s.pitch() < asked.width && (got - s.joint).is_multiple_of(s.pitch());
}

/// The edge that the job places: near or far from the corner that it is measured from.
bool edge_is_placed(const Job& job, const Building& b, const Names& names, const Opening& asked,
                    const ResolvedOpening& got) {
  const Measured place = measure(job, b, names, got.wall, asked.place);
  const bool near = asked.place.to.value_or(Face::Near) == Face::Near;
  const Length edge = place.from_start == near ? got.from.distance_from_start() : got.to.distance_from_start();
  return place.known && place.to_void == (place.from_start ? edge : at(b.walls, got.wall).actual - edge);
}

/// A soffit is the top of a course + j; an opening takes out every course that it meets.
Violations check_heights(const Building& b, const ResolvedOpening& o, const std::string& where) {
  const int count = static_cast<int>(b.courses.size());
  if (o.first_course < 1 || o.last_course < o.first_course || count < o.last_course)
    return {differs(where, "takes out no course")};
  Violations found;
  const Length j = b.series[0].joint;
  if (o.soffit != at(b.courses, o.last_course - 1).top + j)
    found.push_back(differs(where, "its head is not on a course line"));
  if (at(b.courses, o.first_course - 1).top <= o.underside ||
      (o.first_course > 1 && o.underside < at(b.courses, o.first_course - 2).top))
    found.push_back(differs(where, "its foot is not in the first course that it takes out"));
  return found;
}

/// A door starts at its floor (default: a joint under course 1), a window on top of a course.
Violations check_foot(const Building& b, const Opening& asked, const ResolvedOpening& o, const std::string& where) {
  const Series& s = b.series[0];
  const Length bearing = b.courses.empty() ? Length() : b.courses[0].top - b.courses[0].unit_height - s.joint;
  if (asked.sill_course && (*asked.sill_course != o.first_course - 1 ||
                            o.underside != (o.first_course > 1 ? at(b.courses, o.first_course - 2).top : bearing)))
    return {differs(where, "its sill is on another course")};
  if (asked.sill && !asked.sill_course) {
    const bool on_course =
        std::ranges::any_of(b.courses, [&](const Course& c) { return c.top == o.underside; }) || o.underside == bearing;
    if (!on_course) return {differs(where, "its sill is not on a course line")};
  }
  if (asked.floor && asked.floor->basis == Basis::Actual && o.underside != asked.floor->length)
    return {differs(where, "its floor is elsewhere")};
  if (!asked.floor && !asked.sill && !asked.sill_course && o.underside != bearing)
    return {differs(where, "its floor must be a joint under course 1")};
  return {};
}

/// No lintel or bond-beam unit is made half-high.
Violations check_lintel_courses(const Building& b, const ResolvedLintel& lintel, const std::string& where) {
  if (lintel.make != LintelMake::BuiltUp) return {};
  const auto in_lintel = [&](const Course& c) {
    return c.number >= lintel.first_course && c.number < lintel.first_course + lintel.courses;
  };
  if (std::ranges::none_of(b.courses, [&](const Course& c) { return c.half_high && in_lintel(c); })) return {};
  return {differs(where, "its lintel of units lies in a half-high course")};
}

Violations check_lintel(const Building& b, const Opening& asked, const ResolvedOpening& o, const std::string& where) {
  const bool masonry_above = o.last_course < static_cast<int>(b.courses.size());
  if (!o.lintel) {
    if (asked.lintel && masonry_above) return {differs(where, "the lintel asked for is missing")};
    return {};
  }
  const Lintel wish = asked.lintel.value_or(Lintel{});
  const Length bearing = wish.bearing.value_or(b.series_of(at(b.walls, o.wall)).half);
  if (!masonry_above || o.lintel->make != wish.make || o.lintel->first_course != o.last_course + 1 ||
      o.lintel->courses != wish.courses.value_or(1) || o.lintel->least_bearing != bearing)
    return {differs(where, "its lintel is not the one asked for")};
  return check_lintel_courses(b, *o.lintel, where);
}

Violations claim_opening(const Job& job, const Building& b, const Names& names, const Opening& asked,
                         const ResolvedOpening& o) {
  const std::string where = "opening " + asked.name;
  if (o.wall != wall_named(job, names, asked.on)) return {differs(where, "stands in another wall")};
  Violations found;
  const Series& s = b.series_of(at(b.walls, o.wall));
  const AskedSize size = asked_size(asked, s.joint);
  if (!width_is_lawful(size, o.width(), s))
    found.push_back(
        differs(where, "is " + in_millimetres(o.width()) + " wide for " + in_millimetres(size.width) + " asked"));
  const bool open_top = o.last_course == static_cast<int>(b.courses.size());  // no head above it
  if (o.height() < size.height && !open_top)
    found.push_back(
        differs(where, "is " + in_millimetres(o.height()) + " high for " + in_millimetres(size.height) + " asked"));
  if (!edge_is_placed(job, b, names, asked, o))
    found.push_back(differs(where, "stands elsewhere than the job places it"));
  found = joined(std::move(found), check_heights(b, o, where));
  found = joined(std::move(found), check_foot(b, asked, o, where));
  return joined(std::move(found), check_lintel(b, asked, o, where));
}

const ResolvedOpening& resolved_opening(const Building& b, int index) {
  const std::string place = "/openings/" + std::to_string(index);
  for (const ResolvedOpening& o : b.openings)
    if (o.place == place) return o;
  return at(b.openings, index);
}

/// A control joint placed by the user stands where the user says, or on the half-unit line next to it.
bool is_placed(const Job& job, const Building& b, const Names& names, const PlacedControlJoint& asked,
               const ControlJoint& joint) {
  if (joint.by_rule || joint.wall != wall_named(job, names, asked.on)) return false;
  const Measured place = measure(job, b, names, joint.wall, asked.place);
  const bool near = asked.place.to.value_or(Face::Near) == Face::Near;
  const Length edge = place.from_start == near ? joint.from.distance_from_start() : joint.to.distance_from_start();
  const Length off = place.to_void - (place.from_start ? edge : at(b.walls, joint.wall).actual - edge);
  const Length pitch = b.series_of(at(b.walls, joint.wall)).pitch();
  return place.known && off * 2 <= pitch + b.joint * 2 && -(off * 2) <= pitch + b.joint * 2;
}

}  // namespace

Violations claim_openings(const Job& job, const Building& building, const Names& names) {
  Violations found;
  for (int i = 0; i < static_cast<int>(job.openings.size()); ++i)
    found = joined(std::move(found),
                   claim_opening(job, building, names, at(job.openings, i), resolved_opening(building, i)));
  return found;
}

Violations claim_control_joints(const Job& job, const Building& building, const Names& names) {
  Violations found;
  for (const PlacedControlJoint& asked : job.control_joints.placed)
    if (std::ranges::none_of(building.control_joints,
                             [&](const ControlJoint& j) { return is_placed(job, building, names, asked, j); }))
      found.push_back(differs("control joint on " + asked.on, "is missing"));
  const auto placed = std::ranges::count_if(building.control_joints, [](const ControlJoint& j) { return !j.by_rule; });
  if (placed > static_cast<std::ptrdiff_t>(job.control_joints.placed.size()))
    found.push_back(differs("control joints", "one is placed that the job does not place"));
  const bool rule = job.control_joints.rule.value_or(JointRule::None) != JointRule::None;
  if (!rule && std::ranges::any_of(building.control_joints, &ControlJoint::by_rule))
    found.push_back(differs("control joints", "one stands by a rule that the job does not ask for"));
  return found;
}

}  // namespace stringcourse::proof
