#include "supply/heads.hpp"

#include <algorithm>

#include "bond/layout_parts.hpp"

namespace stringcourse::supply {
namespace {

/// Blocks between the jambs in one course more: whole ones, the last begun.
std::int64_t blocks_across(const Building& building, const ResolvedOpening& opening) {
  const Length pitch = building.series_of(wall_of(building, opening.wall)).pitch();
  const std::int64_t halves = -((building.joint - opening.width()).whole_multiples(pitch));
  return (halves + 1) / 2;
}

/// A width off the grid of half units ends in a cut.
std::int64_t cuts_across(const Building& building, const ResolvedOpening& opening) {
  const Length pitch = building.series_of(wall_of(building, opening.wall)).pitch();
  return (opening.width() - building.joint).is_multiple_of(pitch) ? 0 : 1;
}

/// Units of the course over a lintel that lie on it.
std::int64_t units_over(const Layout& layout, const ResolvedOpening& opening, const PlacedLintel& placed) {
  const std::int32_t course = opening.lintel->first_course + opening.lintel->courses;
  const Length from = opening.from.distance_from_start() - placed.start_bearing,
               to = opening.to.distance_from_start() + placed.end_bearing;
  std::int64_t count = 0;
  for (const Run& run : bond::runs_in(layout, opening.wall, course)) {
    count += std::ranges::count_if(bond::pieces_of(layout, run), [&](const Piece& piece) {
      return piece.start.nearest_nanometre() < to && bond::far_end(piece).nearest_nanometre() > from;
    });
  }
  return count;
}

void add_cut(OffCourse& head, const Layout& layout, const ResolvedOpening& opening, const Bridged& over) {
  const auto placed = std::ranges::find(layout.lintels, over.opening, &PlacedLintel::opening);
  if (over.lintel < 0 || placed == layout.lintels.end()) return;
  const std::int64_t on = units_over(layout, opening, *placed);
  const auto seats = static_cast<std::int64_t>(over.start.units.size() + over.end.units.size());
  head.choices.push_back({HeadWay::Cut, opening.packing_head, on, seats + on});
}

}  // namespace

bool is_off_course(const Building& building, const ResolvedOpening& opening) {
  return opening.packing_head > (opening.use == OpeningUse::Plain ? Length() : building.joint);
}

std::vector<OffCourse> heads_off_course(const Building& building, const Layout& layout,
                                        const std::vector<Bridged>& bridged) {
  std::vector<OffCourse> heads;
  for (const Bridged& over : bridged) {
    const ResolvedOpening& opening = opening_of(building, over.opening);
    if (!is_off_course(building, opening)) continue;
    OffCourse head{over.opening, opening.asked_height, {}};
    head.choices.push_back({HeadWay::Pack, opening.packing_head});
    head.choices.push_back({HeadWay::Raise, opening.packing_head});
    const bool on_floor = opening.first_course <= 1 && opening.use != OpeningUse::Window;
    if (!on_floor) head.choices.push_back({HeadWay::Sill, opening.packing_head});
    if (opening.last_course > opening.first_course) {
      const Length below = top_of_course(building, opening.last_course - 1) + building.joint;
      head.choices.push_back({HeadWay::Lower, opening.underside + opening.asked_height - below,
                              blocks_across(building, opening), cuts_across(building, opening)});
    }
    add_cut(head, layout, opening, over);
    heads.push_back(std::move(head));
  }
  return heads;
}

}  // namespace stringcourse::supply
