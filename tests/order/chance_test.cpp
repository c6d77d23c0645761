// The chance of being done by a date, against closed forms; the crew's own pace, against theory.
#include <numeric>

#include "measure/dice.hpp"
#include "measure/root.hpp"
#include "order/examples.hpp"
#include "supply/finish_chance.hpp"

namespace stringcourse::order_test {
namespace {

using supply::Link;
using supply::Unsure;
using supply::Work;

constexpr int kRuns = 10'000;
constexpr std::int64_t kDay = 480;

/// One work after the other; nothing waits for a morning.
struct Chain {
  std::vector<Work> works;
  std::vector<Link> links;
  std::vector<bool> paced;
};

Chain chain_of(const std::vector<std::int64_t>& minutes, bool paced) {
  Chain chain;
  for (std::size_t k = 0; k < minutes.size(); ++k) {
    chain.works.push_back({minutes[k], false});
    chain.paced.push_back(paced);
    const auto work = static_cast<std::int32_t>(k);
    if (k > 0) chain.links.push_back({work - 1, work});
  }
  return chain;
}

std::vector<std::int64_t> ends_of(const Chain& chain, Unsure unsure, std::uint64_t seed = 7) {
  return *supply::drawn_ends(chain.works, chain.links, chain.paced, kDay, unsure, kRuns, seed);
}

struct Moments {
  double mean = 0, variance = 0, fourth = 0;
};
Moments moments_of(const std::vector<std::int64_t>& values) {
  Moments found;
  const auto count = static_cast<double>(values.size());
  for (const std::int64_t value : values) found.mean += static_cast<double>(value) / count;
  for (const std::int64_t value : values) {
    const double off = static_cast<double>(value) - found.mean;
    found.variance += off * off / (count - 1), found.fourth += off * off * off * off / count;
  }
  return found;
}

/// Five standard deviations of a mean, and of a variance: sqrt((m4 - v^2) / n), which holds for any distribution.
void expect_moments(const std::vector<std::int64_t>& ends, double mean, double variance) {
  const Moments found = moments_of(ends);
  EXPECT_NEAR(found.mean, mean, 5 * std::sqrt(variance / kRuns));
  EXPECT_NEAR(found.variance, variance, 5 * std::sqrt((found.fourth - variance * variance) / kRuns));
}

TEST(DrawnDeviation, HasTheMeanTheVarianceAndTheEndsThatItStates) {
  std::uint64_t state = 3;
  std::vector<std::int64_t> drawn;
  for (int k = 0; k < kRuns; ++k) drawn.push_back(supply::drawn_deviation(state));
  // The sum of three uniform numbers 0 to 65535, doubled and centred: 4 x 3 x (2^32 - 1) / 12.
  expect_moments(drawn, 0, 4'294'967'295.0);
  for (const std::int64_t one : drawn) EXPECT_LE(std::abs(one), 196'605);
  EXPECT_GT(supply::drawn_time(1'000, supply::kMostUnsure, -196'605), 0) << "no time below nothing";
}

TEST(Splitmix, DrawsTheNumbersThatItsAuthorsPublish) {
  // SOURCE: the reference output of splitmix64.c for the seed 1234567.
  std::uint64_t state = 1'234'567;
  EXPECT_EQ(drawn(state), 6'457'827'717'110'365'317ULL);
  EXPECT_EQ(drawn(state), 3'203'168'211'198'807'973ULL);
  EXPECT_EQ(drawn(state), 9'817'491'932'198'370'423ULL);
}

TEST(DrawnEnds, OfAChainHaveTheMeanAndVarianceOfItsSum) {
  const std::vector<std::int64_t> minutes{120, 35, 300, 77, 240, 15, 480, 90};
  const std::int64_t sum = std::accumulate(minutes.begin(), minutes.end(), std::int64_t{0});
  double squares = 0;
  for (const std::int64_t one : minutes) squares += static_cast<double>(one * one) * 1e6;
  const double ticks = static_cast<double>(sum) * 1'000;
  // Apart from each other: variances add.
  expect_moments(ends_of(chain_of(minutes, true), {25, 0}), ticks, 0.0625 * squares);
  // The pace alone: the whole sum is longer or shorter.
  expect_moments(ends_of(chain_of(minutes, true), {0, 30}), ticks, 0.09 * ticks * ticks);
  // Both: the mean of the conditional variance and the variance of the conditional mean.
  expect_moments(ends_of(chain_of(minutes, true), {25, 30}), ticks, 0.0625 * 1.09 * squares + 0.09 * ticks * ticks);
  // Work that is not laid knows no pace.
  expect_moments(ends_of(chain_of(minutes, false), {25, 30}), ticks, 0.0625 * squares);
}

/// P(U1 + U2 + U3 <= x) of uniform numbers from 0 to 1 (Irwin and Hall).
double three_uniform_up_to(double x) {
  double sum = 0;
  const double signs[] = {1, -3, 3, -1};
  for (int k = 0; k <= 3 && k <= x; ++k) sum += signs[k] * (x - k) * (x - k) * (x - k);
  return std::clamp(sum / 6, 0.0, 1.0);
}

TEST(DrawnEnds, OfOneWorkAreDoneAsOftenAsItsDistributionSays) {
  for (const std::int64_t spread : {10, 25, 33}) {
    const std::vector<std::int64_t> ends = ends_of(chain_of({1'000}, true), {spread, 0});
    for (const double share : {0.7, 0.85, 0.95, 1.0, 1.05, 1.2, 1.4}) {
      const auto done =
          std::ranges::count_if(ends, [&](std::int64_t end) { return static_cast<double>(end) <= share * 1e6; });
      // share = 1 + spread/100 (2 S - 3), S the sum of three uniform numbers.
      const double chance = three_uniform_up_to(((share - 1) * 100 / static_cast<double>(spread) + 3) / 2);
      // Five standard deviations of a binomial share; the draws' own steps move it by less than 1 in 10'000.
      EXPECT_NEAR(static_cast<double>(done) / kRuns, chance, 5 * std::sqrt(chance * (1 - chance) / kRuns) + 1e-4);
    }
  }
}

TEST(DrawnEnds, AreThePlanWhereNothingIsUnsure) {
  std::mt19937 dice(4);
  for (int k = 0; k < 200; ++k) {
    std::vector<Work> works;
    std::vector<Link> links;
    const auto count = static_cast<std::int32_t>(2 + dice() % 12);
    for (std::int32_t work = 0; work < count; ++work) {
      const bool waits = dice() % 5 == 0;
      works.push_back(
          {waits ? kDay * static_cast<std::int64_t>(dice() % 3) : static_cast<std::int64_t>(dice() % 700), waits});
      for (std::int32_t before = 0; before < work; ++before) {
        if (dice() % 3 == 0) links.push_back({before, work, dice() % 4 == 0});
      }
    }
    std::int64_t end = 0;
    for (const supply::TaskTimes& times : *supply::task_times(works, links, kDay)) end = std::max(end, times.finish);
    const auto drawn = *supply::drawn_ends(works, links, std::vector<bool>(works.size(), true), kDay, {0, 0}, 3, 1);
    EXPECT_EQ(drawn, std::vector<std::int64_t>(3, end * supply::kTicks));
    // A chain that waits for mornings never ends sooner than the same without.
    std::vector<Link> loose = links;
    for (Link& link : loose) link.next_day = false;
    const auto held = *supply::drawn_ends(works, links, {}, kDay, {20, 20}, 50, 9);
    const auto free = *supply::drawn_ends(works, loose, {}, kDay, {20, 20}, 50, 9);
    for (std::size_t run = 0; run < held.size(); ++run) EXPECT_GE(held[run], free[run]);
  }
}

Job planned(const char* name) {
  Job job = example_job(name);
  job.days.emplace();
  job.days->start = "2027-05-03", job.days->finish_by = "2027-06-30";
  if (!job.readings.empty()) job.days->log_until = "2027-05-02";  // these say no day
  return job;
}

TEST(FinishChance, CountsEveryProgrammeOnceAndTellsTheDay) {
  for (const char* name : {"kiln-house", "wash-stand", "clay-store"}) {
    Job job = planned(name);
    const Answer answer = solved(job);
    ASSERT_TRUE(answer.programme.chance.has_value());
    const FinishChance& chance = *answer.programme.chance;
    EXPECT_EQ(chance.days.back().programmes, chance.programmes);
    EXPECT_GT(chance.days.front().programmes, 0);
    for (std::size_t k = 1; k < chance.days.size(); ++k) {
      EXPECT_GE(chance.days[k].programmes, chance.days[k - 1].programmes);
      EXPECT_EQ(chance.days[k].day, chance.days[k - 1].day + 1);
      EXPECT_LT(chance.days[k - 1].date, chance.days[k].date);
    }
    std::int64_t done = 0;
    for (const DoneBy& day : chance.days) {
      if (date_text(day.date) <= *job.days->finish_by) done = day.programmes;
    }
    EXPECT_EQ(chance.done, done);
    // Sure of everything: the plan's last day, all on it.
    job.days->spread = 0, job.days->pace_doubt = 0;
    const Answer sure = solved(job);
    ASSERT_EQ(sure.programme.chance->days.size(), 1U);
    EXPECT_EQ(sure.programme.chance->days.front().day, static_cast<std::int64_t>(sure.programme.days.size()));
    EXPECT_EQ(sure.programme.chance->days.front().date, *sure.programme.days.back().date);
    EXPECT_EQ(sure.programme.chance->spread_by, UnsureBy::Stated);
  }
  EXPECT_FALSE(solved(example_job("glaze-store")).programme.chance.has_value());
}

TEST(FinishRefusals, NeedAFirstDayAndALaterOne) {
  const auto told = [](const char* days) {
    std::stringstream text;
    text << std::ifstream(std::string(STRINGCOURSE_ROOT) + "/examples/glaze-store.json").rdbuf();
    std::string job = text.str();
    const auto read = read_job(job.insert(job.find('{') + 1, "\"days\": " + std::string(days) + ","));
    std::vector<std::pair<std::string, std::string>> found;
    if (read) return found;
    for (const Refusal& refusal : read.error().shown) found.emplace_back(refusal.code.text(), refusal.place);
    return found;
  };
  using Found = std::vector<std::pair<std::string, std::string>>;
  EXPECT_EQ(told(R"({"finish_by": "2027-06-30"})"), (Found{{"belongs-together", "/days/finish_by"}}));
  EXPECT_EQ(told(R"({"start": "2027-07-01", "finish_by": "2027-06-30"})"),
            (Found{{"out-of-range", "/days/finish_by"}}));
  EXPECT_EQ(told(R"({"start": "2027-07-01", "finish_by": "soon"})"), (Found{{"not-a-date", "/days/finish_by"}}));
  EXPECT_EQ(told(R"({"spread": 34})"), (Found{{"out-of-range", "/days/spread"}}));
  EXPECT_EQ(told(R"({"start": "2027-06-30", "finish_by": "2027-06-30"})"), Found{});
}

// The crew's own pace.

TEST(OwnPaceOfTheLog, IsUnbiasedInMeanAndVariance) {
  // Minutes for a unit drawn evenly from 6 to 14: mean 10, variance (9^2 - 1) / 12 = 20 / 3. Works of any size.
  std::mt19937 dice(8);
  constexpr int kLogs = 4'000, kWorks = 8;
  double mean = 0, variance = 0, fourth = 0;
  for (int value = 6; value <= 14; ++value) fourth += std::pow(value - 10.0, 4) / 9;
  for (int log = 0; log < kLogs; ++log) {
    std::vector<TimedWork> works;
    for (int k = 0; k < kWorks; ++k) {
      const std::int64_t units = 1 + static_cast<std::int64_t>(dice() % 40);
      works.push_back({units, units * (6 + static_cast<std::int64_t>(dice() % 9))});
    }
    const OwnPace pace = *own_pace(works);
    mean += static_cast<double>(pace.each) / 1e3 / kLogs;
    variance += static_cast<double>(pace.variance) / 1e6 / kLogs;
  }
  constexpr double kTrue = 20.0 / 3;
  // Five standard deviations; the mean is rounded to a thousandth, which moves a sample's squares by its square.
  EXPECT_NEAR(mean, 10, 5 * std::sqrt(kTrue / kWorks / kLogs) + 1e-3);
  const double of_variance = (fourth - kTrue * kTrue * (kWorks - 3.0) / (kWorks - 1.0)) / kWorks;
  EXPECT_NEAR(variance, kTrue, 5 * std::sqrt(of_variance / kLogs) + 1e-3);
}

TEST(OwnPaceOfTheLog, IsWorkedOutByHandHere) {
  // Minutes for a unit: 10, 12, 8, 10, 10. Mean 10, variance 8 / 4 = 2, so 14 hundredths apart, the mean sure to 6.
  const std::vector<TimedWork> works{{10, 100}, {5, 60}, {20, 160}, {3, 30}, {7, 70}};
  const OwnPace pace = *own_pace(works);
  EXPECT_EQ(pace.works, 5);
  EXPECT_EQ(pace.units, 45);
  EXPECT_EQ(pace.minutes, 420);
  EXPECT_EQ(pace.each, 10'000);
  EXPECT_EQ(pace.variance, 2'000'000);
  EXPECT_EQ(pace.spread, 14);
  EXPECT_EQ(pace.doubt, 6);
  EXPECT_FALSE(own_pace(std::span(works).first(4)).has_value()) << "four say too little";
}

LaidEntry laid(std::string id, std::string when, std::string on, int course) {
  LaidEntry entry;
  entry.id = std::move(id), entry.when = std::move(when);
  entry.laid.emplace().on = std::move(on);
  entry.laid->course = course;
  return entry;
}

TEST(TimedWorks, LieBetweenTwoStampsOfOneDay) {
  Job job = example_job("kiln-house");
  const Answer bare = solved(job);
  const auto units = [&](int wall, int course) {
    std::int64_t sum = 0;
    for (const auto& run : bare.layout.runs) {
      if (run.wall == wall && run.course == course) sum += run.piece_count;
    }
    return sum;
  };
  const std::string a = bare.building.walls[0].name, b = bare.building.walls[1].name;
  job.laid = {laid("1", "2027-05-10 08:30", a, 1),    laid("2", "2027-05-10 10:00", b, 1),
              laid("3", "2027-05-10 11:15", a, 2),    laid("4", "2027-05-10 11:15", b, 2),  // in one go
              laid("5", "2027-05-11 09:00", a, 3),                                          // the night is no work
              laid("6", "2027-05-11T09:50", b, 3),    laid("7", "yesterday", a, 4),
              laid("8", "2027-05-11 12:00", "XY", 1),  // no such wall
              laid("9", "2027-05-11 13:00", a, 1)};    // said again
  EXPECT_EQ(timed_works(job, bare.building, bare.layout),
            (std::vector<TimedWork>{{units(1, 1), 90}, {units(0, 2) + units(1, 2), 75}, {units(1, 3), 50}}));
  LaidEntry strike;
  strike.id = "10", strike.strike = "6";
  job.laid.push_back(strike);
  EXPECT_EQ(timed_works(job, bare.building, bare.layout).size(), 2U);
}

TEST(OwnPaceOfTheLog, IsTakenForTheProgrammeUnlessTheJobStatesOne) {
  Job job = planned("kiln-house");
  const Answer bare = solved(job);
  EXPECT_EQ(bare.programme.pace_from, PaceFrom::Assumed);
  for (int course = 1; course <= 3; ++course) {
    for (std::size_t wall = 0; wall < 3; ++wall) {
      const std::string minute = std::to_string(10 + 13 * course + 3 * static_cast<int>(wall));
      job.laid.push_back(laid(std::to_string(job.laid.size() + 1),
                              "2027-05-1" + std::to_string(course) + " 1" + std::to_string(wall) + ":" + minute,
                              bare.building.walls[wall].name, course));
    }
  }
  const Answer logged = solved(job);
  ASSERT_TRUE(logged.programme.own_pace.has_value());
  EXPECT_EQ(logged.programme.own_pace->works, 6);
  EXPECT_EQ(logged.programme.pace_from, PaceFrom::Log);
  EXPECT_EQ(logged.programme.chance->spread_by, UnsureBy::Log);
  EXPECT_EQ(logged.programme.chance->doubt_by, UnsureBy::Log);
  for (const Task& task : logged.programme.tasks) {
    if (task.pieces.empty()) continue;
    const auto count = static_cast<std::int64_t>(task.pieces.size());
    EXPECT_EQ(task.times.finish - task.times.start, (count * logged.programme.own_pace->each + 999) / 1'000);
  }
  job.days->units_per_hour = 9;
  const Answer stated = solved(job);
  EXPECT_EQ(stated.programme.pace_from, PaceFrom::Stated);
  EXPECT_EQ(stated.programme.units_per_hour, 9);
  EXPECT_EQ(stated.programme.chance->doubt_by, UnsureBy::Assumed) << "the log's doubt is that of the log's pace";
}

TEST(RootDown, IsTheWholePartOfTheRoot) {
  for (std::int64_t root : {0LL, 1LL, 2LL, 3LL, 46'340LL, 46'341LL, 94'906'265LL, 94'906'267LL, 2'000'000'000LL}) {
    EXPECT_EQ(root_down(root * root), root);
    if (root > 0) EXPECT_EQ(root_down(root * root - 1), root - 1);
    if (root > 0) EXPECT_EQ(root_down(root * root + 1), root);
  }
}

}  // namespace
}  // namespace stringcourse::order_test
