// Laps by every rule against published tables and hand arithmetic.
#include "steel/laps.hpp"

#include <gtest/gtest.h>

#include "catalogue/steel.hpp"

namespace stringcourse::steel {
namespace {

constexpr Length kEightInch = Length::sixteenths(122), kTwelveInch = Length::sixteenths(186);

LapBy by(LapRule rule, std::int64_t masonry, std::int64_t steel) {
  return {rule, Stress::psi(masonry), Stress::psi(steel), std::nullopt};
}

/// Centred in a wall, 8 in clear to the bars lapped beside it.
Length centred(LapRule rule, const char* size, Length wall, std::int64_t masonry = 1'500, std::int64_t steel = 60'000) {
  const Bar& bar = *find_bar(size);
  const Length cover = (wall - bar.diameter).half_down();
  return *lap_length(by(rule, masonry, steel), {bar, std::min(cover, Length::inches(8))}, Tape::Inches);
}

/// A printed figure is rounded to a tenth of an inch; ours is the next sixteenth up.
void expect_printed(Length lap, double printed, const char* size) {
  const double inches = static_cast<double>(lap.in_nanometres()) / 25.4e6;
  EXPECT_GT(inches, printed - 0.05 - 1e-9) << size;
  EXPECT_LT(inches, printed + 0.05 + 0.0625 + 1e-9) << size;
}

constexpr const char* kSizes[] = {"#3", "#4", "#5", "#6", "#7", "#8"};

TEST(Laps, EditionsTo2008GiveThePublishedTable) {
  // Bar centred, f'm 1500 psi, grade 60, 8 in clear between laps: 8 in and 12 in block.
  constexpr double kEight[] = {15.1, 20.1, 25.2, 42.8, 59.4, 91.2}, kTwelve[] = {15.1, 20.1, 25.2, 39.3, 45.8, 60.4};
  for (int k = 0; k < 6; ++k) {
    expect_printed(centred(LapRule::Tms402To2008, kSizes[k], kEightInch), kEight[k], kSizes[k]);
    expect_printed(centred(LapRule::Tms402To2008, kSizes[k], kTwelveInch), kTwelve[k], kSizes[k]);
  }
}

TEST(Laps, EditionsFrom2011GiveTheirTable) {
  constexpr double kAt1500[] = {12, 14.1, 22.5, 42.8, 59.4, 91.2}, kAt2000[] = {12, 12.2, 19.5, 37.1, 51.4, 79.0};
  for (int k = 0; k < 6; ++k) {
    expect_printed(centred(LapRule::Tms402From2011, kSizes[k], kEightInch), kAt1500[k], kSizes[k]);
    expect_printed(centred(LapRule::Tms402From2011, kSizes[k], kEightInch, 2'000), kAt2000[k], kSizes[k]);
  }
}

TEST(Laps, IbcGivesThePublishedTables) {
  for (int k = 0; k < 6; ++k) {
    // 48 diameters at 24,000 psi, 64 at 32,000: whole eighths of an inch.
    const Length db = find_bar(kSizes[k])->diameter;
    EXPECT_EQ(centred(LapRule::Ibc, kSizes[k], kEightInch, 1'500, 24'000), db * 48) << kSizes[k];
    EXPECT_EQ(centred(LapRule::Ibc, kSizes[k], kEightInch, 1'500, 32'000), db * 64) << kSizes[k];
    EXPECT_EQ(centred(LapRule::FortyBars, kSizes[k], kEightInch), db * 40) << kSizes[k];
    EXPECT_EQ(centred(LapRule::FortyEightBars, kSizes[k], kEightInch), db * 48) << kSizes[k];
  }
  EXPECT_EQ(centred(LapRule::Ibc, "#5", kEightInch, 1'500, 10'000), Length::inches(25));  // 40 db governs
  EXPECT_EQ(centred(LapRule::Ibc, "#3", kEightInch, 1'500, 1'000), Length::inches(15));
}

TEST(Laps, FloridaGivesItsTable) {
  constexpr double kEight[] = {15.1, 20.1, 25.2, 34.3, 47.5, 72.0};
  for (int k = 0; k < 6; ++k)
    expect_printed(centred(LapRule::Florida2017, kSizes[k], kEightInch), kEight[k], kSizes[k]);
}

TEST(Laps, FortyEightDiametersAreShorterThanTheEquationFromNumberSixOn) {
  for (int k = 0; k < 6; ++k)
    EXPECT_EQ(
        centred(LapRule::FortyEightBars, kSizes[k], kEightInch) < centred(LapRule::Tms402To2008, kSizes[k], kEightInch),
        k >= 3)
        << kSizes[k];
}

TEST(Laps, MetricBarsByTheSameEquation) {
  // N16 with 10.3 MPa and 500 MPa, K 5 db = 80 mm, by hand: fy 72518.87 psi, f'm 1493.89 psi;
  // 0.13 x 0.629921^2 x 72518.87 / (3.149606 x 38.65087) = 30.729 in = 780.5 mm.
  const LapBy rule{LapRule::Tms402To2008, read_stress("10.3 MPa"), read_stress("500 MPa"), std::nullopt};
  EXPECT_EQ(*lap_length(rule, {*find_bar("N16"), Length::millimetres(87)}, Tape::Millimetres),
            Length::millimetres(781));
}

TEST(Laps, LackWhatTheirRuleNeeds) {
  EXPECT_EQ(lap_lacks({LapRule::Tms402To2008, {}, {}, {}}), "lap-lacks-both");
  EXPECT_EQ(lap_lacks({LapRule::Florida2017, Stress::psi(1), {}, {}}), "lap-lacks-yield");
  EXPECT_EQ(lap_lacks({LapRule::Tms402From2011, {}, Stress::psi(1), {}}), "lap-lacks-masonry");
  EXPECT_EQ(lap_lacks({LapRule::Ibc, Stress::psi(1), {}, {}}), "lap-lacks-stress");
  EXPECT_EQ(lap_lacks({LapRule::AsDrawn, {}, {}, {}}), "lap-lacks-length");
  EXPECT_EQ(lap_lacks({LapRule::FortyBars, {}, {}, {}}), "");
}

TEST(Stresses, AreReadExactly) {
  EXPECT_EQ(read_stress("1500 psi"), Stress::psi(1'500));
  EXPECT_EQ(read_stress("1.5 ksi"), Stress::psi(1'500));
  EXPECT_EQ(read_stress("60ksi "), Stress::psi(60'000));
  EXPECT_EQ(read_stress("10.3 MPa"), read_stress("10.300 N/mm2"));
  for (const char* text :
       {"", "1500", "psi", "0 psi", "1.5 psi", "-3 ksi", "1.2345 MPa", "200001 psi", "9 bar", "1..5 ksi"})
    EXPECT_FALSE(read_stress(text)) << text;
}

TEST(BarMasses, FollowFromSteelAndArea) {
  // 7850 kg/m3 x pi/4 d^2; the inch table has the nominal area to a hundredth of a square inch: within two in a
  // hundred.
  for (const Bar& bar : catalogue_bars()) {
    const double metres = static_cast<double>(bar.diameter.in_nanometres()) / 1e9;
    const double grams = 7850e3 * 3.14159265358979 / 4 * metres * metres;
    EXPECT_NEAR(static_cast<double>(grams_per_metre(bar)), grams, bar.name.front() == '#' ? grams * 0.02 : 0.51)
        << bar.name;
  }
}

}  // namespace
}  // namespace stringcourse::steel
