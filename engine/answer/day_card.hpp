#pragma once
// What a crew needs of one day beside its works and blocks: where these stand, which steel goes in, what is checked,
// where the day stops. Told of what the programme lays on that day.
#include <vector>

#include "measure/fact.hpp"

namespace stringcourse {

struct Answer;
struct WorkDay;

/// "Whole block: pallet 3 beside AB"; none where pallets are not placed.
[[nodiscard]] std::vector<Fact> stacked_said(const Answer& answer, const WorkDay& day);
/// Bars and joint reinforcement of the courses that are finished on it.
[[nodiscard]] std::vector<Fact> steel_said(const Answer& answer, const WorkDay& day);
/// Heights of their tops, and what is looked at before a pour is filled.
[[nodiscard]] std::vector<Fact> checks_said(const Answer& answer, const WorkDay& day);
/// "Stop at course 3 of AB and BC, 2'-0" high", "CD stands at course 2, 1'-4" high": every wall on every day, and what
/// stands over the height of rule "brace-over-8-ft".
[[nodiscard]] std::vector<Fact> stop_said(const Answer& answer, const WorkDay& day);
/// All of these, in this order.
[[nodiscard]] std::vector<Fact> day_card(const Answer& answer, const WorkDay& day);

}  // namespace stringcourse
