// Joint reinforcement and ties by hand.
#include "steel/wires.hpp"

#include <gtest/gtest.h>

#include "solve/solve.hpp"
#include "unit/walls/made_jobs.hpp"

namespace stringcourse::tests {
namespace {

steel::Wires wires_of(Job job) {
  job.steel.wire_every = 2;
  return solve(job, {})->wires;
}

// By hand: the shed is 24 ft by 20 ft, so its sides are 287 5/8 in and 239 5/8 in long; legs of 24 in and laps of 6 in
// leave 251 5/8 in and 203 5/8 in. In pieces of 120 in, each 114 in on: 120 + 114 + 17 5/8 reach, and 120 + 83 5/8.
TEST(JointReinforcement, PiecesLapFromCornerToCorner) {
  Job job = shed();
  job.openings.clear();
  const steel::Wires wires = wires_of(job);
  ASSERT_EQ(wires.courses.front(), 2);
  ASSERT_EQ(wires.stretches.size(), 4 * wires.courses.size());
  EXPECT_EQ(wires.stretches[0].from, in(18));
  EXPECT_EQ(wires.stretches[0].to, in16(269, 10));
  EXPECT_EQ(wires.stretches[0].pieces, 3);
  EXPECT_EQ(wires.stretches[0].last, in16(23, 10));
  EXPECT_EQ(wires.stretches[1].pieces, 2);
  EXPECT_EQ(wires.stretches[1].last, in16(89, 10));
  EXPECT_EQ(wires.corner_count, static_cast<int>(4 * wires.courses.size()));
  EXPECT_EQ(wires.pieces, static_cast<int>(10 * wires.courses.size()));
  // By hand: in each bed six whole lengths, of which 23 5/8 in is cut twice and 89 5/8 in twice: one of either goes
  // into one length.
  EXPECT_EQ(wires.to_buy, static_cast<int>(8 * wires.courses.size()));
}

TEST(JointReinforcement, ItStopsAtJambsAndNotOnTheLastCourse) {
  Job job = shed();
  job.openings = {plain_hole("W1", "AB", at("A", in(96)), in(48), in(48))};
  const steel::Wires wires = wires_of(job);
  const auto answer = solve(job, {});
  ASSERT_EQ(answer->building.openings.size(), 1u);
  EXPECT_LT(wires.courses.back(), static_cast<int>(answer->building.courses.size()));
  for (const ResolvedOpening& opening : answer->building.openings) {
    for (const steel::WireStretch& one : wires.stretches) {
      if (one.wall != opening.wall || one.course < opening.first_course || one.course > opening.last_course) continue;
      EXPECT_TRUE(one.to < opening.from.distance_from_start() || one.from > opening.to.distance_from_start());
    }
  }
}

/// The shed with a wall across it, off AB from 96 in to 103 5/8 in or so: its middle.
Job with_wall_across(JunctionKind kind) {
  Job job = shed();
  job.openings.clear();
  job.interior_walls = {{"P", "AB", at("A", in(96)), {}, kind, kind, {}}};
  return job;
}

// By hand: a tee's legs are 24 in from the middle of the wall that meets; laps of 6 in leave 18 in each way without a
// straight piece. The wall across is laid from the face of AB: its leg there is 24 in less AB's 7 5/8 in, and 6 in lap
// that: from 10 3/8 in.
TEST(JointReinforcement, InnerWallsAreTiedByTees) {
  const auto answer = solve(
      [] {
        Job job = with_wall_across(JunctionKind::Tied);
        job.steel.wire_every = 2;
        return job;
      }(),
      {});
  const steel::Wires& wires = answer->wires;
  ASSERT_EQ(answer->building.junctions.size(), 2u);
  const Junction& junction = answer->building.junctions.front();
  const Length middle = junction.from.distance_from_start() + (junction.to - junction.from).half_down();
  EXPECT_EQ(wires.tee_count, static_cast<int>(2 * wires.courses.size()));
  std::vector<steel::WireStretch> on_main, across;
  for (const steel::WireStretch& one : wires.stretches) {
    if (one.course != 2) continue;
    if (one.wall == junction.main) on_main.push_back(one);
    if (one.wall == junction.abutting) across.push_back(one);
  }
  ASSERT_EQ(on_main.size(), 2u);
  EXPECT_EQ(on_main[0].to, middle - in(18));
  EXPECT_EQ(on_main[0].at_end, steel::WireEnd::Tee);
  EXPECT_EQ(on_main[1].from, middle + in(18));
  ASSERT_EQ(across.size(), 1u);
  EXPECT_EQ(across[0].at_start, steel::WireEnd::Tee);
  EXPECT_EQ(across[0].from, in16(10, 6));
}

TEST(JointReinforcement, ItStopsAtInnerWallsThatAJointPartsOrThatTheJobDoesNotTie) {
  EXPECT_EQ(wires_of(with_wall_across(JunctionKind::ControlJoint)).tee_count, 0);
  Job job = with_wall_across(JunctionKind::Lapped);
  EXPECT_GT(wires_of(job).tee_count, 0);
  job.steel.wire_tees = WireTees::None;
  const steel::Wires wires = wires_of(job);
  EXPECT_EQ(wires.tee_count, 0);
  EXPECT_TRUE(std::ranges::none_of(wires.stretches, [](const steel::WireStretch& one) {
    return one.at_start == steel::WireEnd::Tee || one.at_end == steel::WireEnd::Tee;
  }));
}

// A leg of 14 in past a wall of 7 5/8 in leaves 6 3/8 in, a lap of 6 in; one of 13 in does not.
TEST(JointReinforcement, LegsTooShortForATeeAreSaid) {
  Job job = with_wall_across(JunctionKind::Tied);
  job.steel.wire_leg = in(14);
  EXPECT_TRUE(wires_of(job).unsaid.empty());
  job.steel.wire_leg = in(13);
  ASSERT_EQ(wires_of(job).unsaid.size(), 1u);
  job.steel.wire_tees = WireTees::None;
  EXPECT_TRUE(wires_of(job).unsaid.empty());
}

TEST(JointReinforcement, LengthsThatNoOneLapsAreSaid) {
  Job job = shed();
  job.steel.wire_stock = in(10);
  EXPECT_EQ(wires_of(job).unsaid.size(), 1u);
  EXPECT_TRUE(wires_of(job).stretches.empty());
  job.steel.wire_stock = {};
  job.steel.wire_leg = in(6);
  EXPECT_EQ(wires_of(job).unsaid.size(), 1u);
}

/// By hand: of 12 courses the third, sixth and ninth carry ties, not the last; the wall across has two ends.
TEST(Ties, LieAtBothEndsOfAnInnerWallAsOftenAsTheJobSays) {
  Job job = with_wall_across(JunctionKind::Tied);
  job.heights = {};
  job.heights.courses = 12;
  EXPECT_EQ(solve(job, {})->ties.unsaid.size(), 2u) << "how often is not said";
  job.steel.tie_every = 3;
  const steel::Ties ties = solve(job, {})->ties;
  EXPECT_TRUE(ties.unsaid.empty());
  ASSERT_EQ(ties.ties.size(), 6u);
  for (std::size_t k = 0; k < ties.ties.size(); ++k) EXPECT_EQ(ties.ties[k].course, static_cast<int>(3 + 3 * (k / 2)));
}

TEST(Ties, AreNeitherInJointsNorWhereUnitsEnterTheWallNorWhereWireTies) {
  for (const JunctionKind kind : {JunctionKind::ControlJoint, JunctionKind::Lapped}) {
    Job job = with_wall_across(kind);
    job.steel.tie_every = 2;
    const steel::Ties ties = solve(job, {})->ties;
    EXPECT_TRUE(ties.ties.empty() && ties.unsaid.empty());
  }
  Job job = with_wall_across(JunctionKind::Tied);
  job.steel.wire_every = 2;
  EXPECT_TRUE(solve(job, {})->ties.unsaid.empty()) << "tees of joint reinforcement tie it";
  job.steel.wire_tees = WireTees::None;
  EXPECT_EQ(solve(job, {})->ties.unsaid.size(), 2u);
}

}  // namespace
}  // namespace stringcourse::tests
