#include "bond/lintel_units.hpp"

#include <algorithm>
#include <utility>

namespace stringcourse::bond {
namespace {

bool is_lintel_course(const ResolvedLintel& lintel, int course) {
  return course >= lintel.first_course && course < lintel.first_course + lintel.courses;
}

bool crosses(const ResolvedOpening& opening, const Run& run) {
  return run.wall == opening.wall && run.start < opening.to.distance_from_start() &&
         run.end > opening.from.distance_from_start();
}

/// (piece's start + `length` + `joints` of the run's joints) less `place`, by its sign: -1, 0 or 1.
int beside(const Run& run, const Piece& piece, Length length, std::int64_t joints, Length place) {
  const int128 m = std::max(run.joints, 1), n = piece.start.denominator;
  const int128 start = static_cast<int128>(piece.start.numerator) * m;
  const int128 along = static_cast<int128>((length - place).in_nanometres()) * n * m +
                       static_cast<int128>(run.slack.in_nanometres()) * n * joints;
  const int128 difference = start + along;
  return difference > 0 ? 1 : difference < 0 ? -1 : 0;
}

}  // namespace

bool in_lintel(const ResolvedOpening& opening, const Run& run, const Piece& piece) {
  if (!opening.lintel || opening.lintel->make != LintelMake::BuiltUp) return false;
  if (!is_lintel_course(*opening.lintel, run.course) || !crosses(opening, run)) return false;
  const Length needed = opening.lintel->least_bearing - kBearingWithin;
  const Length from = opening.from.distance_from_start() - needed, to = opening.to.distance_from_start() + needed;
  // The joint before the piece starts within `to`, the joint behind it ends beyond `from`.
  return beside(run, piece, Length(), -1, to) < 0 && beside(run, piece, piece.length, 1, from) > 0;
}

std::optional<Bearings> bearings_as_laid(const Layout& layout, const ResolvedOpening& opening) {
  std::optional<Bearings> bearings;
  const Length from = opening.from.distance_from_start(), to = opening.to.distance_from_start();
  if (!opening.lintel) return bearings;
  // Runs are in the order of their walls, then courses.
  const auto place_of = [](const Run& run) { return std::pair(run.wall, run.course); };
  for (const Run& run :
       std::ranges::equal_range(layout.runs, std::pair(opening.wall, opening.lintel->first_course), {}, place_of)) {
    if (!crosses(opening, run)) continue;
    const Piece* pieces = layout.begin_of(run);
    for (std::uint32_t p = 0; p < run.piece_count; ++p) {
      if (!in_lintel(opening, run, pieces[p])) continue;
      if (!bearings) bearings.emplace();
      const Length start = pieces[p].start.nearest_nanometre();
      bearings->start = std::max(bearings->start, from - start);
      bearings->end = std::max(bearings->end, start + pieces[p].length - to);
    }
  }
  return bearings;
}

}  // namespace stringcourse::bond
