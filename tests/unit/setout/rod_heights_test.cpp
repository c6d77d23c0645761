#include "setout/rod_heights.hpp"

#include <gtest/gtest.h>

#include "unit/kiln_house_site.hpp"

namespace stringcourse::setout {
namespace {

TEST(RodHeights, ReadingAndHeightAddUpToTheInstrumentEverywhere) {
  test::Site site = test::kiln_house_site();
  site.job.setting_out.emplace();
  EXPECT_TRUE(rod_readings(site.job, site.building).empty());  // no backsight
  site.job.setting_out->backsight = Length::inches(50);
  site.job.setting_out->datum_over = Length::inches(12);
  site.job.setting_out->boards_over = Length::inches(20);
  const auto wanted = rod_readings(site.job, site.building);
  ASSERT_GT(wanted.size(), 6u);
  for (std::size_t k = 0; k < wanted.size(); ++k) {
    EXPECT_EQ(wanted[k].reading + wanted[k].height, Length::inches(62));
    if (k > 0) EXPECT_LE(wanted[k - 1].height, wanted[k].height);
  }
  // By hand: the bearing lies 7 5/8 + 3/8 in under the top of course 1, so the rod reads 70 in there and 50 in on
  // boards 20 in above it; 14 courses end 13 x 8 in above course 1, over the instrument: 62 - 104 in.
  EXPECT_EQ(wanted.front().place, RodPlace::Bearing);
  EXPECT_EQ(wanted.front().reading, Length::inches(70));
  EXPECT_EQ(wanted.back().reading, Length::inches(-42));
  for (const RodReadingWanted& one : wanted) {
    if (one.place == RodPlace::CourseOne) EXPECT_EQ(one.reading, Length::inches(62));
    if (one.place == RodPlace::Boards) EXPECT_EQ(one.reading, Length::inches(50));
  }
}

}  // namespace
}  // namespace stringcourse::setout
