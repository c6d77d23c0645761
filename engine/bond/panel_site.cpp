// Over 400 lines in one file: a panel is made of its building here in one pass, and every helper serves that pass
// alone.
#include "bond/panel_site.hpp"

#include <algorithm>
#include <optional>
#include <utility>

#include "bond/lintel_units.hpp"
#include "catalogue/rules.hpp"
#include "measure/sorting.hpp"
#include "walls/corner_plan.hpp"

namespace stringcourse::bond {
namespace {

constexpr std::size_t kMostFreeBits = 8, kLeastFreeBits = 2;  // of one panel
constexpr std::size_t kMostValues = 512;                      // of all panels together

enum class CourseClass { Ordinary, BondBeam, HalfHigh };

std::int64_t nm(Length length) { return length.in_nanometres(); }
std::int64_t nm(Position position) { return nm(position.distance_from_start()); }
template <typename List>
const auto& at(const List& list, std::int32_t index) {
  return list[static_cast<std::size_t>(index)];
}

/// What this site's choices come to, course by course.
class Choices {
 public:
  Choices(const PanelSite& site, const std::vector<Bit>& bits, std::uint32_t values)
      : site_(&site), bits_(&bits), values_(values) {}
  /// Whether the bit's wall (arriving, or entering) has its turn in this course.
  [[nodiscard]] bool turn(Bit::Of of, std::int32_t index, int course) const {
    for (std::size_t i = 0; i < site_->bits.size(); ++i) {
      const Bit& bit = at(*bits_, site_->bits[i]);
      if (bit.of != of || bit.index != index) continue;
      return (((values_ >> i) & 1U) != 0) == (course % 2 == 1);
    }
    return course % 2 == 0;  // settled: no choice of this site
  }

