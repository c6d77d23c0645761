// What goes over openings and on top of the walls of the examples: no false figure passes the certificate; and on made
// stretches bolts are as few as trying every choice finds.
#include <gtest/gtest.h>

#include <fstream>
#include <functional>
#include <sstream>

#include "dice.hpp"
#include "job/read.hpp"
#include "proof/bolts.hpp"
#include "proof/inspection.hpp"
#include "property/certify.hpp"
#include "random_top.hpp"

namespace stringcourse::property {
namespace {

constexpr const char* kExamples[] = {"kiln-house", "clay-store", "glaze-store", "drying-shed", "hillside-shed"};

Job example_job(const std::string& name) {
  std::stringstream text;
  text << std::ifstream(std::string(STRINGCOURSE_ROOT) + "/examples/" + name + ".json").rdbuf();
  return *read_job(text.str());
}

/// Bolts 6 ft apart at most, a foot from the ends, clear of bars and of trusses on the first side.
Answer with_top(const std::string& name) {
  Job job = example_job(name);
  Top top;
  top.bolts = Bolts{"1/2 in", Length::feet(6), Length::inches(12), Length::inches(4), Length::inches(2), {}};
  top.plate_piece = Length::feet(16);
  const Side& first = job.outline.sides.front();
  top.trusses = {{first.name.empty() ? first.from + first.to : first.name,
                  {first.from, {Length::inches(24), Basis::Actual}, {}},
                  Length::inches(24),
                  Length::inches(3)}};
  job.top = top;
  for (Opening& opening : job.openings) {
    if (!opening.lintel) opening.lintel = Lintel{};
    opening.lintel->shore_spacing = Length::inches(30);
  }
  return *solve(job, {.search_budget = 20'000});
}

const Job& job_of(const Answer& answer) { return answer.as_built ? answer.as_built->job : answer.job; }

using Looks = std::vector<PourToInspect>;
using Change = std::function<void(Looks&)>;

void add_changes(std::vector<Change>& all, const Looks& looks, std::size_t p) {
  all.push_back([p](Looks& of) { of.erase(of.begin() + static_cast<std::ptrdiff_t>(p)); });
  all.push_back([p](Looks& of) { of[p].beams.push_back(1); });
  all.push_back([p](Looks& of) { of[p].lintels.push_back(0); });
  for (std::size_t b = 0; b < looks[p].bars.size(); ++b) {
    all.push_back([p, b](Looks& of) { of[p].bars.erase(of[p].bars.begin() + static_cast<std::ptrdiff_t>(b)); });
    all.push_back([p, b](Looks& of) { of[p].bars.push_back(of[p].bars[b]); });
    all.push_back([p, b](Looks& of) { of[p].bars[b].photo += "\xc3\xa9"; });
    if (b > 0) all.push_back([p, b](Looks& of) { of[p].bars[b].photo = of[p].bars[0].photo; });
    if (looks[p].bars[b].cleanout >= 0) all.push_back([p, b](Looks& of) { of[p].bars[b].cleanout = -1; });
    if (!looks[p].bars[b].through.empty()) all.push_back([p, b](Looks& of) { of[p].bars[b].through.pop_back(); });
  }
}

TEST(LookBeforeAPour, EveryFalseLineIsCaught) {
  std::size_t tried = 0;
  for (const char* name : kExamples) {
    SCOPED_TRACE(name);
    const Answer answer = *solve(example_job(name), {.search_budget = 20'000});
    const Looks& looks = answer.inspection;
    ASSERT_FALSE(looks.empty());
    EXPECT_EQ(proof::check_inspection(job_of(answer), answer.building, answer.layout, looks), proof::Violations{});
    std::vector<Change> all;
    for (std::size_t p = 0; p < looks.size(); ++p) add_changes(all, looks, p);
    for (std::size_t k = 0; k < all.size(); ++k, ++tried) {
      Looks changed = looks;
      all[k](changed);
      EXPECT_FALSE(proof::check_inspection(job_of(answer), answer.building, answer.layout, changed).empty()) << k;
    }
  }
  EXPECT_GT(tried, 300u);
}

TEST(LookBeforeAPour, NumbersAreTheDowels) {
  for (const char* name : kExamples) {
    SCOPED_TRACE(name);
    const Answer answer = *solve(example_job(name), {.search_budget = 20'000});
    std::size_t numbered = 0;
    for (const BarToInspect& one : answer.inspection.front().bars) {
      const PlacedBar& bar = answer.layout.bars[one.bar];
      const auto dowel = std::ranges::find_if(
          answer.dowels, [&](const steel::Dowel& each) { return each.wall == bar.wall && each.number == one.number; });
      if (one.number == 0) continue;
      ++numbered;
      ASSERT_NE(dowel, answer.dowels.end());
      EXPECT_EQ(dowel->along, bar.centre);
    }
    EXPECT_EQ(numbered, answer.dowels.size());
  }
}

TEST(OverOpenings, EveryFalseFigureIsCaught) {
  using Overs = std::vector<supply::Bridged>;
  const std::function<void(supply::Bridged&)> changes[] = {
      [](supply::Bridged& of) { of.over_foot += Length::nanometres(1); },
      [](supply::Bridged& of) { of.over_bearing += Length::nanometres(1); },
      [](supply::Bridged& of) { of.shores = of.shores.value_or(3) - 1; },
      [](supply::Bridged& of) { of.shores = of.shores.value_or(2) + 1; },
      [](supply::Bridged& of) { of.start.units.push_back(99); },
      [](supply::Bridged& of) { of.end.units = {98}; },
      [](supply::Bridged& of) { of.beams_in.push_back(1); },
      [](supply::Bridged& of) { of.beams_cut.push_back(1); },
      [](supply::Bridged& of) { of.beam_over += 1; },
      [](supply::Bridged& of) { of.shored = !of.shored; },
  };
  for (const char* name : kExamples) {
    SCOPED_TRACE(name);
    const Answer answer = with_top(name);
    const Overs& overs = answer.bridged;
    EXPECT_EQ(proof::check_bridged(job_of(answer), answer.building, answer.layout, overs), proof::Violations{});
    for (std::size_t k = 0; k < overs.size(); ++k) {
      if (overs[k].lintel < 0) continue;
      for (const auto& change : changes) {
        Overs changed = overs;
        change(changed[k]);
        EXPECT_FALSE(proof::check_bridged(job_of(answer), answer.building, answer.layout, changed).empty());
      }
    }
  }
}

TEST(Bolts, OfTheExamplesEveryFalsePlaceIsCaught) {
  using Plates = std::vector<setout::PlatePiece>;
  std::size_t tried = 0;
  for (const char* name : kExamples) {
    SCOPED_TRACE(name);
    const Answer answer = with_top(name);
    const Plates& plates = answer.plates;
    const auto wrong = [&](const Plates& of) {
      return !proof::check_bolts(job_of(answer), answer.building, answer.layout, of).empty();
    };
    ASSERT_FALSE(plates.empty());
    EXPECT_FALSE(wrong(plates));
    for (std::size_t p = 0; p < plates.size(); ++p) {
      for (std::size_t b = 0; b < plates[p].bolts.size(); ++b, ++tried) {
        Plates changed = plates;
        changed[p].bolts[b].at += Length::inches(8) * (b % 2 == 0 ? 20 : -20);  // past its neighbours or off the wall
        EXPECT_TRUE(wrong(changed)) << p << " " << b;
        changed = plates;
        changed[p].bolts[b].at += Length::nanometres(1);  // off the tape's marks
        EXPECT_TRUE(wrong(changed)) << p << " " << b;
        changed = plates;
        changed[p].bolts.erase(changed[p].bolts.begin() + static_cast<std::ptrdiff_t>(b));
        EXPECT_TRUE(wrong(changed)) << p << " " << b;
        changed = plates;
        changed[p].bolts.insert(changed[p].bolts.begin() + static_cast<std::ptrdiff_t>(b), changed[p].bolts[b]);
        EXPECT_TRUE(wrong(changed)) << p << " " << b;
      }
      Plates changed = plates;
      changed.erase(changed.begin() + static_cast<std::ptrdiff_t>(p));
      EXPECT_TRUE(wrong(changed)) << p;
    }
  }
  EXPECT_GT(tried, 60u);
}

// What is asked the day before the plate goes on: yes where every bolt stands in grout, no where one cannot.
TEST(Bolts, AnswerTheQuestionOfTheirHoldPoint) {
  int yes = 0, no = 0;
  for (const char* name : kExamples) {
    SCOPED_TRACE(name);
    const Answer answer = with_top(name);
    const bool all = std::ranges::all_of(answer.plates, [](const auto& piece) { return piece.without.empty(); });
    const Question& asked = answer.points.back().questions.front();
    EXPECT_EQ(asked.asks, "ask-bolts-grouted");
    EXPECT_EQ(asked.answered, all ? Answered::Yes : Answered::No);
    (all ? yes : no) += 1;
    EXPECT_EQ(std::ranges::contains(answer.findings, Code("bolt-no-place"), &Finding::code), !all);
  }
  EXPECT_GT(yes, 0);
  EXPECT_GT(no, 0);
}

/// Fewest by trying every set of marks; 0: none keeps to what is asked.
std::size_t fewest_of_all(const std::vector<Length>& marks, const setout::BoltsAsked& asked) {
  std::size_t best = 0;
  for (std::uint32_t set = 1; set < (1u << marks.size()); ++set) {
    std::vector<Length> chosen;
    for (std::size_t k = 0; k < marks.size(); ++k)
      if ((set >> k & 1) != 0) chosen.push_back(marks[k]);
    bool keeps = chosen.size() >= 2 && chosen.front() - asked.from >= asked.end_least &&
                 chosen.front() - asked.from <= asked.end_most && asked.to - chosen.back() >= asked.end_least &&
                 asked.to - chosen.back() <= asked.end_most;
    for (std::size_t k = 1; k < chosen.size(); ++k) keeps = keeps && chosen[k] - chosen[k - 1] <= asked.spacing;
    if (keeps && (best == 0 || chosen.size() < best)) best = chosen.size();
  }
  return best;
}

TEST(Bolts, AreAsFewAsTryingEveryChoiceFinds) {
  const Length step = Length::inches(1);
  int possible = 0, impossible = 0;
  for (std::uint64_t seed = 1; seed <= 2000; ++seed) {
    Dice dice(seed);
    const auto inches = [&](std::int64_t least, std::int64_t most) {
      return Length::inches(dice.between(least, most));
    };
    setout::BoltsAsked asked{inches(0, 3), inches(30, 60), inches(6, 24), inches(0, 3), inches(4, 14)};
    std::vector<setout::BoltRoom> rooms;
    std::vector<Length> marks;
    for (Length at = inches(0, 8); at < asked.to && marks.size() < 10; at += inches(2, 9)) {
      const Length to = at + Length::inches(dice.between(0, 1));
      rooms.push_back({at, to, 1, 1, at});
      for (Length mark = at; mark <= to; mark += step) marks.push_back(mark);
      at = to;
    }
    const setout::PlatePiece piece = setout::bolts_in(asked, rooms, step);
    const std::size_t fewest = fewest_of_all(marks, asked);
    (fewest > 0 ? possible : impossible) += 1;
    EXPECT_EQ(piece.without.empty(), fewest > 0) << "seed " << seed;
    if (fewest > 0) EXPECT_EQ(piece.bolts.size(), fewest) << "seed " << seed;
    for (const setout::Bolt& bolt : piece.bolts) EXPECT_TRUE(std::ranges::contains(marks, bolt.at)) << seed;
  }
  EXPECT_GT(possible, 300);
  EXPECT_GT(impossible, 300);
}

// By hand: 9'-3" (111 in) wide with shores at most 4 ft apart: 111 / 48 = 2.3, three bays, four shores.
TEST(Shores, StandAtEachJambAndNoFartherApartThanAsked) {
  EXPECT_EQ(supply::shores_under(Length::inches(111), Length::feet(4)), 4);
  EXPECT_EQ(supply::shores_under(Length::inches(96), Length::feet(4)), 3);
  EXPECT_EQ(supply::shores_under(Length::inches(96) + Length::nanometres(1), Length::feet(4)), 4);
  EXPECT_EQ(supply::shores_under(Length::inches(40), Length::feet(4)), 2);
}

}  // namespace
}  // namespace stringcourse::property
