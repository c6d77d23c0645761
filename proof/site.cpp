#include "proof/site.hpp"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

#include "proof/behind.hpp"

namespace stringcourse::proof {
namespace {

Violation wrong(const std::string& where, std::string text) { return violation("site", where, std::move(text)); }

const Article& article_at(const Answer& answer, std::int64_t index) {
  return answer.order.articles[static_cast<std::size_t>(index)];
}

// What runs out.

struct Taken {
  std::int64_t whole = 0, cuts = 0;
};

/// Units used up when so much is laid: the saw's units and the broken ones spread evenly, each rounded up.
std::int64_t used_up(const Article& article, Taken now, Taken all) {
  const auto up = [](std::int64_t of, std::int64_t over) { return (of + over - 1) / over; };
  const std::int64_t for_saw = article.net - all.whole;
  const std::int64_t used = now.whole + (all.cuts == 0 ? 0 : up(for_saw * now.cuts, all.cuts));
  return used + (article.net == 0 ? 0 : up(article.spare * used, article.net));
}

struct LaidPiece {
  int wall = 0, course = 0;
  std::int64_t minute = 0;
  bool cut = false;
};

std::vector<LaidPiece> pieces_of(const Answer& answer, const Article& article) {
  std::map<std::uint32_t, std::pair<int, int>> places;
  std::set<std::uint32_t> of_it;
  for (const Run& run : answer.layout.runs) {
    for (std::uint32_t k = run.first_piece; k < run.first_piece + run.piece_count; ++k) {
      const Wall& wall = answer.building.walls[static_cast<std::size_t>(run.wall)];
      places[k] = {run.wall, run.course};
      const std::string& series = answer.building.series[static_cast<std::size_t>(wall.series)].id;
      if ("unit/" + series + "/" + std::string(kind_name(answer.layout.pieces[k].kind)) == article.id) of_it.insert(k);
    }
  }
  std::vector<LaidPiece> pieces;
  const auto lay = [&](std::uint32_t piece, std::int64_t minute) {
    const auto [wall, course] = places[piece];
    if (of_it.contains(piece))
      pieces.push_back({wall, course, minute, answer.layout.pieces[piece].cut != CutEnd::None});
  };
  std::set<std::tuple<int, int, std::uint32_t>> laid;  // what is behind comes first, course by course
  const Behind behind = behind_by_log(answer.job, answer.building, {});
  for (const auto& [piece, place] : places) {
    if (behind.courses.contains(place)) laid.insert({place.second, place.first, piece});
  }
  for (const auto& [course, wall, piece] : laid) lay(piece, 1);
  for (const Task& task : answer.programme.tasks) {
    const auto count = static_cast<std::int64_t>(task.pieces.size());
    for (std::int64_t k = 0; k < count; ++k) {
      const std::int64_t lasts = task.times.finish - task.times.start;
      lay(task.pieces[static_cast<std::size_t>(k)], task.times.start + (lasts * (k + 1) + count - 1) / count);
    }
  }
  return pieces;
}

void check_place(Violations& found, const Answer& answer, const RunsOut& out) {
  const Article& article = article_at(answer, out.article);
  const std::vector<LaidPiece> pieces = pieces_of(answer, article);
  Taken all, now;
  for (const LaidPiece& piece : pieces) ++(piece.cut ? all.cuts : all.whole);
  for (const LaidPiece& piece : pieces) {
    ++(piece.cut ? now.cuts : now.whole);
    if (used_up(article, now, all) <= out.brought) continue;
    const std::int64_t gone = answer.programme.done ? answer.programme.done->days : 0;
    const std::int64_t day = gone + (piece.minute - 1) / answer.programme.minutes_a_day + 1;
    if (out.wall != piece.wall || out.course != piece.course || out.day.number != day)
      found.push_back(wrong(article.id, "runs out at another place"));
    return;
  }
  if (out.wall >= 0) found.push_back(wrong(article.id, "does not run out"));
}

void check_short_of(Violations& found, const Answer& answer) {
  std::map<std::int64_t, const RunsOut*> told;
  for (const RunsOut& out : answer.site.short_of) told[out.article] = &out;
  if (told.size() != answer.site.short_of.size()) found.push_back(wrong("stock", "an article is told twice"));
  std::map<std::string, std::int64_t> brought;
  if (answer.job.order) {
    for (const Brought& one : answer.job.order->brought) brought[one.article] += one.count;
  }
  for (std::size_t k = 0; k < answer.order.articles.size(); ++k) {
    const Article& article = answer.order.articles[k];
    const auto came = brought.find(article.id);
    const std::int64_t wanted = article.figures.empty() ? article.net + article.spare : article.least;
    const bool lacks = came != brought.end() && article.told && came->second < wanted;
    const auto at = told.find(static_cast<std::int64_t>(k));
    if (lacks != (at != told.end())) {
      found.push_back(wrong(article.id, "lacks and is not told, or is told and does not lack"));
      continue;
    }
    if (!lacks) continue;
    if (at->second->brought != came->second || at->second->lacks != wanted - came->second)
      found.push_back(wrong(article.id, "lacks another number"));
    if (article.id.starts_with("unit/")) check_place(found, answer, *at->second);
  }
}

// Loads.

void check_drop(Violations& found, const Answer& answer, const Drop& drop, std::optional<Mass> truck) {
  const std::string where = "drop " + std::to_string(static_cast<int>(drop.point));
  std::map<std::int64_t, std::int64_t> carried;
  for (const Load& load : drop.loads) {
    Mass weight;
    for (const Load::Part& part : load.parts) {
      const Article& article = article_at(answer, part.article);
      if (!article.weight || part.count % article.on_pallet.value_or(1) != 0) {
        found.push_back(wrong(where, "a load of what has no weight, or of half a pallet"));
        return;
      }
      carried[part.article] += part.count;
      weight.units += article.weight->units * part.count;
    }
    if (weight != load.weight || load.parts.empty() || !truck || weight > *truck)
      found.push_back(wrong(where, "a load weighs another amount, or more than the truck carries"));
  }
  Mass all;
  for (const std::int64_t index : drop.articles) {
    const Article& article = article_at(answer, index);
    const bool heavy = std::ranges::contains(drop.too_heavy, index);
    if (article.weight) all.units += article.weight->units * article.most;
    const std::int64_t due = !truck || !article.weight || heavy ? 0 : article.most;
    if (carried[index] != due) found.push_back(wrong(where, article.id + " does not come, or too much of it"));
    if (heavy && (!truck || !article.weight || article.weight->units * article.on_pallet.value_or(1) <= truck->units))
      found.push_back(wrong(where, article.id + " is not too heavy"));
  }
  if (all != drop.weight) found.push_back(wrong(where, "weighs another amount"));
  const std::int64_t fewest = truck ? (all.units + truck->units - 1) / truck->units : 0;
  if (drop.least_loads != fewest) found.push_back(wrong(where, "fewer loads do, or do not"));
}

void check_drops(Violations& found, const Answer& answer) {
  const std::optional<Mass> truck =
      answer.job.order && answer.job.order->truck ? read_mass(*answer.job.order->truck) : std::nullopt;
  std::set<std::int64_t> seen;
  for (const Drop& drop : answer.site.drops) {
    for (const std::int64_t index : drop.articles) {
      if (!seen.insert(index).second) found.push_back(wrong("drops", "an article comes twice"));
      if (article_at(answer, index).wanted != drop.point)
        found.push_back(wrong("drops", "an article comes at another time"));
    }
    check_drop(found, answer, drop, truck);
  }
  for (std::size_t k = 0; k < answer.order.articles.size(); ++k) {
    const Article& article = answer.order.articles[k];
    if (article.told && article.most > 0 && !seen.contains(static_cast<std::int64_t>(k)))
      found.push_back(wrong("drops", article.id + " never comes"));
  }
}

// Pallets.

PlanPoint in_plan(const Wall& wall, Length along, Length in) {
  switch (wall.heading) {
    case Heading::West: return {wall.start_point.x - along, wall.start_point.y + in};
    case Heading::North: return {wall.start_point.x + in, wall.start_point.y + along};
    case Heading::East: return {wall.start_point.x + along, wall.start_point.y - in};
    case Heading::South: return {wall.start_point.x - in, wall.start_point.y - along};
  }
  return wall.start_point;
}

/// By halving: the engine takes a root another way.
std::int64_t root(std::int64_t square) {
  std::int64_t low = 0, high = 3'000'000'000;
  while (high - low > 1) {
    const std::int64_t middle = low + (high - low) / 2;
    (middle * middle <= square ? low : high) = middle;
  }
  return low;
}

struct BlockAt {
  int wall = 0;
  Length along;
  PlanPoint middle;
};
std::vector<BlockAt> blocks_of(const Answer& answer, const Article& article) {
  std::vector<BlockAt> blocks;
  for (const Run& run : answer.layout.runs) {
    const Wall& wall = answer.building.walls[static_cast<std::size_t>(run.wall)];
    const Series& series = answer.building.series[static_cast<std::size_t>(wall.series)];
    for (std::uint32_t k = run.first_piece; k < run.first_piece + run.piece_count; ++k) {
      const Piece& piece = answer.layout.pieces[k];
      if ("unit/" + series.id + "/" + std::string(kind_name(piece.kind)) != article.id) continue;
      const Length along = piece.start.nearest_nanometre() + piece.length.half_down();
      blocks.push_back({run.wall, along, in_plan(wall, along, series.thickness.half_down())});
    }
  }
  std::ranges::stable_sort(blocks, [](const BlockAt& a, const BlockAt& b) {
    return a.wall != b.wall ? a.wall < b.wall : a.along < b.along;
  });
  return blocks;
}

/// In millimetres: what two points are apart each way, towards zero, and then the root, down.
std::int64_t carried_to(const std::vector<BlockAt>& blocks, std::size_t first, std::size_t last, PlanPoint place) {
  constexpr std::int64_t kMillimetre = 1'000'000;
  std::int64_t sum = 0;
  for (std::size_t k = first; k < last; ++k) {
    const std::int64_t x = (blocks[k].middle.x - place.x).in_nanometres() / kMillimetre;
    const std::int64_t y = (place.y - blocks[k].middle.y).in_nanometres() / kMillimetre;
    sum += root(x * x + y * y);
  }
  return sum;
}

void check_clear(Violations& found, const Answer& answer, const PalletPlan& plan, PlanPoint place) {
  const Length half = answer.job.tape == Tape::Inches ? Length::feet(2) : Length::millimetres(600);
  for (const Wall& wall : answer.building.walls) {
    const Series& series = answer.building.series[static_cast<std::size_t>(wall.series)];
    const PlanPoint a = in_plan(wall, Length(), Length()), b = in_plan(wall, wall.actual, series.thickness);
    const auto gap = [&](Length at, Length p, Length q) {
      return std::max({Length(), std::min(p, q) - (at + half), (at - half) - std::max(p, q)}).in_nanometres();
    };
    const int128 x = gap(place.x, a.x, b.x), y = gap(place.y, a.y, b.y);
    const int128 zone = plan.zone.in_nanometres();
    if (x * x + y * y < zone * zone) found.push_back(wrong("pallets", "one stands in the zone of " + wall.name));
  }
}

void check_zone(Violations& found, const Answer& answer, const PalletPlan& plan) {
  const Building& building = answer.building;
  const Length high = building.courses.back().top - building.courses.front().underside() + building.joint;
  if (plan.zone < high) found.push_back(wrong("pallets", "the zone is lower than the wall is high"));
}

void check_pallets(Violations& found, const Answer& answer) {
  const auto on_pallets = [](const Article& article) { return article.on_pallet.has_value(); };
  if (!answer.site.pallets) return;
  const PalletPlan& plan = *answer.site.pallets;
  if (std::ranges::none_of(answer.order.articles, on_pallets)) found.push_back(wrong("pallets", "of nothing"));
  if (plan.pallet_prices.size() != plan.pallets.size() || plan.place_prices.size() != plan.places.size())
    return found.push_back(wrong("pallets", "no prices"));
  check_zone(found, answer, plan);
  std::map<std::pair<std::int64_t, std::int64_t>, std::size_t> place_at;
  for (std::size_t k = 0; k < plan.places.size(); ++k) {
    check_clear(found, answer, plan, plan.places[k]);
    place_at[{plan.places[k].x.in_nanometres(), plan.places[k].y.in_nanometres()}] = k;
  }
  std::map<std::int64_t, std::int64_t> number_of;  // pallets of an article so far
  std::set<std::size_t> used;
  std::int64_t carried = 0, prices = 0;
  for (std::size_t p = 0; p < plan.pallets.size(); ++p) {
    const PlacedPallet& pallet = plan.pallets[p];
    const Article& article = article_at(answer, pallet.article);
    const std::vector<BlockAt> blocks = blocks_of(answer, article);
    const std::int64_t count = std::max<std::int64_t>(1, article.most / *article.on_pallet);
    const std::int64_t number = number_of[pallet.article]++;
    const auto all = static_cast<std::int64_t>(blocks.size());
    const auto first = static_cast<std::size_t>(number * all / count);
    const auto last = std::min(blocks.size(), static_cast<std::size_t>((number + 1) * all / count));
    const auto place = place_at.find({pallet.middle.x.in_nanometres(), pallet.middle.y.in_nanometres()});
    const Wall& beside = answer.building.walls[static_cast<std::size_t>(pallet.beside)];
    if (place == place_at.end() || !used.insert(place->second).second ||
        in_plan(beside, pallet.along, -pallet.out) != pallet.middle)
      return found.push_back(wrong("pallets", "one stands on no place, or two on one, or elsewhere than it says"));
    if (pallet.units != article.on_pallet) found.push_back(wrong("pallets", "another number on one"));
    if (pallet.carried != carried_to(blocks, first, last, pallet.middle))
      found.push_back(wrong("pallets", "another distance is carried"));
    for (std::size_t q = 0; q < plan.places.size(); ++q) {
      if (plan.pallet_prices[p] + plan.place_prices[q] > carried_to(blocks, first, last, plan.places[q]))
        return found.push_back(wrong("pallets", "prices above what is carried prove nothing"));
    }
    carried += pallet.carried, prices += plan.pallet_prices[p];
  }
  for (const auto& [article, count] : number_of) {
    if (count * article_at(answer, article).on_pallet.value_or(1) != article_at(answer, article).most)
      found.push_back(wrong("pallets", "more or fewer than are ordered"));
  }
  for (std::size_t q = 0; q < plan.places.size(); ++q) {
    if (plan.place_prices[q] > 0 || (plan.place_prices[q] != 0 && !used.contains(q)))
      found.push_back(wrong("pallets", "a place has a price that proves nothing"));
    prices += plan.place_prices[q];
  }
  if (carried != plan.carried || prices != carried) found.push_back(wrong("pallets", "less may be carried"));
}

/// Whether all that is named is there.
bool is_sound(const Answer& answer) {
  const auto article = [&](std::int64_t index) {
    return index >= 0 && index < static_cast<std::int64_t>(answer.order.articles.size());
  };
  const OnSite& site = answer.site;
  bool sound = std::ranges::all_of(site.short_of, article, &RunsOut::article);
  for (const Drop& drop : site.drops) {
    sound = sound && std::ranges::all_of(drop.articles, article);
    for (const Load& load : drop.loads) sound = sound && std::ranges::all_of(load.parts, article, &Load::Part::article);
  }
  if (!site.pallets) return sound;
  const auto wall = [&](const PlacedPallet& pallet) {
    return pallet.beside >= 0 && pallet.beside < static_cast<std::int64_t>(answer.building.walls.size());
  };
  return sound && std::ranges::all_of(site.pallets->pallets, article, &PlacedPallet::article) &&
         std::ranges::all_of(site.pallets->pallets, wall) &&
         std::ranges::all_of(site.pallets->pallets, [&](const PlacedPallet& pallet) {
           return answer.order.articles[static_cast<std::size_t>(pallet.article)].on_pallet.has_value();
         });
}

}  // namespace

Violations check_site(const Answer& answer) {
  Violations found;
  if (!is_sound(answer)) return {wrong("site", "cannot be read")};
  check_short_of(found, answer);
  check_drops(found, answer);
  check_pallets(found, answer);
  return found;
}

}  // namespace stringcourse::proof
