// The order of filling, and what the laid log says of it and of the inspection list.
#include "answer/pour_card.hpp"

#include <gtest/gtest.h>

#include <algorithm>

#include "catalogue/rules.hpp"
#include "code_rows.hpp"
#include "job/words.hpp"
#include "solve/solve.hpp"
#include "unit/walls/made_jobs.hpp"
#include "words/language.hpp"

namespace stringcourse::tests {
namespace {

Answer solved(std::vector<LaidEntry> log = {}) {
  Job job = example("kiln-house");
  job.laid = std::move(log);
  return *solve(job, {});
}

LaidEntry grouted(const std::string& id, const GroutStep& step, const Building& building,
                  GroutWork work = GroutWork::Filled) {
  LaidEntry entry;
  entry.id = id, entry.when = "2026-06-01 09:00";
  // As the page shows it: to the tape's step.
  entry.grouted = Grouted{building.walls[static_cast<std::size_t>(step.wall)].name, step.course,
                          rounded_to(step.at, tape_step(building.tape)), work};
  return entry;
}

LaidEntry strike(const std::string& id, const std::string& of) {
  LaidEntry entry;
  entry.id = id, entry.strike = of;
  return entry;
}

TEST(PourCard, EachLiftHoldsWhatItsPourHolds) {
  const Answer answer = solved();
  for (std::size_t pour = 0; pour < answer.tallies.grout.size(); ++pour) {
    Volume sum;
    for (const LiftCard& card : answer.pour_cards) {
      if (card.pour == static_cast<int>(pour) + 1) sum += card.steps.back().total;
    }
    EXPECT_EQ(sum, answer.tallies.grout[pour].all());
  }
}

// SOURCE: TMS 602 3.5 E (second-hand): over 12 in. The kiln house's pours end at courses 7 and 14: one lift each, of
// 56 in.
TEST(PourCard, LiftsOverAFootAreConsolidatedAgain) {
  const Answer answer = solved();
  ASSERT_EQ(answer.pour_cards.size(), 2u);
  for (const LiftCard& card : answer.pour_cards) {
    EXPECT_EQ(card.height, in(56));
    EXPECT_TRUE(card.again);
  }
  Job low = example("kiln-house");
  low.steel.pour_tops = {1, 14};
  const Answer other = *solve(low, {});
  EXPECT_EQ(other.pour_cards.front().height, in(8));
  EXPECT_FALSE(other.pour_cards.front().again);
}

TEST(PourCard, TheMinutesShownAreThoseOfTheRulesSentence) {
  const std::string text = words::rule_text(*find_rule("grout-again-when"), {Tape::Inches, words::english()});
  const std::string told =
      number_text(again_within().from) + " minutes to " + number_text(again_within().by) + " minutes";
  EXPECT_NE(text.find(told), std::string::npos) << text;
}

TEST(PourCard, AnEntryFillsOneCellAndAStrikeEmptiesIt) {
  const Answer before = solved();
  const LiftCard& card = before.pour_cards.front();
  const GroutStep& third = card.steps[2];
  const auto again = grouted("b", third, before.building, GroutWork::Again);
  const Answer filled = solved({grouted("a", third, before.building), again});
  for (std::size_t k = 0; k < card.steps.size(); ++k) {
    EXPECT_EQ(filled.pour_cards.front().steps[k].filled, k == 2 ? 0 : -1);
    EXPECT_EQ(filled.pour_cards.front().steps[k].again, k == 2 ? 1 : -1);
  }
  const Answer struck = solved({grouted("a", third, before.building), again, strike("s", "a")});
  EXPECT_EQ(struck.pour_cards.front().steps[2].filled, -1);
  EXPECT_EQ(struck.pour_cards.front().steps[2].again, 1);
}

TEST(PourCard, EveryStepAndEveryLineIsFoundAgainByWhatTheLogSaysOfIt) {
  const Answer before = solved();
  std::vector<LaidEntry> log;
  for (const LiftCard& card : before.pour_cards) {
    for (const GroutStep& step : card.steps)
      log.push_back(grouted("g" + std::to_string(log.size()), step, before.building));
  }
  for (const PourToInspect& pour : before.inspection) {
    for (const LineToTick& line : pour.lines) {
      LaidEntry entry;
      entry.id = "t" + std::to_string(log.size());
      entry.looked_at = LookedAt{line.what, before.building.walls[static_cast<std::size_t>(line.wall)].name,
                                 line.course, rounded_to(line.at, tape_step(before.building.tape))};
      log.push_back(entry);
    }
  }
  const Answer after = solved(log);
  std::vector<std::int32_t> seen;
  for (const LiftCard& card : after.pour_cards) {
    for (const GroutStep& step : card.steps) seen.push_back(step.filled);
  }
  for (const PourToInspect& pour : after.inspection) {
    for (const LineToTick& line : pour.lines) seen.push_back(line.ticked_by);
  }
  std::ranges::sort(seen);
  ASSERT_EQ(seen.size(), log.size());
  for (std::size_t k = 0; k < seen.size(); ++k) EXPECT_EQ(seen[k], static_cast<std::int32_t>(k));
  EXPECT_FALSE(
      std::ranges::any_of(after.findings, [](const Finding& one) { return one.code == Code("laid-entry-unknown"); }));
}

TEST(PourCard, WhatTheLogSaysOfNoCellOrLineIsSaid) {
  LaidEntry cell, line;
  cell.id = "1", cell.grouted = Grouted{"AB", 7, in(100), GroutWork::Filled};
  line.id = "2", line.looked_at = LookedAt{LookedAtWhat::Bar, "AB", 3, in(100)};
  const Answer answer = solved({cell, line});
  std::vector<std::string> places;
  for (const Finding& one : answer.findings) {
    if (one.code == Code("laid-entry-unknown")) places.push_back(one.place);
  }
  EXPECT_EQ(places, (std::vector<std::string>{"/laid/0", "/laid/1"}));
}

}  // namespace
}  // namespace stringcourse::tests
