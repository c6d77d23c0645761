#pragma once
// What a tape is worth: its permitted error, its reading, and the corrections for how it was used.
#include <initializer_list>

#include "measure/length.hpp"

namespace stringcourse::ground {

enum class TapeClass {
  Steel,   // NIST Handbook 44, 5.52: 1/32 in to 6 ft, 1/16 to 30 ft, 1/8 to 55 ft, 3/16 to 80 ft, 1/4 to 100 ft
  ClassTwo // EU class II: 0.3 mm + 0.2 mm for each metre begun (field.md: second-hand)
};

/// The permitted error of a tape over so much of it. Beyond 100 ft a steel tape's is 1/4 in for each 100 ft begun (ours:
/// the tape is laid again).
[[nodiscard]] Length permitted_error(TapeClass tape, Length length);

/// Standard uncertainty, metres, of a value that lies within +-`half_width`, all places alike: half_width / sqrt 3.
/// SOURCE: JCGM 100:2008 (GUM), 4.3.7.
[[nodiscard]] double standard_doubt(Length half_width);

/// Independent doubts together, any unit: the root of the sum of their squares. SOURCE: GUM 5.1.2.
[[nodiscard]] double together(std::initializer_list<double> doubts);

// How a tape was used; every correction is in the unit of `length` and is added to the reading.
// SOURCE: surveying texts (setting-out practice); check values T1 to T7 in the tests.

/// A tape that is `actual` long where it says `nominal`.
[[nodiscard]] double standard_correction(double length, double nominal, double actual);
/// `expansion` for each degree, used at `used` degrees, right at `right` degrees.
[[nodiscard]] double heat_correction(double length, double expansion, double used, double right);
/// Pulled with `used`, right at `right` (forces alike); `area` and `modulus` in units that make force/(area modulus) bare.
[[nodiscard]] double pull_correction(double length, double used, double right, double area, double modulus);
/// A span that hangs free between its two supports; `weight` for each unit of length. Always negative.
[[nodiscard]] double sag_correction(double span, double weight, double pull);
/// A reading along the slope whose ends differ in height by `rise` (less than the reading): to the level distance.
[[nodiscard]] double slope_correction(double length, double rise);

}  // namespace stringcourse::ground
