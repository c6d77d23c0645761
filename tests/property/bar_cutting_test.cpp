// Bars cut from stock, of the examples: certified, and no false cutting passes.
#include "proof/bar_cutting.hpp"

#include <gtest/gtest.h>

#include <fstream>
#include <functional>
#include <sstream>

#include "job/read.hpp"
#include "solve/solve.hpp"

namespace stringcourse::property {
namespace {

Answer example(const std::string& name) {
  std::stringstream text;
  text << std::ifstream(std::string(STRINGCOURSE_ROOT) + "/examples/" + name + ".json").rdbuf();
  return *solve(*read_job(text.str()), {});
}

using Cutting = std::vector<BarsFromStock>;

proof::Violations faults_of(const Answer& answer, const Cutting& cutting) {
  return proof::check_bar_cutting(answer.job, answer.bar_pieces, cutting);
}

/// Every change of every pattern is seen.
void expect_seen(const Answer& answer, const std::function<void(BarsFromStock&, supply::CutPattern&)>& change) {
  int tried = 0;
  for (std::size_t size = 0; size < answer.bars_from_stock.size(); ++size) {
    for (std::size_t at = 0; at < answer.bars_from_stock[size].plan.patterns.size(); ++at) {
      Cutting wrong = answer.bars_from_stock;
      change(wrong[size], wrong[size].plan.patterns[at]);
      if (wrong[size].plan.patterns == answer.bars_from_stock[size].plan.patterns &&
          wrong[size].plan.bars == answer.bars_from_stock[size].plan.bars &&
          wrong[size].plan.least == answer.bars_from_stock[size].plan.least &&
          wrong[size].marks == answer.bars_from_stock[size].marks)
        continue;
      ++tried;
      EXPECT_FALSE(faults_of(answer, wrong).empty()) << answer.job.name << ", way " << at;
    }
  }
  EXPECT_GT(tried, 0) << answer.job.name;
}

TEST(BarCutting, OfTheExamplesIsCertifiedAndProven) {
  for (const char* name : {"kiln-house", "clay-store"}) {
    const Answer answer = example(name);
    ASSERT_FALSE(answer.bars_from_stock.empty()) << name;
    for (const proof::Violation& one : faults_of(answer, answer.bars_from_stock))
      ADD_FAILURE() << one.where << one.text;
    for (const BarsFromStock& size : answer.bars_from_stock)
      EXPECT_TRUE(size.plan.proven()) << name << " " << size.size;
  }
}

TEST(BarCutting, NoFalseOnePasses) {
  for (const char* name : {"kiln-house", "clay-store"}) {
    const Answer answer = example(name);
    expect_seen(answer, [](BarsFromStock&, supply::CutPattern& way) { ++way.times; });
    expect_seen(answer, [](BarsFromStock& size, supply::CutPattern& way) { ++way.times, ++size.plan.bars; });
    expect_seen(answer, [](BarsFromStock&, supply::CutPattern& way) { ++way.cuts.front(); });
    expect_seen(answer, [](BarsFromStock&, supply::CutPattern& way) { way.left += Length::sixteenths(1); });
    expect_seen(answer, [](BarsFromStock& size, supply::CutPattern&) { --size.plan.bars; });
    expect_seen(answer, [](BarsFromStock& size, supply::CutPattern&) { ++size.plan.least; });
    expect_seen(answer, [](BarsFromStock& size, supply::CutPattern&) { size.marks.pop_back(); });
  }
}

}  // namespace
}  // namespace stringcourse::property
