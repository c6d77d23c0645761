// A new opening where a side has room for it: a bare hole of a common size, or a leaf of a usual one; and a new inner
// wall.
#include <algorithm>
#include <array>
#include <string>
#include <utility>
#include <vector>

#include "edits/edit.hpp"
#include "edits/typed_opening.hpp"
#include "measure/digits.hpp"
#include "walls/building.hpp"
#include "walls/resolve.hpp"

namespace stringcourse {
namespace {

struct Hole {
  Length width, height;
};
// Common sizes to start from, by NewPart. For leaves the hole that they come to, where it is looked for room.
constexpr std::array<Hole, 5> kInches{{{Length::inches(40), Length::inches(88)},
                                       {Length::inches(48), Length::inches(40)},
                                       {Length::inches(112), Length::inches(88)},
                                       {Length::inches(40), Length::inches(88)},
                                       {Length::inches(112), Length::inches(88)}}};
constexpr std::array<Hole, 5> kMillimetres{{{Length::millimetres(1000), Length::millimetres(2200)},
                                            {Length::millimetres(1200), Length::millimetres(1000)},
                                            {Length::millimetres(2800), Length::millimetres(2200)},
                                            {Length::millimetres(1000), Length::millimetres(2200)},
                                            {Length::millimetres(2800), Length::millimetres(2200)}}};

/// A leaf 3-0 x 6-8 in a frame of 2 in and an overhead leaf of 9 x 7 ft between bucks of 1 1/2 in; 900 x 2100 mm in a
/// frame of 40 mm and 2700 x 2100 mm between bucks of 40 mm. Common practice: the yard's own sizes are typed over them.
DoorSize man_door(Tape tape) {
  const auto mm = [](std::int64_t count) { return Length::millimetres(count); };
  if (tape == Tape::Inches)
    return {Length::inches(36), Length::inches(80), Length::inches(2), Length::inches(2), {}, {}};
  return {mm(900), mm(2100), mm(40), mm(40), {}, {}};
}
OverheadSize single_overhead(Tape tape) {
  const auto mm = [](std::int64_t count) { return Length::millimetres(count); };
  if (tape == Tape::Inches)
    return {Length::inches(108), Length::inches(84), Length::sixteenths(24), Length::sixteenths(24), {}, {}};
  return {mm(2700), mm(2100), mm(40), mm(40), {}, {}};
}

void put_size(Opening& opening, NewPart what, const Hole& hole, Tape tape) {
  if (what == NewPart::ManDoor) opening.door = man_door(tape);
  else if (what == NewPart::SingleOverhead) opening.overhead = single_overhead(tape);
  else opening.masonry = MasonrySize{{hole.width}, {hole.height}};
}
constexpr int kSillCourse = 5;
constexpr int kPitchesToFirst = 6;  // a few feet off the corner

/// A wall with what stands in it, and what is kept of it beside an opening.
struct Room {
  Length long_;
  Length pier;
  std::vector<std::pair<Length, Length>> taken;

  [[nodiscard]] bool is_open(Length at, Length width) const {
    const Length from = at - pier, to = at + width + pier;
    return to <= long_ &&
           std::ranges::all_of(taken, [&](const auto& one) { return to <= one.first || from >= one.second; });
  }
};

Room room_of(const Building& building, int index) {
  const Wall& wall = building.walls[static_cast<std::size_t>(index)];
  const Series& series = building.series_of(wall);
  Room room{wall.actual, series.full_pitch(), {}};
  for (const ResolvedOpening& one : building.openings) {
    if (one.wall == index) room.taken.emplace_back(one.from.distance_from_start(), one.to.distance_from_start());
  }
  return room;
}

/// From a few feet off the start corner on, then nearer to it. The first place of all where none has room: the building
/// then says why not.
Length place_with_room(const Room& room, Length pitch, Length width) {
  const Length first = pitch * kPitchesToFirst;
  for (Length at = first; at < room.long_; at += pitch) {
    if (room.is_open(at, width)) return at;
  }
  for (Length at = room.pier; at < first; at += pitch) {
    if (room.is_open(at, width)) return at;
  }
  return first;
}

/// "inner 1", or the first number that no wall has.
std::string free_wall_name(const Job& job) {
  for (int number = 1;; ++number) {
    std::string name = "inner " + number_text(number);
    if (std::ranges::none_of(job.interior_walls, [&](const InteriorWall& wall) { return wall.name == name; }))
      return name;
  }
}

/// As near to the middle of the wall, on the grid of half units, as the building allows: openings at either end of it
/// are gone round. The middle itself where it allows none.
Job with_inner_wall(const Job& job, const Building& building, const Wall& off) {
  const Length pitch = building.series_of(off).pitch();
  const std::int64_t middle = off.actual.half_down().whole_multiples(pitch);
  Job changed = job;
  InteriorWall& wall = changed.interior_walls.emplace_back();
  wall.name = free_wall_name(job), wall.off = off.name;
  const auto stands = [&](std::int64_t pitches) {
    wall.place = {off.start_name, {pitch * pitches}, {}};
    return resolve(changed).has_value();
  };
  for (std::int64_t away = 0; away < middle; ++away) {
    if (stands(middle - away) || stands(middle + away)) return changed;
  }
  wall.place = {off.start_name, {pitch * middle}, {}};
  return changed;
}

}  // namespace

std::expected<Job, Fact> with_new_part(const Job& job, const Building& building, const PutIn& put) {
  const auto wall = std::ranges::find(building.walls, put.place, &Wall::place);
  if (wall == building.walls.end()) return std::unexpected(fact("edit-no-side"));
  if (put.what == NewPart::InnerWall) return with_inner_wall(job, building, *wall);
  const Hole hole = (building.tape == Tape::Inches ? kInches : kMillimetres)[static_cast<std::size_t>(put.what)];
  const Room room = room_of(building, static_cast<int>(wall - building.walls.begin()));
  Opening opening;
  opening.name = free_opening_name(job, put.what == NewPart::Window ? "W" : "D");
  opening.on = wall->name;
  opening.place = {wall->start_name, {place_with_room(room, building.series_of(*wall).pitch(), hole.width)}, {}};
  put_size(opening, put.what, hole, building.tape);
  if (put.what == NewPart::Window) opening.sill_course = kSillCourse;
  Job changed = job;
  changed.openings.push_back(std::move(opening));
  return changed;
}

}  // namespace stringcourse
