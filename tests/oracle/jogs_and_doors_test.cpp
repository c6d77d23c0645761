// Two small cases that every setter-out meets, as panels: the 8 in jog, and the 3'-4" door under a one-piece lintel.
// US 8 in units; whole and half units only, half bond as a hard rule (the lap is h + j less 1/2 in).
#include <gtest/gtest.h>

#include <utility>

#include "bond/search.hpp"
#include "oracle/brute.hpp"
#include "oracle/milp.hpp"

namespace stringcourse::oracle {
namespace {

using bond::Panel;
using bond::Row;
using bond::RowRun;

constexpr std::int64_t kSixteenth = 1'587'500;
constexpr std::int64_t kWhole = 250 * kSixteenth, kHalf = 122 * kSixteenth, kJoint = 6 * kSixteenth;
constexpr std::int64_t kPitch = kHalf + kJoint;

Panel half_bond_panel() {
  Panel panel;
  panel.joint = kJoint;
  panel.joint_least = kJoint - 2 * kSixteenth;
  panel.joint_most = kJoint + 2 * kSixteenth;
  panel.least_piece = kHalf;
  panel.least_lap = panel.short_lap_below = kPitch - 8 * kSixteenth;
  panel.half_length = kHalf;
  panel.match_within = 4 * kSixteenth;
  panel.cut_step = kSixteenth;
  return panel;
}

void add_course(Panel& panel, std::vector<RowRun> runs, std::int32_t band) {
  Row row;
  row.runs = std::move(runs);
  row.choices = {{kWhole, false, true, false, {}, 0}, {kHalf, false, false, true, {}, 0}};
  row.band = band;
  panel.course_rows.push_back(static_cast<std::int32_t>(panel.rows.size()));
  row.courses = {panel.course_rows.back() + 1};
  panel.rows.push_back(row);
}

/// What the solver, the brute force and the model say, all three alike: whether the panel can be laid.
bool can_be_laid(const Panel& panel) {
  const auto solved = bond::solve_panel(panel, 1'000'000);
  const bool lawful = solve_by_milp(panel, Program::Glpk, {}).outcome == Outcome::Optimal;
  EXPECT_EQ(solved.has_value(), lawful);
  if (!solved) EXPECT_TRUE(solved.error().proven);
  const std::optional<BruteAnswer> brute = brute_force(panel, 3000);
  EXPECT_TRUE(brute.has_value());
  if (brute) EXPECT_EQ(brute->lawful, lawful);
  return lawful;
}

// ---- the jog: a side of 8 in nominal between a convex and a re-entrant corner, so 8 in actual; t = b = one half ----

Panel jog(bool convex_through_first, bool reentrant_through_first) {
  Panel panel = half_bond_panel();
  for (const bool first : {true, false}) {
    const bool convex_through = convex_through_first == first, reentrant_through = reentrant_through_first == first;
    RowRun run;
    run.start = convex_through ? 0 : kHalf;              // butt: -b
    run.end = kPitch + (reentrant_through ? kHalf : 0);  // through: +t; butt: t - b = 0
    run.at_start = convex_through ? RunEnd::ThroughCorner : RunEnd::ButtCorner;
    run.at_end = reentrant_through ? RunEnd::ThroughCorner : RunEnd::ButtCorner;
    add_course(panel, {run}, 0);
  }
  return panel;
}

TEST(Jog, OfEightInchesCanBeLaidOnlyIfBothCornersRunTheSameWay) {
  EXPECT_TRUE(can_be_laid(jog(true, true)));  // one whole over one joint
  EXPECT_TRUE(can_be_laid(jog(false, false)));
  EXPECT_FALSE(can_be_laid(jog(true, false)));  // a half beside a joint in each course: both joints 7 13/16 in along
  EXPECT_FALSE(can_be_laid(jog(false, true)));
}

TEST(Jog, ButtJointsOfOppositeCornersCoincideExactly) {
  const Panel panel = jog(true, false);
  const std::vector<FilledRow> first = all_rows(panel, panel.rows[0], 100).value();
  const std::vector<FilledRow> second = all_rows(panel, panel.rows[1], 100).value();
  ASSERT_EQ(first.size(), 1U);
  ASSERT_EQ(second.size(), 1U);
  ASSERT_EQ(first[0].joints.size(), 1U);
  ASSERT_EQ(second[0].joints.size(), 1U);
  EXPECT_EQ(compare(first[0].joints[0].centre, second[0].joints[0].centre), 0);
  EXPECT_EQ(compare(first[0].joints[0].centre, {125 * kSixteenth, 1}), 0);  // 7 5/8 + 3/16
}

// ---- the door: 3'-4" nominal, two courses beside it, a lintel one course deep, two courses over it ----

struct Bearings {
  std::int64_t left, right;  // half units, less the joint: 1 is 7 5/8 in, 2 is 15 5/8 in
};

/// A wall of `length` half units between free ends, its door `before` half units from the left end.
Panel door_wall(std::int64_t length, std::int64_t before, Bearings bearings) {
  constexpr std::int64_t kDoor = 5;  // 40 in
  Panel panel = half_bond_panel();
  const std::int64_t end = length * kPitch - kJoint;
  const std::int64_t left = before * kPitch - kJoint, right = (before + kDoor) * kPitch;
  for (int course = 0; course < 2; ++course)
    add_course(panel,
               {{0, left, RunEnd::FreeEnd, RunEnd::Jamb, -1, -1}, {right, end, RunEnd::Jamb, RunEnd::FreeEnd, -1, -1}},
               0);
  const std::int64_t lintel_left = left - (bearings.left * kPitch - kJoint),
                     lintel_right = right + bearings.right * kPitch - kJoint;
  add_course(panel,
             {{0, lintel_left, RunEnd::FreeEnd, RunEnd::LintelEnd, -1, 0},
              {lintel_right, end, RunEnd::LintelEnd, RunEnd::FreeEnd, 0, -1}},
             1);
  for (int course = 0; course < 2; ++course) add_course(panel, {{0, end, RunEnd::FreeEnd, RunEnd::FreeEnd, -1, -1}}, 2);
  return panel;
}

TEST(Door, OfThreeFeetFourWithEightInchBearingsOnBothSidesNeverCloses) {
  int walls = 0;
  for (std::int64_t length = 12; length <= 15; ++length)
    for (std::int64_t before = 3; before + 5 + 3 <= length; ++before, ++walls)
      EXPECT_FALSE(can_be_laid(door_wall(length, before, {1, 1}))) << length << " long, door at " << before;
  EXPECT_EQ(walls, 2 + 3 + 4 + 5);
}

TEST(Door, OfThreeFeetFourWithBearingsOfEightAndSixteenInchesCloses) {
  for (std::int64_t length = 12; length <= 15; ++length)
    for (std::int64_t before = 3; before + 5 + 3 <= length; ++before) {
      EXPECT_TRUE(can_be_laid(door_wall(length, before, {1, 2})) || can_be_laid(door_wall(length, before, {2, 1})))
          << length << " long, door at " << before;
    }
}

}  // namespace
}  // namespace stringcourse::oracle
