#pragma once
// Where two grids meet: sums that lie on a row's grain and leave a make-up piece on the saw's step.
#include <cstdint>

namespace stringcourse::bond {

/// `first`, and from there every `stride`; first < 0: nowhere.
struct Meetings {
  std::int64_t first = -1, stride = 1;
};

class SawSteps {
 public:
  /// Both > 0, in nanometres.
  SawSteps(std::int64_t grain, std::int64_t step);
  /// The places least, least + grain, least + 2 grain, ... whose distance from `rest` is a whole multiple of the step.
  [[nodiscard]] Meetings meetings(std::int64_t least, std::int64_t rest) const;

 private:
  std::int64_t grain_, common_, period_;  // period: in grains
  std::int64_t inverse_;                  // of grain / common modulo the period
};

}  // namespace stringcourse::bond
