#include "answer/finish.hpp"

#include <algorithm>

#include "answer/programme_parts.hpp"
#include "supply/finish_chance.hpp"

namespace stringcourse {
namespace {

constexpr std::int64_t kUsualSpread = 25, kUsualDoubt = 30;  // SOURCE: rule "pace-unsure"
constexpr std::uint64_t kSeed = 1;                           // one for all jobs: the same job, the same chance

struct Known {
  std::int64_t hundredths;
  UnsureBy by;
};

Known figure_of(std::optional<int> stated, std::optional<std::int64_t> logged, std::int64_t usual) {
  if (stated) return {*stated, UnsureBy::Stated};
  if (logged) return {std::min(*logged, supply::kMostUnsure), UnsureBy::Log};
  return {usual, UnsureBy::Assumed};
}

/// Ends drawn, in ticks.
std::vector<std::int64_t> ends_of(const Programme& programme, const FinishChance& chance) {
  std::vector<supply::Work> works;
  std::vector<bool> paced;
  for (const Task& task : programme.tasks) {
    works.push_back({task.times.finish - task.times.start, is_wait(task.work)});
    paced.push_back(!task.pieces.empty());
  }
  return supply::drawn_ends(works, programme.links, paced, programme.minutes_a_day, {chance.spread, chance.doubt},
                            static_cast<int>(chance.programmes), kSeed)
      .value_or(std::vector<std::int64_t>());
}

void count_days(FinishChance& chance, const Programme& programme, const Days& stated) {
  const std::int64_t day = programme.minutes_a_day * supply::kTicks;
  std::vector<std::int64_t> days;
  for (const std::int64_t end : ends_of(programme, chance))
    days.push_back(std::max<std::int64_t>(1, (end + day - 1) / day));
  std::ranges::sort(days);
  if (days.empty()) return;
  const std::vector<Date> dates =
      planning::working_dates(stated, programme.from, static_cast<std::size_t>(days.back()));
  for (std::int64_t one = days.front(); one <= days.back(); ++one) {
    const auto done = std::ranges::upper_bound(days, one) - days.begin();
    chance.days.push_back({one + first_number(programme) - 1, dates[static_cast<std::size_t>(one - 1)], done});
    if (chance.days.back().date <= chance.by) chance.done = done;
  }
}

}  // namespace

std::optional<FinishChance> finish_chance(const Answer& answer) {
  const Days& stated = planning::stated_in(answer);
  const auto by = stated.finish_by ? read_date(*stated.finish_by) : std::nullopt;
  if (!by || !answer.programme.from || answer.programme.tasks.empty()) return std::nullopt;
  const std::optional<OwnPace>& own = answer.programme.own_pace;
  const bool laid_so = own && answer.programme.pace_from == PaceFrom::Log;
  const Known spread = figure_of(stated.spread, own ? std::optional(own->spread) : std::nullopt, kUsualSpread);
  const Known doubt = figure_of(stated.pace_doubt, laid_so ? std::optional(own->doubt) : std::nullopt, kUsualDoubt);
  FinishChance chance{
      .by = *by, .spread = spread.hundredths, .doubt = doubt.hundredths, .spread_by = spread.by, .doubt_by = doubt.by};
  count_days(chance, answer.programme, stated);
  if (chance.days.empty()) return std::nullopt;
  return chance;
}

const DoneBy& done_for(const FinishChance& chance, std::int64_t hundredths) {
  return *std::ranges::find_if(
      chance.days, [&](const DoneBy& day) { return day.programmes * 100 >= chance.programmes * hundredths; });
}

Fact unsure_said(const FinishChance& chance) {
  constexpr std::string_view kBy[] = {"unsure-assumed", "unsure-log", "unsure-stated"};
  const auto by = [&](UnsureBy one) { return fact(kBy[static_cast<std::size_t>(one)]); };
  return fact("finish-unsure", {chance.spread, by(chance.spread_by), chance.doubt, by(chance.doubt_by)});
}

Fact finish_said(const FinishChance& chance) {
  return fact("finish-chance", {date_text(chance.by), chance.done, chance.programmes,
                                date_text(done_for(chance, 50).date), date_text(done_for(chance, 90).date)});
}

}  // namespace stringcourse
