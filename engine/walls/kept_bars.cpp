// Bars at dowels that stand already and are kept.
#include <algorithm>
#include <utility>

#include "job/strikes.hpp"
#include "job/words.hpp"
#include "walls/fixed_bars.hpp"

namespace stringcourse::walls {
namespace {

/// A dowel no farther than this from a bar is that bar's. SOURCE: TMS 602, placing of bars along a wall (second-hand).
constexpr Length kSameBar = Length::inches(2);

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

/// The bar that a dowel here is: the one whose cell it is in, or within the tolerance of it; null: one of its own. A bar
/// that has its dowel is no other's.
FixedBar* bar_at(Draft& draft, const BarSet& bars, int wall, Position at) {
  std::vector<FixedBar>& fixed = draft.building.fixed_bars;
  const OwnCell* cell = own_cell_at(bars, wall, at);
  if (cell && fixed[cell->bar].reason != BarReason::Cast) return &fixed[cell->bar];
  const auto near = std::ranges::find_if(fixed, [&](const FixedBar& bar) {
    return bar.wall == wall && bar.corner < 0 && bar.reason != BarReason::Cast && magnitude(bar.centre - at) <= kSameBar;
  });
  return near == fixed.end() ? nullptr : &*near;
}

/// A dowel that is kept already, read a second time: two do not stand within the thickness of one.
bool is_kept_already(const Draft& draft, int wall, Position at) {
  return std::ranges::any_of(draft.building.fixed_bars, [&](const FixedBar& bar) {
    return bar.wall == wall && bar.reason == BarReason::Cast && magnitude(bar.centre - at) < draft.building.bars->diameter;
  });
}

void find_moved(Draft& draft, const FixedBar& bar, const std::string& dowel, Position at) {
  find(draft, "dimensioned-bar-moved", bar.place,
       joined({"The bar dimensioned ", say(draft, bar.centre.distance_from_start()), " from ", wall_at(draft, bar.wall).start_name, " on ",
               wall_at(draft, bar.wall).name, " is set at the dowel ", quoted(dowel), ", which is kept at ", say(draft, at.distance_from_start()),
               ": ", say(draft, magnitude(at - bar.centre)), " off. One cell, one bar: dimension it there, or leave the dowel out of those kept."}),
       {}, HoldPoint::FirstCourse);
}

void find_unplaced(Draft& draft, const std::string& place, std::string text) {
  find(draft, "kept-dowel-not-placed", place, std::move(text), {}, HoldPoint::FirstCourse);
}

/// A dowel in a corner's cell is the corner's, where one is asked for there; its bar stays in the middle of the cell.
void keep_in_corner(Draft& draft, FixedBar bar, const std::string& dowel) {
  if (const FixedBar* own = bar_of_corner(draft, bar.corner)) {
    const Length along = seen_from(draft.building, *own, bar.wall).along;
    const Length off = magnitude(bar.centre.distance_from_start() - along);
    if (off == Length()) return;
    find_unplaced(draft, bar.place,
                  joined({"The dowel ", quoted(dowel), " stands ", say(draft, off), " from the bar of corner ",
                          draft.building.corners[static_cast<std::size_t>(bar.corner)].name,
                          ", in its cell: the bar stays where the corner units hold it."}));
    return;
  }
  if (grout_left(draft, bar) >= draft.building.bars->clearance) {
    draft.building.fixed_bars.push_back(bar);
    return;
  }
  find_unplaced(draft, bar.place, joined({"The dowel ", quoted(dowel), " lacks its grout in the corner units: it is not kept."}));
}

/// Beside its jamb or joint a dowel takes the place of the bar there.
void keep(Draft& draft, const BarSet& bars, const std::vector<bool>& readings_standing, std::size_t index) {
  const std::string place = pointer("/steel/kept_dowels", index), &id = draft.job.steel.kept_dowels[index];
  const DowelReading* dowel = dowel_read(draft.job, readings_standing, id);
  const auto at = dowel ? place_of(draft, *dowel) : std::nullopt;
  const bool stands = at && opening_over(draft, at->first, at->second) < 0 && is_on_masonry(draft, at->first, at->second) &&
                      draft.building.series_of(wall_at(draft, at->first)).grouts;
  if (!stands) {
    find_unplaced(draft, place, dowel ? joined({"The dowel ", quoted(id), " was not found where a bar of a wall may stand: it is not kept."})
                                      : joined({"No reading ", quoted(id), " of a dowel counts: nothing is kept for it."}));
    return;
  }
  FixedBar bar{at->first, at->second, BarReason::Cast, -1, -1, place, {}};
  settle_in_wall(draft, bar);
  if (bar.corner >= 0) return keep_in_corner(draft, bar, id);
  if (is_kept_already(draft, at->first, at->second)) {
    find_unplaced(draft, place, joined({"The dowel ", quoted(id), " stands within a bar's thickness of another that is kept: it is taken for that one."}));
    return;
  }
  FixedBar* same = bar_at(draft, bars, at->first, at->second);
  if (same == nullptr) {
    draft.building.fixed_bars.push_back(bar);
    return;
  }
  if (same->corner >= 0) return;
  if (same->reason == BarReason::Dimensioned && same->centre != at->second) find_moved(draft, FixedBar(*same), id, at->second);
  same->centre = at->second, same->reason = BarReason::Cast;
}

}  // namespace

void keep_dowels(Draft& draft, const BarSet& bars) {
  if (!draft.building.bars) return;
  const std::vector<bool> standing = entries_standing(draft.job.readings);
  for (std::size_t i = 0; i < draft.job.steel.kept_dowels.size(); ++i) keep(draft, bars, standing, i);
}

}  // namespace stringcourse::walls
