#include "answer/as_built.hpp"

namespace stringcourse {
namespace {

Fact marks_moved(const Wall& wall, const CourseChange& change) {
  if (change.marks_moved == 0) return {};
  const std::string& toward = change.farthest < Length() ? wall.start_name : wall.end_name;
  const Length far = magnitude(change.farthest);
  return change.marks_moved == 1 ? fact("change-one-mark", {far, toward})
                                 : fact("change-marks", {change.marks_moved, far, toward});
}

}  // namespace

Fact change_said(const Building& building, const CourseChange& change) {
  const Wall& wall = building.walls[static_cast<std::size_t>(change.wall)];
  const Fact units = change.units.empty() ? fact("change-same-units") : fact("change-units", {change.units.size()});
  const FactValue courses = listed(FactValue::Kind::Commas, change.courses);
  return fact(change.courses.size() == 1 ? "change-of-course" : "change-of-courses",
              {wall.name, courses, units, marks_moved(wall, change)});
}

}  // namespace stringcourse
