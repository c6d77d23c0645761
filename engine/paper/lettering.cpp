#include "paper/lettering.hpp"

#include <algorithm>
#include <iterator>

namespace stringcourse::paper {
namespace {

std::size_t next_character(const std::string& text, std::size_t at) {
  ++at;
  while (at < text.size() && (static_cast<unsigned char>(text[at]) & 0xC0) == 0x80) ++at;
  return at;
}

bool is_digit(char byte) { return byte >= '0' && byte <= '9'; }

// A fraction such as 7/16", which is never parted from the whole number before it.
bool is_fraction(const std::string& word) {
  const std::size_t stroke = word.find('/');
  return stroke != std::string::npos && stroke > 0 && is_digit(word[stroke - 1]) && is_digit(word.front()) &&
         stroke + 1 < word.size() && is_digit(word[stroke + 1]);
}

std::vector<std::string> words_of(const std::string& line) {
  std::vector<std::string> words;
  std::size_t at = 0;
  while (at < line.size()) {
    const std::size_t end = std::min(line.find(' ', at), line.size());
    if (end > at) {
      std::string word = line.substr(at, end - at);
      const bool second_form = !words.empty() && words.back() == "=";  // "= 175 5/16\"" stays together
      const bool fraction = !words.empty() && is_digit(words.back().back()) && is_fraction(word);
      if (second_form || fraction) words.back() += " " + word;
      else words.push_back(std::move(word));
    }
    at = end + 1;
  }
  return words;
}

// A word in pieces no wider than a line, broken at the spaces that hold its parts together if it has any; else
// anywhere, at least one character each. One that fits stays whole.
std::vector<std::string> split_word(const std::string& word, Micrometres width, Lettering lettering) {
  if (fits(word, width, lettering)) return {word};
  std::vector<std::string> parts(1);
  const std::size_t space = word.rfind(' ');
  if (space != std::string::npos) {
    parts = split_word(word.substr(0, space), width, lettering);
    std::ranges::move(split_word(word.substr(space + 1), width, lettering), std::back_inserter(parts));
    return parts;
  }
  for (std::size_t at = 0; at < word.size();) {
    const std::size_t next = next_character(word, at);
    const std::string character = word.substr(at, next - at);
    if (!parts.back().empty() && !fits(parts.back() + character, width, lettering)) parts.emplace_back();
    parts.back() += character;
    at = next;
  }
  return parts;
}

}  // namespace

std::string without_control_characters(std::string text) {
  for (char& byte : text) {
    const auto value = static_cast<unsigned char>(byte);
    if (value < 0x20 || value == 0x7F) byte = ' ';
  }
  return text;
}

bool fits(const std::string& text, Micrometres width, Lettering lettering) {
  return text_width(text, lettering.height, lettering.weight) <= width;
}

std::vector<std::string> wrapped(const std::string& text, Micrometres width, Lettering lettering) {
  std::vector<std::string> lines;
  std::size_t at = 0;
  while (at <= text.size()) {
    const std::size_t end = std::min(text.find('\n', at), text.size());
    std::string line;
    for (const std::string& word : words_of(without_control_characters(text.substr(at, end - at)))) {
      std::string longer = line.empty() ? word : line + " " + word;
      if (fits(longer, width, lettering)) {
        line = std::move(longer);
        continue;
      }
      if (!line.empty()) lines.push_back(std::move(line));
      std::vector<std::string> parts = split_word(word, width, lettering);
      line = std::move(parts.back());
      parts.pop_back();
      std::ranges::move(parts, std::back_inserter(lines));
    }
    if (!line.empty() || lines.empty()) lines.push_back(std::move(line));
    at = end + 1;
  }
  return lines;
}

std::optional<Setting> set_in(const std::string& text, TextRoom room, Lettering lettering,
                              std::span<const Micrometres> heights) {
  for (const Micrometres height : heights) {
    lettering.height = height;
    Setting setting{{}, lettering, 0, 0};
    bool whole = true;  // no word is torn
    for (const std::string& word : words_of(without_control_characters(text)))
      whole = whole && fits(word, room.width, lettering);
    if (!whole) continue;
    setting.lines = wrapped(text, room.width, lettering);
    for (const std::string& line : setting.lines)
      setting.width = std::max(setting.width, text_width(line, height, lettering.weight));
    setting.height = height + static_cast<Micrometres>(setting.lines.size() - 1) * line_pitch(height);
    if (setting.height <= room.height) return setting;
  }
  return std::nullopt;
}

Micrometres paragraph_height(const std::string& text, Micrometres width, Lettering lettering) {
  return static_cast<Micrometres>(wrapped(text, width, lettering).size()) * line_pitch(lettering.height);
}

}  // namespace stringcourse::paper
