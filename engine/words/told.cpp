// Facts with words: patterns filled with values.
#include <algorithm>
#include <charconv>
#include <string>

#include "measure/fault.hpp"
#include "measure/quoted.hpp"
#include "measure/sorting.hpp"
#include "words/language.hpp"

namespace stringcourse::words {
namespace {

using UnitKind = FactValue::Kind;

void tell(std::string& text, std::string_view says, const std::vector<FactValue>& values, const Reader& reader);

std::string digits_of(std::int64_t count) {
  char digits[24];
  return {digits, std::to_chars(digits, digits + sizeof digits, count).ptr};
}

/// "4 in", "4 1/2 in"; from two feet on, and in millimetres, as the tape says.
std::string spoken_text(Length length, Tape tape) {
  if (tape == Tape::Millimetres || length >= Length::feet(2)) return tape_text(length, tape);
  std::string inches = total_inches(length);
  inches.pop_back();  // its mark
  return inches + " in";
}

std::string length_text(Length length, LengthForm form, Tape tape) {
  const Length step = tape_step(tape);
  switch (form) {
    case LengthForm::Tape: break;
    case LengthForm::Both: return both_forms(length, tape);
    case LengthForm::Exact: return exact_text(length, tape);
    case LengthForm::Spoken: return spoken_text(length, tape);
    case LengthForm::Asked: return length.is_multiple_of(step) ? tape_text(length, tape) : exact_text(length, tape);
    case LengthForm::AtLeast: return length_text(step * -((-length).whole_multiples(step)), LengthForm::Marked, tape);
    case LengthForm::Marked:
      if (length != Length() && rounded_to(length, step) == Length()) return exact_text(length, tape);
      break;
  }
  return tape_text(length, tape);
}

/// A length that is compared with another one.
std::string apart_text(Length one, Length other, Tape tape) {
  const std::string text = length_text(one, LengthForm::Marked, tape);
  return one != other && text == length_text(other, LengthForm::Marked, tape) ? exact_text(one, tape) : text;
}

void tell(std::string& text, const FactValue& value, const Reader& reader);

/// The words between the last two parts of a list.
std::string_view last_between(UnitKind list, const Reader& reader) {
  switch (list) {
    case UnitKind::And: return reader.language.pattern("list-and");
    case UnitKind::Or: return reader.language.pattern("list-or");
    case UnitKind::Semicolons: return "; ";
    case UnitKind::Sentences: return " ";
    default: return ", ";
  }
}

std::string_view between(UnitKind list) {
  return list == UnitKind::Semicolons ? "; " : list == UnitKind::Sentences ? " " : ", ";
}

void tell_list(std::string& text, const FactValue& list, const Reader& reader) {
  const std::size_t count = list.parts().size();
  for (std::size_t k = 0; k < count; ++k) {
    if (k > 0) text += k + 1 == count ? last_between(list.kind(), reader) : between(list.kind());
    tell(text, list.parts()[k], reader);
  }
}

void tell(std::string& text, const FactValue& value, const Reader& reader) {
  switch (value.kind()) {
    case UnitKind::Name: text += value.text(); break;
    case UnitKind::Typed: text += quoted(value.text()); break;
    case UnitKind::Count: text += digits_of(value.count()); break;
    case UnitKind::Length: text += length_text(value.length(), value.form(), reader.tape); break;
    case UnitKind::Apart: text += apart_text(value.length(), value.other(), reader.tape); break;
    case UnitKind::Fact: tell(text, value.says(), value.parts(), reader); break;
    case UnitKind::And:
    case UnitKind::Or:
    case UnitKind::Commas:
    case UnitKind::Semicolons:
    case UnitKind::Sentences: tell_list(text, value, reader); break;
  }
}

/// "{0}" or "{0|unit|units}", without its braces.
void tell_place(std::string& text, std::string_view place, const std::vector<FactValue>& values, const Reader& reader) {
  std::size_t index = 0;
  const auto end = std::from_chars(place.data(), place.data() + place.size(), index).ptr;
  ensure(index < values.size(), "a sentence asks for a value that its fact does not have");
  std::string_view choice = place.substr(static_cast<std::size_t>(end - place.data()));
  if (choice.empty()) return tell(text, values[index], reader);
  choice.remove_prefix(1);
  const std::size_t bar = choice.find('|');
  ensure(bar != choice.npos, "a sentence chooses between one word");
  text += values[index].count() == 1 ? choice.substr(0, bar) : choice.substr(bar + 1);
}

void tell(std::string& text, std::string_view says, const std::vector<FactValue>& values, const Reader& reader) {
  if (says.empty()) return;
  const std::string_view pattern = reader.language.pattern(says);
  for (std::size_t at = 0; at < pattern.size(); ++at) {
    if (pattern[at] != '{') {
      text += pattern[at];
      continue;
    }
    const std::size_t end = pattern.find('}', at);
    ensure(end != pattern.npos, "a sentence has a brace that does not close");
    tell_place(text, pattern.substr(at + 1, end - at - 1), values, reader);
    at = end;
  }
}

}  // namespace

Language::Language(std::initializer_list<std::span<const Sentence>> sentences, const SheetWords& sheets,
                   const SheetWords& american)
    : sheets_(&sheets), american_(&american) {
  for (const auto group : sentences) sentences_.insert(sentences_.end(), group.begin(), group.end());
  sort_stably(sentences_, {}, &Sentence::name);
}

std::string_view Language::pattern(std::string_view name) const {
  const auto found = std::ranges::lower_bound(sentences_, name, {}, &Sentence::name);
  ensure(found != sentences_.end() && found->name == name, "a fact's sentence is not in the language");
  return found->pattern;
}

std::string told(const Fact& fact, const Reader& reader) {
  std::string text;
  tell(text, fact.says, fact.values, reader);
  return text;
}

}  // namespace stringcourse::words
