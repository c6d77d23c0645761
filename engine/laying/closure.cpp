#include "laying/closure.hpp"

#include <utility>

namespace stringcourse::laying {
namespace {

/// The joint at each side of a piece in a gap; none outside the range.
std::optional<Length> joint_beside(const Gap& gap, Length piece) {
  const Length joint = (gap.measured - piece).half_down();
  if (joint < gap.least_joint || joint > gap.most_joint) return std::nullopt;
  return joint;
}

/// As equal as the tape's steps let them be; the longer first.
std::optional<Closure> two_cuts(const Gap& gap) {
  const Length both = rounded_to(gap.measured - 3 * gap.joint, gap.step);
  const Length shorter = gap.step * both.half_down().whole_multiples(gap.step), longer = both - shorter;
  if (shorter < gap.least_piece) return std::nullopt;
  return Closure{Closure::Piece::TwoCuts, longer, Length::nanometres((gap.measured - both).in_nanometres() / 3), false, shorter};
}

}  // namespace

std::optional<Closure> closure_of(const Gap& gap) {
  std::optional<Closure> best;
  for (const auto& [piece, length] : {std::pair(Closure::Piece::Whole, gap.unit), std::pair(Closure::Piece::Half, gap.half)}) {
    const auto joint = joint_beside(gap, length);
    if (!joint || (best && magnitude(*joint - gap.joint) >= magnitude(best->joint - gap.joint))) continue;
    best = Closure{piece, length, *joint, false, {}};
  }
  if (best) return best;
  // Two pieces and three joints: a cut next to last, and a whole unit that closes.
  const Length cut = rounded_to(gap.measured - 2 * gap.joint, gap.step);
  if (cut > gap.unit) {
    const Length first = rounded_to(gap.measured - gap.unit - 3 * gap.joint, gap.step);
    if (first < gap.least_piece) return two_cuts(gap);
    if (first > gap.unit) return std::nullopt;
    const Length joint = Length::nanometres((gap.measured - gap.unit - first).in_nanometres() / 3);
    return Closure{Closure::Piece::Whole, gap.unit, joint, true, first};
  }
  if (cut < gap.least_piece) return std::nullopt;
  const auto joint = joint_beside(gap, cut);
  if (!joint) return std::nullopt;
  return Closure{Closure::Piece::Cut, cut, *joint, false, {}};
}

}  // namespace stringcourse::laying
