#pragma once
// The certificate checker: reads a layout as a stranger would, and says which rules of the bond model it breaks and
// what it costs. It shares plain data with the engine (job, building, layout, catalogue figures) and no code of the
// folders that made them. Slow and obvious on purpose; its work grows about in proportion to the number of pieces.
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "bond/layout.hpp"
#include "job/job.hpp"
#include "walls/building.hpp"

namespace stringcourse::proof {

/// One broken rule: which (see rules.hpp), where ("AB course 3"), and what is wrong, with its values.
struct Violation {
  std::string rule;
  std::string where;
  std::string text;
  std::optional<Concession> may_be = {};  // what the layout may list to have given it up
  friend bool operator==(const Violation&, const Violation&) = default;
};

struct Certificate {
  std::vector<Violation> violations;  // empty: every hard rule holds that is not listed as given up, all that is listed
                                      // is really broken, and the stated cost is the true one
  Cost cost;                          // re-derived from the placed pieces; zero where the layout cannot be read
  std::int64_t cut_lengths = 0;       // different lengths among saw cuts (term 8)
};

/// Re-derives every hard rule and the cost of `layout` from the placed pieces and the user's job alone. `building` is a
/// claim: what follows from the job is computed again and compared, what was chosen is checked for lawfulness.
/// Walls with a stopped stretch are checked run by run only, and the cost of such a layout is not compared.
Certificate check(const Job& job, const Building& building, const Layout& layout);

}  // namespace stringcourse::proof
