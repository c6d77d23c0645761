// A series of the user's own must fit together.
#include <string>

#include "gtest/gtest.h"
#include "job/read.hpp"
#include "told.hpp"
#include "unit/job/support.hpp"

namespace stringcourse::test {
namespace {

/// The small job with an own series: 15 5/8 + 3/8 = 16 in = 2 (7 5/8 + 3/8).
std::string job_with(std::string_view more, std::string_view half = "7 5/8\\\"", std::string_view id = "mine") {
  return replaced(kSmallJob, "\"us-8\"",
                  "\"us-8\", \"own_series\": [{\"id\": \"" + std::string(id) +
                      "\", \"full\": \"15 5/8\\\"\", \"half\": \"" + std::string(half) +
                      "\", \"thickness\": \"7 5/8\\\"\", \"height\": \"7 5/8\\\"\", \"joint\": \"3/8\\\"\"" +
                      std::string(more) + "}]");
}

std::string refused(const std::string& job) {
  const Refusals refusals = refusals_of(job);
  EXPECT_TRUE(is_well_said(refusals));
  return codes_and_places(refusals);
}

TEST(OwnSeries, OneThatFitsIsAccepted) { EXPECT_TRUE(read_job(job_with("")).has_value()); }

TEST(OwnSeries, AHalfThatIsNotHalfIsRefusedWithBothNumbers) {
  const Refusals refusals = refusals_of(job_with("", "7 3/4\\\""));
  EXPECT_EQ(codes_and_places(refusals), "series-uneven /units/own_series/0/half\n");
  // 15 5/8 + 3/8 = 16 in = 1 ft 4 in; 2 (7 3/4 + 3/8) = 16 1/4 in; (15 5/8 - 3/8) / 2 = 7 5/8.
  EXPECT_NE(test::told(refusals.shown[0].reason).find("1'-4\""), std::string::npos)
      << test::told(refusals.shown[0].reason);
  EXPECT_NE(test::told(refusals.shown[0].reason).find("1'-4 1/4\""), std::string::npos)
      << test::told(refusals.shown[0].reason);
  EXPECT_NE(test::told(refusals.shown[0].remedy).find("7 5/8\""), std::string::npos)
      << test::told(refusals.shown[0].remedy);
}

TEST(OwnSeries, SizesThatCannotBeAreRefusedWhereTheyStand) {
  const std::string at = " /units/own_series/0/";
  EXPECT_EQ(refused(job_with(R"(, "half_high": "7 5/8\"")")), "series-uneven" + at + "half_high\n");
  EXPECT_EQ(refused(job_with(R"(, "joint_tolerance": "3/8\"")")), "series-uneven" + at + "joint_tolerance\n");
  EXPECT_EQ(refused(job_with(R"(, "least_piece": "16\"")")), "series-uneven" + at + "least_piece\n");
  EXPECT_EQ(refused(job_with(R"(, "face_shell": "4\"")")), "series-uneven" + at + "face_shell\n");
  EXPECT_EQ(refused(job_with(R"(, "corner_leg": "16\"")")), "series-uneven" + at + "corner_leg\n");
  EXPECT_EQ(refused(job_with(R"(, "corner_leg": "8\"")")), "series-uneven" + at + "corner_leg\n");  // 3/8 in, a joint
  EXPECT_TRUE(read_job(job_with(R"(, "corner_leg": "8 1/16\"")")).has_value());
  EXPECT_EQ(refused(replaced(job_with(""), "\"thickness\": \"7 5/8", "\"thickness\": \"0")),
            "out-of-range" + at + "thickness\n");
}

TEST(OwnSeries, CellsLieInsideTheirUnitAndRise) {
  const auto cells = [](std::string_view list) { return job_with(", " + std::string(list)); };
  EXPECT_TRUE(
      read_job(cells(R"("full_cells": [{"from": "1\"", "to": "7 5/16\""}, {"from": "8 5/16\"", "to": "14 5/8\""}])"))
          .has_value());
  EXPECT_EQ(refused(cells(R"("full_cells": [{"from": "1\"", "to": "15 11/16\""}])")),
            "cell-outside /units/own_series/0/full_cells/0\n");
  EXPECT_EQ(refused(cells(R"("half_cells": [{"from": "1\"", "to": "8\""}])")),
            "cell-outside /units/own_series/0/half_cells/0\n");
  EXPECT_EQ(refused(cells(R"("full_cells": [{"from": "7\"", "to": "7\""}])")),
            "cell-outside /units/own_series/0/full_cells/0\n");
  // No web between: the second starts where the first ends.
  EXPECT_EQ(refused(cells(R"("full_cells": [{"from": "1\"", "to": "7\""}, {"from": "7\"", "to": "14\""}])")),
            "cell-outside /units/own_series/0/full_cells/1\n");
}

TEST(OwnSeries, ItsNameIsNoneOfTheCatalogues) {
  EXPECT_EQ(refused(job_with("", "7 5/8\\\"", "us-8")), "name-twice /units/own_series/0/id\n");
}

TEST(OwnSeries, TheLeastJointIsNoWiderThanTheGreatest) {
  EXPECT_EQ(refused(replaced(kSmallJob, "\"us-8\"", R"("us-8", "joint_least": "1/2\"", "joint_most": "1/4\"")")),
            "out-of-range /units/joint_least\n");
}

}  // namespace
}  // namespace stringcourse::test
