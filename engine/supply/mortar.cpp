#include "supply/mortar.hpp"

#include <algorithm>
#include <vector>

#include "bond/layout_parts.hpp"

namespace stringcourse::supply {
namespace {

/// Of the two face shells together; a unit without known shells is bedded through.
Length bedded_depth(const Series& series) {
  const Length shells = series.face_shell * 2;
  return shells > Length() && shells < series.thickness ? shells : series.thickness;
}

/// Of a course's bed: what lies between it and the course below; a joint under course 1.
Length bed_under(const Building& building, int course) {
  if (course == 1) return building.joint;
  return building.courses[static_cast<std::size_t>(course - 1)].underside() -
         building.courses[static_cast<std::size_t>(course - 2)].top;
}

Length shared(Length from, Length to, Length other_from, Length other_to) {
  return std::max(Length(), std::min(to, other_to) - std::max(from, other_from));
}

/// How much of a run lies over openings that end right under it.
Length over_openings(const Building& building, const Run& run) {
  Length over;
  for (const ResolvedOpening& opening : building.openings) {
    if (opening.wall != run.wall || opening.last_course != run.course - 1) continue;
    over += shared(run.start, run.end, opening.from_in(run.course - 1).distance_from_start(),
                   opening.to_in(run.course - 1).distance_from_start());
  }
  return over;
}

void add_run(MortarJoints& joints, const Building& building, const Run& run) {
  const Series& series = building.series_of(building.walls[static_cast<std::size_t>(run.wall)]);
  const Length thick = series.thickness, depth = bedded_depth(series);
  const Length height = building.courses[static_cast<std::size_t>(run.course - 1)].unit_height;
  const Length bedded = run.end - run.start - over_openings(building, run), bed = bed_under(building, run.course);
  joints.heads += Volume::box(run.slack, depth, height);
  joints.full += Volume::box(run.slack, thick, height) + Volume::box(bedded, thick, bed);
  if (run.course == 1) joints.first_bed += Volume::box(bedded, thick, bed);
  else joints.beds += Volume::box(bedded, depth, bed);
}

/// A lintel in one piece lies in a bed at each end.
void add_one_piece(MortarJoints& joints, const Building& building, const PlacedLintel& placed) {
  const ResolvedOpening& opening = building.openings[static_cast<std::size_t>(placed.opening)];
  if (!opening.lintel || opening.lintel->make != LintelMake::OnePiece) return;
  const Series& series = building.series_of(building.walls[static_cast<std::size_t>(opening.wall)]);
  const Length bears = placed.start_bearing + placed.end_bearing;
  const Length bed = bed_under(building, opening.lintel->first_course);
  joints.beds += Volume::box(bears, bedded_depth(series), bed);
  joints.full += Volume::box(bears, series.thickness, bed);
}

/// What the beds as read hold more, or less, than beds a joint thick; half nanometres cubed are dropped once.
void add_beds_read(MortarJoints& joints, const Building& building, std::span<const BedRead> read) {
  int128 doubled = 0;
  for (const BedRead& bed : read) {
    const Series& series = building.series_of(building.walls[static_cast<std::size_t>(bed.wall)]);
    const Length more = bed.thinnest + bed.thickest - building.joint * 2;
    doubled += Volume::box(bed.to - bed.from, series.thickness, more).cubic_nanometres;
  }
  joints.first_bed.cubic_nanometres += doubled / 2;
  joints.beds_read = static_cast<std::int64_t>(read.size());
}

/// Whole blocks' worth of all pieces, by length, each series rounded up.
std::int64_t blocks_of(const Building& building, const Layout& layout) {
  std::vector<Length> laid(building.series.size());
  for (const Run& run : layout.runs) {
    const int series = building.walls[static_cast<std::size_t>(run.wall)].series;
    for (const Piece& piece : bond::pieces_of(layout, run)) laid[static_cast<std::size_t>(series)] += piece.length;
  }
  std::int64_t blocks = 0;
  for (std::size_t k = 0; k < laid.size(); ++k) blocks -= (-laid[k]).whole_multiples(building.series[k].full);
  return blocks;
}

}  // namespace

MortarJoints mortar_joints(const Building& building, const Layout& layout, std::span<const BedRead> read) {
  MortarJoints joints;
  for (const Run& run : layout.runs) add_run(joints, building, run);
  for (const PlacedLintel& placed : layout.lintels) add_one_piece(joints, building, placed);
  add_beds_read(joints, building, read);
  joints.blocks = blocks_of(building, layout);
  return joints;
}

}  // namespace stringcourse::supply
