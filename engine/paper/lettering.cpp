#include "paper/lettering.hpp"

#include <algorithm>
#include <iterator>

#include "measure/characters.hpp"
#include "paper/font.hpp"

namespace stringcourse::paper {
namespace {

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
    const std::string character(character_at(word, at));
    if (!parts.back().empty() && !fits(parts.back() + character, width, lettering)) parts.emplace_back();
    parts.back() += character;
    at += character.size();
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
  const std::int64_t space = text_units(" ", lettering.weight);
  while (at <= text.size()) {
    const std::size_t end = std::min(text.find('\n', at), text.size());
    std::string line;
    std::int64_t units = 0;  // of the line
    for (const std::string& word : words_of(without_control_characters(text.substr(at, end - at)))) {
      const std::int64_t longer = (line.empty() ? 0 : units + space) + text_units(word, lettering.weight);
      if (width_of_units(longer, lettering.height, lettering.weight) <= width) {
        line += (line.empty() ? "" : " ") + word;
        units = longer;
        continue;
      }
      if (!line.empty()) lines.push_back(std::move(line));
      std::vector<std::string> parts = split_word(word, width, lettering);
      line = std::move(parts.back());
      units = text_units(line, lettering.weight);
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
