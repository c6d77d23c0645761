// Heads off a course line by hand.
#include "supply/heads.hpp"

#include <gtest/gtest.h>

#include <algorithm>

#include "code_rows.hpp"
#include "solve/solve.hpp"
#include "unit/walls/made_jobs.hpp"

namespace stringcourse::tests {
namespace {

using supply::HeadChoice;
using supply::HeadWay;

const HeadChoice* choice(const supply::OffCourse& head, HeadWay way) {
  const auto found = std::ranges::find(head.choices, way, &HeadChoice::way);
  return found == head.choices.end() ? nullptr : &*found;
}

// By hand: the overhead door's leaf and buck are 85 1/2 in over the floor, the floor 8 in under the datum: 77 1/2 in.
// Course lines with a joint lie at 72 3/8 and 80 3/8 in. The opening is 112 3/8 in wide: fourteen half units and a
// joint.
TEST(HeadsOffCourse, OfTheKilnHouseTheWideDoorAloneHasChoices) {
  const auto answer = solve(example("kiln-house"), {.search_budget = 20'000});
  ASSERT_EQ(answer->heads.size(), 1u);
  const supply::OffCourse& head = answer->heads.front();
  EXPECT_EQ(answer->building.openings[static_cast<std::size_t>(head.opening)].name, "D1");
  EXPECT_EQ(head.asked, in16(85, 8));
  EXPECT_EQ(head.choices.front(), (HeadChoice{HeadWay::Pack, in16(2, 14)}));
  EXPECT_EQ(*choice(head, HeadWay::Raise), (HeadChoice{HeadWay::Raise, in16(2, 14)}));
  EXPECT_EQ(*choice(head, HeadWay::Lower), (HeadChoice{HeadWay::Lower, in16(5, 2), 7, 0}));
  EXPECT_EQ(choice(head, HeadWay::Sill), nullptr);  // it stands on the floor
  // The lintel reaches 128 in from joint to joint, or a half unit more at an end: on it lie eight or nine blocks.
  const HeadChoice* cut = choice(head, HeadWay::Cut);
  ASSERT_NE(cut, nullptr);
  EXPECT_TRUE(cut->units == 8 || cut->units == 9) << cut->units;
  const supply::Bridged& over = answer->bridged[static_cast<std::size_t>(head.opening)];
  EXPECT_EQ(cut->cuts, cut->units + static_cast<std::int64_t>(over.start.units.size() + over.end.units.size()));
}

// A bare hole leaves nothing to pack: 46 in over a sill is 2 3/8 in under the next line. At 44 in wide its course more
// ends in a cut.
TEST(HeadsOffCourse, ABareHoleMayBeSetHigherOnItsSill) {
  Job job = shed();
  Opening hole = plain_hole("W1", "AB", at("A", in(96)), in(44), in(46));
  hole.masonry->width.basis = hole.masonry->height.basis = Basis::Actual;
  hole.sill_course = 3;
  job.openings = {hole};
  const auto answer = solve(job, {});
  ASSERT_EQ(answer->heads.size(), 1u);
  const supply::OffCourse& head = answer->heads.front();
  EXPECT_EQ(*choice(head, HeadWay::Sill), (HeadChoice{HeadWay::Sill, in16(2, 6)}));
  // From 16 in up to 62 in: the line below lies at 56 3/8 in.
  EXPECT_EQ(*choice(head, HeadWay::Lower), (HeadChoice{HeadWay::Lower, in16(5, 10), 3, 1}));
}

TEST(HeadsOffCourse, AHeadOnItsLineHasNone) {
  Job job = shed();
  Opening hole = plain_hole("W1", "AB", at("A", in(96)), in(48), in(48));
  hole.sill_course = 3;
  job.openings = {hole};
  EXPECT_TRUE(solve(job, {})->heads.empty());
}

}  // namespace
}  // namespace stringcourse::tests
