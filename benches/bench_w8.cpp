// The bond solver beside a general-purpose solver (CBC) on one wall: 12 courses, 32 ft, one opening, four fixed bars.
// Both get the same panel, in units of 1 in with the joint folded in, and must find its known optimum, 2674.
#include <cstdint>

#include "benches/figure.hpp"
#include "benches/w8_panel.hpp"
#include "bond/search.hpp"
#include "oracle/milp.hpp"

int main() {
  using namespace stringcourse;
  constexpr std::int64_t kOptimum = 2674, kBudget = 20'000'000;
  const bond::Panel panel = benches::w8_panel();
  const double ours = benches::median_seconds(101, [&] {
    const auto solved = bond::solve_panel(panel, kBudget);
    if (!solved || !solved->proven || solved->cost.short_laps != kOptimum) benches::give_up("W8 is not solved to 2674");
  });
  const double theirs = benches::median_seconds(3, [&] {
    const auto solved = oracle::solve_by_milp(panel, oracle::Program::Cbc, {});
    if (solved.outcome != oracle::Outcome::Optimal || solved.cost.short_laps != kOptimum)
      benches::give_up("CBC does not find 2674");
  });
  benches::print_at_least("w8_against_cbc", theirs / ours, "times", 1000);
}
