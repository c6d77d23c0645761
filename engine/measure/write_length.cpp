// Writing of lengths. Every writer rounds once, to whole steps of its tape, and only then makes digits of them.
#include <array>
#include <charconv>

#include "measure/notation.hpp"

namespace stringcourse {
namespace {

void append_number(std::string& text, std::int64_t number) {
  std::array<char, 20> digits;
  const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), number).ptr;
  text.append(digits.data(), end);
}

/// Inches of `count` parts, each 1/per_inch of an inch (a power of two): 7, 7 5/16, 5/16, 0. After feet (the text ends
/// in their dash) whole inches are always written: 0 3/8.
void append_inches(std::string& text, std::int64_t count, std::int64_t per_inch) {
  const std::int64_t whole = count / per_inch;
  std::int64_t over = count % per_inch;
  const bool says_whole = whole != 0 || over == 0 || text.ends_with("'-");
  if (says_whole) append_number(text, whole);
  if (over == 0) return;
  while (over % 2 == 0) {
    over /= 2;
    per_inch /= 2;
  }
  if (says_whole) text += ' ';
  append_number(text, over);
  text += '/';
  append_number(text, per_inch);
}

std::string feet_text(std::int64_t count, std::int64_t per_inch) {
  std::string text = count < 0 ? "-" : "";
  count = count < 0 ? -count : count;
  const std::int64_t feet = count / (12 * per_inch);
  if (feet != 0) {
    append_number(text, feet);
    text += "'-";
  }
  append_inches(text, count % (12 * per_inch), per_inch);
  text += '"';
  return text;
}

std::int64_t nearest_multiple(Length length, Length step) { return rounded_to(length, step).whole_multiples(step); }

/// Millimetres with as many places as are needed, at most six: 4451, 4451.25, 0.000001.
std::string exact_millimetres(Length length) {
  constexpr std::int64_t kPerMillimetre = 1'000'000;
  const std::int64_t count = length.in_nanometres();
  const std::int64_t magnitude = count < 0 ? -count : count;
  std::string text = count < 0 ? "-" : "";
  append_number(text, magnitude / kPerMillimetre);
  std::int64_t rest = magnitude % kPerMillimetre;
  if (rest != 0) text += '.';
  for (std::int64_t place = kPerMillimetre / 10; rest != 0; place /= 10) {
    text += static_cast<char>('0' + rest / place);
    rest %= place;
  }
  return text + " mm";
}

}  // namespace

std::string feet_and_inches(Length length) { return feet_text(nearest_multiple(length, Length::sixteenths(1)), 16); }

std::string total_inches(Length length) {
  const std::int64_t count = nearest_multiple(length, Length::sixteenths(1));
  std::string text = count < 0 ? "-" : "";
  append_inches(text, count < 0 ? -count : count, 16);
  return text + '"';
}

std::string millimetres_text(Length length) {
  std::string text;
  append_number(text, nearest_multiple(length, Length::millimetres(1)));
  return text + " mm";
}

std::string tape_text(Length length, Tape tape) {
  return tape == Tape::Inches ? feet_and_inches(length) : millimetres_text(length);
}

std::string both_forms(Length length, Tape tape) {
  if (tape == Tape::Millimetres) return millimetres_text(length);
  const std::string feet = feet_and_inches(length);
  const std::string inches = total_inches(length);
  return feet == inches ? feet : feet + " = " + inches;
}

std::string exact_text(Length length, Tape tape) {
  const Length step = Length::sixty_fourths(1);
  if (tape == Tape::Millimetres || !length.is_multiple_of(step)) return exact_millimetres(length);
  return feet_text(length.whole_multiples(step), 64);
}

}  // namespace stringcourse
