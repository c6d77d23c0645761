// The top of the walls as read, by hand.
#include <gtest/gtest.h>

#include "ground/as_found.hpp"
#include "tapings.hpp"
#include "unit/kiln_house_site.hpp"

namespace stringcourse::ground {
namespace {

using test::Site;

Length eighths(int count) { return Length::sixteenths(2 * count); }

Reading reading(const std::string& station, Length rod) {
  Reading one;
  one.id = station, one.rod.emplace();
  one.rod->setup = "1", one.rod->station = station, one.rod->rod = rod;
  return one;
}

Reading top_reading(const std::string& on, Length at, Length rod) {
  Reading one = reading("top " + on + " " + std::to_string(at.in_nanometres()), rod);
  one.rod->on = on, one.rod->at = at, one.rod->surface = Surface::Top;
  return one;
}

/// The bearing read level under every corner, at a rod of 10 ft, and points of the top: so far over their design
/// height.
AsFound found(const std::vector<std::tuple<std::string, Length, Length>>& tops) {
  Site site = test::kiln_house_site();
  site.job.readings.push_back(reading("datum", Length::feet(10)));
  for (const char* corner : {"A", "B", "C", "D"}) site.job.readings.push_back(reading(corner, Length::feet(10)));
  // From the bed at its best down to the bearing is what the first bed takes: the levels say it.
  const AsFound bare = as_found(site.job, site.building, site.layout);
  const Length bed = bare.levels->bed->level.top;
  const Length design = bed + site.building.courses.front().unit_height + site.building.courses.back().top;
  for (const auto& [on, at, off] : tops)
    site.job.readings.push_back(top_reading(on, at, Length::feet(10) - design - off));
  return as_found(site.job, site.building, site.layout);
}

// By hand: the highest point, 1/8 in over, bears; what is 1/8 in lower is packed, what is 3/8 in lower is bedded, for
// no bed is thinner than 1/4 in (rule "first-bed").
TEST(TopAsRead, TheHighestPointBearsAndTheOthersComeUpToIt) {
  const AsFound all = found(
      {{"AB", Length::feet(2), eighths(1)}, {"AB", Length::feet(14), Length()}, {"BC", Length::feet(2), -eighths(2)}});
  ASSERT_TRUE(all.levels && all.levels->top);
  const TopAsFound& top = *all.levels->top;
  EXPECT_EQ(top.bearing, eighths(1));
  ASSERT_EQ(top.points.size(), 3u);
  EXPECT_EQ(top.points[0].work, TopWork::Stands);
  EXPECT_EQ(top.points[1].work, TopWork::Pack);
  EXPECT_EQ(top.points[1].by, eighths(1));
  EXPECT_EQ(top.points[2].work, TopWork::Bed);
  EXPECT_EQ(top.points[2].by, eighths(3));
  EXPECT_EQ(top.lowest, -eighths(2));
  EXPECT_EQ(top.highest, eighths(1));
}

// SOURCE: rule "bed-level" (ACI 530.1, second column): 1/2 in in all. A point 3/4 in over is planed to that.
TEST(TopAsRead, WhatStandsOverTheRulesMostIsPlanedOff) {
  const AsFound all = found({{"AB", Length::feet(2), eighths(6)}, {"CD", Length::feet(2), Length()}});
  const TopAsFound& top = *all.levels->top;
  EXPECT_EQ(top.bearing, eighths(4));
  EXPECT_EQ(top.points[0].work, TopWork::Plane);
  EXPECT_EQ(top.points[0].by, eighths(2));
  EXPECT_EQ(top.points[0].verdict, Verdict::DoesNotFit);
  EXPECT_EQ(top.points[1].work, TopWork::Bed);
}

// SOURCE: the same rule: 1/4 in within 10 ft. 1/2 in between two points 8 ft apart is too much, 30 ft apart it is not
// asked; the readings' own doubt is below 1/8 in.
TEST(TopAsRead, PointsNearEachOtherAreHeldToTheStretchOfTheRule) {
  const AsFound near = found({{"AB", Length::feet(2), eighths(2)}, {"AB", Length::feet(10), -eighths(2)}});
  EXPECT_EQ(near.levels->top->points[0].verdict, Verdict::DoesNotFit);
  const AsFound far = found({{"AB", Length::feet(2), eighths(2)}, {"AB", Length::feet(20), -eighths(2)}});
  EXPECT_EQ(far.levels->top->points[0].verdict, Verdict::Fits);
  EXPECT_LT(far.levels->top->doubt, eighths(1) + Length::sixteenths(1));
}

TEST(TopAsRead, TopsAreNoBearings) {
  const AsFound without = found({}), with = found({{"AB", Length::feet(2), eighths(40)}});
  EXPECT_FALSE(without.levels->top);
  EXPECT_EQ(with.levels->bed->level.top, without.levels->bed->level.top);
  EXPECT_EQ(with.findings.size(), without.findings.size());
}

}  // namespace
}  // namespace stringcourse::ground
