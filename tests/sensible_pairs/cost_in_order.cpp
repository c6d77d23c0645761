#include "cost_in_order.hpp"

#include <algorithm>

namespace stringcourse::property {
namespace {

/// Two for each whole half unit by which a one-piece lintel is longer than its bearings must be, three for each half
/// unit begun by which its two ends differ: an end that differs is worth a half unit more of length, not two.
std::int64_t lintels_of(const Answer& answer) {
  std::int64_t sum = 0;
  for (const PlacedLintel& placed : answer.layout.lintels) {
    const ResolvedOpening& opening = answer.building.openings[static_cast<std::size_t>(placed.opening)];
    if (opening.lintel->make != LintelMake::OnePiece) continue;
    const Wall& wall = answer.building.walls[static_cast<std::size_t>(opening.wall)];
    const std::int64_t pitch = answer.building.series_of(wall).pitch().in_nanometres();
    const std::int64_t start = placed.start_bearing.in_nanometres(), end = placed.end_bearing.in_nanometres();
    const std::int64_t more = start + end - 2 * opening.lintel->least_bearing.in_nanometres();
    const std::int64_t apart = std::max(start, end) - std::min(start, end);
    sum += 2 * (more / pitch) + 3 * ((apart + pitch - 1) / pitch);
  }
  return sum;
}

FirstTerms first_of(const Cost& cost, std::size_t stopped) {
  return {static_cast<std::int64_t>(stopped), cost.conceded, cost.short_laps, cost.cuts, cost.short_pieces};
}

}  // namespace

FirstTerms first_terms(const Layout& layout) { return first_of(layout.cost, layout.stopped.size()); }
FirstTerms least_first_terms(const Layout& layout) { return first_of(layout.least_possible, 0); }

RulesAndFirstTerms rules_and_first_terms(const Layout& layout) {
  const FirstTerms first = first_terms(layout);
  const std::int64_t relaxed = (layout.relaxed_piece ? 1 : 0) + (layout.relaxed_bearing ? 1 : 0);
  return {first[0], first[1], relaxed, first[2], first[3], first[4]};
}

CostInOrder cost_in_order(const Answer& answer) {
  const Cost& cost = answer.layout.cost;
  CostInOrder terms{};
  std::ranges::copy(first_terms(answer.layout), terms.begin());
  const std::array rest{lintels_of(answer), cost.shifted_joints, cost.extra_bars, cost.joint_deviation, cost.units};
  std::ranges::copy(rest, terms.begin() + std::tuple_size_v<FirstTerms>);
  return terms;
}

}  // namespace stringcourse::property
