#include "proof/check.hpp"

#include <algorithm>
#include <set>

#include "proof/bars.hpp"
#include "proof/claim.hpp"
#include "proof/cleanouts.hpp"
#include "proof/conceded.hpp"
#include "proof/corners.hpp"
#include "proof/facts.hpp"
#include "proof/kinds.hpp"
#include "proof/laps.hpp"
#include "proof/lintels.hpp"
#include "proof/rows.hpp"
#include "proof/runs.hpp"

namespace stringcourse::proof {
namespace {

/// Terms 2, 3, 6 and 7, straight from the pieces.
Cost count_pieces(const Building& b, const Facts& facts) {
  Cost cost;
  for (const WallFacts& wall : facts.walls)
    for (const CourseFacts& course : wall.courses)
      for (const RunFacts& run : course.runs) {
        const Series& series = b.series_of(b.walls[static_cast<std::size_t>(run.run->wall)]);
        if ((wall.stopped && run.pieces.empty()) || is_bare(series, run)) continue;
        const std::int64_t off = (run.slack - series.joint * run.joints).in_nanometres();
        cost.joint_deviation += off < 0 ? -off : off;
        cost.units += static_cast<std::int64_t>(run.pieces.size());
        for (const Piece* piece : run.pieces) {
          if (piece->cut != CutEnd::None) ++cost.cuts;
          if (piece->length < series.half) ++cost.short_pieces;
        }
      }
  return cost;
}

std::int64_t count_cut_lengths(const Layout& layout) {
  std::set<Length> lengths;
  for (const Piece& piece : layout.pieces)
    if (piece.cut != CutEnd::None) lengths.insert(piece.length);
  return static_cast<std::int64_t>(lengths.size());
}

struct Term {
  const char* name;
  std::int64_t stated, counted;
};

Violations compare_cost(const Layout& layout, const Cost& cost, std::int64_t cut_lengths) {
  const Cost& stated = layout.cost;
  const Term terms[] = {{"short laps", stated.short_laps, cost.short_laps},
                        {"cuts", stated.cuts, cost.cuts},
                        {"short pieces", stated.short_pieces, cost.short_pieces},
                        {"shifted joints", stated.shifted_joints, cost.shifted_joints},
                        {"extra bars", stated.extra_bars, cost.extra_bars},
                        {"joint deviation", stated.joint_deviation, cost.joint_deviation},
                        {"units", stated.units, cost.units},
                        {"conceded", stated.conceded, cost.conceded},
                        {"cut lengths", layout.cut_lengths, cut_lengths}};
  Violations found;
  for (const Term& term : terms)
    if (term.stated != term.counted)
      found.push_back(violation(kCost, term.name,
                                std::to_string(term.stated) + " stated, " + std::to_string(term.counted) + " counted"));
  if (layout.proven && layout.least_possible != layout.cost)
    found.push_back(violation(kCost, "bound", "said to be proven least, yet the bound is another cost"));
  return found;
}

}  // namespace

Certificate check(const Job& job, const Building& building, const Layout& layout) {
  Certificate certificate;
  certificate.violations = check_shape(job, building, layout);
  if (!certificate.violations.empty()) return certificate;
  const Facts facts = gather(building, layout);
  Violations found = check_claim(job, building);
  found = joined(std::move(found), check_control_joints(job, building, layout));
  found = joined(std::move(found), check_runs(building, layout, facts));
  found = joined(std::move(found), check_rows(building, layout, facts));
  found = joined(std::move(found), check_numbers(building, facts));
  found = joined(std::move(found), check_kinds(building, facts));
  found = joined(std::move(found), check_corners(building, layout, facts));
  found = joined(std::move(found), check_lintels(building, layout, facts));
  found = joined(std::move(found), check_cleanouts(job, building, layout));
  LapCount laps = check_laps(building, facts);
  BandCount bands = check_bands(building, facts);
  BarCount bars = check_bars(building, layout, facts);
  for (Violations* part : {&laps.violations, &bands.violations, &bars.violations})
    found = joined(std::move(found), std::move(*part));
  found = without_conceded(building, layout, std::move(found));
  certificate.cost = count_pieces(building, facts);
  certificate.cost.short_laps = laps.short_laps;
  certificate.cost.shifted_joints = bands.shifted_joints;
  certificate.cost.extra_bars = bars.extra_bars;
  certificate.cost.conceded = weight_of_conceded(layout);
  certificate.cut_lengths = count_cut_lengths(layout);
  if (layout.stopped.empty())
    found = joined(std::move(found), compare_cost(layout, certificate.cost, certificate.cut_lengths));
  certificate.violations = std::move(found);
  return certificate;
}

}  // namespace stringcourse::proof
