#pragma once
// What the rules that a layout gave up come to on the site: where, how much, what mends it, who is to be asked.
#include <optional>
#include <string_view>
#include <vector>

#include "bond/layout.hpp"
#include "job/trouble.hpp"
#include "walls/building.hpp"

namespace stringcourse {

/// One finding for each rule that was given up and each wall, in the order of the wall and from the mildest rule on.
[[nodiscard]] std::vector<Finding> concession_findings(const Building& building, const Layout& layout);

/// Which rule a finding says is given up on its wall; nothing where it says something else.
[[nodiscard]] std::optional<Concession::What> conceded_in(const Finding& finding);

}  // namespace stringcourse
