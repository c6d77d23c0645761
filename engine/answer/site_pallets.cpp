// Where pallets stand, so that blocks are carried as little as may be.
#include <algorithm>
#include <tuple>

#include "answer/site_parts.hpp"
#include "bond/layout_parts.hpp"
#include "catalogue/rules.hpp"
#include "measure/root.hpp"
#include "supply/assignment.hpp"

namespace stringcourse::siting {
namespace {

/// A pallet is at most 4 ft (1200 mm) square: its middle stands half of that beyond the zone, the next one 6 ft
/// (1800 mm) on, so that a barrow passes. SOURCE: common practice.
struct Spacing {
  Length half, step;
};
Spacing spacing_for(Tape tape) {
  if (tape == Tape::Inches) return {Length::feet(2), Length::feet(6)};
  return {Length::millimetres(600), Length::millimetres(1'800)};
}

struct Place {
  std::int32_t beside = 0;
  Length along, out;
  PlanPoint middle;
};

/// A wall's masonry in plan.
struct Box {
  Length west, south, east, north;
};
Box box_of(const Building& building, const Wall& wall) {
  const PlanPoint a = wall.start_point;
  const PlanPoint b = plan_point(wall, wall.actual, building.series_of(wall).thickness);
  return {std::min(a.x, b.x), std::min(a.y, b.y), std::max(a.x, b.x), std::max(a.y, b.y)};
}

/// Whether all of a square of that half width is at least `zone` from the box.
bool is_clear(const PlanPoint& middle, Length half, const Box& box, Length zone) {
  const auto apart = [](Length from, Length to, Length low, Length high) {
    return std::max({Length(), low - to, from - high}).in_nanometres();
  };
  const std::int64_t x = apart(middle.x - half, middle.x + half, box.west, box.east);
  const std::int64_t y = apart(middle.y - half, middle.y + half, box.south, box.north);
  const std::int64_t far = zone.in_nanometres();
  return static_cast<int128>(x) * x + static_cast<int128>(y) * y >= static_cast<int128>(far) * far;
}

/// One row of places along every outer wall, so far out.
void add_row(std::vector<Place>& places, const Building& building, const Spacing& spacing, Length zone, Length out) {
  for (std::size_t index = 0; index < building.walls.size(); ++index) {
    const Wall& wall = building.walls[index];
    if (wall.interior) continue;
    for (Length along = spacing.half; along <= wall.actual; along += spacing.step) {
      const Place place{static_cast<std::int32_t>(index), along, out, plan_point(wall, along, -out)};
      const bool clear = std::ranges::all_of(building.walls, [&](const Wall& other) {
        return is_clear(place.middle, spacing.half, box_of(building, other), zone);
      });
      const bool apart = std::ranges::all_of(places, [&](const Place& other) {
        const Length x = other.middle.x - place.middle.x, y = other.middle.y - place.middle.y;
        return std::max(x, -x) >= spacing.half * 2 || std::max(y, -y) >= spacing.half * 2;
      });
      if (clear && apart) places.push_back(place);
    }
  }
}

/// At least so many places: rows farther and farther out.
std::vector<Place> places_for(const Building& building, std::size_t count, Length zone) {
  const Spacing spacing = spacing_for(building.tape);
  std::vector<Place> places;
  constexpr int kMostRows = 20;
  for (int row = 0; row < kMostRows && places.size() < count; ++row)
    add_row(places, building, spacing, zone, zone + spacing.half + spacing.step * row);
  return places;
}

/// A block's middle: along its wall, and in plan.
struct Block {
  std::int32_t wall = 0;
  Length along;
  PlanPoint middle;
};

/// The blocks of an article, one wall after the other, each from its start: neighbours come off the same pallet.
std::vector<Block> blocks_of(const Answer& answer, const UnitsOf& units) {
  std::vector<Block> blocks;
  for (const Run& run : answer.layout.runs) {
    const Wall& wall = answer.building.walls[static_cast<std::size_t>(run.wall)];
    for (std::uint32_t k = run.first_piece; k < run.first_piece + run.piece_count; ++k) {
      const Piece& piece = answer.layout.pieces[k];
      if (!units.has(wall, piece)) continue;
      const Length along = piece.start.nearest_nanometre() + piece.length.half_down();
      const Length depth = answer.building.series_of(wall).thickness.half_down();
      blocks.push_back({run.wall, along, plan_point(wall, along, depth)});
    }
  }
  std::ranges::stable_sort(blocks, {}, [](const Block& block) { return std::tuple(block.wall, block.along); });
  return blocks;
}

/// Millimetres, down.
std::int64_t apart(const PlanPoint& a, const PlanPoint& b) {
  constexpr std::int64_t kMillimetre = 1'000'000;
  const std::int64_t x = (a.x - b.x).in_nanometres() / kMillimetre, y = (a.y - b.y).in_nanometres() / kMillimetre;
  return root_down(x * x + y * y);
}

struct Wanted {
  PlacedPallet pallet;
  std::vector<PlanPoint> blocks;
};

/// The pallets of an article; cut blocks off one unit come off one pallet, so that the last may be all spare.
void add_pallets(std::vector<Wanted>& wanted, const Answer& answer, std::int64_t article) {
  const Article& of = answer.order.articles[static_cast<std::size_t>(article)];
  const auto units = units_of(answer, of);
  const std::vector<Block> blocks = units ? blocks_of(answer, *units) : std::vector<Block>();
  const std::int64_t pallets = of.most / *of.on_pallet;
  const auto count = static_cast<std::int64_t>(blocks.size());
  for (std::int64_t k = 0; k < pallets; ++k) {
    const std::int64_t first = k * count / pallets, last = (k + 1) * count / pallets;
    Wanted one;
    one.pallet.article = article, one.pallet.units = *of.on_pallet;
    for (std::int64_t block = first; block < last; ++block)
      one.blocks.push_back(blocks[static_cast<std::size_t>(block)].middle);
    if (first < last) {
      const Block &from = blocks[static_cast<std::size_t>(first)], &to = blocks[static_cast<std::size_t>(last - 1)];
      one.pallet.from_wall = from.wall, one.pallet.from = from.along;
      one.pallet.to_wall = to.wall, one.pallet.to = to.along;
    }
    wanted.push_back(std::move(one));
  }
}

supply::CostTable costs_of(const std::vector<Wanted>& wanted, const std::vector<Place>& places) {
  supply::CostTable costs(wanted.size(), std::vector<std::int64_t>(places.size()));
  for (std::size_t pallet = 0; pallet < wanted.size(); ++pallet) {
    for (std::size_t place = 0; place < places.size(); ++place) {
      for (const PlanPoint& block : wanted[pallet].blocks) costs[pallet][place] += apart(block, places[place].middle);
    }
  }
  return costs;
}

}  // namespace

std::optional<PalletPlan> pallets_of(const Answer& answer) {
  constexpr std::size_t kMostPallets = 120;  // work grows with their cube
  std::vector<Wanted> wanted;
  for (std::size_t k = 0; k < answer.order.articles.size(); ++k) {
    if (answer.order.articles[k].on_pallet) add_pallets(wanted, answer, static_cast<std::int64_t>(k));
  }
  if (wanted.empty() || wanted.size() > kMostPallets) return std::nullopt;
  const int courses = static_cast<int>(answer.building.courses.size());
  PalletPlan plan;
  plan.zone = planning::over_foot(answer.building, courses) + limit_of("limited-access-zone", answer.building.tape);
  const std::vector<Place> places = places_for(answer.building, wanted.size(), plan.zone);
  const supply::CostTable costs = costs_of(wanted, places);
  const auto found = supply::cheapest_assignment(costs);
  if (!found) return std::nullopt;
  plan.carried = found->cost;
  plan.pallet_prices = found->row_prices, plan.place_prices = found->column_prices;
  for (const Place& place : places) plan.places.push_back(place.middle);
  for (std::size_t k = 0; k < wanted.size(); ++k) {
    const Place& place = places[static_cast<std::size_t>(found->column_of[k])];
    PlacedPallet pallet = wanted[k].pallet;
    pallet.beside = place.beside, pallet.along = place.along, pallet.out = place.out, pallet.middle = place.middle;
    pallet.carried = costs[k][static_cast<std::size_t>(found->column_of[k])];
    plan.pallets.push_back(pallet);
  }
  return plan;
}

}  // namespace stringcourse::siting

namespace stringcourse {

Fact carried_said(const PalletPlan& plan, Tape tape) {
  if (tape == Tape::Inches) return fact("carried-feet", {(plan.carried * 10 + 3'047) / 3'048});  // 304.8 mm each
  return fact("carried-metres", {(plan.carried + 999) / 1'000});
}

}  // namespace stringcourse
