#pragma once
// Jambs and far corners that the laid log says stand elsewhere than planned, and the job with one of them in its place.
#include <cstddef>
#include <expected>
#include <string>
#include <vector>

#include "job/job.hpp"
#include "job/trouble.hpp"
#include "walls/building.hpp"

namespace stringcourse {

struct FoundHere {
  std::size_t entry = 0;  // of Job::laid
  int wall = -1, opening = -1;
  FoundWhat what = FoundWhat::NearJamb;
  Length at, planned;
};

/// What was found farther than this from its plan is questioned and not applied, unless it is read twice alike.
inline constexpr Length kFoundFar = Length::inches(2);
inline constexpr std::string_view kFoundRule = "least change: what is found is fixed, the rest is solved anew";

/// The last entry of each place that counts, in the log's order; what is questioned is said so and left out.
[[nodiscard]] std::vector<FoundHere> found_places(const Job& job, const Building& planned,
                                                  std::vector<Finding>& findings);

/// "The near jamb of D1", "The far corner of AB".
[[nodiscard]] std::string found_name(const Building& building, const FoundHere& here);

/// The job with one place as it was found; the error says why nothing can be built so.
[[nodiscard]] std::expected<Job, std::string> with_found(const Job& job, const Building& building,
                                                         const FoundHere& here);

/// What a place found means for the opening or the side, as a finding.
[[nodiscard]] Finding told(const Building& planned, const Building& found, const std::vector<int>& laid_to,
                           const FoundHere& here);

}  // namespace stringcourse
