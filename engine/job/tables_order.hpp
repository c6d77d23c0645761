#pragma once
// Field tables of the order and of the days: what is assumed of either.
#include <string_view>
#include <tuple>

#include "job/field_table.hpp"
#include "job/job.hpp"

namespace stringcourse {

inline constexpr Bounds kHundredths{.least = 0, .most = 100};
inline constexpr Bounds kArticleText{.text = TextRule::Name, .longest_text = 400};
inline constexpr Bounds kDegrees{.least = -80, .most = 140};
inline constexpr Bounds kWind{.least = 0, .most = 300};
inline constexpr Bounds kMoneyText{.text = TextRule::Name, .longest_text = 40};

template <>
struct Table<KindOrder> {
  static constexpr std::string_view name = "kind_order";
  static constexpr std::string_view description = "How one kind of unit is ordered.";
  static constexpr auto fields = std::tuple{
      field("kind", &KindOrder::kind, Need::Required, "The kind of unit."),
      field(
          "breakage", &KindOrder::breakage, Need::Optional,
          "Units of this kind ordered for breakage, in hundredths of what is laid and sawn; absent: as for all units.",
          {.least = 0, .most = 50}),
      field("pallet", &KindOrder::pallet, Need::Optional,
            "Units on one pallet or cube, where only whole ones are sold; absent: sold one by one.",
            {.least = 1, .most = 1'000}),
  };
};

template <>
struct Table<ArticlePrice> {
  static constexpr std::string_view name = "article_price";
  static constexpr std::string_view description = "What one of an article costs.";
  static constexpr auto fields = std::tuple{
      field("article", &ArticlePrice::article, Need::Required, "The article's id, as the order list has it.",
            kArticleText),
      field("price", &ArticlePrice::price, Need::Required,
            "The price of one, as it is sold: digits with a point before the smallest unit, such as 2.45.", kMoneyText),
  };
};

template <>
struct Table<Brought> {
  static constexpr std::string_view name = "brought";
  static constexpr std::string_view description = "What a delivery brought of one article.";
  static constexpr auto fields = std::tuple{
      field("article", &Brought::article, Need::Required, "The article's id, as the order list has it.", kArticleText),
      field("count", &Brought::count, Need::Required, "How many, as they are sold; broken ones left out.",
            {.least = 0, .most = 1'000'000}),
  };
};

template <>
struct Table<ArticleWeight> {
  static constexpr std::string_view name = "article_weight";
  static constexpr std::string_view description = "What one of an article weighs.";
  static constexpr auto fields = std::tuple{
      field("article", &ArticleWeight::article, Need::Required, "The article's id, as the order list has it.",
            kArticleText),
      field("weight", &ArticleWeight::weight, Need::Required,
            "The weight of one, as it is sold, such as 35 lb or 16 kg.", kMoneyText),
  };
};

template <>
struct Table<Ordering> {
  static constexpr std::string_view name = "ordering";
  static constexpr std::string_view description = "What is assumed of the order, and what things cost.";
  static constexpr auto fields = std::tuple{
      field("kinds", &Ordering::kinds, Need::Optional, "Kinds of units with a breakage or a pallet of their own.",
            {.most_entries = kKindCount}),
      field("mortar", &Ordering::mortar, Need::Optional, "What the mortar is mixed of; absent: premix in bags."),
      field("type", &Ordering::type, Need::Optional, "Type of the mortar, as the drawings ask; absent: S."),
      field("mortar_by", &Ordering::mortar_by, Need::Optional,
            "The figure that mortar is ordered by, where published ones disagree; absent: the whole range is shown."),
      field("mortar_waste", &Ordering::mortar_waste, Need::Optional,
            "Mortar spilt and left over, in hundredths of what the joints hold; absent: 10.", kHundredths),
      field("sand_waste", &Ordering::sand_waste, Need::Optional, "Sand lost in the heap, in hundredths; absent: 10.",
            kHundredths),
      field("grout_as", &Ordering::grout_as, Need::Optional, "Grout in bags or by truck; absent: bags."),
      field("grout_loss", &Ordering::grout_loss, Need::Optional,
            "Grout ordered beyond what goes in, in hundredths; absent: 10.", kHundredths),
      field("wire_waste", &Ordering::wire_waste, Need::Optional,
            "Joint reinforcement cut off and lost, in hundredths; absent: 5.", kHundredths),
      field("lumber_waste", &Ordering::lumber_waste, Need::Optional,
            "Lumber of bucks and plates cut off and lost, in hundredths; absent: 10.", kHundredths),
      field("bolts_spare", &Ordering::bolts_spare, Need::Optional,
            "Anchor bolts beyond those set, in hundredths; absent: 5.", kHundredths),
      field("currency", &Ordering::currency, Need::Optional, "The one currency of all prices: three letters, as USD.",
            {.text = TextRule::Name, .longest_text = 3}),
      field("decimals", &Ordering::decimals, Need::Optional,
            "Decimal places of the currency's smallest unit; absent: 2.", {.least = 0, .most = 4}),
      field("prices", &Ordering::prices, Need::Optional, "Prices of articles.", {.most_entries = 1'000}),
      field("tax", &Ordering::tax, Need::Optional, "Tax on goods, in hundredths, such as 8.25; absent: none.",
            kMoneyText),
      field("delivery", &Ordering::delivery, Need::Optional, "What delivery costs, untaxed; absent: not said.",
            kMoneyText),
      field("brought", &Ordering::brought, Need::Optional,
            "What the yard brought so far, delivery by delivery; of articles that stand here it is forecast what runs "
            "out.",
            {.most_entries = 1'000}),
      field("weights", &Ordering::weights, Need::Optional, "What articles weigh that have no weight on their bag.",
            {.most_entries = 1'000}),
      field("truck", &Ordering::truck, Need::Optional,
            "What the yard's truck carries, such as 8000 lb or 3500 kg; absent: loads are not made up.", kMoneyText),
  };
};

template <>
struct Table<WorkDays> {
  static constexpr std::string_view name = "work_days";
  static constexpr std::string_view description = "How long one piece of work takes, or a wait lasts.";
  static constexpr auto fields = std::tuple{
      field("work", &WorkDays::work, Need::Required, "The work, or the wait; a course's time is its units'."),
      field("half_days", &WorkDays::half_days, Need::Required, "How long, in half days.", {.least = 0, .most = 200}),
  };
};

template <>
struct Table<DayForecast> {
  static constexpr std::string_view name = "day_forecast";
  static constexpr std::string_view description = "The weather that is expected on one day.";
  static constexpr auto fields = std::tuple{
      field("date", &DayForecast::date, Need::Required, "The day, as 2027-05-03.",
            {.text = TextRule::Name, .longest_text = 10}),
      field("coldest", &DayForecast::coldest, Need::Optional,
            "Coldest, in degrees Fahrenheit with a tape in inches, else Celsius.", kDegrees),
      field("warmest", &DayForecast::warmest, Need::Optional, "Warmest, likewise.", kDegrees),
      field("wind", &DayForecast::wind, Need::Optional,
            "Steady wind, in miles an hour with a tape in inches, else kilometres an hour.", kWind),
      field("gusts", &DayForecast::gusts, Need::Optional, "Gusts, likewise.", kWind),
  };
};

template <>
struct Table<Days> {
  static constexpr std::string_view name = "days";
  static constexpr std::string_view description = "Who lays, how fast, on which days.";
  static constexpr auto fields = std::tuple{
      field("crew", &Days::crew, Need::Optional,
            "Who lays: pairs of beginners, or masons with a tender each; absent: beginners."),
      field("pairs", &Days::pairs, Need::Optional, "How many pairs lay at the same time; absent: 1.",
            {.least = 1, .most = 50}),
      field("units_per_hour", &Days::units_per_hour, Need::Optional,
            "Units that each pair lays in an hour; absent: 6 for beginners, 15 for a mason.",
            {.least = 1, .most = 200}),
      field("hours", &Days::hours, Need::Optional, "Hours of a working day; absent: 8.", {.least = 1, .most = 16}),
      field("most_courses", &Days::most_courses, Need::Optional,
            "Courses that a wall may rise in a day; absent: so many as stay under 1.5 m.", {.least = 1, .most = 200}),
      field("mortar_minutes", &Days::mortar_minutes, Need::Optional,
            "Minutes from mixing in which a batch is used up; absent: 150.", {.least = 10, .most = 600}),
      field("work", &Days::work, Need::Optional, "Work and waits that last otherwise than assumed.",
            {.most_entries = 20}),
      field("start", &Days::start, Need::Optional,
            "Date of the first working day, year-month-day as 2027-05-03; absent: days are only numbered.",
            {.text = TextRule::Name, .longest_text = 10}),
      field("log_until", &Days::log_until, Need::Optional,
            "Date up to whose evening the laid log tells of all that was done: the rest is planned from the day after; "
            "absent: the day of the log's newest entry.",
            {.text = TextRule::Name, .longest_text = 10}),
      field("weekdays", &Days::weekdays, Need::Optional, "Days of the week that are worked; none: Monday to Friday.",
            {.most_entries = 7, .order = ListOrder::Distinct}),
      field("days_off", &Days::days_off, Need::Optional, "Dates on which nobody works, as 2027-05-31.",
            {.text = TextRule::Name, .longest_text = 10, .most_entries = 400, .order = ListOrder::Distinct}),
      field("finish_by", &Days::finish_by, Need::Optional,
            "Date by which it is to be done, as 2027-07-02: the chance of that is worked out; needs the first day.",
            {.text = TextRule::Name, .longest_text = 10}),
      field("forecast", &Days::forecast, Need::Optional,
            "The weather expected, day by day: what rules for cold, heat and wind ask then is said first.",
            {.most_entries = 60}),
      field("spread", &Days::spread, Need::Optional,
            "How far one piece of work may take more or less time than planned: a standard deviation in hundredths; "
            "absent: as the laid log tells, else 25.",
            {.least = 0, .most = 33}),
      field("pace_doubt", &Days::pace_doubt, Need::Optional,
            "How far the pace itself may be off for the whole job: a standard deviation in hundredths; absent: as the "
            "laid log tells, else 30.",
            {.least = 0, .most = 33}),
  };
};

}  // namespace stringcourse
