// Bars from stock lengths against a general-purpose solver: every pattern of few lengths written out, and the fewest
// bars.
#include "supply/cutting_stock.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <functional>
#include <random>

#include "oracle/linear.hpp"

namespace stringcourse {
namespace {

struct Job {
  std::vector<supply::PieceWanted> pieces;  // lengths in whole inches, all different
  Length stock, kerf;
};

Job random_job(unsigned seed) {
  std::mt19937 random(seed);
  const auto between = [&](int low, int high) {
    return low + static_cast<int>(random() % static_cast<unsigned>(high - low + 1));
  };
  Job job;
  job.stock = Length::inches(between(0, 1) == 0 ? 240 : 480);
  job.kerf = Length::sixteenths(between(0, 2));
  const std::int64_t whole = job.stock.whole_multiples(Length::inches(1));
  for (int at = between(2, 6); at > 0; --at) {
    const Length length = Length::inches(between(static_cast<int>(whole / 7), static_cast<int>(whole)));
    if (std::ranges::none_of(job.pieces, [&](const auto& piece) { return piece.length == length; }))
      job.pieces.push_back({length, between(1, 40)});
  }
  return job;
}

/// All ways to cut one bar, by plain counting in sixteenths of an inch.
std::vector<std::vector<int>> patterns_of(const Job& job) {
  const auto in = [](Length length) { return length.whole_multiples(Length::sixteenths(1)); };
  std::vector<std::vector<int>> all;
  std::vector<int> cuts(job.pieces.size(), 0);
  const std::function<void(std::size_t, std::int64_t)> go = [&](std::size_t at, std::int64_t room) {
    if (at == cuts.size()) return all.push_back(cuts);
    const std::int64_t each = in(job.pieces[at].length) + in(job.kerf);
    for (cuts[at] = 0; cuts[at] * each <= room; ++cuts[at]) go(at + 1, room - cuts[at] * each);
    cuts[at] = 0;
  };
  go(0, in(job.stock) + in(job.kerf));
  return all;
}

std::int64_t fewest_bars(const Job& job, oracle::Program program) {
  oracle::LinearModel model;
  std::vector<oracle::Constraint> rows(job.pieces.size());
  for (std::size_t at = 0; at < rows.size(); ++at)
    rows[at].lower = static_cast<double>(job.pieces[at].count), rows[at].upper = oracle::kNoLimit;
  for (const std::vector<int>& cuts : patterns_of(job)) {
    const int column = model.add_binary();
    model.upper.back() = 300;
    model.objective.back() = 1;
    for (std::size_t at = 0; at < rows.size(); ++at) {
      if (cuts[at] > 0) rows[at].terms.push_back({column, static_cast<double>(cuts[at])});
    }
  }
  model.constraints = rows;
  const oracle::LinearAnswer answer = oracle::solve_linear(model, program, 60);
  EXPECT_EQ(answer.outcome, oracle::Outcome::Optimal);
  double bars = 0;
  for (const double times : answer.values) bars += times;
  return static_cast<std::int64_t>(bars + 0.5);
}

TEST(CuttingStockOracle, TwoHundredRandomJobsTakeAsFewBarsAsCbcAndGlpkSay) {
  int proven = 0;
  for (unsigned seed = 0; seed < 200; ++seed) {
    const Job job = random_job(seed);
    const auto plan = supply::cut_from_stock(job.pieces, job.stock, job.kerf);
    ASSERT_TRUE(plan) << seed;
    const std::int64_t bars = fewest_bars(job, seed % 4 == 0 ? oracle::Program::Glpk : oracle::Program::Cbc);
    EXPECT_EQ(plan->bars, bars) << seed;
    EXPECT_LE(plan->least, bars) << seed;
    proven += plan->proven();
  }
  EXPECT_GE(proven, 190);  // nearly always the relaxation, rounded up, is the least
}

}  // namespace
}  // namespace stringcourse
