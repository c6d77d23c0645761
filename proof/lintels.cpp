#include "proof/lintels.hpp"

#include <algorithm>

#include "proof/cells.hpp"
#include "proof/conceded.hpp"

namespace stringcourse::proof {
namespace {

template <typename List>
const auto& at(const List& list, int index) {
  return list[static_cast<std::size_t>(index)];
}

bool is_one_piece(const ResolvedOpening& o) { return o.lintel && o.lintel->make == LintelMake::OnePiece; }

std::string name_of_lintel(const Building& b, const ResolvedOpening& o) {
  return name_of(b, o.wall) + " lintel over " + o.name;
}

Violations check_one_piece(const Building& b, const ResolvedOpening& o, const PlacedLintel& placed) {
  Violations found;
  const std::string where = name_of_lintel(b, o);
  const Series& series = b.series_of(at(b.walls, o.wall));
  const Length least = o.lintel->least_bearing, pitch = series.pitch();
  const Length start = placed.start_bearing, end = placed.end_bearing;
  if (start < least || end < least)
    found.push_back(violation(
        kLintels, where, "bears " + in_millimetres(std::min(start, end)) + ", less than " + in_millimetres(least)));
  if (o.width() + least * 2 + series.joint + pitch * 3 <= o.width() + start + end + series.joint)
    found.push_back(violation(kLintels, where, "it is three half units longer than the least length, or more"));
  if (!(o.width() + start + end + series.joint).is_multiple_of(pitch))
    found.push_back(violation(kLintels, where, "its length is not a whole number of half units less a joint"));
  return found;
}

/// A unit's size tolerance: so much less counts as what is asked.
constexpr Length kWithin = Length::sixteenths(2);

/// What a lintel of units bears: to the end of the piece in which the bearing asked is reached, or of its run.
struct Borne {
  Length start, end;
};
Borne borne_by(const RunFacts& run, const ResolvedOpening& o) {
  const Length from = o.from.distance_from_start(), to = o.to.distance_from_start(),
               least = o.lintel->least_bearing - kWithin;
  Length first, last;
  for (std::size_t k = 0; k < run.pieces.size(); ++k) {
    const ExactPosition& start = run.pieces[k]->start;
    const ExactPosition ends{start.numerator + run.pieces[k]->length.in_nanometres() * start.denominator,
                             start.denominator};
    if (k == 0 || start <= ExactPosition{(from - least).in_nanometres(), 1}) first = start.nearest_nanometre();
    last = ends.nearest_nanometre();
    if (ends >= ExactPosition{(to + least).in_nanometres(), 1}) break;
  }
  return {std::max(from - first, Length()), std::max(last - to, Length())};
}

/// A lintel of units is as long as its pieces of the lowest course; shorter than asked only where their run ends.
Violations check_built_up(const Building& b, const Facts& facts, const ResolvedOpening& o, const PlacedLintel& placed) {
  const std::string where = name_of_lintel(b, o);
  const auto& runs = at(at(facts.walls, o.wall).courses, o.lintel->first_course - 1).runs;
  const auto over = std::ranges::find_if(runs, [&](const RunFacts& f) {
    return f.run->start < o.to.distance_from_start() && f.run->end > o.from.distance_from_start();
  });
  if (over == runs.end()) return {violation(kLintels, where, "no run crosses its opening")};
  const Borne borne = borne_by(*over, o);
  if (borne.start == placed.start_bearing && borne.end == placed.end_bearing) return {};
  return {violation(kLintels, where,
                    "bears " + in_millimetres(borne.start) + " and " + in_millimetres(borne.end) + ", not " +
                        in_millimetres(placed.start_bearing) + " and " + in_millimetres(placed.end_bearing))};
}

bool overlaps(const Piece& piece, Length from, Length to) {
  const ExactPosition before{(from - piece.length).in_nanometres(), 1};
  return before < piece.start && piece.start < ExactPosition{to.in_nanometres(), 1};
}

/// What stands under from..to is uncut (or, relaxed, a cut that keeps a cell).
Violations check_uncut(const Building& b, const Layout& layout, const RunFacts& run, const ResolvedOpening& o,
                       Length from, Length to) {
  Violations found;
  for (const Piece* piece : run.pieces) {
    if (piece->cut == CutEnd::None || !overlaps(*piece, from, to)) continue;
    const bool keeps_cell = !whole_cells(b.series_of(at(b.walls, o.wall)), *piece).empty();
    if (layout.relaxed_bearing && keeps_cell) continue;
    found.push_back(violation(kLintels, name_of_lintel(b, o), "a cut piece stands under its bearing"));
    if (!keeps_cell) found.back().may_be = piece_given_up(Concession::What::CutUnderBearing, *run.run, *piece);
  }
  return found;
}

/// A lintel of units is laid in bond with what it bears on, round the corner and over the next opening too: only the
/// pieces of its own wall are looked at, as far as the bearing that is asked.
Violations check_under_units(const Building& b, const Layout& layout, const Facts& facts, const ResolvedOpening& o,
                             Length from, Length to) {
  const int below = o.lintel->first_course - 1;
  Violations found;
  for (const RunFacts& run : at(at(facts.walls, o.wall).courses, below - 1).runs)
    found = joined(std::move(found), check_uncut(b, layout, run, o, from, to));
  return found;
}

/// Under from..to in the course below a one-piece lintel stands one run of its own wall.
Violations check_under(const Building& b, const Layout& layout, const Facts& facts, const ResolvedOpening& o,
                       Length from, Length to) {
  const std::string where = name_of_lintel(b, o);
  const int below = o.lintel->first_course - 1;
  const auto& runs = at(at(facts.walls, o.wall).courses, below - 1).runs;
  const auto bearing =
      std::ranges::find_if(runs, [&](const RunFacts& f) { return f.run->start <= from && to <= f.run->end; });
  if (bearing == runs.end()) return {violation(kLintels, where, "its bearing stands over no masonry")};
  return check_uncut(b, layout, *bearing, o, from, to);
}

Violations check_lintel(const Building& b, const Layout& layout, const Facts& facts, int index) {
  const ResolvedOpening& o = at(b.openings, index);
  const auto count = std::ranges::count_if(layout.lintels, [&](const PlacedLintel& l) { return l.opening == index; });
  const bool placeable = !at(facts.walls, o.wall).stopped;
  if (count > (o.lintel ? 1 : 0) || (placeable && o.lintel && count != 1))
    return {violation(kLintels, name_of_lintel(b, o), std::to_string(count) + " lintels are placed")};
  if (count == 0) return {};
  const PlacedLintel& placed = *placed_lintel(layout, index);
  const int below = o.lintel->first_course - 1;
  if (below < 1 || below > static_cast<int>(b.courses.size()))
    return {violation(kLintels, name_of_lintel(b, o), "no course bears it")};
  const Length from = o.from.distance_from_start(), to = o.to.distance_from_start();
  if (!is_one_piece(o)) {
    if (!placeable) return {};
    const Length least = o.lintel->least_bearing;
    Violations found = check_built_up(b, facts, o, placed);
    found = joined(std::move(found), check_under_units(b, layout, facts, o, from - least, from));
    return joined(std::move(found), check_under_units(b, layout, facts, o, to, to + least));
  }
  Violations found = check_one_piece(b, o, placed);
  if (!placeable) return found;
  found = joined(std::move(found), check_under(b, layout, facts, o, from - placed.start_bearing, from));
  return joined(std::move(found), check_under(b, layout, facts, o, to, to + placed.end_bearing));
}

/// The stretch that a control joint keeps clear of: a one-piece lintel as placed; of one built of units what is asked,
/// as a unit of it that goes on to the joint ends there.
CellSpan lintel_stretch(const Layout& layout, const ResolvedOpening& o, int index) {
  const PlacedLintel* placed = is_one_piece(o) ? placed_lintel(layout, index) : nullptr;
  const Length start = placed ? placed->start_bearing : o.lintel->least_bearing;
  const Length end = placed ? placed->end_bearing : o.lintel->least_bearing;
  return {o.from.distance_from_start() - start, o.to.distance_from_start() + end};
}

Violations check_clear_of_bearings(const Building& b, const Layout& layout, const ControlJoint& joint) {
  // A user may place one nearer, and is told so; never into a bearing.
  const Length half = joint.by_rule ? b.series_of(at(b.walls, joint.wall)).half : Length();
  for (int i = 0; i < static_cast<int>(b.openings.size()); ++i) {
    const ResolvedOpening& o = at(b.openings, i);
    if (o.wall != joint.wall || !o.lintel) continue;
    const CellSpan lintel = lintel_stretch(layout, o, i);
    const bool clear =
        joint.to.distance_from_start() + half <= lintel.from || lintel.to + half <= joint.from.distance_from_start();
    if (!clear)
      return {violation(kControlJoints, name_of(b, joint.wall),
                        "a control joint stands closer than a half unit to " + name_of_lintel(b, o))};
  }
  return {};
}

/// Distance of the nominal grid's first line from the actual start of the wall, twice: -j or +j.
Length doubled_grid_origin(const Building& b, const Wall& wall, Length joint) {
  const bool pushed_out = wall.start.kind == EndKind::Free ||
                          (wall.start.kind == EndKind::Corner && at(b.corners, wall.start.corner).convex);
  return pushed_out ? -joint : joint;
}

Violations check_place(const Job& job, const Building& b, const ControlJoint& joint) {
  Violations found;
  const Wall& wall = at(b.walls, joint.wall);
  const Series& series = b.series_of(wall);
  const std::string where = name_of(b, joint.wall);
  const bool uk_rule = job.control_joints.rule == JointRule::Uk;
  const Length width = joint.to - joint.from;
  if (width != series.joint && !(uk_rule && width == Length::millimetres(10)))
    found.push_back(violation(kControlJoints, where, "a control joint " + in_millimetres(width) + " wide"));
  const Length doubled_middle = joint.from.distance_from_start() + joint.to.distance_from_start();
  const bool on_grid = (doubled_middle - doubled_grid_origin(b, wall, series.joint)).is_multiple_of(series.pitch() * 2);
  if (joint.by_rule && !on_grid)
    found.push_back(violation(kControlJoints, where, "a control joint off the half-unit grid"));
  if (joint.from.distance_from_start() <= Length() || wall.actual <= joint.to.distance_from_start())
    found.push_back(violation(kControlJoints, where, "a control joint outside its wall"));
  return found;
}

}  // namespace

Violations check_lintels(const Building& building, const Layout& layout, const Facts& facts) {
  Violations found;
  for (int i = 0; i < static_cast<int>(building.openings.size()); ++i)
    found = joined(std::move(found), check_lintel(building, layout, facts, i));
  return found;
}

Violations check_control_joints(const Job& job, const Building& building, const Layout& layout) {
  Violations found;
  for (const ControlJoint& joint : building.control_joints) {
    found = joined(std::move(found), check_place(job, building, joint));
    found = joined(std::move(found), check_clear_of_bearings(building, layout, joint));
  }
  return found;
}

}  // namespace stringcourse::proof
