#include "cli/text_block.hpp"

#include <algorithm>

#include "job/words.hpp"

namespace stringcourse::cli {

namespace {

bool is_digit(char c) { return c >= '0' && c <= '9'; }

bool is_unit(std::string_view word) {
  constexpr std::string_view kUnits[] = {"in", "ft", "mm", "m", "lb", "kg"};
  const std::size_t end = word.find_last_not_of(".,;:)");
  return end != word.npos && std::ranges::find(kUnits, word.substr(0, end + 1)) != std::end(kUnits);
}

// Whether `next` must stay on the line of the word before it.
bool belongs_to(std::string_view before, std::string_view next) {
  if (before.empty() || !is_digit(before.back())) return false;
  return is_unit(next) || (is_digit(next.front()) && next.find('/') != next.npos);
}

// Words with what must stay beside them: "at most", "7 5/8 in", "apart".
std::vector<std::string> unbreakable_parts(std::string_view text) {
  std::vector<std::string> parts;
  std::string_view before;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t end = std::min(text.find(' ', at), text.size());
    const std::string_view word = text.substr(at, end - at);
    at = end + 1;
    if (word.empty()) continue;
    if (belongs_to(before, word)) {
      parts.back().append(" ").append(word);
    } else {
      parts.emplace_back(word);
    }
    before = word;
  }
  return parts;
}

}  // namespace

std::string wrapped(std::string_view lead, std::string_view text) {
  const std::size_t indent = count_characters(lead);
  std::string lines, line(lead);
  std::size_t used = indent;
  for (const std::string& part : unbreakable_parts(text)) {
    const std::size_t length = count_characters(part);
    if (used > indent && used + 1 + length > kColumns) {
      lines += line + "\n";
      line.assign(indent, ' ');
      used = indent;
    }
    if (used > indent) line += ' ', ++used;
    line += part;
    used += length;
  }
  return lines + line + "\n";
}

std::vector<std::size_t> Table::widths() const {
  std::vector<std::size_t> widest(columns_.size(), 0);
  for (const auto& row : rows_) {
    for (std::size_t column = 0; column < row.size(); ++column) {
      widest[column] = std::max(widest[column], count_characters(row[column]));
    }
  }
  return widest;
}

std::string Table::text() const {
  const std::vector<std::size_t> widest = widths();
  std::string text;
  for (const auto& row : rows_) {
    std::string line;
    for (std::size_t column = 0; column < row.size(); ++column) {
      const std::string blanks(widest[column] - count_characters(row[column]), ' ');
      line += columns_[column] == Align::Left ? "  " + row[column] + blanks : "  " + blanks + row[column];
    }
    text += line.substr(0, line.find_last_not_of(' ') + 1) + "\n";
  }
  return text;
}

}  // namespace stringcourse::cli
