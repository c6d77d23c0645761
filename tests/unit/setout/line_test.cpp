#include "setout/line.hpp"

#include <gtest/gtest.h>

#include <cmath>

#include "measure/force.hpp"

namespace stringcourse::setout {
namespace {

/// w L^2 / (8 T). SOURCE: parabola of a light line (statics).
double parabola_sag(double span, double weight, double pull) { return weight * span * span / (8 * pull); }

constexpr double kInch = 0.0254, kFoot = 0.3048;

TEST(Line, HangsAsTheSagTableSays) {
  // w = 0.001 lb/ft; feet, pounds, inches; three decimals printed.
  const struct {
    double span, pull, sag;
  } table[] = {{20, 10, .060}, {20, 20, .030}, {20, 30, .020}, {32, 10, .154}, {32, 20, .077},
               {32, 30, .051}, {40, 10, .240}, {40, 20, .120}, {40, 30, .080}, {60, 10, .540},
               {60, 20, .270}, {60, 30, .180}, {80, 10, .960}, {80, 20, .480}, {80, 30, .320}};
  const double weight = *read_line_weight("0.001 lb/ft");
  for (const auto& [span, pull, sag] : table) {
    const double newtons = *read_force("10 lb") * pull / 10;
    EXPECT_NEAR(parabola_sag(span * kFoot, weight, newtons) / kInch, sag, 0.6e-3);
    EXPECT_NEAR(catenary_sag(span * kFoot, weight, newtons) / kInch, sag, 0.6e-3);
    // cosh x - 1 = x^2/2 (1 + x^2/12 + ...): the parabola leaves out x^2/12 of the sag, x = w L / 2 T.
    const double x = weight * span * kFoot / (2 * newtons), sagging = parabola_sag(span * kFoot, weight, newtons);
    EXPECT_NEAR(catenary_sag(span * kFoot, weight, newtons) - sagging, sagging * x * x / 12,
                sagging * x * x / 1200 + 1e-18);
  }
}

TEST(Line, CatenaryAgreesWithTheLibrarysFunctions) {
  for (double x = 0.001; x < 3; x *= 1.3) {
    const double a = 10, exact = a * 2 * std::sinh(x / 2) * std::sinh(x / 2);  // cosh x - 1 = 2 sinh^2(x/2)
    EXPECT_NEAR(catenary_sag(2 * a * x, 1, a) / exact, 1, 1e-12);
  }
}

TEST(Line, HalfSpansHangAQuarterAndSupportsAreTheFewest) {
  const LineFacts line{*read_line_weight("0.001 lb/ft"), *read_force("20 lb"), *read_force("160 lb")};
  for (double feet = 8; feet <= 120; feet += 4) {
    const double span = feet * kFoot, limit = kInch / 32;
    const LineSpan over = line_over(span, line, limit);
    EXPECT_LE(catenary_sag(over.part, line.weight, line.pull), limit);
    EXPECT_NEAR(over.part * (over.supports + 1), span, 1e-9);
    if (over.supports > 0) EXPECT_GT(catenary_sag(span / over.supports, line.weight, line.pull), limit);
    EXPECT_NEAR(parabola_sag(span, line.weight, over.pull_without), limit, 1e-12);
    EXPECT_EQ(over.bears == LineSpan::Bears::Yes, over.pull_without <= 0.425 * line.strength);
  }
}

}  // namespace
}  // namespace stringcourse::setout
