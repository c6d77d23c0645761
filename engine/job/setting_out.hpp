#pragma once
// What the setting-out card needs to know, in the user's words.
#include <optional>
#include <string>

#include "measure/length.hpp"

namespace stringcourse {

struct SettingOut {
  std::optional<Length> boards_off;        // boards beyond the outer faces; absent: 4 ft or 1200 mm
  std::optional<Length> first_kerf;        // from a board's outer end to the outer face line; absent: 2 ft or 600 mm
  std::optional<Length> footing_outside;   // the footing beyond the outer face
  std::optional<Length> footing_inside;    // the footing beyond the inner face
  std::optional<Length> room;              // longest leg of the square check that the lot has room for
  std::optional<Length> datum_over;        // the datum mark over the top of course 1, minus below it; absent: 0
  std::optional<Length> backsight;         // what the rod reads on the datum mark; absent: no rod readings on the card
  std::optional<Length> boards_over;       // tops of the boards over the bearing; absent: not listed
  std::optional<std::string> line_weight;  // "0.001 lb/ft", "1.5 g/m"
  std::optional<std::string> line_pull;    // "20 lb", "90 N", "9 kg"
  std::optional<std::string> line_strength;  // at which it breaks
  std::optional<Length> line_sag;            // greatest that is allowed; absent: 1/32 in or 1 mm
  friend bool operator==(const SettingOut&, const SettingOut&) = default;
};

}  // namespace stringcourse
