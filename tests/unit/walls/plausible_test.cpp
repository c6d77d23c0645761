// Sizes that can hardly be meant are found, and those of real small buildings are not.
#include <gtest/gtest.h>

#include "made_jobs.hpp"

namespace stringcourse::tests {
namespace {

std::string implausible(const Job& job) {
  const auto building = resolve(job);
  if (!building) return "refused: " + codes(building.error());
  std::string places;
  for (const Finding& found : building->findings) {
    if (found.code == "building-implausible") places += found.place + ": " + test::told(found.says) + "\n";
  }
  return places;
}

// 48 x 40 in nominal: 47 5/8 by 39 5/8 outside, less two walls of 7 5/8 each way: 32 3/8 by 24 3/8 inside. One unit
// less in width leaves 8 3/8.
TEST(Plausible, WallsThatLeaveNoRoomBetweenThemAreFound) {
  EXPECT_EQ(implausible(job_with(outline_of({{48}, {40}, {48}, {40}}))), "");
  const std::string found = implausible(job_with(outline_of({{48}, {24}, {48}, {24}})));
  EXPECT_NE(found.find("/outline: "), std::string::npos) << found;
  EXPECT_NE(found.find("3'-11 5/8\" by 1'-11 5/8\" outside; its walls leave 2'-8 3/8\" by 8 3/8\" inside"),
            std::string::npos)
      << found;
}

TEST(Plausible, HeightsOfOneOrTwoBlocksAndOfTowersAreFound) {
  for (const int courses : {3, 12, 45})
    EXPECT_EQ(implausible(job_with(outline_of({{288}, {240}, {288}, {240}}), courses)), "") << courses;
  for (const int courses : {1, 2, 46, 144}) {
    const std::string found = implausible(job_with(outline_of({{288}, {240}, {288}, {240}}), courses));
    EXPECT_NE(found.find("/heights: "), std::string::npos) << courses << " " << found;
  }
}

TEST(Plausible, ALowWallThatEnclosesNothingIsMeant) {
  EXPECT_EQ(implausible(job_with(outline_of({{288}}, false), 2)), "");
}

// 300 ft are 3600 in.
TEST(Plausible, SidesOfHundredsOfFeetAreFound) {
  EXPECT_EQ(implausible(job_with(outline_of({{3600}}, false))), "");
  const std::string found = implausible(job_with(outline_of({{3608}}, false)));
  EXPECT_NE(found.find("AB is 300'-7 5/8\" long"), std::string::npos) << found;
}

}  // namespace
}  // namespace stringcourse::tests
