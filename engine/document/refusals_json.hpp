#pragma once
// Refusals as a JSON document (docs/schema/refusals.schema.json): what the command line prints and the page reads.
#include <string>

#include "job/trouble.hpp"

namespace stringcourse {

[[nodiscard]] std::string refusals_json(const Refusals& refusals);

}  // namespace stringcourse
