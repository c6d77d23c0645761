// Whole small buildings off the block grid against general-purpose solvers: what we call proven costs what their
// model's least costs, nothing that we lay costs less, and what we call the least possible is never more. Without an
// argument: 100 buildings by GLPK, 25 smaller ones by CBC, which takes ten to twenty times as long for these models.
// With --long: 300 and 60.
// --seed N starts elsewhere; --each prints a line for each building.
#include <gtest/gtest.h>

#include <chrono>
#include <cstdio>

#include "bond/assemble.hpp"
#include "oracle/asked.hpp"
#include "oracle/small_buildings.hpp"
#include "property/certify.hpp"
#include "property/said_otherwise.hpp"
#include "told.hpp"

namespace stringcourse::oracle {
namespace {

/// None, the least budget that is a search, and the usual one.
constexpr std::array<std::int64_t, 3> kBudgets{0, 1'000, 400'000};
/// Looks of a whole building with which its search ends here and there, so that bounds are told that are not costs.
constexpr std::array<std::int64_t, 4> kShortRooms{320'000, 400'000, 600'000, 1'000'000};

struct Tally {
  int compared = 0, too_large = 0, kept = 0, cut = 0, proven = 0, answers = 0, one_piece = 0, panels = 0, bounds = 0;
  std::size_t columns = 0;
  double model = 0, slowest = 0;

  void print(const char* oracle, std::uint64_t last) const {
    std::printf(
        "FIGURES whole buildings, %s: seeds %llu to %llu; %d buildings compared, %d passed over as too large, %d can "
        "keep every rule, "
        "%d of those need cuts or short laps, %d with a lintel in one piece; %d panels, largest model %zu columns; of "
        "%d answers %d proven, "
        "%d not proven with a bound above nothing; oracle %.1f s in all, slowest building %.1f s\n",
        oracle, static_cast<unsigned long long>(asked.first_seed), static_cast<unsigned long long>(last), compared,
        too_large, kept, cut, one_piece, panels, columns, answers, proven, bounds, model, slowest);
    std::fflush(stdout);
  }
};

FirstThree first_three(const Cost& cost) { return {cost.short_laps, cost.cuts, cost.short_pieces}; }

std::string listed(const FirstThree& terms) {
  return std::to_string(terms[0]) + " short laps, " + std::to_string(terms[1]) + " cuts, " + std::to_string(terms[2]) +
         " short pieces";
}

bool keeps_every_rule(const Layout& layout) {
  return layout.stopped.empty() && layout.conceded.empty() && !layout.relaxed_piece && !layout.relaxed_bearing;
}

void compare(const Layout& layout, const ModelAnswer& model, const std::string& which, Tally& tally) {
  ++tally.answers;
  tally.proven += layout.proven ? 1 : 0;
  if (model.outcome == Outcome::Infeasible) {
    EXPECT_FALSE(keeps_every_rule(layout)) << which << "\nthe model finds no layout that keeps every rule";
    return;
  }
  EXPECT_EQ(layout.least_possible.conceded, 0) << which;
  EXPECT_LE(first_three(layout.least_possible), model.least)
      << which << "\nbound: " << listed(first_three(layout.least_possible)) << "\nmodel: " << listed(model.least);
  if (!layout.proven && first_three(layout.least_possible) > FirstThree{}) ++tally.bounds;
  if (keeps_every_rule(layout)) {
    EXPECT_GE(first_three(layout.cost), model.least)
        << which << "\nlaid: " << listed(first_three(layout.cost)) << "\nmodel: " << listed(model.least);
  }
  if (!layout.proven) return;
  EXPECT_TRUE(keeps_every_rule(layout)) << which << "\nproven with a rule relaxed; the model: " << listed(model.least);
  EXPECT_EQ(first_three(layout.cost), model.least)
      << which << "\nlaid: " << listed(first_three(layout.cost)) << "\nmodel: " << listed(model.least);
}

/// What the model takes for jambs and courses is what the job comes to.
void expect_same_building(const SmallBuilding& b, const Building& building, const std::string& which) {
  const ResolvedOpening& opening = building.openings.front();
  EXPECT_EQ(building.walls.front().actual.in_nanometres(), b.length - b.kit->joint) << which;
  EXPECT_EQ(opening.from.distance_from_start().in_nanometres(), b.from - b.kit->joint) << which;
  EXPECT_EQ(opening.to.distance_from_start().in_nanometres(), b.from + b.wide) << which;
  EXPECT_EQ(opening.first_course, b.sill + 1) << which;
  EXPECT_EQ(opening.last_course, b.sill + b.high) << which;
}

/// A building whose models have more columns is passed over and counted: that depends on the building alone.
std::size_t most_columns(Program program) {
  if (program == Program::Cbc) return asked.long_run ? 500 : 320;
  return asked.long_run ? 3'000 : 1'000;
}

void compare_building(std::uint64_t seed, Program program, Tally& tally) {
  const SmallBuilding building = small_building(seed);
  const std::string which = "seed " + std::to_string(seed) + ": " + say(building);
  const auto start = std::chrono::steady_clock::now();
  const ModelAnswer model = least_by_model(building, program, most_columns(program));
  const double seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
  tally.model += seconds;
  tally.slowest = std::max(tally.slowest, seconds);
  if (asked.each) {
    std::printf("%s: %d panels, %zu columns, %.2f s, outcome %d, %s\n", which.c_str(), model.panels, model.columns,
                seconds, static_cast<int>(model.outcome), listed(model.least).c_str());
    std::fflush(stdout);
  }
  if (model.outcome == Outcome::TooLarge) {
    ++tally.too_large;
    return;
  }
  ASSERT_NE(model.outcome, Outcome::OutOfTime) << which;
  ++tally.compared;
  tally.panels += model.panels;
  tally.columns = std::max(tally.columns, model.columns);
  tally.one_piece += building.make == LintelMake::OnePiece ? 1 : 0;
  tally.kept += model.outcome == Outcome::Optimal ? 1 : 0;
  tally.cut += model.outcome == Outcome::Optimal && model.least > FirstThree{} ? 1 : 0;
  for (const std::int64_t budget : kBudgets) {
    const auto answer = solve(job_of(building), Wishes{.search_budget = budget});
    ASSERT_TRUE(answer.has_value()) << which << ": " << test::told(answer.error().shown.front().reason);
    expect_same_building(building, answer->building, which);
    EXPECT_EQ(property::faults_of(*answer), "") << which;
    compare(answer->layout, model, which + ", budget " + std::to_string(budget), tally);
    if (budget != kBudgets.back()) continue;
    for (const std::int64_t looks : kShortRooms) {
      bond::PanelMemo memo(budget);
      memo.refill(looks);
      compare(bond::lay_out(answer->building, memo), model, which + ", " + std::to_string(looks) + " looks", tally);
    }
  }
}

void compare_all(const char* oracle, Program program, int wanted) {
  Tally tally;
  std::uint64_t seed = asked.first_seed;
  for (; tally.compared < wanted; ++seed) compare_building(seed, program, tally);
  tally.print(oracle, seed - 1);
  EXPECT_GE(2 * tally.kept, wanted);
  EXPECT_GE(4 * tally.cut, wanted);  // else most of them would prove little
  EXPECT_GE(2 * tally.proven, tally.answers);
}

TEST(SmallBuildings, CostWhatTheModelInCbcSays) { compare_all("CBC", Program::Cbc, asked.long_run ? 60 : 25); }
TEST(SmallBuildings, CostWhatTheModelInGlpkSays) { compare_all("GLPK", Program::Glpk, asked.long_run ? 300 : 100); }

/// Every term but bars, which are none here.
std::array<std::int64_t, 7> all_terms(const Cost& cost) {
  return {cost.conceded,       cost.short_laps,      cost.cuts, cost.short_pieces,
          cost.shifted_joints, cost.joint_deviation, cost.units};
}

/// Of buildings small enough to be proven, off the grid.
void expect_equal_costs(Job (*said_otherwise)(const Job&)) {
  int proven = 0;
  const int buildings = asked.long_run ? 2'000 : 120;
  for (int seed = 1; seed <= buildings; ++seed) {
    const SmallBuilding building = small_building(static_cast<std::uint64_t>(seed));
    const Job job = job_of(building);
    const auto one = solve(job, Wishes{}), other = solve(said_otherwise(job), Wishes{});
    ASSERT_TRUE(one && other) << seed;
    if (!one->layout.proven || !other->layout.proven) continue;
    ++proven;
    EXPECT_EQ(all_terms(one->layout.cost), all_terms(other->layout.cost)) << "seed " << seed << ": " << say(building);
  }
  std::printf("%d buildings, %d of them proven both ways\n", buildings, proven);
  EXPECT_GE(4 * proven, 3 * buildings);
}

TEST(SmallBuildings, CostTheSameInAMirror) { expect_equal_costs(property::mirrored); }
TEST(SmallBuildings, CostTheSameBegunAtAnotherCorner) { expect_equal_costs(property::with_other_first_corner); }

}  // namespace
}  // namespace stringcourse::oracle

int main(int count, char** arguments) { return stringcourse::oracle::run_as_asked(count, arguments); }
