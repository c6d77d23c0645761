#include "wasm/block.hpp"

#include <cstdint>

namespace stringcourse::border {
namespace {

void append_number(std::string& block, std::size_t number) {
  for (int shift = 0; shift < 32; shift += 8) block += static_cast<char>((number >> shift) & 0xFF);
}

std::uint64_t number_at(std::string_view block, std::size_t offset) {
  std::uint64_t number = 0;
  for (std::size_t i = 0; i < 4; ++i) number |= std::uint64_t{static_cast<unsigned char>(block[offset + i])} << (8 * i);
  return number;
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

std::vector<std::string_view> sections_of(std::string_view block) {
  if (block.size() < 4) return {};
  const std::uint64_t count = number_at(block, 0);
  if (block.size() / 4 < count + 1) return {};
  std::vector<std::string_view> sections;
  std::uint64_t at = 4 + 4 * count;
  for (std::uint64_t i = 0; i < count; ++i) {
    const std::uint64_t size = number_at(block, 4 + 4 * i);
    if (size > block.size() - at) return {};
    sections.push_back(block.substr(at, size));
    at += size;
  }
  return at == block.size() ? sections : std::vector<std::string_view>{};
}

}  // namespace stringcourse::border
