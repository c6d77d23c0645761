#pragma once
// A job solved, and its layout held before the certificate checker.
#include <string>

#include "job/job.hpp"
#include "solve/solve.hpp"

namespace stringcourse::property {

enum class Outcome { Solved, Stopped, Refused };

struct Verdict {
  Outcome outcome = Outcome::Refused;
  std::string faults;  // what the checker says, a line each; empty: certified
  bool proven = false;
};

/// Solves the job and checks everything that an answer promises.
[[nodiscard]] Verdict certify(const Job& job, std::int64_t search_budget = 400'000);
/// What is wrong with an answer: one line for each broken promise.
[[nodiscard]] std::string faults_of(const Answer& answer);

}  // namespace stringcourse::property
