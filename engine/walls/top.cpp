// Plate, bolts and trusses as the job asks for them.
#include "walls/top.hpp"

#include <algorithm>

#include "catalogue/rules.hpp"
#include "walls/draft.hpp"
#include "walls/places.hpp"

namespace stringcourse::walls {
namespace {

constexpr Length kLeastSpacing = Length::inches(4);  // this program's limit

/// Spacings so small that lists of them are of no use to anybody are a slip of units.
bool is_wide_enough(Draft& draft, Length asked, std::string place) {
  if (asked >= kLeastSpacing) return true;
  refuse(draft, "out-of-range", std::move(place), fact("top-spacing", {as_asked(asked), marked(kLeastSpacing)}),
         fact("top-spacing-more", {at_least(kLeastSpacing)}));
  return false;
}

/// The walls that carry a plate: those named, or every side.
std::vector<int> plate_walls(Draft& draft) {
  std::vector<int> walls;
  const std::vector<std::string>& named = draft.job.top->plate_on;
  for (std::size_t i = 0; i < named.size(); ++i) {
    if (const auto wall = named_wall(draft, named[i], pointer("/top/plate_on", i))) walls.push_back(*wall);
  }
  for (int wall = 0; named.empty() && wall < static_cast<int>(draft.building.walls.size()); ++wall) {
    if (!wall_at(draft, wall).interior) walls.push_back(wall);
  }
  std::ranges::sort(walls);
  return walls;
}

BoltRules bolt_rules(Draft& draft, const Bolts& asked) {
  const Length least = asked.end_least.value_or(Length());
  if (least > asked.end_most)
    refuse(draft, "bolt-ends", "/top/bolts/end_least", fact("bolt-ends", {as_asked(least), as_asked(asked.end_most)}),
           fact("bolt-ends-swap"));
  return {asked.size,
          asked.spacing,
          least,
          asked.end_most,
          asked.clear_of_bars.value_or(Length()),
          asked.grout_round.value_or(limit_of("bolt-grout", draft.job.tape)),
          !asked.grout_round.has_value()};
}

/// Trusses are measured on the plate, not on the bond: their places are actual, whatever the job's text says.
std::optional<ResolvedTrusses> trusses_at(Draft& draft, std::size_t index) {
  const Trusses& asked = draft.job.top->trusses[index];
  const std::string place = pointer("/top/trusses", index);
  const auto wall = named_wall(draft, asked.on, place + "/on");
  if (!is_wide_enough(draft, asked.spacing, place + "/spacing")) return std::nullopt;
  if (!wall) return std::nullopt;
  Place first = asked.place;
  first.at.basis = Basis::Actual;
  const auto at = placed_line(draft, *wall, first, place + "/place");
  if (!at) return std::nullopt;
  const Wall& named = wall_at(draft, *wall);
  const Length place_of = at->distance_from_start(), past = std::max(-place_of, place_of - named.actual);
  if (past > Length())
    find(draft, "trusses-beyond-wall", place + "/place",
         fact("trusses-beyond-wall", {named.name, as_asked(asked.place.at.length), marked(past), marked(named.actual)}),
         {}, HoldPoint::Top);
  const bool from_start = draft.start_names[static_cast<std::size_t>(*wall)].contains(first.from);
  return ResolvedTrusses{*wall, *at, from_start ? asked.spacing : -asked.spacing, asked.clear, place};
}

}  // namespace

void resolve_top(Draft& draft) {
  if (!draft.job.top) return;
  ResolvedTop top;
  top.plate = draft.job.top->plate;
  top.plate_on = plate_walls(draft);
  if (draft.job.top->plate_piece && is_wide_enough(draft, *draft.job.top->plate_piece, "/top/plate_piece"))
    top.plate_piece = *draft.job.top->plate_piece;
  for (std::size_t i = 0; i < draft.job.top->trusses.size(); ++i) {
    if (auto trusses = trusses_at(draft, i)) top.trusses.push_back(std::move(*trusses));
  }
  if (!draft.job.top->bolts || !is_wide_enough(draft, draft.job.top->bolts->spacing, "/top/bolts/spacing")) return;
  top.bolts = bolt_rules(draft, *draft.job.top->bolts);
  draft.building.top = std::move(top);
}

}  // namespace stringcourse::walls
