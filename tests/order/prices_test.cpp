// Money: read exactly, refused with place and remedy all at once, summed exactly.
#include "measure/money.hpp"
#include "order/examples.hpp"

namespace stringcourse::order_test {
namespace {

TEST(MoneyText, IsReadToTheSmallestUnitAndNeverRounded) {
  EXPECT_EQ(read_money("2.45", 2)->units, 245);
  EXPECT_EQ(read_money("2.4", 2)->units, 240);
  EXPECT_EQ(read_money("12", 2)->units, 1'200);
  EXPECT_EQ(read_money("7 JPY", 0)->units, 7);
  EXPECT_EQ(read_money("7 JPY", 0)->currency, "JPY");
  EXPECT_EQ(read_money(".5", 2)->units, 50);
  EXPECT_EQ(read_money("2,45", 2).error(), NoMoney::DecimalComma);
  EXPECT_EQ(read_money("1,200.00", 2).error(), NoMoney::DecimalComma);
  EXPECT_EQ(read_money("-1", 2).error(), NoMoney::BelowZero);
  EXPECT_EQ(read_money("2.455", 2).error(), NoMoney::TooFine);
  EXPECT_EQ(read_money("2.", 2).error(), NoMoney::NotANumber);
  EXPECT_EQ(read_money("1e3", 2).error(), NoMoney::NotANumber);
  EXPECT_EQ(read_money("", 2).error(), NoMoney::NotANumber);
  EXPECT_EQ(read_money("99999999999999999999999999", 2).error(), NoMoney::TooMuch);
}

TEST(MoneyText, ComesBackEqual) {
  std::mt19937_64 dice(3);
  for (int k = 0; k < 20'000; ++k) {
    const int decimals = static_cast<int>(dice() % 5);
    const auto units = static_cast<std::int64_t>(dice() % (k % 2 == 0 ? 1'000 : 1'000'000'000));
    EXPECT_EQ(read_money(money_text(units, decimals), decimals)->units, units);
  }
}

std::string with(const std::string& order) {
  std::stringstream text;
  text << std::ifstream(std::string(STRINGCOURSE_ROOT) + "/examples/glaze-store.json").rdbuf();
  std::string job = text.str();
  return job.insert(job.find('{') + 1, "\"order\": " + order + ",");
}

using Told = std::vector<std::pair<std::string, std::string>>;
Told refused(const std::string& order) {
  const auto job = read_job(with(order));
  Told told;
  if (job) return told;
  for (const Refusal& refusal : job.error().shown) {
    told.emplace_back(refusal.code.text(), refusal.place);
    EXPECT_FALSE(refusal.reason.empty());
    EXPECT_FALSE(refusal.remedy.empty());
  }
  return told;
}

TEST(OrderRefusals, AreAllToldAtOnceWithTheirPlaces) {
  EXPECT_EQ(refused(R"({"kinds": [{"kind": "full", "pallet": 0}, {"kind": "half", "breakage": -5}],
                       "mortar_waste": -1})"),
            (Told{{"out-of-range", "/order/kinds/0/pallet"},
                  {"out-of-range", "/order/kinds/1/breakage"},
                  {"out-of-range", "/order/mortar_waste"}}));
  EXPECT_EQ(refused(R"({"currency": "USD", "tax": "8,25", "delivery": "95 EUR", "prices": [
                       {"article": "a", "price": "2,45"}, {"article": "b", "price": "2.45 EUR"},
                       {"article": "c", "price": "-2"}, {"article": "a", "price": "1"}]})"),
            (Told{{"not-money", "/order/prices/0/price"},
                  {"currency-mixed", "/order/prices/1/price"},
                  {"not-money", "/order/prices/2/price"},
                  {"name-twice", "/order/prices/3/article"},
                  {"not-hundredths", "/order/tax"},
                  {"currency-mixed", "/order/delivery"}}));
  EXPECT_EQ(refused(R"({"prices": [{"article": "a", "price": "1 USD"}, {"article": "b", "price": "1 CAD"}]})"),
            (Told{{"currency-mixed", "/order/prices/1/price"}}));
  EXPECT_EQ(refused(R"({"prices": [{"article": "a", "price": "1 USD"}, {"article": "b", "price": "1"}]})"), Told{});
}

TEST(DayRefusals, DatesThatTheCalendarHasNot) {
  std::string text = with("{}");
  text.insert(text.find('{') + 1, R"("days": {"start": "2027-02-29", "days_off": ["2027-05-31", "31.5.2027"]},)");
  const auto job = read_job(text);
  ASSERT_FALSE(job.has_value());
  ASSERT_EQ(job.error().shown.size(), 2U);
  EXPECT_EQ(job.error().shown[0].place, "/days/start");
  EXPECT_EQ(job.error().shown[1].place, "/days/days_off/1");
}

TEST(PricesOfAnOrder, AreSummedToTheSmallestUnit) {
  std::mt19937 dice(11);
  for (const char* name : kExamples) {
    SCOPED_TRACE(name);
    Job job = example_job(name);
    job.order.reset();
    const Answer bare = solved(job);
    EXPECT_FALSE(bare.order.prices.asked);
    job.order.emplace();
    job.order->grout_as = GroutAs::Truck;
    job.order->tax = "8.25", job.order->delivery = "95.10";
    for (const Article& article : solved(job).order.articles) {
      if (dice() % 3 == 0) continue;
      job.order->prices.push_back({article.id, money_text(static_cast<std::int64_t>(dice() % 50'000), 2)});
    }
    const Answer answer = solved(job);
    std::int64_t least = 0, most = 0, priced = 0;
    for (const Article& article : answer.order.articles) {
      const auto stated = std::ranges::find(job.order->prices, article.id, &ArticlePrice::article);
      if (stated == job.order->prices.end() || !article.told) continue;
      ++priced;
      const std::int64_t price = read_money(stated->price, 2)->units;
      const std::int64_t parts = article.id == "grout/truck" ? (job.tape == Tape::Inches ? 4 : 10)
                                 : article.id == "sand" && job.tape != Tape::Inches ? 10
                                                                                    : 1;
      least += (price * article.least * 2 + parts) / (2 * parts);
      most += (price * article.most * 2 + parts) / (2 * parts);
    }
    EXPECT_EQ(answer.order.prices.goods, (Sum{least, most}));
    EXPECT_EQ(answer.order.prices.priced, priced);
    EXPECT_EQ(answer.order.prices.tax, (Sum{(least * 825 + 5'000) / 10'000, (most * 825 + 5'000) / 10'000}));
    EXPECT_EQ(answer.order.prices.all.most, most + answer.order.prices.tax.most + 9'510);
    Sum points;
    for (const Sum& point : answer.order.prices.by_point) points.least += point.least, points.most += point.most;
    EXPECT_EQ(points, answer.order.prices.goods);
  }
}

TEST(PricesOfAnOrder, OneOfNothingIsAFinding) {
  Job job = example_job("wash-stand");
  job.order.emplace();
  job.order->prices = {{"unit/us-8/full", "1"}, {"gold", "9"}};
  const Answer answer = solved(job);
  const auto finding = std::ranges::find(answer.findings, Code("price-of-nothing"), &Finding::code);
  ASSERT_NE(finding, answer.findings.end());
  EXPECT_TRUE(finding->place == "/order/prices/1/article" || finding->place == "/order/prices/0/article");
}

}  // namespace
}  // namespace stringcourse::order_test
