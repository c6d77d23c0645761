#include "measure/quoted.hpp"

#include <cstdint>
#include <vector>

namespace stringcourse::notation {
namespace {

/// One character: its bytes, and its code point (kBroken for a byte that starts no valid character).
struct Character {
  std::string_view bytes;
  std::uint32_t code = 0;
};
constexpr std::uint32_t kBroken = 0xFFFFFFFF;

constexpr std::size_t length_from_lead(unsigned char lead) {
  if (lead < 0x80) return 1;
  if (lead >= 0xC2 && lead <= 0xDF) return 2;
  if (lead >= 0xE0 && lead <= 0xEF) return 3;
  if (lead >= 0xF0 && lead <= 0xF4) return 4;
  return 0;
}

/// Least code point that needs so many bytes: anything under it was written too long and is no valid UTF-8.
constexpr std::uint32_t least_code(std::size_t length) {
  return length == 1 ? 0 : length == 2 ? 0x80 : length == 3 ? 0x800 : 0x10000;
}

Character first_character(std::string_view text) {
  const auto lead = static_cast<unsigned char>(text[0]);
  const std::size_t length = length_from_lead(lead);
  if (length == 0 || length > text.size()) return {text.substr(0, 1), kBroken};
  std::uint32_t code = length == 1 ? lead : lead & (0x7Fu >> length);
  for (std::size_t i = 1; i < length; ++i) {
    const auto next = static_cast<unsigned char>(text[i]);
    if ((next & 0xC0u) != 0x80u) return {text.substr(0, 1), kBroken};
    code = code << 6 | (next & 0x3Fu);
  }
  const bool surrogate = code >= 0xD800 && code <= 0xDFFF;
  if (code < least_code(length) || code > 0x10FFFF || surrogate) return {text.substr(0, 1), kBroken};
  return {text.substr(0, length), code};
}

/// Characters that could hide or turn round what a message says.
constexpr bool is_unshown(std::uint32_t code) {
  return code < 0x20 || (code >= 0x7F && code < 0xA0) || (code >= 0x200B && code <= 0x200F) ||
         (code >= 0x2028 && code <= 0x202E) || (code >= 0x2060 && code <= 0x206F) || code == 0xFEFF ||
         code == kBroken;
}

}  // namespace

std::string quoted(std::string_view text) {
  std::vector<std::string_view> shown;
  while (!text.empty() && shown.size() <= kQuotedLength) {
    const Character character = first_character(text);
    text.remove_prefix(character.bytes.size());
    shown.push_back(is_unshown(character.code) ? "?" : character.bytes);
  }
  if (shown.size() > kQuotedLength) {
    shown.resize(kQuotedLength - 3);
    shown.push_back("...");
  }
  std::string message = "\u00AB";
  for (const std::string_view character : shown) message += character;
  return message + "\u00BB";
}

}  // namespace stringcourse::notation
