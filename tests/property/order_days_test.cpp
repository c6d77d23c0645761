// Orders, programmes, loads and pallets of the examples are certified, and no false one passes.
#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <functional>
#include <random>
#include <sstream>

#include "job/read.hpp"
#include "proof/order.hpp"
#include "proof/programme.hpp"
#include "proof/site.hpp"
#include "property/certify.hpp"
#include "property/random_jobs.hpp"

namespace stringcourse::property {
namespace {

constexpr const char* kExamples[] = {"kiln-house",    "clay-store",    "glaze-store", "drying-shed",
                                     "hillside-shed", "pug-mill-shop", "wash-stand"};

Job example(const std::string& name) {
  std::stringstream text;
  text << std::ifstream(std::string(STRINGCOURSE_ROOT) + "/examples/" + name + ".json").rdbuf();
  return *read_job(text.str());
}

/// With prices, pallets, weights, a truck, deliveries that are too small, a first day and a last one.
Job planned(Job job, const Answer& bare) {
  Ordering& order = job.order.emplace();
  order.kinds = {{UnitKind::Full, std::nullopt, 75}, {UnitKind::Half, 10, std::nullopt}};
  order.tax = "8.25", order.delivery = "95", order.truck = "8000 lb";
  int number = 0;
  for (const Article& article : bare.order.articles) {
    ++number;
    if (number % 3 != 0) order.prices.push_back({article.id, std::to_string(number) + ".45"});
    if (article.id.starts_with("unit/")) order.weights.push_back({article.id, std::to_string(20 + number) + ".5 lb"});
    if (article.told) order.brought.push_back({article.id, static_cast<int>(article.least * (number % 4) / 3)});
  }
  job.days.emplace();
  job.days->start = "2027-05-03", job.days->finish_by = "2027-06-18";
  job.days->days_off = {"2027-05-31"};
  return job;
}
Job planned(const std::string& name) {
  const Job job = example(name);
  return planned(job, *solve(job, {}));
}

/// An edge, or a taping of lines that says nothing of concrete; some of them taken back.
void read_ground(Job& job, const Answer& bare, const std::string& when, std::uint64_t seed) {
  Reading& entry = job.readings.emplace_back();
  entry.id = "g0", entry.when = when;
  const Wall& wall = bare.building.walls.front();
  if (seed % 3 == 0) entry.tape.emplace(TapeReading{wall.start_name, wall.end_name, wall.actual, Taped::Lines});
  else entry.edge.emplace(EdgeReading{wall.name, {}, Length::feet(1), Length::inches(2)});
  if (seed % 5 != 0) return;
  Reading& strike = job.readings.emplace_back();
  strike.id = "g1", strike.when = when, strike.strike = "g0";
}

/// Courses of some walls laid from the bottom up, on days of which some are said; some of the cells filled.
void begin(Job& job, const Answer& bare, std::uint64_t seed) {
  std::mt19937_64 dice(seed);
  const auto day = [&] { return dice() % 6 == 0 ? "" : "2027-05-" + std::to_string(10 + dice() % 20) + " 09:15"; };
  const auto put = [&](auto LaidEntry::* member, auto value) {
    LaidEntry& entry = job.laid.emplace_back();
    entry.id = "e" + std::to_string(job.laid.size() - 1), entry.when = day();
    entry.*member = std::move(value);
  };
  const auto courses = static_cast<int>(bare.building.courses.size());
  const bool all = dice() % 3 == 0;
  for (const Wall& wall : bare.building.walls) {
    const int up_to = all ? courses : static_cast<int>(dice() % static_cast<std::uint64_t>(courses + 1));
    for (int course = 1; course <= up_to; ++course) put(&LaidEntry::laid, CourseLaid{wall.name, course});
  }
  for (const LiftCard& card : bare.pour_cards) {
    for (const GroutStep& step : card.steps) {
      if (!all || dice() % 40 == 0) continue;
      put(&LaidEntry::grouted,
          Grouted{bare.building.walls[static_cast<std::size_t>(step.wall)].name, step.course, step.at, {}});
    }
  }
  if (dice() % 3 == 0) put(&LaidEntry::strike, std::string("e0"));
  if (dice() % 2 == 0) read_ground(job, bare, day(), dice());
  if (dice() % 3 == 0) job.days->log_until = "2027-05-" + std::to_string(10 + dice() % 20);
}

proof::Violations faults(const Answer& answer) {
  proof::Violations all = proof::check_order(answer.job, answer.building, answer.layout, answer.order);
  for (const proof::Violations& more :
       {proof::check_programme(answer.job, answer.building, answer.layout, answer.tallies.grout, answer.bridged,
                               answer.pour_cards, answer.programme),
        proof::check_site(answer)})
    all.insert(all.end(), more.begin(), more.end());
  return all;
}

TEST(OrdersAndDays, OfTheExamplesAreCertified) {
  for (const char* name : kExamples) {
    SCOPED_TRACE(name);
    const Answer answer = *solve(planned(name), {});
    for (const proof::Violation& one : faults(answer)) ADD_FAILURE() << one.where << ": " << one.text;
    EXPECT_FALSE(answer.site.short_of.empty());
    EXPECT_TRUE(answer.site.pallets.has_value());
    EXPECT_EQ(faults_of(answer), "");
  }
}

TEST(OrdersAndDays, OfRandomJobsAreCertified) {
  std::size_t planned_ones = 0, with_pallets = 0, begun = 0;
  for (std::uint64_t seed = 1; seed <= 250; ++seed) {
    Wishes wishes;
    wishes.search_budget = 20'000;
    const auto bare = solve(random_job(seed), wishes);
    if (!bare || !bare->layout.stopped.empty()) continue;
    Job job = planned(random_job(seed), *bare);
    job.days->pairs = 1 + static_cast<int>(seed % 3);
    if (seed % 4 == 0) job.days->most_courses = 1 + static_cast<int>(seed % 5);
    if (seed % 5 == 0) job.days->work = {{WorkKind::MasonryCure, 5}, {WorkKind::Lintels, 3}};
    if (seed % 2 == 0) begin(job, *bare, seed);
    const auto answer = solve(job, wishes);
    ASSERT_TRUE(answer.has_value()) << seed;
    ++planned_ones;
    if (answer->programme.done && answer->programme.done->units > 0) ++begun;
    if (answer->site.pallets) ++with_pallets;
    for (const proof::Violation& one : faults(*answer))
      ADD_FAILURE() << "seed " << seed << " " << one.where << ": " << one.text;
  }
  EXPECT_GE(planned_ones, 150U);
  EXPECT_GE(with_pallets, 100U);
  EXPECT_GE(begun, 60U);
}

using Change = std::function<bool(Answer&)>;  // false: there is nothing of the kind to change

std::vector<std::pair<const char*, Change>> false_answers() {
  const auto article = [](Answer& of) -> Article& { return of.order.articles.front(); };
  return {
      {"one less needed", [=](Answer& of) { return --article(of).net, true; }},
      {"one more spare", [=](Answer& of) { return ++article(of).spare, true; }},
      {"a pallet more",
       [=](Answer& of) {
         Article& one = article(of);
         return one.rounding += 75, one.least += 75, one.most += 75, true;
       }},
      {"a kind forgotten", [](Answer& of) { return of.order.articles.erase(of.order.articles.begin()), true; }},
      {"a kind twice", [=](Answer& of) { return of.order.articles.push_back(article(of)), true; }},
      {"a cubic nanometre of beds", [](Answer& of) { return ++of.order.mortar.beds.cubic_nanometres, true; }},
      {"a cubic nanometre of heads", [](Answer& of) { return --of.order.mortar.heads.cubic_nanometres, true; }},
      {"a cent of goods", [](Answer& of) { return ++of.order.prices.goods.most, true; }},
      {"a cent of tax", [](Answer& of) { return --of.order.prices.tax.least, true; }},
      {"a cent in all", [](Answer& of) { return ++of.order.prices.all.most, true; }},
      {"another cost",
       [](Answer& of) {
         const auto at = std::ranges::find_if(of.order.articles, [](const Article& a) { return a.cost.has_value(); });
         return at != of.order.articles.end() && (++at->cost->most, true);
       }},
      {"a wall a course lower at night",
       [](Answer& of) { return --of.programme.days.back().reached.front().course, true; }},
      {"a lead lower at night",
       [](Answer& of) {
         const auto at = std::ranges::find_if(of.programme.days, [](const WorkDay& day) {
           return day.reached.front().begun > day.reached.front().course;
         });
         return at != of.programme.days.end() && (at->reached.front().begun = at->reached.front().course, true);
       }},
      {"a wall not braced",
       [](Answer& of) {
         const auto at = std::ranges::find_if(of.programme.days, [](const WorkDay& day) { return !day.brace.empty(); });
         return at != of.programme.days.end() && (at->brace.pop_back(), true);
       }},
      {"a wall over 8 ft not said",
       [](Answer& of) {
         const auto at = std::ranges::find_if(of.programme.days, [](const WorkDay& day) { return !day.tall.empty(); });
         return at != of.programme.days.end() && (at->tall.clear(), true);
       }},
      {"a piece not laid",
       [](Answer& of) {
         for (Task& task : of.programme.tasks) {
           if (task.pieces.size() > 1) return task.pieces.pop_back(), true;
         }
         return false;
       }},
      {"a minute less", [](Answer& of) { return --of.programme.tasks.back().times.finish, true; }},
      {"a minute earlier",
       [](Answer& of) {
         return --of.programme.tasks.back().times.start, --of.programme.tasks.back().times.finish, true;
       }},
      {"later at the latest",
       [](Answer& of) {
         return ++of.programme.tasks.front().times.latest_start, ++of.programme.tasks.front().times.latest_finish, true;
       }},
      {"another end", [](Answer& of) { return ++of.programme.minutes, true; }},
      {"a day's date", [](Answer& of) { return ++of.programme.days.back().date->day, true; }},
      {"a day more", [](Answer& of) { return of.programme.days.push_back(of.programme.days.back()), true; }},
      {"another pace", [](Answer& of) { return ++of.programme.pace.units, true; }},
      {"a block on another day",
       [](Answer& of) {
         for (WorkDay& day : of.programme.days) {
           if (day.laid > 0) return --day.laid, true;
         }
         return false;
       }},
      {"a link left out", [](Answer& of) { return of.programme.links.erase(of.programme.links.begin()), true; }},
      {"one lacks more", [](Answer& of) { return ++of.site.short_of.front().lacks, true; }},
      {"one lack not told", [](Answer& of) { return of.site.short_of.pop_back(), true; }},
      {"runs out a course later",
       [](Answer& of) {
         for (RunsOut& out : of.site.short_of) {
           if (out.wall >= 0) return ++out.course, true;
         }
         return false;
       }},
      {"runs out a day later",
       [](Answer& of) {
         for (RunsOut& out : of.site.short_of) {
           if (out.wall >= 0) return ++out.day.number, true;
         }
         return false;
       }},
      {"a load too heavy",
       [](Answer& of) {
         for (Drop& drop : of.site.drops) {
           if (!drop.loads.empty()) return ++drop.loads.front().parts.front().count, true;
         }
         return false;
       }},
      {"a load left behind",
       [](Answer& of) {
         for (Drop& drop : of.site.drops) {
           if (!drop.loads.empty()) return drop.loads.pop_back(), true;
         }
         return false;
       }},
      {"a drop forgotten", [](Answer& of) { return of.site.drops.pop_back(), true; }},
      {"a pallet moved",
       [](Answer& of) { return of.site.pallets->pallets.front().along += Length::nanometres(1), true; }},
      {"two pallets on one place",
       [](Answer& of) {
         auto& pallets = of.site.pallets->pallets;
         if (pallets.size() < 2) return false;
         pallets[1].middle = pallets[0].middle, pallets[1].beside = pallets[0].beside;
         return pallets[1].along = pallets[0].along, pallets[1].out = pallets[0].out, true;
       }},
      {"a price that proves too much", [](Answer& of) { return ++of.site.pallets->pallet_prices.front(), true; }},
      {"less carried than is", [](Answer& of) { return --of.site.pallets->carried, true; }},
      {"a place in the zone",
       [](Answer& of) { return of.site.pallets->places.front() = of.building.walls.front().start_point, true; }},
  };
}

std::vector<std::pair<const char*, Change>> false_ones_of_a_begun_job() {
  return {
      {"another evening", [](Answer& of) { return ++of.programme.done->evening->day, true; }},
      {"a day more behind", [](Answer& of) { return ++of.programme.done->days, true; }},
      {"one more laid", [](Answer& of) { return ++of.programme.done->units, true; }},
      {"the job's evening", [](Answer& of) { return of.programme.done->stated = !of.programme.done->stated, true; }},
      {"nothing behind", [](Answer& of) { return of.programme.done.reset(), true; }},
      {"a course not laid", [](Answer& of) { return of.programme.done->tasks.pop_back(), true; }},
      {"days numbered anew", [](Answer& of) { return --of.programme.days.front().number, true; }},
      {"the footing again",
       [](Answer& of) {
         auto& done = of.programme.done->tasks;
         return done.erase(std::ranges::find(done, WorkKind::Footing, &Task::work)), true;
       }},
      {"a course laid again",
       [](Answer& of) {
         const auto& done = of.programme.done->tasks;
         const auto at = std::ranges::find(done, WorkKind::Course, &Task::work);
         return of.programme.tasks.push_back(*at), true;
       }},
  };
}

TEST(OrdersAndDays, NoFalseOneOfABegunJobPasses) {
  Job job = planned("kiln-house");
  for (const char* wall : {"AB", "BC"}) {
    LaidEntry& entry = job.laid.emplace_back();
    entry.id = wall, entry.when = "2027-05-12 10:00", entry.laid = CourseLaid{wall, 1};
  }
  const Answer answer = *solve(job, {});
  EXPECT_EQ(faults_of(answer), "");
  for (const auto& [what, change] : false_ones_of_a_begun_job()) {
    Answer wrong = answer;
    ASSERT_TRUE(change(wrong));
    EXPECT_FALSE(faults(wrong).empty()) << what;
  }
}

TEST(OrdersAndDays, NoFalseOnePasses) {
  for (const char* name : {"kiln-house", "glaze-store", "hillside-shed"}) {
    const Answer answer = *solve(planned(name), {});
    std::size_t tried = 0;
    for (const auto& [what, change] : false_answers()) {
      Answer wrong = answer;
      if (!change(wrong)) continue;
      ++tried;
      EXPECT_FALSE(faults(wrong).empty()) << name << ": " << what;
    }
    EXPECT_GE(tried, 30U) << name;
  }
}

}  // namespace
}  // namespace stringcourse::property
