#include "ground/tape_doubt.hpp"

#include <gtest/gtest.h>

#include <cmath>

#include "ground/peg_moves.hpp"
#include "ground/slips.hpp"

namespace stringcourse::ground {
namespace {

TEST(TapeDoubt, SteelTapesKeepTheClassesOfHandbook44) {
  // NIST Handbook 44, 5.52: to 6 ft 1/32, 7-30 ft 1/16, 31-55 ft 1/8, 56-80 ft 3/16, 81-100 ft 1/4 in.
  const std::pair<int, int> classes[] = {{6, 1},  {7, 2},  {30, 2}, {31, 4}, {55, 4},
                                         {56, 6}, {80, 6}, {81, 8}, {100, 8}};
  for (const auto& [feet, thirty_seconds] : classes) {
    EXPECT_EQ(permitted_error(TapeMake::Steel, Length::feet(feet)), Length::sixty_fourths(2 * thirty_seconds)) << feet;
  }
}

TEST(TapeDoubt, ClassTwoTapesGoByWholeMetresUp) {
  // EU class II: 0.3 + 0.2 L mm, L in whole metres up. 10 m: 2.3 mm.
  EXPECT_EQ(permitted_error(TapeMake::ClassTwo, Length::millimetres(10'000)), Length::nanometres(2'300'000));
  EXPECT_EQ(permitted_error(TapeMake::ClassTwo, Length::millimetres(10'001)), Length::nanometres(2'500'000));
  // The first term of the worked 10 m set-out: 2.3 / sqrt 3 = 1.328 mm.
  EXPECT_NEAR(standard_doubt(Length::nanometres(2'300'000)) * 1e3, 1.328, 0.5e-3);
}

TEST(TapeDoubt, WorkedDoubtsAddAsTheGuideAddsThem) {
  // JCGM 100, H.1: 25, 16.599, 6.7, 5.8, 3.9, 2.887 nm come to 31.66 nm.
  double sum = 0;
  for (const double part : {25.0, 16.599, 6.7, 5.8, 3.9, 2.887}) sum = together({sum, part});
  EXPECT_NEAR(sum, 31.66, 0.5e-2);
}

TEST(Slips, UnitsFeetAndInchesAreRecognised) {
  const Length expected = Length::feet(24), near = Length::inches(3);
  EXPECT_EQ(likely_slip(Length::inches(24), expected, near)->slip, Slip::FeetForInches);
  EXPECT_EQ(likely_slip(Length::feet(288), expected, near)->slip, Slip::InchesForFeet);
  EXPECT_EQ(likely_slip(Length::millimetres(288), expected, near)->slip, Slip::InchesForMillimetres);
  EXPECT_EQ(likely_slip(Length::inches(7315), expected, near)->slip, Slip::MillimetresForInches);
  EXPECT_EQ(likely_slip(Length::millimetres(24), expected, near)->slip, Slip::FeetForMillimetres);
  EXPECT_EQ(likely_slip(Length::inches(287), expected, Length::sixteenths(8))->slip, Slip::InchBurnt);
  EXPECT_EQ(likely_slip(Length::feet(25), expected, near)->slip, Slip::FootLost);
  EXPECT_EQ(likely_slip(Length::feet(25), expected, near)->length, expected);
  EXPECT_FALSE(likely_slip(Length::inches(289), expected, near));      // near enough to be right
  EXPECT_FALSE(likely_slip(Length::inches(300 - 6), expected, near));  // 6 in off: nothing that we know
}

TEST(PegMoves, AShapeTurnedAndShiftedIsLaidBackOntoItself) {
  const std::vector<Spot> design{{0, 0}, {10, 0}, {10, 7}, {0, 7}};
  const double c = std::cos(0.3), s = std::sin(0.3);
  std::vector<Spot> found;
  for (const Spot& spot : design) found.push_back({c * spot.x - s * spot.y + 4, s * spot.x + c * spot.y - 2});
  for (const Spot& move : moves(overlay_from(design, found, 0, 1), design, found)) {
    EXPECT_NEAR(move.x, 0, 1e-12);
    EXPECT_NEAR(move.y, 0, 1e-12);
  }
  found[2].x += 0.01;  // one peg out: with the corner and side held, only it moves
  const std::vector<Spot> held = moves(overlay_from(design, found, 0, 1), design, found);
  EXPECT_NEAR(held[2].x, -0.01, 1e-12);
  for (const std::size_t k : {0u, 1u, 3u}) EXPECT_NEAR(held[k].x, 0, 1e-12);
}

}  // namespace
}  // namespace stringcourse::ground
