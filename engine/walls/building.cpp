#include "walls/building.hpp"

namespace stringcourse {

Building::Building() = default;
Building::Building(const Building&) = default;
Building::Building(Building&&) noexcept = default;
Building& Building::operator=(const Building&) = default;
Building& Building::operator=(Building&&) noexcept = default;
Building::~Building() = default;

}  // namespace stringcourse
