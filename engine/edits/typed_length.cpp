#include "edits/typed_length.hpp"

#include <optional>

#include "measure/notation.hpp"

namespace stringcourse {
namespace {

constexpr std::string_view kActual = " actual";

bool is_number_alone(std::string_view text) { return text.find_first_not_of("0123456789. ") == std::string_view::npos; }

/// Feet or inches? Of a number alone that may be either.
std::optional<Refusal> unit_unsaid(std::string_view text, Length length, Tape tape, const TypedMeasure& measure,
                                   const std::string& place) {
  const Length most = tape == Tape::Inches ? measure.inches : measure.millimetres;
  if (!is_number_alone(text) || most == Length() || length > most) return std::nullopt;
  const std::string number(text.substr(0, text.find_last_not_of(' ') + 1));
  if (tape == Tape::Inches)
    return Refusal{"unit-unsaid", place, fact("feet-or-inches", {number}), fact("write-feet-or-inches", {number})};
  if (length < Length::millimetres(100)) {
    return Refusal{"unit-unsaid", place, fact("metres-or-millimetres", {number}),
                   fact("write-metres-or-millimetres", {number})};
  }
  return Refusal{"unit-unsaid", place, fact("centimetres-or-millimetres", {number}),
                 fact("write-centimetres-or-millimetres", {number})};
}

bool is_digits(std::string_view text) {
  return !text.empty() && text.find_first_not_of("0123456789") == std::string_view::npos;
}

}  // namespace

std::string written_out(std::string_view text, Tape tape) {
  const std::size_t dash = text.find('-');
  if (tape != Tape::Inches || dash == std::string_view::npos || !is_digits(text.substr(0, dash)) ||
      !is_digits(text.substr(dash + 1)))
    return std::string(text);
  return std::string(text.substr(0, dash)) + "'-" + std::string(text.substr(dash + 1)) + "\"";
}

StatedLength read_typed_length(std::string_view text, Tape tape, const TypedMeasure& measure, const std::string& place,
                               Refusals& refusals) {
  const Basis basis = text.ends_with(kActual) ? Basis::Actual : Basis::Nominal;
  if (basis == Basis::Actual) text.remove_suffix(kActual.size());
  const auto length = read_length(written_out(text, tape), tape);
  if (!length) {
    refusals.add({"not-a-length", place, length.error().reason, length.error().remedy});
    return {};
  }
  if (auto unsaid = unit_unsaid(text, *length, tape, measure, place)) refusals.add(*std::move(unsaid));
  return {*length, basis};
}

}  // namespace stringcourse
