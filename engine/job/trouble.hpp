#pragma once
// Refusals and findings. Refusal: the job cannot be computed. Finding: computed, but look at this.
#include <string>
#include <string_view>
#include <vector>

#include "job/codes.hpp"
#include "measure/fact.hpp"
#include "measure/notation.hpp"

namespace stringcourse {

/// The six hold points of the job, in order.
enum class HoldPoint { Order = 1, Pour, FirstCourse, Lintels, Grout, Top };
[[nodiscard]] std::string_view hold_point_name(
    HoldPoint point);  // "order", "pour", "first-course", "lintels", "grout", "top"

/// One thing that stops the work: where in the job (JSON pointer), what is wrong with its values, what would mend it.
struct Refusal {
  Code code;
  std::string place;  // "/openings/2/masonry/width"
  Fact reason;        // one sentence with the values
  Fact remedy;        // one sentence
  friend bool operator==(const Refusal&, const Refusal&) = default;
};

/// All refusals of one job. At most kShownRefusals are kept; `beyond` counts the rest.
struct Refusals {
  std::vector<Refusal> shown;
  std::size_t beyond = 0;
  Tape tape = Tape::Inches;  // whose reader they are told to: the job's, as far as it could be read
  bool empty() const { return shown.empty() && beyond == 0; }
  void add(Refusal refusal);
  void count_unshown() { ++beyond; }  // one more, when all that are shown are there
};
inline constexpr std::size_t kShownRefusals = 100;

/// Computed, but a rule is broken or a choice is poor.
struct Finding {
  Code code;
  std::string place;  // JSON pointer into the job, or "" for the whole
  Fact says;          // one sentence with value and limit
  std::string rule;   // rule and source, or ""
  HoldPoint hold_point = HoldPoint::Order;
  friend bool operator==(const Finding&, const Finding&) = default;
};

}  // namespace stringcourse
