// Every layout of thousands of random jobs is certified by the checker, which shares no code with the solver.
#include <gtest/gtest.h>

#include <cstdio>
#include <cstdlib>

#include "certify.hpp"
#include "job/read.hpp"
#include "job/write.hpp"
#include "random_jobs.hpp"
#include "random_top.hpp"
#include "told.hpp"

namespace stringcourse::property {
namespace {

/// STRINGCOURSE_FIRST_SEED and STRINGCOURSE_JOBS look elsewhere and longer.
std::uint64_t number_from(const char* name, std::uint64_t otherwise) {
  const char* text = std::getenv(name);
  return text != nullptr ? std::strtoull(text, nullptr, 10) : otherwise;
}

constexpr std::int64_t kBudget = 20'000;

struct Tally {
  int solved = 0, stopped = 0, refused = 0, proven = 0;
  void count(const Verdict& verdict) {
    (verdict.outcome == Outcome::Solved ? solved : verdict.outcome == Outcome::Stopped ? stopped : refused) += 1;
    if (verdict.proven) ++proven;
  }
  void print(std::uint64_t first, std::uint64_t count) const {
    std::printf("seeds %llu + %llu: %d solved (%d proven), %d stopped, %d refused\n",
                static_cast<unsigned long long>(first), static_cast<unsigned long long>(count), solved, proven, stopped,
                refused);
  }
};

TEST(Certified, EveryLayoutOfRandomSmallJobs) {
  const std::uint64_t first = number_from("STRINGCOURSE_FIRST_SEED", 1), count = number_from("STRINGCOURSE_JOBS", 2000);
  Tally tally;
  for (std::uint64_t seed = first; seed < first + count; ++seed) {
    const Job job = random_job(seed);
    const Verdict verdict = certify(job, kBudget);
    tally.count(verdict);
    if (!verdict.faults.empty()) ADD_FAILURE() << "seed " << seed << "\n" << verdict.faults;
  }
  tally.print(first, count);
  EXPECT_GE(static_cast<std::uint64_t>(tally.solved) * 10, count * 6);  // or the jobs test nothing
  EXPECT_GE(tally.proven * 4, tally.solved * 3);                        // the budget is small
}

/// What is shown while something is dragged: no search, and yet every rule holds.
TEST(Certified, EveryQuickLayoutOfRandomSmallJobs) {
  Tally tally;
  for (std::uint64_t seed = 2001; seed <= 3000; ++seed) {
    const Verdict verdict = certify(random_job(seed), 0);
    tally.count(verdict);
    if (!verdict.faults.empty()) ADD_FAILURE() << "seed " << seed << "\n" << verdict.faults;
  }
  tally.print(2001, 1000);
  EXPECT_GE(tally.solved * 2, 1000);  // or the jobs test nothing
}

/// With a plate on top, its bolts, trusses and shores: what is listed of them is worked out again too.
TEST(Certified, EveryTopOfRandomSmallJobs) {
  Tally tally;
  std::size_t bolts = 0, without = 0;
  for (std::uint64_t seed = 3001; seed <= 3600; ++seed) {
    Job job = random_job(seed);
    add_top(job, seed, job.tape == Tape::Inches ? Length::sixteenths(1) : Length::millimetres(1));
    const auto read = read_job(write_job(job));
    ASSERT_TRUE(read.has_value() && *read == job) << "seed " << seed;
    const Verdict verdict = certify(job, 0);
    tally.count(verdict);
    if (!verdict.faults.empty()) ADD_FAILURE() << "seed " << seed << "\n" << verdict.faults;
    const auto answer = solve(job, Wishes{.search_budget = 0});
    for (std::size_t k = 0; answer && k < answer->plates.size(); ++k)
      bolts += answer->plates[k].bolts.size(), without += answer->plates[k].without.size();
  }
  tally.print(3001, 600);
  EXPECT_GT(bolts, 500u);
  EXPECT_GT(without, 100u);
}

TEST(RandomJobs, AreDocumentsThatReadBackEqual) {
  for (const Size size : {Size::Small, Size::Large})
    for (std::uint64_t seed = 1; seed <= 1500; ++seed) {
      const Job job = random_job(seed, size);
      const auto read = read_job(write_job(job));
      ASSERT_TRUE(read.has_value()) << "seed " << seed << " " << read.error().shown.front().place << " "
                                    << test::told(read.error().shown.front().reason);
      ASSERT_EQ(*read, job) << "seed " << seed;
    }
}

TEST(RandomJobs, OfOneSeedAreAlikeAndOfTwoSeedsDiffer) {
  EXPECT_EQ(random_job(7), random_job(7));
  int alike = 0;
  for (std::uint64_t seed = 1; seed < 200; ++seed) alike += random_job(seed) == random_job(seed + 1) ? 1 : 0;
  EXPECT_LT(alike, 3);
}

}  // namespace
}  // namespace stringcourse::property
