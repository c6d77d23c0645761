#include <algorithm>
#include <cmath>

#include "bond/layout_parts.hpp"
#include "catalogue/rules.hpp"
#include "ground/as_found.hpp"
#include "steel/dowels.hpp"
#include "steel/slab.hpp"

namespace stringcourse::steel {
namespace {

struct Wanted {
  const Building& building;
  const Layout& layout;
  const DowelRules& rules;
  Length half_bar;
  int wall;
};

int courses_looked_at(const Building& building) { return std::min<int>(2, static_cast<int>(building.courses.size())); }

/// What is left round a place beyond the clearance, the least of both courses; nothing where a course has a unit there
/// without a cell. A course without a unit there (an opening) has nothing to say. The cell is the one over the planned
/// depth: a dowel far out across the wall still belongs to it.
struct Left {
  Length along, across;
};
std::optional<Left> room_left(const Wanted& wanted, Length along, Length depth, Length planned_depth) {
  std::optional<Left> least;
  const Length off = wanted.half_bar + wanted.rules.clearance;
  for (int course = 1; course <= courses_looked_at(wanted.building); ++course) {
    const bond::SeenFrom place{along, planned_depth};
    if (!unit_at(wanted.building, wanted.layout, wanted.wall, course, place)) continue;
    const auto cell = cell_at(wanted.building, wanted.layout, wanted.wall, course, place);
    if (!cell) return std::nullopt;
    const Left here{std::min(along - cell->clear.from, cell->clear.to - along) - off,
                    std::min(depth - cell->clear.shallow, cell->clear.deep - depth) - off};
    least = least ? Left{std::min(least->along, here.along), std::min(least->across, here.across)} : here;
  }
  return least;
}

/// Room across the wall, from the bar to the nearer shell, beyond the clearance, where no cell says it.
Length room_across(const Wanted& wanted, Length off_face) {
  const Series& series = wanted.building.series_of(wanted.building.walls[static_cast<std::size_t>(wanted.wall)]);
  const Length inside = std::min(off_face - series.face_shell, series.thickness - series.face_shell - off_face);
  return inside - wanted.half_bar - wanted.rules.clearance;
}

/// Adds the cells of one course, narrowed by those of the other, to where a bar's centre may stand in them. Where the
/// other has no unit (an opening) this course decides; such places are found from that course's own units.
void add_stretches(std::vector<setout::OnWall>& stretches, const Wanted& wanted, int course, int other) {
  const Length off = wanted.half_bar + wanted.rules.clearance;
  for (const InCell& cell : setout::cells_seen(wanted.building, wanted.layout, wanted.wall, course)) {
    setout::OnWall room = cell.clear;
    const bond::SeenFrom middle{room.from + (room.to - room.from).half_down(),
                                room.shallow + (room.deep - room.shallow).half_down()};
    const bool both = other > 0 && unit_at(wanted.building, wanted.layout, wanted.wall, other, middle);
    if (both && course > other) continue;  // found from the lower course
    if (both) {
      const auto above = cell_at(wanted.building, wanted.layout, wanted.wall, other, middle);
      if (!above) continue;
      room = {std::max(room.from, above->clear.from), std::min(room.to, above->clear.to),
              std::max(room.shallow, above->clear.shallow), std::min(room.deep, above->clear.deep)};
    }
    room = {room.from + off, room.to - off, room.shallow + off, room.deep - off};
    if (room.from <= room.to) stretches.push_back(room);
  }
}

/// Where along the wall a bar has its clearance in both courses.
std::vector<setout::OnWall> lawful_stretches(const Wanted& wanted) {
  std::vector<setout::OnWall> stretches;
  const bool two = courses_looked_at(wanted.building) > 1;
  add_stretches(stretches, wanted, 1, two ? 2 : 0);
  if (two) add_stretches(stretches, wanted, 2, 1);
  return stretches;
}

/// The nearest place with clearance that is no farther than `most` from the bar; none where there is no such place.
std::optional<Length> place_near(const Wanted& wanted, Length along, Length bar, Length most) {
  std::optional<Length> best;
  for (const setout::OnWall& stretch : lawful_stretches(wanted)) {
    const Length from = std::max(stretch.from, bar - most), to = std::min(stretch.to, bar + most);
    if (from > to) continue;
    const Length place = std::clamp(along, from, to);
    if (!best || magnitude(place - along) < magnitude(*best - along)) best = place;
  }
  return best;
}

/// The greater whole nanometre of the straight way of two parts.
Length straight(Length a, Length b) {
  const double x = static_cast<double>(a.in_nanometres()), y = static_cast<double>(b.in_nanometres());
  return Length::nanometres(static_cast<std::int64_t>(std::sqrt(x * x + y * y) + 0.999999));
}

Length apart_most(const DowelRules& rules) {
  if (!rules.lap) return rules.apart_most;
  return std::min(rules.apart_most, Length::nanometres(rules.lap->in_nanometres() / 5));
}

void decide(FoundDowel& dowel, const Wanted& wanted, Length planned_depth) {
  const auto left = room_left(wanted, dowel.along, dowel.off_face, planned_depth);
  const Length across = left ? left->across : room_across(wanted, dowel.off_face);
  const bool in_cell = left.has_value();
  dowel.room = in_cell ? std::min(left->along, across) : across;
  const ground::Verdict verdict = in_cell ? ground::judged(dowel.room, dowel.doubt) : ground::Verdict::DoesNotFit;
  const Length off = magnitude(dowel.off_place);
  if (verdict == ground::Verdict::CannotTell) {
    dowel.action = Action::CannotTell;
    return;
  }
  const Length most = std::max(wanted.rules.along, apart_most(wanted.rules));
  dowel.action = Action::CutAndReplace;
  if (!dowel.has_bar) return;
  if (verdict == ground::Verdict::Fits) {
    dowel.apart = off;
    if (off <= wanted.rules.along) dowel.action = Action::Stands;
    else if (off <= most) dowel.action = Action::LapApart;
    return;
  }
  const auto place = place_near(wanted, dowel.along, dowel.along - dowel.off_place, most);
  if (!place) return;
  dowel.shift = straight(magnitude(*place - dowel.along), across < Length() ? -across : Length());
  dowel.height = dowel.shift * wanted.rules.bend_slope;
  dowel.apart = magnitude(*place - (dowel.along - dowel.off_place));
  if (dowel.height <= wanted.rules.bend_high_most) dowel.action = Action::Bend;
}

}  // namespace

DowelRules dowel_rules(const Job& job, const Building& building) {
  DowelRules rules;
  rules.along = limit_of("bar-place"), rules.apart_most = limit_of("lap-apart");
  rules.clearance = building.bars ? building.bars->clearance : Length();
  rules.lap = job.steel.dowel_lap;
  rules.bend_high_most = building.courses.empty() ? Length() : building.courses[0].unit_height;
  return rules;
}

std::optional<LawfulPlace> nearest_lawful(const Building& building, const Layout& layout, const DowelRules& rules,
                                          int wall, Length along) {
  const Length half_bar = building.bars ? building.bars->diameter.half_down() : Length();
  const Wanted wanted{building, layout, rules, half_bar, wall};
  std::optional<LawfulPlace> best;
  Length best_way;
  for (const setout::OnWall& room : lawful_stretches(wanted)) {
    const Length way = along < room.from ? room.from - along : along > room.to ? along - room.to : Length();
    if (best && way >= best_way) continue;
    best = LawfulPlace{room.from, room.to, room.shallow, room.deep}, best_way = way;
  }
  return best;
}

std::vector<FoundDowel> dowels_found(const Job& job, const Building& building, const Layout& layout,
                                     const std::vector<bool>& counts, Length doubt) {
  const std::vector<Dowel> planned = dowels_of(building, layout);
  const DowelRules rules = dowel_rules(job, building);
  const Length half_bar = building.bars ? building.bars->diameter.half_down() : Length();
  std::vector<FoundDowel> found;
  for (std::size_t k = 0; k < job.readings.size(); ++k) {
    if (!counts[k] || !job.readings[k].dowel) continue;
    const DowelReading& reading = *job.readings[k].dowel;
    const auto place = ground::wall_place(building, reading.on, reading.from, reading.at);
    if (!place) continue;
    FoundDowel dowel{.entry = k,
                     .wall = place->wall,
                     .along = place->along,
                     .off_face = reading.off_face,
                     .off_place = {},
                     .room = {},
                     .doubt = doubt,
                     .shift = {},
                     .height = {},
                     .apart = {}};
    Length depth = building.series_of(building.walls[static_cast<std::size_t>(place->wall)]).thickness.half_down();
    for (const bond::WallBar& bar : bond::bars_on_wall(building, layout, place->wall)) {
      const Length off = place->along - bar.centre;
      if (bar.first_course != 1 || (dowel.has_bar && magnitude(off) >= magnitude(dowel.off_place))) continue;
      dowel.has_bar = true, dowel.off_place = off, depth = bar.off_face;
    }
    for (const Dowel& one : planned) {
      if (dowel.has_bar && one.wall == place->wall && one.along == place->along - dowel.off_place)
        dowel.number = one.number;
    }
    decide(dowel, {building, layout, rules, half_bar, place->wall}, depth);
    found.push_back(dowel);
  }
  return found;
}

Fact action_said(const FoundDowel& dowel) {
  switch (dowel.action) {
    case Action::Stands: return fact("dowel-stands");
    case Action::CannotTell: return fact("dowel-cannot-tell");
    case Action::LapApart: return fact("dowel-lap-apart", {dowel.apart});
    case Action::Bend:
      return dowel.apart > limit_of("bar-place") ? fact("dowel-bend-and-lap", {dowel.shift, dowel.height, dowel.apart})
                                                 : fact("dowel-bend", {dowel.shift, dowel.height});
    case Action::CutAndReplace: return fact("dowel-replace");
  }
  return {};
}

}  // namespace stringcourse::steel
