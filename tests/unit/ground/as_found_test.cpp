#include "ground/as_found.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include "unit/kiln_house_site.hpp"

namespace stringcourse::ground {
namespace {

using test::Site;

Site kiln_house() { return test::kiln_house_site(); }

Reading taped(std::string id, std::string from, std::string to, Length length) {
  Reading reading;
  reading.id = std::move(id);
  reading.tape = TapeReading{std::move(from), std::move(to), length};
  return reading;
}

Reading rod(std::string id, std::string station, Length value, std::string setup = "1") {
  Reading reading;
  reading.id = std::move(id);
  reading.rod = stringcourse::RodReading{std::move(setup), std::move(station), value, {}, {}, {}, {}};
  return reading;
}

double in_metres(Length length) { return static_cast<double>(length.in_nanometres()) * 1e-9; }
Length metres(double value) { return Length::nanometres(std::llround(value * 1e9)); }

/// All six distances between pegs that stand `off` from the plan (metres, east and north).
std::vector<Reading> tapings(const Building& building, const std::vector<std::pair<double, double>>& off) {
  std::vector<Reading> readings;
  for (std::size_t a = 0; a < 4; ++a) {
    for (std::size_t b = a + 1; b < 4; ++b) {
      const auto x = [&](std::size_t k) { return in_metres(building.corners[k].point.x) + off[k].first; };
      const auto y = [&](std::size_t k) { return in_metres(building.corners[k].point.y) + off[k].second; };
      const double dx = x(b) - x(a), dy = y(b) - y(a);
      readings.push_back(taped("t" + std::to_string(readings.size()), building.corners[a].name, building.corners[b].name, metres(std::sqrt(dx * dx + dy * dy))));
    }
  }
  return readings;
}

TEST(AsFound, PegsAreSentBackByJustAsMuchAsTheyStandOff) {
  Site site = kiln_house();
  std::minstd_rand dice(4);
  std::uniform_real_distribution<double> off(-0.02, 0.02);
  for (int round = 0; round < 100; ++round) {
    // A stays and B lies in A's own direction: what is found is then found in the plan's own axes.
    std::vector<std::pair<double, double>> stands{{0, 0}, {off(dice), 0}, {off(dice), off(dice)}, {off(dice), off(dice)}};
    site.job.readings = tapings(site.building, stands);
    const AsFound found = as_found(site.job, site.building, site.layout);
    ASSERT_EQ(found.tape.state, TapeAsFound::State::Adjusted);
    EXPECT_EQ(found.tape.freedom, 1);
    ASSERT_EQ(found.tape.moves.size(), 4u);
    for (std::size_t k = 0; k < 4; ++k) {
      // Distances are given to a nanometre; a peg's place hangs on a few of them.
      EXPECT_NEAR(in_metres(found.tape.moves[k].east), -stands[k].first, 1e-7);
      EXPECT_NEAR(in_metres(found.tape.moves[k].north), -stands[k].second, 1e-7);
    }
    EXPECT_TRUE(found.findings.empty());
  }
}

TEST(AsFound, MovesAreToldAlongTheWalls) {
  Site site = kiln_house();
  // C stands at the upper left: 1 in too far left (away from D), 1/2 in too high (away from B).
  site.job.readings = tapings(site.building, {{0, 0}, {0, 0}, {-0.0254, 0.0127}, {0, 0}});
  const AsFound found = as_found(site.job, site.building, site.layout);
  ASSERT_EQ(found.tape.state, TapeAsFound::State::Adjusted);
  EXPECT_EQ(move_text(site.building, found.tape.moves[2]), "1\" toward D, 1/2\" toward B");
  EXPECT_EQ(move_text(site.building, found.tape.moves[0]), "stays");
}

TEST(AsFound, AStruckEntryNoLongerCountsAndStaysInTheJob) {
  Site site = kiln_house();
  site.job.readings = tapings(site.building, {{0, 0}, {0, 0}, {0, 0}, {0, 0}});
  const Length right = site.job.readings[1].tape->length;
  site.job.readings[1].tape->length = right + Length::inches(2);
  EXPECT_EQ(as_found(site.job, site.building, site.layout).tape.suspicion, Suspicion::NotLocatable);
  Reading strike;
  strike.id = "s";
  strike.strike = "t1";
  site.job.readings.push_back(strike);
  site.job.readings.push_back(taped("again", "A", "C", right));
  const AsFound found = as_found(site.job, site.building, site.layout);
  EXPECT_EQ(found.tape.suspicion, Suspicion::None);
  EXPECT_EQ(found.tape.lines.size(), 6u);
  EXPECT_EQ(site.job.readings.size(), 8u);
}

TEST(AsFound, SlipsOfUnitAreOfferedAndLeftOut) {
  Site site = kiln_house();
  site.job.readings = tapings(site.building, {{0, 0}, {0, 0}, {0, 0}, {0, 0}});
  const Length right = site.job.readings[0].tape->length;
  site.job.readings.push_back(taped("wrong unit", "A", "B", Length::nanometres(right.in_nanometres() / 12)));
  const AsFound found = as_found(site.job, site.building, site.layout);
  ASSERT_TRUE(found.tape.lines[6].slip);
  EXPECT_EQ(found.tape.lines[6].slip->slip, Slip::FeetForInches);
  EXPECT_EQ(found.tape.state, TapeAsFound::State::Adjusted);
  ASSERT_EQ(found.findings.size(), 1u);
  EXPECT_EQ(found.findings[0].code, "reading-slip");
  EXPECT_EQ(found.findings[0].place, "/readings/6");
}

TEST(AsFound, MissingDiagonalsAreAskedFor) {
  Site site = kiln_house();
  for (const Reading& reading : tapings(site.building, {{0, 0}, {0, 0}, {0, 0}, {0, 0}})) {
    const bool diagonal = (reading.tape->from == "A" && reading.tape->to == "C") || (reading.tape->from == "B" && reading.tape->to == "D");
    if (!diagonal) site.job.readings.push_back(reading);
  }
  const AsFound found = as_found(site.job, site.building, site.layout);
  EXPECT_EQ(found.tape.state, TapeAsFound::State::NotDeterminate);
  ASSERT_EQ(found.tape.missing.size(), 1u);
  EXPECT_EQ(std::abs(found.tape.missing[0][0] - found.tape.missing[0][1]), 2);  // a diagonal
}

TEST(AsFound, ReadingsThatNameWhatIsNotThereAreSaidSoAndDoNoHarm) {
  Site site = kiln_house();
  site.job.readings = tapings(site.building, {{0, 0}, {0, 0}, {0, 0}, {0, 0}});
  site.job.readings.push_back(taped("x", "A", "Q", Length::feet(9)));
  Reading on_nothing = rod("y", "p", Length::inches(50));
  on_nothing.rod->on = "ZZ";
  site.job.readings.push_back(on_nothing);
  const AsFound found = as_found(site.job, site.building, site.layout);
  EXPECT_EQ(found.tape.state, TapeAsFound::State::Adjusted);
  ASSERT_EQ(found.findings.size(), 2u);
  for (const Finding& finding : found.findings) EXPECT_EQ(finding.code, "reading-not-placed");
}

/// Datum 48 in; corners as given, in sixteenths of fall below it.
std::vector<Reading> corners_read(std::initializer_list<int> falls) {
  std::vector<Reading> readings{rod("d", "datum", Length::inches(48))};
  const char* names[] = {"A", "B", "C", "D"};
  int k = 0;
  for (const int fall : falls) readings.push_back(rod(names[k], names[k], Length::inches(48) + Length::sixteenths(fall))), ++k;
  return readings;
}

TEST(AsFound, TheBedUnderEveryUnitIsTheLevelLessTheGround) {
  Site site = kiln_house();
  site.job.readings = corners_read({64, 66, 67, 63});
  const AsFound found = as_found(site.job, site.building, site.layout);
  ASSERT_TRUE(found.levels && found.levels->bed);
  const BedAsFound& bed = *found.levels->bed;
  // Heights -64 to -67 and -63 sixteenths: best top in the middle of the range, (-63 - 67)/2 + 8 = -57.
  EXPECT_EQ(bed.level.top, Length::sixteenths(-57));
  EXPECT_EQ(bed.level.margin, Length::sixteenths(2));
  EXPECT_EQ(bed.verdict, Verdict::Fits);
  EXPECT_EQ(bed.units_without, 0);
  for (const UnitBed& unit : bed.units) {
    // Along AB the ground falls from -64 to -66 evenly over the side.
    if (unit.wall != 0) continue;
    const double side = static_cast<double>(site.building.walls[0].actual.in_nanometres());
    const double at_end = -64 - 2 * static_cast<double>(unit.to.in_nanometres()) / side;
    EXPECT_NEAR(static_cast<double>(unit.thickest.in_nanometres()), (-57 - at_end) * 1'587'500, 1.5);
  }
}

TEST(AsFound, WhereNoLevelFitsEveryChoiceKeepsWhatItPromises) {
  Site site = kiln_house();
  site.job.readings = corners_read({60, 72, 66, 61});  // 12 sixteenths from highest to lowest: 4 too many
  const AsFound found = as_found(site.job, site.building, site.layout);
  ASSERT_TRUE(found.levels && found.levels->bed);
  const BedAsFound& bed = *found.levels->bed;
  EXPECT_EQ(bed.verdict, Verdict::DoesNotFit);
  EXPECT_EQ(bed.level.margin, Length::sixteenths(-2));
  ASSERT_EQ(bed.choices.size(), 5u);
  EXPECT_EQ(bed.choices[1].what, BedChoice::What::GroutFirstCourse);
  EXPECT_EQ(bed.choices[1].margin, Length::sixteenths(2));   // 16 sixteenths of range, 12 taken, half of the rest
  EXPECT_EQ(bed.choices[2].what, BedChoice::What::Grind);
  EXPECT_EQ(bed.choices[2].most, Length::sixteenths(4));     // the range is 8
  EXPECT_EQ(bed.choices[2].units, 2);                        // A (60) and D (61) stand higher than 72 - 8
  EXPECT_EQ(bed.choices[4].what, BedChoice::What::LevellingStrip);
  EXPECT_EQ(bed.choices[4].most, Length::sixteenths(4));
  for (const BedChoice& choice : bed.choices) EXPECT_GT(choice.mortar_cubic_centimetres, 0);
}

TEST(AsFound, NearALimitTheReadingsCannotTell) {
  Site site = kiln_house();
  site.job.readings = corners_read({60, 68, 66, 61});  // just the range: margin 0, doubt above 0
  const AsFound found = as_found(site.job, site.building, site.layout);
  ASSERT_TRUE(found.levels && found.levels->bed);
  EXPECT_EQ(found.levels->bed->verdict, Verdict::CannotTell);
  EXPECT_EQ(found.findings[0].code, "bed-cannot-tell");
}

TEST(AsFound, LoopsAndLooseStationsAreTold) {
  Site site = kiln_house();
  site.job.readings = corners_read({64, 64, 64, 64});
  // A second set-up sees A and C again, and C half an inch lower than before; a third sees only new points.
  site.job.readings.push_back(rod("a2", "A", Length::inches(40), "2"));
  site.job.readings.push_back(rod("c2", "C", Length::inches(40) + Length::sixteenths(8), "2"));
  site.job.readings.push_back(rod("p3", "peg", Length::inches(40), "3"));
  site.job.readings.push_back(rod("q3", "sill", Length::inches(44), "3"));
  const AsFound found = as_found(site.job, site.building, site.layout);
  ASSERT_TRUE(found.levels);
  ASSERT_EQ(found.levels->loops.size(), 1u);
  EXPECT_EQ(std::abs(found.levels->loops[0].misclosure.in_nanometres()), Length::sixteenths(8).in_nanometres());
  EXPECT_FALSE(found.levels->loops[0].closes);  // 4 readings of +-1/16: 3.29 x 2 x 0.0361 in = 0.24 in
  EXPECT_EQ(found.levels->loose, (std::vector<std::string>{"peg", "sill"}));
}

}  // namespace
}  // namespace stringcourse::ground
