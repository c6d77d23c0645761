#pragma once
// Dates of the calendar as the user states them; the engine has no clock.
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace stringcourse {

/// A day of the Gregorian calendar, counted from 1970-01-01.
struct Date {
  std::int64_t day = 0;
  [[nodiscard]] constexpr int weekday() const {  // 0: Monday
    return static_cast<int>(((day + 3) % 7 + 7) % 7);
  }
  friend constexpr auto operator<=>(Date, Date) = default;
};

/// "2027-05-03" (ISO 8601), from 1970 to 2199, if the calendar has it.
[[nodiscard]] std::optional<Date> read_date(std::string_view text);
[[nodiscard]] std::string date_text(Date date);

}  // namespace stringcourse
