// What a forecast brings up: at each limit of the reference's cold and hot stages (check-values.md, weather), exactly.
#include "order/examples.hpp"

namespace stringcourse::order_test {
namespace {

Job with_forecast(const std::string& name, std::vector<DayForecast> forecast) {
  Job job = example_job(name);
  job.days.emplace();
  job.days->start = "2027-05-03";
  job.days->forecast = std::move(forecast);
  return job;
}

using Degrees = std::optional<int>;
DayForecast weather(Degrees coldest, Degrees warmest, Degrees wind, Degrees gusts) {
  return {"2027-05-03", coldest, warmest, wind, gusts};
}

std::vector<std::string_view> brought_up(DayForecast day, const char* name = "kiln-house") {
  return weather_of(with_forecast(name, {day})).front().rules;
}

using Rules = std::vector<std::string_view>;
const Rules kCool{"cold-below-40", "cold-40-to-32"}, kFrost{"cold-below-40", "cold-40-to-32", "cold-32-to-25"};

DayForecast cold(int degrees) { return weather(degrees, 60, {}, {}); }

TEST(WeatherOfADay, StagesOfColdBeginBelowTheirLimitsAndAddUp) {
  EXPECT_EQ(brought_up(cold(40)), Rules{});
  EXPECT_EQ(brought_up(cold(39)), kCool);
  EXPECT_EQ(brought_up(cold(32)), kCool);
  for (const auto& [degrees, more] : {std::pair(31, 0U), std::pair(25, 0U), std::pair(24, 1U), std::pair(21, 1U)}) {
    const Rules rules = brought_up(cold(degrees));
    EXPECT_TRUE(std::ranges::starts_with(rules, kFrost)) << degrees;
    EXPECT_EQ(std::ranges::count(rules, "cold-25-to-20"), more) << degrees;
    EXPECT_EQ(std::ranges::count(rules, "cold-20"), 0) << degrees;
    EXPECT_EQ(std::ranges::count(rules, "cold-ice"), 1) << degrees;
  }
  EXPECT_EQ(std::ranges::count(brought_up(cold(20)), "cold-20"), 1);
}

TEST(WeatherOfADay, CoverGoesByTheMeanOfTheDay) {
  const auto covers = [](int low, int high) {
    return std::ranges::contains(brought_up(weather(low, high, {}, {})), "cold-cover");
  };
  EXPECT_FALSE(covers(20, 60));
  EXPECT_TRUE(covers(20, 59));
  EXPECT_TRUE(covers(39, 39));
}

TEST(WeatherOfADay, HeatAndWind) {
  const auto hot = [](int warmest, int wind) {
    return std::ranges::contains(brought_up(weather({}, warmest, wind, {})), "hot-cure");
  };
  EXPECT_TRUE(hot(101, 0));
  EXPECT_FALSE(hot(100, 8));
  EXPECT_TRUE(hot(100, 9));
  EXPECT_TRUE(hot(91, 9));
  EXPECT_FALSE(hot(90, 9));
  EXPECT_FALSE(hot(91, 8));
  const Rules leave{"wind-leave", "wind-first-day"};
  EXPECT_EQ(brought_up(weather({}, {}, {}, 20)), Rules{});
  EXPECT_EQ(brought_up(weather({}, {}, {}, 21)), leave);
  EXPECT_EQ(brought_up(weather({}, {}, 21, 0)), leave);
  EXPECT_EQ(brought_up(weather({}, {}, {}, {})), Rules{});
}

/// 40 F is 4.44 C: 4 is below, 5 is not. 20 mph is 32.19 km/h; 8 mph 12.87; 90 F 32.2 C.
TEST(WeatherOfADay, MetricForecastsAreComparedExactly) {
  const auto metric = [](DayForecast day) { return brought_up(std::move(day), "clay-store"); };
  EXPECT_EQ(metric(weather(5, 20, {}, {})), Rules{});
  EXPECT_EQ(metric(weather(4, 20, {}, {})), kCool);
  EXPECT_EQ(metric(weather(0, 20, {}, {})), kCool);  // 32 F
  EXPECT_EQ(metric(weather({}, {}, {}, 32)), Rules{});
  EXPECT_FALSE(metric(weather({}, {}, {}, 33)).empty());
  EXPECT_EQ(metric(weather({}, 32, 13, {})), Rules{});
  EXPECT_FALSE(metric(weather({}, 33, 13, {})).empty());
  EXPECT_EQ(metric(weather({}, 33, 12, {})), Rules{});
  EXPECT_FALSE(metric(weather(-7, -2, {}, {})).empty());
}

TEST(WeatherOfADay, IsSortedByDateAndFoundByIt) {
  const Job job = with_forecast("kiln-house", {{"2027-05-05", 30, 50, {}, {}}, {"2027-05-04", 50, 60, {}, {}}});
  const Answer answer = solved(job);
  ASSERT_EQ(answer.weather.size(), 2U);
  EXPECT_EQ(date_text(answer.weather[0].date), "2027-05-04");
  EXPECT_EQ(weather_on(answer, read_date("2027-05-05")), &answer.weather[1]);
  EXPECT_EQ(weather_on(answer, read_date("2027-05-06")), nullptr);
  EXPECT_EQ(weather_on(answer, std::nullopt), nullptr);
  EXPECT_TRUE(weather_said(answer.weather[0], Tape::Inches).empty());
}

TEST(WeatherRefusals, DaysTwiceAndColdestOverWarmest) {
  std::stringstream file;
  file << std::ifstream(std::string(STRINGCOURSE_ROOT) + "/examples/kiln-house.json").rdbuf();
  std::string text = file.str();
  text.insert(text.find('{') + 1, R"("days": {"forecast": [{"date": "2027-05-04", "coldest": 50, "warmest": 40},
      {"date": "2027-05-04"}, {"date": "soon"}, {"date": "2027-05-06", "gusts": -1}]},)");
  const auto job = read_job(text);
  ASSERT_FALSE(job.has_value());
  std::set<std::string> places;
  for (const Refusal& refusal : job.error().shown) places.insert(refusal.place);
  EXPECT_TRUE(places.contains("/days/forecast/3/gusts"));
  text.erase(text.find(", {\"date\": \"2027-05-06\""),
             std::string(", {\"date\": \"2027-05-06\", \"gusts\": -1}").size());
  const auto again = read_job(text);
  ASSERT_FALSE(again.has_value());
  places.clear();
  for (const Refusal& refusal : again.error().shown) places.insert(refusal.place);
  EXPECT_EQ(places,
            (std::set<std::string>{"/days/forecast/0/warmest", "/days/forecast/1/date", "/days/forecast/2/date"}));
}

}  // namespace
}  // namespace stringcourse::order_test
