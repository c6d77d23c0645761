#include "wasm/base64.hpp"

namespace stringcourse::border {
namespace {

int value_of(char letter) {
  if (letter >= 'A' && letter <= 'Z') return letter - 'A';
  if (letter >= 'a' && letter <= 'z') return letter - 'a' + 26;
  if (letter >= '0' && letter <= '9') return letter - '0' + 52;
  return letter == '+' ? 62 : letter == '/' ? 63 : -1;
}

}  // namespace

std::optional<std::vector<std::uint8_t>> from_base64(std::string_view text) {
  if (text.size() % 4 != 0) return std::nullopt;
  std::vector<std::uint8_t> bytes;
  bytes.reserve(text.size() / 4 * 3);
  for (std::size_t at = 0; at < text.size(); at += 4) {
    const bool last = at + 4 == text.size();
    const std::size_t padding = last ? (text[at + 3] == '=' ? (text[at + 2] == '=' ? 2U : 1U) : 0U) : 0U;
    std::uint32_t group = 0;
    for (std::size_t k = 0; k < 4; ++k) {
      const int value = k >= 4 - padding ? 0 : value_of(text[at + k]);
      if (value < 0) return std::nullopt;
      group = group << 6 | static_cast<std::uint32_t>(value);
    }
    for (std::size_t k = 0; k < 3 - padding; ++k) bytes.push_back(static_cast<std::uint8_t>(group >> (16 - 8 * k)));
  }
  return bytes;
}

}  // namespace stringcourse::border
