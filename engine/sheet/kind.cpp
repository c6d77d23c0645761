#include "sheet/kind.hpp"

namespace stringcourse::sheet {

std::vector<PlannedSheet> numbered_sheets(const Context& context, std::string_view title, std::optional<Scale> scale,
                                          std::size_t count) {
  std::vector<PlannedSheet> sheets(count);
  for (std::size_t index = 0; index < count; ++index) {
    sheets[index].title =
        part_title(context.words, std::string(title), static_cast<int>(index) + 1, static_cast<int>(count));
    sheets[index].scale = scale;
  }
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
