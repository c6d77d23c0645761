#pragma once
// What the forecast brings up of the rules for cold, heat and wind. It warns: where it brings up nothing, that permits
// nothing, and every rule stands as before.
#include <optional>
#include <string_view>
#include <vector>

#include "job/ordering.hpp"
#include "measure/date.hpp"
#include "measure/fact.hpp"
#include "measure/notation.hpp"

namespace stringcourse {

struct Answer;
struct Job;

/// One day of the forecast.
struct WeatherDay {
  Date date;
  DayForecast forecast;                 // as the job has it
  std::vector<std::string_view> rules;  // that it brings up, by id, in the order of the card
};

/// By date. A stage of cold counts with all milder ones, as each says "that, and". Limits are compared exactly: a
/// forecast in degrees Celsius and kilometres an hour (metric tapes) as it stands, not rounded to the rule's units.
[[nodiscard]] std::vector<WeatherDay> weather_of(const Job& job);

/// Of that day; null where nobody forecast it, or the day has no date.
[[nodiscard]] const WeatherDay* weather_on(const Answer& answer, std::optional<Date> date);
/// "24 to 38 °F, wind 12 mph, gusts 25 mph".
[[nodiscard]] Fact forecast_said(const WeatherDay& day, Tape tape);
/// "cold and wind"; empty: it brings up nothing.
[[nodiscard]] Fact weather_sorts_said(const WeatherDay& day);
/// "Forecast 24 to 38 °F: see the weather card for cold and wind"; empty: the forecast brings up nothing.
[[nodiscard]] Fact weather_said(const WeatherDay& day, Tape tape);

}  // namespace stringcourse
