#include "job/trouble.hpp"

#include "gtest/gtest.h"

namespace stringcourse::test {
namespace {

TEST(Trouble, HoldPointsHaveTheNamesOfTheContract) {
  EXPECT_EQ(hold_point_name(HoldPoint::Order), "order");
  EXPECT_EQ(hold_point_name(HoldPoint::Pour), "pour");
  EXPECT_EQ(hold_point_name(HoldPoint::FirstCourse), "first-course");
  EXPECT_EQ(hold_point_name(HoldPoint::Lintels), "lintels");
  EXPECT_EQ(hold_point_name(HoldPoint::Grout), "grout");
  EXPECT_EQ(hold_point_name(HoldPoint::Top), "top");
}

TEST(Trouble, TheFirstHundredRefusalsAreKeptAndTheRestCounted) {
  Refusals refusals;
  EXPECT_TRUE(refusals.empty());
  for (int k = 0; k < 103; ++k) refusals.add({"too-many", "/" + std::to_string(k), fact("reason"), fact("remedy")});
  EXPECT_EQ(refusals.shown.size(), 100U);
  EXPECT_EQ(refusals.shown.back().place, "/99");
  EXPECT_EQ(refusals.beyond, 3U);
}

}  // namespace
}  // namespace stringcourse::test
