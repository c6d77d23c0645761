#pragma once
// Jobs that ask more of a search than any small building: very long, very many, or with lengths that share no grid.
#include <string>
#include <vector>

#include "job/job.hpp"

namespace stringcourse::room_test {

struct HardShape {
  std::string name;
  Job job;
};

[[nodiscard]] std::vector<HardShape> hard_shapes();

}  // namespace stringcourse::room_test
