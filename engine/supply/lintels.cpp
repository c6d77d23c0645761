#include "supply/lintels.hpp"

#include <algorithm>
#include <iterator>

#include "bond/layout_parts.hpp"
#include "bond/lintel_units.hpp"
#include "measure/sorting.hpp"
#include "walls/resolve.hpp"

namespace stringcourse::supply {
namespace {

/// Indices of openings, by their walls.
std::vector<std::vector<std::int32_t>> openings_by_wall(const Building& building) {
  std::vector<std::vector<std::int32_t>> openings(building.walls.size());
  for (std::size_t index = 0; index < building.openings.size(); ++index) {
    openings[static_cast<std::size_t>(building.openings[index].wall)].push_back(static_cast<std::int32_t>(index));
  }
  return openings;
}

/// The opening of those given whose lintel a unit is part of, or -1.
std::int32_t opening_under(const Building& building, const std::vector<std::int32_t>& openings, const Run& run,
                           const Piece& piece) {
  const auto found = std::ranges::find_if(
      openings, [&](std::int32_t index) { return bond::in_lintel(opening_of(building, index), run, piece); });
  return found == openings.end() ? -1 : *found;
}

void add_unit(std::vector<UnitCount>& units, std::int32_t series, const Piece& piece) {
  auto at = std::ranges::find(units, piece.kind, &UnitCount::kind);
  if (at == units.end()) at = units.insert(at, {series, piece.kind, 0, 0});
  ++(bond::is_saw_cut(piece) ? at->pieces : at->whole);
}

/// One end of a lintel of units: `last` is its last piece there, `joint_at` how far off the jamb the joint before it
/// ends.
LintelEnd end_of(const Piece& last, Length bearing, Length joint_at, Length asked) {
  const Length needed = asked - bond::kBearingWithin;
  return {bearing, bearing < needed || bearing < std::min(asked, least_lintel_bearing()), joint_at >= needed,
          !takes_bars_along(last.kind)};
}

/// Soffit, ends and units of a lintel built of units.
void look_at_units(const Building& building, const Layout& layout, LintelAsLaid& lintel) {
  const ResolvedOpening& opening = opening_of(building, lintel.opening);
  const std::int32_t series = building.walls[static_cast<std::size_t>(opening.wall)].series;
  const Length from = opening.from.distance_from_start(), to = opening.to.distance_from_start(),
               asked = opening.lintel->least_bearing;
  lintel.soffit = Soffit::Floor;
  const Piece *first = nullptr, *last = nullptr;
  const ResolvedLintel& asked_for = *opening.lintel;
  for (const Run& run : bond::runs_of_courses(layout, opening.wall, asked_for.first_course,
                                              asked_for.first_course + asked_for.courses - 1)) {
    for (const Piece& piece : bond::pieces_of(layout, run)) {
      if (!bond::in_lintel(opening, run, piece)) continue;
      add_unit(lintel.units, series, piece);
      if (run.course != opening.lintel->first_course) continue;
      if (first == nullptr) first = &piece;
      last = &piece;
      const Length start = piece.start.nearest_nanometre(), end = bond::far_end(piece).nearest_nanometre();
      if (start >= to || end <= from) continue;
      if (!takes_bars_along(piece.kind)) lintel.soffit = Soffit::Nothing;
      else if (!is_closed_underneath(piece.kind) && lintel.soffit == Soffit::Floor) lintel.soffit = Soffit::Form;
    }
  }
  sort_stably(lintel.units, [](const UnitCount& a, const UnitCount& b) {  // what spans first
    const bool floor = is_closed_underneath(a.kind);
    return floor != is_closed_underneath(b.kind) ? floor : a.kind < b.kind;
  });
  if (first == nullptr) return;
  lintel.start = end_of(*first, lintel.start.bearing, from - bond::far_end(*first).nearest_nanometre(), asked);
  lintel.end = end_of(*last, lintel.end.bearing, last->start.nearest_nanometre() - to, asked);
}

/// Bars that come up under a lintel in one piece.
std::vector<BarThrough> bars_under(const Building& building, const Layout& layout, const LintelAsLaid& lintel) {
  const ResolvedOpening& opening = opening_of(building, lintel.opening);
  const auto bars = bond::bars_on_wall(building, layout, opening.wall);
  const Length from = opening.from.distance_from_start() - lintel.start.bearing,
               to = opening.to.distance_from_start() + lintel.end.bearing;
  std::vector<BarThrough> through;
  for (const bond::WallBar& bar : bond::bars_between(bars, from, to)) {
    if (bar.last_course >= opening.lintel->first_course)
      through.push_back({opening.wall, opening.lintel->first_course, lintel.opening, 0, bar.centre});
  }
  return through;
}

/// Units closed underneath over bars of one wall.
void add_floors(const Building& building, const Layout& layout, int wall, const std::vector<std::int32_t>& openings,
                std::vector<BarThrough>& floors) {
  const auto bars = bond::bars_on_wall(building, layout, wall);
  for (const Run& run : bond::runs_of_wall(layout, wall)) {
    for (const Piece& piece : bond::pieces_of(layout, run)) {
      if (!is_closed_underneath(piece.kind)) continue;
      for (const bond::WallBar& bar :
           bond::bars_between(bars, piece.start.nearest_nanometre(), bond::far_end(piece).nearest_nanometre())) {
        if (run.course < bar.first_course || run.course > bar.last_course) continue;
        floors.push_back({wall, run.course, opening_under(building, openings, run, piece), piece.number, bar.centre});
      }
    }
  }
}

std::vector<std::int32_t> openings_on(const Building& building, int wall) {
  std::vector<std::int32_t> openings;
  for (std::size_t index = 0; index < building.openings.size(); ++index) {
    if (building.openings[index].wall == wall) openings.push_back(static_cast<std::int32_t>(index));
  }
  return openings;
}

}  // namespace

std::vector<BarThrough> floors_to_break_out(const Building& building, const Layout& layout) {
  std::vector<BarThrough> floors;
  const auto openings = openings_by_wall(building);
  for (int wall = 0; wall < static_cast<int>(building.walls.size()); ++wall)
    add_floors(building, layout, wall, openings[static_cast<std::size_t>(wall)], floors);
  return floors;
}

std::vector<BarThrough> floors_to_break_out(const Building& building, const Layout& layout, int wall) {
  std::vector<BarThrough> floors;
  add_floors(building, layout, wall, openings_on(building, wall), floors);
  return floors;
}

std::vector<LintelAsLaid> lintels_as_laid(const Building& building, const Layout& layout) {
  std::vector<BarThrough> floors = floors_to_break_out(building, layout);
  sort_stably(floors, {}, &BarThrough::opening);
  std::vector<LintelAsLaid> lintels;
  for (const PlacedLintel& placed : layout.lintels) {
    const ResolvedOpening& opening = opening_of(building, placed.opening);
    if (!opening.lintel) continue;
    LintelAsLaid lintel;
    lintel.opening = placed.opening;
    lintel.start.bearing = placed.start_bearing;
    lintel.end.bearing = placed.end_bearing;
    if (opening.lintel->make == LintelMake::OnePiece) {
      lintel.bars = bars_under(building, layout, lintel);
    } else {
      look_at_units(building, layout, lintel);
      const auto mine = std::ranges::equal_range(floors, placed.opening, {}, &BarThrough::opening);
      lintel.bars.assign(mine.begin(), mine.end());
    }
    lintels.push_back(std::move(lintel));
  }
  return lintels;
}

}  // namespace stringcourse::supply
