#pragma once
// A small mixed-integer model and the two general-purpose solvers that solve it: CBC and GLPK, both with gaps set to 0.
#include <cstdint>
#include <vector>

namespace stringcourse::oracle {

struct Term {
  int column = 0;
  double factor = 0;
};

/// lower <= sum of terms <= upper.
struct Constraint {
  std::vector<Term> terms;
  double lower = 0, upper = 0;
};

inline constexpr double kNoLimit = 1e30;

/// Columns run from 0 to their upper bound; integer ones take whole values. The objective is minimised.
struct LinearModel {
  std::vector<double> upper;
  std::vector<std::uint8_t> whole;
  std::vector<Constraint> constraints;
  std::vector<double> objective;

  int add_binary() { return add(1, 1); }
  int add_share() { return add(1, 0); }
  void require(std::vector<Term> terms, double lower, double most) {
    constraints.push_back({std::move(terms), lower, most});
  }

 private:
  int add(double most, std::uint8_t is_whole) {
    upper.push_back(most);
    whole.push_back(is_whole);
    objective.push_back(0);
    return static_cast<int>(upper.size()) - 1;
  }
};

enum class Outcome { Optimal, Infeasible, OutOfTime, TooLarge };
enum class Program { Cbc, Glpk };

struct LinearAnswer {
  Outcome outcome = Outcome::OutOfTime;
  std::vector<double> values;  // Optimal: one per column
};

/// Least objective, or proof that nothing is feasible. The objective must be whole at every feasible point.
LinearAnswer solve_linear(const LinearModel& model, Program program, double seconds);

}  // namespace stringcourse::oracle
