#include "laying/closure.hpp"
#include "told.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <optional>
#include <random>

namespace stringcourse::laying {
namespace {

using UnitKind = ClosurePiece::Kind;
const Length kSixteenth = Length::sixteenths(1);

// In sixteenths of an inch, 8 x 8 x 16 in block: 15 5/8 whole, 7 5/8 half, joints of 3/8, 1/4 to 1/2 while laying; no
// piece below 3 5/8. A quarter unit is 62.5; a half unit less a joint's doubt is short.
constexpr int kWhole = 250, kHalf = 122, kNarrow = 4, kWide = 8, kLeast = 58, kQuarter = 62, kShort = 122;

Gap gap(int sixteenths) {
  Gap one;
  one.measured = kSixteenth * sixteenths, one.unit = kSixteenth * kWhole, one.half = kSixteenth * kHalf;
  one.joint = kSixteenth * 6, one.least_joint = kSixteenth * kNarrow, one.most_joint = kSixteenth * kWide;
  one.step = kSixteenth, one.least_piece = kSixteenth * kLeast;
  one.least_lap = kSixteenth * kQuarter, one.short_lap = kSixteenth * kShort;
  return one;
}

std::vector<ClosurePiece> pieces(std::initializer_list<std::pair<UnitKind, int>> list) {
  std::vector<ClosurePiece> all;
  for (const auto& [kind, sixteenths] : list) all.push_back({kind, kSixteenth * sixteenths});
  return all;
}

TEST(Closure, AWholeOrHalfUnitClosesWhereEqualJointsLetItIn) {
  for (const int width : {258, 262, 266}) {
    const auto found = closure_of(gap(width));
    ASSERT_TRUE(found) << width;
    EXPECT_EQ(found->pieces, pieces({{UnitKind::Whole, kWhole}}));
    EXPECT_EQ(found->pieces[0].length + 2 * found->joint, kSixteenth * width);
  }
  EXPECT_EQ(closure_of(gap(134))->pieces, pieces({{UnitKind::Half, kHalf}}));
}

TEST(Closure, ElseACutWithEqualJointsFillsTheGapExactlyToANanometre) {
  for (int width = 70; width <= 255; ++width) {
    const auto found = closure_of(gap(width));
    if (width >= 130 && width <= 138) continue;  // halves
    ASSERT_TRUE(found) << width;
    EXPECT_EQ(found->pieces, pieces({{UnitKind::Cut, width - 12}}));
    EXPECT_EQ(found->joint, kSixteenth * 6);
  }
  // A gap that leaves less than the least piece takes that one, with joints down to 1/4 in.
  EXPECT_EQ(closure_of(gap(66))->pieces, pieces({{UnitKind::Cut, kLeast}}));
  EXPECT_FALSE(closure_of(gap(65)));
  // Two halves save the saw: 7 5/8 twice with three joints of 1/4.
  EXPECT_EQ(closure_of(gap(256))->pieces, pieces({{UnitKind::Half, kHalf}, {UnitKind::Half, kHalf}}));
}

TEST(Closure, AGapOfAUnitAndAHalfAsksForNoSaw) {
  // 24 3/8 in: 15 5/8 + 7 5/8 + three joints of 3/8.
  const auto found = closure_of(gap(390));
  ASSERT_TRUE(found);
  EXPECT_EQ(std::ranges::count(found->pieces, UnitKind::Cut, &ClosurePiece::kind), 0);
  EXPECT_EQ(found->pieces[0].length + found->pieces[1].length + 3 * found->joint, kSixteenth * 390);
  // A yard without halves saws one.
  Gap no_halves = gap(390);
  no_halves.has_half = false;
  EXPECT_EQ(std::ranges::count(closure_of(no_halves)->pieces, UnitKind::Cut, &ClosurePiece::kind), 1);
}

TEST(Closure, OfMoreThanAUnitOneCutIsEnoughWhereItIsLongEnough) {
  const auto found = closure_of(gap(420));
  ASSERT_TRUE(found);
  EXPECT_EQ(std::ranges::count(found->pieces, UnitKind::Cut, &ClosurePiece::kind), 1);
  EXPECT_EQ(found->pieces[0].length + found->pieces[1].length + 3 * found->joint, kSixteenth * 420);
  // What is laid last is bought: its faces are true on both sides.
  EXPECT_EQ(found->pieces[static_cast<std::size_t>(found->last)].kind, UnitKind::Whole);
}

TEST(Closure, AtAJambThereIsNoJointAndAFactoryFaceShows) {
  Gap at_jamb = gap(256);
  at_jamb.joint_at_end = false;
  const auto found = closure_of(at_jamb);
  ASSERT_TRUE(found);
  EXPECT_EQ(found->pieces, pieces({{UnitKind::Whole, kWhole}}));
  EXPECT_EQ(found->joint, kSixteenth * 6);
}

/// The slow way, in whole sixteenths: every pair of pieces there is, every sum of joints.
struct Slow {
  int cuts_keeping = 9;  // fewest saw cuts of those that keep the lap
  bool any = false;
};

int lap_of(const std::vector<int>& below, int six_times_centre) {
  int nearest = 1 << 30;
  for (const int joint : below) nearest = std::min(nearest, std::abs(6 * joint - six_times_centre));
  return nearest;
}

bool is_cut(int length) { return length != kWhole && length != kHalf; }

/// `at` and `below` in sixteenths; the joint between two pieces is in sixths of them.
Slow slow_twin(int width, int at, const std::vector<int>& below) {
  Slow best;
  for (int one = kLeast; one <= kWhole; ++one) {
    const int left = width - one;
    if (left >= 2 * kNarrow && left <= 2 * kWide)
      best.any = true, best.cuts_keeping = std::min(best.cuts_keeping, is_cut(one) ? 1 : 0);
    for (int other = kLeast; other <= kWhole; ++other) {
      const int joints = width - one - other;
      if (joints < 3 * kNarrow || joints > 3 * kWide) continue;
      best.any = true;
      // One joint is joints / 3; the middle one's centre lies half as much beyond the first piece.
      const int centre = 6 * (at + one) + 2 * joints + joints;
      if (lap_of(below, centre) < 6 * kQuarter) continue;
      best.cuts_keeping = std::min(best.cuts_keeping, (is_cut(one) ? 1 : 0) + (is_cut(other) ? 1 : 0));
    }
  }
  return best;
}

TEST(Closure, KeepsTheLapWithTheFewestCutsOfAllPiecesThereAre) {
  std::minstd_rand dice(19);
  int lost = 0, two = 0;
  for (int round = 0; round < 600; ++round) {
    const int width = 60 + static_cast<int>(dice() % 480), at = 1000;
    std::vector<int> below;  // joints of a course below, in any bond
    for (int joint = at - static_cast<int>(dice() % 256); joint < at + 800;
         joint += 66 + static_cast<int>(dice() % 191))
      below.push_back(joint);
    Gap one = gap(width);
    one.at = kSixteenth * at;
    for (const int joint : below) one.below.push_back(kSixteenth * joint);
    const auto found = closure_of(one);
    const Slow slow = slow_twin(width, at, below);
    ASSERT_EQ(found.has_value(), slow.any) << width;
    if (!found) continue;
    Length sum;
    int cuts = 0;
    for (const ClosurePiece& piece : found->pieces) {
      sum += piece.length, cuts += piece.kind == UnitKind::Cut ? 1 : 0;
      EXPECT_GE(piece.length, kSixteenth * kLeast);
    }
    const auto joints = static_cast<int>(found->pieces.size()) + 1;
    // What is not shared out is below a nanometre for each joint.
    EXPECT_LT(one.measured - sum - found->joint * joints, Length::nanometres(joints));
    ASSERT_EQ(found->lost_over.has_value(), slow.cuts_keeping == 9) << width;
    if (found->lost_over) ++lost;
    else EXPECT_EQ(cuts, slow.cuts_keeping) << width;
    if (found->pieces.size() != 2) continue;
    ++two;
    // Three joints share what is left: the middle one's centre in sixths, exactly.
    const Length centre = 6 * (one.at + found->pieces[0].length) + 3 * (one.measured - sum);
    Length nearest = Length::feet(500);
    for (const Length joint : one.below) nearest = std::min(nearest, magnitude(6 * joint - centre));
    EXPECT_EQ(nearest < 6 * one.least_lap, found->lost_over.has_value());
    if (found->lost_over) EXPECT_EQ(found->lost_lap.in_nanometres(), nearest.in_nanometres() / 6);
  }
  // The dice met both.
  EXPECT_GT(two, 100);
  EXPECT_GT(lost, 0);
}

TEST(Closure, TheWordsSayWhatIsLost) {
  Gap one = gap(274);
  one.at = Length();
  // Joints below every 4 in: none of the middle joint's places is a quarter unit from all of them.
  for (int joint = 0; joint <= 320; joint += 64) one.below.push_back(kSixteenth * joint);
  const auto found = closure_of(one);
  ASSERT_TRUE(found);
  ASSERT_TRUE(found->lost_over);
  EXPECT_NE(test::told(closure_said(*found)).find("from the joint below"), std::string::npos);
}

}  // namespace
}  // namespace stringcourse::laying
