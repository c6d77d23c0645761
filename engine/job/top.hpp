#pragma once
// What goes on top of the walls, as the drawings say: the plate, its bolts, the trusses that they keep clear of.
#include <optional>
#include <string>
#include <vector>

#include "job/place.hpp"
#include "measure/length.hpp"

namespace stringcourse {

/// Anchor bolts of the plate. Lengths are actual and to centres.
struct Bolts {
  std::string size;                     // the user's text: "1/2 in, 7 in deep, hooked"
  Length spacing;                       // greatest, centre to centre
  Length end_most;                      // farthest that a plate's first and last bolt stand from its ends
  std::optional<Length> end_least;      // nearest; absent: 0
  std::optional<Length> clear_of_bars;  // least from an upright bar, along the wall; absent: 0
  std::optional<Length> grout_round;    // least from a bolt's centre to the block beside it; absent: rule "bolt-grout"
  friend bool operator==(const Bolts&, const Bolts&) = default;
};

/// Trusses or rafters at even spacing along one wall, from the first one away from its corner to the wall's other end.
struct Trusses {
  std::string on;
  Place place;     // of the first one's centre, actual
  Length spacing;  // centre to centre
  Length clear;    // least from a truss's centre to a bolt's
  friend bool operator==(const Trusses&, const Trusses&) = default;
};

struct Top {
  std::string plate;                  // the user's text: "2x8, treated"
  std::vector<std::string> plate_on;  // walls; none: every side of the outline
  std::optional<Length> plate_piece;  // longest piece; pieces are laid from a plate's start, the last is what is left
  std::optional<Bolts> bolts;
  std::vector<Trusses> trusses;
  friend bool operator==(const Top&, const Top&) = default;
};

}  // namespace stringcourse
