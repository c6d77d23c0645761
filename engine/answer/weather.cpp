#include "answer/weather.hpp"

#include <algorithm>

#include "answer/answer.hpp"
#include "catalogue/rules.hpp"

namespace stringcourse {
namespace {

constexpr std::int64_t kMetresInMile = 1'609'344;  // thousandths of a metre: a mile is 1609.344 m by definition

/// A forecast figure against a rule's limit, both exact.
class Compared {
 public:
  explicit Compared(Tape tape) : metric_(tape == Tape::Millimetres) {}
  /// Below zero: colder. In ninths of a degree Fahrenheit times five: F = 9 C / 5 + 32.
  [[nodiscard]] std::int64_t warmth(int forecast, Fahrenheit limit) const {
    const std::int64_t here = metric_ ? std::int64_t{forecast} * 9 + 160 : std::int64_t{forecast} * 5;
    return here - std::int64_t{limit.degrees} * 5;
  }
  /// Twice the mean of two.
  [[nodiscard]] std::int64_t mean_warmth(int low, int high, Fahrenheit limit) const {
    return warmth(low, limit) + warmth(high, limit);
  }
  [[nodiscard]] bool is_over(int forecast, MilesPerHour limit) const {
    const std::int64_t here = std::int64_t{forecast} * (metric_ ? 1'000'000 : kMetresInMile);
    return here > std::int64_t{limit.miles} * kMetresInMile;
  }

 private:
  bool metric_;
};

/// Whether the day brings a rule of the card up.
class Looked {
 public:
  Looked(const DayForecast& day, Tape tape) : day_(day), compared_(tape) {}

  [[nodiscard]] bool brings_up(std::string_view id) const {
    if (id == "cold-below-40" || id == "cold-40-to-32" || id == "cold-32-to-25" || id == "cold-25-to-20")
      return is_below(temperature_of(id));
    if (id == "cold-20") return day_.coldest && compared_.warmth(*day_.coldest, temperature_of(id)) <= 0;
    if (id == "cold-ice") return is_below(temperature_of("cold-32-to-25"));  // it freezes
    if (id == "cold-cover") return mean_is_below(temperature_of(id));
    if (id.starts_with("hot-")) return is_hot();
    if (id.starts_with("wind-")) return blows();
    return false;
  }

 private:
  [[nodiscard]] bool is_below(Fahrenheit limit) const {
    return day_.coldest && compared_.warmth(*day_.coldest, limit) < 0;
  }
  /// The day's mean, taken as the middle of its ends; of a day with one end that end.
  [[nodiscard]] bool mean_is_below(Fahrenheit limit) const {
    if (!day_.coldest && !day_.warmest) return false;
    const int low = day_.coldest.value_or(day_.warmest.value_or(0)), high = day_.warmest.value_or(low);
    return compared_.mean_warmth(low, high, limit) < 0;
  }
  [[nodiscard]] bool is_hot() const {
    if (!day_.warmest) return false;
    if (compared_.warmth(*day_.warmest, temperature_of("hot-above", 0)) > 0) return true;
    const bool warm = compared_.warmth(*day_.warmest, temperature_of("hot-above", 1)) > 0;
    return warm && day_.wind && compared_.is_over(*day_.wind, wind_of("hot-above", 2));
  }
  /// Gusts, or a wind that is over the limit without them.
  [[nodiscard]] bool blows() const {
    const MilesPerHour limit = wind_of("wind-leave");
    return (day_.gusts && compared_.is_over(*day_.gusts, limit)) || (day_.wind && compared_.is_over(*day_.wind, limit));
  }

  const DayForecast& day_;
  Compared compared_;
};

}  // namespace

std::vector<WeatherDay> weather_of(const Job& job) {
  std::vector<WeatherDay> days;
  if (!job.days) return days;
  for (const DayForecast& forecast : job.days->forecast) {
    const std::optional<Date> date = read_date(forecast.date);
    if (!date) continue;
    WeatherDay day{.date = *date, .forecast = forecast, .rules = {}};
    const Looked looked(forecast, job.tape);
    for (const Rule& rule : catalogue_rules()) {
      if (looked.brings_up(rule.id)) day.rules.push_back(rule.id);
    }
    days.push_back(std::move(day));
  }
  std::ranges::sort(days, {}, &WeatherDay::date);
  return days;
}

const WeatherDay* weather_on(const Answer& answer, std::optional<Date> date) {
  const auto at = std::ranges::find_if(answer.weather, [&](const WeatherDay& day) { return day.date == date; });
  return at == answer.weather.end() ? nullptr : &*at;
}

Fact forecast_said(const WeatherDay& day, Tape tape) {
  const bool metric = tape == Tape::Millimetres;
  const DayForecast& of = day.forecast;
  std::vector<Fact> parts;
  const auto one = [&](std::string_view us, std::string_view other, std::optional<int> figure) {
    if (figure) parts.push_back(fact(metric ? other : us, {*figure}));
  };
  if (of.coldest && of.warmest) {
    parts.push_back(fact(metric ? "forecast-from-to-c" : "forecast-from-to-f", {*of.coldest, *of.warmest}));
  } else {
    one("forecast-coldest-f", "forecast-coldest-c", of.coldest);
    one("forecast-warmest-f", "forecast-warmest-c", of.warmest);
  }
  one("forecast-wind-mph", "forecast-wind-kmh", of.wind);
  one("forecast-gusts-mph", "forecast-gusts-kmh", of.gusts);
  std::vector<FactValue> values(parts.begin(), parts.end());
  return fact("forecast-figures", {FactValue(FactValue::Kind::Commas, std::move(values))});
}

Fact weather_sorts_said(const WeatherDay& day) {
  std::vector<FactValue> sorts;
  constexpr std::pair<std::string_view, std::string_view> kSorts[] = {
      {"cold-", "weather-cold"}, {"hot-", "weather-heat"}, {"wind-", "weather-wind"}};
  for (const auto& [beginning, name] : kSorts) {
    if (std::ranges::any_of(day.rules, [&](std::string_view id) { return id.starts_with(beginning); }))
      sorts.emplace_back(fact(name));
  }
  if (sorts.empty()) return {};
  return fact("weather-sorts", {FactValue(FactValue::Kind::And, std::move(sorts))});
}

Fact weather_said(const WeatherDay& day, Tape tape) {
  const Fact sorts = weather_sorts_said(day);
  return sorts.empty() ? Fact() : fact("weather-today", {forecast_said(day, tape), sorts});
}

}  // namespace stringcourse
