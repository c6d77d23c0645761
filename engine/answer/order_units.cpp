// Units, corner sets' parts and lintels in one piece on the order list.
#include <algorithm>

#include "answer/order_parts.hpp"
#include "measure/digits.hpp"

namespace stringcourse::ordering {
namespace {

/// Name of a kind in a yard.
std::string_view kind_says(UnitKind kind) {
  switch (kind) {
    case UnitKind::Full: return "unit-full";
    case UnitKind::Half: return "unit-half";
    case UnitKind::Corner: return "unit-corner";
    case UnitKind::CornerSet: return "unit-corner-set";
    case UnitKind::OpenEnd: return "unit-open-end";
    case UnitKind::OpenBoth: return "unit-open-both";
    case UnitKind::BondBeam: return "unit-bond-beam";
    case UnitKind::BondBeamHalf: return "unit-bond-beam-half";
    case UnitKind::Lintel: return "unit-lintel";
    case UnitKind::LintelHalf: return "unit-lintel-half";
    case UnitKind::Sash: return "unit-sash";
    case UnitKind::SashHalf: return "unit-sash-half";
    case UnitKind::Cleanout: return "unit-cleanout";
    case UnitKind::CleanoutHalf: return "unit-cleanout-half";
    case UnitKind::HalfHigh: return "unit-half-high";
    case UnitKind::HalfHighHalf: return "unit-half-high-half";
    case UnitKind::Solid: return "unit-solid";
  }
  return "unit-full";
}

/// What does for a kind that has run short: always at the cost of work. SOURCE common practice.
Fact instead_of(UnitKind kind) {
  switch (kind) {
    case UnitKind::Full: return fact("instead-corner");
    case UnitKind::Half:
    case UnitKind::HalfHighHalf: return fact("instead-sawn");
    case UnitKind::HalfHigh: return fact("instead-ripped");
    case UnitKind::OpenEnd:
    case UnitKind::OpenBoth: return fact("instead-open-end");
    case UnitKind::BondBeam:
    case UnitKind::BondBeamHalf: return fact("instead-webs");
    case UnitKind::Cleanout:
    case UnitKind::CleanoutHalf: return fact("instead-hole");
    case UnitKind::Sash:
    case UnitKind::SashHalf: return fact("instead-groove");
    case UnitKind::Corner:
    case UnitKind::CornerSet:
    case UnitKind::Lintel:
    case UnitKind::LintelHalf:
    case UnitKind::Solid: break;
  }
  return fact("instead-nothing");
}

HoldPoint wanted_at(UnitKind kind) { return is_closed_underneath(kind) ? HoldPoint::Lintels : HoldPoint::FirstCourse; }

std::optional<int> pallet_of(const Ordering& stated, UnitKind kind) {
  const auto own = std::ranges::find(stated.kinds, kind, &KindOrder::kind);
  return own == stated.kinds.end() ? std::nullopt : own->pallet;
}

void add_purchase(Order& order, const Answer& answer, const supply::Purchase& purchase) {
  const Series& series = answer.building.series[static_cast<std::size_t>(purchase.series)];
  Article article{.id = unit_id(series.id, purchase.kind),
                  .name = fact("article-unit", {fact(kind_says(purchase.kind)), series.title}),
                  .wanted = wanted_at(purchase.kind),
                  .net = purchase.whole + purchase.for_saw,
                  .spare = purchase.spare};
  const std::int64_t wanted = article.net + article.spare;
  if (const auto pallet = pallet_of(stated_in(answer), purchase.kind); pallet && wanted > 0) {
    article.on_pallet = *pallet;
    article.rounding = (wanted + *pallet - 1) / *pallet * *pallet - wanted;
  }
  article.least = article.most = wanted + article.rounding;
  article.must_not_run_short = purchase.kind != UnitKind::Full;
  article.instead = instead_of(purchase.kind);
  if (purchase.for_saw > 0) {
    const auto cut = std::ranges::find_if(answer.tallies.units.units, [&](const supply::UnitCount& count) {
      return count.series == purchase.series && count.kind == purchase.kind;
    });
    const std::int64_t pieces = cut == answer.tallies.units.units.end() ? 0 : cut->pieces;
    article.note = fact("article-for-saw", {purchase.for_saw, pieces});
  }
  order.articles.push_back(std::move(article));
}

/// Parts alike, whatever is done to them before they are laid.
void add_corner_parts(Order& order, const Answer& answer) {
  const auto& parts = answer.tallies.corner_set_parts;
  for (std::size_t k = 0; k < parts.size(); ++k) {
    const auto same = [&](const supply::PartCount& other) {
      return other.series == parts[k].series && other.part == parts[k].part;
    };
    const auto first = std::ranges::find_if(parts, same);
    if (first != parts.begin() + static_cast<std::ptrdiff_t>(k)) continue;
    const Series& series = answer.building.series[static_cast<std::size_t>(parts[k].series)];
    Article article{.id = "corner-part/" + series.id + "/" + number_text(k + 1),
                    .name = fact("article-unit", {parts[k].part, series.title}),
                    .wanted = HoldPoint::FirstCourse};
    for (const supply::PartCount& part : parts) {
      if (same(part)) article.net += part.count, article.spare += part.spare;
    }
    article.least = article.most = article.net + article.spare;
    article.must_not_run_short = true;
    article.instead = fact("instead-nothing");
    order.articles.push_back(std::move(article));
  }
}

}  // namespace

void add_units(Order& order, const Answer& answer) {
  const Breakage& breakage = answer.building.breakage;
  order.assumed.push_back({"/units/breakage", fact("assumed-breakage", {breakage.percent}), breakage.stated});
  const Ordering& stated = stated_in(answer);
  for (const KindOrder& kind : stated.kinds) {
    if (kind.breakage)
      order.assumed.push_back(
          {"/order/kinds", fact("assumed-breakage-kind", {fact(kind_says(kind.kind)), *kind.breakage}), true});
    if (kind.pallet)
      order.assumed.push_back(
          {"/order/kinds", fact("assumed-pallet", {fact(kind_says(kind.kind)), *kind.pallet}), true});
  }
  const bool parts = !answer.tallies.corner_set_parts.empty();
  for (const supply::Purchase& purchase : answer.tallies.to_buy) {
    if (purchase.kind == UnitKind::CornerSet && parts) continue;  // bought as its parts
    add_purchase(order, answer, purchase);
  }
  add_corner_parts(order, answer);
  for (const supply::LintelCount& lintel : answer.tallies.one_piece_lintels) {
    order.articles.push_back(
        {.id = "lintel/" + in_id(lintel.length, answer.building.tape) + "/" + number_text(lintel.courses),
         .name = fact("article-lintel", {FactValue(lintel.length, LengthForm::Both), lintel.courses}),
         .wanted = HoldPoint::Lintels,
         .net = lintel.count,
         .least = lintel.count,
         .most = lintel.count,
         .must_not_run_short = true,
         .instead = fact("instead-nothing"),
         .note = fact("article-lintel-note")});
  }
}

}  // namespace stringcourse::ordering
