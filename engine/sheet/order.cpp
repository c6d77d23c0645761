// The order list as a yard reads it: what, how much, what of it is spare; then how mortar, water and grout are
// reckoned, what is assumed, and money where the job has prices.
#include <algorithm>
#include <utility>

#include "answer/order_groups.hpp"
#include "measure/digits.hpp"
#include "measure/money.hpp"
#include "sheet/list_sheet.hpp"
#include "sheet/registry.hpp"

namespace stringcourse::sheet {
namespace {

std::string made_of(const Context& context, const Article& article) {
  const words::OrderWords& words = context.words.order;
  if (!article.told || !article.figures.empty()) return {};
  const std::string net = number_text(article.net), spare = number_text(article.spare);
  if (article.rounding > 0) return words::fill_in(words.with_pallets, {net, spare, number_text(article.rounding)});
  if (article.spare > 0) return words::fill_in(words.with_spare, {net, spare});
  return words::fill_in(words.net_alone, {net});
}

bool has_chosen(const Article& article) { return std::ranges::any_of(article.figures, &Figure::chosen); }

std::string beside(const Context& context, const Article& article) {
  const words::OrderWords& words = context.words.order;
  std::vector<std::string> parts;
  if (article.must_not_run_short)
    parts.push_back(article.instead.empty() ? std::string(words.must_not_alone)
                                            : words::fill_in(words.must_not, {context.told(article.instead)}));
  if (has_chosen(article)) parts.emplace_back(words.reckoned_chosen);
  else if (article.figures.size() > 1) parts.emplace_back(words.reckoned);
  if (!article.note.empty()) parts.push_back(context.told(article.note));
  return joined(parts, " ");
}

void add_article(Table& table, const Context& context, const Article& article) {
  const Prices& prices = context.answer.order.prices;
  std::vector<std::string> cells{"", context.told(called_under_heading(article)), context.told(amount_said(article)),
                                 made_of(context, article)};
  if (prices.asked) {
    cells.push_back(article.price ? money_text(*article.price, prices.decimals) : "");
    cells.push_back(article.cost ? context.told(sum_said(prices, *article.cost)) : "");
  }
  cells.push_back(beside(context, article));
  table.add_row(cells);
}

/// In small letters: a yard wants one sheet.
Table order_table(const Context& context) {
  constexpr Micrometres height = kSmallText;
  const words::OrderWords& words = context.words.order;
  const Micrometres width = context.page.list.width();
  Table table =
      context.answer.order.prices.asked
          ? new_table(width, words.title,
                      {{"", 3},
                       {words.article, 28},
                       {words.to_order, 14},
                       {words.made_of, 15},
                       {words.price, 8},
                       {words.cost, 13},
                       {words.beside, 19}},
                      height)
          : new_table(width, words.title,
                      {{"", 3}, {words.article, 31}, {words.to_order, 11}, {words.made_of, 15}, {words.beside, 40}},
                      height);
  table.pencil_boxes = true;
  Fact heading;
  for (const Article& article : context.answer.order.articles) {
    if (Fact over = heading_over(article); over != heading) {
      table.add_heading(context.told(over));
      heading = std::move(over);
    }
    add_article(table, context, article);
  }
  return table;
}

std::string order_note(const Context& context) { return std::string(context.words.order.note); }

void add_figures(Table& table, const Context& context) {
  table.add_heading(std::string(context.words.order.figure));
  for (const Article& article : context.answer.order.articles) {
    for (const Figure& figure : article.figures) {
      const std::string name = &figure == &article.figures.front() ? context.told(article.name) : "";
      const std::string mark = figure.chosen ? "> " : "";
      table.add_row({name, mark + context.told(amount_said(article.sold, figure.least, figure.most)),
                     words::cited(figure.rule, context.reader())});
    }
  }
}

void add_assumed(Table& table, const Context& context) {
  const words::OrderWords& words = context.words.order;
  table.add_heading(std::string(words.assumed));
  for (const Assumed& assumed : context.answer.order.assumed)
    table.add_row({context.told(assumed.says), "", std::string(assumed.stated ? words.stated : words.unstated)});
}

void add_money(Table& table, const Context& context) {
  const words::OrderWords& words = context.words.order;
  const Prices& prices = context.answer.order.prices;
  const auto sum = [&](const Sum& of) { return context.told(sum_said(prices, of)); };
  table.add_heading(std::string(words.sums));
  table.add_row({std::string(words.goods), sum(prices.goods), ""});
  for (std::size_t k = 0; k < prices.by_point.size(); ++k) {
    if (prices.by_point[k] == Sum()) continue;
    table.add_row(
        {words::fill_in(words.goods_for, {std::string(context.words.hold_points[k])}), sum(prices.by_point[k]), ""});
  }
  table.add_row({std::string(words.tax), sum(prices.tax), ""});
  table.add_row({std::string(words.delivery), sum(prices.delivery), ""});
  table.add_row({std::string(words.all), sum(prices.all), ""});
}

Table reckoning_table(const Context& context) {
  const Prices& prices = context.answer.order.prices;
  const words::OrderWords& words = context.words.order;
  Table table = new_table(context.page.list.width(), words.title_reckoning,
                          {{words.article, 36}, {words.amount, 18}, {words.because, 46}}, kSmallText);
  if (prices.asked) add_money(table, context);
  add_figures(table, context);
  if (context.answer.job.order) add_assumed(table, context);
  return table;
}

std::string reckoning_note(const Context& context) {
  const Prices& prices = context.answer.order.prices;
  if (prices.unpriced == 0) return {};
  return words::fill_in(context.words.order.unpriced,
                        {number_text(prices.unpriced), number_text(prices.unpriced + prices.priced)});
}

}  // namespace

constinit const SheetKind kOrderListSheet{
    .name = "order",
    .purpose = &words::SheetWords::purpose_order,
    .caution = {"lifting"},
    .table = order_table,
    .made_note = order_note,
};

constinit const SheetKind kReckoningSheet{
    .name = "order-reckoned",
    .purpose = &words::SheetWords::purpose_reckoned,
    .caution = {"engineer"},
    .table = reckoning_table,
    .made_note = reckoning_note,
    .under = {&kOrderListSheet},
};

}  // namespace stringcourse::sheet
