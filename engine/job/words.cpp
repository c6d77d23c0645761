#include "job/words.hpp"

#include <algorithm>
#include <cstdint>
#include <vector>

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

/// The code point of a valid character.
std::uint32_t code_point(std::string_view character) {
  const std::uint8_t first = byte_at(character, 0);
  if (character.size() == 1) return first;
  std::uint32_t point = first & (0xFFU >> (character.size() + 1));
  for (std::size_t k = 1; k < character.size(); ++k) point = (point << 6) | (byte_at(character, k) & 0x3FU);
  return point;
}

bool is_control(std::uint32_t point) { return point < 0x20 || (point >= 0x7F && point <= 0x9F); }

/// Marks that turn the direction of writing, break lines or cannot be seen.
bool is_invisible(std::uint32_t point) {
  return point == 0xAD || point == 0x61C || (point >= 0x200B && point <= 0x200F) ||
         (point >= 0x2028 && point <= 0x202E) || (point >= 0x2060 && point <= 0x206F) || point == 0xFEFF ||
         (point >= 0xE0000 && point <= 0xE007F);
}

std::string spelled(std::uint32_t point) {
  constexpr std::string_view kDigits = "0123456789ABCDEF";
  std::string out = "\\u";
  for (int shift = point > 0xFFFF ? 16 : 12; shift >= 0; shift -= 4) out += kDigits[(point >> shift) & 0xF];
  return out;
}

/// The first `most` characters.
std::string_view clipped(std::string_view text, std::size_t most) {
  std::size_t offset = 0;
  for (std::size_t count = 0; offset < text.size() && count < most; ++count) offset += character_at(text, offset).size();
  return text.substr(0, offset);
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
  while (offset > 0 && is_continuation(byte_at(text, offset))) --offset;
  return text.substr(offset, std::max<std::size_t>(1, character_size(text, offset)));
}

bool is_control_character(std::string_view text, std::size_t offset) {
  return is_control(code_point(character_at(text, offset)));
}

std::string quoted(std::string_view text) {
  const std::string_view shown = clipped(text, 40);
  std::string out = "\u00AB";
  for (std::size_t offset = 0; offset < shown.size();) {
    const std::string_view character = character_at(shown, offset);
    const std::uint32_t point = code_point(character);
    if (is_control(point) || is_invisible(point)) {
      out += spelled(point);
    } else {
      out += character;
    }
    offset += character.size();
  }
  return out + (shown.size() < text.size() ? "...\u00BB" : "\u00BB");
}

std::string pointer_token(std::string_view key) {
  const std::string_view shown = clipped(key, 80);
  std::string out;
  for (const char c : shown) {
    if (c == '~') out += "~0";
    else if (c == '/') out += "~1";
    else out += c;
  }
  return shown.size() < key.size() ? out + "..." : out;
}

std::size_t edit_distance(std::string_view from, std::string_view to) {
  std::vector<std::size_t> row(to.size() + 1);
  for (std::size_t k = 0; k <= to.size(); ++k) row[k] = k;
  for (std::size_t i = 0; i < from.size(); ++i) {
    std::size_t diagonal = row[0];
    row[0] = i + 1;
    for (std::size_t k = 0; k < to.size(); ++k) {
      const std::size_t replaced = diagonal + (from[i] == to[k] ? 0 : 1);
      diagonal = row[k + 1];
      row[k + 1] = std::min({replaced, row[k] + 1, row[k + 1] + 1});
    }
  }
  return row.back();
}

std::string_view nearest_name(std::string_view typed, std::span<const std::string_view> known) {
  if (typed.size() > 40) return {};
  std::string_view best;
  std::size_t best_distance = 3;
  for (const std::string_view name : known) {
    const std::size_t distance = edit_distance(typed, name);
    if (distance < best_distance && 2 * distance <= name.size()) {
      best = name;
      best_distance = distance;
    }
  }
  return best;
}

std::string one_of_words(std::span<const std::string_view> names) {
  std::string out;
  for (std::size_t k = 0; k < names.size(); ++k) {
    if (k > 0) out += k + 1 == names.size() ? " or " : ", ";
    out += names[k];
  }
  return out;
}

}  // namespace stringcourse
