#pragma once
// The answer as far as the first screen and a hand that drags need it: where every unit lies. Whoever needs no more
// links no more.
#include <expected>

#include "answer/answer.hpp"
#include "bond/panel_memo.hpp"
#include "job/job.hpp"
#include "job/trouble.hpp"

namespace stringcourse {

/// Building and layout, as solve() finds them without a search and without looking at the logs; what they take
/// (Answer::tallies, saw_list, lintels, cleanouts), and the findings of both. All other members are as in a new
/// Answer: document/brief_json.hpp writes none of them. `like`: see bond::lay_out_like; null: as is easily found.
/// `memo`: of panels laid without a search; it changes the time, never the answer.
[[nodiscard]] std::expected<Answer, Refusals> brief_answer(const Job& job, const Layout* like, bond::PanelMemo& memo);

}  // namespace stringcourse
