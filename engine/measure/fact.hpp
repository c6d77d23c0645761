#pragma once
// What is to be told, before it has words: which sentence, and its values. The folder words/ has the sentences.
#include <concepts>
#include <cstdint>
#include <initializer_list>
#include <string>
#include <string_view>
#include <vector>

#include "measure/length.hpp"

namespace stringcourse {

/// How a length of a fact is written on its reader's tape.
enum class LengthForm : std::uint8_t {
  Tape,     // one form, rounded: 14'-7 5/16" or 4451 mm
  Both,     // 14'-7 5/16" = 175 5/16"; in millimetres just 4451 mm
  Exact,    // as read_length gives it back
  Marked,   // rounded to what the tape can mark; exact where that would make nothing of it
  Asked,    // as somebody stated it: on the tape where it lies there, else exact
  AtLeast,  // rounded up to what the tape can mark
  Spoken,   // 4 1/2 in, from two feet on as Tape; 100 mm
};

struct Fact;

/// One value of a fact.
class FactValue {
 public:
  enum class Kind : std::uint8_t {
    Name,        // a name as the user gave it, or a mark: stands as it is
    Typed,       // what somebody typed: between quotation marks, made safe
    Count,       // a whole number
    Length,      // in `form`
    Apart,       // a length that is compared with another one: where rounding would make them alike, exact
    Fact,        // a part of a sentence, or a whole one
    And,         // a list: "a, b and c"
    Or,          // "a, b or c"
    Commas,      // "a, b, c"
    Semicolons,  // "a; b; c"
    Sentences,   // one after the other; empty ones are left out
  };

  FactValue(std::string name);
  FactValue(std::string_view name);
  FactValue(const char* name);
  template <std::integral Number>
    requires(!std::same_as<Number, bool> && !std::same_as<Number, char>)
  FactValue(Number count) : FactValue(Whole{static_cast<std::int64_t>(count)}) {}
  FactValue(Length length, LengthForm form = LengthForm::Tape);
  FactValue(Fact fact);
  FactValue(Kind list, std::vector<FactValue> parts);

  [[nodiscard]] static FactValue typed(std::string_view text);
  [[nodiscard]] static FactValue apart(Length length, Length from);

  [[nodiscard]] Kind kind() const { return kind_; }
  [[nodiscard]] const std::string& text() const { return text_; }
  [[nodiscard]] std::int64_t count() const { return count_; }
  [[nodiscard]] Length length() const { return length_; }
  [[nodiscard]] LengthForm form() const { return form_; }
  [[nodiscard]] Length other() const { return Length::nanometres(count_); }  // of Apart: what it is compared with
  [[nodiscard]] std::string_view says() const { return says_; }
  [[nodiscard]] const std::vector<FactValue>& parts() const { return parts_; }
  friend bool operator==(const FactValue&, const FactValue&) = default;

 private:
  struct Whole {
    std::int64_t count;
  };
  explicit FactValue(Whole whole);

  Kind kind_ = Kind::Name;
  LengthForm form_ = LengthForm::Tape;
  std::string text_;
  std::int64_t count_ = 0;
  Length length_;
  std::vector<FactValue> parts_;
  std::string_view says_;
};

/// One sentence, or a part of one. Empty: nothing is to be told.
struct Fact {
  std::string_view says;  // the sentence's name in words/; always a literal
  std::vector<FactValue> values;
  Fact() = default;
  Fact(std::string_view says, std::vector<FactValue> values);
  [[nodiscard]] bool empty() const { return says.empty(); }
  friend bool operator==(const Fact&, const Fact&) = default;
};

/// fact("opening-on-junction", {opening.name, wall.name}): the sentence's name and its values in their order.
[[nodiscard]] Fact fact(std::string_view says, std::initializer_list<FactValue> values = {});
/// A list of names, lengths or facts.
template <class Range>
[[nodiscard]] FactValue listed(FactValue::Kind kind, const Range& range) {
  return FactValue(kind, std::vector<FactValue>(std::begin(range), std::end(range)));
}
/// Sentences one after the other.
[[nodiscard]] Fact sentences(std::vector<Fact> facts);

}  // namespace stringcourse
