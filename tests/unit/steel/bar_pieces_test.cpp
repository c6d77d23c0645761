// The kiln house's bars, by hand.
#include "steel/bar_pieces.hpp"

#include <gtest/gtest.h>

#include "unit/kiln_house_site.hpp"

namespace stringcourse::steel {
namespace {

constexpr Length in16(std::int64_t inches, std::int64_t sixteenths = 0) {
  return Length::inches(inches) + Length::sixteenths(sixteenths);
}

BarPieces pieces_with(void (*change)(Steel&)) {
  test::Site site = test::kiln_house_site();
  site.job.steel.pour_tops = site.building.pour_tops;
  change(site.job.steel);
  return bar_pieces(site.job, site.building, site.layout);
}

std::vector<Length> lengths_of(const BarPieces& bars, BarUse use) {
  std::vector<Length> lengths;
  for (const BarMark& mark : bars.marks) {
    if (mark.use == use) lengths.push_back(mark.length);
  }
  return lengths;
}

bool says(const BarPieces& bars, std::string_view what) {
  return std::ranges::any_of(bars.unsaid, [&](const Unsaid& one) { return one.says.says == what; });
}

TEST(BarPieces, AreNotCutUntilARuleIsPicked) {
  const BarPieces bars = pieces_with([](Steel& steel) { steel.lap.reset(), steel.lintel_bars.reset(); });
  EXPECT_TRUE(bars.pieces.empty());
  EXPECT_TRUE(says(bars, "lap-not-picked"));
  ASSERT_FALSE(bars.laps.empty());
  EXPECT_EQ(bars.laps.front().choices.size(), 7u);  // both editions, IBC twice, Florida, 40 and 48
}

TEST(BarPieces, UprightBarsGoFromLapToLap) {
  // #5, 40 db = 25 in. Pours stop on courses 7 and 14: 56 in from the bearing and 112 in; 1 1/2 in of cover at the top.
  const BarPieces bars = pieces_with([](Steel& steel) {
    steel.lap = Lap{LapRule::FortyBars, {}, {}, {}};
    steel.lintel_bars.reset(), steel.beam_bars.reset();
  });
  EXPECT_EQ(lengths_of(bars, BarUse::Dowel), std::vector{in16(25)});
  EXPECT_EQ(lengths_of(bars, BarUse::Upright), (std::vector{in16(81), in16(54, 8)}));
  EXPECT_TRUE(says(bars, "beam-bars-not-said"));
  EXPECT_TRUE(says(bars, "lintel-bars-not-said"));
}

TEST(BarPieces, ShortBarsAreLappedOnTheHighestCourseThatTheyReach) {
  // 48 in bars with laps of 20 in: three courses of 8 in and a lap, 44 in.
  const BarPieces bars = pieces_with([](Steel& steel) {
    steel.lap = Lap{LapRule::AsDrawn, {}, {}, in16(20)};
    steel.bar_stock = in16(48);
    steel.lintel_bars.reset(), steel.beam_bars.reset();
  });
  for (const Length length : lengths_of(bars, BarUse::Upright)) EXPECT_LE(length, in16(48));
  EXPECT_TRUE(std::ranges::contains(lengths_of(bars, BarUse::Upright), in16(44)));
}

TEST(BarPieces, BeamBarsFillTheirSideAndAreLapped) {
  // BC is 19'-11 5/8" from outer face to outer face: less two covers 236 5/8 in, in one piece. AB, 335 5/8 in, takes
  // 332 5/8 in: 240 in, and with a lap of 24 in 116 5/8 in.
  const BarPieces bars = pieces_with([](Steel& steel) {
    steel.lap = Lap{LapRule::FortyEightBars, {}, {}, {}};
    steel.beam_bars = BeamBars{"#4", 2, {}};
    steel.lintel_bars.reset();
  });
  EXPECT_EQ(lengths_of(bars, BarUse::Beam), (std::vector{in16(240), in16(236, 10), in16(116, 10)}));
  EXPECT_EQ(lengths_of(bars, BarUse::Corner), std::vector{in16(48)});
  const auto corner = std::ranges::find(bars.marks, BarUse::Corner, &BarMark::use);
  EXPECT_EQ(corner->count, 8);  // two at each of four corners
}

/// By hand: 7 5/8 in less two shells of 1 1/4 in and twice 1/2 in of coarse grout are 4 1/8 in. Two #8 with an inch of
/// grout between them take 3 in, three take 5 in.
TEST(BarPieces, MoreBarsThanLieSideBySideAreSaid) {
  const auto abreast = [](const BarPieces& bars) {
    const auto at = std::ranges::find(bars.findings, Code("bar-clearance-across"), &Finding::code);
    return at == bars.findings.end() ? std::string() : at->place;
  };
  EXPECT_EQ(abreast(pieces_with([](Steel& steel) { steel.beam_bars = BeamBars{"#8", 2, {}}; })), "");
  EXPECT_EQ(abreast(pieces_with([](Steel& steel) { steel.beam_bars = BeamBars{"#8", 3, {}}; })),
            "/steel/beam_bars/count");
  EXPECT_EQ(abreast(pieces_with([](Steel& steel) { steel.lintel_bars = LintelBars{"#8", 3}; })),
            "/steel/lintel_bars/count");
}

TEST(BarPieces, LintelBarsSpanOpeningAndBearings) {
  // D2 is 3'-4 3/8" wide between jambs and bears a half block, 7 5/8 + 3/8 in, at least, at each end.
  const BarPieces bars = pieces_with([](Steel& steel) {
    steel.lap.reset(), steel.beam_bars.reset();
    steel.lintel_bars = LintelBars{"#4", 1};
  });
  EXPECT_EQ(bars.pieces.size(), 4u);  // D1, D2, W1, W2
  for (const BarPiece& piece : bars.pieces) {
    EXPECT_EQ(piece.use, BarUse::Lintel);
    EXPECT_EQ(piece.lap, Length());
    EXPECT_GE(piece.length(), in16(40) + in16(14) - in16(3));
  }
}

TEST(BarPieces, WeighWhatTheTableSays) {
  const BarPieces bars = pieces_with([](Steel& steel) {
    steel.lap = Lap{LapRule::FortyBars, {}, {}, {}};
    steel.lintel_bars.reset(), steel.beam_bars.reset();
  });
  ASSERT_EQ(bars.totals.size(), 1u);
  // 25 bars of 81 + 54 1/2 in: 3387 1/2 in = 86.0425 m of 1.552 kg/m: 133.538 kg.
  EXPECT_EQ(bars.totals.front().length, in16(3'387, 8));
  EXPECT_EQ(bars.totals.front().grams, 133'538);
}

}  // namespace
}  // namespace stringcourse::steel
