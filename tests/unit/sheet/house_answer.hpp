#pragma once
// The answer of a house that was built by hand: what sheets are drawn of.
#include "answer/answer.hpp"
#include "unit/setout/hand_built.hpp"

namespace stringcourse::sheet {

inline Answer answer_of(const stringcourse::testing::HandBuilt& house) {
  Answer answer;
  answer.job.name = "Glaze store";
  answer.job.issued = "Set A";
  answer.job.drawn_by = "R. Ode";
  answer.building = house.building;
  answer.layout = house.layout;
  answer.findings = house.building.findings;
  count_and_list(answer);
  return answer;
}

}  // namespace stringcourse::sheet
