// The day's card: what it says of a day is what that day lays.
#include "answer/day_card.hpp"
#include "order/examples.hpp"

namespace stringcourse::order_test {
namespace {

Job planned_house(const char* name) {
  Job job = example_job(name);
  job.days.emplace();
  job.days->start = "2027-05-03";
  job.order.emplace();
  job.order->kinds = {{UnitKind::Full, std::nullopt, 75}};
  return job;
}

std::size_t count_of(const std::vector<Fact>& facts, std::string_view says) {
  return static_cast<std::size_t>(std::ranges::count(facts, says, &Fact::says));
}

TEST(DayCard, EveryCourseIsFinishedOnOneDay) {
  for (const char* name : kExamples) {
    SCOPED_TRACE(name);
    const Answer answer = solved(planned_house(name));
    std::set<std::pair<int, int>> courses, finished, behind;
    for (const stringcourse::Run& run : answer.layout.runs) {
      if (run.piece_count > 0) courses.insert({run.wall, run.course});
    }
    for (const LaidEntry& entry : answer.job.laid) {
      if (!entry.laid) continue;
      const auto wall = std::ranges::find(answer.building.walls, entry.laid->on, &Wall::name);
      behind.insert({static_cast<int>(wall - answer.building.walls.begin()), entry.laid->course});
    }
    for (const WorkDay& day : answer.programme.days) {
      for (const auto& one : day.finished) EXPECT_TRUE(finished.insert(one).second);
      EXPECT_EQ(static_cast<std::int64_t>(day.pieces.size()), day.laid);
    }
    for (const auto& one : behind) EXPECT_TRUE(finished.insert(one).second);
    EXPECT_EQ(finished, courses);
  }
}

/// Each wall's last stop is its top; no stop stands on a day on which nothing is finished.
TEST(DayCard, StopsWhereTheWallsStandAtItsEnd) {
  const Answer answer = solved(planned_house("kiln-house"));
  for (const WorkDay& day : answer.programme.days) {
    std::set<int> heights;
    for (const Reached& reached : day.reached) {
      const auto grows = [&](const auto& one) { return one.first == reached.wall; };
      if (std::ranges::any_of(day.finished, grows)) heights.insert(reached.course);
    }
    EXPECT_EQ(stop_said(answer, day).size(), heights.size());
    EXPECT_EQ(checks_said(answer, day).empty(),
              day.finished.empty() && count_of(checks_said(answer, day), "card-inspect") == 0);
  }
}

/// Every pallet is named on some day on which a block of its article is laid, unless it is all spare.
TEST(DayCard, BlocksAreFetchedFromPalletsOfTheirKind) {
  const Answer answer = solved(planned_house("kiln-house"));
  ASSERT_TRUE(answer.site.pallets.has_value());
  std::set<std::int64_t> named;
  for (const WorkDay& day : answer.programme.days) {
    const std::vector<Fact> said = stacked_said(answer, day);
    const auto whole = std::ranges::find(day.units, UnitKind::Full, &supply::UnitCount::kind);
    if (whole == day.units.end()) EXPECT_TRUE(said.empty());
    else EXPECT_FALSE(said.empty());
    for (const Fact& one : said) {
      for (const FactValue& number : one.values[1].parts()) named.insert(number.count());
    }
  }
  std::set<std::int64_t> serving;
  for (std::size_t k = 0; k < answer.site.pallets->pallets.size(); ++k) {
    if (answer.site.pallets->pallets[k].from_wall >= 0) serving.insert(static_cast<std::int64_t>(k) + 1);
  }
  EXPECT_EQ(named, serving);
}

/// Joint reinforcement is told once for each course and wall that has it; bars as many as are cut.
TEST(DayCard, AllSteelOfTheWallsStandsOnSomeDay) {
  Job job = planned_house("wash-stand");
  const Answer answer = solved(job);
  std::size_t wires = 0;
  std::int64_t uprights = 0, pieces = 0;
  for (const WorkDay& day : answer.programme.days) {
    for (const Fact& one : steel_said(answer, day)) {
      if (one.says == "card-wire") wires += one.values[1].parts().size();
      if (one.says == "card-uprights") uprights += one.values[0].count();
    }
  }
  for (const steel::BarPiece& piece : answer.bar_pieces.pieces) pieces += piece.use == steel::BarUse::Upright ? 1 : 0;
  std::set<std::pair<int, int>> with_wire;
  for (const stringcourse::Run& run : answer.layout.runs) {
    if (run.piece_count > 0 && std::ranges::contains(answer.wires.courses, run.course))
      with_wire.insert({run.wall, run.course});
  }
  EXPECT_EQ(wires, with_wire.size());
  EXPECT_EQ(uprights, pieces);
}

}  // namespace
}  // namespace stringcourse::order_test
