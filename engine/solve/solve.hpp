#pragma once
// The one function: a job becomes an answer. Pure; the same job gives the same answer on every machine.
#include <cstdint>
#include <expected>
#include <functional>

#include "answer/answer.hpp"
#include "job/job.hpp"
#include "job/trouble.hpp"

namespace stringcourse {

namespace bond {
class PanelMemo;
}

struct Wishes {
  bool offers = false;
  bool save_dowels = true;  // look for layouts in which more of the dowels found stand
  bool at_rest = true;      // nothing is being dragged: the laid log is read, the chance and the site are worked out
  std::int64_t search_budget = 400'000;  // expansions for each panel before a proven gap is accepted
  const Layout* like = nullptr;   // corners and junctions as in this layout, where that lays: see bond::lay_out_like
  const Answer* known = nullptr;  // of this search_budget: a job that differs in its logs alone has its layout
  std::function<void(const Layout& layout)> laid = {};  // called once the layout stands, before offers; may be empty
  std::function<bool(double share)> progress = {};      // called now and then; false cancels the offers; may be empty
};

/// Solves a job that was read without refusals. A job whose building cannot be resolved is refused, all refusals at
/// once. A job with a run that no layout fills still has an answer: see Layout::stopped.
[[nodiscard]] std::expected<Answer, Refusals> solve(const Job& job, const Wishes& wishes);

/// The same with what earlier solves left in `memo`, which was made with this wish's search_budget: it changes the
/// time, never the answer. A memo in which offers were looked for also holds what their smaller searches found: not for
/// reuse.
[[nodiscard]] std::expected<Answer, Refusals> solve(const Job& job, const Wishes& wishes, bond::PanelMemo& memo);

}  // namespace stringcourse
