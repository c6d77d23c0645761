// Bars at dowels that stand already and are kept.
#include <algorithm>
#include <utility>

#include "catalogue/rules.hpp"
#include "job/strikes.hpp"
#include "walls/fixed_bars.hpp"

namespace stringcourse::walls {
namespace {

/// The dowel of this id in the log, if it stands there (job/strikes.hpp).
const DowelReading* dowel_read(const Job& job, const std::vector<bool>& stands, std::string_view id) {
  const DowelReading* found = nullptr;
  for (std::size_t k = 0; k < job.readings.size(); ++k) {
    const Reading& entry = job.readings[k];
    if (entry.dowel && entry.id == id && stands[k]) found = &*entry.dowel;
  }
  return found;
}

/// Its place along its wall; none for a wall or corner that the building does not have.
std::optional<std::pair<int, Position>> place_of(const Draft& draft, const DowelReading& dowel) {
  const auto named = draft.wall_by_name.find(dowel.on);
  if (named == draft.wall_by_name.end()) return std::nullopt;
  const Wall& wall = wall_at(draft, named->second);
  const bool from_end = dowel.from && *dowel.from != wall.start_name;
  if (from_end && *dowel.from != wall.end_name) return std::nullopt;
  return std::pair{named->second, Position::from_start(from_end ? wall.actual - dowel.at : dowel.at)};
}

/// The bar that a dowel here is: the one whose cell it is in, or whose place along the wall it keeps (rule
/// "bar-place"); null: one of its own. A bar that has its dowel is no other's.
FixedBar* bar_at(Draft& draft, const BarSet& bars, int wall, Position at) {
  std::vector<FixedBar>& fixed = draft.building.fixed_bars;
  const OwnCell* cell = own_cell_at(bars, wall, at);
  if (cell && fixed[cell->bar].reason != BarReason::Cast) return &fixed[cell->bar];
  const Length within = limit_of("bar-place", draft.job.tape);
  const auto near = std::ranges::find_if(fixed, [&](const FixedBar& bar) {
    return bar.wall == wall && bar.corner < 0 && bar.reason != BarReason::Cast && magnitude(bar.centre - at) <= within;
  });
  return near == fixed.end() ? nullptr : &*near;
}

/// A dowel that is kept already, read a second time: two do not stand within the thickness of one.
bool is_kept_already(const Draft& draft, int wall, Position at) {
  return std::ranges::any_of(draft.building.fixed_bars, [&](const FixedBar& bar) {
    return bar.wall == wall && bar.reason == BarReason::Cast &&
           magnitude(bar.centre - at) < draft.building.bars->diameter;
  });
}

void find_moved(Draft& draft, const FixedBar& bar, const std::string& dowel, Position at) {
  find(draft, "dimensioned-bar-moved", bar.place,
       fact("dimensioned-bar-moved", {marked(bar.centre.distance_from_start()), wall_at(draft, bar.wall).start_name,
                                      wall_at(draft, bar.wall).name, FactValue::typed(dowel),
                                      marked(at.distance_from_start()), marked(magnitude(at - bar.centre))}),
       {}, HoldPoint::FirstCourse);
}

void find_unplaced(Draft& draft, const std::string& place, Fact says) {
  find(draft, "kept-dowel-not-placed", place, std::move(says), {}, HoldPoint::FirstCourse);
}

/// A dowel in a corner's cell is the corner's, where one is asked for there; its bar stays in the middle of the cell.
void keep_in_corner(Draft& draft, FixedBar bar, const std::string& dowel) {
  if (const FixedBar* own = bar_of_corner(draft, bar.corner)) {
    const Length along = bar_seen_from(draft.building, *own, bar.wall).along;
    const Length off = magnitude(bar.centre.distance_from_start() - along);
    if (off == Length()) return;
    find_unplaced(draft, bar.place,
                  fact("dowel-in-corner", {FactValue::typed(dowel), marked(off),
                                           draft.building.corners[static_cast<std::size_t>(bar.corner)].name}));
    return;
  }
  if (grout_left(draft, bar) >= draft.building.bars->clearance) {
    draft.building.fixed_bars.push_back(bar);
    return;
  }
  find_unplaced(draft, bar.place, fact("dowel-without-grout", {FactValue::typed(dowel)}));
}

/// Beside its jamb or joint a dowel takes the place of the bar there.
void keep(Draft& draft, const BarSet& bars, const std::vector<bool>& readings_standing, std::size_t index) {
  const std::string place = pointer("/steel/kept_dowels", index), &id = draft.job.steel.kept_dowels[index];
  const DowelReading* dowel = dowel_read(draft.job, readings_standing, id);
  const auto at = dowel ? place_of(draft, *dowel) : std::nullopt;
  const bool stands = at && opening_over(draft, at->first, at->second) < 0 &&
                      is_on_masonry(draft, at->first, at->second) &&
                      draft.building.series_of(wall_at(draft, at->first)).grouts;
  if (!stands) {
    find_unplaced(draft, place, fact(dowel ? "dowel-off-masonry" : "dowel-not-read", {FactValue::typed(id)}));
    return;
  }
  FixedBar bar{at->first, at->second, BarReason::Cast, -1, -1, place, {}};
  settle_in_wall(draft, bar);
  if (bar.corner >= 0) return keep_in_corner(draft, bar, id);
  if (is_kept_already(draft, at->first, at->second)) {
    find_unplaced(draft, place, fact("dowel-twice", {FactValue::typed(id)}));
    return;
  }
  FixedBar* same = bar_at(draft, bars, at->first, at->second);
  if (same == nullptr) {
    draft.building.fixed_bars.push_back(bar);
    return;
  }
  if (same->corner >= 0) return;
  if (same->reason == BarReason::Dimensioned && same->centre != at->second)
    find_moved(draft, FixedBar(*same), id, at->second);
  same->centre = at->second, same->reason = BarReason::Cast;
}

}  // namespace

void keep_dowels(Draft& draft, const BarSet& bars) {
  if (!draft.building.bars) return;
  const std::vector<bool> standing = entries_standing(draft.job.readings);
  for (std::size_t i = 0; i < draft.job.steel.kept_dowels.size(); ++i) keep(draft, bars, standing, i);
}

}  // namespace stringcourse::walls
