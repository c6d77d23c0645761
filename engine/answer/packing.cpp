#include "answer/packing.hpp"

#include <algorithm>

#include "answer/answer.hpp"
#include "measure/notation.hpp"

namespace stringcourse {
namespace {

const Opening* as_stated(const Answer& answer, const ResolvedOpening& opening) {
  for (std::size_t k = 0; k < answer.building.openings.size() && k < answer.job.openings.size(); ++k) {
    if (answer.building.openings[k].place == opening.place) return &answer.job.openings[k];
  }
  return nullptr;
}

/// What the frame would be if it took the packing in.
Fact filled_by(const Opening& stated, Length side, Length head) {
  const Length none;
  if (stated.door)
    return fact("packing-frame",
                {stated.door->frame_jamb.value_or(none) + side, stated.door->frame_head.value_or(none) + head});
  if (stated.overhead)
    return fact("packing-buck",
                {stated.overhead->jamb_buck.value_or(none) + side, stated.overhead->head_buck.value_or(none) + head});
  if (stated.window)
    return fact("packing-room",
                {stated.window->each_side.value_or(none) + side, stated.window->above.value_or(none) + head});
  return {};
}

}  // namespace

Fact packing_said(const Answer& answer, const ResolvedOpening& opening) {
  const Opening* const stated = as_stated(answer, opening);
  if (stated == nullptr) return {};
  const Length side = opening.packing_each_side, head = opening.packing_head;
  const Fact filled = filled_by(*stated, side, head);
  const Length step = tape_step(answer.building.tape);
  const bool nothing = rounded_to(side, step) <= Length() && rounded_to(head, step) <= Length();
  return filled.empty() || nothing ? Fact() : fact("packing", {side, head, filled});
}

}  // namespace stringcourse
