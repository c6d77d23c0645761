// Counting by the brute force's own row writer: published numbers of walls without aligned joints, and the case with
// free joints. What is tested here is the oracle itself, so no solver is called.
#include <gtest/gtest.h>

#include <algorithm>
#include <cstdlib>

#include "oracle/brute.hpp"

namespace stringcourse::oracle {
namespace {

using bond::Panel;
using bond::Row;

/// Bricks 3 and 2 long, no joints' width; two joints of neighbouring rows less than 1 apart are aligned.
Panel brick_panel(std::int64_t width) {
  Panel panel;
  panel.least_piece = 2;
  panel.least_lap = 1;
  Row row;
  row.choices = {{3, false, true, false, {}, 0}, {2, false, true, false, {}, 0}};
  row.runs = {{0, width, RunEnd::FreeEnd, RunEnd::FreeEnd, -1, -1}};
  panel.rows = {row};
  return panel;
}

struct Rows {
  std::size_t count = 0;
  std::vector<std::vector<std::size_t>> over;  // rows that may lie on each row
};

Rows rows_of_width(std::int64_t width) {
  const Panel panel = brick_panel(width);
  const std::vector<FilledRow> rows = all_rows(panel, panel.rows[0], 10'000).value();
  Rows found{rows.size(), std::vector<std::vector<std::size_t>>(rows.size())};
  for (std::size_t i = 0; i < rows.size(); ++i)
    for (std::size_t k = 0; k < i; ++k)
      if (short_laps_between(panel, rows[i], rows[k])) {
        found.over[i].push_back(k);
        found.over[k].push_back(i);
      }
  return found;
}

/// Walls of that many rows: paths in the graph of rows.
std::int64_t walls(const Rows& rows, int height) {
  std::vector<std::int64_t> ending(rows.count, 1);
  for (int h = 1; h < height; ++h) {
    std::vector<std::int64_t> next(rows.count, 0);
    for (std::size_t i = 0; i < rows.count; ++i)
      for (const std::size_t k : rows.over[i]) next[k] += ending[i];
    ending = std::move(next);
  }
  std::int64_t sum = 0;
  for (const std::int64_t count : ending) sum += count;
  return sum;
}

TEST(WallsWithoutAlignedJoints, SmallCountsAreAsPublished) {
  EXPECT_EQ(walls(rows_of_width(9), 3), 8);
  const Rows ten = rows_of_width(10), twelve = rows_of_width(12);
  EXPECT_EQ(walls(ten, 2), 8);
  EXPECT_EQ(walls(ten, 3), 12);
  EXPECT_EQ(walls(ten, 4), 18);
  EXPECT_EQ(walls(twelve, 2), 18);
  EXPECT_EQ(walls(twelve, 3), 32);
  EXPECT_EQ(walls(twelve, 4), 52);
}

TEST(WallsWithoutAlignedJoints, Width32Has3329RowsAnd806844323190414WallsOfTenRows) {
  const Rows rows = rows_of_width(32);
  EXPECT_EQ(rows.count, 3329U);
  EXPECT_EQ(walls(rows, 10), 806'844'323'190'414);
}

// ---- S1: every joint free by itself, 1 to 6 eighths, natural 3; cost 100 a whole, 70 a half, and the square of each
// joint's deviation. Rule 1 of the bond model makes the joints of a run equal, so the product never lays this wall:
// only the closed forms and the optimum are reproduced here, from the sequences that the brute force writes down. ----

constexpr std::int64_t kWhole = 125, kHalf = 61, kWidth = 775;  // eighths of an inch

Panel free_joint_panel() {
  Panel panel;
  panel.joint = 3;
  panel.joint_least = 1;
  panel.joint_most = 6;
  panel.least_piece = kHalf;
  Row row;
  row.choices = {{kWhole, false, true, false, {}, 100}, {kHalf, false, true, false, {}, 70}};
  row.runs = {{0, kWidth, RunEnd::FreeEnd, RunEnd::FreeEnd, -1, -1}};
  panel.rows = {row};
  return panel;
}

/// Least sum of squared deviations when `slack` is shared by m whole joints: as even as can be.
std::int64_t even_spread(std::int64_t slack, std::int64_t m) {
  const std::int64_t small = slack / m, wider = slack % m;
  const std::int64_t low = small - 3, high = small + 1 - 3;
  return (m - wider) * low * low + wider * high * high;
}

std::int64_t least_cost(const FilledRun& run) {
  std::int64_t cost = even_spread(run.slack, run.joints);
  for (const bond::Chosen& piece : run.pieces) cost += piece.length == kWhole ? 100 : 70;
  return cost;
}

/// Joint centres, in sixteenths, of the run with the given joint widths in eighths.
std::vector<std::int64_t> centres(const FilledRun& run, const std::vector<std::int64_t>& widths) {
  std::vector<std::int64_t> found;
  std::int64_t face = 0;
  for (std::size_t i = 0; i < widths.size(); ++i) {
    face += 2 * run.pieces[i].length;
    found.push_back(face + widths[i]);
    face += 2 * widths[i];
  }
  return found;
}

/// All ways to lay the joints as even as can be.
std::vector<std::vector<std::int64_t>> even_widths(const FilledRun& run) {
  const auto m = static_cast<std::size_t>(run.joints);
  std::vector<std::int64_t> widths(m, run.slack / run.joints);
  for (std::int64_t i = 0; i < run.slack % run.joints; ++i) ++widths[m - 1 - static_cast<std::size_t>(i)];
  std::vector<std::vector<std::int64_t>> all;
  do all.push_back(widths);
  while (std::next_permutation(widths.begin(), widths.end()));
  return all;
}

bool laps(const std::vector<std::int64_t>& a, const std::vector<std::int64_t>& b) {
  return std::all_of(a.begin(), a.end(), [&](std::int64_t p) {
    return std::all_of(b.begin(), b.end(), [&](std::int64_t q) { return std::abs(p - q) >= 64; });  // 4 in
  });
}

bool may_lie_together(const FilledRun& a, const FilledRun& b) {
  for (const auto& one : even_widths(a))
    for (const auto& other : even_widths(b))
      if (laps(centres(a, one), centres(b, other))) return true;
  return false;
}

TEST(FreeJoints, TheClosedFormsAre620And658) {
  EXPECT_EQ(even_spread(25, 5), 5 * 2 * 2);              // six wholes: 775 - 750 over 5 joints
  EXPECT_EQ(even_spread(28, 6), 4 * 2 * 2 + 2 * 1 * 1);  // five wholes, two halves: 775 - 747 over 6
}

TEST(FreeJoints, TwoCoursesCost1278) {
  const Panel panel = free_joint_panel();
  const std::vector<FilledRun> runs = all_runs(panel, panel.rows[0], 0, 10'000).value();
  ASSERT_FALSE(runs.empty());
  std::int64_t best = INT64_MAX;
  for (const FilledRun& a : runs)
    for (const FilledRun& b : runs) {
      const std::int64_t bound = least_cost(a) + least_cost(b);
      if (bound < best && may_lie_together(a, b)) best = bound;
    }
  EXPECT_EQ(best, 1278);
  // No uneven joints help: a pair whose bound is below 1278 is six wholes over six wholes, and its first joints, each
  // 125 eighths and half a joint from the end, are within (6 - 1) / 2 eighths of one another whatever the joints are.
  for (const FilledRun& a : runs)
    for (const FilledRun& b : runs)
      if (least_cost(a) + least_cost(b) < 1278) {
        EXPECT_EQ(a.pieces.front().length, kWhole);
        EXPECT_EQ(b.pieces.front().length, kWhole);
      }
}

}  // namespace
}  // namespace stringcourse::oracle
