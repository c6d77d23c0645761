#pragma once
// Reads printed sheets as a mason does: what a number is measured from, and where in the plan that puts it. From the
// words on paper and the building's own geometry; nothing of the drawers is asked.
#include <string>
#include <vector>

#include "print/solved_examples.hpp"

namespace stringcourse::print_test {

/// One printed row or sentence, in drawing order.
struct PrintedLine {
  std::vector<std::string> cells;  // a table's row; a heading has one
  bool heading = false;
};
[[nodiscard]] std::vector<PrintedLine> table_lines(const paper::Sheet& sheet);

/// Where a wall's numbers begin, as printed: zero in plan, the way they run, and the way in from the face they run
/// along.
struct PrintedOrigin {
  bool understood = false;
  PlanPoint zero;
  int x = 0, y = 0;        // along
  int in_x = 0, in_y = 0;  // in from the face
  [[nodiscard]] PlanPoint at(Length along, Length in) const {
    return {zero.x + along * x + in * in_x, zero.y + along * y + in * in_y};
  }
};
/// `from`: "outer corner A", "inside corner E, the outer face of DE", "the inner face of AB", "the end of the wall at
/// A".
[[nodiscard]] PrintedOrigin origin_of(const Building& building, const std::string& wall, const std::string& from);
/// A wall by its name; -1.
[[nodiscard]] int wall_named(const Building& building, const std::string& name);

/// Every bar in plan.
struct PlanBar {
  PlanPoint at;
  bool at_bearing = false;
};
[[nodiscard]] std::vector<PlanBar> bars_in_plan(const Building& building, const Layout& layout);
/// The bar at this place, each way to half a step of the tape, to which printed numbers are rounded; -1.
[[nodiscard]] int bar_near(const std::vector<PlanBar>& bars, PlanPoint place, Length step);

}  // namespace stringcourse::print_test
