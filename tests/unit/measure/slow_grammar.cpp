#include "unit/measure/slow_grammar.hpp"

#include <map>
#include <regex>
#include <utility>
#include <vector>

namespace slow_grammar {
namespace {

using Int = __int128;

/// Whole nanometres, or nothing.
using Value = std::optional<Int>;

void replace_all(std::string& text, const std::string& from, const std::string& to) {
  for (std::size_t at = 0; (at = text.find(from, at)) != std::string::npos; at += to.size())
    text.replace(at, from.size(), to);
}

/// Plain marks in place of typographic ones; vulgar fractions become one capital letter of their own.
/// (Capital letters of the user's are made small before, so that these stand alone.)
std::string plain(std::string text) {
  for (char& c : text) {
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c + 32);
  }
  const std::vector<std::pair<std::string, std::string>> kPlain{
      {"\xE2\x80\xB2", "'"}, {"\xE2\x80\x99", "'"}, {"\xE2\x80\xB3", "\""}, {"\xE2\x80\x9D", "\""},
      {"\xE2\x80\x91", "-"}, {"\xE2\x80\x93", "-"}, {"\xE2\x88\x92", "-"},  {"\xC2\xA0", " "},
      {"\xC2\xBD", "A"},     {"\xC2\xBC", "B"},     {"\xC2\xBE", "C"},      {"\xE2\x85\x9B", "D"},
      {"\xE2\x85\x9C", "E"}, {"\xE2\x85\x9D", "F"}, {"\xE2\x85\x9E", "G"}};
  for (const auto& [from, to] : kPlain) replace_all(text, from, to);
  return text;
}

std::string without_leading_zeros(std::string digits) {
  while (digits.size() > 1 && digits[0] == '0') digits.erase(0, 1);
  return digits;
}

/// "14.50" of a unit of so many nanometres, by long multiplication; nothing if inexact or absurdly long.
Value decimal(const std::string& number, Int unit) {
  const std::size_t point = number.find('.');
  std::string whole = without_leading_zeros(number.substr(0, point));
  std::string places = point == std::string::npos ? "" : number.substr(point + 1);
  while (!places.empty() && places.back() == '0') places.pop_back();
  if (whole.size() > 9 || places.size() > 12) return std::nullopt;
  Int count = 0, scale = 1;
  for (char c : whole) count = count * 10 + (c - '0');
  for (char c : places) {
    count = count * 10 + (c - '0');
    scale *= 10;
  }
  if (count * unit % scale != 0) return std::nullopt;
  return count * unit / scale;
}

/// "5/16" or a vulgar fraction's letter, of an inch.
Value fraction(const std::string& text) {
  const std::string kVulgar = "ABCDEFG";
  const int kEighths[] = {4, 2, 6, 1, 3, 5, 7};
  if (text.size() == 1) return Int{25'400'000} * kEighths[kVulgar.find(text[0])] / 8;
  const std::size_t slash = text.find('/');
  const std::string over = without_leading_zeros(text.substr(0, slash));
  const std::string under = without_leading_zeros(text.substr(slash + 1));
  if (over.size() > 2 || under.size() > 2) return std::nullopt;
  const int n = std::stoi(over), d = std::stoi(under);
  for (int power = 2; power <= 64; power *= 2) {
    if (d == power && n < d) return Int{25'400'000} * n / d;
  }
  return std::nullopt;
}

// An amount of inches in four groups: whole, its spaced or hyphened fraction, a fraction alone, a decimal.
const std::string kFraction = "(?:[0-9]+/[0-9]+|[A-G])";
const std::string kAmount =
    "(?:([0-9]+)(?: *([A-G])|(?: +|-)(" + kFraction + "))?|(" + kFraction + ")|([0-9]*\\.[0-9]+))";
const std::string kFeet = "(?:'|ft|feet|foot)";
const std::string kInch = "(?:\"|in|inch|inches)";
const std::string kNumber = "([0-9]*\\.[0-9]+|[0-9]+)";

/// Inches of the five groups from `first` on.
Value inches(const std::smatch& match, std::size_t first) {
  if (match[first + 4].matched) return decimal(match[first + 4], 25'400'000);
  if (match[first + 3].matched) return fraction(match[first + 3]);
  Value total = decimal(match[first], 25'400'000);
  for (std::size_t group : {first + 1, first + 2}) {
    if (!total || !match[group].matched) continue;
    const Value part = fraction(match[group]);
    total = part ? Value(*total + *part) : std::nullopt;
  }
  return total;
}

Value feet_and_inches(const std::string& text) {
  static const std::regex kForm("([0-9]+) *" + kFeet + " *-? *" + kAmount + "(?: *" + kInch + ")?");
  std::smatch match;
  if (!std::regex_match(text, match, kForm)) return std::nullopt;
  const Value feet = decimal(match[1], 304'800'000), rest = inches(match, 2);
  if (!feet || !rest || *rest >= 304'800'000) return std::nullopt;
  return *feet + *rest;
}

Value inches_alone(const std::string& text, bool bare) {
  static const std::regex kMarked(kAmount + " *" + kInch), kBare(kAmount);
  std::smatch match;
  if (!std::regex_match(text, match, bare ? kBare : kMarked)) return std::nullopt;
  return inches(match, 1);
}

Value with_unit(const std::string& text, const std::string& unit, Int nanometres_each) {
  static std::map<std::string, std::regex> forms;  // one for each unit: making an expression is slow
  const auto form = forms.try_emplace(unit, kNumber + " *" + unit).first;
  std::smatch match;
  if (!std::regex_match(text, match, form->second)) return std::nullopt;
  return decimal(match[1], nanometres_each);
}

Value one_unit(const std::string& text, bool inch_tape) {
  static const std::regex kLastWord("[0-9.]+ *((?:mm|cm|m)|" + kFeet + ")?");
  std::smatch match;
  if (!std::regex_match(text, match, kLastWord)) return std::nullopt;
  const std::string unit = match[1];
  if (unit == "mm" || (unit.empty() && !inch_tape)) return with_unit(text, unit, 1'000'000);
  if (unit == "cm") return with_unit(text, unit, 10'000'000);
  if (unit == "m") return with_unit(text, unit, 1'000'000'000);
  return unit.empty() ? std::nullopt : with_unit(text, unit, 304'800'000);
}

}  // namespace

std::optional<std::int64_t> nanometres(const std::string& text, bool inch_tape) {
  if (text.size() > 100) return std::nullopt;
  std::string magnitude = plain(text);
  while (magnitude.ends_with(' ')) magnitude.pop_back();
  while (magnitude.starts_with(' ')) magnitude.erase(0, 1);
  const bool negative = magnitude.starts_with('-');
  if (negative) magnitude.erase(0, 1);
  std::vector<Value> readings{feet_and_inches(magnitude), inches_alone(magnitude, false),
                              one_unit(magnitude, inch_tape)};
  if (inch_tape) readings.push_back(inches_alone(magnitude, true));
  Value only;
  for (const Value& reading : readings) {
    if (reading && only) return std::nullopt;  // two readings: the tests would see a disagreement
    if (reading) only = reading;
  }
  if (!only || *only > Int{10'000'000'000'000}) return std::nullopt;
  return static_cast<std::int64_t>(negative ? -*only : *only);
}

}  // namespace slow_grammar
