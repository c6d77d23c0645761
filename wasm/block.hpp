#pragma once
// A reply block: little-endian u32 count of sections, then count u32 lengths, then the sections' bytes.
#include <string>
#include <string_view>
#include <vector>

namespace stringcourse::border {

struct Section {
  std::string name;
  std::string bytes;
};

/// The sections as one block.
[[nodiscard]] std::string block_of(const std::vector<Section>& sections);

/// The sections of a block, without their names; none if it is no whole block.
[[nodiscard]] std::vector<std::string_view> sections_of(std::string_view block);

}  // namespace stringcourse::border
