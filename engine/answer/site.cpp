#include "answer/site.hpp"

#include <algorithm>

#include "answer/order_parts.hpp"
#include "answer/site_parts.hpp"
#include "bond/layout_parts.hpp"

namespace stringcourse {
namespace siting {

std::vector<std::uint32_t> laying_order(const Answer& answer) {
  const Programme& programme = answer.programme;
  std::vector<std::uint32_t> pieces;
  const auto add = [&](const std::vector<Task>& tasks) {
    for (const Task& task : tasks) pieces.insert(pieces.end(), task.pieces.begin(), task.pieces.end());
  };
  if (programme.done) add(programme.done->tasks);
  add(programme.tasks);
  return pieces;
}

PlannedDay day_by(const Programme& programme, std::int64_t minute) {
  const std::size_t day = planning::day_of(programme, std::max<std::int64_t>(1, minute));
  PlannedDay planned{.number = static_cast<std::int64_t>(day) + first_number(programme), .date = std::nullopt};
  if (day < programme.days.size()) planned.date = programme.days[day].date;
  return planned;
}

PlannedDay day_of_point(const Programme& programme, HoldPoint point) {
  constexpr WorkKind kBegins[] = {WorkKind::Boards,  WorkKind::Footing,   WorkKind::Lines,
                                  WorkKind::Lintels, WorkKind::GroutLift, WorkKind::Bolts};
  const WorkKind begins = kBegins[static_cast<std::size_t>(point) - 1];
  if (programme.done && std::ranges::contains(programme.done->tasks, begins, &Task::work)) return day_by(programme, 1);
  const auto first = std::ranges::find(programme.tasks, begins, &Task::work);
  const std::int64_t start = first == programme.tasks.end() ? programme.minutes : first->times.start + 1;
  return day_by(programme, start);
}

std::optional<UnitsOf> units_of(const Answer& answer, const Article& article) {
  for (const supply::Purchase& purchase : answer.tallies.to_buy) {
    const std::string& series = answer.building.series[static_cast<std::size_t>(purchase.series)].id;
    if (article.id == ordering::unit_id(series, purchase.kind)) return UnitsOf{purchase.series, purchase.kind};
  }
  return std::nullopt;
}

}  // namespace siting

OnSite site_of(const Answer& answer) {
  return {siting::short_of(answer), siting::drops_of(answer), siting::pallets_of(answer)};
}

Fact day_said(const PlannedDay& day) {
  return day.date ? fact("day-dated", {day.number, date_text(*day.date)}) : fact("day-numbered", {day.number});
}

Fact runs_out_said(const Answer& answer, const RunsOut& out) {
  const Article& article = answer.order.articles[static_cast<std::size_t>(out.article)];
  if (out.wall < 0) return fact("runs-out-before", {article.name, out.lacks, out.brought, day_said(out.day)});
  return fact("runs-out", {article.name, out.lacks, out.brought, out.course,
                           answer.building.walls[static_cast<std::size_t>(out.wall)].name, day_said(out.day)});
}

Fact load_said(const Answer& answer, const Load& load) {
  std::vector<FactValue> parts;
  for (const Load::Part& part : load.parts) {
    const Article& article = answer.order.articles[static_cast<std::size_t>(part.article)];
    parts.emplace_back(fact("load-part", {article.name, amount_said(article.sold, part.count, part.count)}));
  }
  return fact("load", {FactValue(FactValue::Kind::Semicolons, std::move(parts))});
}

}  // namespace stringcourse
