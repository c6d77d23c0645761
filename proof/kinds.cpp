#include "proof/kinds.hpp"

#include <algorithm>

namespace stringcourse::proof {
namespace {

bool is_beam_kind(UnitKind kind) { return kind == UnitKind::BondBeam || kind == UnitKind::BondBeamHalf; }
bool is_lintel_kind(UnitKind kind) { return kind == UnitKind::Lintel || kind == UnitKind::LintelHalf; }
bool is_half_high_kind(UnitKind kind) { return kind == UnitKind::HalfHigh || kind == UnitKind::HalfHighHalf; }

/// A piece with its neighbourhood: what the kind may depend on.
struct Case {
  const Building& building;
  const Series& series;
  const Course& course;
  const Run& run;
  const Piece& piece;
  bool at_through_corner;
  bool over_lintel;  // stands over an opening, or on a bearing, of a lintel built of units
  bool near_lintel;  // ... or within one unit of it
  bool lowest;       // ... in the lowest course of such a lintel
};

/// Whether the yard has the half or whole unit of this pair that the piece is, or is cut from.
bool has_matching(const Case& c, UnitKind whole, UnitKind half) {
  const bool wants_half = c.piece.cut == CutEnd::None && c.piece.length == c.series.half;
  return is_stocked(c.building, c.series, wants_half ? half : whole);
}

std::string of_length(const Case& c) {
  const Length unit = unit_length(c.series, c.piece.kind);
  const bool uncut = c.piece.cut == CutEnd::None;
  const bool whole_or_half = c.piece.length == c.series.full || c.piece.length == c.series.half;
  if (uncut && whole_or_half && c.piece.length != unit) return "a unit of this kind has another length";
  return is_stocked(c.building, c.series, c.piece.kind) ? "" : "the yard does not stock this kind";
}

/// Bond-beam, lintel and half-high units stand where they are called for, if stocked, and nowhere else.
std::string of_course(const Case& c) {
  const UnitKind kind = c.piece.kind;
  const bool set_here = c.at_through_corner && kind == UnitKind::CornerSet;  // cut for the course: see of_corner
  if (is_half_high_kind(kind) != c.course.half_high && !set_here) {
    if (is_half_high_kind(kind) || has_matching(c, UnitKind::HalfHigh, UnitKind::HalfHighHalf))
      return "half-high units belong to half-high courses";
  }
  if (is_beam_kind(kind) && !c.course.bond_beam && !c.near_lintel) return "a bond-beam unit in a course without a beam";
  if (is_lintel_kind(kind) && !c.near_lintel) return "a lintel unit away from any lintel";
  if (c.at_through_corner || c.course.half_high || is_lintel_kind(kind)) return "";
  if (c.lowest && has_matching(c, UnitKind::Lintel, UnitKind::LintelHalf))
    return "the lowest course over an opening wants units closed underneath";
  if (is_beam_kind(kind)) return "";
  const bool beam_there = has_matching(c, UnitKind::BondBeam, UnitKind::BondBeamHalf);
  if (c.course.bond_beam && beam_there) return "a bond-beam course wants bond-beam units";
  if (c.over_lintel && (beam_there || has_matching(c, UnitKind::Lintel, UnitKind::LintelHalf)))
    return "over the opening stand lintel or bond-beam units";
  return "";
}

/// Where no plain unit makes a corner of leg b, the corner set must stand there, in every course: beams and half-high
/// courses too, for the other wall begins where the set's leg ends.
std::string of_corner(const Case& c) {
  if (!c.at_through_corner || c.piece.length != c.series.full) return "";
  const bool set = c.series.corner_set && c.building.corner_sets_stocked;
  if (set != (c.piece.kind == UnitKind::CornerSet))
    return set ? "a corner set must stand at this corner" : "no corner set belongs here";
  return "";
}

constexpr int kAllCourses = 200;

/// The stretch that a lintel of units covers in its wall: the opening and its least bearings, widened by `more`; in as
/// many of its courses, from the lowest up.
bool over_lintel(const Building& b, const Run& run, const Piece& piece, Length more, int most_courses) {
  const ExactPosition& start = piece.start;
  for (const ResolvedOpening& o : b.openings) {
    if (o.wall != run.wall || !o.lintel || o.lintel->make != LintelMake::BuiltUp) continue;
    if (run.course < o.lintel->first_course ||
        run.course >= o.lintel->first_course + std::min(o.lintel->courses, most_courses))
      continue;
    // What stands behind a slot or a joint is another piece of masonry: no lintel reaches through it.
    if (run.end <= o.from.distance_from_start() || o.to.distance_from_start() <= run.start) continue;
    const Length from = o.from.distance_from_start() - o.lintel->least_bearing - more;
    const Length to = o.to.distance_from_start() + o.lintel->least_bearing + more;
    const ExactPosition before{(from - piece.length).in_nanometres(), 1};  // a piece that starts here ends at `from`
    if (before < start && start < ExactPosition{to.in_nanometres(), 1}) return true;
  }
  return false;
}

Violations check_piece(const Case& c) {
  const std::string where = place_of(c.building, c.run.wall, c.run.course);
  for (auto rule : {of_length, of_course, of_corner}) {
    std::string text = rule(c);
    if (text.empty()) continue;
    return {violation(
        kKinds, where,
        "piece " + std::to_string(c.piece.number) + " (" + std::string(kind_name(c.piece.kind)) + "): " + text)};
  }
  return {};
}

Violations check_run(const Building& b, const RunFacts& facts) {
  Violations found;
  const Run& run = *facts.run;
  const Series& series = b.series_of(b.walls[static_cast<std::size_t>(run.wall)]);
  const Course& course = b.courses[static_cast<std::size_t>(run.course - 1)];
  for (std::size_t i = 0; i < facts.pieces.size(); ++i) {
    const Piece& piece = *facts.pieces[i];
    const bool corner = (i == 0 && run.at_start == RunEnd::ThroughCorner) ||
                        (i + 1 == facts.pieces.size() && run.at_end == RunEnd::ThroughCorner);
    found = joined(std::move(found), check_piece({b, series, course, run, piece, corner,
                                                  over_lintel(b, run, piece, Length(), kAllCourses),
                                                  over_lintel(b, run, piece, series.full_pitch(), kAllCourses),
                                                  over_lintel(b, run, piece, Length(), 1)}));
  }
  return found;
}

}  // namespace

bool is_half_kind(UnitKind kind) {
  switch (kind) {
    case UnitKind::Half:
    case UnitKind::BondBeamHalf:
    case UnitKind::LintelHalf:
    case UnitKind::SashHalf:
    case UnitKind::CleanoutHalf:
    case UnitKind::HalfHighHalf: return true;
    default: return false;
  }
}

Length unit_length(const Series& series, UnitKind kind) { return is_half_kind(kind) ? series.half : series.full; }

bool is_stocked(const Building& building, const Series& series, UnitKind kind) {
  return std::ranges::find(series.made, kind) != series.made.end() &&
         std::ranges::find(building.stocked, kind) != building.stocked.end();
}

Violations check_kinds(const Building& building, const Facts& facts) {
  Violations found;
  for (const WallFacts& wall : facts.walls)
    for (const CourseFacts& course : wall.courses)
      for (const RunFacts& run : course.runs) found = joined(std::move(found), check_run(building, run));
  return found;
}

}  // namespace stringcourse::proof
