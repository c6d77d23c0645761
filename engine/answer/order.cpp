#include "answer/order.hpp"

#include <algorithm>

#include "answer/order_parts.hpp"
#include "measure/digits.hpp"
#include "measure/money.hpp"

namespace stringcourse {
namespace ordering {

int hundredths(Order& order, std::string_view place, std::string_view says, const std::optional<int>& stated,
               int otherwise) {
  const int value = stated.value_or(otherwise);
  order.assumed.push_back({place, fact(says, {value}), stated.has_value()});
  return value;
}

std::string in_id(Length length, Tape tape) {
  std::string text = exact_text(length, tape);
  std::erase_if(text, [](char c) { return c == '"' || c == '\''; });
  std::ranges::replace(text, ' ', '-');
  return text;
}

namespace {

/// A price is of one as sold; of a cubic yard or metre where parts of one are sold.
std::int64_t parts_of_price(SoldIn sold) {
  return sold == SoldIn::QuarterCubicYards ? 4 : sold == SoldIn::TenthCubicMetres ? 10 : 1;
}

void add(Sum& sum, const Sum& other) { sum.least += other.least, sum.most += other.most; }

Sum cost_of(const Article& article) {
  const std::int64_t parts = parts_of_price(article.sold);
  return {share_of(*article.price, article.least, parts), share_of(*article.price, article.most, parts)};
}

void put_prices(Order& order, const Ordering& stated) {
  for (std::size_t k = 0; k < stated.prices.size(); ++k) {
    const auto article = std::ranges::find(order.articles, stated.prices[k].article, &Article::id);
    const auto money = read_money(stated.prices[k].price, order.prices.decimals);
    if (article == order.articles.end()) order.unknown.push_back(k);
    if (!money) continue;  // refused when the job was read
    if (order.prices.currency.empty()) order.prices.currency = money->currency;
    if (article == order.articles.end()) continue;
    article->price = money->units;
    if (article->told) article->cost = cost_of(*article);
  }
}

}  // namespace

void add_prices(Order& order, const Answer& answer) {
  const Ordering& stated = stated_in(answer);
  Prices& prices = order.prices;
  prices.decimals = stated.decimals.value_or(2);
  prices.currency = stated.currency.value_or("");
  prices.asked = !stated.prices.empty();
  prices.by_point.resize(6);
  put_prices(order, stated);
  for (const Article& article : order.articles) {
    if (!article.told) continue;
    ++(article.price ? prices.priced : prices.unpriced);
    if (!article.cost) continue;
    add(prices.goods, *article.cost);
    add(prices.by_point[static_cast<std::size_t>(article.wanted) - 1], *article.cost);
  }
  constexpr std::int64_t kWhole = 1'000'000;  // ten-thousandths of hundredths
  const std::int64_t tax = stated.tax ? read_hundredths(*stated.tax).value_or(0) : 0;
  prices.tax = {share_of(prices.goods.least, tax, kWhole), share_of(prices.goods.most, tax, kWhole)};
  if (stated.delivery) {
    const auto money = read_money(*stated.delivery, prices.decimals);
    if (money) prices.delivery = {money->units, money->units};
  }
  for (const Sum* part : {&prices.goods, &prices.tax, &prices.delivery}) add(prices.all, *part);
}

}  // namespace ordering

Order order_of(const Answer& answer) {
  Order order;
  std::vector<supply::BedRead> read;
  if (answer.found.levels && answer.found.levels->bed) {
    for (const ground::UnitBed& bed : answer.found.levels->bed->units)
      read.push_back({bed.wall, bed.from, bed.to, bed.thinnest, bed.thickest});
  }
  order.mortar = supply::mortar_joints(answer.building, answer.layout, read);
  ordering::add_units(order, answer);
  ordering::add_mortar(order, answer);
  ordering::add_grout(order, answer);
  ordering::add_steel(order, answer);
  ordering::add_top_and_openings(order, answer);
  ordering::add_tools(order, answer);
  ordering::add_prices(order, answer);
  ordering::add_brought(order, answer);
  return order;
}

namespace {

/// "2 1/4"
std::string quarters_text(std::int64_t quarters) {
  constexpr std::string_view kParts[] = {"", "1/4", "1/2", "3/4"};
  const std::string_view part = kParts[quarters % 4];
  if (part.empty()) return number_text(quarters / 4);
  return quarters < 4 ? std::string(part) : number_text(quarters / 4) + " " + std::string(part);
}

FactValue count_of(SoldIn sold, std::int64_t count) {
  if (sold == SoldIn::QuarterCubicYards) return quarters_text(count);
  if (sold == SoldIn::TenthCubicMetres) return number_text(count / 10) + "." + number_text(count % 10);
  return count;
}

struct Said {
  std::string_view one, range;
};
Said said_in(SoldIn sold) {
  switch (sold) {
    case SoldIn::Each: return {"amount-each", "amount-each-range"};
    case SoldIn::Bags: return {"amount-bags", "amount-bags-range"};
    case SoldIn::Lengths: return {"amount-lengths", "amount-lengths-range"};
    case SoldIn::CubicFeet: return {"amount-cubic-feet", "amount-cubic-feet-range"};
    case SoldIn::TenthCubicMetres: return {"amount-cubic-metres", "amount-cubic-metres-range"};
    case SoldIn::QuarterCubicYards: return {"amount-cubic-yards", "amount-cubic-yards-range"};
    case SoldIn::Gallons: return {"amount-gallons", "amount-gallons-range"};
    case SoldIn::Litres: return {"amount-litres", "amount-litres-range"};
    case SoldIn::Feet: return {"amount-feet", "amount-feet-range"};
    case SoldIn::Metres: return {"amount-metres", "amount-metres-range"};
  }
  return {"amount-each", "amount-each-range"};
}

}  // namespace

Fact amount_said(SoldIn sold, std::int64_t least, std::int64_t most) {
  const Said says = said_in(sold);
  if (least == most) return fact(says.one, {count_of(sold, least)});
  return fact(says.range, {count_of(sold, least), count_of(sold, most)});
}

Fact amount_said(const Article& article) {
  if (!article.told) return fact("amount-not-told");
  if (article.on_pallet)
    return fact("amount-pallets", {article.most / *article.on_pallet, *article.on_pallet, article.most});
  return amount_said(article.sold, article.least, article.most);
}

std::optional<Sum> dearer_by(const Order& now, const Order& then) {
  // Clean water is had on the site: nobody prices it, and it keeps no difference from being told.
  const auto is_priced = [](const Article& article) {
    return article.id == "water" || (article.told && article.cost.has_value());
  };
  const auto differs_unpriced = [&](const Order& one, const Order& other) {
    return std::ranges::any_of(one.articles, [&](const Article& article) {
      const auto there = std::ranges::find(other.articles, article.id, &Article::id);
      if (there == other.articles.end()) return !is_priced(article);
      const bool alike = article.least == there->least && article.most == there->most && article.told == there->told;
      return !alike && !(is_priced(article) && is_priced(*there));
    });
  };
  if (differs_unpriced(now, then) || differs_unpriced(then, now)) return std::nullopt;
  const std::int64_t least = then.prices.all.least - now.prices.all.least;
  const std::int64_t most = then.prices.all.most - now.prices.all.most;
  return Sum{std::min(least, most), std::max(least, most)};
}

Fact dearer_said(const Prices& prices, const Sum& more) {
  if (more == Sum{}) return fact("order-as-dear");
  if (more.least >= 0) return fact("order-dearer", {sum_said(prices, more)});
  const Sum less{-more.most, -more.least};
  if (less.least >= 0) return fact("order-cheaper", {sum_said(prices, less)});
  return fact("order-between", {sum_said(prices, {less.most, less.most}), sum_said(prices, {more.most, more.most})});
}

Fact sum_said(const Prices& prices, const Sum& sum) {
  const std::string behind = prices.currency.empty() ? "" : " " + prices.currency;
  const std::string most = money_text(sum.most, prices.decimals) + behind;
  if (sum.least == sum.most) return fact("amount-each", {most});
  return fact("amount-each-range", {money_text(sum.least, prices.decimals), most});
}

}  // namespace stringcourse
