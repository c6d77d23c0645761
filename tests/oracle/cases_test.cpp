// Numbered cases with known optima. The walls W0 to W8, the three rings and S1 were computed with two general-purpose
// solvers for the reference notes of this project; the counts of walls without aligned joints are published.
#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <numeric>

#include "bond/search.hpp"
#include "oracle/brute.hpp"
#include "oracle/milp.hpp"

namespace stringcourse::oracle {
namespace {

using bond::Panel;
using bond::PieceChoice;
using bond::Row;
using bond::RowRun;

constexpr std::int64_t kInch = 25'400'000;
constexpr std::int64_t kBudget = 20'000'000;

using Interval = std::pair<std::int64_t, std::int64_t>;  // inches
using CourseRuns = std::vector<Interval>;

struct Case {
  const char* name;
  std::vector<CourseRuns> courses;
  std::vector<std::int64_t> bars;  // inches
  std::int64_t control_joint;      // runs that end here end at a control joint; 0: none
  bool with_cuts;
  std::int64_t optimum;
};

bond::Cell cell(std::int64_t from_halves, std::int64_t to_halves) {
  return {from_halves * kInch / 2, to_halves * kInch / 2};
}

/// A piece of the reference's list: nominal length with the joint folded in, cells from its left face. The reference
/// tells no saw's end apart, so its cuts are entered as uncut lengths and lie the way the list says.
PieceChoice listed(std::int64_t inches, std::int64_t weight) {
  PieceChoice choice{inches * kInch, false, true, true, {}, weight};
  if (inches == 16) choice.cells = {cell(3, 14), cell(18, 29)};
  else if (inches == 8) choice.cells = {cell(3, 13)};
  else if (inches <= 9) choice.cells = {cell(3, 2 * inches - 3)};
  else choice.cells = {cell(3, 14)};
  if (inches >= 13 && inches < 16) choice.cells.push_back(cell(18, 2 * inches - 3));
  return choice;
}

std::vector<PieceChoice> list(bool with_cuts) {
  std::vector<PieceChoice> choices;
  for (std::int64_t inches = 16; inches >= 5; --inches) {
    if (inches == 16) choices.push_back(listed(16, 10));
    else if (inches == 8) choices.push_back(listed(8, 7));
    else if (with_cuts) choices.push_back(listed(inches, 25));
  }
  return choices;
}

/// Units with the joint folded in: joints are 0 wide, and joints of neighbouring courses at least 4 in apart.
Panel weighted_panel() {
  Panel panel;
  panel.weighted = true;
  panel.least_piece = 5 * kInch;
  panel.least_lap = 4 * kInch;
  panel.half_length = 8 * kInch;
  panel.cut_step = kInch;
  return panel;
}

Row row_of(const Case& wall, const CourseRuns& runs, std::int32_t band) {
  Row row;
  row.choices = list(wall.with_cuts);
  row.band = band;
  for (const auto& [start, end] : runs) {
    RowRun run{start * kInch, end * kInch, RunEnd::FreeEnd, RunEnd::FreeEnd, -1, -1};
    if (wall.control_joint > 0 && start == wall.control_joint) run.at_start = RunEnd::ControlJoint;
    if (wall.control_joint > 0 && end == wall.control_joint) run.at_end = RunEnd::ControlJoint;
    row.runs.push_back(run);
  }
  return row;
}

void add_course(Panel& panel, std::int32_t row) {
  panel.course_rows.push_back(row);
  panel.rows[static_cast<std::size_t>(row)].courses.push_back(static_cast<std::int32_t>(panel.course_rows.size()));
}

void add_bars(Panel& panel, const Case& wall) {
  for (const std::int64_t bar : wall.bars) panel.bars.push_back({bar * kInch, 0, 0});
}

/// Every course its own row, as in the reference.
Panel course_by_course(const Case& wall) {
  Panel panel = weighted_panel();
  for (std::size_t p = 0; p < wall.courses.size(); ++p) {
    panel.rows.push_back(row_of(wall, wall.courses[p], static_cast<std::int32_t>(p)));
    add_course(panel, static_cast<std::int32_t>(p));
  }
  add_bars(panel, wall);
  return panel;
}

/// Courses of one parity with the same breaks share a row, as bands do. Two courses with one another's best pair cost
/// the least in any number of them, so the optimum is the same where every band has an even number of courses.
Panel band_by_band(const Case& wall) {
  Panel panel = weighted_panel();
  std::map<std::pair<CourseRuns, std::size_t>, std::int32_t> known;
  std::map<std::vector<CourseRuns>, std::int32_t> bands;
  for (std::size_t p = 0; p < wall.courses.size(); ++p) {
    const auto& [place, is_new] =
        known.try_emplace({wall.courses[p], p % 2}, static_cast<std::int32_t>(panel.rows.size()));
    const std::size_t first = p - p % 2;
    const std::vector<CourseRuns> pair{wall.courses[first], wall.courses[std::min(first + 1, wall.courses.size() - 1)]};
    const std::int32_t band = bands.try_emplace(pair, static_cast<std::int32_t>(bands.size())).first->second;
    if (is_new) panel.rows.push_back(row_of(wall, wall.courses[p], band));
    add_course(panel, place->second);
  }
  add_bars(panel, wall);
  return panel;
}

std::vector<CourseRuns> courses(std::size_t count, const CourseRuns& runs) {
  return std::vector<CourseRuns>(count, runs);
}

std::vector<CourseRuns> stacked(std::vector<CourseRuns> low, const std::vector<CourseRuns>& high) {
  low.insert(low.end(), high.begin(), high.end());
  return low;
}

const std::vector<Case>& walls() {
  static const std::vector<Case> kWalls{
      {"W0", courses(2, {{0, 24}}), {}, 0, false, 34},
      {"W1", courses(4, {{0, 112}}), {}, 0, true, 288},
      {"W2", courses(4, {{0, 100}}), {}, 0, true, 328},
      {"W3", courses(4, {{0, 100}}), {4, 52, 96}, 0, true, 328},
      {"W4", stacked(courses(2, {{0, 40}, {76, 120}}), courses(2, {{0, 120}})), {4, 36, 80, 116}, 0, true, 368},
      {"W5", courses(3, {{0, 64}, {64, 128}}), {4, 60, 68, 124}, 64, true, 248},
      {"W6", {{{0, 104}}, {{8, 104}}, {{0, 104}}, {{8, 104}}}, {}, 0, true, 254},
  };
  return kWalls;
}

Case w8() {
  return {"W8", stacked(courses(10, {{0, 160}, {200, 384}}), courses(2, {{0, 384}})), {4, 156, 204, 380}, 0, true,
          2674};
}

void expect_solver(const Panel& panel, std::int64_t optimum, const char* name) {
  const auto solved = bond::solve_panel(panel, kBudget);
  ASSERT_TRUE(solved.has_value()) << name;
  EXPECT_TRUE(solved->proven) << name;
  EXPECT_EQ(solved->cost.short_laps, optimum) << name;
  const Judged judged = judge(panel, solved->rows);
  EXPECT_EQ(judged.broken, "") << name;
  EXPECT_EQ(judged.cost.short_laps, optimum) << name;
}

TEST(Walls, TheModelHasThePublishedOptimaCourseByCourse) {
  for (const Case& wall : walls()) {
    const MilpAnswer milp = solve_by_milp(course_by_course(wall), Program::Cbc, {});
    ASSERT_EQ(milp.outcome, Outcome::Optimal) << wall.name;
    EXPECT_EQ(milp.cost.short_laps, wall.optimum) << wall.name;
  }
}

TEST(Walls, TheSolverHasThePublishedOptimaCourseByCourse) {
  for (const Case& wall : walls()) expect_solver(course_by_course(wall), wall.optimum, wall.name);
}

TEST(Walls, TheSolverHasThePublishedOptimaInBands) {
  for (const Case& wall : walls()) expect_solver(band_by_band(wall), wall.optimum, wall.name);
}

TEST(Walls, TwelveCoursesWithAnOpeningCost2674InTheModelAndInTheSolver) {
  const Panel panel = band_by_band(w8());
  const MilpAnswer milp = solve_by_milp(panel, Program::Cbc, {});
  ASSERT_EQ(milp.outcome, Outcome::Optimal);
  EXPECT_EQ(milp.cost.short_laps, 2674);
  expect_solver(panel, 2674, "W8");
}

// ---- rings: four sides, one bit a corner; butt joints are left uncounted, as in the reference ----

/// Two courses of one side. The side runs through at its start where `start_bit` is 1, at its end where `end_bit` is 0,
/// in the first course; in the second the other way round. 8 in: thickness and joint.
Panel ring_side(std::int64_t length, int start_bit, int end_bit) {
  const Interval odd{start_bit == 1 ? 0 : 8, end_bit == 1 ? length - 8 : length};
  const Interval even{start_bit == 1 ? 8 : 0, end_bit == 1 ? length : length - 8};
  return course_by_course({"side", {{odd}, {even}}, {}, 0, true, 0});
}

using SideTable = std::array<std::array<std::int64_t, 2>, 2>;

SideTable table_by_solver(std::int64_t length) {
  SideTable table{};
  for (int start = 0; start < 2; ++start)
    for (int end = 0; end < 2; ++end) {
      const auto solved = bond::solve_panel(ring_side(length, start, end), kBudget);
      table[static_cast<std::size_t>(start)][static_cast<std::size_t>(end)] =
          solved && solved->proven ? solved->cost.short_laps : -1;
    }
  return table;
}

/// Every choice of the four corner bits, added up.
std::int64_t ring_optimum(const std::array<SideTable, 4>& sides) {
  std::int64_t best = INT64_MAX;
  for (unsigned bits = 0; bits < 16; ++bits) {
    std::int64_t cost = 0;
    for (unsigned k = 0; k < 4; ++k) cost += sides[k][(bits >> k) & 1U][(bits >> ((k + 1) % 4)) & 1U];
    best = std::min(best, cost);
  }
  return best;
}

std::int64_t rectangle_optimum(std::int64_t a, std::int64_t b) {
  const SideTable one = table_by_solver(a), other = table_by_solver(b);
  return ring_optimum({one, other, one, other});
}

TEST(Rings, TheSolversSideTablesCloseAtThePublishedOptima) {
  EXPECT_EQ(rectangle_optimum(384, 288), 1640);
  EXPECT_EQ(rectangle_optimum(296, 240), 1300);
  EXPECT_EQ(rectangle_optimum(300, 240), 1380);
}

TEST(Rings, TheModelAgreesWithTheSolverOnEveryEntryOfASideTable) {
  const SideTable table = table_by_solver(240);
  for (int start = 0; start < 2; ++start)
    for (int end = 0; end < 2; ++end) {
      const MilpAnswer milp = solve_by_milp(ring_side(240, start, end), Program::Cbc, {});
      ASSERT_EQ(milp.outcome, Outcome::Optimal);
      EXPECT_EQ(milp.cost.short_laps, table[static_cast<std::size_t>(start)][static_cast<std::size_t>(end)]);
    }
}

}  // namespace
}  // namespace stringcourse::oracle
