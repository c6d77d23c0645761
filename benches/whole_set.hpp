#pragma once
// What `plan` does, as the measuring programs do it: a job solved, and its whole set of files written and synced.
#include "job/job.hpp"
#include "solve/solve.hpp"

namespace stringcourse::benches {

/// The answer to a job that must be solved whole, without offers; anything else ends the program.
[[nodiscard]] Answer solved(const Job& job);

/// Writes the set of files of an answer (answer JSON, sheets as PDF on Letter, drawings as SVG) into a temporary folder
/// (in memory, where the system has one) by the command line's own writers, and takes the folder away again. Returns
/// the seconds that the writing took.
[[nodiscard]] double seconds_to_write(const Answer& answer);

}  // namespace stringcourse::benches
