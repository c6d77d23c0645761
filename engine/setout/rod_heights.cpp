#include "setout/rod_heights.hpp"

#include "measure/sorting.hpp"

namespace stringcourse::setout {

std::vector<RodReadingWanted> rod_readings(const Job& job, const Building& building) {
  std::vector<RodReadingWanted> wanted;
  if (!job.setting_out || !job.setting_out->backsight || building.courses.empty()) return wanted;
  const Length instrument = *job.setting_out->backsight + job.setting_out->datum_over.value_or(Length());
  const auto add = [&](RodPlace place, std::optional<RodMark> mark, Length height) {
    wanted.push_back({place, mark, height, instrument - height});
  };
  const Length bearing = foot_of_course(building, 1);
  add(RodPlace::Bearing, std::nullopt, bearing);
  if (job.setting_out->boards_over) add(RodPlace::Boards, std::nullopt, bearing + *job.setting_out->boards_over);
  add(RodPlace::CourseOne, std::nullopt, building.courses[0].top);
  for (const RodMark& mark : gauge_rod(building)) {
    const bool listed = mark.event == RodEvent::Floor || mark.event == RodEvent::Sill || mark.event == RodEvent::Head ||
                        mark.event == RodEvent::Top;
    if (listed) add(RodPlace::Event, mark, mark.at);
  }
  sort_stably(wanted, {}, &RodReadingWanted::height);
  return wanted;
}

}  // namespace stringcourse::setout
