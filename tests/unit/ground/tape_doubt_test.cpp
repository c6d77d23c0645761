#include "ground/tape_doubt.hpp"

#include <gtest/gtest.h>

#include <cmath>

#include "ground/peg_moves.hpp"
#include "ground/slips.hpp"

namespace stringcourse::ground {
namespace {

TEST(TapeDoubt, SteelTapesKeepTheClassesOfHandbook44) {
  // NIST Handbook 44, 5.52: to 6 ft 1/32, 7-30 ft 1/16, 31-55 ft 1/8, 56-80 ft 3/16, 81-100 ft 1/4 in.
  const std::pair<int, int> classes[] = {{6, 1}, {7, 2}, {30, 2}, {31, 4}, {55, 4}, {56, 6}, {80, 6}, {81, 8}, {100, 8}};
  for (const auto& [feet, thirty_seconds] : classes) {
    EXPECT_EQ(permitted_error(TapeClass::Steel, Length::feet(feet)), Length::sixty_fourths(2 * thirty_seconds)) << feet;
  }
}

TEST(TapeDoubt, ClassTwoTapesGoByWholeMetresUp) {
  // EU class II: 0.3 + 0.2 L mm, L in whole metres up. 10 m: 2.3 mm.
  EXPECT_EQ(permitted_error(TapeClass::ClassTwo, Length::millimetres(10'000)), Length::nanometres(2'300'000));
  EXPECT_EQ(permitted_error(TapeClass::ClassTwo, Length::millimetres(10'001)), Length::nanometres(2'500'000));
  // The first term of the worked 10 m set-out: 2.3 / sqrt 3 = 1.328 mm.
  EXPECT_NEAR(standard_doubt(Length::nanometres(2'300'000)) * 1e3, 1.328, 0.5e-3);
}

TEST(TapeDoubt, WorkedDoubtsAddAsTheGuideAddsThem) {
  // JCGM 100, H.1: 25, 16.599, 6.7, 5.8, 3.9, 2.887 nm come to 31.66 nm.
  double sum = 0;
  for (const double part : {25.0, 16.599, 6.7, 5.8, 3.9, 2.887}) sum = together({sum, part});
  EXPECT_NEAR(sum, 31.66, 0.5e-2);
}

// SOURCE of T1 to T7: surveying textbooks' exercises; where a book's answer is not known, worked out with another program.
TEST(TapeCorrections, T1TapeOf100FeetPartlyHanging) {
  const double weight = 2.2 / 102, read = 436.48;
  EXPECT_NEAR(standard_correction(read, 100, 100.004), .01746, 0.6e-5);
  EXPECT_NEAR(heat_correction(read, 6.5e-6, 50, 70), -.05674, 0.6e-5);
  EXPECT_NEAR(pull_correction(read, 15, 23, .004, 2.9e7), -.03010, 0.6e-5);
  EXPECT_NEAR(sag_correction(100, weight, 15), -.08615, 0.6e-5);
  EXPECT_NEAR(sag_correction(36.48, weight, 15), -.00418, 0.6e-5);
  const double all = read + standard_correction(read, 100, 100.004) + heat_correction(read, 6.5e-6, 50, 70) +
                     pull_correction(read, 15, 23, .004, 2.9e7) + 2 * sag_correction(100, weight, 15) + sag_correction(36.48, weight, 15);
  EXPECT_NEAR(all, 436.2341, 0.6e-4);
}

TEST(TapeCorrections, T2MixedSpans) {
  const double read = 678.46, weight = .0195;
  EXPECT_NEAR(standard_correction(read, 100, 99.995), -.03392, 0.6e-5);
  EXPECT_NEAR(heat_correction(read, 6.5e-6, 80, 68), .05292, 0.6e-5);
  EXPECT_NEAR(pull_correction(read, 25, 18, .003, 3e7), .05277, 0.6e-5);
  EXPECT_NEAR(sag_correction(50, weight, 25), -.00317, 0.6e-5);
  EXPECT_NEAR(sag_correction(100, weight, 25), -.02535, 0.6e-5);
  EXPECT_NEAR(sag_correction(78.46, weight, 25), -.01224, 0.6e-5);
}

TEST(TapeCorrections, T3ThirtyMetreTapeOverThreeSpans) {
  const double read = 81.151;
  EXPECT_NEAR(standard_correction(read, 30, 30.012), .0325, 0.6e-4);
  EXPECT_NEAR(pull_correction(read, 9.09, 5.45, .050, 2e6), .0030, 0.6e-4);
  EXPECT_NEAR(2 * sag_correction(30, .03967, 9.09) + sag_correction(21.151, .03967, 9.09), -.0504, 0.6e-4);
  EXPECT_NEAR(heat_correction(30, 1.16e-5, 14, 20) + heat_correction(30, 1.16e-5, 15, 20) + heat_correction(21.151, 1.16e-5, 16, 20), -.0048, 0.6e-4);
}

TEST(TapeCorrections, T4ToT7SingleCorrections) {
  EXPECT_NEAR(heat_correction(20, 6.2e-6, 80, 55), .003100, 0.6e-6);
  EXPECT_NEAR(pull_correction(20, 16, 10, .05089, 2.109e6), .001118, 0.6e-6);
  EXPECT_NEAR(sag_correction(20, .8 / 20, 16), -.002083, 0.6e-6);
  EXPECT_NEAR(pull_correction(30, 10, 0, .15, 2.2e6), .000909, 0.6e-6);
  EXPECT_NEAR(heat_correction(600, 11.5e-6, 35, 20), .1035, 0.6e-4);
  EXPECT_NEAR(standard_correction(171.278, 30, 29.996), -.023, 0.6e-3);
}

TEST(TapeCorrections, SlopeIsPythagoras) { EXPECT_DOUBLE_EQ(slope_correction(5, 3), -1); }

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
  EXPECT_FALSE(likely_slip(Length::inches(289), expected, near));   // near enough to be right
  EXPECT_FALSE(likely_slip(Length::inches(300 - 6), expected, near));  // 6 in off: nothing that we know
}

TEST(PegMoves, AShapeTurnedAndShiftedIsLaidBackOntoItself) {
  const std::vector<Spot> design{{0, 0}, {10, 0}, {10, 7}, {0, 7}};
  const double c = std::cos(0.3), s = std::sin(0.3);
  std::vector<Spot> found;
  for (const Spot& spot : design) found.push_back({c * spot.x - s * spot.y + 4, s * spot.x + c * spot.y - 2});
  for (const Spot& move : moves(best_overlay(design, found), design, found)) {
    EXPECT_NEAR(move.x, 0, 1e-12);
    EXPECT_NEAR(move.y, 0, 1e-12);
  }
  found[2].x += 0.01;  // one peg out: with the corner and side held, only it moves
  const std::vector<Spot> held = moves(overlay_from(design, found, 0, 1), design, found);
  EXPECT_NEAR(held[2].x, -0.01, 1e-12);
  for (const std::size_t k : {0u, 1u, 3u}) EXPECT_NEAR(held[k].x, 0, 1e-12);
}

TEST(PegMoves, NoOtherOverlayHasLessSquares) {
  const std::vector<Spot> design{{0, 0}, {10, 0}, {10, 7}, {0, 7}}, found{{0.02, 0}, {10, -0.03}, {10.05, 7.01}, {-0.04, 7.02}};
  const auto squares = [&](const Overlay& overlay) {
    double sum = 0;
    for (const Spot& move : moves(overlay, design, found)) sum += move.x * move.x + move.y * move.y;
    return sum;
  };
  const Overlay best = best_overlay(design, found);
  for (const double turn : {-1e-3, 0.0, 1e-3}) {
    for (const double dx : {-1e-3, 0.0, 1e-3}) {
      for (const double dy : {-1e-3, 0.0, 1e-3}) {
        const double c = std::cos(turn), s = std::sin(turn);
        const Overlay other{best.c * c - best.s * s, best.s * c + best.c * s, {best.shift.x + dx, best.shift.y + dy}};
        EXPECT_LE(squares(best), squares(other) + 1e-15);
      }
    }
  }
}

}  // namespace
}  // namespace stringcourse::ground
