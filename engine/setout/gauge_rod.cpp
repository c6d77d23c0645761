#include "setout/gauge_rod.hpp"

#include <algorithm>

#include "measure/sorting.hpp"

namespace stringcourse::setout {
namespace {

void collect_courses(std::vector<RodMark>& rod, const Building& building) {
  for (const Course& course : building.courses) {
    rod.push_back({course.top, RodEvent::CourseTop, course.number, -1});
    if (course.wire) rod.push_back({course.top, RodEvent::Wire, course.number, -1});
    if (course.bond_beam) rod.push_back({course.top, RodEvent::BondBeam, course.number, -1});
  }
  for (const int stop : building.pour_tops) {
    if (stop < 1 || stop > static_cast<int>(building.courses.size())) continue;
    rod.push_back({building.courses[static_cast<std::size_t>(stop - 1)].top, RodEvent::PourStop, stop, -1});
  }
  if (building.courses.empty()) return;
  rod.push_back({building.courses.back().top, RodEvent::Top, building.courses.back().number, -1});
}

void collect_lintel(std::vector<RodMark>& rod, const Building& building, const ResolvedLintel& lintel, int opening) {
  for (int deep = 0; deep < lintel.courses; ++deep) {
    const int number = lintel.first_course + deep;
    if (number < 1 || number > static_cast<int>(building.courses.size())) continue;
    rod.push_back(
        {building.courses[static_cast<std::size_t>(number - 1)].top, RodEvent::LintelCourse, number, opening});
  }
}

void collect_openings(std::vector<RodMark>& rod, const Building& building) {
  for (std::size_t index = 0; index < building.openings.size(); ++index) {
    const ResolvedOpening& opening = building.openings[index];
    const int number = static_cast<int>(index);
    const bool window = opening.use == OpeningUse::Window || opening.first_course > 1;
    rod.push_back({opening.underside, window ? RodEvent::Sill : RodEvent::Floor, 0, number});
    rod.push_back({opening.soffit, RodEvent::Head, 0, number});
    if (opening.lintel) collect_lintel(rod, building, *opening.lintel, number);
  }
}

}  // namespace

std::vector<RodMark> gauge_rod(const Building& building) {
  std::vector<RodMark> rod;
  collect_courses(rod, building);
  collect_openings(rod, building);
  sort_stably(rod, [](const RodMark& a, const RodMark& b) { return a.at != b.at ? a.at < b.at : a.event < b.event; });
  return rod;
}

}  // namespace stringcourse::setout
