#include "measure/tokens.hpp"

#include <algorithm>
#include <array>

namespace stringcourse::notation {
namespace {

struct Glyph {
  std::string_view text;
  Mark mark;
  std::int64_t numerator = 0, denominator = 0;
};

/// Marks of one character, plain and typographic (UTF-8).
constexpr std::array kGlyphs{
    Glyph{"'", Mark::Feet},
    Glyph{"\u2032", Mark::Feet},
    Glyph{"\u2019", Mark::Feet},
    Glyph{"\"", Mark::Inch},
    Glyph{"\u2033", Mark::Inch},
    Glyph{"\u201D", Mark::Inch},
    Glyph{"/", Mark::Slash},
    Glyph{"-", Mark::Hyphen},
    Glyph{"\u2011", Mark::Hyphen},
    Glyph{"\u2013", Mark::Hyphen},
    Glyph{"\u2212", Mark::Hyphen},
    Glyph{"\u00BD", Mark::Vulgar, 1, 2},
    Glyph{"\u00BC", Mark::Vulgar, 1, 4},
    Glyph{"\u00BE", Mark::Vulgar, 3, 4},
    Glyph{"\u215B", Mark::Vulgar, 1, 8},
    Glyph{"\u215C", Mark::Vulgar, 3, 8},
    Glyph{"\u215D", Mark::Vulgar, 5, 8},
    Glyph{"\u215E", Mark::Vulgar, 7, 8},
};

struct Word {
  std::string_view text;
  Mark mark;
};

/// Units written out; capitals count as small letters.
constexpr std::array kWords{
    Word{"ft", Mark::Feet},       Word{"feet", Mark::Feet},     Word{"foot", Mark::Feet},
    Word{"in", Mark::Inch},       Word{"inch", Mark::Inch},     Word{"inches", Mark::Inch},
    Word{"mm", Mark::Millimetre}, Word{"cm", Mark::Centimetre}, Word{"m", Mark::Metre},
};

constexpr bool is_digit(char c) { return c >= '0' && c <= '9'; }
constexpr bool is_letter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); }
constexpr char in_small(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }

/// Bytes of blank at the front: spaces and no-break spaces.
std::size_t blank_at_front(std::string_view text) {
  std::size_t count = 0;
  while (count < text.size()) {
    if (text[count] == ' ') count += 1;
    else if (text.substr(count).starts_with("\u00A0")) count += 2;
    else break;
  }
  return count;
}

std::size_t digits_at_front(std::string_view text) {
  return static_cast<std::size_t>(std::ranges::find_if_not(text, is_digit) - text.begin());
}

std::int64_t held_value(std::string_view digits) {
  std::int64_t value = 0;
  for (const char digit : digits) value = std::min(kTooMany, value * 10 + (digit - '0'));
  return value;
}

/// 7 · 7.625 · .625. A point without a digit behind it is not taken.
Token number_at_front(std::string_view text) {
  Token token;
  token.mark = Mark::Number;
  std::size_t length = digits_at_front(text);
  token.whole = held_value(text.substr(0, length));
  if (length < text.size() && text[length] == '.') {
    std::string_view places = text.substr(length + 1, digits_at_front(text.substr(length + 1)));
    token.decimal = !places.empty();
    if (token.decimal) length += 1 + places.size();
    while (places.ends_with('0')) places.remove_suffix(1);
    token.places = static_cast<int>(std::min<std::size_t>(places.size(), kTooFine));
    if (token.places < kTooFine) token.parts = held_value(places);
  }
  token.text = text.substr(0, length);
  return token;
}

bool same_in_small(std::string_view written, std::string_view small) {
  return std::ranges::equal(written, small, {}, in_small);
}

Token word_at_front(std::string_view text) {
  const auto length = static_cast<std::size_t>(std::ranges::find_if_not(text, is_letter) - text.begin());
  const std::string_view written = text.substr(0, length);
  for (const Word& word : kWords) {
    if (same_in_small(written, word.text)) return {.mark = word.mark, .text = written};
  }
  return {.mark = Mark::Other, .text = written};
}

Token glyph_at_front(std::string_view text) {
  for (const Glyph& glyph : kGlyphs) {
    if (!text.starts_with(glyph.text)) continue;
    return {.mark = glyph.mark,
            .text = text.substr(0, glyph.text.size()),
            .whole = glyph.numerator,
            .parts = glyph.denominator};
  }
  return {.mark = Mark::Other, .text = text.substr(0, 1)};
}

bool starts_with_number(std::string_view text) {
  return is_digit(text[0]) || (text[0] == '.' && text.size() > 1 && is_digit(text[1]));
}

Token token_at_front(std::string_view text) {
  if (starts_with_number(text)) return number_at_front(text);
  if (is_letter(text[0])) return word_at_front(text);
  return glyph_at_front(text);
}

}  // namespace

std::vector<Token> tokens_of(std::string_view text) {
  std::vector<Token> tokens;
  while (true) {
    const std::size_t blank = blank_at_front(text);
    text.remove_prefix(blank);
    tokens.push_back(text.empty() ? Token{} : token_at_front(text));
    tokens.back().spaced = blank > 0;
    if (text.empty()) return tokens;
    text.remove_prefix(tokens.back().text.size());
  }
}

}  // namespace stringcourse::notation
