// The one function: what it gathers, what it passes on, and what it says of a wall that cannot be laid.
#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "solve/solve.hpp"
#include "told.hpp"
#include "unit/walls/made_jobs.hpp"

namespace stringcourse {
namespace {

using tests::at;
using tests::in;
using tests::in16;

TEST(Solve, ARefusalOfTheWallsPassesThroughWhole) {
  Job job = tests::shed();
  job.outline.sides[1].length.length += in(3);
  job.openings = {tests::plain_hole("D1", "ZZ", at("A", in(48)), in(40), in(80))};
  const auto expected = resolve(job);
  const auto answer = solve(job, {});
  ASSERT_FALSE(expected.has_value());
  ASSERT_FALSE(answer.has_value());
  EXPECT_FALSE(answer.error().shown.empty());
  EXPECT_EQ(answer.error().shown, expected.error().shown);
  EXPECT_EQ(answer.error().beyond, expected.error().beyond);
}

/// Findings of several hold points: a sill off the courses, a lintel that bears too little, short laps.
Job talkative() {
  Job job = tests::shed();
  Opening window = tests::plain_hole("W1", "AB", at("A", in(96)), in(32), in(33));
  window.sill = StatedLength{in(34), Basis::Nominal};
  window.lintel = Lintel{LintelMake::BuiltUp, 1, in(3), {}};
  Opening door = tests::plain_hole("D1", "CD", at("C", in(60)), in(40), in(80));
  door.lintel = Lintel{LintelMake::OnePiece, 1, in16(7, 10), {}};
  job.openings = {door, window};
  job.steel.bars = Bars{};
  job.steel.bars->size = "#5";
  job.steel.bars->corners = true;
  job.steel.pour_tops = {6, 12};
  return job;
}

TEST(Solve, FindingsComeInTheOrderOfTheHoldPointsThenOfTheirPlaces) {
  const auto answer = solve(talkative(), {});
  ASSERT_TRUE(answer.has_value()) << tests::codes(answer.error());
  ASSERT_GE(answer->findings.size(), 3u);
  std::set<HoldPoint> points;
  for (std::size_t i = 0; i < answer->findings.size(); ++i) {
    points.insert(answer->findings[i].hold_point);
    if (i == 0) continue;
    const Finding &a = answer->findings[i - 1], &b = answer->findings[i];
    EXPECT_TRUE(a.hold_point < b.hold_point || (a.hold_point == b.hold_point && a.place <= b.place))
        << a.code.text() << " " << b.code.text();
  }
  EXPECT_GE(points.size(), 2u);  // or the order was not put to the test
}

TEST(Solve, EveryFindingOfTheWallsIsKept) {
  const auto building = resolve(talkative());
  const auto answer = solve(talkative(), {});
  ASSERT_TRUE(building.has_value() && answer.has_value());
  ASSERT_FALSE(building->findings.empty());
  for (const Finding& finding : building->findings)
    EXPECT_EQ(std::ranges::count(answer->findings, finding), std::ranges::count(building->findings, finding))
        << finding.code.text();
}

TEST(Solve, ShortLapsAreAFindingWithTheirNumber) {
  const auto answer = solve(talkative(), {});
  ASSERT_TRUE(answer.has_value());
  const auto found = std::ranges::find(answer->findings, Code("short-laps"), &Finding::code);
  ASSERT_EQ(found != answer->findings.end(), answer->layout.cost.short_laps > 0);
  ASSERT_GT(answer->layout.cost.short_laps, 0);
  const std::string says = test::told(found->says);
  EXPECT_TRUE(says.starts_with(std::to_string(answer->layout.cost.short_laps) + " ")) << says;
}

// A pier of 12 in between two doors, 11 5/8 in actual: a whole unit is too long, a half and the least piece (7 5/8 +
// 3/8 + 3 5/8) just fit, but with factory faces at both jambs the cut's end must meet the joint: laid so in both rows,
// the joints of neighbouring courses would stand 4 in apart.
Job with_bad_pier(Length pier) {
  Job job = tests::shed();
  job.openings = {tests::plain_hole("D1", "AB", at("A", in(48)), in(40), in(80)),
                  tests::plain_hole("D2", "AB", at("A", in(88) + pier), in(40), in(80))};
  return job;
}

TEST(Solve, AWallWithoutALawfulLayoutIsLaidAndSaysWhatItGivesUp) {
  const auto answer = solve(with_bad_pier(in(10)), {});
  ASSERT_TRUE(answer.has_value());
  EXPECT_TRUE(answer->layout.stopped.empty());
  ASSERT_FALSE(answer->layout.conceded.empty());
  for (const Concession& concession : answer->layout.conceded) {
    EXPECT_EQ(answer->building.walls[static_cast<std::size_t>(concession.wall)].name, "AB");
    EXPECT_LE(in(48), concession.from);  // the pier, its joints and the doors' jambs
    EXPECT_LE(concession.to, in(98));
  }
  const auto told = std::ranges::count_if(answer->findings, [](const Finding& f) {
    return f.code.text().starts_with("conceded-") && test::told(f.says).contains(" AB ");
  });
  EXPECT_GT(told, 0);
}

TEST(Solve, APierOfOneOrTwoHalfUnitsLays) {
  for (const std::int64_t inches : {16, 24, 32}) {
    const auto answer = solve(with_bad_pier(in(inches)), {});
    ASSERT_TRUE(answer.has_value());
    EXPECT_TRUE(answer->layout.stopped.empty()) << inches;
    EXPECT_EQ(answer->layout.cost.cuts, 0) << inches;
  }
}

}  // namespace
}  // namespace stringcourse
