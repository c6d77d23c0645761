#include "certify.hpp"

#include "proof/bar_cutting.hpp"
#include "proof/bar_pieces.hpp"
#include "proof/bolts.hpp"
#include "proof/check.hpp"
#include "proof/grout.hpp"
#include "proof/inspection.hpp"
#include "proof/order.hpp"
#include "proof/pour_card.hpp"
#include "proof/programme.hpp"
#include "proof/site.hpp"
#include "proof/wires.hpp"

namespace stringcourse::property {
namespace {

constexpr std::size_t kShownViolations = 6;

std::string faults_of_refusals(const Refusals& refusals) {
  std::string faults;
  if (refusals.empty()) faults += "refused without a refusal\n";
  for (const Refusal& refusal : refusals.shown) {
    if (refusal.place.empty() || refusal.reason.empty() || refusal.remedy.empty())
      faults += "a refusal says too little: " + std::string(refusal.code) + "\n";
  }
  return faults;
}

}  // namespace

std::string faults_of(const Answer& answer) {
  std::string faults;
  const Layout& layout = answer.layout;
  const Job& job = answer.as_built ? answer.as_built->job : answer.job;
  const proof::Certificate certificate = proof::check(job, answer.building, layout);
  std::size_t shown = 0;
  for (const proof::Violation& v : certificate.violations) {
    if (++shown <= kShownViolations) faults += v.rule + " | " + v.where + " | " + v.text + "\n";
  }
  for (const proof::Violations& list :
       {proof::check_grout(job, answer.building, layout, answer.tallies.grout),
        proof::check_inspection(job, answer.building, layout, answer.inspection),
        proof::check_bridged(job, answer.building, layout, answer.bridged),
        proof::check_pour_cards(answer.building, layout, answer.tallies.grout, answer.pour_cards),
        proof::check_order(job, answer.building, layout, answer.order),
        proof::check_programme(job, answer.building, layout, answer.tallies.grout, answer.bridged, answer.pour_cards,
                               answer.programme),
        proof::check_site(answer), proof::check_wires(job, answer.building, layout, answer.wires),
        proof::check_ties(job, answer.building, layout, answer.ties),
        proof::check_bolts(job, answer.building, layout, answer.plates)}) {
    for (const proof::Violation& v : list) {
      if (++shown <= kShownViolations) faults += v.rule + " | " + v.where + " | " + v.text + "\n";
    }
  }
  for (const proof::Violation& v : proof::check_bar_pieces(job, answer.building, layout, answer.bar_pieces)) {
    if (++shown <= kShownViolations) faults += v.rule + " | " + v.where + " | " + v.text + "\n";
  }
  for (const proof::Violation& v : proof::check_bar_cutting(job, answer.bar_pieces, answer.bars_from_stock)) {
    if (answer.bars_from_stock.empty()) break;  // not asked for
    if (++shown <= kShownViolations) faults += v.rule + " | " + v.where + " | " + v.text + "\n";
  }
  if (shown > kShownViolations) faults += "and " + std::to_string(shown - kShownViolations) + " more\n";
  if (layout.stopped.empty() && !(certificate.cost == layout.cost)) faults += "cost differs\n";
  if (layout.proven && !(layout.least_possible == layout.cost)) faults += "proven, but the bound is not the cost\n";
  if (layout.proven && !layout.stopped.empty()) faults += "proven, but a stretch is stopped\n";
  for (const Stopped& stopped : layout.stopped) {
    if (stopped.rule.empty() || stopped.remedy.empty()) faults += "a stopped stretch says no rule or no remedy\n";
  }
  for (std::size_t i = 1; i < answer.findings.size(); ++i) {
    if (answer.findings[i].hold_point < answer.findings[i - 1].hold_point) faults += "findings out of order\n";
  }
  return faults;
}

Verdict certify(const Job& job, std::int64_t search_budget) {
  Wishes wishes;
  wishes.search_budget = search_budget;
  const auto answer = solve(job, wishes);
  if (!answer) return {Outcome::Refused, faults_of_refusals(answer.error()), false};
  return {answer->layout.stopped.empty() ? Outcome::Solved : Outcome::Stopped, faults_of(*answer),
          answer->layout.proven};
}

}  // namespace stringcourse::property
