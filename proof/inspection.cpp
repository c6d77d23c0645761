#include "proof/inspection.hpp"

#include <algorithm>
#include <map>
#include <set>

#include "proof/facts.hpp"

namespace stringcourse::proof {
namespace {

template <typename List>
const auto& at(const List& list, std::int64_t index) {
  return list[static_cast<std::size_t>(index)];
}

bool has_floor(UnitKind kind) { return kind == UnitKind::Lintel || kind == UnitKind::LintelHalf; }

bool inside(const PlanPoint& point, const PlanPoint& p, const PlanPoint& q) {
  return std::min(p.x, q.x) <= point.x && point.x <= std::max(p.x, q.x) && std::min(p.y, q.y) <= point.y &&
         point.y <= std::max(p.y, q.y);
}

/// What a bar passes: wall, course, number of the unit (0: a lintel in one piece).
using Passed = std::tuple<int, int, int>;

std::multiset<Passed> floors_over(const Building& b, const Layout& layout, const PlacedBar& bar, int first, int last) {
  std::multiset<Passed> passed;
  const PlanPoint point = plan_point(at(b.walls, bar.wall), bar.centre, bar.off_face);
  const int low = std::max(first, bar.first_course), high = std::min(last, bar.last_course);
  for (const Run& run : layout.runs) {
    if (run.course < low || run.course > high) continue;
    const Wall& wall = at(b.walls, run.wall);
    for (std::size_t k = 0; k < run.piece_count; ++k) {
      const Piece& piece = layout.pieces[run.first_piece + k];
      const Length start = piece.start.nearest_nanometre(), thick = b.series_of(wall).thickness;
      if (has_floor(piece.kind) &&
          inside(point, plan_point(wall, start, Length()), plan_point(wall, start + piece.length, thick)))
        passed.insert({run.wall, run.course, piece.number});
    }
  }
  return passed;
}

/// Lintels in one piece over a bar.
void add_lintels_over(std::multiset<Passed>& passed, const Building& b, const Layout& layout, const PlacedBar& bar,
                      int first, int last) {
  const PlanPoint point = plan_point(at(b.walls, bar.wall), bar.centre, bar.off_face);
  for (const PlacedLintel& placed : layout.lintels) {
    const ResolvedOpening& o = at(b.openings, placed.opening);
    if (!o.lintel || o.lintel->make != LintelMake::OnePiece) continue;
    const int course = o.lintel->first_course;
    if (course < first || course > last || bar.last_course < course) continue;
    const Wall& wall = at(b.walls, o.wall);
    const Length from = o.from.distance_from_start() - placed.start_bearing,
                 to = o.to.distance_from_start() + placed.end_bearing;
    if (inside(point, plan_point(wall, from, Length()), plan_point(wall, to, b.series_of(wall).thickness)))
      passed.insert({o.wall, course, 0});
  }
}

/// First and last courses of all pours, as the job asks.
std::vector<std::pair<int, int>> pours_asked(const Job& job, const Building& b) {
  std::vector<std::pair<int, int>> pours;
  int foot = 1;
  for (const Course& course : b.courses) {
    const bool stops = std::ranges::find(job.steel.pour_tops, course.number) != job.steel.pour_tops.end() ||
                       course.number == static_cast<int>(b.courses.size());
    if (stops) pours.emplace_back(std::exchange(foot, course.number + 1), course.number);
  }
  return pours;
}

/// Whether grout goes into these courses: round a bar, or into a beam's or lintel's trough.
bool holds_grout(const Building& b, const Layout& layout, int first, int last) {
  const auto in_trough = [&](const Run& run) {
    if (run.course < first || run.course > last) return false;
    if (at(b.courses, run.course - 1).bond_beam) return true;
    for (std::size_t k = 0; k < run.piece_count; ++k) {
      const UnitKind kind = layout.pieces[run.first_piece + k].kind;
      if (has_floor(kind) || kind == UnitKind::BondBeam || kind == UnitKind::BondBeamHalf) return true;
    }
    return false;
  };
  const auto passes = [&](const PlacedBar& bar) { return bar.first_course <= last && bar.last_course >= first; };
  return std::ranges::any_of(layout.bars, passes) || std::ranges::any_of(layout.runs, in_trough);
}

Violations check_pour(const Building& b, const Layout& layout, const PourToInspect& pour,
                      std::set<std::int32_t>& cleanouts) {
  Violations found;
  const auto wrong = [&](const std::string& text) {
    found.push_back(violation(kBars, "look before course " + std::to_string(pour.first_course), text));
  };
  std::map<std::uint32_t, int> seen;
  for (const BarToInspect& one : pour.bars) {
    if (one.bar >= layout.bars.size()) return {violation(kBars, "look", "a bar that is not there")};
    const PlacedBar& bar = layout.bars[one.bar];
    ++seen[one.bar];
    auto passed = floors_over(b, layout, bar, pour.first_course, pour.last_course);
    add_lintels_over(passed, b, layout, bar, pour.first_course, pour.last_course);
    std::multiset<Passed> listed;
    for (const supply::BarThrough& through : one.through) listed.insert({through.wall, through.course, through.unit});
    if (passed != listed) wrong("a bar passes other floors than are listed");
    if (one.cleanout < 0) continue;
    if (!cleanouts.insert(one.cleanout).second) wrong("a cleanout twice");
    const bool own = static_cast<std::size_t>(one.cleanout) < layout.cleanouts.size() &&
                     at(layout.cleanouts, one.cleanout).bar == one.bar &&
                     at(layout.cleanouts, one.cleanout).course == pour.first_course;
    if (!own) wrong("a cleanout of another bar or pour");
  }
  for (std::uint32_t bar = 0; bar < layout.bars.size(); ++bar) {
    const bool passes =
        layout.bars[bar].first_course <= pour.last_course && layout.bars[bar].last_course >= pour.first_course;
    if (seen[bar] != (passes ? 1 : 0)) wrong("a bar is not listed once");
  }
  std::vector<std::int32_t> beams;
  for (int course = pour.first_course; course <= pour.last_course; ++course)
    if (at(b.courses, course - 1).bond_beam) beams.push_back(course);
  if (beams != pour.beams) wrong("other beams");
  std::vector<std::int32_t> lintels;
  for (const PlacedLintel& placed : layout.lintels) {
    const auto& lintel = at(b.openings, placed.opening).lintel;
    if (lintel && lintel->make == LintelMake::BuiltUp && lintel->first_course >= pour.first_course &&
        lintel->first_course <= pour.last_course)
      lintels.push_back(placed.opening);
  }
  if (lintels != pour.lintels) wrong("other lintels");
  return found;
}

bool is_ascii_name(const std::string& name) {
  return !name.empty() &&
         std::ranges::all_of(name, [](unsigned char one) { return std::isalnum(one) != 0 || one == '-'; });
}

/// Numbers of the pieces of a course that lie under a stretch of its wall.
std::vector<std::int32_t> under(const Layout& layout, int wall, int course, Length from, Length to) {
  std::vector<std::int32_t> numbers;
  for (const Run& run : layout.runs) {
    if (run.wall != wall || run.course != course) continue;
    for (std::size_t k = 0; k < run.piece_count; ++k) {
      const Piece& piece = layout.pieces[run.first_piece + k];
      const Length start = piece.start.nearest_nanometre(), end = start + piece.length;
      if (std::max(start, from) < std::min(end, to)) numbers.push_back(piece.number);
    }
  }
  return numbers;
}

bool shores_fit(const Job& job, const supply::Bridged& over, const ResolvedOpening& o) {
  const auto& asked = job.openings[static_cast<std::size_t>(over.opening)].lintel;
  const bool stated = over.shored && asked && asked->shore_spacing;
  if (!stated || !over.shores) return !stated && !over.shores;
  const Length span = o.to - o.from;
  return *over.shores >= 2 && *asked->shore_spacing * (*over.shores - 1) >= span &&
         *asked->shore_spacing * (*over.shores - 2) < span;
}

Violations check_over(const Job& job, const Building& b, const Layout& layout, const supply::Bridged& over) {
  const ResolvedOpening& o = at(b.openings, over.opening);
  Violations found;
  const auto wrong = [&](const std::string& text) { found.push_back(violation(kLintels, o.name, text)); };
  Length height = b.joint;
  for (int course = 1; course <= o.last_course; ++course) height += at(b.courses, course - 1).unit_height + b.joint;
  if (over.over_bearing != height) wrong("its head is at another height over the bearing");
  if (over.over_foot != o.soffit - o.underside) wrong("its head is at another height over its foot");
  if (!shores_fit(job, over, o)) wrong("another number of shores would do");
  const auto placed = std::ranges::find(layout.lintels, over.opening, &PlacedLintel::opening);
  if ((placed != layout.lintels.end() && o.lintel.has_value()) != (over.lintel >= 0)) wrong("a lintel too many or few");
  if (over.lintel >= 0) {
    const Length from = o.from.distance_from_start(), to = o.to.distance_from_start();
    if (over.shored != (o.lintel->make == LintelMake::BuiltUp)) wrong("shored otherwise than it is made");
    if (over.start.units != under(layout, o.wall, o.last_course, from - placed->start_bearing, from) ||
        over.end.units != under(layout, o.wall, o.last_course, to, to + placed->end_bearing))
      wrong("it bears on other units");
  }
  const int top = o.last_course + (o.lintel ? o.lintel->courses : 0);
  std::vector<std::int32_t> in, cut;
  std::int32_t above = 0;
  for (const Course& course : b.courses) {
    if (!course.bond_beam || course.number < o.first_course) continue;
    if (course.number <= o.last_course) cut.push_back(course.number);
    else if (course.number <= top) in.push_back(course.number);
    else if (above == 0) above = course.number;
  }
  if (in != over.beams_in || cut != over.beams_cut || above != over.beam_over) wrong("other beams cross it");
  return found;
}

}  // namespace

Violations check_inspection(const Job& job, const Building& building, const Layout& layout,
                            const std::vector<PourToInspect>& pours) {
  Violations found;
  std::set<std::int32_t> cleanouts;
  std::set<std::string> photos;
  std::size_t next = 0, names = 0;
  for (const auto& [first, last] : pours_asked(job, building)) {
    const bool listed = next < pours.size() && pours[next].first_course == first && pours[next].last_course == last;
    if (!listed && holds_grout(building, layout, first, last))
      found.push_back(violation(kBars, "look", "a pour is left out"));
    if (!listed) continue;
    found = joined(std::move(found), check_pour(building, layout, pours[next], cleanouts));
    for (const BarToInspect& one : pours[next].bars) {
      photos.insert(one.photo), ++names;
      if (!is_ascii_name(one.photo)) found.push_back(violation(kBars, "look", "a photo's name is not plain"));
    }
    ++next;
  }
  if (next != pours.size()) found.push_back(violation(kBars, "look", "a pour that nobody asked for"));
  if (cleanouts.size() != layout.cleanouts.size()) found.push_back(violation(kBars, "look", "a cleanout is left out"));
  if (photos.size() != names) found.push_back(violation(kBars, "look", "two photos of one name"));
  return found;
}

Violations check_bridged(const Job& job, const Building& building, const Layout& layout,
                         const std::vector<supply::Bridged>& bridged) {
  Violations found;
  for (std::size_t k = 0; k < building.openings.size(); ++k) {
    if (k >= bridged.size() || bridged[k].opening != static_cast<std::int32_t>(k))
      return {violation(kLintels, building.openings[k].name, "it is left out")};
    found = joined(std::move(found), check_over(job, building, layout, bridged[k]));
  }
  if (bridged.size() != building.openings.size())
    found.push_back(violation(kLintels, "openings", "one that is not there"));
  return found;
}

}  // namespace stringcourse::proof
