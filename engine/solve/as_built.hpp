#pragma once
// "Re-solve from here": jambs and corners as they were found to stand, courses as they are laid, and what of the printed
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

/// Courses of one wall that change alike.
struct CourseChange {
  std::int32_t wall = 0;
  std::vector<int> courses;             // rising
  std::vector<std::string> units;       // what each changed unit was and is: "unit 7: full, now a cut of 11 5/8\""
  int marks_moved = 0;                  // block ends whose mark is another, by the tape's steps
  Length farthest;                      // of them, towards the wall's end above zero
  friend bool operator==(const CourseChange&, const CourseChange&) = default;
};

struct AsBuilt {
  Job job;                    // the user's, with what was found in the place of what was wanted, and its bars where they stand
  Building building;
  Layout layout, printed;
  std::vector<CourseChange> changes;    // by wall, then course
  std::vector<std::uint32_t> pieces;    // changed, into layout.pieces, rising
  bool laid_kept = true;      // the courses laid keep their very pieces
};

struct Resolved {
  std::optional<AsBuilt> as_built;  // none where nothing found counts, or where it cannot be built so
  std::vector<Finding> findings;
};

/// What was found farther than this from its plan is questioned and not applied, unless it is read twice alike.
inline constexpr Length kFoundFar = Length::inches(2);

/// `printed` is the layout of the job as planned. The layout of the answer keeps corners as printed.
[[nodiscard]] Resolved solve_from_here(const Job& job, const Building& planned, const Layout& printed, bond::PanelMemo& memo);

/// "AB, courses 2, 4: 3 units differ; 9 marks move, up to 3/8\" toward B".
[[nodiscard]] std::string change_text(const Building& building, const CourseChange& change);

}  // namespace stringcourse
