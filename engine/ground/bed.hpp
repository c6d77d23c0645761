#pragma once
// From the heights of what the first course stands on to its bed joints: the level of course-1 tops that leaves the
// greatest margin, the bed under every unit, and what can be done where none fits. Whole nanometres.
#include <optional>
#include <string>
#include <vector>

#include "measure/length.hpp"

namespace stringcourse::ground {

/// Allowed thickness of the first bed joint.
struct BedRange {
  Length least, most;
};
enum class FirstCourse { Hollow, Grouted };  // Grouted: the whole of it, on concrete
/// By rule "first-bed".
[[nodiscard]] BedRange first_bed_range(FirstCourse course);

/// NotRead: what it needs was not read yet; each says what it needs.
enum class Verdict { Fits, DoesNotFit, CannotTell, NotRead };

/// By the guard band U = doubt (expanded, k = 2): margin at least U fits, at most -U does not. SOURCE: ISO 14253-1.
template <class Quantity>
[[nodiscard]] constexpr Verdict judged(Quantity margin, Quantity doubt) {
  if (margin >= doubt) return Verdict::Fits;
  return -margin >= doubt && margin < Quantity() ? Verdict::DoesNotFit : Verdict::CannotTell;
}

/// A height of the bearing at a place along a wall.
struct BearingHeight {
  int wall = 0;
  Length along;
  Length height;  // above or below the readings' datum
};

/// The best level for the underside of course 1: height of the bed's top over the datum.
struct BedLevel {
  Length top;     // of the bed joint
  Length margin;  // least distance of any bed's thickness from the range's ends; below 0: outside by so much
  Length thinnest, thickest;
};
/// top = (highest + lowest)/2 + (least + most)/2, down to a nanometre; margin = (most - least - (highest - lowest))/2.
/// At least one height. Derived: no other level has a greater margin.
[[nodiscard]] BedLevel best_level(const std::vector<Length>& heights, const BedRange& range);

/// A plane top instead of a level one, sloping at most `steepest` (a ratio) along each axis: least greatest distance.
struct TiltedBed {
  double top = 0, along_x = 0, along_y = 0;  // metres; metres for each metre
  double margin = 0;                         // metres
};
struct PlanHeight {
  double x = 0, y = 0, height = 0;  // metres
};
[[nodiscard]] std::optional<TiltedBed> best_plane(const std::vector<PlanHeight>& heights, double least, double most,
                                                  double steepest);

/// Straight from one reading to another of a wall, at a place between them.
[[nodiscard]] Length height_between(const BearingHeight& before, const BearingHeight& after, Length along);

/// The bearing's height at a place of a wall, between two readings of that wall; none beyond the outermost two.
[[nodiscard]] std::optional<Length> height_at(const std::vector<BearingHeight>& readings, int wall, Length along);

}  // namespace stringcourse::ground
