#include "solve/layout_findings.hpp"

#include <string>
#include <utility>

#include "measure/sorting.hpp"

namespace stringcourse {
namespace {

Finding finding(Code code, Fact says, std::string_view rule, HoldPoint point) {
  return {code, "", std::move(says), std::string(rule), point};
}

/// What a search that did not end leaves open.
std::string_view not_proven(const Layout& layout) {
  const bool least = layout.cost.conceded == layout.least_possible.conceded &&
                     layout.cost.short_laps == layout.least_possible.short_laps &&
                     layout.cost.cuts == layout.least_possible.cuts;
  if (least) return "not-proven-even-joints";
  return layout.cost.conceded > 0 ? "not-proven-conceded" : "not-proven";
}

}  // namespace

std::vector<Finding> layout_findings(const Building& building, const Layout& layout) {
  std::vector<Finding> found;
  if (layout.relaxed_piece) {
    found.push_back(finding("piece-relaxed",
                            fact(layout.proven ? "piece-relaxed" : "piece-relaxed-unproven", {building.least_piece}),
                            "piece-of-job", HoldPoint::Order));
  }
  if (layout.relaxed_bearing)
    found.push_back(finding("cut-under-bearing", fact("cut-under-bearing"), "bearing-units", HoldPoint::Lintels));
  if (layout.cost.short_laps > 0) {
    found.push_back(
        finding("short-laps", fact("short-laps", {layout.cost.short_laps}), "running-bond", HoldPoint::Order));
  }
  if (layout.cost.extra_bars > 0) {
    found.push_back(finding("bars-beyond-spacing", fact("bars-beyond-spacing", {layout.cost.extra_bars}), "bar-spacing",
                            HoldPoint::Pour));
  }
  if (!layout.proven && layout.stopped.empty() && building.laid_to.empty())
    found.push_back(finding("not-proven", fact(not_proven(layout)), "", HoldPoint::Order));
  return found;
}

void sort_findings(std::vector<Finding>& findings) {
  sort_stably(findings, [](const Finding& a, const Finding& b) {
    return a.hold_point != b.hold_point ? a.hold_point < b.hold_point : a.place < b.place;
  });
}

}  // namespace stringcourse
