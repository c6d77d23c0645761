#include "measure/date.hpp"

#include "measure/digits.hpp"

namespace stringcourse {
namespace {

constexpr bool is_leap(int year) { return (year % 4 == 0 && year % 100 != 0) || year % 400 == 0; }

constexpr int days_in(int year, int month) {
  constexpr int kDays[] = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
  return month == 2 && is_leap(year) ? 29 : kDays[month - 1];
}

constexpr int kFirstYear = 1970, kLastYear = 2199;

/// Digits alone, or -1.
int whole(std::string_view text) {
  int value = 0;
  for (const char c : text) {
    if (c < '0' || c > '9') return -1;
    value = value * 10 + (c - '0');
  }
  return value;
}

std::string two_digits(int number) { return (number < 10 ? "0" : "") + number_text(number); }

}  // namespace

std::optional<Date> read_date(std::string_view text) {
  if (text.size() != 10 || text[4] != '-' || text[7] != '-') return std::nullopt;
  const int year = whole(text.substr(0, 4)), month = whole(text.substr(5, 2)), day = whole(text.substr(8, 2));
  if (year < kFirstYear || year > kLastYear || month < 1 || month > 12) return std::nullopt;
  if (day < 1 || day > days_in(year, month)) return std::nullopt;
  std::int64_t count = day - 1;
  for (int y = kFirstYear; y < year; ++y) count += is_leap(y) ? 366 : 365;
  for (int m = 1; m < month; ++m) count += days_in(year, m);
  return Date{count};
}

std::string date_text(Date date) {
  std::int64_t left = date.day;
  int year = kFirstYear, month = 1;
  for (; left >= (is_leap(year) ? 366 : 365); ++year) left -= is_leap(year) ? 366 : 365;
  for (; left >= days_in(year, month); ++month) left -= days_in(year, month);
  return number_text(year) + "-" + two_digits(month) + "-" + two_digits(static_cast<int>(left) + 1);
}

}  // namespace stringcourse
