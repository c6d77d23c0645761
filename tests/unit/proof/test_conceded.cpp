// What is given up is listed, and what is listed is given up: no more, no less, and at its weight.
#include <gtest/gtest.h>

#include "hand.hpp"

namespace stringcourse::hand {
namespace {

/// A wall whose joints, 3/8 in and a third of 1/64, are wider than is asked; all of them listed so.
Plan wide_joints() {
  Plan plan = make_up_wall();
  plan.job.units.joint_most = plan.building.joint_most = in(0, 3);
  for (const Run& run : plan.layout.runs) {
    if (run.slack <= plan.building.joint_most * run.joints) continue;
    const Length each = Length::nanometres(run.slack.in_nanometres() / run.joints);
    plan.layout.conceded.push_back({Concession::What::Joints, run.wall, run.course, run.start, run.end, each});
  }
  plan.layout.cost.conceded = static_cast<std::int64_t>(plan.layout.conceded.size());  // a weight of 1 each
  plan.layout.proven = false;
  return plan;
}

TEST(Conceded, WhatIsListedAndBrokenPasses) {
  const Plan plan = wide_joints();
  ASSERT_FALSE(plan.layout.conceded.empty());
  EXPECT_EQ(broken(plan), "");
}
TEST(Conceded, AMissingOneIsABrokenRule) {
  Plan plan = wide_joints();
  plan.layout.conceded.pop_back();
  --plan.layout.cost.conceded;
  EXPECT_EQ(broken(plan), "1 joints");
}
TEST(Conceded, ASuperfluousOneIsSeen) {
  Plan plan = wide_joints();
  plan.layout.conceded.push_back(plan.layout.conceded.front());
  ++plan.layout.cost.conceded;
  EXPECT_EQ(broken(plan), "conceded");
}
TEST(Conceded, OneAtAnotherPlaceIsMissingAndSuperfluous) {
  Plan plan = wide_joints();
  plan.layout.conceded.front().to += Length::nanometres(1);
  const std::string both = broken(plan);
  EXPECT_NE(both.find("1 joints"), std::string::npos) << both;
  EXPECT_NE(both.find("conceded"), std::string::npos) << both;
}
TEST(Conceded, AnotherWeightIsAnotherCost) {
  Plan plan = wide_joints();
  ++plan.layout.cost.conceded;
  EXPECT_EQ(broken(plan), "cost");
}
TEST(Conceded, NothingExcusesJointsBeyondTheSiteTolerance) {
  Plan plan = make_up_wall();
  relay(plan, 0, 1, 0, "FF");  // two units in 62 1/64 in: one joint of 30 in
  const auto& run = run_of(plan, 0, 1);
  plan.layout.conceded.push_back({Concession::What::Joints, 0, 1, run.start, run.end, run.slack});
  const std::string found = broken(plan);
  EXPECT_NE(found.find("1 joints"), std::string::npos) << found;
  EXPECT_NE(found.find("conceded"), std::string::npos) << found;
}

}  // namespace
}  // namespace stringcourse::hand