 private:
  const PanelSite* site_;
  const std::vector<Bit>* bits_;
  std::uint32_t values_;
};

struct End {
  std::int64_t moves_out = 0;  // beyond the actual face; negative: short of it
  RunEnd kind = RunEnd::FreeEnd;
};

/// Section "Ends" of the bond model, for one end of one wall in one course.
End end_of(const Building& building, std::int32_t wall, const WallEnd& end, int course, const Choices& choices) {
  if (end.kind == EndKind::Free) return {0, RunEnd::FreeEnd};
  if (end.kind == EndKind::Junction) {
    const Junction& junction = at(building.junctions, end.junction);
    if (junction.kind != JunctionKind::Lapped) return {0, RunEnd::TiedJunction};
    if (!choices.turn(Bit::Of::Junction, end.junction, course)) return {0, RunEnd::LappedButt};
    return {nm(building.series_of(at(building.walls, junction.main)).thickness), RunEnd::EnteringJunction};
  }
  const Corner& corner = at(building.corners, end.corner);
  const bool arriving = corner.arriving == wall;
  const bool through = choices.turn(Bit::Of::Corner, end.corner, course) == arriving;
  const Series& other = building.series_of(at(building.walls, arriving ? corner.leaving : corner.arriving));
  const std::int64_t added = corner.convex ? 0 : nm(other.thickness);
  if (through) return {added, RunEnd::ThroughCorner};
  return {added - nm(corner_leg(other, building.corner_sets_stocked)), RunEnd::ButtCorner};
}

struct Gap {
  std::int64_t from, to;
  RunEnd kind;  // what the run before it ends at, and the run after it starts at
  std::int32_t lintel = -1;
};

bool course_in(int course, int first, int count) { return course >= first && course < first + count; }

std::vector<Gap> gaps_of(const Building& building, const PanelSite& site, int course, const Choices& choices,
                         const std::vector<Bearings>& bearings) {
  std::vector<Gap> gaps;
  for (const std::int32_t index : site.openings) {
    const ResolvedOpening& opening = at(building.openings, index);
    if (course >= opening.first_course && course <= opening.last_course) {
      gaps.push_back({nm(opening.from_in(course)), nm(opening.to_in(course)), RunEnd::Jamb});
    }
  }
  for (std::size_t i = 0; i < site.one_piece.size(); ++i) {
    const ResolvedOpening& opening = at(building.openings, site.one_piece[i]);
    if (!course_in(course, opening.lintel->first_course, opening.lintel->courses)) continue;
    gaps.push_back({nm(opening.from) - nm(bearings[i].start), nm(opening.to) + nm(bearings[i].end), RunEnd::LintelEnd,
                    site.one_piece[i]});
  }
  for (const std::int32_t index : site.slots) {
    const Junction& junction = at(building.junctions, index);
    if (choices.turn(Bit::Of::Junction, index, course))
      gaps.push_back({nm(junction.from), nm(junction.to), RunEnd::SlotSide});
  }
  sort_stably(gaps, {}, &Gap::from);
  return gaps;
}

std::vector<RowRun> runs_of(const Building& building, const PanelSite& site, int course, const Choices& choices,
                            const std::vector<Bearings>& bearings) {
  const Wall& wall = at(building.walls, site.wall);
  const End start =
      site.from_joint ? End{0, RunEnd::ControlJoint} : end_of(building, site.wall, wall.start, course, choices);
  const End end = site.to_joint ? End{0, RunEnd::ControlJoint} : end_of(building, site.wall, wall.end, course, choices);
  std::vector<RowRun> runs;
  RowRun run;
  run.start = site.from - start.moves_out;
  run.at_start = start.kind;
  const auto close = [&](std::int64_t to, RunEnd kind, std::int32_t lintel) {
    run.end = to;
    run.at_end = kind;
    run.end_lintel = lintel;
    const int joints = (has_joint(run.at_start) ? 1 : 0) + (has_joint(run.at_end) ? 1 : 0);
    const bool nothing = run.end == run.start && joints < 2;  // the other wall is the jamb
    if (!nothing) runs.push_back(run);
  };
  for (const Gap& gap : gaps_of(building, site, course, choices, bearings)) {
    close(gap.from, gap.kind, gap.lintel);
    run = RowRun{gap.to, 0, gap.kind, RunEnd::FreeEnd, gap.lintel, -1};
  }
  close(site.to + end.moves_out, end.kind, -1);
  for (RowRun& each : runs) {
    each.start -= site.from;
    each.end -= site.from;
  }
  return runs;
}

CourseClass class_of(const Course& course) {
  if (course.half_high) return CourseClass::HalfHigh;
  return course.bond_beam ? CourseClass::BondBeam : CourseClass::Ordinary;
}

bool stocks(const Building& building, const Series& series, UnitKind kind) {
  return std::ranges::find(building.stocked, kind) != building.stocked.end() &&
         std::ranges::find(series.made, kind) != series.made.end();
}

std::vector<Cell> cells_of(const std::vector<CellSpan>& spans, std::int64_t shorter_than) {
  std::vector<Cell> cells;
  for (const CellSpan& span : spans) {
    if (nm(span.to) < shorter_than) cells.push_back({nm(span.from), nm(span.to)});
  }
  return cells;
}

/// The lengths that a course of this class of this wall is laid with, longest first.
std::vector<PieceChoice> choices_of(const Building& building, std::int32_t wall, CourseClass kind, std::int64_t least) {
  const Series& series = building.series_of(at(building.walls, wall));
  const bool halves = kind == CourseClass::HalfHigh ? stocks(building, series, UnitKind::HalfHighHalf)
                                                    : stocks(building, series, UnitKind::Half);
  std::vector<PieceChoice> choices;
  PieceChoice full;
  full.length = nm(series.full);
  full.corner = true;
  full.cells = cells_of(series.full_cells, full.length);
  choices.push_back(full);
  PieceChoice half;
  half.length = nm(series.half);
  half.half = halves && walls::halves_make_corners(building, wall);
  half.is_cut = !halves;
  half.cells = halves ? cells_of(series.half_cells, half.length) : cells_of(series.full_cells, half.length);
  choices.push_back(half);
  for (const Length cut : building.cuts) {
    if (nm(cut) < least || cut == series.full || cut == series.half) continue;
    PieceChoice piece;
    piece.length = nm(cut);
    piece.is_cut = true;
    piece.cells = cells_of(series.full_cells, piece.length);
    choices.push_back(piece);
  }
  sort_stably(choices, [](const PieceChoice& a, const PieceChoice& b) { return a.length > b.length; });
  return choices;
}

bool same_run(const RowRun& a, const RowRun& b) {
  return a.start == b.start && a.end == b.end && a.at_start == b.at_start && a.at_end == b.at_end &&
         a.start_lintel == b.start_lintel && a.end_lintel == b.end_lintel;
}

/// Bearings want uncut units in the course under them, of both makes of lintel.
void add_zones(const Building& building, const PanelSite& site, const std::vector<Bearings>& bearings,
               Strictness strictness, Panel& panel) {
  const UnderBearing rule = strictness == Strictness::Full ? UnderBearing::Uncut : UnderBearing::WholeCell;
  for (const std::int32_t index : site.openings) {
    const ResolvedOpening& opening = at(building.openings, index);
    if (!opening.lintel || opening.lintel->first_course < 2) continue;
    Bearings here{opening.lintel->least_bearing, opening.lintel->least_bearing};
    for (std::size_t i = 0; i < site.one_piece.size(); ++i) {
      if (site.one_piece[i] == index) here = bearings[i];
    }
    Row& below = panel.rows[static_cast<std::size_t>(
        panel.course_rows[static_cast<std::size_t>(opening.lintel->first_course) - 2])];
    const std::int64_t from = nm(opening.from) - site.from, to = nm(opening.to) - site.from;
    const std::int32_t course = opening.lintel->first_course - 1;
    below.uncut_zones.push_back({from - nm(here.start), from, rule, course});
    below.uncut_zones.push_back({to, to + nm(here.end), rule, course});
  }
}

/// Whether a control joint stands clear of a lintel that goes from..to: a half unit where the engine chose the joint.
bool joints_stand_clear(const Building& building, const PanelSite& site, std::int64_t from, std::int64_t to) {
  const Series& series = building.series_of(at(building.walls, site.wall));
  return std::ranges::none_of(building.control_joints, [&](const ControlJoint& joint) {
    const std::int64_t clear = joint.by_rule ? nm(series.half) : 0;
    return joint.wall == site.wall && nm(joint.from) < to + clear && from < nm(joint.to) + clear;
  });
}

/// Leaves a row that nothing lays.
void leave_without_units(Row& row) {
  row.choices.clear();
  row.make_up_from = 0;
  if (row.runs.empty()) row.runs.push_back(RowRun{0, 1, RunEnd::FreeEnd, RunEnd::FreeEnd, -1, -1});
}

/// Whether a one-piece lintel that goes from..to leaves the lintels of units beside it what they bear on.
bool leaves_others_their_bearing(const Building& building, const PanelSite& site, const ResolvedOpening& opening,
                                 std::int64_t from, std::int64_t to) {
  return std::ranges::none_of(site.openings, [&](std::int32_t index) {
    const ResolvedOpening& other = at(building.openings, index);
    if (&other == &opening || !other.lintel || other.lintel->make != LintelMake::BuiltUp) return false;
    const bool beside = other.lintel->first_course < opening.lintel->first_course + opening.lintel->courses &&
                        opening.lintel->first_course < other.lintel->first_course + other.lintel->courses;
    const std::int64_t least = nm(other.lintel->least_bearing - kBearingWithin);
    return beside && from < nm(other.to) + least && nm(other.from) - least < to;
  });
}

/// Each end of a one-piece lintel bears on one run of its own wall (and so leaves a corner its unit), and leaves a
/// lintel of units beside it what that bears on. Where it cannot, no layout exists.
void forbid_floating_bearings(const Building& building, const PanelSite& site, const std::vector<Bearings>& bearings,
                              Panel& panel) {
  for (std::size_t i = 0; i < site.one_piece.size(); ++i) {
    const ResolvedOpening& opening = at(building.openings, site.one_piece[i]);
    const std::int64_t from = nm(opening.from) - nm(bearings[i].start), to = nm(opening.to) + nm(bearings[i].end);
    const std::size_t below = static_cast<std::size_t>(std::max(opening.lintel->first_course - 2, 0));
    Row& row = panel.rows[static_cast<std::size_t>(panel.course_rows[below])];
    const auto carried = [&](std::int64_t a, std::int64_t b) {
      return std::ranges::any_of(
          row.runs, [&](const RowRun& run) { return run.start <= a - site.from && b - site.from <= run.end; });
    };
    const bool alone = panel.concedes || leaves_others_their_bearing(building, site, opening, from, to);
    const bool bears = carried(from, nm(opening.from)) && carried(nm(opening.to), to);
    if (alone && bears && joints_stand_clear(building, site, from, to)) continue;
    leave_without_units(row);
  }
}

PanelBar held_bar(const BarRules& rules, std::int64_t centre) {
  PanelBar held;
  held.centre = centre;
  held.half_width = (nm(rules.diameter) + 1) / 2 + nm(rules.clearance);
  held.common_along = nm(rules.common_along);
  return held;
}

/// A bar of the main wall that stands where this wall laps into it passes this wall's end unit, in the middle of the
/// main wall.
void add_bar_in_slot(const Building& building, const PanelSite& site, const WallEnd& end, Panel& panel) {
  if (end.kind != EndKind::Junction) return;
  const Junction& slot = at(building.junctions, end.junction);
  if (slot.kind != JunctionKind::Lapped) return;
  const bool stands = std::ranges::any_of(building.fixed_bars, [&](const FixedBar& bar) {
    return bar.wall == slot.main && bar.corner < 0 && slot.from < bar.centre && bar.centre < slot.to;
  });
  const std::int64_t beyond = nm(building.series_of(at(building.walls, slot.main)).thickness.half_down());
  if (stands)
    panel.bars.push_back(held_bar(*building.bars, slot.at_abutting_start ? -beyond : site.to - site.from + beyond));
}

void add_bars(const Building& building, const PanelSite& site, Panel& panel) {
  if (!building.bars) return;
  const Wall& wall = at(building.walls, site.wall);
  for (const FixedBar& bar : building.fixed_bars) {
    const std::int64_t centre = nm(bar.centre);
    if (bar.wall != site.wall || bar.corner >= 0 || centre < site.from || centre > site.to) continue;
    panel.bars.push_back(held_bar(*building.bars, centre - site.from));
  }
  if (!site.from_joint) add_bar_in_slot(building, site, wall.start, panel);
  if (!site.to_joint) add_bar_in_slot(building, site, wall.end, panel);
  sort_stably(panel.bars, {}, &PanelBar::centre);
}

Panel rules_of(const Building& building, const Series& series, Strictness strictness) {
  Panel panel;
  panel.joint = nm(building.joint);
  panel.joint_least = nm(building.joint_least);
  panel.joint_most = nm(building.joint_most);
  panel.least_piece = strictness >= Strictness::ShortestPieces
                          ? std::min(nm(series.relaxed_piece), nm(building.least_piece))
                          : nm(building.least_piece);
  panel.least_lap = nm(series.least_lap());
  panel.short_lap_below = nm(series.short_lap_below());
  panel.cut_step = nm(series.cut_step);
  panel.half_length = nm(series.half);
  const Length narrower = limit_of("far-joints", series.tape), wider = limit_of("far-joints", series.tape, 1);
  panel.match_within = nm(narrower);
  panel.cuts_before_laps = building.bond == BondWish::Quarter;
  panel.concedes = strictness == Strictness::Conceding;
  panel.far_joint_least = std::min(panel.joint_least, std::max(panel.joint - nm(narrower), std::int64_t{0}));
  panel.far_joint_most = std::max(panel.joint_most, panel.joint + nm(wider));
  panel.stacked_lap = std::min(panel.least_lap, nm(series.relaxed_piece));
  return panel;
}

/// The pieces of one course of this site as they were printed, by run. Empty where the runs are not the same in number.
std::vector<std::vector<Chosen>> printed_row(const Layout& printed, const PanelSite& site, int course,
                                             std::size_t runs) {
  std::vector<std::vector<Chosen>> row;
  const auto before = std::ranges::partition_point(
      printed.runs, [&](const Run& run) { return std::pair(run.wall, run.course) < std::pair(site.wall, course); });
  for (auto run = before; run != printed.runs.end() && run->wall == site.wall && run->course == course; ++run) {
    const std::int64_t middle = (nm(run->start) + nm(run->end)) / 2;
    if ((site.from_joint && middle < site.from) || (site.to_joint && middle > site.to)) continue;
    std::vector<Chosen>& pieces = row.emplace_back();
    for (std::uint32_t k = 0; k < run->piece_count; ++k) {
      const Piece& piece = printed.pieces[run->first_piece + k];
      pieces.push_back({nm(piece.length), piece.make_up ? -1 : 0, piece.cut});
    }
  }
  if (row.size() != runs) row.clear();
  return row;
}

/// A row that is laid: its own pieces are all that it may be laid with.
void fix_row(Row& row, const Series& series) {
  std::vector<PieceChoice> laid;
  for (const std::vector<Chosen>& run : row.printed) {
    for (const Chosen& piece : run) {
      const bool is_cut = piece.cut != CutEnd::None;
      const auto same = [&](const PieceChoice& choice) {
        return choice.length == piece.length && choice.is_cut == is_cut;
      };
      if (std::ranges::any_of(laid, same)) continue;
      const auto known = std::ranges::find_if(row.choices, same);
      PieceChoice choice = known != row.choices.end() ? *known : PieceChoice{};
      if (known == row.choices.end()) {
        choice.length = piece.length, choice.is_cut = is_cut, choice.make_up = piece.choice < 0;
        choice.cells = cells_of(series.full_cells, piece.length);
      }
      laid.push_back(std::move(choice));
    }
  }
  sort_stably(laid, [](const PieceChoice& a, const PieceChoice& b) { return a.length > b.length; });
  row.choices = std::move(laid);
  row.make_up_from = 0;
  row.make_up_cells.clear();
  row.fixed = true;
}

}  // namespace

std::vector<Bit> bits_of(const Building& building) {
  std::vector<Bit> bits;
  for (std::size_t i = 0; i < building.corners.size(); ++i)
    bits.push_back({Bit::Of::Corner, static_cast<std::int32_t>(i)});
  for (std::size_t i = 0; i < building.junctions.size(); ++i) {
    if (building.junctions[i].kind == JunctionKind::Lapped)
      bits.push_back({Bit::Of::Junction, static_cast<std::int32_t>(i)});
  }
  return bits;
}

namespace {

/// Junctions that lap into one panel are choices of it together: so many of each panel's bits stay free that the sets
/// of values of all panels are no more than kMostValues. The others are settled at 0 (the abutting wall enters in even
/// courses); the bits of a panel's own ends are always free.
void settle_beyond(std::vector<PanelSite>& sites, const std::vector<Bit>& bits) {
  const auto values = [&](std::size_t free) {
    std::size_t sum = 0;
    for (const PanelSite& site : sites) sum += std::size_t{1} << std::min(site.bits.size(), free);
    return sum;
  };
  std::size_t free = kMostFreeBits;
  while (free > kLeastFreeBits && values(free) > kMostValues) --free;
  std::vector<bool> settled(bits.size(), false);
  for (const PanelSite& site : sites) {
    const std::size_t beyond = site.bits.size() - std::min(site.bits.size(), free);
    for (std::size_t s = 0; s < std::min(beyond, site.slots.size()); ++s) {
      const std::int32_t slot = site.slots[site.slots.size() - 1 - s];
      const auto is_it = [&](std::int32_t bit) {
        return at(bits, bit).of == Bit::Of::Junction && at(bits, bit).index == slot;
      };
      settled[static_cast<std::size_t>(*std::ranges::find_if(site.bits, is_it))] = true;
    }
  }
  const auto is_settled = [&](std::int32_t bit) { return settled[static_cast<std::size_t>(bit)]; };
  for (PanelSite& site : sites) std::erase_if(site.bits, is_settled);
}

}  // namespace

std::vector<PanelSite> sites_of(const Building& building, const std::vector<Bit>& bits) {
  std::vector<std::vector<std::pair<std::int64_t, std::int64_t>>> joints(building.walls.size());
  for (const ControlJoint& joint : building.control_joints) {
    joints[static_cast<std::size_t>(joint.wall)].push_back({nm(joint.from), nm(joint.to)});
  }
  std::vector<std::vector<std::int32_t>> openings(building.walls.size()), slots(building.walls.size());
  for (std::size_t i = 0; i < building.openings.size(); ++i) {
    openings[static_cast<std::size_t>(building.openings[i].wall)].push_back(static_cast<std::int32_t>(i));
  }
  for (const Bit& bit : bits) {
    if (bit.of == Bit::Of::Junction)
      slots[static_cast<std::size_t>(at(building.junctions, bit.index).main)].push_back(bit.index);
  }
  std::vector<std::int32_t> corner_bit(building.corners.size(), -1), junction_bit(building.junctions.size(), -1);
  for (std::size_t i = 0; i < bits.size(); ++i) {
    auto& table = bits[i].of == Bit::Of::Corner ? corner_bit : junction_bit;
    table[static_cast<std::size_t>(bits[i].index)] = static_cast<std::int32_t>(i);
  }
  std::vector<PanelSite> sites;
  for (std::size_t w = 0; w < building.walls.size(); ++w) {
    const Wall& wall = building.walls[w];
    sort_stably(joints[w]);
    sort_stably(openings[w], [&](std::int32_t a, std::int32_t b) {
      return at(building.openings, a).from < at(building.openings, b).from;
    });
    std::int64_t from = 0;
    for (std::size_t j = 0; j <= joints[w].size(); ++j) {
      PanelSite site;
      site.wall = static_cast<std::int32_t>(w);
      site.from = from;
      site.from_joint = j > 0;
      site.to_joint = j < joints[w].size();
      site.to = site.to_joint ? joints[w][j].first : nm(wall.actual);
      const auto add_end = [&](const WallEnd& end) {
        if (end.kind == EndKind::Corner) site.bits.push_back(at(corner_bit, end.corner));
        if (end.kind == EndKind::Junction && at(junction_bit, end.junction) >= 0)
          site.bits.push_back(at(junction_bit, end.junction));
      };
      if (!site.from_joint) add_end(wall.start);
      if (!site.to_joint) add_end(wall.end);
      for (const std::int32_t o : openings[w]) {
        const ResolvedOpening& opening = at(building.openings, o);
        if (nm(opening.from) < site.from || nm(opening.from) > site.to) continue;
        site.openings.push_back(o);
        if (opening.lintel && opening.lintel->make == LintelMake::OnePiece) site.one_piece.push_back(o);
      }
      for (const std::int32_t s : slots[w]) {
        if (nm(at(building.junctions, s).from) < site.from || nm(at(building.junctions, s).from) > site.to) continue;
        site.slots.push_back(s);
        site.bits.push_back(at(junction_bit, s));
      }
      sort_stably(site.bits);
      site.bits.erase(std::unique(site.bits.begin(), site.bits.end()), site.bits.end());
      sites.push_back(site);
      if (site.to_joint) from = joints[w][j].second;
    }
  }
  settle_beyond(sites, bits);
  return sites;
}

namespace {

/// How far a place is from the last line of a grid before it, or on it.
Length past_line(Length place, Length origin, Length pitch) {
  const Length off = place - origin;
  return off - pitch * off.whole_multiples(pitch);
}

/// The least bearing, not under `least`, at which a lintel's end stands where a unit of the half-unit grid would.
Length aligned_bearing(Length jamb_from_grid, Length least, Length pitch) {
  Length bearing = past_line(jamb_from_grid, Length(), pitch);
  while (bearing < least) bearing += pitch;
  return bearing;
}

/// Where a wall's half-unit grid begins, from its actual face: one joint in at a corner that turns into the building.
Length grid_origin(const Building& building, const WallEnd& end) {
  const bool turns_in = end.kind == EndKind::Corner && !at(building.corners, end.corner).convex;
  return turns_in ? building.joint : Length();
}

}  // namespace

std::vector<Bearings> bearings_of(const Building& building, const ResolvedOpening& opening) {
  const Wall& wall = at(building.walls, opening.wall);
  const Length pitch = building.series_of(wall).pitch(), least = opening.lintel->least_bearing;
  const Length taken = opening.width() + building.joint;  // a lintel and its joint: this and its two bearings
  const Length at_start =
      aligned_bearing(opening.from.distance_from_start() - grid_origin(building, wall.start), least, pitch);
  const Length at_end =
      aligned_bearing(wall.actual - grid_origin(building, wall.end) - opening.to.distance_from_start(), least, pitch);
  const Length shortest = pitch * -((-(taken + least * 2)).whole_multiples(pitch)) - taken;  // both bearings together
  std::vector<Bearings> all;
  const auto add = [&](Length start, Length both) {
    const bool known =
        std::ranges::any_of(all, [&](const Bearings& b) { return b.start == start && b.start + b.end == both; });
    if (!known && start >= least && both - start >= least) all.push_back({start, both - start});
  };
  for (const Length both : {shortest, shortest + pitch, shortest + pitch * 2}) {
    add(both.half_down(), both);  // equal ends
    for (const Length more : {Length(), pitch, pitch * 2}) {
      add(at_start + more, both);
      add(both - at_end - more, both);
    }
    add(least, both);
    add(both - least, both);
  }
  return all;
}

Panel panel_of(const Building& building, const PanelSite& site, const std::vector<Bit>& bits, std::uint32_t values,
               const std::vector<Bearings>& bearings, Strictness strictness, const Layout* printed) {
  const Series& series = building.series_of(at(building.walls, site.wall));
  const Choices choices(site, bits, values);
  Panel panel = rules_of(building, series, strictness);
  std::vector<std::vector<RowRun>> runs;
  for (const Course& course : building.courses)
    runs.push_back(runs_of(building, site, course.number, choices, bearings));
  const std::size_t count = runs.size();
  const auto same = [&](std::size_t a, std::size_t b) {
    return class_of(building.courses[a]) == class_of(building.courses[b]) &&
           std::ranges::equal(runs[a], runs[b], same_run);
  };
  const std::size_t laid = building.laid_to.empty() ? 0 : static_cast<std::size_t>(at(building.laid_to, site.wall));
  std::int32_t band = 0;
  for (std::size_t first = 0; first < count; ++band) {
    // A band goes on while each course is as the one two below it; what is laid and what is not are two.
    std::size_t last = first;
    while (last + 1 < count && last + 1 != laid && (last + 1 < first + 2 || same(last + 1, last - 1))) ++last;
    const auto first_row = static_cast<std::int32_t>(panel.rows.size());
    for (std::size_t c = first; c <= last; ++c) {
      if (c < first + 2) {
        Row row;
        row.runs = runs[c];
        row.band = band;
        row.choices = choices_of(building, site.wall, class_of(building.courses[c]), panel.least_piece);
        row.make_up_from = nm(series.full);
        row.make_up_cells = cells_of(series.full_cells, row.make_up_from);
        if (printed != nullptr) row.printed = printed_row(*printed, site, static_cast<int>(c) + 1, row.runs.size());
        if (c < laid && !row.printed.empty()) fix_row(row, series);
        panel.rows.push_back(std::move(row));
      }
      const std::int32_t row = first_row + static_cast<std::int32_t>((c - first) % 2);
      panel.rows[static_cast<std::size_t>(row)].courses.push_back(static_cast<std::int32_t>(c) + 1);
      panel.course_rows.push_back(row);
    }
    first = last + 1;
  }
  add_zones(building, site, bearings, strictness, panel);
  forbid_floating_bearings(building, site, bearings, panel);
  add_bars(building, site, panel);
  return panel;
}

}  // namespace stringcourse::bond
