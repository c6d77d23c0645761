// What the forecast brings up of the rules for cold, heat and wind: these first; all of them stand on the weather card.
#include <algorithm>

#include "catalogue/rules.hpp"
#include "sheet/known.hpp"
#include "sheet/list_sheet.hpp"
#include "sheet/registry.hpp"

namespace stringcourse::sheet {
namespace {

const std::vector<WeatherDay>& weather_in(const Context& context) { return context.answer.weather; }

bool is_forecast(const Context& context) { return !weather_in(context).empty(); }

/// Days that bring a rule up, by date.
std::string days_of(const Context& context, std::string_view rule) {
  std::vector<std::string> dates;
  for (const WeatherDay& day : weather_in(context)) {
    if (std::ranges::contains(day.rules, rule)) dates.push_back(date_text(day.date));
  }
  return joined(dates, ", ");
}

Table forecast_table(const Context& context) {
  const words::TopWords& words = context.words.top;
  Table table = new_table(context.page.list.width(), words.title_forecast,
                          {{words.forecast_what, 52}, {words.forecast_known, 28}, {words.forecast_on, 20}}, kSmallText);
  table.add_heading(std::string(words.forecast_days));
  for (const WeatherDay& day : weather_in(context)) {
    const Fact brought_up = weather_sorts_said(day);
    table.add_row(
        {words::fill_in(words.forecast_day, {date_text(day.date), context.told(forecast_said(day, context.tape()))}),
         brought_up.empty() ? std::string(words.forecast_nothing) : context.told(brought_up), ""});
  }
  table.add_heading(std::string(words.forecast_asks));
  for (const Rule& rule : catalogue_rules()) {
    const std::string days = days_of(context, rule.id);
    if (!days.empty())
      table.add_row({words::rule_text(rule, context.reader()), known_text(context.words, rule.source), days});
  }
  return table;
}

std::string forecast_note(const Context& context) { return std::string(context.words.top.forecast_note); }

}  // namespace

constinit const SheetKind kForecastSheet{
    .name = "forecast",
    .purpose = &words::SheetWords::purpose_forecast,
    .caution = {"limited-access-zone"},
    .applies = is_forecast,
    .table = forecast_table,
    .made_note = forecast_note,
    .under = {&kDaysSheet},
};

}  // namespace stringcourse::sheet
