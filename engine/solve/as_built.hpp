#pragma once
// "Re-solve from here": jambs and corners as they were found, dowels and courses as they stand, and what of the printed
// layout has to change for it.
#include <optional>
#include <string>
#include <vector>

#include "bond/layout.hpp"
#include "bond/panel_memo.hpp"
#include "job/job.hpp"
#include "job/trouble.hpp"
#include "laying/as_laid.hpp"
#include "walls/building.hpp"

namespace stringcourse {

/// Courses of one wall that change alike, as far as they are still to be laid.
struct CourseChange {
  std::int32_t wall = 0;
  std::vector<int> courses;             // rising
  std::vector<std::string> units;       // what each changed unit was and is: "unit 7: full, now a cut of 11 5/8\""
  int marks_moved = 0;                  // block ends whose mark is another, by the tape's steps
  Length farthest;                      // of them, towards the wall's end above zero
  friend bool operator==(const CourseChange&, const CourseChange&) = default;
};

struct AsBuilt {
  Job job;  // the user's, with what was found in the place of what was wanted, its bars over their dowels
  Building building;
  Layout layout;
  Building planned;           // as it was before anything was found
  Layout printed;
  std::vector<CourseChange> changes;    // by wall, then course; nothing that is laid
  std::vector<std::uint32_t> pieces;    // changed, into layout.pieces, rising
  bool laid_kept = true;      // no course laid has to come up
};

struct Resolved {
  std::optional<AsBuilt> as_built;  // none where nothing found counts, or where it cannot be built so
  std::vector<Finding> findings;
};

/// `printed` is the layout of the job as planned. The layout of the answer keeps corners as printed; the courses laid
/// stand just where they were printed (at a jamb found elsewhere too), and the bars over their dowels.
[[nodiscard]] Resolved solve_from_here(const Job& job, const Building& planned, const Layout& printed, bond::PanelMemo& memo);

/// "AB, courses 2, 4: 3 units differ; 9 marks move, up to 3/8\" toward B".
[[nodiscard]] std::string change_text(const Building& building, const CourseChange& change);

}  // namespace stringcourse
