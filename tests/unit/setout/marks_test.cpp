#include "setout/marks.hpp"

#include <gtest/gtest.h>

#include "bond/layout_parts.hpp"
#include "unit/setout/hand_built.hpp"

namespace stringcourse::setout {
namespace {

using stringcourse::testing::HandBuilt;
using stringcourse::testing::Plan;

std::vector<Length> third_unit_marks(const HandBuilt& house, int wall, int course) {
  std::vector<Length> bays;
  for (const Mark& mark : running_marks(house.building, house.layout, wall, course)) {
    if (mark.third_unit) bays.push_back(mark.at);
  }
  return bays;
}

std::vector<Mark> marks_of_kind(const std::vector<Mark>& marks, MarkKind kind) {
  std::vector<Mark> found;
  for (const Mark& mark : marks) {
    if (mark.kind == kind) found.push_back(mark);
  }
  return found;
}

// 48k - 3/8: three 15 5/8 units and two joints from a through corner are 47 5/8 in.
TEST(RunningMarks, BaysOfASideThatRunsThroughStandAt48kLessAJoint) {
  const HandBuilt house{Plan{}};
  const auto bays = third_unit_marks(house, 0, 1);
  ASSERT_EQ(bays.size(), 6u);  // 24 ft is 18 units
  for (std::size_t k = 0; k < bays.size(); ++k) {
    EXPECT_EQ(bays[k], Length::inches(48) * static_cast<int>(k + 1) - Length::sixteenths(6));
  }
}

// The other side's 7 5/8 corner and one joint come first: 55 5/8, 103 5/8.
TEST(RunningMarks, BaysOfASideThatButtsStandEightInchesFarther) {
  const HandBuilt house{Plan{}};
  const auto bays = third_unit_marks(house, 1, 1);
  ASSERT_GE(bays.size(), 2u);
  EXPECT_EQ(bays[0], Length::sixteenths(55 * 16 + 10));
  EXPECT_EQ(bays[1], Length::sixteenths(103 * 16 + 10));
}

TEST(RunningMarks, TheSecondCourseOfAThroughSideButts) {
  const HandBuilt house{Plan{}};
  EXPECT_EQ(third_unit_marks(house, 0, 2).front(), Length::sixteenths(55 * 16 + 10));
}

TEST(RunningMarks, PartsAddUpToTheSide) {
  const HandBuilt house{Plan{.door = true}};
  const auto marks = running_marks(house.building, house.layout, 0, 1);
  Length sum = marks.front().at;
  for (std::size_t index = 1; index < marks.size(); ++index) sum += marks[index].at - marks[index - 1].at;
  EXPECT_EQ(sum, house.building.walls[0].actual);  // 23'-11 5/8", a whole number of sixteenths
}

TEST(RunningMarks, JambsAreMarkedWhereTheOpeningStands) {
  const HandBuilt house{Plan{.door = true}};
  const auto marks = running_marks(house.building, house.layout, 0, 1);
  const auto near = marks_of_kind(marks, MarkKind::NearJamb), far = marks_of_kind(marks, MarkKind::FarJamb);
  ASSERT_EQ(near.size(), 1u);
  ASSERT_EQ(far.size(), 1u);
  EXPECT_EQ(near[0].at, Length::sixteenths(95 * 16 + 10));             // 8'-0" nominal, less a joint
  EXPECT_EQ(far[0].at - near[0].at, Length::sixteenths(40 * 16 + 6));  // 3'-4" nominal, and a joint
}

TEST(RunningMarks, ACourseOverTheDoorHasNoJambs) {
  const HandBuilt house{Plan{.door = true}};
  const auto marks = running_marks(house.building, house.layout, 0, 8);
  EXPECT_TRUE(marks_of_kind(marks, MarkKind::NearJamb).empty());
}

TEST(RunningMarks, EveryBlockEndIsTheFarEndOfItsPiece) {
  const HandBuilt house{Plan{.door = true}};
  const auto ends = marks_of_kind(running_marks(house.building, house.layout, 0, 3), MarkKind::BlockEnd);
  std::size_t index = 0;
  for (const stringcourse::Run& run : bond::runs_in(house.layout, 0, 3)) {
    for (const Piece& piece : bond::pieces_of(house.layout, run)) {
      ASSERT_LT(index, ends.size());
      EXPECT_EQ(ends[index].piece, piece.number);
      EXPECT_EQ(ends[index++].exact, bond::far_end(piece));
    }
  }
  EXPECT_EQ(index, ends.size());
}

TEST(RunningMarks, ACornersBarIsMetOnBothWalls) {
  const HandBuilt house{Plan{.bars = true}};
  const auto bars = bond::bars_on_wall(house.building, house.layout, 0);
  ASSERT_EQ(bars.size(), 2u);
  EXPECT_EQ(bars[0].centre, Length::sixteenths(61));  // 3 13/16 from A
  EXPECT_FALSE(bars[0].shared);
  EXPECT_EQ(bars[1].centre, house.building.walls[0].actual - Length::sixteenths(61));  // listed on BC
  EXPECT_TRUE(bars[1].shared);
}

// A third of an inch is no sixteenth: 1/3 in = 5.33 sixteenths, marked at 5/16.
TEST(RunningMarks, AreRoundedOnceToTheTape) {
  HandBuilt house{Plan{}};
  house.layout.pieces[0].start = {25'400'000, 3};
  house.layout.pieces[0].length = Length();
  const auto marks = running_marks(house.building, house.layout, 0, 1);
  EXPECT_EQ(marks.front().at, Length::sixteenths(5));
  house.building.tape = Tape::Millimetres;  // 8.467 mm
  EXPECT_EQ(running_marks(house.building, house.layout, 0, 1).front().at, Length::millimetres(8));
}

TEST(PieceNames, AreSideCourseNumber) {
  const HandBuilt house{Plan{}};
  const stringcourse::Run& run = bond::runs_in(house.layout, 0, 3)[0];
  EXPECT_EQ(bond::piece_name(house.building, run, bond::pieces_of(house.layout, run)[6]), "AB-3-7");
}

}  // namespace
}  // namespace stringcourse::setout
