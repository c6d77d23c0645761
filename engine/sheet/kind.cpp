#include "sheet/kind.hpp"

namespace stringcourse::sheet {

std::vector<PlannedSheet> one_sheet(std::string_view title, Scale scale) {
  std::vector<PlannedSheet> sheets;
  sheets.push_back({.title = std::string(title), .scale = scale});
  return sheets;
}

std::vector<PlannedSheet> sheets_of_walls(const Context& context, const WallSheets& of, int course) {
  std::vector<PlannedSheet> sheets;
  for (int wall = 0; wall < static_cast<int>(context.building.walls.size()); ++wall) {
    const WallParts parts = of.parts(context, wall, course);
    const std::string title = of.title(context, wall, course);
    for (const Part& part : parts.parts) {
      sheets.push_back({.title = part_title(context.words, title, part.index, part.of),
                        .scale = parts.scale,
                        .wall = wall,
                        .course = course,
                        .part = part});
    }
  }
  return sheets;
}

}  // namespace stringcourse::sheet
