#pragma once
// What is ordered and how long it takes: the job's assumptions in one place. Absent ones have defaults, which are shown
// as assumed. Amounts of money and hundredths are texts as people write them; checks.hpp reads them exactly.
#include <optional>
#include <string>
#include <vector>

#include "catalogue/series.hpp"
#include "measure/length.hpp"

namespace stringcourse {

enum class MortarOf { Premix, MasonryCement, CementLime };           // what the mortar is mixed of
enum class MortarType { M, S, N, O };                                // by volume, ASTM C270
enum class MortarBy { Joints, LitresEach, CubicFeet, BlocksToBag };  // which figure is ordered by (rules "mortar-...")
enum class GroutAs { Bags, Truck };

/// One kind of unit as the yard sells it.
struct KindOrder {
  UnitKind kind = UnitKind::Full;
  std::optional<int> breakage;  // hundredths; absent: the job's
  std::optional<int> pallet;    // units on a whole one, when only whole ones are sold; absent: sold singly
  friend bool operator==(const KindOrder&, const KindOrder&) = default;
};

/// What one of an article costs.
struct ArticlePrice {
  std::string article;  // its id in the order list
  std::string price;    // "2.45" or "2.45 USD": per package that is sold
  friend bool operator==(const ArticlePrice&, const ArticlePrice&) = default;
};

/// What a delivery brought of one article.
struct Brought {
  std::string article;
  int count = 0;  // as sold
  friend bool operator==(const Brought&, const Brought&) = default;
};

/// What one of an article weighs.
struct ArticleWeight {
  std::string article;
  std::string weight;  // "35 lb"
  friend bool operator==(const ArticleWeight&, const ArticleWeight&) = default;
};

struct Ordering {
  std::vector<KindOrder> kinds;
  std::optional<MortarOf> mortar;       // absent: premix
  std::optional<MortarType> type;       // absent: S
  std::optional<MortarBy> mortar_by;    // absent: not chosen, the whole range stands
  std::optional<int> mortar_waste;      // hundredths of what the joints hold; absent: 10
  std::optional<int> sand_waste;        // absent: 10
  std::optional<GroutAs> grout_as;      // absent: bags
  std::optional<int> grout_loss;        // absent: 10
  std::optional<int> wire_waste;        // absent: 5
  std::optional<int> lumber_waste;      // bucks and plates; absent: 10
  std::optional<int> bolts_spare;       // absent: 5
  std::optional<std::string> currency;  // "USD"
  std::optional<int> decimals;          // of its smallest unit; absent: 2
  std::vector<ArticlePrice> prices;
  std::optional<std::string> tax;       // hundredths of goods: "8.25"
  std::optional<std::string> delivery;  // money, not taxed
  std::vector<Brought> brought;         // deliveries so far; an article may come several times
  std::vector<ArticleWeight> weights;
  std::optional<std::string> truck;  // what it carries: "8000 lb"; absent: loads are not made up
  friend bool operator==(const Ordering&, const Ordering&) = default;
};

enum class Crew { Beginners, Mason };
enum class Weekday { Monday, Tuesday, Wednesday, Thursday, Friday, Saturday, Sunday };
/// What is done. How long a course takes the units and the pace say; of the others see answer/programme.hpp.
enum class WorkKind {
  Boards,       // boards and lines for the footing
  Footing,      // dug, formed, its bars and dowels set, poured
  FootingCure,  // wait
  Lines,        // the first course's lines struck, laid dry
  Leads,        // one corner built up over the first course
  Course,       // one course of one wall
  Lintels,      // form and shores under one
  MasonryCure,  // wait before a pour
  GroutLift,    // one lift
  GroutCure,    // wait before the next pour's courses
  Bolts,        // set as the top is grouted
};

struct WorkDays {
  WorkKind work = WorkKind::Boards;
  int half_days = 2;
  friend bool operator==(const WorkDays&, const WorkDays&) = default;
};

/// What weather is expected on one day; in degrees Fahrenheit and miles an hour with a tape in inches, else in degrees
/// Celsius and kilometres an hour.
struct DayForecast {
  std::string date;
  std::optional<int> coldest, warmest;  // degrees
  std::optional<int> wind, gusts;
  friend bool operator==(const DayForecast&, const DayForecast&) = default;
};

struct Days {
  std::optional<Crew> crew;              // absent: beginners
  std::optional<int> pairs;              // who lay at the same time; absent: 1
  std::optional<int> units_per_hour;     // of each; absent: by crew
  std::optional<int> hours;              // a working day; absent: 8
  std::optional<int> most_courses;       // a day, at most; absent: not said
  std::optional<int> mortar_minutes;     // a batch is used within; absent: 150
  std::vector<WorkDays> work;            // what takes other time than assumed
  std::optional<std::string> start;      // "2027-05-03"
  std::optional<std::string> log_until;  // the laid log tells of all that was done up to this day's evening
  std::vector<Weekday> weekdays;         // worked; none: Monday to Friday
  std::vector<std::string> days_off;     // dates
  std::optional<std::string> finish_by;  // date; the chance of being done by then is drawn
  std::vector<DayForecast> forecast;     // in any order
  std::optional<int> spread;      // of the time of one piece of work, hundredths of it; absent: see answer/finish
  std::optional<int> pace_doubt;  // of the pace itself, hundredths; absent: likewise
  friend bool operator==(const Days&, const Days&) = default;
};

}  // namespace stringcourse
