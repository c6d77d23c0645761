#include "proof/wires.hpp"

#include <algorithm>
#include <list>
#include <optional>
#include <set>
#include <utility>

namespace stringcourse::proof {
namespace {

template <typename List>
const auto& at(const List& list, std::int64_t index) {
  return list[static_cast<std::size_t>(index)];
}

std::string bed_of(const Building& b, int wall, int course) {
  return at(b.walls, wall).name + ", on course " + std::to_string(course);
}

/// Masonry without a break in one course of one wall, as its runs have it.
struct Masonry {
  Length from, to;
  bool corner_before = false, corner_after = false;
  bool tee_before = false, tee_after = false;  // what ends it laps a leg of a tee: nothing is taken off
};

bool at_corner(RunEnd end) { return end == RunEnd::ThroughCorner || end == RunEnd::ButtCorner; }
bool breaks(RunEnd end) { return end == RunEnd::Jamb || end == RunEnd::ControlJoint || end == RunEnd::FreeEnd; }

/// What lies end to end in one course: runs, and one-piece lintels whose top the bed is.
struct Part {
  Length from, to;
  RunEnd at_start, at_end;
  bool empty = false;  // a joint alone
};

std::vector<Part> parts_of(const Building& b, const Layout& layout, int wall, int course) {
  std::vector<Part> parts;
  for (const Run& run : layout.runs)
    if (run.wall == wall && run.course == course)
      parts.push_back({run.start, run.end, run.at_start, run.at_end, run.piece_count == 0});
  for (const PlacedLintel& placed : layout.lintels) {
    const ResolvedOpening& o = at(b.openings, placed.opening);
    if (o.wall != wall || !o.lintel || o.lintel->make != LintelMake::OnePiece) continue;
    if (o.lintel->first_course + o.lintel->courses - 1 != course) continue;
    parts.push_back({o.from.distance_from_start() - placed.start_bearing,
                     o.to.distance_from_start() + placed.end_bearing, RunEnd::LintelEnd, RunEnd::LintelEnd, false});
  }
  std::ranges::stable_sort(parts, {}, &Part::from);
  return parts;
}

/// Nothing goes on from one part to the next: an opening, a joint, or a lintel that has no bed here.
bool parted(const Part& before, const Part& after) {
  const bool lintel = before.at_end == RunEnd::LintelEnd && after.at_start == RunEnd::LintelEnd;
  return breaks(before.at_end) || breaks(after.at_start) || (lintel && before.to != after.from);
}

std::vector<Masonry> masonry_of(const Building& b, const Layout& layout, int wall, int course) {
  std::vector<Masonry> all;
  const Length actual = at(b.walls, wall).actual;
  const std::vector<Part> parts = parts_of(b, layout, wall, course);
  for (std::size_t k = 0; k < parts.size(); ++k) {
    const bool start = at_corner(parts[k].at_start), end = at_corner(parts[k].at_end);
    const Length to = end ? actual : std::min(parts[k].to, actual);
    if (k == 0 || parted(parts[k - 1], parts[k]))
      all.push_back({start ? Length() : std::max(parts[k].from, Length()), to, start, end});
    all.back().to = to, all.back().corner_after = end;
  }
  return all;
}

Length middle_of(const Junction& tee) {
  const std::int64_t both =
      tee.from.distance_from_start().in_nanometres() + tee.to.distance_from_start().in_nanometres();
  return Length::nanometres(both / 2);
}

/// Whether a one-piece lintel that is here goes on in the course above.
bool inside_lintel(const Building& b, const Layout& layout, int wall, int course, Length place) {
  return std::ranges::any_of(layout.lintels, [&](const PlacedLintel& placed) {
    const ResolvedOpening& o = at(b.openings, placed.opening);
    if (o.wall != wall || !o.lintel || o.lintel->make != LintelMake::OnePiece) return false;
    const int last = o.lintel->first_course + o.lintel->courses - 1;
    return o.lintel->first_course <= course && course < last &&
           o.from.distance_from_start() - placed.start_bearing < place &&
           place < o.to.distance_from_start() + placed.end_bearing;
  });
}

/// Whether both walls have a bed at a junction in this course.
bool both_stand(const Building& b, const Layout& layout, const Junction& tee, int course) {
  if (inside_lintel(b, layout, tee.main, course, middle_of(tee))) return false;                  // no bed is there
  if (middle_of(tee) < Length() || at(b.walls, tee.main).actual < middle_of(tee)) return false;  // a corner's
  const Length actual = at(b.walls, tee.abutting).actual;
  for (const Part& part : parts_of(b, layout, tee.abutting, course)) {
    // Masonry that comes as near to the wall met as a joint.
    const bool there = tee.at_abutting_start ? part.from <= b.joint_most : part.to >= actual - b.joint_most;
    const bool jamb = (tee.at_abutting_start ? part.at_start : part.at_end) == RunEnd::Jamb;
    if (there && !jamb && !part.empty) return true;
  }
  return false;
}

/// How far a wall's wire stops from its end at a tee there; none: no tee lies there in this course.
std::optional<Length> off_tee(const Job& job, const Building& b, const Layout& layout, const steel::Wires& wires,
                              const Junction& tee, int course) {
  if (job.steel.wire_tees.value_or(WireTees::Pieces) != WireTees::Pieces) return std::nullopt;
  if (tee.kind == JunctionKind::ControlJoint || !both_stand(b, layout, tee, course)) return std::nullopt;
  return wires.leg.length - wires.lap.length - b.series_of(at(b.walls, tee.main)).thickness;
}

/// What is left of masonry beside the legs of the tees on it. Both legs are as long, from the middle.
std::vector<Masonry> beside_tees(const Job& job, const Building& b, const Layout& layout, const steel::Wires& wires,
                                 int wall, int course, const std::vector<Masonry>& whole) {
  std::vector<Masonry> parts = whole;
  for (const Junction& tee : b.junctions) {
    if (tee.main != wall || !off_tee(job, b, layout, wires, tee, course)) continue;
    const Length middle = middle_of(tee);
    const Length low = middle - wires.leg.length + wires.lap.length,
                 high = middle + wires.leg.length - wires.lap.length;
    std::vector<Masonry> next;
    for (const Masonry& part : parts) {
      // Legs end where the masonry round the tee does.
      const auto round =
          std::ranges::find_if(whole, [&](const Masonry& one) { return one.from <= middle && middle <= one.to; });
      const bool same = round != whole.end() && round->from <= part.from && part.to <= round->to;
      if (!same || part.to <= low || high <= part.from) {
        next.push_back(part);
        continue;
      }
      if (part.from < low)
        next.push_back(part), next.back().to = low, next.back().tee_after = true, next.back().corner_after = false;
      if (high < part.to)
        next.push_back(part), next.back().from = high, next.back().tee_before = true, next.back().corner_before = false;
    }
    parts = next;
  }
  return parts;
}

/// What an end of masonry takes off the wire: a corner's leg, a tee's, or the cover.
Length taken_off(const Job& job, const Building& b, const Layout& layout, const steel::Wires& wires, int wall,
                 int course, const Masonry& one, bool at_start) {
  if (at_start ? one.tee_before : one.tee_after) return Length();
  if (at_start ? one.corner_before : one.corner_after) return wires.leg.length - wires.lap.length;
  const bool whole_end = at_start ? one.from <= b.joint : one.to >= at(b.walls, wall).actual - b.joint;
  for (const Junction& tee : b.junctions) {
    if (tee.abutting != wall || tee.at_abutting_start != at_start || !whole_end) continue;
    if (const auto off = off_tee(job, b, layout, wires, tee, course)) return *off;
  }
  return wires.end_cover.length;
}

Violations check_bed(const Job& job, const Building& b, const Layout& layout, const steel::Wires& wires, int wall,
                     int course) {
  std::vector<const steel::WireStretch*> stretches;
  for (const steel::WireStretch& one : wires.stretches) {
    if (one.wall == wall && one.course == course && one.pieces != 0) stretches.push_back(&one);
  }
  std::vector<Masonry> masonry = beside_tees(job, b, layout, wires, wall, course, masonry_of(b, layout, wall, course));
  // What the legs of corners and tees fill needs no piece.
  std::erase_if(masonry, [&](Masonry& one) {
    const Length before = taken_off(job, b, layout, wires, wall, course, one, true),
                 after = taken_off(job, b, layout, wires, wall, course, one, false);
    const bool legs = one.corner_before || one.corner_after || one.tee_before || one.tee_after ||
                      before != wires.end_cover.length || after != wires.end_cover.length;
    one.from += before, one.to -= after;
    return one.to - one.from <= (legs ? wires.lap.length : Length());
  });
  if (masonry.size() != stretches.size())
    return {violation(kBars, bed_of(b, wall, course),
                      std::to_string(stretches.size()) + " stretches of " + std::to_string(masonry.size()))};
  Violations found;
  for (std::size_t k = 0; k < masonry.size(); ++k) {
    const steel::WireStretch& one = *stretches[k];
    const Length from = masonry[k].from, to = masonry[k].to;
    Length reach = one.last, without = Length();
    for (int piece = 1; piece < one.pieces; ++piece) reach = reach + wires.stock.length - wires.lap.length;
    for (int piece = 1; piece < one.pieces; ++piece)
      without = without + wires.stock.length - (piece > 1 ? wires.lap.length : Length());
    if (one.from != from || one.to != to || reach != to - from || one.last > wires.stock.length)
      found.push_back(violation(kBars, bed_of(b, wall, course), "pieces and laps do not fill the stretch"));
    if (one.pieces > 1 && without >= to - from)
      found.push_back(violation(kBars, bed_of(b, wall, course), "one piece less would do"));
  }
  return found;
}

/// Longest first, each from the first with room: by the rests one by one.
std::int64_t bought(const steel::Wires& wires) {
  std::vector<Length> cuts;
  for (const steel::WireStretch& one : wires.stretches) {
    for (int piece = 1; piece < one.pieces; ++piece) cuts.push_back(wires.stock.length);
    if (one.pieces > 0) cuts.push_back(one.last);
  }
  if (wires.corners_are == WireCorners::Bent) {
    for (int k = 0; k < wires.corner_count; ++k) cuts.push_back(wires.leg.length + wires.leg.length);
  }
  std::ranges::stable_sort(cuts, [](Length a, Length b) { return b < a; });
  std::list<Length> rests;
  for (const Length cut : cuts) {
    auto rest = rests.begin();
    while (rest != rests.end() && *rest < cut) ++rest;
    if (rest == rests.end()) rest = rests.insert(rests.end(), wires.stock.length);
    *rest = *rest - cut;
  }
  return static_cast<std::int64_t>(rests.size());
}

}  // namespace

Violations check_wires(const Job& job, const Building& building, const Layout& layout, const steel::Wires& wires) {
  const int every = job.steel.wire_every.value_or(0);
  const int last = static_cast<int>(building.courses.size());
  if (!wires.unsaid.empty() || !layout.stopped.empty()) return {};
  Violations found;
  std::int64_t corners = 0, pieces = 0, tees = 0;
  for (int course = 1; course < last; ++course) {
    if (every == 0 || course % every != 0) continue;
    for (int wall = 0; wall < static_cast<int>(building.walls.size()); ++wall) {
      for (const Violation& one : check_bed(job, building, layout, wires, wall, course)) found.push_back(one);
    }
    for (const Junction& tee : building.junctions)
      tees += off_tee(job, building, layout, wires, tee, course).has_value();
    for (const Run& run : layout.runs) corners += run.course == course && run.at_start == RunEnd::ThroughCorner;
    for (const Run& run : layout.runs) corners += run.course == course && run.at_end == RunEnd::ThroughCorner;
  }
  for (const steel::WireStretch& one : wires.stretches) {
    pieces += one.pieces;
    if (every == 0 || one.course % every != 0 || one.course >= last)
      found.push_back(violation(kBars, bed_of(building, one.wall, one.course), "a bed that the job does not ask for"));
  }
  if (corners != wires.corner_count) found.push_back(violation(kBars, "joint reinforcement", "corners miscounted"));
  if (tees != wires.tee_count) found.push_back(violation(kBars, "joint reinforcement", "tees miscounted"));
  if (pieces != wires.pieces) found.push_back(violation(kBars, "joint reinforcement", "pieces do not add up"));
  if (bought(wires) != wires.to_buy) found.push_back(violation(kBars, "joint reinforcement", "other lengths to buy"));
  return found;
}

Violations check_ties(const Job& job, const Building& building, const Layout& layout, const steel::Ties& ties) {
  std::set<std::pair<int, int>> wanted, found;  // by course, then junction
  bool unsaid = false;
  for (std::size_t k = 0; k < building.junctions.size(); ++k) {
    if (building.junctions[k].kind != JunctionKind::Tied) continue;
    unsaid = true;
    const int every = job.steel.tie_every.value_or(0), last = static_cast<int>(building.courses.size());
    for (int course = every; every > 0 && course < last; course += every) {
      if (both_stand(building, layout, building.junctions[k], course)) wanted.insert({course, static_cast<int>(k)});
    }
  }
  for (const steel::Tie& tie : ties.ties) found.insert({tie.course, tie.junction});
  Violations all;
  if (found != wanted || found.size() != ties.ties.size())
    all.push_back(violation("ties", "at junctions", "there are others, or fewer"));
  const bool wire = std::ranges::any_of(building.courses, [](const Course& course) { return course.wire; }) &&
                    job.steel.wire_tees != std::optional(WireTees::None);
  if (ties.unsaid.empty() != (!unsaid || job.steel.tie_every || wire))
    all.push_back(violation("ties", "unsaid", "the job says how it ties, or does not"));
  return all;
}

}  // namespace stringcourse::proof
