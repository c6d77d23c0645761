#pragma once
#include <string>
#include <string_view>

#include "job/job.hpp"
#include "measure/fact.hpp"

namespace stringcourse::cli {

/// What a place of the job is called by people: "door D1 on side BC" of "/openings/0/place"; an empty fact where
/// nothing of a name stands there.
[[nodiscard]] Fact named_place(const Job& job, std::string_view place);

}  // namespace stringcourse::cli
