#include "wasm/block.hpp"

#include <cstdint>

namespace stringcourse::border {
namespace {

void append_number(std::string& block, std::size_t number) {
  for (int shift = 0; shift < 32; shift += 8) block += static_cast<char>((number >> shift) & 0xFF);
}

}  // namespace

std::string block_of(const std::vector<Section>& sections) {
  std::size_t size = 4 + 4 * sections.size();
  for (const Section& section : sections) size += section.bytes.size();
  std::string block;
  block.reserve(size);
  append_number(block, sections.size());
  for (const Section& section : sections) append_number(block, section.bytes.size());
  for (const Section& section : sections) block += section.bytes;
  return block;
}

}  // namespace stringcourse::border
