#pragma once
// The order list: what has to be on the site, an article a line, in the words of a yard. Counted from the solved layout
// and what other rooms made of it, never from an area. Where published figures disagree an article has all of them and
// the range that they span; nothing is averaged.
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "job/ordering.hpp"
#include "job/trouble.hpp"
#include "measure/fact.hpp"
#include "measure/mass.hpp"
#include "supply/mortar.hpp"

namespace stringcourse {

struct Answer;

/// What one of an article is.
enum class SoldIn : std::uint8_t {
  Each,
  Bags,
  Lengths,
  CubicFeet,
  TenthCubicMetres,
  QuarterCubicYards,
  Gallons,
  Litres,
  Feet,
  Metres,
};

/// One way in which an article is reckoned.
struct Figure {
  std::string_view rule;  // of the catalogue
  std::int64_t least = 0, most = 0;
  bool chosen = false;  // the job orders by this one
};

/// A figure that the order assumes, and whether the job states it.
struct Assumed {
  std::string_view place;  // JSON pointer into the job; its sentence is "assumed" and this
  Fact says;
  bool stated = false;
};

/// Money in smallest units of the job's currency; unlike where amounts are a range.
struct Sum {
  std::int64_t least = 0, most = 0;
  friend bool operator==(const Sum&, const Sum&) = default;
};

struct Article {
  std::string id;  // what a price names: "unit/us-8/full"
  Fact name;
  SoldIn sold = SoldIn::Each;
  HoldPoint wanted = HoldPoint::Order;  // there before the work of this hold point
  std::int64_t net = 0;                 // goes into the building
  std::int64_t spare = 0;               // for breakage, waste or loss
  std::int64_t rounding = 0;            // up to whole pallets
  std::int64_t least = 0, most = 0;     // to order; unlike only where figures disagree. Counted: net + spare + rounding
  std::optional<std::int64_t> on_pallet = {};  // units on one; then whole pallets are ordered
  bool must_not_run_short = false;             // no other article does for it without the saw
  Fact instead = {};                           // what does for it
  std::vector<Figure> figures = {};            // ways in which it is reckoned; none: counted
  Fact note = {};                              // what belongs beside it; where no number is told, why
  bool told = true;                            // a number is told
  std::optional<std::int64_t> price = {};      // of one as sold; of a cubic yard where it is sold by quarters
  std::optional<Sum> cost = {};                // rounded to the smallest unit, a tie up
  std::optional<std::int64_t> brought = {};    // on the site, all deliveries together; absent: not said
  std::optional<Mass> weight = {};             // of one as sold; absent: nobody states it
  bool weight_stated = false;                  // by the job; else by what is printed on its bag, or a bar's mass
};

struct Prices {
  std::string currency;
  int decimals = 2;
  Sum goods, tax, delivery, all;
  std::vector<Sum> by_point;              // goods, by hold point, six
  std::int64_t priced = 0, unpriced = 0;  // articles with a number
  bool asked = false;                     // the job has a price
};

struct Order {
  std::vector<Article> articles;  // family by family: units first
  supply::MortarJoints mortar;
  std::vector<Assumed> assumed;
  Prices prices;
  std::vector<std::size_t> unknown;                           // prices of the job whose article is not on the list
  std::vector<std::size_t> unknown_brought, unknown_weights;  // likewise
};

/// Last of all that is counted and listed: it reads the answer's other members.
[[nodiscard]] Order order_of(const Answer& answer);

/// "12 bags", "20 to 35 bags", "2 1/4 to 3 cubic yards", "3 pallets of 90: 270".
[[nodiscard]] Fact amount_said(const Article& article);
/// What one order costs more than another, tax and delivery in it; below zero: less. None where an article of which
/// they have other amounts has no price or no number: nothing could be said. Water without a price costs nothing.
[[nodiscard]] std::optional<Sum> dearer_by(const Order& now, const Order& then);
/// "the order costs 12.40 USD less", "the order costs 3.10 to 4.00 USD more".
[[nodiscard]] Fact dearer_said(const Prices& prices, const Sum& more);
/// "1234.50 USD", "1200.00 to 1234.50 USD".
[[nodiscard]] Fact sum_said(const Prices& prices, const Sum& sum);
[[nodiscard]] Fact amount_said(SoldIn sold, std::int64_t least, std::int64_t most);

}  // namespace stringcourse
