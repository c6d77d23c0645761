// The outline: names, turns, the hand of the building; nominal sides become actual ones; corners and plan points.
#include <algorithm>
#include <map>

#include "walls/draft.hpp"
#include "walls/outline_gap.hpp"
#include "walls/plan.hpp"

namespace stringcourse::walls {
namespace {

constexpr std::string_view kSides = "/outline/sides";

/// One side in walking order, with the building on the right.
struct Walk {
  std::size_t source = 0;  // index in the job
  std::string name, from, to;
  StatedLength length;
  std::optional<Turn> turn;  // at its far corner
};

std::vector<Walk> walk_as_stated(const Outline& outline) {
  std::vector<Walk> walk;
  for (std::size_t i = 0; i < outline.sides.size(); ++i) {
    const Side& side = outline.sides[i];
    walk.push_back(
        {i, side.name.empty() ? side.from + side.to : side.name, side.from, side.to, side.length, side.turn});
  }
  return walk;
}

std::optional<Turn> flipped(std::optional<Turn> turn) {
  if (!turn) return turn;
  return *turn == Turn::Right ? Turn::Left : Turn::Right;
}

/// The same outline walked the other way: the building changes hands, every turn flips, names stay.
std::vector<Walk> walked_back(const std::vector<Walk>& walk) {
  std::vector<Walk> back(walk.rbegin(), walk.rend());
  const std::size_t count = walk.size();
  for (std::size_t i = 0; i < count; ++i) {
    std::swap(back[i].from, back[i].to);
    // The far corner of reversed side i is the near corner of its original: the far corner of the side before it.
    back[i].turn = flipped(walk[(2 * count - 2 - i) % count].turn);
  }
  return back;
}

bool check_names(Draft& draft, const std::vector<Walk>& walk) {
  std::map<std::string, std::size_t> first;
  bool sound = true;
  for (const Walk& side : walk) {
    const auto [seen, fresh] = first.emplace(side.name, side.source);
    if (fresh) continue;
    sound = false;
    refuse(draft, "name-twice", pointer(kSides, side.source, "name"),
           fact("sides-with-one-name", {FactValue::typed(side.name)}), fact("name-one-of-them"));
  }
  return sound;
}

bool check_chain(Draft& draft, const std::vector<Walk>& walk) {
  std::map<std::string, std::size_t> starts;
  bool sound = true;
  for (std::size_t i = 0; i < walk.size(); ++i) {
    const bool last = i + 1 == walk.size();
    if (!starts.emplace(walk[i].from, i).second || (last && !draft.job.outline.closed && starts.contains(walk[i].to))) {
      sound = false;
      refuse(draft, "corner-twice", pointer(kSides, walk[i].source, "from"),
             fact("corner-twice", {FactValue::typed(walk[i].from), FactValue::typed(walk[i].to)}),
             fact("name-each-corner"));
    }
    if (last && !draft.job.outline.closed) break;
    const Walk& next = walk[(i + 1) % walk.size()];
    if (walk[i].to == next.from) continue;
    sound = false;
    refuse(draft, "outline-chain", pointer(kSides, walk[i].source, "to"),
           fact("outline-chain", {walk[i].name, FactValue::typed(walk[i].to), next.name, FactValue::typed(next.from)}),
           fact("let-sides-meet", {walk[i].name, next.from, next.name, walk[i].to}));
  }
  return sound;
}

bool check_turns(Draft& draft, const std::vector<Walk>& walk) {
  bool sound = true;
  const std::size_t needed = draft.job.outline.closed ? walk.size() : walk.size() - 1;
  for (std::size_t i = 0; i < needed; ++i) {
    if (walk[i].turn) continue;
    sound = false;
    refuse(draft, "turn-missing", pointer(kSides, walk[i].source, "turn"),
           fact("turn-missing", {walk[i].to, walk[i].name}), fact("say-right-or-left"));
  }
  return sound;
}

int net_right_turns(const std::vector<Walk>& walk) {
  int net = 0;
  for (const Walk& side : walk) net += side.turn ? (*side.turn == Turn::Right ? 1 : -1) : 0;
  return net;
}

/// The walk with the building on the right, or nothing (refused).
std::optional<std::vector<Walk>> right_handed(Draft& draft, std::vector<Walk> walk) {
  const Outline& outline = draft.job.outline;
  if (!outline.closed) return outline.building_on == Hand::Left ? walked_back(walk) : walk;
  const int net = net_right_turns(walk);
  const Hand hand = net > 0 ? Hand::Right : Hand::Left;
  if (net != 4 && net != -4) {
    refuse(draft, "outline-turns", "/outline/sides",
           net > 0 ? fact("outline-turns-right", {net}) : fact("outline-turns-left", {-net}), fact("look-at-turns"));
    return std::nullopt;
  }
  if (outline.building_on && *outline.building_on != hand) {
    refuse(draft, "outline-hand", "/outline/building_on", fact(net > 0 ? "outline-round-right" : "outline-round-left"),
           fact("leave-building-on-out"));
    return std::nullopt;
  }
  return hand == Hand::Left ? walked_back(walk) : walk;
}

/// Actual less nominal length of a side between two ends that are pushed out (convex, free) or in (re-entrant).
Length actual_less_nominal(Length joint, PushedEnd start, PushedEnd end) {
  if (start != end) return Length();
  return start == PushedEnd::Out ? -joint : joint;
}

PushedEnd pushed(const std::optional<Turn>& turn) {
  return turn && *turn == Turn::Left ? PushedEnd::In : PushedEnd::Out;
}

Wall wall_from(const Draft& draft, const Walk& side, PushedEnd start, PushedEnd end) {
  Wall wall;
  wall.name = side.name;
  wall.start_name = side.from;
  wall.end_name = side.to;
  wall.place = pointer(kSides, side.source);
  wall.series = series_in_use(draft, draft.job.outline.sides[side.source].series);
  const Length difference = actual_less_nominal(draft.building.joint, start, end);
  const bool stated_actual = side.length.basis == Basis::Actual;
  wall.nominal = stated_actual ? side.length.length - difference : side.length.length;
  wall.actual = wall.nominal + difference;
  return wall;
}

bool check_length(Draft& draft, const Wall& wall) {
  if (wall.actual > Length() && wall.nominal <= kLongest) return true;
  refuse(draft, "side-length", wall.place + "/length", fact("side-length", {wall.name, marked(wall.actual)}),
         fact("state-length-above", {marked(draft.building.joint)}));
  return false;
}

void add_walls(Draft& draft, const std::vector<Walk>& walk) {
  const bool closed = draft.job.outline.closed;
  for (std::size_t i = 0; i < walk.size(); ++i) {
    const bool first = i == 0, last = i + 1 == walk.size();
    const PushedEnd start = first && !closed ? PushedEnd::Out : pushed(walk[(i + walk.size() - 1) % walk.size()].turn);
    const PushedEnd end = last && !closed ? PushedEnd::Out : pushed(walk[i].turn);
    draft.building.walls.push_back(wall_from(draft, walk[i], start, end));
    draft.wall_by_name.emplace(walk[i].name, static_cast<int>(i));
    draft.start_names.push_back({walk[i].from});
    draft.end_names.push_back({walk[i].to});
  }
}

/// Corner k stands where wall k starts; an open outline has none at its first end.
void add_corners(Draft& draft, const std::vector<Walk>& walk) {
  const int count = static_cast<int>(walk.size());
  for (int k = draft.job.outline.closed ? 0 : 1; k < count; ++k) {
    const int arriving = (k + count - 1) % count;
    const int index = static_cast<int>(draft.building.corners.size());
    const Walk& before = walk[static_cast<std::size_t>(arriving)];
    draft.building.corners.push_back({before.to, pushed(before.turn) == PushedEnd::Out, arriving, k, {}});
    wall_at(draft, arriving).end = {EndKind::Corner, index, -1};
    wall_at(draft, k).start = {EndKind::Corner, index, -1};
  }
}

/// Walks the actual outer faces from the origin, the first wall heading west.
void add_points(Draft& draft) {
  PlanPoint point;
  Heading heading = Heading::West;
  for (Wall& wall : draft.building.walls) {
    wall.start_point = point;
    wall.heading = heading;
    if (wall.start.kind == EndKind::Corner)
      draft.building.corners[static_cast<std::size_t>(wall.start.corner)].point = point;
    point = moved(point, heading, wall.actual);
    if (wall.end.kind != EndKind::Corner) continue;
    const bool convex = draft.building.corners[static_cast<std::size_t>(wall.end.corner)].convex;
    heading = convex ? right_of(heading) : left_of(heading);
  }
}

}  // namespace

void resolve_outline(Draft& draft) {
  const Outline& outline = draft.job.outline;
  for (const Side& side : outline.sides)
    draft.refused_walls.insert(side.name.empty() ? side.from + side.to : side.name);
  const std::size_t least = outline.closed ? 4 : 1;
  if (outline.sides.size() < least) {
    refuse(draft, "outline-short", "/outline/sides", fact("outline-short", {outline.sides.size()}),
           fact(outline.closed ? "state-four-sides" : "state-one-side"));
    return;
  }
  const std::vector<Walk> stated = walk_as_stated(outline);
  const bool named = check_names(draft, stated), chained = check_chain(draft, stated),
             turned = check_turns(draft, stated);
  if (!named || !chained || !turned) return;
  const std::optional<std::vector<Walk>> walk = right_handed(draft, stated);
  if (!walk || !draft.series_stand) return;
  add_walls(draft, *walk);
  add_corners(draft, *walk);
  draft.refused_walls.clear();
  draft.plan_stands = true;
  for (const Wall& wall : draft.building.walls) draft.plan_stands &= check_length(draft, wall);
  add_points(draft);
  if (outline.closed && draft.plan_stands) draft.plan_stands = check_gap(draft);
}

}  // namespace stringcourse::walls
