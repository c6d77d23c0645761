#include "ground/as_found.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

#include "tapings.hpp"
#include "told.hpp"
#include "unit/kiln_house_site.hpp"

namespace stringcourse::ground {
namespace {

using test::Site;

Site kiln_house() { return test::kiln_house_site(); }

using ground_test::in_metres;
using ground_test::metres;
using ground_test::rod;
using ground_test::taped;
using ground_test::tapings;

TEST(AsFound, PegsAreSentBackByJustAsMuchAsTheyStandOff) {
  Site site = kiln_house();
  std::minstd_rand dice(4);
  std::uniform_real_distribution<double> off(-0.02, 0.02);
  for (int round = 0; round < 100; ++round) {
    // A stays and B lies in A's own direction: what is found is then found in the plan's own axes.
    std::vector<std::pair<double, double>> stands{
        {0, 0}, {off(dice), 0}, {off(dice), off(dice)}, {off(dice), off(dice)}};
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
    // No reading is doubted; that pegs stand up to 20 mm off their places is told of the pegs.
    for (const Finding& one : found.findings)
      EXPECT_TRUE(one.code == "corner-off-place" || one.code == "diagonals-differ") << one.code.text();
  }
}

TEST(AsFound, MovesAreToldAlongTheWalls) {
  Site site = kiln_house();
  // C stands at the upper left: 1 in too far left (away from D), 1/2 in too high (away from B).
  site.job.readings = tapings(site.building, {{0, 0}, {0, 0}, {-0.0254, 0.0127}, {0, 0}});
  const AsFound found = as_found(site.job, site.building, site.layout);
  ASSERT_EQ(found.tape.state, TapeAsFound::State::Adjusted);
  EXPECT_EQ(test::told(move_said(site.building, found.tape.moves[2])), "1\" toward D, 1/2\" toward B");
  EXPECT_EQ(test::told(move_said(site.building, found.tape.moves[0])), "stays");
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

TEST(AsFound, AStrikeThatIsStruckStrikesNothing) {
  Site site = kiln_house();
  site.job.readings = tapings(site.building, {{0, 0}, {0, 0}, {0, 0}, {0, 0}});
  const auto strike = [&](const std::string& id, const std::string& of) {
    Reading entry;
    entry.id = id, entry.strike = of;
    site.job.readings.push_back(entry);
    return entries_that_count(site.job, site.building);
  };
  EXPECT_FALSE(strike("s1", "t1")[1]);
  EXPECT_TRUE(strike("s2", "s1")[1]);
  EXPECT_FALSE(strike("s3", "s2")[1]);
  EXPECT_FALSE(entries_that_count(site.job, site.building)[8]);  // a strike is never a reading
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
  EXPECT_EQ(found.findings[0].code, Code("reading-slip"));
  EXPECT_EQ(found.findings[0].place, "/readings/6");
}

TEST(AsFound, MissingDiagonalsAreAskedFor) {
  Site site = kiln_house();
  for (const Reading& reading : tapings(site.building, {{0, 0}, {0, 0}, {0, 0}, {0, 0}})) {
    const bool diagonal = (reading.tape->from == "A" && reading.tape->to == "C") ||
                          (reading.tape->from == "B" && reading.tape->to == "D");
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
  for (const Finding& finding : found.findings) EXPECT_EQ(finding.code, Code("reading-not-placed"));
}

/// Datum 48 in; corners as given, in sixteenths of fall below it.
std::vector<Reading> corners_read(std::initializer_list<int> falls) {
  std::vector<Reading> readings{rod("d", "datum", Length::inches(48))};
  const char* names[] = {"A", "B", "C", "D"};
  int k = 0;
  for (const int fall : falls)
    readings.push_back(rod(names[k], names[k], Length::inches(48) + Length::sixteenths(fall))), ++k;
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

bool has_choice(const BedAsFound& bed, BedChoice::What what) {
  return std::any_of(bed.choices.begin(), bed.choices.end(), [&](const BedChoice& one) { return one.what == what; });
}
BedChoice choice(const BedAsFound& bed, BedChoice::What what) {
  for (const BedChoice& one : bed.choices)
    if (one.what == what) return one;
  ADD_FAILURE() << "no such choice";
  return {};
}

TEST(AsFound, WhereNoLevelFitsEveryChoiceKeepsWhatItPromises) {
  Site site = kiln_house();
  site.job.readings = corners_read({60, 72, 66, 61});  // 12 sixteenths from highest to lowest: 4 too many
  const AsFound found = as_found(site.job, site.building, site.layout);
  ASSERT_TRUE(found.levels && found.levels->bed);
  const BedAsFound& bed = *found.levels->bed;
  EXPECT_EQ(bed.verdict, Verdict::DoesNotFit);
  EXPECT_EQ(bed.level.margin, Length::sixteenths(-2));
  using What = BedChoice::What;
  EXPECT_EQ(choice(bed, What::GroutFirstCourse).margin,
            Length::sixteenths(2));  // 16 sixteenths of range, 12 taken, half of the rest
  EXPECT_EQ(choice(bed, What::Grind).most, Length::sixteenths(4));  // the range is 8
  EXPECT_EQ(choice(bed, What::Grind).units, 2);                     // A (60) and D (61) stand higher than 72 - 8
  EXPECT_EQ(test::told(choice(bed, What::Grind).where), "A: 1/4\", D: 3/16\"");
  EXPECT_EQ(choice(bed, What::LevellingStrip).most, Length::sixteenths(4));
  EXPECT_EQ(choice(bed, What::Curb).most, Length::inches(2) + Length::sixteenths(12));  // 2 in over the highest
  EXPECT_FALSE(has_choice(bed, What::HalfHigh));                                        // nowhere 4 1/8 in deep
  for (const BedChoice& one : bed.choices) EXPECT_GT(one.mortar_cubic_centimetres, 0);
}

TEST(AsFound, WaysAreRankedByWhatTheyKeepThenByTheUnitsThatTheyTouch) {
  Site site = kiln_house();
  site.job.readings = corners_read({60, 72, 66, 61});
  const AsFound found = as_found(site.job, site.building, site.layout);
  const std::vector<BedChoice>& choices = found.levels->bed->choices;
  ASSERT_GT(choices.size(), 4u);
  EXPECT_TRUE(choices.front().recommended);
  EXPECT_EQ(std::ranges::count(choices, true, &BedChoice::recommended), 1);
  for (std::size_t k = 1; k < choices.size(); ++k) {
    const BedChoice &better = choices[k - 1], &worse = choices[k];
    EXPECT_TRUE(better.keeps || !worse.keeps);
    if (better.keeps == worse.keeps) EXPECT_LE(better.work, worse.work);
  }
  // Level leaves beds of 1/8 in less and more than 1/4 to 3/4 in: it comes last, and is not recommended.
  EXPECT_FALSE(choice(found.levels->bed.value(), BedChoice::What::Level).keeps);
  // Ripping saws as many units as it touches; nothing else saws any.
  for (const BedChoice& one : choices) EXPECT_EQ(one.cuts, one.what == BedChoice::What::RipUnits ? one.work : 0);
  // 5/16 in of grinding is deeper than 1/4 in: it stands behind every other way that keeps the range.
  site.job.readings = corners_read({59, 72, 66, 61});
  const AsFound deep = as_found(site.job, site.building, site.layout);
  const auto& ways = deep.levels->bed->choices;
  const auto grind = std::ranges::find(ways, BedChoice::What::Grind, &BedChoice::what);
  ASSERT_NE(grind, ways.end());
  for (auto later = std::next(grind); later != ways.end(); ++later) EXPECT_FALSE(later->keeps);
}

TEST(AsFound, PegsAreMovedBeforeThePourAndLinesAreChalkedAfterIt) {
  Site site = kiln_house();
  site.job.readings = tapings(site.building, {{0, 0}, {0, 0}, {0, -0.03}, {0, -0.03}});
  const AsFound before = as_found(site.job, site.building, site.layout);
  ASSERT_EQ(before.tape.choices.size(), 1u);
  EXPECT_EQ(before.tape.choices[0].what, ShapeRemedy::MovePegs);
  EXPECT_EQ(before.tape.choices[0].places, 2);  // C and D stand 30 mm off, A and B right
  for (Reading& one : site.job.readings) one.tape->of = Taped::Poured;
  const AsFound after = as_found(site.job, site.building, site.layout);
  ASSERT_EQ(after.tape.choices.size(), 2u);
  EXPECT_EQ(after.tape.choices[0].what, ShapeRemedy::SquareLines);
  EXPECT_TRUE(after.tape.choices[0].recommended);
  EXPECT_FALSE(after.tape.choices[1].recommended);
}

TEST(AsFound, EachReadingSaysSomethingByItselfAndNoneThatItFits) {
  Site site = kiln_house();
  const Length ab = site.building.walls[0].actual;
  site.job.readings = {taped("t", "A", "B", ab + Length::sixteenths(2)), rod("d", "datum", Length::inches(48)),
                       rod("a", "A", Length::inches(52)), rod("b", "B", Length::inches(52) + Length::sixteenths(3))};
  const AsFound found = as_found(site.job, site.building, site.layout);
  std::vector<std::string> said;
  for (const ReadingSaid& one : found.said) said.push_back(test::told(one.says));
  EXPECT_EQ(said, (std::vector<std::string>{
                      "A to B: 1/8\" longer than planned. Whether it is square takes all the lines.",
                      "A is read: the other points are compared with it.", "B lies 3/16\" lower than A."}));
}

TEST(AsFound, ACurbHoldsTheVolumeBetweenItsLevelTopAndTheGround) {
  Site site = kiln_house();
  site.job.readings = corners_read({0, 96, 96, 0});  // 6 in of fall along AB and CD
  const AsFound found = as_found(site.job, site.building, site.layout);
  ASSERT_TRUE(found.levels && found.levels->bed);
  const BedAsFound& bed = *found.levels->bed;
  const BedChoice curb = choice(bed, BedChoice::What::Curb);
  // Half of each of AB and CD by the trapezoid, BC at 8 in, DA at 2 in, less what openings at the floor leave out:
  // summed here over the units themselves, whose ground is a plane falling 6 in over the length of AB.
  const double side = in_metres(site.building.walls[0].actual), thick = in_metres(site.building.series[0].thickness);
  double sum = 0;
  for (const UnitBed& unit : bed.units) {
    const double from = in_metres(unit.from) / side, to = in_metres(unit.to) / side;
    const double share = unit.wall == 0   ? (from + to) / 2
                         : unit.wall == 1 ? 1
                         : unit.wall == 2 ? 1 - (from + to) / 2
                                          : 0;
    sum += in_metres(unit.to - unit.from) * thick * (0.0508 + 0.1524 * share);
  }
  // Heights are whole nanometres: 1e-9 m of 20 m x 0.2 m is far below a cubic centimetre; rounding is half of one.
  EXPECT_NEAR(static_cast<double>(curb.concrete_cubic_centimetres), sum * 1e6, 1);
  // 6 in of fall take a half-high unit at the low end (4 1/8 in with two thin beds), nowhere a whole course (8 1/8 in).
  EXPECT_TRUE(has_choice(bed, BedChoice::What::HalfHigh));
  EXPECT_FALSE(has_choice(bed, BedChoice::What::Step));
}

TEST(AsFound, AnEvenSlopeWithinTheLevelToleranceIsFollowedWithTheWholeMargin) {
  Site site = kiln_house();
  // 10/16 in over 28 ft is 1 in 538: less than 1/4 in in 10 ft (1 in 480). A plane through all corners leaves 1/4 in.
  site.job.readings = corners_read({60, 70, 70, 60});
  const AsFound found = as_found(site.job, site.building, site.layout);
  ASSERT_TRUE(found.levels && found.levels->bed);
  const BedChoice tilted = choice(*found.levels->bed, BedChoice::What::TiltCourse);
  EXPECT_NEAR(in_metres(tilted.margin), 0.00635, 2e-9);
  EXPECT_EQ(test::told(tilted.where), "falls 5/8\" along AB, level along BC");
}

TEST(AsFound, ATwoPegTestCorrectsReadingsByTheirSights) {
  // SOURCE: P1: pegs 80 m apart; midway 1.32 and 1.56, from 10 m beyond A 1.11 and 1.39; true difference 0.24, error
  // 0.05 m in 100 m; corrected far reading 1.345.
  Site site = kiln_house();
  site.job.tape = site.building.tape = Tape::Millimetres;
  Reading pegs;
  pegs.id = "p";
  pegs.two_peg = TwoPegReading{Length::millimetres(1320), Length::millimetres(1560),   Length::millimetres(1110),
                               Length::millimetres(1390), Length::millimetres(10'000), Length::millimetres(90'000)};
  Reading far = rod("r", "B", Length::millimetres(1390));
  far.rod->sight = Length::millimetres(90'000);
  site.job.readings = {pegs, rod("d", "datum", Length::millimetres(1345)), far};
  const AsFound found = as_found(site.job, site.building, site.layout);
  ASSERT_TRUE(found.levels && found.levels->instrument);
  EXPECT_EQ(found.levels->instrument->over, Length::millimetres(15));  // 0.05 m in 100 m, over 30 m
  EXPECT_FALSE(found.levels->instrument->level);
  EXPECT_EQ(found.levels->instrument->corrected, 1);
  ASSERT_EQ(found.levels->stations.size(), 2u);
  EXPECT_EQ(found.levels->stations[1].height, Length());  // both read 1.345 then
}

TEST(AsFound, AFloorReadInADoorwaySetsTheOpeningsHeightAndIsNoBearing) {
  Site site = kiln_house();
  site.job.readings = corners_read({64, 66, 67, 63});  // best top of the bed -57/16 in under the rod's 48 in
  const AsFound before = as_found(site.job, site.building, site.layout);
  const ResolvedOpening& door = site.building.openings[0];
  ASSERT_EQ(door.underside, -(site.building.courses[0].unit_height + Length::sixteenths(6)));
  // The planned floor: a joint under course 1, whose top is unit height over the bed's top.
  const Length first_top = before.levels->bed->level.top + site.building.courses[0].unit_height;
  Reading floor = rod("f", "f1", Length::inches(48) - (first_top + door.underside + Length::sixteenths(5)));
  floor.rod->on = "AB", floor.rod->at = door.from - Position() + Length::inches(6), floor.rod->surface = Surface::Floor;
  site.job.readings.push_back(floor);
  const AsFound found = as_found(site.job, site.building, site.layout);
  ASSERT_EQ(found.levels->doors.size(), 1u);
  EXPECT_EQ(found.levels->doors[0].tall_most, door.height() - Length::sixteenths(5));
  EXPECT_EQ(found.levels->doors[0].verdict, Verdict::DoesNotFit);
  EXPECT_EQ(found.levels->bed->level.top, before.levels->bed->level.top);
}

TEST(AsFound, ARodUpsideDownOrInAnotherUnitIsQuestionedAndLeftOutOfTheBed) {
  Site site = kiln_house();
  const auto codes = [](const AsFound& found) {
    std::vector<std::string> all;
    for (const Finding& one : found.findings) all.emplace_back(one.code.text());
    return all;
  };
  // Rods of 52 in or so; one of them entered as 52 mm, one of them read from the top of a 12 ft rod (144 - 52).
  for (const auto& [wrong, meant] : {std::pair{Length::millimetres(52), true}, std::pair{Length::inches(92), false}}) {
    site.job.readings = corners_read({64, 66, 67});
    site.job.readings.push_back(rod("w", "D", wrong));
    const AsFound found = as_found(site.job, site.building, site.layout);
    ASSERT_TRUE(found.levels && found.levels->bed);
    EXPECT_EQ(std::ranges::count(codes(found), "rod-far"), 1);
    EXPECT_EQ(found.levels->bed->level.top,
              Length::sixteenths(-66) + Length::sixteenths(8) + Length::sixteenths(1).half_down());  // A to C alone
    for (const Station& station : found.levels->stations) {
      EXPECT_EQ(station.far, station.name == "D");
      if (station.name == "D") EXPECT_EQ(station.slip.has_value(), meant);
      if (station.slip) EXPECT_EQ(station.slip->length, Length::inches(52));
    }
  }
}

TEST(AsFound, OnePointReadAtTwoPlacesIsSaid) {
  Site site = kiln_house();
  site.job.readings = corners_read({64, 66, 67, 63});
  for (const int feet : {4, 9}) {
    Reading point = rod("x" + std::to_string(feet), "stake", Length::inches(52));
    point.rod->on = "AB", point.rod->at = Length::feet(feet);
    site.job.readings.push_back(point);
  }
  const AsFound found = as_found(site.job, site.building, site.layout);
  EXPECT_TRUE(std::any_of(found.findings.begin(), found.findings.end(),
                          [](const Finding& one) { return one.code == "station-two-places"; }));
}

TEST(AsFound, ASecondTapingAgreesWithTheFirstWithinItsDoubt) {
  // 3.2905 sqrt 2 (1/16 in) / sqrt 3 = 0.16792 in.
  Site site = kiln_house();
  const Length first = Length::inches(335) + Length::sixteenths(10);
  for (const auto& [more, agrees] :
       {std::pair{Length::nanometres(4'265'000), true}, std::pair{Length::nanometres(4'266'000), false}}) {
    site.job.readings = {taped("1", "A", "B", first), taped("2", "B", "A", first - more)};
    const AsFound found = as_found(site.job, site.building, site.layout);
    ASSERT_EQ(found.tape.lines.size(), 2u);
    EXPECT_FALSE(found.tape.lines[0].again);
    EXPECT_EQ(found.tape.lines[1].again, -more);
    EXPECT_EQ(found.tape.lines[1].agrees, agrees);
  }
}

TEST(AsFound, NearALimitTheReadingsCannotTell) {
  Site site = kiln_house();
  site.job.readings = corners_read({60, 68, 66, 61});  // just the range: margin 0, doubt above 0
  const AsFound found = as_found(site.job, site.building, site.layout);
  ASSERT_TRUE(found.levels && found.levels->bed);
  EXPECT_EQ(found.levels->bed->verdict, Verdict::CannotTell);
  EXPECT_EQ(found.findings[0].code, Code("bed-cannot-tell"));
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
