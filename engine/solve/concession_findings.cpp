#include "solve/concession_findings.hpp"

#include <algorithm>
#include <array>
#include <string>

namespace stringcourse {
namespace {

using What = Concession::What;

constexpr std::size_t kShownPlaces = 6;  // the answer lists them all

/// How one kind of concession is told: the finding's code is its sentence too.
struct Telling {
  What what;
  Code code;
  std::string_view rule;
  HoldPoint point;
};

constexpr std::array kTellings{
    Telling{What::Joints, "conceded-joints", "joint-range", HoldPoint::Order},
    Telling{What::Bar, "conceded-bar", "bar-in-cell", HoldPoint::Pour},
    Telling{What::BarCells, "conceded-bar-cells", "grout-space", HoldPoint::Pour},
    Telling{What::BarSpacing, "conceded-bar-spacing", "bar-spacing", HoldPoint::Pour},
    Telling{What::CutUnderBearing, "conceded-bearing", "bearing-units", HoldPoint::Lintels},
    Telling{What::ShortLap, "conceded-lap", "running-bond", HoldPoint::Order},
    Telling{What::CutFace, "conceded-face", "factory-end", HoldPoint::Order},
    Telling{What::StackedLap, "conceded-stack", "running-bond", HoldPoint::Order},
    Telling{What::Corner, "conceded-corner", "corner-unit", HoldPoint::Order},
    Telling{What::Bare, "bare-stretch", "piece-of-job", HoldPoint::Order},
};

const Telling& telling_of(What what) { return *std::ranges::find(kTellings, what, &Telling::what); }

/// "course 3 from 4'-0" to 5'-4" (1/2")".
Fact place_said(const Concession& c) {
  const bool spaced = c.what == What::BarSpacing;
  if (c.from == c.to) return spaced ? fact("given-up-at", {c.from}) : fact("given-up-at-course", {c.from, c.course});
  if (spaced) return fact("given-up-from-to", {c.from, c.to, c.amount});
  if (c.what == What::Bare) return fact("given-up-bare", {c.from, c.to, c.course});
  return fact("given-up-from-to-course", {c.from, c.to, c.amount, c.course});
}

/// As many places as are shown.
FactValue places_said(const std::vector<Concession>& alike) {
  std::vector<Fact> places;
  for (const Concession& c : alike) {
    if (places.size() < kShownPlaces) places.push_back(place_said(c));
  }
  if (alike.size() > kShownPlaces) places.push_back(fact("and-more", {alike.size() - kShownPlaces}));
  return listed(FactValue::Kind::Semicolons, places);
}

/// A one-piece lintel of this wall that is asked to bear a little more than a half unit leaves too little beside it.
void add_bearing_remedies(std::vector<Fact>& all, const Building& building, std::int32_t wall) {
  const Series& series = building.series_of(building.walls[static_cast<std::size_t>(wall)]);
  for (const ResolvedOpening& opening : building.openings) {
    if (opening.wall != wall || !opening.lintel || opening.lintel->make != LintelMake::OnePiece) continue;
    const Length over = opening.lintel->least_bearing - series.half;
    if (over <= Length() || over > series.joint) continue;
    all.push_back(fact("ask-half-unit-bearing", {series.half, opening.name}));
  }
}

Finding concession_finding(const Building& building, const std::vector<Concession>& alike) {
  const Concession& first = alike.front();
  const Telling& telling = telling_of(first.what);
  const Wall& wall = building.walls[static_cast<std::size_t>(first.wall)];
  std::vector<Fact> all{fact(telling.code, {wall.name, places_said(alike), wall.start_name})};
  add_bearing_remedies(all, building, first.wall);
  return {telling.code, wall.place, sentences(std::move(all)), std::string(telling.rule), telling.point};
}

}  // namespace

std::optional<What> conceded_in(const Finding& finding) {
  const auto telling = std::ranges::find(kTellings, finding.code, &Telling::code);
  if (telling == kTellings.end()) return std::nullopt;
  return telling->what;
}

std::vector<Finding> concession_findings(const Building& building, const Layout& layout) {
  std::vector<Finding> found;
  for (std::int32_t wall = 0; wall < static_cast<std::int32_t>(building.walls.size()); ++wall) {
    for (const Telling& telling : kTellings) {
      std::vector<Concession> alike;
      for (const Concession& c : layout.conceded) {
        if (c.wall == wall && c.what == telling.what) alike.push_back(c);
      }
      if (!alike.empty()) found.push_back(concession_finding(building, alike));
    }
  }
  return found;
}

}  // namespace stringcourse
