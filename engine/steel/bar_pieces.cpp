#include "steel/bar_pieces.hpp"

#include <algorithm>
#include <tuple>

#include "catalogue/rules.hpp"
#include "catalogue/steel.hpp"
#include "measure/sorting.hpp"
#include "steel/bar_room.hpp"

namespace stringcourse::steel {
namespace {

StatedOr stated_or(const std::optional<Length>& stated, std::string_view rule, Tape tape) {
  return {stated ? *stated : limit_of(rule, tape), stated.has_value()};
}

/// The size of the bars of one use.
std::string size_of(const Job& job, const Building& building, BarUse use) {
  const Steel& steel = job.steel;
  switch (use) {
    case BarUse::Dowel:
    case BarUse::Upright: return building.bars ? building.bars->size : std::string();
    case BarUse::Lintel: return steel.lintel_bars ? steel.lintel_bars->size : std::string();
    case BarUse::Beam:
    case BarUse::Corner: return steel.beam_bars ? steel.beam_bars->size : std::string();
  }
  return {};
}

void add_marks(BarPieces& bars, const Job& job, const Building& building) {
  for (const BarPiece& piece : bars.pieces) {
    const BarMark mark{piece.use, size_of(job, building, piece.use), piece.length()};
    if (!std::ranges::contains(bars.marks, mark)) bars.marks.push_back(mark);
  }
  sort_stably(bars.marks, {}, [](const BarMark& mark) { return std::tuple(mark.use, mark.size, -mark.length); });
  for (BarPiece& piece : bars.pieces) {
    const auto like = std::ranges::find_if(
        bars.marks, [&](const BarMark& mark) { return mark.use == piece.use && mark.length == piece.length(); });
    ++like->count;
    piece.mark = static_cast<std::int32_t>(like - bars.marks.begin());
  }
}

/// To the nearest gram.
std::int64_t grams_of(const std::string& size, Length length) {
  const Bar* bar = find_bar(size);
  constexpr std::int64_t kMetre = 1'000'000'000;
  const int128 parts = static_cast<int128>(length.in_nanometres()) * (bar == nullptr ? 0 : grams_per_metre(*bar));
  return static_cast<std::int64_t>((parts + kMetre / 2) / kMetre);
}

void add_totals(BarPieces& bars) {
  for (const Bar& bar : catalogue_bars()) {
    BarTotal total;
    total.size = bar.name;
    for (const BarMark& mark : bars.marks) {
      if (mark.size != bar.name || mark.use == BarUse::Dowel) continue;
      total.count += mark.count, total.length += mark.length * mark.count;
    }
    total.grams = grams_of(total.size, total.length);
    if (total.count > 0) bars.totals.push_back(total);
  }
}

void add_lap_tables(BarPieces& bars, const BarRoom& room, const std::vector<Length>& clear) {
  const Building& building = room.building;
  const Steel& steel = room.job.steel;
  if (const Bar* bar = building.bars && !clear.empty() ? find_bar(building.bars->size) : nullptr) {
    const auto least = std::ranges::min_element(clear);
    const PlacedBar& placed = room.layout.bars[static_cast<std::size_t>(least - clear.begin())];
    bars.laps.push_back(
        {BarUse::Upright, bar->name, placed.wall, *least, lap_choices(steel.lap, {*bar, *least}, building.tape)});
  }
  const bool beams = steel.beam_bars && std::ranges::any_of(building.courses, &Course::bond_beam);
  if (const Bar* bar = beams ? find_bar(steel.beam_bars->size) : nullptr) {
    const Length round = clear_in_trough(building, *bar, steel.beam_bars->count);
    bars.laps.push_back({BarUse::Beam, bar->name, -1, round, lap_choices(steel.lap, {*bar, round}, building.tape)});
  }
}

}  // namespace

BarPieces bar_pieces(const Job& job, const Building& building, const Layout& layout) {
  const Length step = tape_step(building.tape);
  BarPieces bars;
  bars.stock = stated_or(job.steel.bar_stock, "bar-stock", building.tape);
  bars.kerf = stated_or(job.steel.bar_kerf, "bar-kerf", building.tape);
  bars.end_cover = stated_or(job.steel.end_cover, "bar-end-cover", building.tape);
  BarRoom room{job, building, layout, step, down_to_step(bars.stock.length, step), bars.end_cover.length, std::nullopt};
  if (job.steel.lap) {
    const LapBy by = lap_by(*job.steel.lap);
    if (lap_lacks(by).empty()) room.by = by;
  }
  const std::vector<Length> clear = clear_round_bars(building, layout);
  add_uprights(bars.pieces, room, clear);
  add_level_bars(bars, room);
  sort_stably(bars.pieces, {}, [](const BarPiece& piece) { return piece.use; });
  add_marks(bars, job, building);
  add_totals(bars);
  add_lap_tables(bars, room, clear);
  find_bar_troubles(bars, room);
  return bars;
}

}  // namespace stringcourse::steel
