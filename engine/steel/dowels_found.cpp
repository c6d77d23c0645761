#include <algorithm>
#include <cmath>

#include "ground/as_found.hpp"
#include "measure/notation.hpp"
#include "setout/places.hpp"
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

/// Room along the wall beyond the clearance at a place, the least of both courses; nothing where a course has a unit
/// there without a cell. A course without a unit there (the other wall's corner unit) has nothing to say.
std::optional<Length> room_along(const Wanted& wanted, Length along) {
  std::optional<Length> least;
  for (int course = 1; course <= courses_looked_at(wanted.building); ++course) {
    if (!unit_at(wanted.layout, wanted.wall, course, along)) continue;
    const auto cell = cell_at(wanted.building, wanted.layout, wanted.wall, course, along);
    if (!cell) return std::nullopt;
    const Length room = std::min(along - cell->near, cell->far - along) - wanted.half_bar - wanted.rules.clearance;
    least = least ? std::min(*least, room) : room;
  }
  return least;
}

/// Room across the wall, from the bar to the nearer shell, beyond the clearance.
Length room_across(const Wanted& wanted, Length off_face) {
  const Series& series = wanted.building.series_of(wanted.building.walls[static_cast<std::size_t>(wanted.wall)]);
  const Length inside = std::min(off_face - series.face_shell, series.thickness - series.face_shell - off_face);
  return inside - wanted.half_bar - wanted.rules.clearance;
}

/// Adds the cells of one course, narrowed by those of the other. Where the other has no unit (the other wall's corner
/// unit) this course decides; such places are found from that course's own units.
void add_stretches(std::vector<std::pair<Length, Length>>& stretches, const Wanted& wanted, int course, int other) {
  const Series& series = wanted.building.series_of(wanted.building.walls[static_cast<std::size_t>(wanted.wall)]);
  const Length off = wanted.half_bar + wanted.rules.clearance;
  for (const Run& run : setout::runs_in(wanted.layout, wanted.wall, course)) {
    for (const Piece& piece : setout::pieces_of(wanted.layout, run)) {
      for (const CellSpan& cell : setout::cells_of(series, piece)) {
        const Length start = piece.start.nearest_nanometre();
        Length from = start + cell.from + off, to = start + cell.to - off;
        const Length middle = from + (to - from).half_down();
        const bool both = other > 0 && unit_at(wanted.layout, wanted.wall, other, middle);
        if (both && course > other) continue;  // found from the lower course
        if (both) {
          const auto above = cell_at(wanted.building, wanted.layout, wanted.wall, other, middle);
          if (!above) continue;
          from = std::max(from, above->near + off), to = std::min(to, above->far - off);
        }
        if (from <= to) stretches.emplace_back(from, to);
      }
    }
  }
}

/// Stretches of the wall where a bar has its clearance in both courses.
std::vector<std::pair<Length, Length>> lawful_stretches(const Wanted& wanted) {
  std::vector<std::pair<Length, Length>> stretches;
  const bool two = courses_looked_at(wanted.building) > 1;
  add_stretches(stretches, wanted, 1, two ? 2 : 0);
  if (two) add_stretches(stretches, wanted, 2, 1);
  return stretches;
}

