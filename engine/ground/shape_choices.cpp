#include "ground/shape_choices.hpp"

#include <algorithm>

namespace stringcourse::ground {
namespace {

bool on_bearing(const stringcourse::RodReading& rod, const Building& building) {
  const bool corner = std::ranges::contains(building.corners, rod.station, &Corner::name);
  return rod.surface.value_or(Surface::Bearing) == Surface::Bearing && (rod.on || corner);
}

/// Pegs that do not stand right as far as the tape can tell.
std::vector<const PegMove*> moving(const TapeAsFound& tape) {
  std::vector<const PegMove*> all;
  for (const PegMove& move : tape.moves) {
    if (move.corner != tape.held && !move.within_doubt) all.push_back(&move);
  }
  return all;
}

FactValue moves_said(const Building& building, const std::vector<const PegMove*>& moves) {
  std::vector<Fact> all;
  for (const PegMove* move : moves) {
    const std::string& corner = building.corners[static_cast<std::size_t>(move->corner)].name;
    all.push_back(fact("peg-of-corner", {corner, move_said(building, *move)}));
  }
  return listed(FactValue::Kind::Semicolons, all);
}

int outer_walls(const Building& building) {
  return static_cast<int>(std::ranges::count(building.walls, false, &Wall::interior));
}

}  // namespace

bool is_of_concrete(const Reading& entry, const Building& building) {
  if (entry.tape && entry.tape->of == Taped::Poured) return true;
  return entry.dowel || entry.edge || (entry.rod && on_bearing(*entry.rod, building));
}

bool concrete_is_read(const Job& job, const Building& building, const std::vector<bool>& counts) {
  for (std::size_t k = 0; k < job.readings.size(); ++k) {
    if (counts[k] && is_of_concrete(job.readings[k], building)) return true;
  }
  return false;
}

std::vector<ShapeChoice> shape_choices(const Building& building, const TapeAsFound& tape, bool concrete) {
  if (tape.verdict != Verdict::DoesNotFit && tape.verdict != Verdict::CannotTell) return {};
  if (tape.of_lines && concrete) return {};  // pegs say nothing of what was poured by them
  const std::vector<const PegMove*> moves = moving(tape);
  if (moves.empty()) return {};
  Length most;
  for (const PegMove* move : moves) most = std::max(most, move->off);
  const FactValue said = moves_said(building, moves);
  const std::string& held = building.corners[static_cast<std::size_t>(tape.held)].name;
  std::vector<ShapeChoice> choices{
      {ShapeRemedy::MovePegs, fact("shape-move-pegs", {said}), fact("gives-up-pour-again"),
       static_cast<int>(moves.size()), most},
      {ShapeRemedy::SquareLines, fact("shape-square-lines", {held, said}), fact("gives-up-edge", {most}),
       outer_walls(building), most},
  };
  if (concrete) std::swap(choices[0], choices[1]);
  else choices[0].gives_up = {}, choices.pop_back();
  choices[0].recommended = true;
  return choices;
}

}  // namespace stringcourse::ground
