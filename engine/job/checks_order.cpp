// What cannot be meant in what a job says of its order and its days.
#include <cstddef>
#include <optional>
#include <utility>

#include "job/checks.hpp"
#include "job/enum_names.hpp"
#include "measure/date.hpp"
#include "measure/digits.hpp"
#include "measure/mass.hpp"
#include "measure/money.hpp"
#include "measure/notation.hpp"

namespace stringcourse {
namespace {

Refusal misfit(Code code, std::string place, Fact reason, Fact remedy) {
  return {code, std::move(place), std::move(reason), std::move(remedy)};
}

std::string place_of(std::string_view list, std::size_t index, std::string_view field) {
  return std::string(list) + "/" + number_text(index) + std::string(field);
}

Fact money_trouble(NoMoney why, std::string_view text) {
  const FactValue typed = FactValue::typed(text);
  switch (why) {
    case NoMoney::NotANumber: return fact("money-no-number", {typed});
    case NoMoney::DecimalComma: return fact("money-comma", {typed});
    case NoMoney::TooFine: return fact("money-too-fine", {typed});
    case NoMoney::BelowZero: return fact("money-below-zero", {typed});
    case NoMoney::TooMuch: return fact("money-too-much", {typed});
  }
  return {};
}

/// One amount: it can be read, and is of the order's currency or, where that says none, of the first one's.
void check_money(Misfits& misfits, std::string_view text, std::string place, int decimals, std::string& currency) {
  const auto money = read_money(text, decimals);
  if (!money) {
    misfits.push_back(misfit("not-money", std::move(place), money_trouble(money.error(), text),
                             fact("money-write", {money_text(245, decimals)})));
    return;
  }
  if (money->currency.empty()) return;
  if (currency.empty()) currency = money->currency;
  if (money->currency == currency) return;
  misfits.push_back(misfit("currency-mixed", std::move(place), fact("currency-other", {money->currency, currency}),
                           fact("currency-one", {currency})));
}

bool is_currency(std::string_view text) {
  return text.size() == 3 && std::ranges::all_of(text, [](char c) { return 'A' <= c && c <= 'Z'; });
}

template <class Entries, class KeyOf>
void check_twice(Misfits& misfits, const Entries& entries, std::string_view list, std::string_view field,
                 KeyOf&& key_of) {
  for (std::size_t k = 1; k < entries.size(); ++k) {
    for (std::size_t before = 0; before < k; ++before) {
      if (key_of(entries[before]) != key_of(entries[k])) continue;
      misfits.push_back(misfit("name-twice", place_of(list, k, field),
                               fact("twice-in-list", {FactValue::typed(key_of(entries[k]))}), fact("list-once")));
      break;
    }
  }
}

void check_date(Misfits& misfits, std::string_view text, std::string place) {
  if (read_date(text)) return;
  misfits.push_back(
      misfit("not-a-date", std::move(place), fact("date-none", {FactValue::typed(text)}), fact("date-write")));
}

void check_mass(Misfits& misfits, std::string_view text, std::string place) {
  if (read_mass(text)) return;
  misfits.push_back(
      misfit("not-a-weight", std::move(place), fact("weight-none", {FactValue::typed(text)}), fact("weight-write")));
}

/// Days that are there, each once, none colder than it is warm.
void check_forecast(Misfits& misfits, const std::vector<DayForecast>& forecast) {
  for (std::size_t k = 0; k < forecast.size(); ++k) {
    const DayForecast& day = forecast[k];
    check_date(misfits, day.date, place_of("/forecast", k, "/date"));
    if (day.coldest && day.warmest && *day.warmest < *day.coldest) {
      misfits.push_back(misfit("out-of-range", place_of("/forecast", k, "/warmest"),
                               fact("warmest-colder", {*day.warmest, *day.coldest}), fact("exchange-two")));
    }
  }
  check_twice(misfits, forecast, "/forecast", "/date",
              [](const DayForecast& day) -> std::string_view { return day.date; });
}

/// Done by a date: after a first day that is said.
void check_finish(Misfits& misfits, const Days& days) {
  const auto by = read_date(*days.finish_by), start = days.start ? read_date(*days.start) : std::nullopt;
  if (!by) check_date(misfits, *days.finish_by, "/finish_by");
  if (!days.start)
    misfits.push_back(misfit("belongs-together", "/finish_by", fact("finish-needs-start"), fact("finish-give-start")));
  if (by && start && *by < *start)
    misfits.push_back(misfit("out-of-range", "/finish_by", fact("finish-before-start", {*days.finish_by, *days.start}),
                             fact("finish-later")));
}

}  // namespace

Misfits misfits_of(const Ordering& order, Tape) {
  Misfits misfits;
  check_twice(misfits, order.kinds, "/kinds", "/kind", [](const KindOrder& kind) { return enum_name(kind.kind); });
  std::string currency = order.currency.value_or("");
  if (!currency.empty() && !is_currency(currency)) {
    misfits.push_back(misfit("currency-mixed", "/currency", fact("currency-none", {FactValue::typed(currency)}),
                             fact("currency-write")));
    currency.clear();
  }
  const int decimals = order.decimals.value_or(2);
  for (std::size_t k = 0; k < order.prices.size(); ++k)
    check_money(misfits, order.prices[k].price, place_of("/prices", k, "/price"), decimals, currency);
  check_twice(misfits, order.prices, "/prices", "/article",
              [](const ArticlePrice& price) -> std::string_view { return price.article; });
  if (order.tax) {
    if (const auto share = read_hundredths(*order.tax); !share)
      misfits.push_back(misfit("not-hundredths", "/tax", money_trouble(share.error(), *order.tax), fact("tax-write")));
  }
  if (order.delivery) check_money(misfits, *order.delivery, "/delivery", decimals, currency);
  for (std::size_t k = 0; k < order.weights.size(); ++k)
    check_mass(misfits, order.weights[k].weight, place_of("/weights", k, "/weight"));
  check_twice(misfits, order.weights, "/weights", "/article",
              [](const ArticleWeight& weight) -> std::string_view { return weight.article; });
  if (order.truck) check_mass(misfits, *order.truck, "/truck");
  return misfits;
}

Misfits misfits_of(const Days& days, Tape) {
  Misfits misfits;
  check_twice(misfits, days.work, "/work", "/work", [](const WorkDays& work) { return enum_name(work.work); });
  if (days.start) check_date(misfits, *days.start, "/start");
  for (std::size_t k = 0; k < days.days_off.size(); ++k)
    check_date(misfits, days.days_off[k], place_of("/days_off", k, ""));
  check_forecast(misfits, days.forecast);
  if (days.log_until) check_date(misfits, *days.log_until, "/log_until");
  if (days.finish_by) check_finish(misfits, days);
  return misfits;
}

}  // namespace stringcourse
