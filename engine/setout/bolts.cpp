#include "setout/bolts.hpp"

#include <algorithm>

#include "bond/layout_parts.hpp"
#include "measure/notation.hpp"
#include "measure/sorting.hpp"

namespace stringcourse::setout {
namespace {

/// Marks of the tape at or behind, and at or before, a place.
Length mark_from(Length place, Length step) { return -(step * (-place).whole_multiples(step)); }
Length mark_to(Length place, Length step) { return step * place.whole_multiples(step); }

/// Places that a bolt must not take, both ends free again.
struct Taken {
  Length from, to;
};

/// What of a room is left outside a taken place.
std::vector<BoltRoom> without(const std::vector<BoltRoom>& rooms, const Taken& taken, Length step) {
  std::vector<BoltRoom> left;
  for (const BoltRoom& room : rooms) {
    if (room.to <= taken.from || taken.to <= room.from) {
      left.push_back(room);
      continue;
    }
    BoltRoom before = room, after = room;
    before.to = std::min(room.to, mark_to(taken.from, step)),
    after.from = std::max(room.from, mark_from(taken.to, step));
    if (before.from <= before.to) left.push_back(before);
    if (after.from <= after.to) left.push_back(after);
  }
  return left;
}

/// Upright bars that reach the top of the wall.
std::vector<Length> bars_to_top(const Building& building, const Layout& layout, int wall) {
  std::vector<Length> bars;
  for (const bond::WallBar& bar : bond::bars_on_wall(building, layout, wall)) {
    if (bar.last_course == static_cast<int>(building.courses.size())) bars.push_back(bar.centre);
  }
  return bars;
}

void keep_clear_of(std::vector<BoltRoom>& rooms, Length centre, Length clear, Length step) {
  if (clear > Length()) rooms = without(rooms, {centre - clear, centre + clear}, step);
}

/// Trusses stand from the first one to the end of the wall that lies that way.
void keep_clear_of(std::vector<BoltRoom>& rooms, const ResolvedTrusses& trusses, Length reach, Length step) {
  for (Length at = trusses.first.distance_from_start(); Length() <= at && at <= reach; at += trusses.step)
    keep_clear_of(rooms, at, trusses.clear, step);
}

/// Whether the plate goes on over what parts two runs: a slot that another wall fills, a lintel in one piece.
bool goes_on(RunEnd end) { return end == RunEnd::SlotSide || end == RunEnd::LintelEnd; }

struct Span {
  Length from, to;
};

/// The plates of one wall, each in one piece.
std::vector<Span> plates_on(const Building& building, const Layout& layout, int wall) {
  std::vector<Span> plates;
  bool on = false;
  for (const Run& run : bond::runs_in(layout, wall, static_cast<int>(building.courses.size()))) {
    if (on && goes_on(run.at_start)) plates.back().to = run.end;
    else plates.push_back({run.start, run.end});
    on = goes_on(run.at_end);
  }
  return plates;
}

/// Pieces of a plate from its start on; the last is what is left.
std::vector<Span> pieces_of(const Span& plate, Length piece) {
  if (piece == Length()) return {plate};
  std::vector<Span> pieces;
  for (Length from = plate.from; from < plate.to; from += piece)
    pieces.push_back({from, std::min(from + piece, plate.to)});
  return pieces;
}

/// Rooms shrunk to the middles of cells, where these lie in them.
std::vector<BoltRoom> middles_of(const std::vector<BoltRoom>& rooms, Length step) {
  std::vector<BoltRoom> middles;
  for (BoltRoom room : rooms) {
    room.from = room.to = rounded_to(room.middle, step);
    const bool inside =
        std::ranges::any_of(rooms, [&](const BoltRoom& one) { return one.from <= room.from && room.to <= one.to; });
    if (inside && (middles.empty() || middles.back().from < room.from)) middles.push_back(room);
  }
  return middles;
}

/// The last place at or before `limit` and behind `after`, in its room.
std::optional<Bolt> last_before(const std::vector<BoltRoom>& rooms, Length after, Length limit, Length step) {
  std::optional<Bolt> last;
  for (const BoltRoom& room : rooms) {
    const Length at = std::min(room.to, mark_to(limit, step));
    if (room.from <= at && at > after) last = Bolt{at, room.unit, room.cell};
  }
  return last;
}

/// The first place behind `after`.
std::optional<Bolt> first_after(const std::vector<BoltRoom>& rooms, Length after, Length step) {
  for (const BoltRoom& room : rooms) {
    const Length at = std::max(room.from, mark_to(after, step) + step);
    if (at <= room.to) return Bolt{at, room.unit, room.cell};
  }
  return std::nullopt;
}

std::vector<BoltRoom> rooms_between(const std::vector<BoltRoom>& rooms, Length from, Length to, Length step) {
  std::vector<BoltRoom> inside;
  for (BoltRoom room : rooms) {
    room.from = std::max(room.from, mark_from(from, step)), room.to = std::min(room.to, mark_to(to, step));
    if (room.from <= room.to) inside.push_back(room);
  }
  return inside;
}

/// One bolt that does for both ends gets a second: the farthest place from it within the spacing.
void add_second(PlatePiece& piece, const std::vector<BoltRoom>& rooms, Length spacing, Length step) {
  if (piece.bolts.size() != 1) return;
  const Length only = piece.bolts.front().at;
  const std::optional<Bolt> after = last_before(rooms, only, only + spacing, step),
                            before = first_after(rooms, only - spacing - step, step);
  if (after && (!before || after->at - only >= only - before->at)) piece.bolts.push_back(*after);
  else if (before && before->at < only) piece.bolts.insert(piece.bolts.begin(), *before);
  else piece.without.push_back({only, piece.to, std::nullopt});
}

/// From the piece's start: each bolt as far on as it may be.
PlatePiece greedy(const BoltsAsked& asked, const std::vector<BoltRoom>& all, Length step) {
  PlatePiece piece{0, asked.from, asked.to};
  const auto rooms = rooms_between(all, asked.from + asked.end_least, asked.to - asked.end_least, step);
  Length after = asked.from - step, by = asked.from + asked.end_most;
  while (piece.bolts.empty() || piece.bolts.back().at < asked.to - asked.end_most) {
    const bool at_end = by >= asked.to;
    std::optional<Bolt> next = last_before(rooms, after, by, step);
    if (!next) {
      const Length from = piece.bolts.empty() ? asked.from : piece.bolts.back().at;
      next = at_end ? std::nullopt : first_after(rooms, by, step);
      piece.without.push_back({from, std::min(by, asked.to), next ? std::optional(next->at) : std::nullopt});
      if (!next) break;
    }
    piece.bolts.push_back(*next);
    after = next->at, by = next->at + asked.spacing;
  }
  add_second(piece, rooms, asked.spacing, step);
  return piece;
}

}  // namespace

PlatePiece bolts_in(const BoltsAsked& asked, const std::vector<BoltRoom>& rooms, Length step) {
  PlatePiece fewest = greedy(asked, rooms, step);
  PlatePiece middles = greedy(asked, middles_of(rooms, step), step);
  return middles.without.empty() && middles.bolts.size() == fewest.bolts.size() ? middles : fewest;
}

std::vector<BoltRoom> bolt_rooms(const Building& building, const Layout& layout, int wall) {
  const ResolvedTop& top = *building.top;
  const Length step = tape_step(building.tape), round = top.bolts.grout_round;
  const int course = static_cast<int>(building.courses.size());
  const bool beam = building.courses.back().bond_beam;
  const std::vector<Length> bars = bars_to_top(building, layout, wall);
  std::vector<BoltRoom> rooms;
  for (const SeenCell& cell : cells_seen(building, layout, wall, course)) {
    const bool has_bar =
        std::ranges::any_of(bars, [&](Length bar) { return cell.clear.from <= bar && bar <= cell.clear.to; });
    if (cell.wall != wall || (!beam && !has_bar)) continue;
    const BoltRoom room{mark_from(cell.clear.from + round, step), mark_to(cell.clear.to - round, step), cell.unit,
                        cell.cell, cell.clear.from + (cell.clear.to - cell.clear.from).half_down()};
    if (room.from <= room.to) rooms.push_back(room);
  }
  sort_stably(rooms, {}, &BoltRoom::from);
  for (const Length bar : bars) keep_clear_of(rooms, bar, top.bolts.clear_of_bars, step);
  for (const ResolvedTrusses& trusses : top.trusses) {
    if (trusses.wall == wall) keep_clear_of(rooms, trusses, wall_of(building, wall).actual, step);
  }
  return rooms;
}

std::vector<PlatePiece> plates_of(const Building& building, const Layout& layout) {
  std::vector<PlatePiece> plates;
  if (!building.top) return plates;
  const BoltRules& bolts = building.top->bolts;
  for (const int wall : building.top->plate_on) {
    const std::vector<BoltRoom> rooms = bolt_rooms(building, layout, wall);
    for (const Span& plate : plates_on(building, layout, wall)) {
      for (const Span& piece : pieces_of(plate, building.top->plate_piece)) {
        plates.push_back(bolts_in({piece.from, piece.to, bolts.spacing, bolts.end_least, bolts.end_most}, rooms,
                                  tape_step(building.tape)));
        plates.back().wall = wall;
      }
    }
  }
  return plates;
}

}  // namespace stringcourse::setout
