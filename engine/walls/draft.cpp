#include "walls/draft.hpp"

#include <utility>

namespace stringcourse::walls {
namespace {

/// Names of walls, as many as fit a line.
std::vector<FactValue> known_walls(const Draft& draft, int besides) {
  std::vector<FactValue> names;
  std::size_t letters = 0;
  for (std::size_t wall = 0; wall < draft.building.walls.size(); ++wall) {
    if (static_cast<int>(wall) == besides) continue;
    if (letters > 60) {
      names.emplace_back("...");
      break;
    }
    names.emplace_back(draft.building.walls[wall].name);
    letters += draft.building.walls[wall].name.size() + (letters == 0 ? 0 : 2);
  }
  return names;
}

}  // namespace

void refuse(Draft& draft, Code code, std::string place, Fact reason, Fact remedy) {
  draft.refusals.add({code, std::move(place), std::move(reason), std::move(remedy)});
}

void find(Draft& draft, Code code, std::string place, Fact says, std::string_view rule, HoldPoint point) {
  draft.building.findings.push_back({code, std::move(place), std::move(says), std::string(rule), point});
}

void refuse_unknown_wall(Draft& draft, std::string_view name, const std::string& place, int besides) {
  std::vector<FactValue> known = known_walls(draft, besides);
  Fact remedy =
      known.empty() ? fact("name-a-wall") : fact("name-one-of", {{FactValue::Kind::Commas, std::move(known)}});
  refuse(draft, "unknown-wall", place, fact("unknown-wall", {FactValue::typed(name)}), std::move(remedy));
}

std::optional<int> named_wall(Draft& draft, std::string_view name, const std::string& place) {
  const auto found = draft.wall_by_name.find(name);
  if (found != draft.wall_by_name.end()) return found->second;
  if (draft.refused_walls.contains(name)) return std::nullopt;
  refuse_unknown_wall(draft, name, place, -1);
  return std::nullopt;
}

Length laid_height(const Building& building, int first, int last) {
  Length height;
  for (const Course& course : building.courses) {
    if (course.number >= first && course.number <= last) height += course.unit_height + building.joint;
  }
  return height;
}

}  // namespace stringcourse::walls
