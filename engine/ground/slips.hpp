#pragma once
// Readings that are far from what is expected, in a way that people often are: the wrong unit, a foot or an inch lost.
#include <optional>

#include "measure/length.hpp"

namespace stringcourse::ground {

enum class Slip {
  FeetForInches,  // read 24 where 288 is meant: the number is feet, written as inches
  InchesForFeet,
  InchesForMillimetres,  // the number is inches, written as millimetres
  MillimetresForInches,
  FeetForMillimetres,
  MillimetresForFeet,
  FootLost,   // one foot short or over
  InchBurnt,  // the tape was held at its 1 in mark, or that inch was taken off twice
};

struct Meant {
  Slip slip = Slip::FootLost;
  Length length;  // what was probably meant
};

/// The likeliest slip, or none. `near`: how far a right reading may lie from the expected one (both ways). A reading
/// that lies so near is right as it is. Of several slips the one that comes nearest to the expected length.
[[nodiscard]] std::optional<Meant> likely_slip(Length read, Length expected, Length near);

}  // namespace stringcourse::ground
