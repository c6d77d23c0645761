#pragma once
// Reading of a job document: strict, every error at once, each with its place.
#include <cstddef>
#include <expected>
#include <string_view>

#include "job/job.hpp"
#include "job/trouble.hpp"

namespace stringcourse {

inline constexpr std::size_t kLargestDocument = 8'000'000;  // bytes
inline constexpr std::size_t kMostValues = 1'000'000;       // values in one document, lists and objects included
inline constexpr int kDeepestNesting = 32;

/// Reads one job (UTF-8 JSON, docs/schema/job.schema.json). Strict: an unknown field, a doubled field, a wrong type, a
/// bare number for a length, a list or text that is too long are refused. A wrong value at one place does not stop the
/// reading of the others: all refusals come together, in the order of the fields, the first kShownRefusals in full.
/// Codes: job/codes.hpp. `place` is the JSON pointer of the value (of the missing field, where one is missing);
/// "/" alone stands for the whole document. Values are quoted in `reason` clipped and with control and
/// direction-changing characters spelled out, so that a hostile name cannot disturb the sentence.
/// Only a document that is no JSON, is too large or too deep, or is of a newer version is refused with one refusal
/// alone. Whether names that are referred to exist, and whether the outline closes, is not asked here but in walls/.
[[nodiscard]] std::expected<Job, Refusals> read_job(std::string_view text);

}  // namespace stringcourse
