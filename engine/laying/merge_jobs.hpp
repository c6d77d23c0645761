#pragma once
// Two phones' documents of one job become one: everything but the logs must be the same, the logs are united.
#include <expected>
#include <string>
#include <vector>

#include "job/job.hpp"

namespace stringcourse::laying {

struct MergedJobs {
  Job job;
  std::vector<std::string>
      conflicts;  // ids that stood for two different entries: each is kept, the second under another id
  int from_first = 0, from_second = 0;  // entries that only the one had
};

/// The union of both logs. Idempotent, commutative, associative. Of entries with one id and different words the one
/// whose text comes first keeps the id; the others get it with a mark of their text behind it, the same wherever they
/// meet. The error: what differs besides the logs, as JSON pointers of the document's parts; the second is then of
/// another job (or of another state of it).
[[nodiscard]] std::expected<MergedJobs, std::vector<std::string>> merged_jobs(const Job& first, const Job& second);

}  // namespace stringcourse::laying
