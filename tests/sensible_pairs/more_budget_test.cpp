// A larger search never makes a worse layout, by rules and first terms, of a building that somebody would build, and
// what a small one says to be the least possible is never more than what another finds.
#include <gtest/gtest.h>

#include <cstdio>

#include "cost_in_order.hpp"
#include "property/sensible_jobs.hpp"
#include "sensible/looks_elsewhere.hpp"

namespace stringcourse::property {
namespace {

constexpr std::array<std::int64_t, 4> kBudgets{0, 2'000, 20'000, 400'000};

/// One building at every budget; no answers where it is refused.
std::vector<Answer> answers_of(const Job& job) {
  std::vector<Answer> answers;
  for (const std::int64_t budget : kBudgets) {
    auto answer = solve(job, Wishes{.search_budget = budget});
    if (!answer) return {};
    answers.push_back(std::move(*answer));
  }
  return answers;
}

struct Tally {
  int compared = 0, worse = 0, better = 0, proven = 0;
};

void compare(const std::vector<Answer>& answers, const std::string& which, Tally& tally) {
  ++tally.compared;
  tally.proven += answers.back().layout.proven ? 1 : 0;
  for (std::size_t more = 1; more < answers.size(); ++more) {
    const RulesAndFirstTerms less_cost = rules_and_first_terms(answers[more - 1].layout),
                             cost = rules_and_first_terms(answers[more].layout);
    EXPECT_LE(cost, less_cost) << which << " budget " << kBudgets[more - 1] << ": " << listed(less_cost) << "; budget "
                               << kBudgets[more] << ": " << listed(cost);
    tally.worse += less_cost < cost ? 1 : 0;
    tally.better += cost < less_cost ? 1 : 0;
  }
  for (std::size_t bound = 0; bound < answers.size(); ++bound)
    for (std::size_t found = 0; found < answers.size(); ++found) {
      EXPECT_LE(least_first_terms(answers[bound].layout), first_terms(answers[found].layout))
          << which << ": the bound of budget " << kBudgets[bound] << " against what " << kBudgets[found] << " finds";
    }
}

void compare_all(Grain grain, std::uint64_t otherwise) {
  const Seeds looked = seeds(otherwise);
  Tally tally;
  for (std::uint64_t seed = looked.first; seed < looked.beyond(); ++seed) {
    const std::vector<Answer> answers = answers_of(sensible_job(seed, grain));
    if (!answers.empty())
      compare(answers, "grain " + std::to_string(static_cast<int>(grain)) + " seed " + std::to_string(seed), tally);
  }
  std::printf("%d buildings at %zu budgets, %d proven at the largest; %d steps found better layouts, %d worse ones\n",
              tally.compared, kBudgets.size(), tally.proven, tally.better, tally.worse);
  EXPECT_GE(tally.compared * 10, static_cast<int>(looked.count) * 8);
}

TEST(MoreBudget, NeverLaysABuildingOnTheModuleWorse) { compare_all(Grain::Module, 20); }
TEST(MoreBudget, NeverLaysABuildingOfWholeInchesWorse) { compare_all(Grain::Inch, 6); }
TEST(MoreBudget, NeverLaysABuildingOfSixteenthsWorse) { compare_all(Grain::Sixteenth, 6); }

}  // namespace
}  // namespace stringcourse::property
