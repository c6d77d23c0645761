#pragma once
// Tape readings between points in plan -> where the points stand, how sure that is, and whether the readings agree.
// Least squares of distances (Gauss-Newton). Metres inside; weights are 1 / sigma^2.
// SOURCE of the method and of the checks: /docs/ground.md.
#include <array>
#include <cstdint>
#include <expected>
#include <string>
#include <vector>

namespace stringcourse::ground {

struct Spot {
  double x = 0, y = 0;  // metres, plan: x to the east, y to the north
};

struct NetPoint {
  Spot about;          // near enough to tell which way round the shape lies
  bool fixed = false;  // its place is given
};

/// One taped line. `sigma` is the standard uncertainty of the reading, metres, above 0.
struct NetReading {
  int from = 0, to = 0;  // indices of points
  double length = 0, sigma = 0;
};

/// What the net is hung on where no points are fixed.
enum class Datum {
  Fixed,          // the points that say so (two at least)
  CornerAndSide,  // point 0 stays, point 1 keeps its direction from it
  Free,           // inner constraints: no shift and no turn of all points together
};

/// A point's uncertainty: variances and covariance, square metres, from the stated sigmas (not scaled by s0).
struct Cloud {
  double xx = 0, xy = 0, yy = 0;
};
/// Half axes of the standard ellipse and the direction of the longer one (a unit vector).
struct Ellipse {
  double longer = 0, shorter = 0;
  Spot direction;
};
[[nodiscard]] Ellipse ellipse_of(const Cloud& cloud);

/// What one reading came to.
struct Residual {
  double value = 0;         // adjusted minus measured, metres
  double redundancy = 0;    // share of the reading that the others check: 0 not at all, 1 wholly
  double standardised = 0;  // value / (sigma sqrt(redundancy)); 0 where nothing checks it
};

enum class Agreement { Agree, TooFar, TooNear, Unchecked };  // of s0 with 1; Unchecked: no redundancy

struct Adjusted {
  std::vector<Spot> places;
  std::vector<Cloud> clouds;
  std::vector<Residual> residuals;
  int freedom = 0;                   // readings beyond what the shape needs
  double square_sum = 0;             // of residual / sigma
  double s0 = 0;                     // sqrt(square_sum / freedom); 0 without freedom
  double s0_least = 0, s0_most = 0;  // it lies between these in 95 of 100 jobs whose sigmas are right
  Agreement agreement = Agreement::Unchecked;
};

/// Why a net cannot be worked out.
struct NetTrouble {
  enum class Kind {
    NotDeterminate,      // points can move without any reading noticing; `pairs` would hold them
    ImpossibleTriangle,  // three readings that no triangle has; `readings` names them, the longest first
    NoConvergence,       // the readings and the points' about-places belong to different shapes
  } kind = Kind::NotDeterminate;
  std::vector<std::array<int, 2>> pairs;  // points to be taped to one another
  std::vector<int> readings;
};

/// Promises: at the result the weighted squares are least, to 1e-10 of the net's size. At least one reading; every
/// index in range; sigma above 0. A line that is longer than two others together is adjusted like any other misfit as
/// long as other readings hold the shape; only where none is found is the triangle named.
[[nodiscard]] std::expected<Adjusted, NetTrouble> adjust(const std::vector<NetPoint>& points,
                                                         const std::vector<NetReading>& readings, Datum datum);

/// Pairs of points, fewest first found, whose taping would hold the shape; empty where it is held already.
[[nodiscard]] std::vector<std::array<int, 2>> missing_pairs(const std::vector<NetPoint>& points,
                                                            const std::vector<NetReading>& readings, Datum datum);

}  // namespace stringcourse::ground
