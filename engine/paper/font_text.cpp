#include "paper/font_text.hpp"

#include <algorithm>
#include <array>
#include <cstdint>

#include "measure/characters.hpp"

namespace stringcourse::paper {
namespace {

bool is_character(char32_t value) { return value <= 0x10FFFF && (value < 0xD800 || value > 0xDFFF); }

struct Range {
  char32_t from, to;
};

/// Left out of every drawing: controls, soft hyphen, zero-width marks, direction marks, the byte order mark.
constexpr std::array<Range, 9> kLeftOut{{{0x0000, 0x001F},
                                         {0x007F, 0x009F},
                                         {0x00AD, 0x00AD},
                                         {0x061C, 0x061C},
                                         {0x200B, 0x200F},
                                         {0x2028, 0x202E},
                                         {0x2060, 0x206F},
                                         {0xFEFF, 0xFEFF},
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
    const std::string_view one = character_at(text, 0);
    const std::uint32_t point = code_point(one);
    text.remove_prefix(point == kBroken ? broken_size(text) : one.size());
    if (is_left_out(point)) continue;
    characters.push_back(point == kBroken || is_noncharacter(point) ? kReplacement : char32_t{point});
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
