// What was brought to the site, and what things weigh.
#include <algorithm>

#include "answer/order_parts.hpp"
#include "catalogue/steel.hpp"

namespace stringcourse::ordering {
namespace {

Article* article_named(Order& order, const std::string& id) {
  const auto at = std::ranges::find(order.articles, id, &Article::id);
  return at == order.articles.end() ? nullptr : &*at;
}

/// As is printed on bags: the article's name says it.
std::optional<Mass> bag_weight(const std::string& id) {
  if (id == "mortar/premix" || id == "grout/bags") return kPound.times(80);
  if (id == "mortar/cement") return kPound.times(94);
  if (id == "lime") return kPound.times(50);
  return std::nullopt;
}

/// SOURCE: grams_per_metre.
std::optional<Mass> bar_weight(const Answer& answer, const std::string& id) {
  constexpr std::string_view kBefore = "bar/";
  if (!id.starts_with(kBefore)) return std::nullopt;
  const Bar* bar = find_bar(std::string_view(id).substr(kBefore.size()));
  if (bar == nullptr) return std::nullopt;
  constexpr std::int64_t kNanometresToUnits = 10'000;  // grams for a metre to hundredths of a milligram for a nanometre
  return Mass{grams_per_metre(*bar) * answer.bar_pieces.stock.length.in_nanometres() / kNanometresToUnits};
}

}  // namespace

void add_brought(Order& order, const Answer& answer) {
  const Ordering& stated = stated_in(answer);
  for (Article& article : order.articles) {
    article.weight = bag_weight(article.id);
    if (!article.weight) article.weight = bar_weight(answer, article.id);
  }
  for (std::size_t k = 0; k < stated.brought.size(); ++k) {
    Article* article = article_named(order, stated.brought[k].article);
    if (article == nullptr) order.unknown_brought.push_back(k);
    else article->brought = article->brought.value_or(0) + stated.brought[k].count;
  }
  for (std::size_t k = 0; k < stated.weights.size(); ++k) {
    Article* article = article_named(order, stated.weights[k].article);
    if (article == nullptr) {
      order.unknown_weights.push_back(k);
      continue;
    }
    article->weight = read_mass(stated.weights[k].weight);  // refused when the job was read, if it is none
    article->weight_stated = true;
  }
}

}  // namespace stringcourse::ordering