/// The nearest place with clearance that is no farther than `most` from the bar; none where there is no such place.
std::optional<Length> place_near(const Wanted& wanted, Length along, Length bar, Length most) {
  std::optional<Length> best;
  for (auto [from, to] : lawful_stretches(wanted)) {
    from = std::max(from, bar - most), to = std::min(to, bar + most);
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

void decide(FoundDowel& dowel, const Wanted& wanted) {
  const auto along = room_along(wanted, dowel.along);
  const Length across = room_across(wanted, dowel.off_face);
  const bool in_cell = along.has_value();
  dowel.room = in_cell ? std::min(*along, across) : across;
  const ground::Verdict verdict = in_cell ? ground::judged(dowel.room, dowel.doubt) : ground::Verdict::DoesNotFit;
  const Length off = magnitude(dowel.off_place);
  if (verdict == ground::Verdict::CannotTell) { dowel.action = Action::CannotTell; return; }
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
  rules.clearance = building.bars ? building.bars->clearance : Length();
  rules.lap = job.steel.dowel_lap;
  rules.bend_high_most = building.courses.empty() ? Length() : building.courses[0].unit_height;
  return rules;
}

std::optional<LawfulPlace> nearest_lawful(const Building& building, const Layout& layout, const DowelRules& rules, int wall, Length along) {
  const Length half_bar = building.bars ? building.bars->diameter.half_down() : Length();
  const Wanted wanted{building, layout, rules, half_bar, wall};
  const Series& series = building.series_of(building.walls[static_cast<std::size_t>(wall)]);
  const Length off = series.face_shell + half_bar + rules.clearance;
  std::optional<LawfulPlace> best;
  Length best_way;
  for (const auto& [from, to] : lawful_stretches(wanted)) {
    const Length way = along < from ? from - along : along > to ? along - to : Length();
    if (best && way >= best_way) continue;
    best = LawfulPlace{from, to, off, series.thickness - off}, best_way = way;
  }
  return best;
}

std::vector<FoundDowel> dowels_found(const Job& job, const Building& building, const Layout& layout, const std::vector<bool>& counts, Length doubt) {
  const std::vector<Dowel> planned = dowels_of(building, layout);
  const DowelRules rules = dowel_rules(job, building);
  const Length half_bar = building.bars ? building.bars->diameter.half_down() : Length();
  std::vector<FoundDowel> found;
  for (std::size_t k = 0; k < job.readings.size(); ++k) {
    if (!counts[k] || !job.readings[k].dowel) continue;
    const DowelReading& reading = *job.readings[k].dowel;
    const auto place = ground::wall_place(building, reading.on, reading.from, reading.at);
    if (!place) continue;
    FoundDowel dowel{.entry = k, .wall = place->wall, .along = place->along, .off_face = reading.off_face, .off_place = {}, .room = {}, .doubt = doubt, .shift = {}, .height = {}, .apart = {}};
    for (const setout::WallBar& bar : setout::bars_on_wall(building, layout, place->wall)) {
      const Length off = place->along - bar.centre;
      if (bar.first_course != 1 || (dowel.has_bar && magnitude(off) >= magnitude(dowel.off_place))) continue;
      dowel.has_bar = true, dowel.off_place = off;
    }
    for (const Dowel& one : planned) {
      if (dowel.has_bar && one.wall == place->wall && one.along == place->along - dowel.off_place) dowel.number = one.number;
    }
    decide(dowel, {building, layout, rules, half_bar, place->wall});
    found.push_back(dowel);
  }
  return found;
}

std::string_view action_name(Action action) {
  switch (action) {
    case Action::Stands: return "stands";
    case Action::CannotTell: return "cannot-tell";
    case Action::LapApart: return "lap-apart";
    case Action::Bend: return "bend";
    case Action::CutAndReplace: return "cut-and-replace";
  }
  return "";
}

std::string action_text(const FoundDowel& dowel, Tape tape) {
  switch (dowel.action) {
    case Action::Stands: return "stands in its cell";
    case Action::CannotTell: return "the tape can't tell: look when the first unit is laid dry over it";
    case Action::LapApart: return "stands in a cell " + tape_text(dowel.apart, tape) + " from its bar: lap the two apart, both in grout";
    case Action::Bend:
      return "bend " + tape_text(dowel.shift, tape) + " sideways over at least " + tape_text(dowel.height, tape) + " of height (1 in 6), where your engineer allows it" +
             (dowel.apart > Length::inches(2) ? "; then it laps " + tape_text(dowel.apart, tape) + " apart from its bar" : "");
    case Action::CutAndReplace: return "too far from its bar for a lap or a bend: cut it off and set another, with your engineer's approval";
  }
  return "";
}

}  // namespace stringcourse::steel
