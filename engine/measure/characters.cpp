#include "measure/characters.hpp"

#include <algorithm>

namespace stringcourse {
namespace {

std::uint8_t byte_at(std::string_view text, std::size_t offset) { return static_cast<std::uint8_t>(text[offset]); }

bool is_continuation(std::uint8_t byte) { return (byte & 0xC0) == 0x80; }

/// Bytes of the character that this first byte announces; 0 if none starts so.
std::size_t announced_size(std::uint8_t first) {
  if (first < 0x80) return 1;
  if (first >= 0xC2 && first <= 0xDF) return 2;
  if (first >= 0xE0 && first <= 0xEF) return 3;
  if (first >= 0xF0 && first <= 0xF4) return 4;
  return 0;
}

/// The second byte's bounds shut out overlong forms, surrogates and what lies beyond U+10FFFF.
bool second_byte_fits(std::uint8_t first, std::uint8_t second) {
  if (first == 0xE0) return second >= 0xA0;
  if (first == 0xED) return second <= 0x9F;
  if (first == 0xF0) return second >= 0x90;
  if (first == 0xF4) return second <= 0x8F;
  return true;
}

/// Size of the valid character at `offset`, or 0.
std::size_t character_size(std::string_view text, std::size_t offset) {
  const std::uint8_t first = byte_at(text, offset);
  const std::size_t size = announced_size(first);
  if (size == 0 || offset + size > text.size()) return 0;
  for (std::size_t k = 1; k < size; ++k) {
    if (!is_continuation(byte_at(text, offset + k))) return 0;
  }
  return size == 1 || second_byte_fits(first, byte_at(text, offset + 1)) ? size : 0;
}

}  // namespace

std::size_t valid_utf8_prefix(std::string_view text) {
  std::size_t offset = 0;
  while (offset < text.size()) {
    const std::size_t size = character_size(text, offset);
    if (size == 0) break;
    offset += size;
  }
  return offset;
}

std::size_t count_characters(std::string_view text) {
  return static_cast<std::size_t>(
      std::ranges::count_if(text, [](char c) { return !is_continuation(static_cast<std::uint8_t>(c)); }));
}

std::string_view character_at(std::string_view text, std::size_t offset) {
  if (offset >= text.size()) return {};
  for (std::size_t back = 0; back <= 3 && back <= offset; ++back) {
    if (const std::size_t size = character_size(text, offset - back); size > back)
      return text.substr(offset - back, size);
  }
  return text.substr(offset, 1);
}

std::size_t broken_size(std::string_view text) {
  const std::size_t announced = std::max<std::size_t>(announced_size(byte_at(text, 0)), 1);
  std::size_t size = 1;
  while (size < announced && size < text.size() && is_continuation(byte_at(text, size))) ++size;
  return size;
}

std::uint32_t code_point(std::string_view character) {
  if (character.empty() || character_size(character, 0) != character.size()) return kBroken;
  const std::uint8_t first = byte_at(character, 0);
  if (character.size() == 1) return first;
  std::uint32_t point = first & (0xFFU >> (character.size() + 1));
  for (std::size_t k = 1; k < character.size(); ++k) point = (point << 6) | (byte_at(character, k) & 0x3FU);
  return point;
}

bool is_control(std::uint32_t point) { return point < 0x20 || (point >= 0x7F && point <= 0x9F); }

bool is_unshown(std::uint32_t point) {
  return is_control(point) || point == 0xAD || point == 0x61C || point == 0x180E ||
         (point >= 0x200B && point <= 0x200F) || (point >= 0x2028 && point <= 0x202E) ||
         (point >= 0x2060 && point <= 0x206F) || point == 0xFEFF || (point >= 0xFFF9 && point <= 0xFFFB) ||
         (point >= 0xE0000 && point <= 0xE007F) || point == kBroken;
}

std::string spelled(std::uint32_t point) {
  if (point == kBroken) return "?";
  constexpr std::string_view kDigits = "0123456789ABCDEF";
  std::string out = point > 0xFFFF ? "\\u{" : "\\u";
  for (int shift = point > 0xFFFF ? 16 : 12; shift >= 0; shift -= 4) out += kDigits[(point >> shift) & 0xF];
  return point > 0xFFFF ? out + "}" : out;
}

std::string with_unshown_spelled(std::string_view text) {
  std::string out;
  for (std::size_t offset = 0; offset < text.size();) {
    const std::string_view character = character_at(text, offset);
    const std::uint32_t point = code_point(character);
    out += is_unshown(point) ? spelled(point) : std::string(character);
    offset += character.size();
  }
  return out;
}

}  // namespace stringcourse
