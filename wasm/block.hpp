#pragma once
// A reply block: little-endian u32 count of sections, then count u32 lengths, then the sections' bytes.
#include <string>
#include <vector>

namespace stringcourse::border {

struct Section {
  std::string name;
  std::string bytes;
};

/// The sections as one block.
[[nodiscard]] std::string block_of(const std::vector<Section>& sections);

}  // namespace stringcourse::border
