#pragma once
// Readings on a levelling rod (or a water level) -> heights, how sure they are, and whether the loops close.
#include <cstdint>
#include <expected>
#include <vector>

namespace stringcourse::ground {

/// A reading from one set-up of the instrument on one point: height = height of the instrument - reading. A rod held
/// upside down against a soffit reads below 0. Metres; sigma above 0.
struct RodReading {
  int setup = 0, point = 0;
  double rod = 0, sigma = 0;
};

/// Readings that come back to where they started by another way.
struct Loop {
  std::vector<int> readings;  // numbers of the readings in it
  double misclosure = 0;      // metres; the way round adds up to this instead of 0
  double doubt = 0;           // its standard uncertainty from the readings' sigmas
};

/// Set-ups are solved together, the work grows as their cube: more than so many are not levelled (this program's
/// limit).
inline constexpr int kMostSetups = 200;

struct Levelled {
  std::vector<double> heights;      // of the points, metres
  std::vector<double> doubts;       // standard uncertainties against the fixed point
  std::vector<double> instruments;  // heights of the instrument, by set-up
  std::vector<double> residuals;    // adjusted minus read, by reading
  std::vector<Loop> loops;
  int freedom = 0;
  double s0 = 0;           // 0 without freedom
  std::int64_t steps = 0;  // what it took: readings passed, products formed
};

/// Points that no reading ties to the fixed one.
struct Loose {
  std::vector<int> points;
};

/// Least squares of all readings, point `fixed` at `height`. Every point in range has a reading, or it is Loose. At
/// most kMostSetups set-ups; the work is in proportion to the readings, beside the cube of the set-ups and the lengths
/// of loops.
[[nodiscard]] std::expected<Levelled, Loose> adjust_levels(int points, int setups,
                                                           const std::vector<RodReading>& readings, int fixed,
                                                           double height);

/// Points that no chain of readings ties to the fixed one.
[[nodiscard]] std::vector<int> loose_points(int points, int setups, const std::vector<RodReading>& readings, int fixed);

/// An instrument that looks up or down: metres for each metre of sight. `near` and `far` are sight lengths; readings
/// are far minus near, from set-ups with equal and with unequal sights. SOURCE: two-peg test (common practice in
/// surveying).
[[nodiscard]] constexpr double sight_error(double difference_equal, double difference_unequal, double near,
                                           double far) {
  return (difference_unequal - difference_equal) / (far - near);
}
/// A reading as a level instrument would give it.
[[nodiscard]] constexpr double without_sight_error(double reading, double error, double sight) {
  return reading - error * sight;
}

}  // namespace stringcourse::ground
