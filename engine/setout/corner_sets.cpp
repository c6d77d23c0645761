#include "setout/corner_sets.hpp"

#include <algorithm>

#include "bond/layout_parts.hpp"
#include "walls/corner_plan.hpp"

namespace stringcourse::setout {
namespace {

const Corner& corner_of(const Building& building, int corner) {
  return building.corners[static_cast<std::size_t>(corner)];
}

enum class At { Start, End };

/// The ends of its run at which a piece turns a corner.
std::vector<At> turns_of(const Run& run, const Piece& piece) {
  std::vector<At> turns;
  if (run.at_start == RunEnd::ThroughCorner && piece.start.nearest_nanometre() == run.start) turns.push_back(At::Start);
  if (run.at_end == RunEnd::ThroughCorner && bond::far_end(piece).nearest_nanometre() == run.end)
    turns.push_back(At::End);
  return turns;
}

int corner_at(const Building& building, const Run& run, At end) {
  const Wall& wall = wall_of(building, run.wall);
  return (end == At::Start ? wall.start : wall.end).corner;
}

/// A part as its corner sees it, on the wall's line.
OnWall on_line(const Building& building, const Run& run, At end, const walls::CornerPart& part) {
  const Length thick = building.series_of(wall_of(building, run.wall)).thickness;
  const bool convex = corner_of(building, corner_at(building, run, end)).convex;
  const Length shallow = convex ? part.near : thick - part.far, deep = convex ? part.far : thick - part.near;
  return end == At::Start ? OnWall{run.start + part.from, run.start + part.to, shallow, deep}
                          : OnWall{run.end - part.to, run.end - part.from, shallow, deep};
}

std::vector<walls::CornerPart> parts_at(const Building& building, const Run& run, const Piece& piece, At end,
                                        walls::Makes makes) {
  const auto parts =
      walls::corner_parts(building, corner_of(building, corner_at(building, run, end)), run.wall, piece.length, makes);
  return parts.value_or(std::vector<walls::CornerPart>{});
}

}  // namespace

OnWall extent_of(const Building& building, const Run& run, const Piece& piece) {
  const Length thick = building.series_of(wall_of(building, run.wall)).thickness;
  const OnWall whole{piece.start.nearest_nanometre(), bond::far_end(piece).nearest_nanometre(), Length(), thick};
  const std::vector<SetPart> parts = corner_parts_of(building, run, piece);
  if (!parts.empty()) return {whole.from, whole.to, parts.front().place.shallow, parts.front().place.deep};
  const std::vector<At> turns = turns_of(run, piece);
  if (turns.empty()) return whole;
  // A piece that no corner set has, where rules are given up: the wall that butts leaves it no more room than a unit's.
  const Series& series = building.series_of(wall_of(building, run.wall));
  const Length deep = walls::corner_unit_thickness(series, building.corner_sets_stocked);
  const bool convex = corner_of(building, corner_at(building, run, turns.front())).convex;
  return {whole.from, whole.to, convex ? Length() : thick - deep, convex ? deep : thick};
}

std::vector<int> corners_turned_by(const Building& building, const Run& run, const Piece& piece) {
  std::vector<int> corners;
  for (const At end : turns_of(run, piece)) corners.push_back(corner_at(building, run, end));
  return corners;
}

std::vector<SetPart> corner_parts_of(const Building& building, const Run& run, const Piece& piece) {
  const std::vector<At> turns = turns_of(run, piece);
  const walls::Makes makes = turns.size() > 1 ? walls::Makes::TwoCorners : walls::Makes::OneCorner;
  std::vector<SetPart> all;
  for (const At end : turns) {
    const std::vector<walls::CornerPart> parts = parts_at(building, run, piece, end, makes);
    for (std::size_t k = all.empty() ? 0 : 1; k < parts.size(); ++k) {
      const bool filler = k > 0 && !parts[k].name.empty();
      all.push_back(
          {parts[k].name.empty() ? parts.front().name : parts[k].name, filler, on_line(building, run, end, parts[k])});
    }
  }
  return all;
}

}  // namespace stringcourse::setout
