// Any change of any piece's length or place is found.
#include <gtest/gtest.h>

#include "hand.hpp"

namespace stringcourse::hand {
namespace {

/// A small repeatable generator (64-bit linear congruential; the high bits are used).
struct Dice {
  std::uint64_t state = 0x5DEECE66D;
  std::int64_t below(std::int64_t count) {
    state = state * 6364136223846793005u + 1442695040888963407u;
    return static_cast<std::int64_t>((state >> 33) % static_cast<std::uint64_t>(count));
  }
  /// From 1 nm to about 4 mm, either way: no two stocked lengths or lawful cuts lie that close together.
  std::int64_t change() { return (below(2) == 0 ? 1 : -1) * (1 + below(4) * below(1'000) * below(1'300)); }
};

std::vector<Plan> all_plans() {
  return {rectangle(),   rectangle("us-12"), notched(),      garden_wall(), built_up_wall(),
          barred_wall(), lapped_tee(),       jointed_wall(), banded_wall(), make_up_wall()};
}

TEST(RandomFault, AnyShiftOfAPieceIsFound) {
  Dice dice;
  for (const Plan& lawful : all_plans())
    for (int i = 0; i < 400; ++i) {
      Plan plan = lawful;
      Piece& piece =
          plan.layout
              .pieces[static_cast<std::size_t>(dice.below(static_cast<std::int64_t>(plan.layout.pieces.size())))];
      piece.start.numerator += dice.change();
      EXPECT_NE(broken(plan), "");
    }
}

TEST(RandomFault, AnyChangeOfALengthIsFound) {
  Dice dice;
  for (const Plan& lawful : all_plans())
    for (int i = 0; i < 400; ++i) {
      Plan plan = lawful;
      Piece& piece =
          plan.layout
              .pieces[static_cast<std::size_t>(dice.below(static_cast<std::int64_t>(plan.layout.pieces.size())))];
      piece.length += Length::nanometres(dice.change());
      EXPECT_NE(broken(plan), "");
    }
}

// The same with everything that follows from lengths made true again: joints, places, cost.
TEST(RandomFault, AnyChangeOfALengthIsFoundThoughTheRunIsClosedAgain) {
  Dice dice;
  for (const Plan& lawful : all_plans())
    for (int i = 0; i < 400; ++i) {
      Plan plan = lawful;
      Piece& piece =
          plan.layout
              .pieces[static_cast<std::size_t>(dice.below(static_cast<std::int64_t>(plan.layout.pieces.size())))];
      piece.length += Length::nanometres(dice.change());
      close(plan.layout);
      settle(plan);
      EXPECT_NE(broken(plan), "");
    }
}

TEST(RandomFault, AnyChangeOfARunsEndIsFound) {
  Dice dice;
  for (const Plan& lawful : all_plans())
    for (int i = 0; i < 400; ++i) {
      Plan plan = lawful;
      stringcourse::Run& run =
          plan.layout.runs[static_cast<std::size_t>(dice.below(static_cast<std::int64_t>(plan.layout.runs.size())))];
      (dice.below(2) == 0 ? run.start : run.end) += Length::nanometres(dice.change());
      close(plan.layout);
      settle(plan);
      EXPECT_NE(broken(plan), "");
    }
}

}  // namespace
}  // namespace stringcourse::hand
