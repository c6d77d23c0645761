#include "job/words.hpp"

#include <algorithm>
#include <vector>

namespace stringcourse {
namespace {

/// The first `most` characters.
std::string_view clipped(std::string_view text, std::size_t most) {
  std::size_t offset = 0;
  for (std::size_t count = 0; offset < text.size() && count < most; ++count)
    offset += character_at(text, offset).size();
  return text.substr(0, offset);
}

}  // namespace

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

}  // namespace stringcourse
