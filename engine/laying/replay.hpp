#pragma once
// One run of a course replayed mark by mark: where it stands, what its units add, what its next joints must be.
#include <cstddef>
#include <span>
#include <vector>

#include "bond/layout_parts.hpp"
#include "laying/course_as_laid.hpp"

namespace stringcourse::laying {

struct RunToReplay {
  const Building& building;
  const Layout& layout;
  const HowLaid& how;
  const Run& run;
  std::span<const bond::WallBar> bars;  // all of the wall's, in order
  std::span<const Length> below;        // centres of the head joints in the course below, in order
};

/// Fills in the run's state from the marks that were read. `own`: which of the course's marks are this run's, in order;
/// its state's `ahead` already lists those to be read.
void replay(const RunToReplay& what, CourseAsLaid& course, std::size_t run, const std::vector<std::size_t>& own);

}  // namespace stringcourse::laying
