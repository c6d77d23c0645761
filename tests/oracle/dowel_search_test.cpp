// The search for a layout that saves dowels, against every set of them priced by the slow twin of the bond solver.
#include <gtest/gtest.h>

#include <random>

#include "bond/assemble.hpp"
#include "bond/panel_site.hpp"
#include "ground/as_found.hpp"
#include "oracle/brute.hpp"
#include "steel/dowel_search.hpp"
#include "walls/resolve.hpp"

namespace stringcourse::steel {
namespace {

/// One free-standing wall, three courses, bars only where they are kept.
Job small_wall(Length length) {
  Job job;
  job.name = "wall";
  job.units.series = "us-8";
  job.units.cuts = std::vector<Length>{};  // a make-up piece in each run is all that is cut: the rows stay few
  job.outline.closed = false;
  job.outline.sides = {Side{"", "A", "B", {length, Basis::Nominal}, std::nullopt, std::nullopt}};
  job.heights.courses = 3;
  job.steel.bars = Bars{};
  job.steel.bars->size = "#5";
  job.steel.bars->grout = Grout::Fine;
  return job;
}

/// The least cost with these kept, by brute force; none where nothing lays.
std::optional<Cost> brute_cost(Job job, const std::vector<std::string>& kept) {
  job.steel.kept_dowels = kept;
  const auto building = resolve(job);
  if (!building) return std::nullopt;
  const auto bits = bond::bits_of(*building);
  const auto sites = bond::sites_of(*building, bits);
  EXPECT_EQ(sites.size(), 1u);
  const auto answer =
      oracle::brute_force(bond::panel_of(*building, sites[0], bits, 0, {}, bond::Strictness::Full), 20'000);
  EXPECT_TRUE(answer.has_value());
  if (!answer || !answer->lawful) return std::nullopt;
  return answer->cost;
}

std::array<std::int64_t, 3> first_terms(const Cost& cost) { return {cost.short_laps, cost.cuts, cost.short_pieces}; }

struct BestOfAll {
  int stands = 0;
  std::optional<std::array<std::int64_t, 3>> cost;
};

BestOfAll every_set(const Job& job) {
  BestOfAll best;
  const std::size_t count = job.readings.size();
  for (unsigned set = 1; set < 1U << count; ++set) {
    std::vector<std::string> kept;
    for (std::size_t k = 0; k < count; ++k)
      if ((set >> k & 1) != 0) kept.push_back(job.readings[k].id);
    const int stands = static_cast<int>(kept.size());
    if (stands < best.stands) continue;
    const auto cost = brute_cost(job, kept);
    if (!cost) continue;
    const auto terms = first_terms(*cost);
    if (stands > best.stands || !best.cost || terms < *best.cost) best = {stands, terms};
  }
  return best;
}

TEST(DowelSearch, SavesAsManyOfTheDowelsOfASmallWallAsAnySetByBruteForceAtTheLeastCost) {
  std::mt19937 random(20261127);
  int saved_some = 0, saved_not_all = 0, dearer = 0;
  for (int round = 0; round < 300; ++round) {
    // 40 to 60 in: three to five units a row; on the 8 in grid and off it.
    const Length length = Length::inches(40) + Length::sixteenths(static_cast<std::int64_t>(random() % 20) * 16);
    Job job = small_wall(length);
    for (int k = 0; k < 3; ++k) {
      // One in each third, anywhere in it: more than 4 in from the next, so that none is taken for another's bar.
      const std::int64_t third = length.in_nanometres() / 1'587'500 / 3;
      const Length at =
          Length::sixteenths(third * k + 34 + static_cast<std::int64_t>(random() % static_cast<unsigned>(third - 68)));
      Reading reading;
      reading.id = std::string(1, static_cast<char>('p' + k));
      reading.dowel = DowelReading{"AB", {}, at, Length::sixteenths(61)};
      job.readings.push_back(reading);
    }
    const auto building = resolve(job);
    ASSERT_TRUE(building.has_value());
    bond::PanelMemo memo(400'000);
    const Layout layout = bond::lay_out(*building, memo);
    if (!layout.stopped.empty() || layout.relaxed_piece || layout.cost.conceded != 0)
      continue;  // brute force keeps the rules
    const std::vector<bool> counts(3, true);
    const auto found = dowels_found(job, *building, layout, counts, Length());
    const DowelSearch search = search_dowels(job, layout, found, counts, Length(), {400'000, 400'000, 60});
    EXPECT_TRUE(search.complete);
    const BestOfAll best = every_set(job);
    ASSERT_EQ(search.layouts.empty() ? 0 : search.layouts[0].stands, best.stands) << "round " << round;
    if (best.stands == 0) continue;
    const DowelLayout& first = search.layouts[0];
    EXPECT_TRUE(first.proven);
    const auto terms = *best.cost;
    EXPECT_EQ(first.short_laps + layout.cost.short_laps, terms[0]) << "round " << round;
    EXPECT_EQ(first.cuts + layout.cost.cuts, terms[1]) << "round " << round;
    ++saved_some, saved_not_all += best.stands < 3, dearer += first.cuts > 0 || first.short_laps > 0;
  }
  // The walls are worth asking about: some save all, some not, some at the cost of bond or cuts.
  EXPECT_GT(saved_some, 150);
  EXPECT_GT(saved_not_all, 5);
  EXPECT_LT(saved_not_all, saved_some);
  EXPECT_GT(dearer, 0);
}

}  // namespace
}  // namespace stringcourse::steel
