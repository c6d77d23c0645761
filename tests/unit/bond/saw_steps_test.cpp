#include "bond/saw_steps.hpp"

#include <gtest/gtest.h>

#include <vector>

namespace stringcourse::bond {
namespace {

/// Every place one by one.
std::vector<std::int64_t> looked_for(std::int64_t least, std::int64_t grain, std::int64_t rest, std::int64_t step,
                                     std::int64_t most) {
  std::vector<std::int64_t> places;
  for (std::int64_t place = least; place <= most; place += grain) {
    if ((rest - place) % step == 0) places.push_back(place);
  }
  return places;
}

TEST(SawSteps, MeetTheGrainWhereASearchOfAllPlacesFindsThem) {
  constexpr std::int64_t kMost = 5'000;
  for (const std::int64_t grain : {1, 2, 3, 8, 12, 35, 222}) {
    for (const std::int64_t step : {1, 4, 6, 10, 15, 64}) {
      const SawSteps steps(grain, step);
      for (std::int64_t rest = 0; rest < 40; ++rest) {
        const std::int64_t least = rest % 3 * grain;
        std::vector<std::int64_t> met;
        const Meetings meetings = steps.meetings(least, rest);
        for (std::int64_t place = meetings.first; meetings.first >= 0 && place <= kMost; place += meetings.stride)
          met.push_back(place);
        ASSERT_EQ(met, looked_for(least, grain, rest, step, kMost)) << grain << " " << step << " " << rest;
      }
    }
  }
}

}  // namespace
}  // namespace stringcourse::bond
