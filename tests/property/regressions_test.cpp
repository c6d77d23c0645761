// Jobs on which a random search once found the layout and the checker at odds, made small and given a name.
#include <gtest/gtest.h>

#include <algorithm>

#include "certify.hpp"
#include "job/read.hpp"
#include "told.hpp"
#include "unit/walls/made_jobs.hpp"

namespace stringcourse::property {
namespace {

using tests::at;
using tests::in;
using tests::in16;
using tests::job_with;
using tests::outline_of;

void expect_certified(const Job& job) {
  const Verdict verdict = certify(job);
  EXPECT_EQ(verdict.outcome, Outcome::Solved);
  EXPECT_EQ(verdict.faults, "");
}

Answer answer_of(const Job& job) {
  auto answer = solve(job, {});
  EXPECT_TRUE(answer.has_value());
  return answer ? std::move(*answer) : Answer{};
}

Job box(int courses = 6) { return job_with(outline_of({{96}, {80}, {96}, {80}}), courses); }

TEST(Regression, ALintelOfUnitsIsListedWithTheBearingAskedFor) {
  Job job = box();
  job.openings = {tests::window_hole("W1", "AB", at("A", in(32)), in(32), in(16), 2)};
  const Answer answer = answer_of(job);
  EXPECT_EQ(faults_of(answer), "");
  ASSERT_EQ(answer.layout.lintels.size(), 1u);
  EXPECT_EQ(answer.layout.lintels.front().start_bearing, in16(7, 10));
}

// The pier beside the window is 15 5/8 in: a bearing of 15 5/8 in would take the corner unit's place.
TEST(Regression, AOnePieceLintelNeverTakesTheCornersPlace) {
  Job job = box();
  job.openings = {tests::window_hole("W1", "AB", at("A", in(16)), in(16), in(16), 2)};
  job.openings.front().lintel = Lintel{LintelMake::OnePiece, 1, std::nullopt, {}};
  expect_certified(job);
  job.openings.front().lintel->bearing = in16(15, 10);
  const Answer answer = answer_of(job);
  ASSERT_FALSE(answer.layout.stopped.empty());
  const std::string rule = test::told(answer.layout.stopped.front().rule);
  EXPECT_TRUE(rule.contains("lintel")) << rule;
  EXPECT_FALSE(answer.layout.stopped.front().remedy.empty());
}

// 3'-4" clear and a joint is 40 3/8 in; with 8 in asked at each end the shortest lintel is 63 5/8 in long. There is a
// place for it, or for one of the next two lengths, where what stands beside it is whole units in half bond; so no cut,
// no short lap, and ends that differ by no more than a half unit.
TEST(Regression, AOnePieceLintelStandsWhereItsEndsMeetWholeUnits) {
  for (const std::int64_t from : {32, 64, 96}) {
    Job job = job_with(outline_of({{240}, {192}, {240}, {192}}), 12);
    job.openings = {tests::plain_hole("D1", "AB", at("A", in(from)), in(40), in(80))};
    job.openings.front().lintel = Lintel{LintelMake::OnePiece, 1, in(8), {}};
    const Answer answer = answer_of(job);
    EXPECT_EQ(faults_of(answer), "") << from;
    ASSERT_TRUE(answer.layout.stopped.empty()) << from << ": " << test::told(answer.layout.stopped.front().rule);
    EXPECT_TRUE(answer.layout.proven) << from;
    EXPECT_EQ(answer.layout.cost.short_laps, 0) << from;
    EXPECT_EQ(answer.layout.cost.cuts, 0) << from;
    const PlacedLintel& lintel = answer.layout.lintels.front();
    EXPECT_GE(std::min(lintel.start_bearing, lintel.end_bearing), in(8)) << from;
    EXPECT_LE(magnitude(lintel.start_bearing - lintel.end_bearing), in(8)) << from;
  }
}

// 16 in from the corner a bearing of 8 in leaves 7 5/8 in for a unit and its joint, which take 8; one of 7 5/8 in, 8 in
// nominal, leaves them room: the remedy says so.
TEST(Regression, ABearingALittleOverAHalfUnitIsToldAgainstTheHalfUnit) {
  Job job = job_with(outline_of({{240}, {192}, {240}, {192}}), 12);
  job.openings = {tests::plain_hole("D1", "AB", at("A", in(16)), in(40), in(80))};
  job.openings.front().lintel = Lintel{LintelMake::OnePiece, 1, in(8), {}};
  const Answer conceding = answer_of(job);
  EXPECT_EQ(faults_of(conceding), "");
  EXPECT_TRUE(conceding.layout.stopped.empty());
  ASSERT_FALSE(conceding.layout.conceded.empty());
  const auto told =
      std::ranges::find_if(conceding.findings, [](const Finding& f) { return f.code.text().starts_with("conceded-"); });
  ASSERT_NE(told, conceding.findings.end());
  const std::string says = words::told(told->says, {Tape::Inches});
  EXPECT_NE(says.find("7 5/8\", one half unit, at D1"), std::string::npos) << says;
  job.openings.front().lintel->bearing = in16(7, 10);
  const Answer mended = answer_of(job);
  EXPECT_EQ(faults_of(mended), "");
  EXPECT_TRUE(mended.layout.stopped.empty());
  EXPECT_TRUE(mended.layout.conceded.empty());
}

TEST(Regression, AWallOfASeriesWithoutBondBeamUnitsRunsPlainThroughABeamCourse) {
  Job job = box();
  job.interior_walls = {tests::inner_wall("P", "AB", at("A", in(40)))};
  job.interior_walls.front().series = "us-4";
  job.steel.bond_beams = {6};
  expect_certified(job);
}

TEST(Regression, OverAnOpeningInABeamCourseWithoutWholeBeamUnitsStandLintelUnits) {
  Job job = box();
  job.units.stocked = {{UnitKind::Full, UnitKind::Half, UnitKind::Corner, UnitKind::BondBeamHalf, UnitKind::Lintel,
                        UnitKind::LintelHalf}};
  job.openings = {tests::window_hole("W1", "AB", at("A", in(32)), in(32), in(16), 3)};
  job.steel.bond_beams = {6};
  expect_certified(job);
}

// Walls of 140 mm with N16 bars: the corner unit is clear from shell to shell only, less than half a cell from its end.
TEST(Regression, ACornerBarInAThinWallStandsInWhatBothCornerUnitsShare) {
  for (const std::string series : {"au-140", "us-6"}) {
    Job job;
    job.name = "thin";
    const bool metric = series == "au-140";
    const Length half = metric ? Length::millimetres(200) : in(8);
    job.tape = metric ? Tape::Millimetres : Tape::Inches;
    job.units.series = series;
    job.outline = outline_of({{96}, {80}, {96}, {80}});
    for (Side& side : job.outline.sides) side.length.length = half * (side.from == "A" || side.from == "C" ? 12 : 10);
    job.heights.courses = 6;
    job.steel.bars = Bars{};
    job.steel.bars->size = metric ? "N16" : "#5";
    job.steel.bars->corners = true;
    expect_certified(job);
  }
}

/// An L-plan: E is its re-entrant corner, side EF goes on behind it.
Job l_plan() { return job_with(outline_of({{160}, {128}, {80}, {48, Turn::Left}, {80}, {80}}), 4); }

TEST(Regression, AnInteriorWallMayButtTheSquareOfAReentrantCorner) {
  Job job = l_plan();
  job.interior_walls = {tests::inner_wall("P", "EF", at("E", in(-8), Face::Near))};
  job.interior_walls.front().length = StatedLength{in(24), Basis::Nominal};
  expect_certified(job);
}

TEST(Regression, AnInteriorWallMayNotLapIntoTheSquareOfAReentrantCorner) {
  Job job = l_plan();
  job.interior_walls = {tests::inner_wall("P", "EF", at("E", in(-8), Face::Near))};
  job.interior_walls.front().length = StatedLength{in(24), Basis::Nominal};
  job.interior_walls.front().start_junction = JunctionKind::Lapped;
  const auto answer = solve(job, {});
  ASSERT_FALSE(answer.has_value());
  ASSERT_NE(tests::refusal(answer.error(), "junction-in-corner"), nullptr) << tests::codes(answer.error());
  EXPECT_EQ(tests::refusal(answer.error(), "junction-in-corner")->place, "/interior_walls/0/start_junction");
}

// Courses of one parity are alike from the bearing up, whatever the kind of those between: a beam in course 1 parts
// courses 1 and 3, not 2 and 4.
TEST(Regression, ABeamInTheFirstCourseEndsNoBandOfTheEvenCourses) {
  Job job = box();
  job.steel.bond_beams = {1};
  job.openings = {tests::plain_hole("D1", "CD", at("C", in(24)), in(27), in(24)),
                  tests::window_hole("W1", "AB", at("B", in(19)), in(16), in(16), 2)};
  const Answer answer = answer_of(job);
  EXPECT_EQ(faults_of(answer), "");
}

// The pier beside the window is 15 5/8 in and the lintel bears as much: in courses in which the other side runs
// through, its corner unit takes 7 5/8 in of that. No negative length may be shown.
TEST(Regression, AStretchThatItsEndsOverfillSaysByHowMuch) {
  Job job = box();
  job.openings = {tests::window_hole("W1", "AB", at("A", in(16)), in(16), in(16), 2)};
  job.openings.front().lintel = Lintel{LintelMake::OnePiece, 1, in16(15, 10), {}};
  const Answer answer = answer_of(job);
  ASSERT_FALSE(answer.layout.stopped.empty());
  for (const Stopped& stopped : answer.layout.stopped) {
    EXPECT_FALSE(test::told(stopped.rule).contains("-")) << test::told(stopped.rule);
    EXPECT_FALSE(stopped.remedy.empty());
  }
}

// Over the door a lintel of units ends where a deep one-piece lintel begins, 24 in on from the door's far jamb: the
// joints at that end of the deep one stand over one another, as they may, whatever else ends there.
TEST(Regression, JointsAtADeepLintelsEndAreItsOwnWhereAnotherLintelEndsToo) {
  Job job = job_with(outline_of({{304}, {288}, {304}, {288}}), 11);
  job.units.series = "us-6";
  job.openings = {tests::plain_hole("D1", "BC", at("B", in(72)), in(40), in(64)),
                  tests::plain_hole("O2", "BC", at("B", in(136)), in(120), in(64))};
  job.openings[0].lintel = Lintel{LintelMake::BuiltUp, 1, std::nullopt, {}};
  job.openings[1].lintel = Lintel{LintelMake::OnePiece, 2, std::nullopt, {}};
  for (const std::int64_t budget : {0, 20'000}) {
    const Verdict verdict = certify(job, budget);
    EXPECT_EQ(verdict.outcome, Outcome::Solved) << budget;
    EXPECT_EQ(verdict.faults, "") << budget;
  }
}

Job read(const char* text) {
  const auto job = read_job(text);
  EXPECT_TRUE(job.has_value());
  return job.value_or(Job{});
}

// A one-piece lintel leaves half a unit beside the corner of a wall that is 2 mm thicker than its corner set's leg: the
// set alone makes that corner, so that a half there is given up, and listed.
TEST(Regression, AHalfBesideALintelMakesNoCornerOfAWallThickerThanItsSet) {
  const Answer answer = answer_of(read(R"({"stringcourse": 1, "name": "shed", "tape": "millimetres",
    "units": {"series": "mine", "own_series": [{"id": "mine", "title": "Yard block", "full": "441 mm", "half": "215 mm",
      "thickness": "217 mm", "height": "215 mm", "joint": "11 mm", "full_cells": [{"from": "30 mm", "to": "205 mm"},
      {"from": "235 mm", "to": "410 mm"}], "half_cells": [{"from": "30 mm", "to": "185 mm"}], "corner_leg": "215 mm"}]},
    "outline": {"closed": false, "sides": [{"from": "A", "to": "B", "length": "2486 mm", "turn": "right"},
      {"from": "B", "to": "C", "length": "2938 mm"}]}, "interior_walls": [], "heights": {"courses": 5},
    "openings": [{"name": "W1", "on": "AB", "place": {"from": "B", "at": "452 mm"}, "sill_course": 1,
      "window": {"width": "450 mm", "height": "450 mm", "each_side": "1 mm", "above": "1 mm", "below": "1 mm"},
      "lintel": {"make": "one-piece", "courses": 2}}]})"));
  EXPECT_EQ(faults_of(answer), "");
  EXPECT_TRUE(std::ranges::any_of(answer.layout.conceded,
                                  [](const Concession& c) { return c.what == Concession::What::Corner; }));
}

// A bar of side BC stands where an inner wall laps into it: in those courses it passes that wall's end unit, in a cell.
TEST(Regression, ABarInASlotPassesACellOfTheUnitThatEnters) {
  const Answer answer = answer_of(read(R"({"stringcourse": 1, "name": "shed", "tape": "millimetres",
    "units": {"series": "au-290"}, "outline": {"closed": true, "sides": [
      {"from": "A", "to": "B", "length": "3400 mm", "turn": "right"},
      {"from": "B", "to": "C", "length": "2600 mm", "turn": "right"},
      {"from": "C", "to": "D", "length": "3400 mm", "turn": "right"},
      {"from": "D", "to": "A", "length": "2600 mm", "turn": "right"}]},
    "interior_walls": [{"name": "P1", "off": "DA", "place": {"from": "A", "at": "400 mm"}, "end_junction": "lapped"}],
    "heights": {"courses": 7}, "openings": [],
    "steel": {"bars": {"size": "N16", "corners": true, "jambs": true,
      "dimensioned": [{"on": "BC", "place": {"from": "B", "at": "500 mm"}}]}}})"));
  EXPECT_EQ(faults_of(answer), "");
  const auto slot = std::ranges::find(answer.building.junctions, JunctionKind::Lapped, &Junction::kind);
  ASSERT_NE(slot, answer.building.junctions.end());
  EXPECT_TRUE(std::ranges::any_of(answer.layout.bars, [&](const PlacedBar& bar) {
    return bar.wall == slot->main && slot->from.distance_from_start() < bar.centre &&
           bar.centre < slot->to.distance_from_start();
  }));
}

// A jog that is shorter than its walls are thick: behind the half that makes its corner stands the wall round its other
// corner, and nothing is left open.
TEST(Regression, AHalfMakesBothCornersOfAShortJogOfThickBlock) {
  const Answer answer = answer_of(read(R"({"stringcourse": 1, "name": "shed", "tape": "millimetres",
    "units": {"series": "mine", "own_series": [{"id": "mine", "title": "Yard block", "full": "390 mm", "half": "190 mm",
      "thickness": "292 mm", "height": "190 mm", "joint": "10 mm", "full_cells": [{"from": "30 mm", "to": "180 mm"},
      {"from": "210 mm", "to": "360 mm"}], "half_cells": [{"from": "30 mm", "to": "160 mm"}]}],
      "stocked": ["full", "half", "corner"], "joint_most": "13 mm"},
    "outline": {"closed": true, "sides": [{"from": "A", "to": "B", "length": "1000 mm", "turn": "right"},
      {"from": "B", "to": "C", "length": "200 mm", "turn": "left"},
      {"from": "C", "to": "D", "length": "3000 mm", "turn": "right"},
      {"from": "D", "to": "E", "length": "2400 mm", "turn": "right"},
      {"from": "E", "to": "F", "length": "4000 mm", "turn": "right"},
      {"from": "F", "to": "A", "length": "2600 mm", "turn": "right"}]},
    "interior_walls": [], "heights": {"courses": 6}, "openings": []})"));
  EXPECT_EQ(faults_of(answer), "");
  Answer moved = answer;  // without that wall there is a hole: its first unit at the jog, 100 mm on
  for (const stringcourse::Run& run : moved.layout.runs) {
    if (run.wall != 0 || run.at_end != RunEnd::ThroughCorner) continue;
    Piece& last = moved.layout.pieces[run.first_piece + run.piece_count - 1];
    last.start.numerator -= last.start.denominator * Length::millimetres(100).in_nanometres();
  }
  EXPECT_TRUE(faults_of(moved).contains("gap wider than a joint")) << faults_of(moved);
}

}  // namespace
}  // namespace stringcourse::property
