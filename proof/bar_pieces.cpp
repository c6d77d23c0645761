// Bars as they are cut, held against the layout. Over 400 lines: upright and level bars share what laps and stock ask.
#include "proof/bar_pieces.hpp"

#include <algorithm>
#include <map>
#include <ranges>
#include <tuple>

#include "proof/lap_rule.hpp"

namespace stringcourse::proof {
namespace {

using steel::BarPiece;
using steel::BarUse;
using Pieces = std::vector<const BarPiece*>;

template <typename List>
const auto& at(const List& list, std::int64_t index) {
  return list[static_cast<std::size_t>(index)];
}

constexpr Length kSmallest = Length::nanometres(1);

/// What every check asks.
struct Asked {
  const Job& job;
  const Building& b;
  const Layout& layout;
  Length step, stock, cover;
  bool laps = false;  // the job's rule gives them
};

Asked asked_of(const Job& job, const Building& b, const Layout& layout) {
  const bool inches = b.tape == Tape::Inches;
  const Length step = inches ? Length::sixteenths(1) : Length::millimetres(1);
  const Length stock = job.steel.bar_stock.value_or(inches ? Length::feet(20) : Length::millimetres(6'000));
  const Length cover = job.steel.end_cover.value_or(inches ? Length::sixteenths(24) : Length::millimetres(40));
  return {job, b, layout, step, step * (stock.in_nanometres() / step.in_nanometres()), cover, gives_laps(job.steel)};
}

Violation wrong(std::string where, std::string text) { return violation(kBars, std::move(where), std::move(text)); }

/// Within a step of the tape below `most`.
bool just_under(Length value, Length most, Length step) { return value <= most && most - value < step; }

/// No shorter than the rule, and no step longer than it must be. A typed length may be no whole step.
bool is_lap(const Asked& a, const LapAsked& of, Length lap, Length slack) {
  if (!is_long_enough(*a.job.steel.lap, of, lap)) return false;
  const Length less = lap - a.step - slack;
  return less <= Length() || !is_long_enough(*a.job.steel.lap, of, less);
}

Length top_of(const Building& b, int course) { return at(b.courses, course - 1).top; }
Length bearing_of(const Building& b) { return b.courses[0].top - b.courses[0].unit_height - b.joint; }

/// Along a wall's line from its start, of a place in plan.
Length along(const Wall& wall, const PlanPoint& point) {
  const Length x = point.x - wall.start_point.x, y = point.y - wall.start_point.y;
  switch (wall.heading) {
    case Heading::West: return -x;
    case Heading::East: return x;
    case Heading::North: return y;
    case Heading::South: return -y;
  }
  return x;
}

bool faces_air(RunEnd end) {
  return end == RunEnd::ThroughCorner || end == RunEnd::Jamb || end == RunEnd::FreeEnd || end == RunEnd::ControlJoint ||
         end == RunEnd::EnteringJunction;
}

/// Masonry round a bar: to the faces and ends of its wall, and to each bar of it that stands in one of its courses.
Length around_bar(const Asked& a, const PlacedBar& bar) {
  const Wall& wall = at(a.b.walls, bar.wall);
  const Length thickness = a.b.series_of(wall).thickness, db = a.b.bars->diameter;
  Length middle = std::min(bar.off_face, thickness - bar.off_face);
  for (const Run& run : a.layout.runs) {
    if (run.wall != bar.wall || run.course < bar.first_course || run.course > bar.last_course) continue;
    if (bar.centre < run.start || bar.centre > run.end) continue;
    if (faces_air(run.at_start)) middle = std::min(middle, bar.centre - run.start);
    if (faces_air(run.at_end)) middle = std::min(middle, run.end - bar.centre);
  }
  Length least = std::max(kSmallest, middle - db + db.half_down());
  for (const PlacedBar& other : a.layout.bars) {
    const bool shared =
        other.corner >= 0 && ((wall.start.kind == EndKind::Corner && other.corner == wall.start.corner) ||
                              (wall.end.kind == EndKind::Corner && other.corner == wall.end.corner));
    if (other.wall != bar.wall && !shared) continue;
    if (other.first_course > bar.last_course || other.last_course < bar.first_course) continue;
    const Length there = along(wall, plan_point(at(a.b.walls, other.wall), other.centre, other.off_face));
    const Length apart = there < bar.centre ? bar.centre - there : there - bar.centre;
    if (apart > Length()) least = std::min(least, std::max(kSmallest, apart - db - db));
  }
  return least;
}

LapAsked lap_of_bar(const Asked& a, const PlacedBar& bar) {
  return {a.b.bars->size, a.b.bars->diameter, around_bar(a, bar)};
}

Violations check_dowel(const Asked& a, const PlacedBar& bar, const Pieces& dowels, const std::string& where) {
  const bool wanted = bar.first_course == 1 && (a.job.steel.dowel_lap || a.laps);
  if (dowels.size() != (wanted ? 1u : 0u)) return {wrong(where, "not one dowel for a bar")};
  if (!wanted) return {};
  const BarPiece& dowel = *dowels[0];
  const Length up = dowel.to - dowel.from;
  const bool stands =
      a.job.steel.dowel_lap ? up == *a.job.steel.dowel_lap : is_lap(a, lap_of_bar(a, bar), up, Length());
  if (dowel.from != bearing_of(a.b) || dowel.lap != up || !stands) return {wrong(where, "a dowel stands up otherwise")};
  return {};
}

/// A lap's lower end is on a course between the bar's first and last.
bool on_course(const Asked& a, const PlacedBar& bar, Length height) {
  for (int course = bar.first_course; course < bar.last_course; ++course) {
    if (top_of(a.b, course) == height) return true;
  }
  return false;
}

/// The height up to which each piece laps what is below it: the dowel, or the piece before.
std::vector<Length> lapped_up_to(const Asked& a, const PlacedBar& bar, const Pieces& pieces, Length lap) {
  std::vector<Length> heights;
  for (std::size_t k = 0; k < pieces.size(); ++k) {
    const Length dowel = std::max(lap, a.job.steel.dowel_lap.value_or(Length()));
    if (k > 0) heights.push_back(pieces[k - 1]->to);
    else heights.push_back(bar.first_course == 1 ? pieces[0]->from + dowel : pieces[0]->from);
  }
  return heights;
}

/// Whether a course over `lapped` would have shortened a piece that is longer than the stock.
bool could_be_shorter(const Asked& a, const PlacedBar& bar, const BarPiece& piece, Length lap, Length lapped) {
  for (int course = bar.first_course; course < bar.last_course; ++course) {
    const Length top = top_of(a.b, course);
    if (top >= lapped + a.step && top > piece.from && top + lap - piece.from <= a.stock - a.step &&
        top + lap + a.step < piece.to)
      return true;
  }
  return false;
}

Violations check_pour_stops(const Asked& a, const PlacedBar& bar, const Pieces& pieces, Length lap,
                            const std::string& where) {
  const std::vector<Length> lapped = lapped_up_to(a, bar, pieces, lap);
  const Length stop = top_of(a.b, bar.last_course) - a.cover;
  for (const int pour : a.job.steel.pour_tops) {
    if (pour < bar.first_course || pour >= bar.last_course || top_of(a.b, pour) + lap + a.step >= stop) continue;
    const bool begins =
        std::ranges::any_of(pieces, [&](const BarPiece* one) { return one->from == top_of(a.b, pour); });
    // The piece that passes the stop began at a lap that ends over it.
    const bool has_no_room = std::ranges::any_of(std::views::iota(std::size_t{0}, pieces.size()), [&](std::size_t k) {
      return pieces[k]->from < top_of(a.b, pour) && top_of(a.b, pour) < pieces[k]->to &&
             top_of(a.b, pour) < lapped[k] + a.step;
    });
    if (!begins && !has_no_room) return {wrong(where, "no lap where a pour stops")};
  }
  return {};
}

/// The courses that a piece reaches into.
bool says_courses(const Asked& a, const BarPiece& piece) {
  const auto begins = [&](int course) { return course == 1 ? bearing_of(a.b) : top_of(a.b, course - 1); };
  return piece.from >= begins(piece.first_course) && piece.from < top_of(a.b, piece.first_course) &&
         piece.to > begins(piece.last_course) && piece.to <= top_of(a.b, piece.last_course);
}

Violations check_upright(const Asked& a, const PlacedBar& bar, const Pieces& pieces, const std::string& where) {
  if (!a.laps) return pieces.empty() ? Violations{} : Violations{wrong(where, "a bar is cut without a lap rule")};
  const Course& first = at(a.b.courses, bar.first_course - 1);
  const Length low = bar.first_course == 1 ? bearing_of(a.b) : first.top - first.unit_height + a.cover;
  const Length stop = top_of(a.b, bar.last_course) - a.cover;
  if (pieces.empty()) return stop <= low ? Violations{} : Violations{wrong(where, "a bar is not cut")};
  const LapAsked of = lap_of_bar(a, bar);
  if (pieces.front()->from != low) return {wrong(where, "a bar begins elsewhere")};
  if (!just_under(pieces.back()->to, stop, a.step)) return {wrong(where, "a bar ends elsewhere")};
  Length lap;
  for (std::size_t k = 0; k < pieces.size(); ++k) {
    const bool last = k + 1 == pieces.size();
    const BarPiece& piece = *pieces[k];
    const Length shared = last ? Length() : piece.to - pieces[k + 1]->from;
    if (piece.lap != shared) return {wrong(where, "a lap is said otherwise than it is")};
    if (!says_courses(a, piece)) return {wrong(where, "a piece is said to be in other courses")};
    if (piece.wall != bar.wall) return {wrong(where, "a piece stands in another wall")};
    if (!last && !on_course(a, bar, pieces[k + 1]->from)) return {wrong(where, "a lap is not on a course")};
    if (!last && !is_lap(a, of, shared, a.step)) return {wrong(where, "a lap is not what the rule gives")};
    if (!last) lap = shared;
  }
  const std::vector<Length> lapped = lapped_up_to(a, bar, pieces, lap);
  for (std::size_t k = 0; k < pieces.size(); ++k) {
    const BarPiece& piece = *pieces[k];
    if (k + 1 < pieces.size() && pieces[k + 1]->from < lapped[k] - a.step) return {wrong(where, "laps on one another")};
    if (piece.to - piece.from > a.stock && lap > Length() && could_be_shorter(a, bar, piece, lap, lapped[k]))
      return {wrong(where, "a piece is longer than the stock")};
  }
  return lap > Length() ? check_pour_stops(a, bar, pieces, lap, where) : Violations{};
}

/// Masonry of one wall in a beam without a break.
struct Beam {
  Length from, to;
  int start_corner = -1, end_corner = -1;
};

bool is_corner_end(RunEnd end) { return end == RunEnd::ThroughCorner || end == RunEnd::ButtCorner; }

/// How far any course of a wall reaches.
std::pair<Length, Length> reach_of(const Asked& a, int wall) {
  Length from, to = at(a.b.walls, wall).actual;
  for (const Run& run : a.layout.runs) {
    if (run.wall == wall) from = std::min(from, run.start), to = std::max(to, run.end);
  }
  return {from, to};
}

std::vector<Beam> beams_of(const Asked& a, int wall, int course) {
  const auto [from, to] = reach_of(a, wall);
  const Wall& named = at(a.b.walls, wall);
  const bool passes = a.job.steel.beam_bars->at_control_joints == AtControlJoint::Pass;
  std::vector<Beam> beams;
  const Run* before = nullptr;
  for (const Run& run : a.layout.runs) {
    if (run.wall != wall || run.course != course) continue;
    const bool goes_on = before != nullptr &&
                         ((before->at_end == RunEnd::SlotSide && run.at_start == RunEnd::SlotSide) ||
                          (passes && before->at_end == RunEnd::ControlJoint && run.at_start == RunEnd::ControlJoint));
    if (!goes_on) {
      beams.push_back({run.start, run.end});
      if (is_corner_end(run.at_start)) beams.back().from = from, beams.back().start_corner = named.start.corner;
    }
    beams.back().to = run.end, beams.back().end_corner = -1;
    if (is_corner_end(run.at_end)) beams.back().to = to, beams.back().end_corner = named.end.corner;
    before = &run;
  }
  std::erase_if(beams, [&](const Beam& beam) { return beam.to - beam.from - a.cover * 2 < a.step; });
  return beams;
}

LapAsked lap_of_beam(const Asked& a) {
  const BeamBars& asked = *a.job.steel.beam_bars;
  const Length db = find_bar(asked.size)->diameter;
  const bool fine = a.b.bars && a.b.bars->grout == Grout::Fine;
  const Length clearance = fine ? Length::sixteenths(4) : Length::sixteenths(8);
  Length least = db * 100;
  for (const Series& series : a.b.series) {
    if (!series.grouts) continue;
    if (asked.count == 1) {
      least = std::min(least, (series.thickness - db).half_down());
      continue;
    }
    const Length left = series.thickness - series.face_shell * 2 - clearance * 2 - db * asked.count;
    least =
        std::min({least, series.face_shell + clearance, Length::nanometres(left.in_nanometres() / (asked.count - 1))});
  }
  return {asked.size, db, std::max(least, kSmallest)};
}

/// One bar of a beam, from lap to lap.
Violations check_beam_bar(const Asked& a, const Beam& beam, const Pieces& pieces, const std::string& where) {
  if (pieces.empty()) return {wrong(where, "a bar of a beam is not cut")};
  if (pieces.front()->from != beam.from + a.cover || !just_under(pieces.back()->to, beam.to - a.cover, a.step))
    return {wrong(where, "a bar of a beam does not fill it")};
  const LapAsked of = lap_of_beam(a);
  Length lap;
  for (std::size_t k = 0; k < pieces.size(); ++k) {
    const bool last = k + 1 == pieces.size();
    const Length shared = last ? Length() : pieces[k]->to - pieces[k + 1]->from;
    if (pieces[k]->lap != shared) return {wrong(where, "a beam's lap is said otherwise than it is")};
    if (!last && !is_lap(a, of, shared, Length())) return {wrong(where, "a beam's lap is not what the rule gives")};
    if (!last) lap = shared;
  }
  for (const BarPiece* piece : pieces) {
    const Length length = piece->to - piece->from;
    const bool two_laps = a.stock >= Length::inches(12) && is_long_enough(*a.job.steel.lap, of, a.stock.half_down());
    if (length > a.stock && (pieces.size() > 1 || two_laps))
      return {wrong(where, "a piece of a beam is longer than the stock")};
    if (pieces.size() > 1 && a.stock >= lap * 4 && length < lap * 2)
      return {wrong(where, "a piece of a beam is short")};
  }
  return {};
}

/// Laps of one bar, as places.
std::vector<std::pair<Length, Length>> laps_of(const Pieces& pieces) {
  std::vector<std::pair<Length, Length>> laps;
  for (std::size_t k = 1; k < pieces.size(); ++k) laps.emplace_back(pieces[k]->from, pieces[k - 1]->to);
  return laps;
}

using Beside = std::map<int, Pieces>;

/// Every piece of a wall's beam, by the bar that it is part of.
Beside beside_in(const steel::BarPieces& bars, int wall, int course, const Beam& beam) {
  Beside beside;
  for (const BarPiece& piece : bars.pieces) {
    if (piece.use != BarUse::Beam || piece.wall != wall || piece.first_course != course) continue;
    if (piece.from >= beam.from && piece.to <= beam.to) beside[piece.beside].push_back(&piece);
  }
  for (auto& [number, pieces] : beside) std::ranges::sort(pieces, {}, [](const BarPiece* one) { return one->from; });
  return beside;
}

bool is_not_said(const Asked& a, int wall) {
  return !a.job.steel.beam_bars->at_control_joints &&
         std::ranges::contains(a.b.control_joints, wall, &ControlJoint::wall);
}

/// Ends of the straight bars that reach a corner.
struct AtCorner {
  std::optional<Length> in, in_room, out_room;
};

Violations check_corner(const Asked& a, const steel::BarPieces& bars, int corner, int course, const AtCorner& ends) {
  const std::string where = "corner " + at(a.b.corners, corner).name + " course " + std::to_string(course);
  Pieces found;
  for (const BarPiece& piece : bars.pieces) {
    if (piece.use == BarUse::Corner && piece.corner == corner && piece.first_course == course) found.push_back(&piece);
  }
  const LapAsked of = lap_of_beam(a);
  const Length room = ends.in && ends.out_room ? std::min(*ends.in_room, *ends.out_room) : Length();
  if (found.empty()) {
    return room > Length() && is_long_enough(*a.job.steel.lap, of, room) ? Violations{wrong(where, "no corner bar")}
                                                                         : Violations{};
  }
  if (room == Length() || static_cast<int>(found.size()) != a.job.steel.beam_bars->count)
    return {wrong(where, "not as many corner bars as beam bars")};
  for (std::size_t k = 0; k < found.size(); ++k) {
    const BarPiece& piece = *found[k];
    const Length leg = piece.to - piece.from;
    if (piece.wall != at(a.b.corners, corner).arriving || piece.to != *ends.in || leg > room || piece.lap != leg ||
        piece.beside != static_cast<int>(k) + 1 || !is_lap(a, of, leg, Length()))
      return {wrong(where, "a corner bar does not lap the bars of its walls")};
  }
  return {};
}

Violations check_course(const Asked& a, const steel::BarPieces& bars, int course, std::size_t& met) {
  Violations found;
  std::map<int, AtCorner> corners;
  for (int wall = 0; wall < static_cast<int>(a.b.walls.size()); ++wall) {
    if (is_not_said(a, wall)) continue;
    for (const Beam& beam : beams_of(a, wall, course)) {
      const Beside beside = beside_in(bars, wall, course, beam);
      const std::string where = place_of(a.b, wall, course);
      std::vector<std::vector<std::pair<Length, Length>>> laps;
      for (int number = 1; number <= a.job.steel.beam_bars->count; ++number) {
        const auto own = beside.find(number);
        const Pieces pieces = own == beside.end() ? Pieces{} : own->second;
        met += pieces.size();
        found = joined(std::move(found), check_beam_bar(a, beam, pieces, where));
        if (!pieces.empty()) laps.push_back(laps_of(pieces));
      }
      for (std::size_t k = 1; k < laps.size(); ++k) {
        for (const auto& [from, to] : laps[k]) {
          for (const auto& [low, high] : laps[k - 1]) {
            const bool long_enough = a.stock >= (to - from) * 6;  // half of the stock then has room for both laps
            if (long_enough && from < high && low < to) found.push_back(wrong(where, "laps side by side"));
          }
        }
      }
      if (beside.empty()) continue;
      const Pieces& first = beside.begin()->second;
      const Length room = first.back()->to - first.front()->from;
      if (beam.end_corner >= 0) corners[beam.end_corner].in = first.back()->to, corners[beam.end_corner].in_room = room;
      if (beam.start_corner >= 0) corners[beam.start_corner].out_room = room;
    }
  }
  for (int corner = 0; corner < static_cast<int>(a.b.corners.size()); ++corner)
    found = joined(std::move(found), check_corner(a, bars, corner, course, corners[corner]));
  return found;
}

std::size_t count_of(const steel::BarPieces& bars, BarUse use) {
  return static_cast<std::size_t>(std::ranges::count(bars.pieces, use, &BarPiece::use));
}

Violations check_beams(const Asked& a, const steel::BarPieces& bars) {
  Violations found;
  std::size_t met = 0;
  if (a.job.steel.beam_bars && a.laps) {
    for (const Course& course : a.b.courses) {
      if (course.bond_beam) found = joined(std::move(found), check_course(a, bars, course.number, met));
    }
  }
  if (met != count_of(bars, BarUse::Beam)) found.push_back(wrong("beams", "a bar lies where no beam is"));
  for (const BarPiece& piece : bars.pieces) {
    const bool level = piece.use == BarUse::Beam || piece.use == BarUse::Corner;
    if (level &&
        (met == 0 || piece.first_course != piece.last_course || !at(a.b.courses, piece.first_course - 1).bond_beam))
      found.push_back(wrong("beams", "a bar lies in a course that is no beam"));
  }
  return found;
}

Violations check_lintels(const Asked& a, const steel::BarPieces& bars) {
  std::map<int, int> left;
  for (const BarPiece& piece : bars.pieces) {
    if (piece.use == BarUse::Lintel) ++left[piece.opening];
  }
  for (const PlacedLintel& lintel : a.layout.lintels) {
    const ResolvedOpening& opening = at(a.b.openings, lintel.opening);
    if (!a.job.steel.lintel_bars || !opening.lintel || opening.lintel->make != LintelMake::BuiltUp) continue;
    const Length from = opening.from.distance_from_start() - lintel.start_bearing + a.cover;
    const Length to = opening.to.distance_from_start() + lintel.end_bearing - a.cover;
    int count = 0;
    for (const BarPiece& piece : bars.pieces) {
      if (piece.use != BarUse::Lintel || piece.opening != lintel.opening) continue;
      if (piece.from != from || !just_under(piece.to, to, a.step) || piece.first_course != opening.last_course + 1 ||
          piece.wall != opening.wall || piece.beside != ++count)
        return {wrong(opening.name, "a bar of a lintel is not as long as it")};
    }
    if (to - from >= a.step && count != a.job.steel.lintel_bars->count)
      return {wrong(opening.name, "a lintel has another number of bars")};
    left.erase(lintel.opening);
  }
  return left.empty() ? Violations{} : Violations{wrong("lintels", "a bar of a lintel that is not there")};
}

Length length_of(const BarPiece& piece) {
  const Length leg = piece.to - piece.from;
  return piece.use == BarUse::Corner ? leg + leg : leg;
}

std::string size_of(const Asked& a, BarUse use) {
  const Steel& steel = a.job.steel;
  if (use == BarUse::Lintel) return steel.lintel_bars ? steel.lintel_bars->size : "";
  if (use == BarUse::Beam || use == BarUse::Corner) return steel.beam_bars ? steel.beam_bars->size : "";
  return steel.bars ? steel.bars->size : "";
}

Violations check_sums(const Asked& a, const steel::BarPieces& bars) {
  std::map<std::tuple<BarUse, std::string, Length>, int> alike;
  std::map<std::string, std::pair<int, Length>> sums;
  for (const BarPiece& piece : bars.pieces) {
    const std::string size = size_of(a, piece.use);
    ++alike[{piece.use, size, length_of(piece)}];
    const auto& mark = at(bars.marks, piece.mark);
    if (mark.use != piece.use || mark.length != length_of(piece) || mark.size != size)
      return {wrong("bars", "a piece has another's mark")};
    if (piece.use != BarUse::Dowel) ++sums[size].first, sums[size].second += length_of(piece);
  }
  if (alike.size() != bars.marks.size()) return {wrong("bars", "a mark is there twice, or for nothing")};
  for (const auto& mark : bars.marks) {
    if (alike[{mark.use, mark.size, mark.length}] != mark.count) return {wrong("bars", "a mark counts otherwise")};
  }
  for (const auto& total : bars.totals) {
    if (sums[total.size] != std::pair(total.count, total.length)) return {wrong("bars", "sums differ")};
  }
  return sums.size() == bars.totals.size() ? Violations{} : Violations{wrong("bars", "sums are left out")};
}

}  // namespace

Violations check_bar_pieces(const Job& job, const Building& building, const Layout& layout,
                            const steel::BarPieces& bars) {
  const Asked a = asked_of(job, building, layout);
  std::map<std::int32_t, Pieces> dowels, uprights;
  for (const BarPiece& piece : bars.pieces) {
    if (piece.mark < 0 || static_cast<std::size_t>(piece.mark) >= bars.marks.size())
      return {wrong("bars", "a piece without a mark")};
    if (piece.first_course < 1 || piece.last_course > static_cast<int>(building.courses.size()) ||
        piece.to <= piece.from)
      return {wrong("bars", "a piece that is nowhere")};
    if (piece.use == BarUse::Dowel) dowels[piece.bar].push_back(&piece);
    if (piece.use == BarUse::Upright) uprights[piece.bar].push_back(&piece);
  }
  Violations found;
  if (building.bars) {
    for (std::int32_t k = 0; k < static_cast<std::int32_t>(layout.bars.size()); ++k) {
      const PlacedBar& bar = at(layout.bars, k);
      const std::string where = name_of(building, bar.wall) + " bar at " + in_millimetres(bar.centre);
      found = joined(std::move(found), check_dowel(a, bar, dowels[k], where));
      found = joined(std::move(found), check_upright(a, bar, uprights[k], where));
    }
  }
  if (dowels.size() != uprights.size() || dowels.size() != layout.bars.size())
    found.push_back(wrong("bars", "a piece of a bar that is not there"));
  found = joined(std::move(found), check_beams(a, bars));
  found = joined(std::move(found), check_lintels(a, bars));
  return joined(std::move(found), check_sums(a, bars));
}

}  // namespace stringcourse::proof
