#pragma once
#include <string>

#include "cli/terminal.hpp"
#include "solve/solve.hpp"

namespace stringcourse::cli {

/// The answer in a page of plain text: sides, courses, units, cuts, laps, bars, proof, findings by hold point, offers.
[[nodiscard]] std::string summary_text(const Answer& answer, Emphasis emphasis);

/// Each run that no lawful layout fills: where, the rule that stops it, what mends it.
[[nodiscard]] std::string stops_text(const Answer& answer);

/// Why a job is refused, one paragraph for each refusal. `job`: what could be read, to call things by their names; or
/// null.
[[nodiscard]] std::string refusals_text(const Refusals& refusals, const Job* job = nullptr);

}  // namespace stringcourse::cli
