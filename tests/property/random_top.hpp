#pragma once
// Plates, bolts, trusses and shores' spacings for jobs made by seed. Its own throws: the rest of a job stays as it was.
#include <algorithm>

#include "dice.hpp"
#include "job/job.hpp"

namespace stringcourse::property {

/// Puts a top on half of all jobs. `step`: a mark of the tape.
inline void add_top(Job& job, std::uint64_t seed, Length step) {
  Dice dice(seed * 7919 + 17);
  const auto about = [&](std::int64_t inches) {
    const Length length = Length::inches(inches) + step * dice.between(-8, 8);
    return std::max(rounded_to(length, step), step);
  };
  for (Opening& opening : job.openings) {
    if (opening.lintel && dice.one_in(2)) opening.lintel->shore_spacing = about(dice.between(12, 48));
  }
  if (dice.one_in(2)) return;
  Top top;
  Bolts bolts{"1/2 in", about(dice.between(16, 72)), about(dice.between(8, 24)), {}, {}, {}};
  if (dice.one_in(2)) bolts.end_least = std::min(about(4), bolts.end_most);
  if (dice.one_in(2)) bolts.clear_of_bars = about(dice.between(1, 3));
  if (dice.one_in(3)) bolts.grout_round = about(dice.between(1, 2));
  top.bolts = bolts;
  if (dice.one_in(3)) top.plate_piece = about(dice.between(60, 192));
  const Side& first = job.outline.sides.front();
  const std::string name = first.name.empty() ? first.from + first.to : first.name;
  if (dice.one_in(3)) top.plate_on = {name};
  if (dice.one_in(2))
    top.trusses.push_back({name,
                           {dice.one_in(2) ? first.from : first.to, {about(dice.between(4, 30)), Basis::Actual}, {}},
                           about(dice.between(12, 30)),
                           about(dice.between(1, 3))});
  job.top = std::move(top);
}

}  // namespace stringcourse::property
