#pragma once
// What was poured: from the first sign of concrete on, the sheets of the pour show what stands in it, whatever is laid
// otherwise afterwards.
#include <optional>

#include "answer/as_built.hpp"
#include "bond/panel_memo.hpp"
#include "job/job.hpp"
#include "job/trouble.hpp"
#include "steel/poured.hpp"
#include "walls/building.hpp"

namespace stringcourse {

/// Whether the logs speak of concrete: a dowel or an edge was read, the rod stood on the bearing, or something was
/// laid.
[[nodiscard]] bool is_poured(const Job& job, const Building& building);

/// None where the job keeps no dowel: then the layout as planned is the one that was poured.
[[nodiscard]] std::optional<AsPoured> without_kept_dowels(const Job& job, bond::PanelMemo& memo);

/// Gives dowels that were read their numbers in the list as poured.
void number_as_poured(const std::vector<steel::Dowel>& poured, const steel::DowelsNow& now,
                      std::vector<steel::FoundDowel>& found);

/// Dowels that no bar comes down to, and bars that no dowel is for, where no reading says more of them.
[[nodiscard]] std::vector<Finding> dowel_findings(const Building& building, const std::vector<steel::Dowel>& poured,
                                                  const steel::DowelsNow& now);

}  // namespace stringcourse
