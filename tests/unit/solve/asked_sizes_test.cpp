// Openings found otherwise than planned, on the kiln house: what goes into them is still what was asked.
#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <sstream>

#include "job/read.hpp"
#include "solve/solve.hpp"
#include "told.hpp"

namespace stringcourse {
namespace {

/// D1, an overhead door, asks for 9'-3" (111 in); its hole is 14 half units and a joint: 112 3/8, 11/16 on either side.
Answer with_d1_narrower(Length by) {
  std::ostringstream text;
  text << std::ifstream(std::string(STRINGCOURSE_ROOT) + "/examples/kiln-house.json").rdbuf();
  Job job = *read_job(text.str());
  LaidEntry entry;
  entry.id = "f";
  entry.found = FoundPlace{"AB", FoundWhat::NearJamb, "D1", Length::sixteenths(111 * 16 + 10) + by};
  job.laid.push_back(entry);
  auto answer = solve(job, {});
  EXPECT_TRUE(answer.has_value());
  return std::move(*answer);
}

bool has_finding(const Answer& answer, Code code) {
  return std::ranges::contains(answer.findings, code, &Finding::code);
}

TEST(AskedSizes, StandBesideAHoleThatWasFoundNarrower) {
  const Answer answer = with_d1_narrower(Length::sixteenths(8));
  ASSERT_TRUE(answer.as_built.has_value());
  const ResolvedOpening& door = answer.building.openings[0];
  EXPECT_EQ(door.width(), Length::sixteenths(112 * 16 + 6 - 8));
  EXPECT_EQ(door.use, OpeningUse::Overhead);
  EXPECT_EQ(door.asked_width, Length::inches(111));
  EXPECT_EQ(door.asked_height, Length::sixteenths(85 * 16 + 8));
  EXPECT_EQ(door.packing_each_side, Length::sixteenths(7));  // (111 7/8 - 111) / 2
  EXPECT_EQ(door.packing_head, Length::sixteenths(46));      // 88 3/8 - 85 1/2 = 2 7/8
  EXPECT_FALSE(has_finding(answer, "opening-too-narrow"));
}

TEST(AskedSizes, AHoleTooNarrowForThemIsAFinding) {
  const Answer answer = with_d1_narrower(Length::sixteenths(24));  // 110 7/8
  ASSERT_TRUE(answer.as_built.has_value());
  EXPECT_EQ(answer.building.openings[0].asked_width, Length::inches(111));
  ASSERT_TRUE(has_finding(answer, "opening-too-narrow"));
  const auto found = std::ranges::find(answer.findings, Code("opening-too-narrow"), &Finding::code);
  const std::string says = test::told(found->says);
  EXPECT_NE(says.find("9'-2 7/8\" wide, 1/8\" less"), std::string::npos) << says;
}

}  // namespace
}  // namespace stringcourse
