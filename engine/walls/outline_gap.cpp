#include "walls/outline_gap.hpp"

#include <utility>

#include "walls/plan.hpp"

namespace stringcourse::walls {
namespace {

/// So far this way.
Fact told_off(Heading way, Length by) {
  switch (way) {
    case Heading::West: return fact("so-far-west", {marked(by)});
    case Heading::North: return fact("so-far-north", {marked(by)});
    case Heading::East: return fact("so-far-east", {marked(by)});
    case Heading::South: return fact("so-far-south", {marked(by)});
  }
  return {};
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
  if (end.x != Length())
    all.push_back({end.x > Length() ? Heading::East : Heading::West, end.x > Length() ? end.x : -end.x});
  if (end.y != Length())
    all.push_back({end.y > Length() ? Heading::North : Heading::South, end.y > Length() ? end.y : -end.y});
  return all;
}

/// What is to be made shorter, longer.
Fact mend(const Draft& draft, const Miss& miss) {
  const Wall* shorten = longest(draft.building, miss.off, miss.by + draft.building.joint);
  const Wall* lengthen = longest(draft.building, right_of(right_of(miss.off)), Length());
  const FactValue by = marked(miss.by);
  if (shorten && lengthen) return fact("one-shorter-or-other-longer", {shorten->name, by, lengthen->name});
  if (shorten) return fact("side-shorter", {shorten->name, by});
  return lengthen ? fact("side-longer", {lengthen->name, by}) : Fact();
}

}  // namespace

bool check_gap(Draft& draft) {
  const std::vector<Miss> all = misses(draft.building);
  if (all.empty()) return true;
  std::vector<FactValue> off;
  for (const Miss& miss : all) off.emplace_back(told_off(miss.off, miss.by));
  const Wall& last = draft.building.walls.back();
  refuse(draft, "outline-open", last.place + "/length",
         fact("outline-open",
              {last.name, {FactValue::Kind::And, std::move(off)}, last.end_name, draft.building.walls.front().name}),
         all.size() == 1 ? fact("make-side", {mend(draft, all[0])})
                         : fact("make-both-sides", {mend(draft, all[0]), mend(draft, all[1])}));
  return false;
}

}  // namespace stringcourse::walls
