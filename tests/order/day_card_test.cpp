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

/// The places of the walls' names in a sentence on where a wall ends.
const std::map<std::string_view, std::size_t> kNamesIn = {
    {"card-stop", 1}, {"card-stop-part", 1}, {"card-stands", 1}, {"card-stands-part", 1}, {"card-stop-begun", 0}};

/// Every wall of which a block lies is named once on every day, whether or not something is finished on it; "stop" of
/// those on which something is laid.
TEST(DayCard, SaysOnEveryDayWhereEachWallEnds) {
  const Answer answer = solved(planned_house("kiln-house"));
  std::size_t without_a_course = 0;
  for (const WorkDay& day : answer.programme.days) {
    std::size_t walls = 0, named = 0;
    for (const Reached& reached : day.reached) walls += reached.begun > 0 ? 1 : 0;
    const std::vector<Fact> said = stop_said(answer, day);
    ASSERT_FALSE(said.empty());
    for (const Fact& one : said) {
      if (kNamesIn.contains(one.says)) named += one.values[kNamesIn.at(one.says)].parts().size();
    }
    EXPECT_EQ(named, walls) << "day " << day.number;
    EXPECT_EQ(count_of(said, "card-no-wall"), walls == 0 ? 1U : 0U);
    const bool stops = count_of(said, "card-stop") + count_of(said, "card-stop-part") > 0;
    if (day.laid == 0) EXPECT_FALSE(stops) << "day " << day.number;
    without_a_course += day.finished.empty() && walls > 0 ? 1 : 0;
    EXPECT_EQ(checks_said(answer, day).empty(),
              day.finished.empty() && count_of(checks_said(answer, day), "card-inspect") == 0);
  }
  EXPECT_GT(without_a_course, 0U) << "a wait, or a pour";
}

/// By hand: of courses 8 in high, 12 stand 8'-0" over the footing; the 13th is the first over it.
TEST(DayCard, SaysFromThe13thCourseOnThatAWallStandsOver8Feet) {
  const Answer answer = solved(planned_house("kiln-house"));
  for (const WorkDay& day : answer.programme.days) {
    std::vector<std::int32_t> over;
    for (const Reached& reached : day.reached) {
      if (reached.begun >= 13) over.push_back(reached.wall);
    }
    EXPECT_EQ(day.tall, over) << "day " << day.number;
    EXPECT_EQ(tall_said(answer, day).empty(), over.empty());
    EXPECT_EQ(count_of(stop_said(answer, day), "day-tall"), over.empty() ? 0U : 1U);
  }
  EXPECT_FALSE(answer.programme.days.back().tall.empty());
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
