#include "proof/conceded.hpp"

#include <algorithm>

namespace stringcourse::proof {
namespace {

using What = Concession::What;

std::string_view name_of_what(What what) {
  switch (what) {
    case What::Joints: return "joints out of range";
    case What::Bar: return "a bar without a cell";
    case What::BarCells: return "a bar whose cells share too little";
    case What::BarSpacing: return "bars too far apart";
    case What::CutUnderBearing: return "a cut under a bearing";
    case What::ShortLap: return "a lap under a quarter";
    case What::CutFace: return "a cut that shows";
    case What::StackedLap: return "a lap of next to nothing";
    case What::Corner: return "a corner without its unit";
    case What::Bare: break;
  }
  return "a bare run";
}

/// From docs/bond-model.md.
std::int64_t weight_of(What what) {
  switch (what) {
    case What::Joints: return 1;
    case What::Bar:
    case What::BarCells:
    case What::BarSpacing: return 4;
    case What::CutUnderBearing: return 8;
    case What::ShortLap: return 16;
    case What::CutFace: return 32;
    case What::StackedLap: return 64;
    case What::Corner: return 128;
    case What::Bare: break;
  }
  return 1024;
}

}  // namespace

Concession given_up(What what, const Run& run, Length from, Length to, Length amount) {
  return {what, run.wall, run.course, from, to, amount};
}

Concession piece_given_up(What what, const Run& run, const Piece& piece) {
  const Length from = piece.start.nearest_nanometre();
  return given_up(what, run, from, from + piece.length, piece.length);
}

Length widest_on_site(const Series& series) {
  return series.joint + (series.tape == Tape::Inches ? Length::sixteenths(6) : Length::millimetres(10));
}

Length narrowest_on_site(const Series& series) {
  const Length narrower = series.tape == Tape::Inches ? Length::sixteenths(4) : Length::millimetres(6);
  return std::max(series.joint - narrower, Length());
}

bool in_site_tolerance(const Series& series, Length slack, std::int64_t joints) {
  return narrowest_on_site(series) * joints <= slack && slack <= widest_on_site(series) * joints;
}

bool is_bare(const Series& series, const RunFacts& run) {
  if (!run.pieces.empty()) return false;
  const bool one_joint = has_joint(run.run->at_start) && has_joint(run.run->at_end);
  return !one_joint || !in_site_tolerance(series, run.slack, 1);
}

bool gives_up_an_end(const Layout& layout, int wall, int course) {
  return std::ranges::any_of(layout.conceded, [&](const Concession& c) {
    return c.wall == wall && c.course == course &&
           (c.what == What::Corner || c.what == What::Bare || c.what == What::Joints);
  });
}

Violations without_conceded(const Building& building, const Layout& layout, Violations found) {
  std::vector<Concession> listed = layout.conceded;
  Violations left;
  for (Violation& broken : found) {
    const auto known = broken.may_be ? std::ranges::find(listed, *broken.may_be) : listed.end();
    if (known == listed.end()) left.push_back(std::move(broken));
    else listed.erase(known);
  }
  for (const Concession& c : listed) {
    const bool sound = 0 <= c.wall && c.wall < static_cast<std::int32_t>(building.walls.size());
    left.push_back(violation(kConceded, sound ? place_of(building, c.wall, c.course) : "",
                             std::string(name_of_what(c.what)) + " is listed as given up from " +
                                 in_millimetres(c.from) + " to " + in_millimetres(c.to) +
                                 ", and no rule is broken so"));
  }
  return left;
}

std::int64_t weight_of_conceded(const Layout& layout) {
  std::int64_t weight = 0;
  for (const Concession& c : layout.conceded) weight += weight_of(c.what);
  return weight;
}

}  // namespace stringcourse::proof
