#include "supply/shores.hpp"

#include <algorithm>

#include "bond/layout_parts.hpp"

namespace stringcourse::supply {
namespace {

/// Units of one course of a wall that lie between two places along it.
Seat seat_between(const Layout& layout, int wall, std::int32_t course, Length from, Length to) {
  Seat seat{course};
  for (const Run& run : bond::runs_in(layout, wall, course)) {
    for (const Piece& piece : bond::pieces_of(layout, run)) {
      const bool under =
          piece.start.nearest_nanometre() < to && bond::far_end(piece).nearest_nanometre() > from && from < to;
      if (under) seat.units.push_back(piece.number);
    }
  }
  return seat;
}

void add_beams(Bridged& over, const Building& building, const ResolvedOpening& opening) {
  const std::int32_t top = opening.last_course + over.courses;
  for (const Course& course : building.courses) {
    if (!course.bond_beam) continue;
    const bool cut = opening.first_course <= course.number && course.number <= opening.last_course;
    if (cut) over.beams_cut.push_back(course.number);
    else if (opening.last_course < course.number && course.number <= top) over.beams_in.push_back(course.number);
    else if (course.number > top && over.beam_over == 0) over.beam_over = course.number;
  }
}

void add_lintel(Bridged& over, const Layout& layout, const ResolvedOpening& opening, const LintelAsLaid& lintel) {
  const Length from = opening.from.distance_from_start(), to = opening.to.distance_from_start();
  const std::int32_t under = opening.lintel->first_course - 1;
  over.start = seat_between(layout, opening.wall, under, from - lintel.start.bearing, from);
  over.end = seat_between(layout, opening.wall, under, to, to + lintel.end.bearing);
  over.shored = lintel.soffit != Soffit::OnePiece;
  const auto& spacing = opening.lintel->shore_spacing;
  if (over.shored && spacing) over.shores = shores_under(opening.width(), *spacing);
}

}  // namespace

std::int64_t shores_under(Length span, Length spacing) {
  return (span + spacing - Length::nanometres(1)).whole_multiples(spacing) + 1;
}

std::vector<Bridged> bridged(const Building& building, const Layout& layout, const std::vector<LintelAsLaid>& lintels) {
  std::vector<Bridged> all;
  const Length bearing = foot_of_course(building, 1);
  for (std::size_t index = 0; index < building.openings.size(); ++index) {
    const ResolvedOpening& opening = building.openings[index];
    Bridged over;
    over.opening = static_cast<std::int32_t>(index);
    over.over_foot = opening.height(), over.over_bearing = opening.soffit - bearing;
    if (opening.lintel) over.first_course = opening.lintel->first_course, over.courses = opening.lintel->courses;
    const auto placed = std::ranges::find(lintels, over.opening, &LintelAsLaid::opening);
    if (placed != lintels.end() && opening.lintel) {
      over.lintel = static_cast<std::int32_t>(placed - lintels.begin());
      add_lintel(over, layout, opening, *placed);
    }
    add_beams(over, building, opening);
    all.push_back(std::move(over));
  }
  return all;
}

}  // namespace stringcourse::supply
