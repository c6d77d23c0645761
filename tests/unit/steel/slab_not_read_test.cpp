// The building is fitted on the slab only when the readings hold it there.
#include <gtest/gtest.h>

#include "ground/as_found.hpp"
#include "steel/slab.hpp"
#include "unit/kiln_house_site.hpp"

namespace stringcourse::steel {
namespace {

/// An edge of the slab read 4 in beyond the outer face of a wall, at `feet` along it.
Reading edge(const std::string& on, std::int64_t feet) {
  Reading reading;
  reading.id = on + std::to_string(feet);
  reading.edge = EdgeReading{};
  reading.edge->on = on, reading.edge->at = Length::feet(feet), reading.edge->beyond = Length::inches(4);
  return reading;
}

TEST(SlabNotRead, TheSlabIsFittedOnlyWhenEveryWayAndTheTurnAreHeld) {
  test::Site site = test::kiln_house_site();
  const std::vector<std::pair<std::string, std::int64_t>> order{{"AB", 2}, {"BC", 4}, {"CD", 2}, {"DA", 4}};
  for (const auto& [on, feet] : order) {
    site.job.readings.push_back(edge(on, feet));
    const SlabRoom room =
        slab_room(site.job, site.building, site.layout, ground::entries_that_count(site.job, site.building));
    // Four places, one of each side: a turn about them is not known yet.
    EXPECT_FALSE(room.fit) << on;
    EXPECT_FALSE(room.lacks.empty()) << on;
    EXPECT_TRUE(room.face_lines.empty()) << on;
  }
  site.job.readings.push_back(edge("AB", 26));
  const SlabRoom room =
      slab_room(site.job, site.building, site.layout, ground::entries_that_count(site.job, site.building));
  ASSERT_TRUE(room.fit);
  EXPECT_TRUE(room.lacks.empty());
  // 4 in all round: nothing is gained by a shift.
  EXPECT_LE(magnitude(room.fit->room - Length::inches(4)),
            Length::nanometres(10));  // 1e-9 m of the solver, floored; ten of them
}

}  // namespace
}  // namespace stringcourse::steel
