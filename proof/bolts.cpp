#include "proof/bolts.hpp"

#include <algorithm>
#include <limits>
#include <set>

#include "proof/cells.hpp"
#include "proof/claim.hpp"

namespace stringcourse::proof {
namespace {

template <typename List>
const auto& at(const List& list, std::int64_t index) {
  return list[static_cast<std::size_t>(index)];
}

/// What the job asks of one wall's bolts.
struct Asked {
  const Bolts& bolts;
  Length step;   // a mark of the tape
  Length round;  // from a bolt's middle to the block
};

/// SOURCE of the assumed figure: 675 IAC 14-4.4-44, 1 1/2 in of grout, and half of a 1 in bolt.
Asked asked_of(const Job& job) {
  const bool inches = job.tape == Tape::Inches;
  const Length assumed = inches ? Length::inches(2) : Length::millimetres(51);
  return {*job.top->bolts, inches ? Length::sixteenths(1) : Length::millimetres(1),
          job.top->bolts->grout_round.value_or(assumed)};
}

Length upward(Length place, Length step) {
  Length mark = rounded_to(place, step);
  while (mark < place) mark += step;
  while (mark - step >= place) mark -= step;
  return mark;
}

struct Place {
  Length along, depth;
};

/// A plan point on a wall's line.
Place place_on(const Wall& wall, const PlanPoint& point) {
  const Length x = point.x - wall.start_point.x, y = point.y - wall.start_point.y;
  switch (wall.heading) {
    case Heading::West: return {-x, y};
    case Heading::North: return {y, x};
    case Heading::East: return {x, -y};
    case Heading::South: return {-y, -x};
  }
  return {};
}

/// Bars in a wall's thickness that reach its top.
std::vector<Length> bars_on(const Building& b, const Layout& layout, int wall) {
  std::vector<Length> bars;
  const Wall& line = at(b.walls, wall);
  for (const PlacedBar& bar : layout.bars) {
    if (bar.last_course != static_cast<int>(b.courses.size())) continue;
    const Place place = place_on(line, plan_point(at(b.walls, bar.wall), bar.centre, bar.off_face));
    const bool inside = place.depth > Length() && place.depth < b.series_of(line).thickness;
    if (bar.wall == wall || (inside && bar.corner >= 0)) bars.push_back(place.along);
  }
  return bars;
}

/// Middles of the trusses on a wall, counted from the corner that the job names.
std::vector<std::pair<Length, Length>> trusses_on(const Job& job, const Building& b, int wall) {
  std::vector<std::pair<Length, Length>> middles;
  const Names names = name_walls(job, b);
  for (const Trusses& row : job.top->trusses) {
    if (wall_named(job, names, row.on) != wall) continue;
    const bool from_start = measure(job, b, names, wall, row.place).from_start;
    const Length whole = at(b.walls, wall).actual;
    for (Length off = row.place.at.length; off <= whole; off += row.spacing)
      middles.emplace_back(from_start ? off : whole - off, row.clear);
  }
  return middles;
}

/// Every mark of a wall at which a bolt may stand.
std::vector<Length> lawful_marks(const Job& job, const Building& b, const Layout& layout, int wall) {
  const Asked asked = asked_of(job);
  const Series& series = b.series_of(at(b.walls, wall));
  const auto bars = bars_on(b, layout, wall);
  const auto trusses = trusses_on(job, b, wall);
  const Length clear = asked.bolts.clear_of_bars.value_or(Length());
  const auto stands = [&](Length mark) {
    return std::ranges::all_of(bars, [&](Length bar) { return magnitude(mark - bar) >= clear; }) &&
           std::ranges::all_of(trusses, [&](const auto& one) { return magnitude(mark - one.first) >= one.second; });
  };
  std::set<Length> marks;
  for (const Run& run : layout.runs) {
    if (run.wall != wall || run.course != static_cast<int>(b.courses.size())) continue;
    for (std::size_t k = 0; k < run.piece_count; ++k) {
      const Piece& piece = layout.pieces[run.first_piece + k];
      const Length start = piece.start.nearest_nanometre();
      for (const CellSpan& cell : whole_cells(series, piece)) {
        const Length from = start + cell.from, to = start + cell.to;
        const bool grouted = b.courses.back().bond_beam ||
                             std::ranges::any_of(bars, [&](Length bar) { return from <= bar && bar <= to; });
        for (Length mark = upward(from + asked.round, asked.step); grouted && mark <= to - asked.round;
             mark += asked.step)
          if (stands(mark)) marks.insert(mark);
      }
    }
  }
  return {marks.begin(), marks.end()};
}

struct Stretch {
  Length from, to;
  friend bool operator==(const Stretch&, const Stretch&) = default;
};

/// Whether masonry of the top course is parted somewhere between two places of a wall.
bool is_parted(const Building& b, int wall, Length from, Length to) {
  const int top = static_cast<int>(b.courses.size());
  const auto opening_there = [&](const ResolvedOpening& o) {
    return o.wall == wall && o.last_course >= top && o.from_in(top).distance_from_start() < to + b.joint &&
           o.to_in(top).distance_from_start() > from - b.joint;
  };
  const auto joint_there = [&](const ControlJoint& joint) {
    return joint.wall == wall && joint.from.distance_from_start() >= from && joint.to.distance_from_start() <= to;
  };
  return std::ranges::any_of(b.openings, opening_there) || std::ranges::any_of(b.control_joints, joint_there);
}

/// The plates of a wall, cut to their pieces.
std::vector<Stretch> pieces_asked(const Job& job, const Building& b, const Layout& layout, int wall) {
  std::vector<Stretch> plates;
  for (const Run& run : layout.runs) {
    if (run.wall != wall || run.course != static_cast<int>(b.courses.size())) continue;
    if (!plates.empty() && !is_parted(b, wall, plates.back().to, run.start)) plates.back().to = run.end;
    else plates.push_back({run.start, run.end});
  }
  if (!job.top->plate_piece) return plates;
  std::vector<Stretch> pieces;
  for (const Stretch& plate : plates) {
    for (Length from = plate.from; from < plate.to; from += *job.top->plate_piece)
      pieces.push_back({from, std::min(plate.to, from + *job.top->plate_piece)});
  }
  return pieces;
}

constexpr int kNever = std::numeric_limits<int>::max();

/// Fewest marks that keep to what is asked, by counting for every mark the fewest that lead to it; 0: none do.
int fewest(const std::vector<Length>& marks, const Stretch& piece, const Bolts& asked) {
  std::vector<int> needs(marks.size(), kNever);
  int least = kNever;
  for (std::size_t k = 0; k < marks.size(); ++k) {
    if (marks[k] <= piece.from + asked.end_most) needs[k] = 1;
    for (std::size_t before = k; before-- > 0 && marks[before] >= marks[k] - asked.spacing;)
      if (needs[before] != kNever) needs[k] = std::min(needs[k], needs[before] + 1);
    if (marks[k] >= piece.to - asked.end_most) least = std::min(least, needs[k]);
  }
  return least == kNever ? 0 : std::max(least, 2);
}

/// Something asked for that stands nowhere: told as it is, and true.
bool is_told(const setout::PlatePiece& piece, const std::vector<Length>& marks, Length after, Length by) {
  const auto told = std::ranges::find(piece.without, after, &setout::NoBolt::after);
  if (told == piece.without.end() || told->by > by) return false;
  const auto behind = std::ranges::upper_bound(marks, told->by);
  const bool none = std::ranges::none_of(marks, [&](Length mark) { return mark > after && mark <= told->by; });
  return none && (told->next ? behind != marks.end() && *behind == *told->next : true);
}

Violations check_piece(const Job& job, const Building& b, const std::vector<Length>& all,
                       const setout::PlatePiece& piece) {
  const Bolts& asked = *job.top->bolts;
  const Length least = asked.end_least.value_or(Length());
  std::vector<Length> marks;
  for (const Length mark : all)
    if (mark >= piece.from + least && mark <= piece.to - least) marks.push_back(mark);
  const auto wrong = [&](const std::string& text) {
    return Violations{violation(kBars, name_of(b, piece.wall) + " plate from " + in_millimetres(piece.from), text)};
  };
  Length last = piece.from, reach = piece.from + asked.end_most;
  for (const setout::Bolt& bolt : piece.bolts) {
    if (!std::ranges::binary_search(marks, bolt.at)) return wrong("a bolt where none may stand");
    if (&bolt != piece.bolts.data() && bolt.at <= last) return wrong("bolts out of order");
    if (bolt.at > reach && !is_told(piece, marks, last, reach)) return wrong("bolts too far apart");
    last = bolt.at, reach = bolt.at + asked.spacing;
  }
  const bool ends = !piece.bolts.empty() && last >= piece.to - asked.end_most;
  if (!ends && !is_told(piece, marks, last, std::min(reach, piece.to))) return wrong("the last bolt is not at the end");
  const int needed = fewest(marks, {piece.from, piece.to}, asked);
  if (piece.without.empty() && static_cast<int>(piece.bolts.size()) != needed) return wrong("fewer bolts would do");
  if (!piece.without.empty() && needed > 0 && marks.size() > 1) return wrong("bolts can stand where none are said to");
  return {};
}

std::vector<int> walls_with_plate(const Job& job, const Building& b) {
  std::vector<int> walls;
  const Names names = name_walls(job, b);
  for (const std::string& name : job.top->plate_on) walls.push_back(wall_named(job, names, name));
  for (int wall = 0; job.top->plate_on.empty() && wall < static_cast<int>(b.walls.size()); ++wall)
    if (!at(b.walls, wall).interior) walls.push_back(wall);
  std::ranges::sort(walls);
  return walls;
}

}  // namespace

Violations check_bolts(const Job& job, const Building& building, const Layout& layout,
                       const std::vector<setout::PlatePiece>& plates) {
  if (!job.top || !job.top->bolts)
    return plates.empty() ? Violations{} : Violations{violation(kBars, "plate", "bolts that nobody asked for")};
  Violations found;
  std::size_t next = 0;
  for (const int wall : walls_with_plate(job, building)) {
    const std::vector<Length> marks = lawful_marks(job, building, layout, wall);
    for (const Stretch& asked : pieces_asked(job, building, layout, wall)) {
      const bool listed =
          next < plates.size() && plates[next].wall == wall && Stretch{plates[next].from, plates[next].to} == asked;
      if (!listed)
        return {violation(kBars, name_of(building, wall), "a piece of plate is left out, or lies elsewhere")};
      found = joined(std::move(found), check_piece(job, building, marks, plates[next++]));
    }
  }
  if (next != plates.size()) found.push_back(violation(kBars, "plate", "a piece of plate that nobody asked for"));
  return found;
}

}  // namespace stringcourse::proof
