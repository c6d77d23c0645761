#pragma once
// What goes over each opening, what it comes to bear on, and what holds a lintel of units up until it may carry.
// Heights and places are read off the building and the placed pieces, exact; a number of shores only for the spacing
// that the job states. How long shores stay is nobody's figure here: rule "shores".
#include <cstdint>
#include <optional>
#include <vector>

#include "bond/layout.hpp"
#include "supply/lintels.hpp"
#include "walls/building.hpp"

namespace stringcourse::supply {

/// What a lintel stands on at one end: units of the course under it that lie under its bearing, by their numbers.
struct Seat {
  std::int32_t course = 0;
  std::vector<std::int32_t> units = {};  // none: nothing lies there
  friend bool operator==(const Seat&, const Seat&) = default;
};

struct Bridged {
  std::int32_t opening = 0;
  std::int32_t lintel = -1;                    // into the lintels as laid; -1: none is placed
  Length over_foot;                            // from the opening's floor or sill to its head
  Length over_bearing;                         // from what course 1 stands on, under its bed, to the head
  std::int32_t first_course = 0, courses = 0;  // of its lintel; 0: none
  Seat start, end;                             // towards the wall's start, towards its end
  bool shored = false;                         // built of units: shores stand before its first course is laid
  std::optional<std::int64_t> shores = {};     // one at each jamb, between them no farther apart than the job says
  std::vector<std::int32_t> beams_in = {};     // courses of its lintel that are bond beams
  std::vector<std::int32_t> beams_cut = {};    // bond beams that the opening itself interrupts
  std::int32_t beam_over = 0;                  // the lowest bond beam over opening and lintel; 0: none
  friend bool operator==(const Bridged&, const Bridged&) = default;
};

/// Fewest shores under a span: one at each jamb, and between them no farther apart than `spacing` (above zero).
[[nodiscard]] std::int64_t shores_under(Length span, Length spacing);

/// One for every opening, in their order.
[[nodiscard]] std::vector<Bridged> bridged(const Building& building, const Layout& layout,
                                           const std::vector<LintelAsLaid>& lintels);

}  // namespace stringcourse::supply
