// The two oracles against each other, without the solver: brute force writes down every row of a tiny panel, the
// mixed-integer model never does. They must agree in every cost term, and on what cannot be laid.
#include <gtest/gtest.h>

#include <cstdio>

#include "oracle/brute.hpp"
#include "oracle/milp.hpp"
#include "oracle/random_panels.hpp"

namespace stringcourse::oracle {
namespace {

constexpr std::uint64_t kFirstSeed = 1;
constexpr std::size_t kMostRows = 600;  // per row of the panel
constexpr MilpLimits kLimits{.seconds_a_stage = 30};

struct Tally {
  int compared = 0, lawful = 0, too_large = 0;
};

bool has_lintel(const bond::Panel& panel) {
  for (const bond::Row& row : panel.rows)
    for (const bond::RowRun& run : row.runs)
      if (run.at_end == RunEnd::LintelEnd) return true;
  return false;
}

void expect_same(std::uint64_t seed, const bond::Panel& panel, Program program, Tally& tally) {
  const std::optional<BruteAnswer> brute = brute_force(panel, kMostRows);
  if (!brute) {
    ++tally.too_large;
    return;
  }
  ++tally.compared;
  const MilpAnswer milp = solve_by_milp(panel, program, kLimits);
  ASSERT_EQ(milp.outcome, brute->lawful ? Outcome::Optimal : Outcome::Infeasible)
      << "seed " << seed << ": " << say(panel);
  if (!brute->lawful) return;
  ++tally.lawful;
  EXPECT_EQ(in_order(panel, milp.cost), in_order(panel, brute->cost))
      << "seed " << seed << ": " << say(panel) << "\nmodel: " << say(milp.cost) << "\nbrute: " << say(brute->cost);
  const Judged judged = judge(panel, milp.rows);
  EXPECT_EQ(judged.broken, "") << "seed " << seed;
  EXPECT_EQ(in_order(panel, judged.cost), in_order(panel, milp.cost)) << "seed " << seed;
}

Tally compare_tiny(Program program, std::uint64_t first, int wanted) {
  Tally tally;
  for (std::uint64_t seed = first; tally.compared < wanted && seed < first + 1000; ++seed)
    expect_same(seed, random_panel(seed, PanelSize::Tiny), program, tally);
  std::printf("seeds from %llu: %d compared, %d of them lawful, %d too large for brute force\n",
              static_cast<unsigned long long>(first), tally.compared, tally.lawful, tally.too_large);
  return tally;
}

TEST(Twins, BruteForceAndTheModelInCbcAgreeOnSixtyTinyWalls) {
  const Tally tally = compare_tiny(Program::Cbc, kFirstSeed, 60);
  EXPECT_EQ(tally.compared, 60);
  EXPECT_GE(tally.lawful, 20);  // else the walls prove nothing
}

TEST(Twins, BruteForceAndTheModelInGlpkAgreeOnThirtyTinyWalls) {
  const Tally tally = compare_tiny(Program::Glpk, 10'000, 30);
  EXPECT_EQ(tally.compared, 30);
  EXPECT_GE(tally.lawful, 10);
}

/// Walls long enough for an opening with a one-piece lintel, of which few rows can be laid.
TEST(Twins, BruteForceAndTheModelInGlpkAgreeOnEightyWallsWithALintel) {
  Tally tally;
  for (std::uint64_t seed = 20'000; tally.compared < 80 && seed < 30'000; ++seed) {
    const bond::Panel panel = random_panel(seed, PanelSize::Small);
    if (has_lintel(panel)) expect_same(seed, panel, Program::Glpk, tally);
  }
  std::printf("%d compared, %d of them lawful, %d too large for brute force\n", tally.compared, tally.lawful,
              tally.too_large);
  EXPECT_EQ(tally.compared, 80);
  EXPECT_GE(tally.lawful, 8);
}

}  // namespace
}  // namespace stringcourse::oracle
