#include "document/order_csv.hpp"

#include <initializer_list>
#include <string_view>
#include <vector>

#include "document/choices.hpp"
#include "measure/digits.hpp"
#include "measure/money.hpp"
#include "words/sheet_words.hpp"

namespace stringcourse {
namespace {

bool looks_like_formula(std::string_view text) {
  return !text.empty() && std::string_view("=+-@\t\r").contains(text.front());
}

std::string cell(std::string text) {
  if (looks_like_formula(text)) text.insert(0, "'");
  if (!std::string_view(text).contains(',') && text.find_first_of("\"\r\n") == std::string::npos) return text;
  std::string quoted = "\"";
  for (const char c : text) {
    if (c == '"') quoted += '"';
    quoted += c;
  }
  return quoted + "\"";
}

void add_line(std::string& text, const std::vector<std::string>& cells) {
  for (std::size_t k = 0; k < cells.size(); ++k) {
    if (k > 0) text += ',';
    text += cell(cells[k]);
  }
  text += "\r\n";
}

std::string count(const Article& article, std::int64_t number) { return article.told ? number_text(number) : ""; }

}  // namespace

std::string order_csv(const Answer& answer, const words::Language& language) {
  const words::Reader reader{answer.building.tape, language};
  const int decimals = answer.order.prices.decimals;
  const auto money = [&](std::optional<std::int64_t> units) { return units ? money_text(*units, decimals) : ""; };
  std::string text;
  std::vector<std::string> head;
  for (const std::string_view name : language.sheets(true).order.csv) head.emplace_back(name);
  add_line(text, head);
  for (const Article& article : answer.order.articles) {
    add_line(text,
             {article.id, words::told(article.name, reader), words::told(amount_said(article), reader),
              count(article, article.least), count(article, article.most), std::string(enum_name(article.sold)),
              count(article, article.net), count(article, article.spare), count(article, article.rounding),
              article.on_pallet ? number_text(*article.on_pallet) : "", std::string(hold_point_name(article.wanted)),
              std::string(article.must_not_run_short ? language.sheets(true).order.csv_yes : ""),
              words::told(article.instead, reader), money(article.price),
              money(article.cost ? std::optional(article.cost->least) : std::nullopt),
              money(article.cost ? std::optional(article.cost->most) : std::nullopt),
              article.price ? answer.order.prices.currency : "", words::told(article.note, reader)});
  }
  return text;
}

}  // namespace stringcourse
