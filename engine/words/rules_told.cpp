// Rules in words.
#include "measure/digits.hpp"
#include "measure/fault.hpp"
#include "words/language.hpp"

namespace stringcourse::words {
namespace {

bool on_inch_tape(Length limit) { return limit.is_multiple_of(Length::sixteenths(1)); }

/// "1/4 in", "32 in", "5'-4\"", "25 ft"
std::string inches_limit(Length limit) {
  if (limit < Length::feet(4)) {
    std::string text = total_inches(limit);
    text.pop_back();
    return text + " in";
  }
  if (limit.is_multiple_of(Length::feet(1))) return number_text(limit.whole_multiples(Length::feet(1))) + " ft";
  return feet_and_inches(limit);
}

/// "10 mm", "6 m"
std::string metric_limit(Length limit) {
  const Length metre = Length::millimetres(1000);
  if (limit >= metre && limit.is_multiple_of(metre)) return number_text(limit.whole_multiples(metre)) + " m";
  return millimetres_text(limit);
}

/// "6.4 mm", "3048 mm": to a tenth, for a whole millimetre would make "at least 1/4 in" less than it is.
std::string tenths_of_millimetres(Length limit) {
  const std::int64_t tenths = rounded_to(limit, Length::nanometres(100'000)).in_nanometres() / 100'000;
  return number_text(tenths / 10) + (tenths % 10 == 0 ? "" : "." + number_text(tenths % 10)) + " mm";
}

std::string limit_text(Length limit, Tape tape) {
  const bool inches = on_inch_tape(limit);
  if (inches) return inches_limit(limit) + (tape == Tape::Inches ? "" : " (" + tenths_of_millimetres(limit) + ")");
  return metric_limit(limit) + (tape == Tape::Inches ? " (" + inches_limit(limit) + ")" : "");
}

/// "4.4", "-6.7", "0": (F - 32) 5/9 to the nearest tenth, a half away from zero.
std::string celsius(Fahrenheit temperature) {
  const std::int64_t ninths = (std::int64_t{temperature.degrees} - 32) * 50;  // of a tenth of a degree
  const std::int64_t size = ninths < 0 ? -ninths : ninths, tenths = (2 * size + 9) / 18;
  return (ninths < 0 && tenths > 0 ? "-" : "") + number_text(tenths / 10) +
         (tenths % 10 == 0 ? "" : "." + number_text(tenths % 10));
}

/// To the nearest whole one: a mile is 1.609344 km.
std::string kilometres(MilesPerHour speed) {
  return number_text((std::int64_t{speed.miles} * 1'609'344 + 500'000) / 1'000'000);
}

struct FigureText {
  /// "40 °F (4.4 °C)": both, whatever the tape, for thermometers are sold by both.
  FactValue operator()(Fahrenheit temperature) const {
    return number_text(temperature.degrees) + " \u00B0F (" + celsius(temperature) + " \u00B0C)";
  }
  FactValue operator()(MilesPerHour speed) const {
    return number_text(speed.miles) + " mph (" + kilometres(speed) + " km/h)";
  }
  /// "10 minutes", "2 1/2 hours", "24 h"
  FactValue operator()(Minutes time) const {
    const std::int32_t half_hours = time.count / 30;
    if (time.count < 90 || time.count % 30 != 0) return fact("time-minutes", {time.count});
    if (half_hours % 2 != 0) return fact("time-and-half-an-hour", {half_hours / 2});
    return fact("time-hours", {half_hours / 2});
  }
};

}  // namespace

std::string rule_text(const Rule& rule, const Reader& reader) {
  std::vector<FactValue> limits;
  for (const Length limit : rule.limits_for(reader.tape)) limits.emplace_back(limit_text(limit, reader.tape));
  for (const RuleFigure& figure : rule.figures) limits.emplace_back(std::visit(FigureText{}, figure));
  return told(Fact("rule-" + std::string(rule.id), limits), reader);
}

std::string cited(std::string_view rule_id, const Reader& reader) {
  if (rule_id.empty()) return {};
  const Rule* rule = find_rule(rule_id);
  ensure(rule != nullptr, "a finding cites a rule that the table does not have");
  const std::string text = rule_text(*rule, reader);
  return rule->source.text.empty() ? text : text + " (" + rule->source.text + ")";
}

}  // namespace stringcourse::words
