#include "steel/slab.hpp"

#include <algorithm>
#include <cmath>

#include "ground/as_found.hpp"
#include "measure/metres.hpp"

namespace stringcourse::steel {
namespace {

constexpr Length kFarOut = Length::inches(1);

/// Unit steps in plan: along a wall, and out of the building.
struct Ways {
  ground::Spot along, outward;
};

Ways ways_of(Heading heading) {
  switch (heading) {
    case Heading::West: return {{-1, 0}, {0, -1}};
    case Heading::North: return {{0, 1}, {-1, 0}};
    case Heading::East: return {{1, 0}, {0, 1}};
    case Heading::South: return {{0, -1}, {1, 0}};
  }
  return {};
}

ground::Spot reversed(const ground::Spot& way) { return {-way.x, -way.y}; }

void add(SlabRoom& room, ground::Spot at, ground::Spot direction, Length left, RoomOf of) {
  room.clearances.push_back({at, direction, left});
  room.of.push_back(of);
}

ground::Spot spot(const Wall& wall, Length along, Length depth) {
  const PlanPoint point = plan_point(wall, along, depth);
  return {metres(point.x), metres(point.y)};
}

void add_dowel(SlabRoom& room, const Building& building, const Layout& layout, const DowelRules& rules,
               const ground::WallPlace& place, Length off_face, std::size_t entry) {
  const auto lawful = nearest_lawful(building, layout, rules, place.wall, place.along);
  if (!lawful) return;
  // One that is far out is bent or replaced whatever the building does: it must not drag it along.
  const Length worst = std::min(
      {place.along - lawful->from, lawful->to - place.along, off_face - lawful->shallow, lawful->deep - off_face});
  if (worst < -kFarOut) return;
  const Wall& wall = building.walls[static_cast<std::size_t>(place.wall)];
  const Ways ways = ways_of(wall.heading);
  const ground::Spot at = spot(wall, place.along, off_face);
  const RoomOf of{entry, false};
  add(room, at, ways.along, place.along - lawful->from, of),
      add(room, at, reversed(ways.along), lawful->to - place.along, of);
  add(room, at, reversed(ways.outward), off_face - lawful->shallow, of),
      add(room, at, ways.outward, lawful->deep - off_face, of);
  ++room.dowels;
}

/// How far apart the places lie from which a way is faced, across it.
double spread_across(const SlabRoom& room, ground::Spot way) {
  double least = 0, most = 0;
  bool any = false;
  for (const ground::Clearance& one : room.clearances) {
    if (one.direction.x != way.x || one.direction.y != way.y) continue;
    const double across = one.at.x * way.y - one.at.y * way.x;
    least = any ? std::min(least, across) : across, most = any ? std::max(most, across) : across, any = true;
  }
  return any ? most - least : -1;
}

/// What is still to be read: the edge along each outside wall that faces a way which nothing holds, a dowel where no
/// wall faces it, a second edge where the turn is not known.
std::vector<Fact> readings_lacking(const Building& building, const SlabRoom& room) {
  std::vector<Fact> lacks;
  bool turn_held = false;
  const Wall* longest = nullptr;
  for (const Heading heading : {Heading::West, Heading::North, Heading::East, Heading::South}) {
    const double spread = spread_across(room, ways_of(heading).outward);
    bool faced = false;
    for (const Wall& wall : building.walls) {
      if (wall.interior) continue;
      if (longest == nullptr || wall.actual > longest->actual) longest = &wall;
      if (wall.heading != heading) continue;
      faced = true, turn_held = turn_held || 2 * spread >= metres(wall.actual);
      if (spread < 0) lacks.push_back(fact("edge-along", {wall.name}));
    }
    if (spread < 0 && !faced) lacks.push_back(fact("dowel-of-open-side"));
  }
  if (lacks.empty() && !turn_held && longest != nullptr) lacks.push_back(fact("edge-along-both-ends", {longest->name}));
  return lacks;
}

}  // namespace

SlabRoom slab_room(const Job& job, const Building& building, const Layout& layout, const std::vector<bool>& counts) {
  SlabRoom room;
  const DowelRules rules = dowel_rules(job, building);
  bool edges = false;
  for (std::size_t k = 0; k < job.readings.size(); ++k) {
    const Reading& reading = job.readings[k];
    if (!counts[k] || (!reading.edge && !reading.dowel)) continue;
    const auto place = reading.edge
                           ? ground::wall_place(building, reading.edge->on, reading.edge->from, reading.edge->at)
                           : ground::wall_place(building, reading.dowel->on, reading.dowel->from, reading.dowel->at);
    if (!place) continue;
    const Wall& wall = building.walls[static_cast<std::size_t>(place->wall)];
    if (reading.edge)
      add(room, spot(wall, place->along, Length()), ways_of(wall.heading).outward, reading.edge->beyond, {k, true});
    else if (building.bars) add_dowel(room, building, layout, rules, *place, reading.dowel->off_face, k);
    if (reading.edge) room.face_lines.push_back({place->wall, place->along, reading.edge->beyond});
    edges = edges || reading.edge.has_value();
  }
  if (edges) room.lacks = readings_lacking(building, room);
  if (edges && room.lacks.empty())
    room.fit = ground::best_fit(room.clearances,
                                building.tape == Tape::Inches ? Length::inches(12) : Length::millimetres(300));
  std::size_t line = 0;
  if (!room.fit) room.face_lines.clear();
  for (std::size_t k = 0; room.fit && k < room.of.size(); ++k) {
    if (!room.of[k].edge) continue;
    room.face_lines[line++].from_edge = Length::nanometres(
        static_cast<std::int64_t>(std::floor(ground::room_after(room.clearances[k], *room.fit) * 1e9 + 0.5)));
  }
  return room;
}

}  // namespace stringcourse::steel
