#include "paper/font_text.hpp"

#include <algorithm>
#include <array>
#include <cstdint>

namespace stringcourse::paper {
namespace {

struct Step {
  char32_t character = kReplacement;
  std::size_t length = 1;  // bytes read
};

/// Lead byte's class: how many bytes, the bits it carries, and the least character that needs so many bytes.
struct Lead {
  std::size_t length = 0;  // 0: no lead byte
  char32_t bits = 0;
  char32_t least = 0;
};

Lead read_lead(std::uint8_t byte) {
  if (byte < 0x80) return {1, byte, 0};
  if (byte >= 0xC2 && byte < 0xE0) return {2, byte & 0x1Fu, 0x80};
  if (byte >= 0xE0 && byte < 0xF0) return {3, byte & 0x0Fu, 0x800};
  if (byte >= 0xF0 && byte < 0xF5) return {4, byte & 0x07u, 0x10000};
  return {};
}

bool is_character(char32_t value) { return value <= 0x10FFFF && (value < 0xD800 || value > 0xDFFF); }

Step first_character(std::string_view text) {
  const Lead lead = read_lead(static_cast<std::uint8_t>(text[0]));
  if (lead.length == 0) return {};
  char32_t value = lead.bits;
  for (std::size_t k = 1; k < lead.length; ++k) {
    const std::uint8_t byte = k < text.size() ? static_cast<std::uint8_t>(text[k]) : std::uint8_t{0};
    if ((byte & 0xC0) != 0x80) return {kReplacement, k};
    value = (value << 6) | (byte & 0x3Fu);
  }
  if (value < lead.least || !is_character(value)) return {kReplacement, lead.length};
  return {value, lead.length};
}

struct Range {
  char32_t from, to;
};

/// Left out of every drawing: controls, soft hyphen, zero-width marks, direction marks, the byte order mark.
constexpr std::array<Range, 9> kLeftOut{{{0x0000, 0x001F}, {0x007F, 0x009F}, {0x00AD, 0x00AD}, {0x061C, 0x061C},
                                         {0x200B, 0x200F}, {0x2028, 0x202E}, {0x2060, 0x206F}, {0xFEFF, 0xFEFF},
                                         {0xFFF9, 0xFFFB}}};

bool is_left_out(char32_t character) {
  return std::ranges::any_of(kLeftOut, [&](Range r) { return r.from <= character && character <= r.to; });
}

bool is_noncharacter(char32_t character) {
  return (character & 0xFFFE) == 0xFFFE || (character >= 0xFDD0 && character <= 0xFDEF);
}

}  // namespace

std::u32string drawable_characters(std::string_view text) {
  std::u32string characters;
  characters.reserve(text.size());
  while (!text.empty()) {
    const Step step = first_character(text);
    text.remove_prefix(step.length);
    if (is_left_out(step.character)) continue;
    characters.push_back(is_noncharacter(step.character) ? kReplacement : step.character);
  }
  return characters;
}

std::string utf8_of(char32_t character) {
  if (!is_character(character)) character = kReplacement;
  const auto tail = [&](int shift) { return static_cast<char>(0x80 | ((character >> shift) & 0x3F)); };
  if (character < 0x80) return {static_cast<char>(character)};
  if (character < 0x800) return {static_cast<char>(0xC0 | (character >> 6)), tail(0)};
  if (character < 0x10000) return {static_cast<char>(0xE0 | (character >> 12)), tail(6), tail(0)};
  return {static_cast<char>(0xF0 | (character >> 18)), tail(12), tail(6), tail(0)};
}

}  // namespace stringcourse::paper
