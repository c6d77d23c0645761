#include "proof/cleanouts.hpp"

#include <algorithm>

#include "proof/kinds.hpp"

namespace stringcourse::proof {
namespace {

template <typename List>
const auto& at(const List& list, std::int64_t index) {
  return list[static_cast<std::size_t>(index)];
}

/// A pour higher than this has cleanouts at its foot. SOURCE: TMS 602 3.2F (second-hand).
constexpr Length kHighestWithout = Length::inches(64);

/// The lowest courses of pours that are higher: a pour begins at the bearing, or over where the last one stopped.
std::vector<int> feet_of_high_pours(const Job& job, const Building& b) {
  std::vector<int> feet;
  int foot = 1;
  Length height;
  for (const Course& course : b.courses) {
    height += course.unit_height + b.joint;
    const bool stops = std::ranges::find(job.steel.pour_tops, course.number) != job.steel.pour_tops.end() ||
                       course.number == static_cast<int>(b.courses.size());
    if (!stops) continue;
    if (kHighestWithout < height) feet.push_back(foot);
    foot = course.number + 1, height = Length();
  }
  return feet;
}

struct Rectangle {
  Length west, east, south, north;
};

/// What a piece covers in plan, at most: its length, through its whole wall.
Rectangle covered(const Building& b, const Run& run, const Piece& piece) {
  const Wall& wall = at(b.walls, run.wall);
  const Length start = piece.start.nearest_nanometre();
  const PlanPoint p = plan_point(wall, start, Length()),
                  q = plan_point(wall, start + piece.length, b.series_of(wall).thickness);
  return {std::min(p.x, q.x), std::max(p.x, q.x), std::min(p.y, q.y), std::max(p.y, q.y)};
}

bool holds(const Rectangle& area, const PlanPoint& point) {
  return area.west < point.x && point.x < area.east && area.south < point.y && point.y < area.north;
}

/// Pieces of one course that stand over a plan point.
std::vector<std::uint32_t> over(const Building& b, const Layout& layout, int course, const PlanPoint& point) {
  std::vector<std::uint32_t> found;
  for (const Run& run : layout.runs) {
    if (run.course != course) continue;
    for (std::uint32_t p = run.first_piece; p < run.first_piece + run.piece_count; ++p)
      if (holds(covered(b, run, layout.pieces[p]), point)) found.push_back(p);
  }
  return found;
}

/// Bars and courses in one line, for counting.
using Foot = std::pair<std::uint32_t, int>;

Violations check_one(const Building& b, const Layout& layout, std::uint32_t bar, int course) {
  const PlacedBar& placed = layout.bars[bar];
  const PlanPoint point = plan_point(at(b.walls, placed.wall), placed.centre, placed.off_face);
  const std::vector<std::uint32_t> units = over(b, layout, course, point);
  std::vector<const PlacedCleanout*> here;
  for (const PlacedCleanout& one : layout.cleanouts)
    if (one.bar == bar && one.course == course) here.push_back(&one);
  const std::string who = "the bar at " + in_millimetres(placed.centre) + " has ";
  const std::string where = place_of(b, placed.wall, course);
  if (units.empty())
    return here.empty() ? Violations{} : Violations{violation(kBars, where, who + "a cleanout where there is no unit")};
  if (here.size() != 1)
    return {violation(kBars, where, who + std::to_string(here.size()) + " cleanouts at the foot of a high pour")};
  if (std::ranges::find(units, here.front()->piece) == units.end())
    return {violation(kBars, where, who + "its cleanout in a unit that does not stand over it")};
  return {};
}

/// A plain unit with a cleanout is one that the yard has no cleanout unit for.
Violations check_kind(const Building& b, const Layout& layout, const PlacedCleanout& cleanout) {
  const Piece& piece = layout.pieces[cleanout.piece];
  const auto run = std::ranges::find_if(layout.runs, [&](const Run& one) {
    return one.first_piece <= cleanout.piece && cleanout.piece < one.first_piece + one.piece_count;
  });
  const UnitKind wanted = piece.kind == UnitKind::Half ? UnitKind::CleanoutHalf : UnitKind::Cleanout;
  const bool plain = piece.kind == UnitKind::Full || piece.kind == UnitKind::Half || piece.kind == UnitKind::OpenEnd;
  if (run == layout.runs.end() || !plain || !is_stocked(b, b.series_of(at(b.walls, run->wall)), wanted)) return {};
  return {violation(
      kBars, place_of(b, run->wall, run->course),
      "piece " + std::to_string(piece.number) + " has a cleanout and is no cleanout unit, though the yard has them")};
}

}  // namespace

Violations check_cleanouts(const Job& job, const Building& building, const Layout& layout) {
  Violations found;
  const std::vector<int> feet = building.bars ? feet_of_high_pours(job, building) : std::vector<int>{};
  if (feet != building.cleanout_courses) found.push_back(violation(kBuilding, "cleanouts", "other pours ask for them"));
  for (const int course : feet)
    for (std::uint32_t bar = 0; bar < layout.bars.size(); ++bar)
      if (layout.bars[bar].first_course <= course && course <= layout.bars[bar].last_course)
        found = joined(std::move(found), check_one(building, layout, bar, course));
  for (const PlacedCleanout& cleanout : layout.cleanouts) {
    const bool known = cleanout.bar < layout.bars.size() && cleanout.piece < layout.pieces.size();
    if (!known || std::ranges::find(feet, cleanout.course) == feet.end())
      found.push_back(violation(kBars, "cleanouts", "one for no bar, or where no high pour begins"));
    else found = joined(std::move(found), check_kind(building, layout, cleanout));
  }
  return found;
}

}  // namespace stringcourse::proof
