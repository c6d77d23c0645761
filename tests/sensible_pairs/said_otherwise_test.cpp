// Buildings off the block grid said in two ways: seen in a mirror, begun at another corner, with other names, written
// in millimetres, changed and changed back.
#include <gtest/gtest.h>

#include <cstdio>

#include "bond/panel_memo.hpp"
#include "cost_in_order.hpp"
#include "document/answer_json.hpp"
#include "job/read.hpp"
#include "job/write.hpp"
#include "property/said_otherwise.hpp"
#include "property/sensible_jobs.hpp"
#include "sensible/looks_elsewhere.hpp"
#include "told.hpp"
#include "walls/resolve.hpp"

namespace stringcourse::property {
namespace {

constexpr std::int64_t kBudget = 20'000, kSmall = 2'000, kDragged = 0;

/// Off the grid by turns: whole inches (10 mm), sixteenths (mm).
Job building(std::uint64_t seed) { return sensible_job(seed, seed % 2 == 0 ? Grain::Sixteenth : Grain::Inch); }

std::string name(std::uint64_t seed) { return "seed " + std::to_string(seed); }

std::optional<Answer> solved(const Job& job, std::int64_t budget) {
  auto answer = solve(job, Wishes{.search_budget = budget});
  if (!answer) return std::nullopt;
  return std::move(*answer);
}

struct Tally {
  int compared = 0, proven = 0;
  void print(const char* what) const {
    std::printf("%s: %d buildings compared, %d of them proven both ways\n", what, compared, proven);
  }
};

/// Two plans of which each layout of the one is one of the other: of what is proven both ways the cost is equal, and
/// what the one proves to be least is never more than what the other finds.
void expect_alike(const Job& job, const Job& other, std::uint64_t seed, Tally& tally) {
  const auto a = solved(job, kBudget), b = solved(other, kBudget);
  ASSERT_EQ(a.has_value(), b.has_value()) << name(seed);
  if (!a) return;
  ++tally.compared;
  EXPECT_LE(least_first_terms(a->layout), first_terms(b->layout)) << name(seed);
  EXPECT_LE(least_first_terms(b->layout), first_terms(a->layout)) << name(seed);
  if (!a->layout.proven || !b->layout.proven) return;
  ++tally.proven;
  EXPECT_EQ(cost_in_order(*a), cost_in_order(*b))
      << name(seed) << ": " << listed(cost_in_order(*a)) << " and " << listed(cost_in_order(*b));
}

TEST(SaidOtherwise, MirroredBuildingsCostTheSame) {
  Tally tally;
  for (std::uint64_t seed = seeds(20).first; seed < seeds(20).beyond(); ++seed) {
    Job job = building(seed);
    job.control_joints.rule = JointRule::None;  // a rule spaces its joints from the wall's start
    expect_alike(job, mirrored(job), seed, tally);
  }
  tally.print("mirrored");
  EXPECT_GT(tally.compared, 0);
}

TEST(SaidOtherwise, TheFirstCornerDoesNotMatter) {
  Tally tally;
  for (std::uint64_t seed = seeds(20).first; seed < seeds(20).beyond(); ++seed)
    expect_alike(building(seed), with_other_first_corner(building(seed)), seed, tally);
  tally.print("another first corner");
  EXPECT_GT(tally.compared, 0);
}

/// Everything that is laid, as one text: by wall, course and place; no name is in it.
std::string laid(const Layout& layout) {
  std::string text;
  const auto put = [&](auto value) { text += std::to_string(static_cast<std::int64_t>(value)) + " "; };
  for (const Run& run : layout.runs) {
    for (const std::int64_t value :
         {std::int64_t{run.wall}, std::int64_t{run.course}, run.start.in_nanometres(), run.end.in_nanometres(),
          std::int64_t{run.joints}, run.slack.in_nanometres(), std::int64_t{run.piece_count}})
      put(value);
  }
  for (const Piece& piece : layout.pieces) {
    put(piece.length.in_nanometres());
    put(piece.kind);
    put(piece.cut);
  }
  for (const PlacedLintel& lintel : layout.lintels) {
    put(lintel.start_bearing.in_nanometres());
    put(lintel.end_bearing.in_nanometres());
  }
  for (const PlacedBar& bar : layout.bars) {
    put(bar.wall);
    put(bar.centre.in_nanometres());
  }
  const Cost &cost = layout.cost, &least = layout.least_possible;
  for (const std::int64_t value :
       {cost.conceded, cost.short_laps, cost.cuts, cost.short_pieces, cost.shifted_joints, cost.extra_bars,
        cost.joint_deviation, cost.units, least.conceded, least.short_laps, least.cuts})
    put(value);
  put(layout.proven);
  return text;
}

void expect_the_same(const Job& job, const Job& other, std::uint64_t seed, std::int64_t budget, Tally& tally) {
  const auto a = solved(job, budget), b = solved(other, budget);
  ASSERT_EQ(a.has_value(), b.has_value()) << name(seed);
  if (!a) return;
  ++tally.compared;
  tally.proven += a->layout.proven ? 1 : 0;
  EXPECT_TRUE(laid(a->layout) == laid(b->layout)) << name(seed) << " is laid otherwise";
}

TEST(SaidOtherwise, NamesOfCornersAndOpeningsMoveNoPiece) {
  Tally tally;
  for (std::uint64_t seed = seeds(24).first; seed < seeds(24).beyond(); ++seed)
    expect_the_same(building(seed), renamed(building(seed)), seed, seed % 8 == 0 ? kBudget : kSmall, tally);
  tally.print("other names");
  EXPECT_GT(tally.compared, 0);
}

TEST(SaidOtherwise, InchesWrittenInMillimetresGiveTheSameLayout) {
  Tally tally;
  for (std::uint64_t seed = seeds(24).first; seed < seeds(24).beyond(); ++seed) {
    Job job = building(seed);
    if (job.tape != Tape::Inches) continue;                      // a millimetre is no whole part of an inch
    if (job.steel.bars) job.steel.bars->spacing = std::nullopt;  // spaced bars stand on marks of the tape
    Job other = job;
    other.tape = Tape::Millimetres;
    const auto read = read_job(write_job(other));
    ASSERT_TRUE(read.has_value()) << name(seed);
    EXPECT_EQ(*read, other) << name(seed);
    expect_the_same(job, *read, seed, seed % 8 == 0 ? kBudget : kSmall, tally);
  }
  tally.print("in millimetres");
  EXPECT_GT(tally.compared, 0);
}

/// As a hand does it: an opening goes along its wall in three steps and comes back, and what was solved on the way is
/// known.
TEST(SaidOtherwise, AnOpeningMovedThereAndBackGivesTheSameBytes) {
  Tally tally;
  for (std::uint64_t seed = seeds(12).first; seed < seeds(12).beyond(); ++seed) {
    const Job job = building(seed);
    const Wishes wishes{.search_budget = seed % 6 == 0 ? kBudget : kDragged};
    const auto fresh = solve(job, wishes);
    if (!fresh || job.openings.empty()) continue;
    bond::PanelMemo memo(wishes.search_budget);
    Job now = job;
    for (const std::int64_t step : {1, 2, 1, -2, -2}) {
      const auto plan = resolve(now);
      ASSERT_TRUE(plan.has_value()) << name(seed);
      const Length to = plan->openings.front().from.distance_from_start() + Length::sixteenths(step);
      const auto moved = edited(now, *plan, MoveOpening{0, to});
      ASSERT_TRUE(moved.has_value()) << name(seed) << ": " << test::told(moved.error());
      now = *moved;
      static_cast<void>(solve(now, wishes, memo));
    }
    const auto back = solve(job, wishes, memo);
    ASSERT_TRUE(back.has_value()) << name(seed);
    ++tally.compared;
    EXPECT_TRUE(answer_text(*fresh) == answer_text(*back)) << name(seed) << " is not what it was";
  }
  tally.print("there and back");
  EXPECT_GT(tally.compared, 0);
}

/// What a memory laid for a building with fewer choices is no other than what it lays for this one: the walls that the
/// two share are one and the same.
TEST(SaidOtherwise, WhatAnotherBuildingLeftInMemoryMovesNoPiece) {
  Tally tally;
  for (std::uint64_t seed = seeds(40).first; seed < seeds(40).beyond(); ++seed) {
    const Job job = building(seed);
    if (job.openings.size() < 2) continue;
    Job fewer = job;
    fewer.openings.pop_back();
    const Wishes wishes{.search_budget = kDragged};
    const auto fresh = solve(job, wishes);
    if (!fresh) continue;
    bond::PanelMemo memo(wishes.search_budget);
    static_cast<void>(solve(fewer, wishes, memo));
    const auto after = solve(job, wishes, memo);
    ASSERT_TRUE(after.has_value()) << name(seed);
    ++tally.compared;
    EXPECT_TRUE(answer_text(*fresh) == answer_text(*after)) << name(seed) << " hangs on what was laid before";
  }
  tally.print("after another building");
  EXPECT_GT(tally.compared, 20);
}

}  // namespace
}  // namespace stringcourse::property
