#include "print/printed_marks.hpp"

#include <regex>

#include "bond/layout_parts.hpp"

namespace stringcourse::print_test {
namespace {

struct Way {
  int x = 0, y = 0;
};
Way way_of(Heading heading) {
  switch (heading) {
    case Heading::West: return {-1, 0};
    case Heading::North: return {0, 1};
    case Heading::East: return {1, 0};
    case Heading::South: return {0, -1};
  }
  return {};
}
Way right_of(Way way) { return {way.y, -way.x}; }

const Corner* corner_named(const Building& building, const std::string& name) {
  for (const Corner& corner : building.corners) {
    if (corner.name == name) return &corner;
  }
  return nullptr;
}

void add_lines(std::vector<PrintedLine>& lines, const paper::Group& group, bool in_table) {
  if (group.role == paper::Role::TableRow) {
    PrintedLine line;
    for (const paper::Group& cell : group.groups)
      line.cells.push_back(cell.texts.empty() ? "" : cell.texts.front().text);
    lines.push_back(line);
    return;
  }
  for (const paper::Text& text : group.texts) {
    if (in_table && text.weight == paper::Weight::Bold) lines.push_back({{text.text}, true});
  }
  for (const paper::Group& inner : group.groups) add_lines(lines, inner, in_table || group.role == paper::Role::Table);
}

}  // namespace

std::vector<PrintedLine> table_lines(const paper::Sheet& sheet) {
  std::vector<PrintedLine> lines;
  for (const paper::Group& group : sheet.groups) {
    if (group.role == paper::Role::Table) add_lines(lines, group, true);
  }
  return lines;
}

int wall_named(const Building& building, const std::string& name) {
  for (std::size_t wall = 0; wall < building.walls.size(); ++wall) {
    if (building.walls[wall].name == name) return static_cast<int>(wall);
  }
  return -1;
}

PrintedOrigin origin_of(const Building& building, const std::string& wall_name, const std::string& from) {
  PrintedOrigin origin;
  const int index = wall_named(building, wall_name);
  if (index < 0) return origin;
  const Wall& wall = building.walls[static_cast<std::size_t>(index)];
  const Way way = way_of(wall.heading), in = right_of(way);
  origin.x = way.x, origin.y = way.y, origin.in_x = in.x, origin.in_y = in.y;
  std::smatch found;
  if (std::regex_match(from, found, std::regex("outer corner (.+)"))) {
    const Corner* corner = corner_named(building, found[1]);
    origin.understood = corner != nullptr && corner->convex && corner->leaving == index;
    if (origin.understood) origin.zero = corner->point;
  } else if (std::regex_match(from, found, std::regex("inside corner (.+), the outer face of (.+)"))) {
    const Corner* corner = corner_named(building, found[1]);
    origin.understood = corner != nullptr && !corner->convex && corner->leaving == index &&
                        corner->arriving == wall_named(building, found[2]);
    if (origin.understood) origin.zero = corner->point;
  } else if (std::regex_match(from, found, std::regex("the inner face of (.+)"))) {
    const int met = wall_named(building, found[1]);
    if (met < 0) return origin;
    const Wall& main = building.walls[static_cast<std::size_t>(met)];
    const Length thick = building.series_of(main).thickness;
    const Way inward = right_of(way_of(main.heading));
    // The wall's own face line, where it meets that face: one coordinate from each.
    origin.understood = !main.interior;
    origin.zero = wall.start_point;
    if (inward.x != 0) origin.zero.x = main.start_point.x + thick * inward.x;
    else origin.zero.y = main.start_point.y + thick * inward.y;
  } else if (std::regex_match(from, found, std::regex("the end of the wall at (.+)"))) {
    origin.understood = wall.start.kind == EndKind::Free && wall.start_name == found[1];
    origin.zero = wall.start_point;
  }
  return origin;
}

std::vector<PlanBar> bars_in_plan(const Building& building, const Layout& layout) {
  std::vector<PlanBar> bars;
  for (const PlacedBar& bar : layout.bars) {
    const Wall& wall = building.walls[static_cast<std::size_t>(bar.wall)];
    bars.push_back({plan_point(wall, bar.centre, bar.off_face), bar.first_course == 1});
  }
  return bars;
}

int bar_near(const std::vector<PlanBar>& bars, PlanPoint place, Length step) {
  const auto near = [&](Length a, Length b) { return 2 * magnitude(a - b) <= step; };
  for (std::size_t k = 0; k < bars.size(); ++k) {
    if (near(bars[k].at.x, place.x) && near(bars[k].at.y, place.y)) return static_cast<int>(k);
  }
  return -1;
}

}  // namespace stringcourse::print_test
