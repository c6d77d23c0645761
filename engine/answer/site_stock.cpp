// What runs out, and what comes with which truck.
#include <algorithm>

#include "answer/order_parts.hpp"
#include "answer/site_parts.hpp"
#include "bond/layout_parts.hpp"

namespace stringcourse::siting {
namespace {

std::int64_t share_up(std::int64_t of, std::int64_t count, std::int64_t all) {
  return all == 0 ? 0 : (of * count + all - 1) / all;
}

/// How much of an article is used up while it is laid.
struct Use {
  const Article& article;
  std::int64_t whole = 0, cuts = 0;        // laid so far
  std::int64_t all_cuts = 0, for_saw = 0;  // of the whole building
  [[nodiscard]] std::int64_t taken() const {
    const std::int64_t used = whole + share_up(for_saw, cuts, all_cuts);
    return used + share_up(article.spare, used, article.net);
  }
};

Use use_of(const Answer& answer, const UnitsOf& units, const Article& article) {
  Use use{.article = article};
  for (const supply::UnitCount& count : answer.tallies.units.units) {
    if (count.series == units.series && count.kind == units.kind) use.all_cuts = count.pieces;
  }
  for (const supply::Purchase& purchase : answer.tallies.to_buy) {
    if (purchase.series == units.series && purchase.kind == units.kind) use.for_saw = purchase.for_saw;
  }
  return use;
}

/// The minute by which each piece is laid.
std::vector<std::int64_t> minutes_of(const Answer& answer) {
  std::vector<std::int64_t> minutes(answer.layout.pieces.size(), 1);
  for (const Task& task : answer.programme.tasks) {
    for (std::size_t k = 0; k < task.pieces.size(); ++k) minutes[task.pieces[k]] = planning::laid_by(task, k);
  }
  return minutes;
}

/// Where along the laying one more is taken than was brought.
void find_place(RunsOut& out, const Answer& answer, const UnitsOf& units, const std::vector<std::uint32_t>& pieces) {
  const std::vector<std::int32_t> run_of = planning::runs_of_pieces(answer.layout);
  Use use = use_of(answer, units, answer.order.articles[static_cast<std::size_t>(out.article)]);
  for (const std::uint32_t index : pieces) {
    const Piece& piece = answer.layout.pieces[index];
    const Run& run = answer.layout.runs[static_cast<std::size_t>(run_of[index])];
    if (!units.has(answer.building.walls[static_cast<std::size_t>(run.wall)], piece)) continue;
    ++(bond::is_saw_cut(piece) ? use.cuts : use.whole);
    if (use.taken() <= out.brought) continue;
    out.wall = run.wall, out.course = run.course;
    out.day = day_by(answer.programme, minutes_of(answer)[index]);
    return;
  }
}

}  // namespace

std::vector<RunsOut> short_of(const Answer& answer) {
  std::vector<RunsOut> found;
  std::vector<std::uint32_t> pieces;
  for (std::size_t k = 0; k < answer.order.articles.size(); ++k) {
    const Article& article = answer.order.articles[k];
    if (!article.brought || !article.told) continue;
    const std::int64_t wanted = article.figures.empty() ? article.net + article.spare : article.least;
    if (*article.brought >= wanted) continue;
    RunsOut out{
        .article = static_cast<std::int64_t>(k), .brought = *article.brought, .lacks = wanted - *article.brought};
    out.day = day_of_point(answer.programme, article.wanted);
    if (const auto units = units_of(answer, article)) {
      if (pieces.empty()) pieces = laying_order(answer);
      find_place(out, answer, *units, pieces);
    }
    found.push_back(out);
  }
  return found;
}

namespace {

/// Puts so many things of a weight on, each on the first load that has room for it.
void put_on(Drop& drop, std::int64_t article, std::int64_t count, std::int64_t each, Mass weight, Mass most) {
  for (std::int64_t k = 0; k < count; ++k) {
    auto room = std::ranges::find_if(drop.loads,
                                     [&](const Load& load) { return load.weight.units + weight.units <= most.units; });
    if (room == drop.loads.end()) room = drop.loads.insert(room, Load());
    Load& load = *room;
    load.weight += weight;
    if (!load.parts.empty() && load.parts.back().article == article) load.parts.back().count += each;
    else load.parts.push_back({article, each});
  }
}

void weigh(Drop& drop, const Answer& answer, std::int64_t index, std::optional<Mass> truck) {
  const Article& article = answer.order.articles[static_cast<std::size_t>(index)];
  if (!article.weight) {
    if (!article.id.starts_with("tool/")) drop.unweighed.push_back(index);
    return;
  }
  drop.weight += article.weight->times(article.most);
  if (!truck) return;
  const std::int64_t each = article.on_pallet.value_or(1);
  const Mass one = article.weight->times(each);
  if (*truck < one) return drop.too_heavy.push_back(index);
  put_on(drop, index, article.most / each, each, one, *truck);
}

}  // namespace

std::vector<Drop> drops_of(const Answer& answer) {
  const std::optional<std::string>& stated = ordering::stated_in(answer).truck;
  const std::optional<Mass> truck = stated ? read_mass(*stated) : std::nullopt;
  std::vector<Drop> drops;
  for (int point = 1; point <= 6; ++point) {
    Drop drop{.point = static_cast<HoldPoint>(point)};
    drop.day = day_of_point(answer.programme, drop.point);
    for (std::size_t k = 0; k < answer.order.articles.size(); ++k) {
      const Article& article = answer.order.articles[k];
      if (article.wanted != drop.point || !article.told || article.most == 0) continue;
      drop.articles.push_back(static_cast<std::int64_t>(k));
      weigh(drop, answer, static_cast<std::int64_t>(k), truck);
    }
    if (drop.articles.empty()) continue;
    if (truck) drop.least_loads = (drop.weight.units + truck->units - 1) / truck->units;
    drops.push_back(std::move(drop));
  }
  return drops;
}

}  // namespace stringcourse::siting
