#include "ground/bed_as_found.hpp"

#include <algorithm>
#include <cmath>
#include <set>

#include "ground/bearing_line.hpp"
#include "ground/bed_choices.hpp"
#include "ground/tape_doubt.hpp"
#include "measure/metres.hpp"

namespace stringcourse::ground {
namespace {

/// A corner's height is that of both its walls.
void add_corner(std::vector<BearingHeight>& heights, const Building& building, const Station& station) {
  for (const Corner& corner : building.corners) {
    if (corner.name != station.name) continue;
    if (corner.leaving >= 0) heights.push_back({corner.leaving, Length(), station.height});
    if (corner.arriving >= 0)
      heights.push_back({corner.arriving, wall_of(building, corner.arriving).actual, station.height});
  }
}

/// What an inner wall's end stands on is what the wall that it meets stands on there, if it was read on both sides.
std::vector<BearingHeight> at_junctions(const std::vector<BearingHeight>& heights, const Building& building) {
  const BearingLines lines(heights);
  std::vector<BearingHeight> more;
  for (const Junction& junction : building.junctions) {
    const Length middle = (junction.from.distance_from_start() + junction.to.distance_from_start()).half_down();
    const auto height = lines.at(junction.main, middle);
    const Length along = junction.at_abutting_start ? Length() : wall_of(building, junction.abutting).actual;
    if (height && !lines.at(junction.abutting, along)) more.push_back({junction.abutting, along, *height});
  }
  return more;
}

/// Heights of the bearing along the walls.
std::vector<BearingHeight> bearing_of(const Building& building, const std::vector<Station>& stations) {
  std::vector<BearingHeight> heights;
  for (const Station& station : stations) {
    if (station.surface != Surface::Bearing || station.far) continue;
    if (station.place) heights.push_back({station.place->wall, station.place->along, station.height});
    else add_corner(heights, building, station);
  }
  // From wall to wall: those met by the walls just added come next.
  for (std::size_t round = 0; round < building.junctions.size(); ++round) {
    const std::vector<BearingHeight> more = at_junctions(heights, building);
    if (more.empty()) break;
    heights.insert(heights.end(), more.begin(), more.end());
  }
  return heights;
}

std::vector<ReadHeight> heights_read(const Building& building, const std::vector<Station>& stations) {
  std::vector<ReadHeight> heights;
  for (const Station& station : stations) {
    if (is_bearing(building, station)) heights.push_back({station.name, station.height});
  }
  return heights;
}

/// Bearing heights under a unit: at its ends and at readings between. Empty where it is not read.
std::vector<Length> under(const BearingLines& lines, int wall, Length from, Length to) {
  const auto start = lines.at(wall, from), end = lines.at(wall, to);
  if (!start || !end) return {};
  std::vector<Length> all{*start, *end};
  for (const BearingHeight& one : lines.between(wall, from, to)) all.push_back(one.height);
  return all;
}

/// "B", or "the end of inner 1 at CD": where a wall's end has to be read. Its start if `at_start`.
Fact end_said(const Building& building, int wall, const WallEnd& end, const std::string& name) {
  if (end.kind == EndKind::Corner) return fact("at-corner", {name});
  const std::string& ended = wall_of(building, wall).name;
  return name.empty() ? fact("wall-end", {ended}) : fact("wall-end-at", {ended, name});
}

/// Fills in the beds, and where the bearing under units without one has to be read.
void put_units(BedAsFound& bed, const Bearing& bearing, const BearingLines& lines) {
  std::vector<Fact> lacks;
  const auto lack = [&](Fact said, int wall, Length along) {
    if (std::ranges::contains(lacks, said)) return;
    lacks.push_back(std::move(said)), bed.lack_places.push_back({wall, along});
  };
  for (const Run& run : bearing.layout.runs) {
    if (run.course != 1) continue;
    const Wall& wall = wall_of(bearing.building, run.wall);
    for (std::uint32_t k = 0; k < run.piece_count; ++k) {
      const Piece& piece = bearing.layout.pieces[run.first_piece + k];
      // A unit at a corner that reaches past the wall's own line stands on the corner's height.
      const Length from = std::clamp(piece.start.nearest_nanometre(), Length(), wall.actual);
      const Length to = std::clamp(from + piece.length, Length(), wall.actual);
      const std::vector<Length> heights = under(lines, run.wall, from, to);
      if (!heights.empty()) {
        const auto [low, high] = std::ranges::minmax(heights);
        bed.units.push_back({run.wall, piece.number, from, to, bed.level.top - high, bed.level.top - low});
        continue;
      }
      ++bed.units_without;
      const std::span<const BearingHeight> read = lines.of(run.wall);
      if (read.empty() || read.front().along > from)
        lack(end_said(bearing.building, run.wall, wall.start, wall.start_name), run.wall, Length());
      if (read.empty() || read.back().along < to)
        lack(end_said(bearing.building, run.wall, wall.end, wall.end_name), run.wall, wall.actual);
    }
  }
  bed.lacks = std::move(lacks);
}

}  // namespace

bool is_bearing(const Building& building, const Station& station) {
  const bool corner = std::ranges::contains(building.corners, station.name, &Corner::name);
  return station.surface == Surface::Bearing && !station.far && (station.place || corner);
}

FirstCourse first_course_of(const Job& job) {
  if (!job.ground) return FirstCourse::Hollow;
  const auto& chosen = job.ground->bed_remedy;
  const bool grouted =
      job.ground->first_course_grouted.value_or(false) || (chosen && chosen->remedy == BedRemedy::GroutFirstCourse);
  return grouted ? FirstCourse::Grouted : FirstCourse::Hollow;
}

std::optional<BedAsFound> bed_as_found(const Job& job, const Building& building, const Layout& layout,
                                       const std::vector<Station>& stations) {
  const Bearing bearing{building, layout, bearing_of(building, stations), heights_read(building, stations)};
  if (bearing.read.empty()) return std::nullopt;
  std::vector<Length> heights;
  for (const ReadHeight& one : bearing.read) heights.push_back(one.height);
  const FirstCourse course = first_course_of(job);
  BedAsFound bed;
  bed.range = first_bed_range(course);
  bed.level = best_level(heights, bed.range);
  // Two readings of one set-up against one another, k = 2.
  bed.doubt = length_of(2 * std::sqrt(2.0) * standard_doubt(rod_reading_error(job)));
  put_units(bed, bearing, BearingLines(bearing.heights));
  // The margin is half of what the range leaves of the difference between two readings. Further readings only lessen
  // it.
  const Verdict verdict = judged(bed.level.margin, bed.doubt.half_down());
  bed.verdict = bed.units_without > 0 && verdict != Verdict::DoesNotFit ? Verdict::NotRead : verdict;
  if (bed.units_without == 0) bed.choices = bed_choices(bed, bearing, course);
  bed.bearing = bearing.heights;
  return bed;
}

}  // namespace stringcourse::ground
