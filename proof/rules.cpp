#include "proof/rules.hpp"

namespace stringcourse::proof {

std::string in_millimetres(Length length) {
  const std::int64_t nanometres = length.in_nanometres();
  const std::int64_t size = nanometres < 0 ? -nanometres : nanometres;
  std::string text = (nanometres < 0 ? "-" : "") + std::to_string(size / 1'000'000);
  if (size % 1'000'000 != 0) {
    std::string part = std::to_string(1'000'000 + size % 1'000'000);
    part[0] = '.';
    while (part.back() == '0') part.pop_back();
    text += part;
  }
  return text + " mm";
}

std::string name_of(const Building& building, std::int32_t wall) {
  const std::string& name = building.walls[static_cast<std::size_t>(wall)].name;
  return name.empty() ? "wall " + std::to_string(wall) : name;
}

std::string place_of(const Building& building, std::int32_t wall, std::int32_t course) {
  return name_of(building, wall) + " course " + std::to_string(course);
}

}  // namespace stringcourse::proof
