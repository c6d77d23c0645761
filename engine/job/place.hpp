#pragma once
// Lengths and places as a job states them.
#include <optional>
#include <string>

#include "measure/length.hpp"

namespace stringcourse {

enum class Basis { Nominal, Actual };

/// "24'-0\"" (nominal, the default) or "23'-11 5/8\" actual". JSON: one string.
struct StatedLength {
  Length length;
  Basis basis = Basis::Nominal;
  friend bool operator==(const StatedLength&, const StatedLength&) = default;
};

enum class Face { Near, Far };  // the face or edge nearer to, or farther from, the corner measured from

/// "from corner A, at 8'-0\", to the near face".
struct Place {
  std::string from;  // corner name (or, on an interior wall, "start" or "end")
  StatedLength at;
  std::optional<Face> to;  // absent: near
  friend bool operator==(const Place&, const Place&) = default;
};

}  // namespace stringcourse
