// What an offer costs or saves in money: the difference of two orders, each summed by hand.
#include "edits/edit.hpp"
#include "measure/money.hpp"
#include "order/examples.hpp"

namespace stringcourse::order_test {
namespace {

Job taken(const Job& job, const Answer& answer, const Offer& offer) {
  return *edited(job, answer.building, TakeOffer{offer.what, offer.place, offer.change, offer.shift});
}

/// Every article of the job and of the jobs that its offers make priced, in cents that tell them apart.
Job priced(Job job) {
  job.order.emplace();
  job.order->currency = "USD", job.order->tax = "8.25", job.order->delivery = "95.10";
  job.order->mortar_by = MortarBy::Joints;
  const Answer bare = *solve(job, {.offers = true});
  std::set<std::string> articles;
  const auto add = [&](const Order& order) {
    for (const Article& article : order.articles) articles.insert(article.id);
  };
  add(bare.order);
  for (const Offer& offer : bare.offers) add(solved(taken(job, bare, offer)).order);
  std::int64_t cents = 117;
  for (const std::string& article : articles) job.order->prices.push_back({article, money_text(cents += 41, 2)});
  return job;
}

/// Goods, tax and delivery, in cents: from amounts and prices alone.
Sum by_hand(const Order& order, const Job& job) {
  Sum goods;
  for (const Article& article : order.articles) {
    const auto stated = std::ranges::find(job.order->prices, article.id, &ArticlePrice::article);
    if (stated == job.order->prices.end() || !article.told) continue;
    const std::int64_t price = read_money(stated->price, 2)->units;
    goods.least += price * article.least, goods.most += price * article.most;
  }
  const auto all = [](std::int64_t cents) { return cents + (cents * 825 + 5'000) / 10'000 + 9'510; };
  return {all(goods.least), all(goods.most)};
}

std::size_t check_offers(const Job& job) {
  const Answer answer = *solve(job, {.offers = true});
  const Sum now = by_hand(answer.order, job);
  std::size_t with_money = 0;
  for (const Offer& offer : answer.offers) {
    if (!offer.money) continue;
    ++with_money;
    const Sum then = by_hand(solved(taken(job, answer, offer)).order, job);
    const std::int64_t least = then.least - now.least, most = then.most - now.most;
    EXPECT_EQ(*offer.money, (Sum{std::min(least, most), std::max(least, most)})) << offer.name;
  }
  return with_money;
}

TEST(MoneyOfAnOffer, IsTheDifferenceOfTheOrdersItMakes) {
  std::size_t with_money = 0;
  with_money += check_offers(priced(example_job("hillside-shed")));
  for (const std::size_t opening : {0, 1, 2}) {  // each 3 in off where it stands well
    Job job = example_job("kiln-house");
    job.openings[opening].place.at.length += Length::inches(3);
    with_money += check_offers(priced(job));
  }
  EXPECT_GE(with_money, 5U);
}

TEST(MoneyOfAnOffer, IsNotToldWhereAPriceIsMissing) {
  Job job = priced(example_job("hillside-shed"));
  const auto money_of = [](const Answer& answer) {
    return std::ranges::count_if(answer.offers, [](const Offer& offer) { return offer.money.has_value(); });
  };
  ASSERT_GT(money_of(*solve(job, {.offers = true})), 0);
  std::erase_if(job.order->prices, [](const ArticlePrice& price) { return price.article.starts_with("unit/"); });
  const Answer answer = *solve(job, {.offers = true});
  for (const Offer& offer : answer.offers) {
    const Answer then = solved(taken(job, answer, offer));
    const bool other_units = std::ranges::any_of(then.order.articles, [&](const Article& article) {
      const Article* before = article_of(answer, article.id);
      return article.id.starts_with("unit/") && (before == nullptr || before->most != article.most);
    });
    if (other_units) EXPECT_FALSE(offer.money.has_value()) << offer.name;
  }
  job.order->prices.clear();
  EXPECT_EQ(money_of(*solve(job, {.offers = true})), 0);
}

TEST(MoneyOfAnOffer, IsSaidInWords) {
  Prices prices;
  prices.currency = "USD";
  EXPECT_EQ(dearer_said(prices, {}).says, "order-as-dear");
  EXPECT_EQ(dearer_said(prices, {5, 7}).says, "order-dearer");
  EXPECT_EQ(dearer_said(prices, {-7, -5}), fact("order-cheaper", {sum_said(prices, {5, 7})}));
  EXPECT_EQ(dearer_said(prices, {-7, 5}), fact("order-between", {sum_said(prices, {7, 7}), sum_said(prices, {5, 5})}));
}

}  // namespace
}  // namespace stringcourse::order_test
