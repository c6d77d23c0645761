// Pour cards and joint reinforcement of the examples: no false order, amount or piece passes the certificate.
#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <functional>
#include <numeric>
#include <sstream>

#include "dice.hpp"
#include "job/read.hpp"
#include "proof/pour_card.hpp"
#include "proof/wires.hpp"
#include "property/certify.hpp"

namespace stringcourse::property {
namespace {

constexpr const char* kExamples[] = {"kiln-house", "clay-store", "glaze-store", "drying-shed", "hillside-shed"};

Job example_job(const std::string& name) {
  std::stringstream text;
  text << std::ifstream(std::string(STRINGCOURSE_ROOT) + "/examples/" + name + ".json").rdbuf();
  return *read_job(text.str());
}

using Cards = std::vector<LiftCard>;
proof::Violations check(const Answer& answer, const Cards& cards) {
  return proof::check_pour_cards(answer.building, answer.layout, answer.tallies.grout, cards);
}

std::vector<std::function<void(Cards&)>> false_cards(const Cards& cards) {
  std::vector<std::function<void(Cards&)>> all;
  for (std::size_t c = 0; c < cards.size(); ++c) {
    all.push_back([c](Cards& of) { of.erase(of.begin() + static_cast<std::ptrdiff_t>(c)); });
    all.push_back([c](Cards& of) { of[c].walk += Length::nanometres(1); });
    for (std::size_t s = 0; s < cards[c].steps.size(); ++s) {
      all.push_back([c, s](Cards& of) { of[c].steps[s].volume.cubic_nanometres += 1; });
      all.push_back([c, s](Cards& of) { of[c].steps[s].total.cubic_nanometres += 1; });
      all.push_back([c, s](Cards& of) { of[c].steps[s].at += Length::nanometres(1); });
      all.push_back([c, s](Cards& of) { of[c].steps.erase(of[c].steps.begin() + static_cast<std::ptrdiff_t>(s)); });
    }
  }
  return all;
}

TEST(PourCards, OfExamplesNoFalseOnePasses) {
  for (const char* name : kExamples) {
    SCOPED_TRACE(name);
    const Answer answer = *solve(example_job(name), {});
    ASSERT_FALSE(answer.pour_cards.empty());
    EXPECT_EQ(check(answer, answer.pour_cards), proof::Violations{});
    std::size_t number = 0;
    for (const auto& change : false_cards(answer.pour_cards)) {
      Cards cards = answer.pour_cards;
      change(cards);
      EXPECT_FALSE(check(answer, cards).empty()) << "change " << number;
      ++number;
    }
  }
}

/// How far one walks from the first corner, cell after cell, each time the shorter way round.
Length walked(const std::vector<Length>& places, Length round) {
  Length sum, here;
  for (const Length there : places) {
    const Length straight = magnitude(there - here);
    sum = sum + std::min(straight, round - straight);
    here = there;
  }
  return sum;
}

// The twin tries every order of a few bars; the rule's walk is as short as the best of them.
TEST(PourCards, NoOrderOfAFewCellsIsWalkedInLess) {
  std::uint32_t seed = 11;
  Job job = example_job("kiln-house");
  job.openings.clear();
  job.steel = {};
  for (int round = 0; round < 12; ++round) {
    Dice dice(seed++);
    job.steel.bars.emplace().size = "#5";
    const char* sides[] = {"A", "B", "C", "D"};
    const int bars = 3 + static_cast<int>(dice.below(4));
    for (int k = 0; k < bars; ++k) {
      const auto side = static_cast<std::size_t>(dice.below(4));
      const Length at = Length::inches(16 * (2 + static_cast<int>(dice.below(12)))) + Length::sixteenths(61);
      job.steel.bars->dimensioned.push_back(
          {std::string(sides[side]) + sides[(side + 1) % 4], {sides[side], {at, Basis::Actual}, {}}});
    }
    const auto answer = solve(job, {.search_budget = 20'000});
    if (!answer || answer->pour_cards.empty()) continue;
    const Building& building = answer->building;
    std::vector<Length> starts, places;
    Length whole;
    for (const Wall& wall : building.walls) starts.push_back(whole), whole = whole + wall.actual;
    for (const GroutStep& step : answer->pour_cards.front().steps)
      places.push_back(starts[static_cast<std::size_t>(step.wall)] + step.at);
    EXPECT_EQ(walked(places, whole), answer->pour_cards.front().walk);
    std::ranges::sort(places);
    Length least = walked(places, whole);
    do least = std::min(least, walked(places, whole));
    while (std::ranges::next_permutation(places).found);
    EXPECT_EQ(least, answer->pour_cards.front().walk) << "round " << round;
  }
}

std::vector<std::function<void(steel::Wires&)>> false_wires(const steel::Wires& wires) {
  std::vector<std::function<void(steel::Wires&)>> all;
  all.push_back([](auto& of) { of.to_buy -= 1; });
  all.push_back([](auto& of) { of.pieces += 1; });
  all.push_back([](auto& of) { of.corner_count -= 1; });
  all.push_back([](auto& of) { of.tee_count += 1; });
  for (std::size_t k = 0; k < wires.stretches.size(); ++k) {
    if (wires.stretches[k].pieces == 0) continue;
    all.push_back([k](auto& of) { of.stretches[k].last += Length::nanometres(1); });
    all.push_back([k](auto& of) { of.stretches[k].pieces += 1, of.pieces += 1; });
    all.push_back([k](auto& of) { of.stretches[k].from += Length::nanometres(1); });
    all.push_back([k](auto& of) { of.stretches[k].course += 1; });
    all.push_back([k](auto& of) { of.stretches.erase(of.stretches.begin() + static_cast<std::ptrdiff_t>(k)); });
  }
  return all;
}

TEST(JointReinforcement, OfExamplesNoFalseOnePasses) {
  std::size_t wired = 0;
  for (const char* name : kExamples) {
    SCOPED_TRACE(name);
    Job job = example_job(name);
    if (!job.steel.wire_every) job.steel.wire_every = 3;
    for (const WireCorners corners : {WireCorners::Pieces, WireCorners::Bent}) {
      job.steel.wire_corners = corners;
      const Answer answer = *solve(job, {.search_budget = 20'000});
      const Job& built = answer.as_built ? answer.as_built->job : job;
      const auto found = [&](const steel::Wires& wires) {
        return proof::check_wires(built, answer.building, answer.layout, wires);
      };
      EXPECT_EQ(found(answer.wires), proof::Violations{});
      if (!answer.layout.stopped.empty()) continue;
      ++wired;
      std::size_t number = 0;
      for (const auto& change : false_wires(answer.wires)) {
        steel::Wires wires = answer.wires;
        change(wires);
        if (wires.stretches != answer.wires.stretches || wires.to_buy != answer.wires.to_buy ||
            wires.pieces != answer.wires.pieces || wires.tee_count != answer.wires.tee_count ||
            wires.corner_count != answer.wires.corner_count)
          EXPECT_FALSE(found(wires).empty()) << "change " << number;
        ++number;
      }
    }
  }
  EXPECT_GE(wired, 6u);
}

}  // namespace
}  // namespace stringcourse::property
