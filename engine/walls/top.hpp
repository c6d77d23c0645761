#pragma once
// Plate, bolts and trusses as a job asks for them, on the building's walls. Nothing here knows placed units.
#include <string>
#include <vector>

#include "measure/length.hpp"

namespace stringcourse {

/// Trusses on one wall's line: the first one's centre, and from there by `step` (below zero: towards the wall's start).
struct ResolvedTrusses {
  int wall = -1;
  Position first;
  Length step;
  Length clear;       // least from a truss's centre to a bolt's
  std::string place;  // JSON pointer
};

/// Lengths are to centres.
struct BoltRules {
  std::string size;
  Length spacing;              // greatest
  Length end_least, end_most;  // from an end of a piece of plate
  Length clear_of_bars;        // least, along the wall
  Length grout_round;          // least from a bolt to the block beside it, along the wall
  bool grout_assumed = false;  // not stated: rule "bolt-grout"
};

struct ResolvedTop {
  std::string plate;
  std::vector<int> plate_on;  // walls, rising
  Length plate_piece;         // 0: in one piece
  BoltRules bolts;
  std::vector<ResolvedTrusses> trusses;
};

}  // namespace stringcourse
