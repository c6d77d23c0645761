// The whole answer is never worse than what is shown at once.
#include <gtest/gtest.h>

#include <array>

#include "property/sensible_jobs.hpp"
#include "solve/solve.hpp"

namespace stringcourse {
namespace {

using property::Grain;

std::array<std::int64_t, 3> counts(const Answer& answer) {
  const Cost& cost = answer.layout.cost;  // no sensible job asks for quarter bond
  return {cost.conceded, cost.short_laps, cost.cuts};
}

Answer solved(std::uint64_t seed, Grain grain, std::int64_t budget) {
  Wishes wishes;
  wishes.search_budget = budget;
  return *solve(property::sensible_job(seed, grain), wishes);
}

// Seeds of which the search by itself lays the job worse: its room ends before it comes to what is easily found.
TEST(BestLayout, ASearchThatEndsEarlyGivesNothingAway) {
  int compared = 0;
  for (const auto& [seed, grain] : {std::pair(6, Grain::Inch), std::pair(10, Grain::Inch),
                                    std::pair(11, Grain::Sixteenth), std::pair(14, Grain::Sixteenth)}) {
    const Answer at_once = solved(static_cast<std::uint64_t>(seed), grain, 0);
    for (const std::int64_t budget : {20'000, 400'000}) {
      const Answer whole = solved(static_cast<std::uint64_t>(seed), grain, budget);
      // A rule that is relaxed at once alone is worth more than what it saves.
      if (at_once.layout.relaxed_piece == whole.layout.relaxed_piece) {
        EXPECT_LE(counts(whole), counts(at_once)) << seed << " " << budget;
        ++compared;
      }
      EXPECT_LE(whole.layout.least_possible.short_laps, whole.layout.cost.short_laps);
    }
  }
  EXPECT_GE(compared, 4);
}

}  // namespace
}  // namespace stringcourse
