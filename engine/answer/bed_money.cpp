#include "answer/bed_money.hpp"

#include <algorithm>

#include "answer/order_parts.hpp"

namespace stringcourse {
namespace {

using ground::BedChoice;
using ordering::stated_in;

constexpr int128 kCubicCentimetre = static_cast<int128>(1'000'000'000'000) * 1'000'000'000;

/// The units that a way takes beside those of the layout.
std::optional<UnitKind> more_of(const BedChoice& choice) {
  if (choice.what == BedRemedy::HalfHigh) return UnitKind::HalfHigh;
  if (choice.what == BedRemedy::Step) return UnitKind::Full;
  return std::nullopt;
}

std::int64_t breakage_of(const Answer& answer, UnitKind kind) {
  const auto& kinds = stated_in(answer).kinds;
  const auto own = std::ranges::find(kinds, kind, &KindOrder::kind);
  return own != kinds.end() && own->breakage ? *own->breakage : answer.building.breakage.percent;
}

/// As the order has them, and so many more: with their breakage, in whole pallets where it has such.
Article units_with(const Answer& answer, UnitKind kind, std::int64_t more) {
  const std::string id = ordering::unit_id(answer.building.series.front().id, kind);
  const auto there = std::ranges::find(answer.order.articles, id, &Article::id);
  Article article{.id = id, .name = {}};
  if (there != answer.order.articles.end()) article = *there;
  article.cost.reset(), article.price.reset();
  article.net += more;
  article.spare += ordering::with_more(more, breakage_of(answer, kind)) - more;
  const std::int64_t wanted = article.net + article.spare, pallet = article.on_pallet.value_or(1);
  article.least = article.most = (wanted + pallet - 1) / pallet * pallet;
  return article;
}

/// Mortar, and the units that a way takes more of, with `more` of both.
Order part_of_order(const Answer& answer, std::optional<UnitKind> kind, std::int64_t units, Volume mortar) {
  Order order;
  order.mortar = answer.order.mortar;
  order.mortar.first_bed += mortar;
  ordering::add_mortar(order, answer, MortarBy::Joints);
  if (kind) order.articles.push_back(units_with(answer, *kind, units));
  ordering::add_prices(order, answer);
  return order;
}

std::optional<Sum> dearer_than_level(const Answer& answer, const BedChoice& choice, const BedChoice& level) {
  if (choice.concrete_cubic_centimetres > 0 || choice.what == BedRemedy::GroutFirstCourse) return std::nullopt;
  const std::optional<UnitKind> kind = more_of(choice);
  const Volume mortar{(choice.mortar_cubic_centimetres - level.mortar_cubic_centimetres) * kCubicCentimetre};
  return dearer_by(part_of_order(answer, kind, 0, {}), part_of_order(answer, kind, choice.units, mortar));
}

}  // namespace

std::vector<BedMoney> bed_money(const Answer& answer) {
  std::vector<BedMoney> all;
  if (!answer.order.prices.asked || !answer.found.levels || !answer.found.levels->bed) return all;
  const std::vector<BedChoice>& choices = answer.found.levels->bed->choices;
  const auto level = std::ranges::find(choices, BedRemedy::Level, &BedChoice::what);
  if (level == choices.end()) return all;
  for (const BedChoice& choice : choices) {
    if (choice.what == BedRemedy::Level) continue;
    if (const std::optional<Sum> more = dearer_than_level(answer, choice, *level)) all.push_back({choice.what, *more});
  }
  return all;
}

Fact bed_money_said(const Answer& answer, BedRemedy what) {
  const auto known = std::ranges::find(answer.bed_money, what, &BedMoney::what);
  return known == answer.bed_money.end() ? Fact() : dearer_said(answer.order.prices, known->more);
}

}  // namespace stringcourse
