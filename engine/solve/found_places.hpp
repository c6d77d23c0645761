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

inline constexpr std::string_view kFoundRule = "found-is-fixed";

/// The last entry of each place that counts, in the log's order; what is questioned, by rule "found-far", is said so
/// and left out.
[[nodiscard]] std::vector<FoundHere> found_places(const Job& job, const Building& planned,
                                                  std::vector<Finding>& findings);

/// "The near jamb of D1", "The far corner of AB".
[[nodiscard]] Fact found_said(const Building& building, const FoundHere& here);

/// The job with one place as it was found; the error says why nothing can be built so.
[[nodiscard]] std::expected<Job, Fact> with_found(const Job& job, const Building& building, const FoundHere& here);

/// What a place found means for the opening or the side, as a finding.
[[nodiscard]] Finding place_finding(const Building& planned, const Building& found, const std::vector<int>& laid_to,
                                    const FoundHere& here);

}  // namespace stringcourse
