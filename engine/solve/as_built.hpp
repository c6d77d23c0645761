#pragma once
// "Re-solve from here": jambs and corners as they were found, dowels and courses as they stand, and what of the printed
// layout has to change for it.
#include <optional>
#include <string>
#include <vector>

#include "answer/as_built.hpp"
#include "bond/layout.hpp"
#include "bond/panel_memo.hpp"
#include "job/job.hpp"
#include "job/trouble.hpp"
#include "walls/building.hpp"

namespace stringcourse {

/// What was solved anew, and what is otherwise for it.
struct Rebuilt : AsBuilt {
  Building building;
  Layout layout;
};

struct Resolved {
  std::optional<Rebuilt> rebuilt;  // none where nothing found counts, or where it cannot be built so
  std::vector<Finding> findings;
};

/// `printed` is the layout of the job as planned. The layout of the answer keeps corners as printed; the courses laid
/// stand just where they were printed (at a jamb found elsewhere too), and the bars over their dowels.
[[nodiscard]] Resolved solve_from_here(const Job& job, const Building& planned, const Layout& printed,
                                       bond::PanelMemo& memo);

}  // namespace stringcourse
