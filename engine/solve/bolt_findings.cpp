#include "solve/bolt_findings.hpp"

#include <map>

#include "measure/notation.hpp"

namespace stringcourse {
namespace {

constexpr int kShown = 8;  // of each wall; the list of bolts has them all

FactValue tape_place(const Building& building, Length place) {
  return {rounded_to(place, tape_step(building.tape)), LengthForm::Both};
}

Fact said(const Building& building, const Wall& wall, const setout::NoBolt& none) {
  const FactValue after = tape_place(building, none.after), by = tape_place(building, none.by);
  if (!none.next) return fact("bolt-no-place", {wall.name, wall.start_name, after, by});
  return fact("bolt-no-place-next", {wall.name, wall.start_name, after, by, tape_place(building, *none.next)});
}

}  // namespace

std::vector<Finding> bolt_findings(const Building& building, const std::vector<setout::PlatePiece>& plates) {
  std::vector<Finding> found;
  std::map<int, int> shown;
  for (const setout::PlatePiece& piece : plates) {
    for (const setout::NoBolt& none : piece.without) {
      if (++shown[piece.wall] > kShown) continue;
      found.push_back({"bolt-no-place", "/top/bolts", said(building, wall_of(building, piece.wall), none),
                       "bolt-places", HoldPoint::Top});
    }
  }
  return found;
}

}  // namespace stringcourse
