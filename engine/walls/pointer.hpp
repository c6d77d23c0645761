#pragma once
// Places in the job.
#include <string>
#include <string_view>

namespace stringcourse::walls {

/// "/openings/2", or with a field "/openings/2/width".
[[nodiscard]] std::string pointer(std::string_view list, std::size_t index, std::string_view field = {});

}  // namespace stringcourse::walls
