#include "solve/brief.hpp"

#include <algorithm>
#include <iterator>
#include <utility>

#include "bond/assemble.hpp"
#include "solve/concession_findings.hpp"
#include "solve/layout_findings.hpp"
#include "walls/resolve.hpp"

namespace stringcourse {
namespace {

constexpr std::int64_t kNoSearch = 0;

void say(Answer& answer) {
  answer.findings = answer.building.findings;
  std::ranges::copy(layout_findings(answer.building, answer.layout), std::back_inserter(answer.findings));
  std::ranges::copy(concession_findings(answer.building, answer.layout), std::back_inserter(answer.findings));
  sort_findings(answer.findings);
}

}  // namespace

std::expected<Answer, Refusals> brief_answer(const Job& job, const Layout* like, bond::PanelMemo& memo) {
  std::expected<Building, Refusals> building = resolve(job);
  if (!building) return std::unexpected(std::move(building.error()));
  Answer answer;
  answer.job = job;
  answer.building = std::move(*building);
  memo.begin_job(kNoSearch);
  answer.layout =
      like == nullptr ? bond::lay_out(answer.building, memo) : bond::lay_out_like(*like, answer.building, memo);
  if (memo.was_short() && memo.was_used_before()) {  // what was known before would show
    bond::PanelMemo empty(kNoSearch);
    return brief_answer(job, like, empty);
  }
  tally(answer);
  say(answer);
  return answer;
}

}  // namespace stringcourse
