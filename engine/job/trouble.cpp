#include "job/trouble.hpp"

#include <utility>

namespace stringcourse {

std::string_view hold_point_name(HoldPoint point) {
  switch (point) {
    case HoldPoint::Order: return "order";
    case HoldPoint::Pour: return "pour";
    case HoldPoint::FirstCourse: return "first-course";
    case HoldPoint::Lintels: return "lintels";
    case HoldPoint::Grout: return "grout";
    case HoldPoint::Top: return "top";
  }
  return "order";
}

void Refusals::add(Refusal refusal) {
  if (shown.size() < kShownRefusals) {
    shown.push_back(std::move(refusal));
  } else {
    ++beyond;
  }
}

}  // namespace stringcourse
