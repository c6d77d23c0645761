#pragma once
// The job that a request asks about: read, begun, edited.
#include <expected>
#include <optional>
#include <string>

#include "job/job.hpp"
#include "wasm/request.hpp"

namespace stringcourse::border {

/// The job that is asked about, and its document if the border made or changed it.
struct Source {
  Job job;
  std::string document = {};
  std::optional<Job> before = {};  // while a hand moves something: as it was before the edits
};
/// The error: why there is none, as a whole reply.
using Sourced = std::expected<Source, std::string>;

/// With all edits made, one after the other; without what is to be merged.
[[nodiscard]] Sourced source_of(const Request& request);
/// A job that was made or changed here keeps the rules of one that is read.
[[nodiscard]] Sourced read_back(const Job& job);

}  // namespace stringcourse::border
