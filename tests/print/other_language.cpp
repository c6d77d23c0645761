#include "print/other_language.hpp"

#include <cstring>
#include <deque>
#include <memory>
#include <type_traits>

#include "words/sheet_words.hpp"

namespace stringcourse::print_test {
namespace {

constexpr std::string_view kVowels = "aeiou", kCapitals = "AEIOU";

bool is_letter(char byte) { return (byte >= 'a' && byte <= 'z') || (byte >= 'A' && byte <= 'Z'); }

using Words = words::SheetWords;
constexpr std::size_t kWords = sizeof(Words) / sizeof(std::string_view);
static_assert(std::is_trivially_copyable_v<Words> && sizeof(Words) == kWords * sizeof(std::string_view));

/// A language's texts, kept for as long as the program runs.
struct Kept {
  std::deque<std::string> texts;
  std::string_view keep(std::string text) { return texts.emplace_back(std::move(text)); }

  std::unique_ptr<Words> marked_words(const Words& english) {
    auto all = std::make_unique<Words>();
    std::string_view each[kWords];
    std::memcpy(static_cast<void*>(each), &english, sizeof english);
    for (std::string_view& text : each) text = keep(marked(text));
    std::memcpy(static_cast<void*>(all.get()), each, sizeof each);
    return all;
  }
};

}  // namespace

std::string marked(std::string_view pattern) {
  std::string text;
  bool in_braces = false;
  for (const char byte : pattern) {
    if (byte == '{') in_braces = true;
    if (byte == '|' || byte == '}') in_braces = false;  // {0|unit|units}: the words are marked
    const std::size_t vowel = kVowels.find(byte);
    text += in_braces || vowel == kVowels.npos ? byte : kCapitals[vowel];
  }
  return text;
}

const words::Language& other_language() {
  static Kept kept;
  static const auto kSheets = kept.marked_words(words::english().sheets(false));
  static const auto kAmerican = kept.marked_words(words::english().sheets(true));
  static const std::vector<words::Sentence> kSentences = [] {
    std::vector<words::Sentence> all;
    for (const words::Sentence& one : words::english().sentences()) {
      all.push_back({one.name, kept.keep(marked(one.pattern))});
    }
    return all;
  }();
  static const words::Language kLanguage{{kSentences}, *kSheets, *kAmerican};
  return kLanguage;
}

std::string unmarked_word(std::string_view text, const std::set<std::string, std::less<>>& names) {
  std::string word;
  for (std::size_t k = 0; k <= text.size(); ++k) {
    const bool letter = k < text.size() && is_letter(text[k]);
    if (letter) {
      word += text[k];
      continue;
    }
    const bool plain = word.find_first_of("aeiou") != word.npos;
    if (word.size() >= 3 && plain && !names.contains(word)) return word;
    word.clear();
  }
  return "";
}

}  // namespace stringcourse::print_test
