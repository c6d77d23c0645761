#pragma once
// The bond problem of one panel as a mixed-integer model, solved by CBC or GLPK: a second oracle for bond::solve_panel.
// It shares bond/panel.hpp with the solver and the brute force, and no code.
//
// The model. Each run is a flow of one unit through its graph of pieces (arcs.hpp). z[row, joint] is the sum of the
// arcs that bring that joint. Rule 3: z of two joints too near each other sum to at most 1, gathered into cliques. A
// short lap y >= z + z' - 1; a shifted joint s >= z - (sum of z' that match it). Bars: cells chosen in neighbouring
// rows must share enough. The cost terms are minimised in order, each then held at its least value.
#include <cstddef>
#include <cstdint>
#include <vector>

#include "bond/panel.hpp"
#include "oracle/linear.hpp"

namespace stringcourse::oracle {

struct MilpAnswer {
  Outcome outcome = Outcome::OutOfTime;
  Cost cost;  // Optimal: counted from the chosen arcs in whole numbers, not read from the objective
  std::vector<std::vector<std::vector<bond::Chosen>>> rows;  // Optimal: one layout of that cost
  std::size_t columns = 0;                                   // size of the model
};

/// The least cost of the panel, term by term in the panel's order. A row that lies directly on itself is not modelled:
/// the panel's course_rows must not name one row twice in succession. A model of more than `most_columns` is not
/// solved: TooLarge. The size depends on the panel alone. First: short laps, cuts and short pieces only, in half bond;
/// the other terms of the cost found are not the least.
enum class Terms { All, First };
struct MilpLimits {
  double seconds_a_stage = 120;
  std::size_t most_columns = 100'000;
  Terms terms = Terms::All;
};
MilpAnswer solve_by_milp(const bond::Panel& panel, Program program, MilpLimits limits);

}  // namespace stringcourse::oracle
