// Dowels and upright bars, from lap to lap.
#include <algorithm>
#include <map>

#include "bond/layout_parts.hpp"
#include "steel/bar_room.hpp"

namespace stringcourse::steel {

namespace {

Length half_up(Length length) { return length - length.half_down(); }

/// From a bar's middle to the nearer end of the masonry that it stands in, in one course; `most` where that is further.
Length to_end(const Layout& layout, const PlacedBar& bar, int course, Length most) {
  for (const Run& run : bond::runs_in(layout, bar.wall, course)) {
    if (bar.centre < run.start || bar.centre > run.end) continue;
    if (shows_face(run.at_start)) most = std::min(most, bar.centre - run.start);
    if (shows_face(run.at_end)) most = std::min(most, run.end - bar.centre);
  }
  return most;
}

/// Clear distance to the nearest bar of its wall, each taken as two side by side along it.
Length to_neighbour(const std::vector<bond::WallBar>& bars, const PlacedBar& bar, Length diameter, Length most) {
  for (const bond::WallBar& other : bars) {
    if (other.first_course > bar.last_course || other.last_course < bar.first_course) continue;
    if (other.centre == bar.centre) continue;
    most = std::min(most, std::max(magnitude(other.centre - bar.centre) - diameter * 2, Length::nanometres(1)));
  }
  return most;
}

/// From whole course to whole course, as one bar goes up.
struct Climb {
  const BarRoom& room;
  const PlacedBar& bar;
  std::int32_t index;
  Length lap, start, stop;  // heights: where the next piece begins, and where the last one ends
  int first_course;         // that it begins in
  Length free;              // no lap begins lower: the one below it ends there

  /// The highest course at whose top a piece that begins here may be lapped; 0: none.
  [[nodiscard]] int splice_course(int most) const {
    for (int course = most; course >= first_course; --course) {
      const Length top = top_of_course(room.building, course);
      if (top <= start || top < free) return 0;
      if (end_lapped_at(course) - start <= room.stock && end_lapped_at(course) < stop) return course;
    }
    return 0;
  }
  [[nodiscard]] Length end_lapped_at(int course) const {
    return start + up_to_step(top_of_course(room.building, course) + lap - start, room.step);
  }
  [[nodiscard]] BarPiece piece(Length to, Length shared) const {
    BarPiece made;
    made.use = BarUse::Upright;
    made.wall = bar.wall, made.bar = index;
    made.from = start, made.to = to, made.lap = shared;
    made.first_course = first_course, made.last_course = first_course;
    while (made.last_course < bar.last_course && top_of_course(room.building, made.last_course) < to)
      ++made.last_course;
    return made;
  }
  void splice(std::vector<BarPiece>& pieces, int course) {
    const Length end = end_lapped_at(course);
    start = std::min(start, end);
    pieces.push_back(piece(end, end - top_of_course(room.building, course)));
    start = top_of_course(room.building, course);
    first_course = course + 1, free = end;
  }
  /// Splices below a course until what is left up to `end` is no longer than the stock.
  void climb(std::vector<BarPiece>& pieces, Length end, int below) {
    while (end - start > room.stock) {
      const int course = splice_course(below);
      if (course == 0) return;
      splice(pieces, course);
    }
  }
};

void add_upright(std::vector<BarPiece>& pieces, const BarRoom& room, std::int32_t index, Length lap) {
  const PlacedBar& bar = room.layout.bars[static_cast<std::size_t>(index)];
  const Building& building = room.building;
  const Course& lowest = building.courses[static_cast<std::size_t>(bar.first_course - 1)];
  const Length start = bar.first_course == 1 ? foot_of_course(building, 1) : lowest.underside() + room.cover;
  const Length stop = top_of_course(building, bar.last_course) - room.cover;
  if (stop <= start) return;
  const Length dowel = std::max(lap, room.job.steel.dowel_lap.value_or(Length()));
  const Length free = bar.first_course == 1 ? start + dowel : start;
  Climb climb{room, bar, index, lap, start, stop, bar.first_course, free};
  for (const int top : building.pour_tops) {
    if (top < bar.first_course || top >= bar.last_course) continue;
    if (climb.end_lapped_at(top) >= stop) break;
    if (top_of_course(building, top) < climb.free) continue;  // the lap below is no higher: the bar runs through
    climb.climb(pieces, climb.end_lapped_at(top), top - 1);
    if (top_of_course(building, top) >= climb.free) climb.splice(pieces, top);
  }
  climb.climb(pieces, stop, bar.last_course - 1);
  pieces.push_back(climb.piece(climb.start + down_to_step(stop - climb.start, room.step), Length()));
}

void add_dowel(std::vector<BarPiece>& pieces, const BarRoom& room, std::int32_t index, Length lap) {
  const PlacedBar& bar = room.layout.bars[static_cast<std::size_t>(index)];
  if (bar.first_course != 1) return;
  BarPiece made;
  made.use = BarUse::Dowel;
  made.wall = bar.wall, made.bar = index;
  made.from = foot_of_course(room.building, 1), made.to = made.from + lap, made.lap = lap;
  while (made.last_course < bar.last_course && top_of_course(room.building, made.last_course) < made.to)
    ++made.last_course;
  pieces.push_back(made);
}

}  // namespace

std::vector<Length> clear_round_bars(const Building& building, const Layout& layout) {
  std::vector<Length> clear;
  if (!building.bars) return clear;
  const Length diameter = building.bars->diameter;
  std::vector<std::vector<bond::WallBar>> beside;
  for (int wall = 0; wall < static_cast<int>(building.walls.size()); ++wall)
    beside.push_back(bond::bars_on_wall(building, layout, wall));
  for (const PlacedBar& bar : layout.bars) {
    const Series& series = building.series_of(wall_of(building, bar.wall));
    Length middle = std::min(bar.off_face, series.thickness - bar.off_face);
    for (int course = bar.first_course; course <= bar.last_course; ++course)
      middle = to_end(layout, bar, course, middle);
    const Length cover = std::max(middle - half_up(diameter), Length::nanometres(1));
    clear.push_back(to_neighbour(beside[static_cast<std::size_t>(bar.wall)], bar, diameter, cover));
  }
  return clear;
}

void add_uprights(std::vector<BarPiece>& pieces, const BarRoom& room, const std::vector<Length>& clear) {
  if (!room.building.bars) return;
  const Bar* bar = find_bar(room.building.bars->size);
  if (bar == nullptr) return;
  const std::optional<Length>& stated = room.job.steel.dowel_lap;
  std::map<Length, std::optional<Length>> known;  // most bars have as much round them as another one
  std::vector<std::optional<Length>> laps;
  for (const Length round : clear) {
    const auto [lap, is_new] = known.try_emplace(round);
    if (is_new && room.by) lap->second = lap_length(*room.by, {*bar, round}, room.building.tape);
    laps.push_back(lap->second);
  }
  for (std::size_t k = 0; k < laps.size(); ++k) {
    if (stated || laps[k]) add_dowel(pieces, room, static_cast<std::int32_t>(k), stated ? *stated : *laps[k]);
  }
  for (std::size_t k = 0; k < laps.size(); ++k) {
    if (laps[k]) add_upright(pieces, room, static_cast<std::int32_t>(k), *laps[k]);
  }
}

}  // namespace stringcourse::steel
