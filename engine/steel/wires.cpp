#include "steel/wires.hpp"

#include <algorithm>
#include <functional>

#include "catalogue/rules.hpp"
#include "steel/beds.hpp"

namespace stringcourse::steel {
namespace {

StatedOr stated_or(const std::optional<Length>& stated, std::string_view rule, Tape tape) {
  return {stated ? *stated : limit_of(rule, tape), stated.has_value()};
}

bool has_tee(const Wires& wires, const Plan& plan, const Junction& junction, std::int32_t course) {
  return wires.tees_are == WireTees::Pieces && junction.kind != JunctionKind::ControlJoint &&
         stands(plan, junction, course);
}

/// Between the ends of the straight pieces that lap a tee's legs; legs stop where the masonry of the wall met does.
Break tee_at(const Wires& wires, const std::vector<Break>& breaks, const Junction& junction) {
  const Length middle = middle_of(junction), reach = wires.leg.length - wires.lap.length;
  Break tee{middle - reach, middle + reach, WireEnd::Tee};
  for (const Break& one : breaks) {
    if (one.to <= middle) tee.from = std::max(tee.from, one.to);
    if (one.from >= middle) tee.to = std::min(tee.to, one.from);
  }
  return tee;
}

std::vector<Break> breaks_of(const Wires& wires, const Plan& plan, std::int32_t wall, std::int32_t course) {
  const Building& building = plan.building;
  std::vector<Break> breaks = holes_of(plan, wall, course);
  for (const ControlJoint& joint : building.control_joints) {
    if (joint.wall == wall)
      breaks.push_back({joint.from.distance_from_start(), joint.to.distance_from_start(), WireEnd::ControlJoint});
  }
  std::vector<Break> tees;
  for (const Junction& junction : building.junctions) {
    if (junction.main == wall && has_tee(wires, plan, junction, course))
      tees.push_back(tee_at(wires, breaks, junction));
  }
  breaks.insert(breaks.end(), tees.begin(), tees.end());
  std::ranges::stable_sort(breaks, {}, &Break::from);
  return breaks;
}

bool is_gone_round(const Building& building, const WallEnd& end) {
  if (end.kind != EndKind::Corner) return false;
  const Corner& corner = building.corners[static_cast<std::size_t>(end.corner)];
  return corner.arriving >= 0 && corner.leaving >= 0;
}

/// The junction at one end of a wall, if it ends at one.
const Junction* junction_at(const Building& building, std::int32_t wall, bool at_start) {
  const auto found = std::ranges::find_if(building.junctions, [&](const Junction& one) {
    return one.abutting == wall && one.at_abutting_start == at_start;
  });
  return found == building.junctions.end() ? nullptr : &*found;
}

/// What a wall's own end does to the wire there, and how far it stops from that end.
struct EndThere {
  WireEnd kind = WireEnd::Free;
  Length off;
};

/// A tee's leg is measured from the far face of the wall met: of this wall it takes less by that wall's thickness.
EndThere end_of(const Wires& wires, const Plan& plan, std::int32_t wall, std::int32_t course, bool at_start) {
  const Building& building = plan.building;
  const Wall& in = wall_of(building, wall);
  const WallEnd& end = at_start ? in.start : in.end;
  const Length leg = wires.leg.length - wires.lap.length, cover = wires.end_cover.length;
  if (is_gone_round(building, end)) return {WireEnd::Corner, leg};
  if (end.kind != EndKind::Junction) return {WireEnd::Free, cover};
  const Junction* junction = junction_at(building, wall, at_start);
  if (junction == nullptr || !has_tee(wires, plan, *junction, course)) return {WireEnd::Junction, cover};
  return {WireEnd::Tee, leg - building.series_of(wall_of(building, junction->main)).thickness};
}

bool is_leg(WireEnd end) { return end == WireEnd::Corner || end == WireEnd::Tee; }

/// Cuts a stretch into pieces that lap, all but the last as long as the stock.
void cut(WireStretch& stretch, const Wires& wires) {
  const Length length = stretch.to - stretch.from, step = wires.stock.length - wires.lap.length;
  if (length <= Length()) return;
  stretch.pieces = 1, stretch.last = length;
  if (length <= wires.stock.length) return;
  const Length beyond = length - wires.stock.length;
  const std::int64_t whole = beyond.whole_multiples(step), more = beyond.is_multiple_of(step) ? whole : whole + 1;
  stretch.pieces = static_cast<std::int32_t>(more + 1);
  stretch.last = length - step * more;
}

void add_stretch(Wires& wires, WireStretch stretch, Length from, Length to) {
  stretch.from = from, stretch.to = to;
  // Legs that lap each other need no piece between them; neither does masonry too short for any.
  const bool legs_meet =
      stretch.to - stretch.from <= wires.lap.length && (is_leg(stretch.at_start) || is_leg(stretch.at_end));
  if (!legs_meet) cut(stretch, wires);
  if (stretch.pieces == 0) stretch.to = stretch.from;
  wires.stretches.push_back(stretch);
}

void add_wall(Wires& wires, const Plan& plan, std::int32_t wall, std::int32_t course) {
  const Length actual = wall_of(plan.building, wall).actual, cover = wires.end_cover.length;
  const auto off = [&](WireEnd kind) { return kind == WireEnd::Tee ? Length() : cover; };
  Length from;  // to where something is laid, or nothing can be
  EndThere start = end_of(wires, plan, wall, course, true);
  for (const Break& gap : breaks_of(wires, plan, wall, course)) {
    if (gap.from > from)
      add_stretch(wires, {wall, course, {}, {}, start.kind, gap.kind, 0, {}}, from + start.off,
                  gap.from - off(gap.kind));
    from = std::max(from, gap.to), start = {gap.kind, off(gap.kind)};
  }
  const EndThere end = end_of(wires, plan, wall, course, false);
  if (actual > from)
    add_stretch(wires, {wall, course, {}, {}, start.kind, end.kind, 0, {}}, from + start.off, actual - end.off);
}

/// Whether a corner has masonry on both its walls in this course.
bool stands(const Building& building, const Corner& corner, std::int32_t course) {
  return std::ranges::none_of(building.openings, [&](const ResolvedOpening& one) {
    if (course < one.first_course || course > one.last_course) return false;
    const bool at_end = one.wall == corner.arriving &&
                        one.to_in(course).distance_from_start() >= wall_of(building, corner.arriving).actual;
    return at_end || (one.wall == corner.leaving && one.from_in(course).distance_from_start() <= Length());
  });
}

/// Stock lengths that all is cut from: longest first, each from the first that has room for it.
std::int32_t stock_lengths(const Wires& wires) {
  std::vector<Length> cuts, left;
  std::int32_t whole = 0;
  for (const WireStretch& stretch : wires.stretches) {
    whole += std::max(stretch.pieces - 1, 0);
    if (stretch.pieces > 0) cuts.push_back(stretch.last);
  }
  if (wires.corners_are == WireCorners::Bent)
    cuts.insert(cuts.end(), static_cast<std::size_t>(wires.corner_count), wires.leg.length * 2);
  std::ranges::sort(cuts, std::greater<>());
  for (const Length cut : cuts) {
    const auto room = std::ranges::find_if(left, [&](Length rest) { return rest >= cut; });
    if (room == left.end()) left.push_back(wires.stock.length - cut);
    else *room = *room - cut;
  }
  return whole + static_cast<std::int32_t>(left.size());
}

/// The thickest wall that a tee's legs have to pass; 0: none is asked for.
Length thickest_at_tees(const Wires& wires, const Building& building) {
  Length thickest;
  for (const Junction& one : building.junctions) {
    if (wires.tees_are == WireTees::Pieces && one.kind != JunctionKind::ControlJoint)
      thickest = std::max(thickest, building.series_of(wall_of(building, one.main)).thickness);
  }
  return thickest;
}

/// Nothing is counted of lengths that no one laps so.
bool can_be_counted(Wires& wires, const Building& building) {
  const bool bent = wires.corners_are == WireCorners::Bent;
  if (wires.stock.length < wires.lap.length * 2)
    wires.unsaid.push_back({fact("wire-stock-short", {wires.stock.length, wires.lap.length}), "/steel/wire_stock"});
  if (wires.leg.length <= wires.lap.length || (bent && wires.leg.length * 2 > wires.stock.length))
    wires.unsaid.push_back(
        {fact("wire-leg-unfit", {wires.leg.length, wires.lap.length, wires.stock.length}), "/steel/wire_leg"});
  const Length thick = thickest_at_tees(wires, building);
  if (wires.unsaid.empty() && thick > Length() && wires.leg.length - thick <= wires.lap.length)
    wires.unsaid.push_back({fact("wire-tee-unfit", {wires.leg.length, thick, wires.lap.length}), "/steel/wire_leg"});
  return wires.unsaid.empty();
}

}  // namespace

Wires wires(const Job& job, const Building& building, const Layout& layout) {
  const Plan plan{building, layout};
  const Steel& steel = job.steel;
  Wires wires;
  wires.stock = stated_or(steel.wire_stock, "wire-stock", building.tape);
  wires.lap = stated_or(steel.wire_lap, "wire-lap", building.tape);
  wires.leg = stated_or(steel.wire_leg, "wire-leg", building.tape);
  wires.end_cover = stated_or(steel.end_cover, "bar-end-cover", building.tape);
  wires.corners_stated = steel.wire_corners.has_value();
  wires.corners_are = steel.wire_corners.value_or(WireCorners::Pieces);
  wires.tees_stated = steel.wire_tees.has_value();
  wires.tees_are = steel.wire_tees.value_or(WireTees::Pieces);
  for (const Course& course : building.courses) {
    if (course.wire) wires.courses.push_back(course.number);
  }
  if (wires.courses.empty() || !can_be_counted(wires, building)) return wires;
  for (const std::int32_t course : wires.courses) {
    for (std::size_t wall = 0; wall < building.walls.size(); ++wall)
      add_wall(wires, plan, static_cast<std::int32_t>(wall), course);
    wires.corner_count += static_cast<std::int32_t>(std::ranges::count_if(building.corners, [&](const Corner& one) {
      return one.arriving >= 0 && one.leaving >= 0 && stands(building, one, course);
    }));
    wires.tee_count += static_cast<std::int32_t>(std::ranges::count_if(
        building.junctions, [&](const Junction& one) { return has_tee(wires, plan, one, course); }));
  }
  for (const WireStretch& stretch : wires.stretches) wires.pieces += stretch.pieces;
  wires.to_buy = stock_lengths(wires);
  return wires;
}

}  // namespace stringcourse::steel
