#include "steel/dowels.hpp"

#include <gtest/gtest.h>

#include <algorithm>

#include "bond/layout_parts.hpp"
#include "unit/kiln_house_site.hpp"

namespace stringcourse::steel {
namespace {

using test::Site;

Site kiln_house() { return test::kiln_house_site(); }

TEST(Dowels, EveryOneStandsInACellOfBothCoursesClearOfItsWebs) {
  const Site site = kiln_house();
  const std::vector<Dowel> dowels = dowels_of(site.building, site.layout);
  ASSERT_FALSE(dowels.empty());
  for (const Dowel& dowel : dowels) {
    for (const auto& cell : {dowel.first, dowel.second}) {
      ASSERT_TRUE(cell.has_value()) << dowel.number;  // a corner's too: where the other wall runs through, in its unit
      const Length clear = site.building.bars->diameter.half_down() + site.building.bars->clearance;
      EXPECT_GE(dowel.along - cell->clear.from, clear);
      EXPECT_GE(cell->clear.to - dowel.along, clear);
    }
    EXPECT_EQ(dowel.off_face, Length::sixteenths(61));  // half of 7 5/8 in
  }
}

TEST(Dowels, OnTheModuleTheyStandAtThePublishedCellCentres) {
  // Cell centres of two-core units from the actual end face: 3 13/16 + 8 k in (derived; trade lists say 4, 12, 20 ...
  // nominal). Within a cell the bar may stand off its middle, by less than half a cell (2 1/2 in).
  const Site site = kiln_house();
  for (const Dowel& dowel : dowels_of(site.building, site.layout)) {
    const Length past = dowel.along - Length::sixteenths(61) + Length::inches(4);
    const Length in_cell = past - Length::inches(8) * past.whole_multiples(Length::inches(8));
    EXPECT_LT(in_cell > Length::inches(4) ? in_cell - Length::inches(4) : Length::inches(4) - in_cell,
              Length::sixteenths(40));
  }
}

/// One dowel reading on side AB at `along`, in from the face by `off`.
FoundDowel found_at(Site& site, Length along, Length off, Length doubt = {}) {
  Reading reading;
  reading.id = "1";
  reading.dowel = DowelReading{"AB", {}, along, off};
  site.job.readings = {reading};
  const auto found = dowels_found(site.job, site.building, site.layout, {true}, doubt);
  return found.at(0);
}

TEST(DowelsFound, ThePlannedPlacesStand) {
  Site site = kiln_house();
  for (const Dowel& dowel : dowels_of(site.building, site.layout)) {
    if (dowel.wall != 0) continue;
    const FoundDowel found = found_at(site, dowel.along, dowel.off_face);
    EXPECT_EQ(found.action, Action::Stands);
    EXPECT_EQ(found.number, dowel.number);
    EXPECT_EQ(found.off_place, Length());
  }
}

TEST(DowelsFound, NearTheClearanceTheReadingCannotTell) {
  Site site = kiln_house();
  const Dowel dowel = dowels_of(site.building, site.layout)[1];
  const FoundDowel sure = found_at(site, dowel.along, dowel.off_face);
  // Moved until just the doubt is left: fits; a hair more: cannot tell; past the clearance by the doubt: does not fit.
  const Length doubt = Length::sixteenths(1);
  const FoundDowel there = found_at(site, dowel.along, dowel.off_face + Length::sixteenths(8), doubt);
  ASSERT_EQ(there.room < sure.room, true);
  const Length to_limit = there.room;  // across is what binds from here on
  const auto at = [&](Length beyond) {
    return found_at(site, dowel.along, dowel.off_face + Length::sixteenths(8) + to_limit + beyond, doubt).action;
  };
  EXPECT_EQ(at(-doubt), Action::Stands);
  EXPECT_EQ(at(Length()), Action::CannotTell);
  EXPECT_EQ(at(doubt - Length::nanometres(1)), Action::CannotTell);
  EXPECT_EQ(at(doubt), Action::Bend);
}

TEST(DowelsFound, ABendIsSixTimesAsHighAsItGoesSideways) {
  Site site = kiln_house();
  const std::vector<Dowel> dowels = dowels_of(site.building, site.layout);
  // Out through the outer face by 1/2 in past the last place with clearance.
  int bent = 0;
  for (int step = 1; step < 40; ++step) {
    const FoundDowel found = found_at(site, dowels[1].along, dowels[1].off_face + Length::sixteenths(step));
    if (found.action != Action::Bend) continue;
    ++bent;
    EXPECT_EQ(found.height, 6 * found.shift);
    EXPECT_LE(found.height, site.building.courses[0].unit_height);
    // Across alone: what is missing to the clearance.
    EXPECT_EQ(found.shift, -found.room);
  }
  EXPECT_GT(bent, 5);
}

TEST(DowelsFound, InAWebItIsBentIntoTheNearerCellOrCutOff) {
  Site site = kiln_house();
  // Sweep the whole side: every answer is re-derived from the cells of both courses by brute force over 1/16 in.
  const Length half = site.building.bars->diameter.half_down(), clear = site.building.bars->clearance;
  const auto lawful = [&](Length along) {
    for (int course = 1; course <= 2; ++course) {
      const bond::SeenFrom place{along, site.building.series[0].thickness.half_down()};
      if (!unit_at(site.building, site.layout, 0, course, place)) continue;
      const auto cell = cell_at(site.building, site.layout, 0, course, place);
      if (!cell || along - cell->clear.from < half + clear || cell->clear.to - along < half + clear) return false;
    }
    return unit_at(site.building, site.layout, 0, 1, {along, site.building.series[0].thickness.half_down()});
  };
  const Length off = site.building.series[0].thickness.half_down();
  int bent = 0, stood = 0;
  for (Length along = Length::inches(20); along < Length::inches(110); along += Length::sixteenths(3)) {
    const FoundDowel found = found_at(site, along, off);
    if (found.action == Action::Stands || found.action == Action::LapApart) {
      EXPECT_TRUE(lawful(along));
      ++stood;
      continue;
    }
    if (found.action != Action::Bend) continue;
    EXPECT_FALSE(lawful(along));
    ++bent;
    Length nearest = Length::feet(9);
    const Length bar = along - found.off_place;
    for (int step = -160; step <= 160; ++step) {
      const Length place = along + Length::sixteenths(step);
      if (lawful(place) && place <= bar + Length::inches(8) && place >= bar - Length::inches(8))
        nearest = std::min(nearest, Length::sixteenths(step < 0 ? -step : step));
    }
    EXPECT_LE(found.shift, nearest);
    EXPECT_GT(found.shift + Length::sixteenths(1), nearest);  // the brute force steps by sixteenths
  }
  EXPECT_GT(stood, 50);
  EXPECT_GT(bent, 20);
}

TEST(DowelsFound, AwayFromItsBarItLapsApartWithinAFifthOfTheLap) {
  Site site = kiln_house();
  const Dowel dowel = dowels_of(site.building, site.layout)[1];
  // The next cell stands 8 in on: within 8 in, but beyond a fifth of a 24 in lap.
  int apart = 0;
  for (const int sign : {1, -1}) {
    const Length along = dowel.along + sign * Length::inches(8);
    site.job.steel.dowel_lap = std::nullopt;
    const FoundDowel free = found_at(site, along, dowel.off_face);
    if (free.action != Action::LapApart) continue;
    ++apart;
    EXPECT_EQ(free.apart, Length::inches(8));
    site.job.steel.dowel_lap = Length::inches(24);
    EXPECT_EQ(found_at(site, along, dowel.off_face).action, Action::CutAndReplace);
    site.job.steel.dowel_lap = Length::inches(40);
    EXPECT_EQ(found_at(site, along, dowel.off_face).action, Action::LapApart);
  }
  EXPECT_GT(apart, 0);
}

/// The fixed bars of the kiln house with this reading of a dowel on AB kept; struck by the first of so many strikes,
/// each of which is struck by the next.
std::vector<FixedBar> with_kept(Length along, const std::vector<std::string>& kept, int strikes = 0) {
  Site site = kiln_house();
  Reading reading;
  reading.id = "1";
  reading.dowel = DowelReading{"AB", {}, along, Length::sixteenths(61)};
  site.job.readings = {reading};
  for (int k = 1; k <= strikes; ++k) {
    Reading strike;
    strike.id = std::to_string(k + 1), strike.strike = std::to_string(k);
    site.job.readings.push_back(strike);
  }
  site.job.steel.kept_dowels = kept;
  const auto building = resolve(site.job);
  EXPECT_TRUE(building.has_value());
  return building->fixed_bars;
}

TEST(KeptDowels, ABarStandsWhereTheDowelWasFoundAndTakesThePlaceOfTheOneInItsCell) {
  const std::vector<FixedBar> before = with_kept(Length::inches(300), {});
  const auto cast = [](const std::vector<FixedBar>& bars) {
    std::vector<Position> places;
    for (const FixedBar& bar : bars)
      if (bar.reason == BarReason::Cast) places.push_back(bar.centre);
    return places;
  };
  EXPECT_TRUE(cast(before).empty());
  // Away from every fixed bar: one more. In the cell of a jamb's bar, half of 7 5/8 in to each side of it: that bar.
  // 3 7/8 in off is past that cell (and 3 13/16 in its web): one more.
  const auto jamb =
      std::ranges::find_if(before, [](const FixedBar& bar) { return bar.wall == 0 && bar.reason == BarReason::Jamb; });
  ASSERT_NE(jamb, before.end());
  const Length at = jamb->centre - Position();
  EXPECT_EQ(with_kept(Length::inches(300), {"1"}).size(), before.size() + 1);
  EXPECT_EQ(with_kept(at - Length::inches(2), {"1"}).size(), before.size());
  EXPECT_EQ(cast(with_kept(at - Length::inches(2), {"1"})),
            std::vector<Position>{Position::from_start(at - Length::inches(2))});
  EXPECT_EQ(with_kept(at - Length::sixteenths(60), {"1"}).size(), before.size());
  EXPECT_EQ(with_kept(at - Length::sixteenths(62), {"1"}).size(), before.size() + 1);
}

TEST(KeptDowels, AStruckReadingAnUnknownOneAndOneInADoorKeepNothing) {
  const std::size_t before = with_kept(Length::inches(300), {}).size();
  EXPECT_EQ(with_kept(Length::inches(300), {"1"}, 1).size(), before);
  EXPECT_EQ(with_kept(Length::inches(300), {"1"}, 2).size(), before + 1);  // the strike is struck
  EXPECT_EQ(with_kept(Length::inches(300), {"7"}).size(), before);
  const Site site = kiln_house();
  for (const ResolvedOpening& opening : site.building.openings) {
    if (opening.wall != 0 || opening.first_course != 1) continue;
    const Length middle = (opening.from - Position()) + (opening.to - opening.from).half_down();
    EXPECT_EQ(with_kept(middle, {"1"}).size(), before);
  }
}

}  // namespace
}  // namespace stringcourse::steel
