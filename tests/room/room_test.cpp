// What a job may take, in looks and bytes, never in seconds: see "What a search may take" in docs/bond-model.md.
#include <gtest/gtest.h>

#include <algorithm>

#include "bond/assemble.hpp"
#include "room/bytes_held.hpp"
#include "room/hard_shapes.hpp"
#include "walls/resolve.hpp"

namespace stringcourse::room_test {
namespace {

constexpr std::int64_t kBudget = 400'000;
constexpr std::int64_t kAgain = 12;  // looks at panels once more

/// Taken by one layout.
struct Taken {
  std::int64_t looks = 0, bytes = 0, cases = 0, pieces = 0;
};

std::optional<Taken> taken_by(const Job& job, std::int64_t budget) {
  const auto building = resolve(job);
  if (!building) return std::nullopt;
  count_from_now();
  const std::int64_t before = bytes_held();
  bond::PanelMemo memo(budget);
  const std::int64_t given = memo.room().left();
  const Layout layout = bond::lay_out(*building, memo);
  Taken taken;
  taken.looks = given - memo.room().left() + memo.looks_again();
  taken.bytes = most_held() - before;
  taken.cases = static_cast<std::int64_t>(memo.size());
  taken.pieces = static_cast<std::int64_t>(layout.pieces.size());
  return taken;
}

/// The page: the budget's looks, and twice as many where rules are given up (six panels, two looks each, a sixth for
/// each; each of those twelve counts as one panel more); beyond them each panel that is left takes 6'000 and 8 for each
/// of its pieces, a walk that is laid at once. (At most: pieces of a panel are no more than all pieces.)
std::int64_t most_looks(const Taken& taken, std::int64_t budget) {
  const std::int64_t of_budget = bond::kLooksOfBudget * std::max<std::int64_t>(budget, 200'000);
  return 3 * of_budget + 6'000 * (taken.cases + kAgain) + 8 * (1 + kAgain) * taken.pieces;
}

/// The page: what a step may take and what is held between steps, in looks of kBytesOfLook; 50 kB for each panel that
/// is known and 160 bytes for each piece.
std::int64_t most_bytes(const Taken& taken, std::int64_t budget) {
  const std::int64_t step = bond::kLooksOfBudget * std::max<std::int64_t>(budget, 200'000) / 5, held = 1'000'000;
  return bond::kBytesOfLook * (step + held) + 50'000 * taken.cases + 160 * taken.pieces;
}

TEST(Room, EveryJobTakesNoMoreLooksAndBytesThanItsSizeAllows) {
  int laid = 0;
  for (const HardShape& shape : hard_shapes()) {
    SCOPED_TRACE(shape.name);
    const std::optional<Taken> taken = taken_by(shape.job, kBudget);
    ASSERT_TRUE(taken.has_value());
    RecordProperty(shape.name, std::to_string(taken->looks));
    EXPECT_LE(taken->looks, most_looks(*taken, kBudget));
    EXPECT_LE(taken->bytes, most_bytes(*taken, kBudget));
    EXPECT_LE(taken->bytes, 500'000'000);
    laid += taken->pieces > 0 ? 1 : 0;
  }
  EXPECT_GE(laid, 12);
}

TEST(Room, ALesserBudgetTakesLess) {
  const std::vector<HardShape> shapes = hard_shapes();
  for (const std::size_t k : {0U, 1U, 10U}) {
    SCOPED_TRACE(shapes[k].name);
    const auto small = taken_by(shapes[k].job, kBudget / 4), large = taken_by(shapes[k].job, kBudget);
    ASSERT_TRUE(small && large);
    EXPECT_LE(small->looks, most_looks(*small, kBudget / 4));
    EXPECT_LE(small->looks, large->looks);
  }
}

/// What is counted does not hang on what was asked before, nor on the machine.
TEST(Room, TheSameJobTakesTheSame) {
  const HardShape shape = hard_shapes()[1];
  const auto first = taken_by(shape.job, kBudget), second = taken_by(shape.job, kBudget);
  ASSERT_TRUE(first && second);
  EXPECT_EQ(first->looks, second->looks);
  EXPECT_EQ(first->bytes, second->bytes);
}

/// Panels that an earlier job knows take of this job's room what they took of that one's.
TEST(Room, WhatIsKnownIsChargedAgain) {
  const auto building = resolve(hard_shapes()[10].job);
  ASSERT_TRUE(building.has_value());
  bond::PanelMemo memo(kBudget);
  static_cast<void>(bond::lay_out(*building, memo));
  EXPECT_FALSE(memo.was_used_before());
  const std::int64_t left = memo.room().left();
  memo.begin_job(kBudget);
  static_cast<void>(bond::lay_out(*building, memo));
  EXPECT_TRUE(memo.was_used_before());
  EXPECT_EQ(memo.room().left(), left);
}

}  // namespace
}  // namespace stringcourse::room_test
