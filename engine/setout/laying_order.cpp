#include "setout/laying_order.hpp"

#include <algorithm>
#include <iterator>
#include <optional>
#include <tuple>

#include "bond/layout_parts.hpp"

namespace stringcourse::setout {
namespace {

// How far each count of units reaches from a corner in one course: reaches[0] is one unit. `ends_at_face`: the last
// of them ends at a jamb, a free end or a control joint, where leads may stand plumb.
struct Stretch {
  std::vector<Length> reaches;
  bool ends_at_face = false;
  bool through = false;
};

Stretch stretch_leaving(const Layout& layout, int wall, int course) {
  const auto runs = bond::runs_in(layout, wall, course);
  if (runs.empty()) return {};
  const Run& run = runs.front();
  Stretch stretch{
      {}, shows_face(run.at_end) && run.at_end != RunEnd::ThroughCorner, run.at_start == RunEnd::ThroughCorner};
  for (const Piece& piece : bond::pieces_of(layout, run))
    stretch.reaches.push_back(bond::far_end(piece).nearest_nanometre());
  return stretch;
}

Stretch stretch_arriving(const Layout& layout, int wall, int course, Length corner_at) {
  const auto runs = bond::runs_in(layout, wall, course);
  if (runs.empty()) return {};
  const Run& run = runs.back();
  Stretch stretch{
      {}, shows_face(run.at_start) && run.at_start != RunEnd::ThroughCorner, run.at_end == RunEnd::ThroughCorner};
  const auto pieces = bond::pieces_of(layout, run);
  for (auto piece = pieces.rbegin(); piece != pieces.rend(); ++piece) {
    stretch.reaches.push_back(corner_at - piece->start.nearest_nanometre());
  }
  return stretch;
}

// The most units whose end stays a joint or more inside `below`, or stands on it at a face.
int units_within(const Stretch& stretch, Length below, Length joint) {
  int units = 0;
  for (std::size_t index = 0; index < stretch.reaches.size(); ++index) {
    const bool at_face = stretch.ends_at_face && index + 1 == stretch.reaches.size();
    if (stretch.reaches[index] + joint <= below || (at_face && stretch.reaches[index] <= below)) {
      units = static_cast<int>(index) + 1;
    }
  }
  return units;
}

int bottom_units(const Stretch& stretch, int lead_courses) {
  const int wanted = stretch.through ? (lead_courses + 1) / 2 : lead_courses / 2;
  return std::min(wanted, static_cast<int>(stretch.reaches.size()));
}

// Counts of one side of a lead, course by course, given its stretches from the bottom course up.
std::vector<int> side_of_lead(const std::vector<Stretch>& stretches, Length joint) {
  std::vector<int> counts;
  Length below;
  for (const Stretch& stretch : stretches) {
    const int units = counts.empty() ? bottom_units(stretch, static_cast<int>(stretches.size()))
                                     : units_within(stretch, below, joint);
    counts.push_back(units);
    below = units == 0 ? Length() : stretch.reaches[static_cast<std::size_t>(units - 1)];
  }
  return counts;
}

Lead lead_at(const Building& building, const Layout& layout, int corner_index) {
  const Corner& corner = building.corners[static_cast<std::size_t>(corner_index)];
  const int high = std::min(kLeadCourses, static_cast<int>(building.courses.size()));
  std::vector<Stretch> arriving, leaving;
  const Length end = building.walls[static_cast<std::size_t>(corner.arriving)].actual;
  for (int course = 1; course <= high; ++course) {
    arriving.push_back(stretch_arriving(layout, corner.arriving, course, end));
    leaving.push_back(stretch_leaving(layout, corner.leaving, course));
  }
  const auto arriving_units = side_of_lead(arriving, building.joint);
  const auto leaving_units = side_of_lead(leaving, building.joint);
  Lead lead{corner_index, {}};
  for (std::size_t index = 0; index < arriving_units.size(); ++index) {
    lead.courses.push_back({static_cast<int>(index) + 1, arriving_units[index], leaving_units[index]});
  }
  return lead;
}

bool holds_a_bar(const Piece& piece, std::span<const bond::WallBar> bars, int course) {
  return std::ranges::any_of(bars, [&](const bond::WallBar& bar) {
    const ExactPosition centre{bar.centre.in_nanometres(), 1};
    return course >= bar.first_course && course <= bar.last_course && centre >= piece.start &&
           centre <= bond::far_end(piece);
  });
}

// Smaller is better: bar in it, a cut, in or beside a corner or jamb, then distance from the middle.
using Rank = std::tuple<bool, bool, bool, std::int64_t>;

std::optional<std::uint32_t> closing_piece(const Layout& layout, const Run& run, std::span<const bond::WallBar> bars) {
  std::optional<std::uint32_t> best;
  Rank best_rank;
  const auto pieces = bond::pieces_of(layout, run);
  const std::int64_t count = static_cast<std::int64_t>(pieces.size());
  for (std::int64_t index = 0; index < count; ++index) {
    const bool first = index == 0, last = index + 1 == count;
    if ((first && !has_joint(run.at_start)) || (last && !has_joint(run.at_end))) continue;
    const Piece& piece = pieces[static_cast<std::size_t>(index)];
    const std::int64_t off_middle = std::max(2 * index - (count - 1), (count - 1) - 2 * index);
    const Rank rank{holds_a_bar(piece, bars, run.course), bond::is_saw_cut(piece), index < 2 || index + 2 >= count,
                    off_middle};
    if (!best || rank < best_rank) {
      best = run.first_piece + static_cast<std::uint32_t>(index);
      best_rank = rank;
    }
  }
  return best;
}

}  // namespace

std::vector<Lead> leads(const Building& building, const Layout& layout) {
  std::vector<Lead> all;
  for (std::size_t index = 0; index < building.corners.size(); ++index) {
    const Corner& corner = building.corners[index];
    if (corner.arriving < 0 || corner.leaving < 0) continue;
    all.push_back(lead_at(building, layout, static_cast<int>(index)));
  }
  return all;
}

std::vector<Closure> closures(const Building& building, const Layout& layout, int course) {
  std::vector<Closure> all;
  for (std::size_t wall = 0; wall < building.walls.size(); ++wall) {
    std::ranges::copy(closures_on(building, layout, static_cast<int>(wall), course), std::back_inserter(all));
  }
  return all;
}

std::vector<Closure> closures_on(const Building& building, const Layout& layout, int wall, int course) {
  std::vector<Closure> all;
  const auto bars = bond::bars_on_wall(building, layout, wall);
  for (const Run& run : bond::runs_in(layout, wall, course)) {
    if (const auto piece = closing_piece(layout, run, bond::bars_between(bars, run.start, run.end)))
      all.push_back({static_cast<std::int32_t>(&run - layout.runs.data()), *piece});
  }
  return all;
}

}  // namespace stringcourse::setout
