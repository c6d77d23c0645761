#include "walls/outline_gap.hpp"

#include "walls/plan.hpp"

namespace stringcourse::walls {
namespace {

std::string_view heading_name(Heading heading) {
  switch (heading) {
    case Heading::West: return "west";
    case Heading::North: return "north";
    case Heading::East: return "east";
    case Heading::South: return "south";
  }
  return "";
}

/// The longest side with this heading that is longer than `longer_than`, or none.
const Wall* longest(const Building& building, Heading heading, Length longer_than) {
  const Wall* best = nullptr;
  for (const Wall& wall : building.walls) {
    if (wall.heading == heading && wall.nominal > (best ? best->nominal : longer_than)) best = &wall;
  }
  return best;
}

struct Miss {
  Heading off;  // the outline ends this way off its first corner ...
  Length by;    // ... by this much, > 0
};

std::vector<Miss> misses(const Building& building) {
  PlanPoint end;
  for (const Wall& wall : building.walls) end = moved(end, wall.heading, wall.nominal);
  std::vector<Miss> all;
  if (end.x != Length()) all.push_back({end.x > Length() ? Heading::East : Heading::West, end.x > Length() ? end.x : -end.x});
  if (end.y != Length()) all.push_back({end.y > Length() ? Heading::North : Heading::South, end.y > Length() ? end.y : -end.y});
  return all;
}

std::string mend(const Draft& draft, const Miss& miss) {
  const Wall* shorten = longest(draft.building, miss.off, miss.by + draft.building.joint);
  const Wall* lengthen = longest(draft.building, right_of(right_of(miss.off)), Length());
  const std::string by = say(draft, miss.by);
  const std::string shorter = shorten ? joined({shorten->name, " ", by, " shorter"}) : std::string();
  const std::string longer = lengthen ? joined({lengthen->name, " ", by, " longer"}) : std::string();
  return joined({shorter, !shorter.empty() && !longer.empty() ? " or " : "", longer});
}

}  // namespace

bool check_gap(Draft& draft) {
  const std::vector<Miss> all = misses(draft.building);
  if (all.empty()) return true;
  std::string off, mends;
  for (const Miss& miss : all) {
    off += joined({off.empty() ? "" : " and ", say(draft, miss.by), " to the ", heading_name(miss.off)});
    mends += joined({mends.empty() ? "Make " : ", and make ", mend(draft, miss)});
  }
  const Wall& last = draft.building.walls.back();
  refuse(draft, "outline-open", joined({last.place, "/length"}),
         joined({"The outline does not close: ", last.name, " ends ", off, " of corner ", last.end_name,
                 " (nominal; ", draft.building.walls.front().name, " runs west)."}),
         joined({mends, "."}));
  return false;
}

}  // namespace stringcourse::walls
