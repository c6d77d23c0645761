// Cold, heat and wind: what rules say, with source and how each is known.
#include <initializer_list>

#include "catalogue/rules.hpp"
#include "sheet/known.hpp"
#include "sheet/list_sheet.hpp"
#include "sheet/registry.hpp"

namespace stringcourse::sheet {
namespace {

void add_rules(Table& table, const Context& context, std::string_view heading,
               std::initializer_list<std::string_view> beginnings) {
  table.add_heading(std::string(heading));
  for (const Rule& rule : catalogue_rules()) {
    for (const std::string_view beginning : beginnings) {
      if (!rule.id.starts_with(beginning)) continue;
      table.add_row({words::rule_text(rule, context.reader()), known_text(context.words, rule.source)});
    }
  }
}

Table weather_table(const Context& context) {
  const words::TopWords& words = context.words.top;
  Table table = new_table(context.page.list.width(), words.title_weather, {{"", 64}, {"", 36}}, kSmallText);
  add_rules(table, context, words.cold, {"cold-"});
  add_rules(table, context, words.hot, {"hot-"});
  add_rules(table, context, words.wind, {"wind-", "limited-access-zone", "brace-over-8-ft"});
  return table;
}

std::string weather_note(const Context& context) { return std::string(context.words.top.weather_note); }

}  // namespace

constinit const SheetKind kWeatherSheet{
    .name = "weather",
    .purpose = &words::SheetWords::purpose_weather,
    .on_request = &Wanted::standards,
    .caution = {"limited-access-zone"},
    .table = weather_table,
    .made_note = weather_note,
    .under = {&kStandardsSheet},
};

}  // namespace stringcourse::sheet
