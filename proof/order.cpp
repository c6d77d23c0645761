#include "proof/order.hpp"

#include <algorithm>
#include <map>

#include "measure/money.hpp"
#include "proof/facts.hpp"

namespace stringcourse::proof {
namespace {

constexpr std::string_view kOrder = "order";

Violation wrong(const std::string& where, std::string text) { return violation(kOrder, where, std::move(text)); }

struct LaidKind {
  std::int64_t whole = 0;
  std::vector<std::int64_t> cuts;  // nanometres
};
using ByKind = std::map<std::pair<int, UnitKind>, LaidKind>;

ByKind laid_by_kind(const Building& building, const Layout& layout) {
  ByKind laid;
  for (const Run& run : layout.runs) {
    for (std::uint32_t k = 0; k < run.piece_count; ++k) {
      const Piece& piece = layout.pieces[run.first_piece + k];
      LaidKind& of = laid[{building.walls[static_cast<std::size_t>(run.wall)].series, piece.kind}];
      if (piece.cut == CutEnd::None) ++of.whole;
      else of.cuts.push_back(piece.length.in_nanometres());
    }
  }
  return laid;
}

bool is_half(UnitKind kind) {
  constexpr UnitKind kHalves[] = {UnitKind::Half,     UnitKind::BondBeamHalf, UnitKind::LintelHalf,
                                  UnitKind::SashHalf, UnitKind::CleanoutHalf, UnitKind::HalfHighHalf};
  return std::ranges::contains(kHalves, kind);
}

/// The most pairs that fit. For any number of pairs p the p * 2 shortest cuts will do, and of these the longest goes
/// with the shortest: if that does not fit, no p pairs do.
std::int64_t most_pairs(std::vector<std::int64_t> cuts, std::int64_t unit, std::int64_t kerf) {
  std::ranges::sort(cuts);
  for (std::size_t pairs = cuts.size() / 2; pairs > 0; --pairs) {
    bool fit = true;
    for (std::size_t k = 0; k < pairs; ++k) fit = fit && cuts[k] + cuts[2 * pairs - 1 - k] + kerf <= unit;
    if (fit) return static_cast<std::int64_t>(pairs);
  }
  return 0;
}

std::int64_t breakage_for(const Job& job, UnitKind kind) {
  if (job.order) {
    for (const KindOrder& own : job.order->kinds) {
      if (own.kind == kind && own.breakage) return *own.breakage;
    }
  }
  return job.units.breakage.value_or(5);
}

std::optional<int> pallet_for(const Job& job, UnitKind kind) {
  if (job.order) {
    for (const KindOrder& own : job.order->kinds) {
      if (own.kind == kind) return own.pallet;
    }
  }
  return std::nullopt;
}

void check_kind(Violations& found, const Job& job, const Series& series, UnitKind kind, const LaidKind& laid,
                const Article& article) {
  const std::int64_t unit = (is_half(kind) ? series.half : series.full).in_nanometres();
  const std::int64_t kerf = job.tape == Tape::Inches ? 3'175'000 : 3'000'000;
  const auto cuts = static_cast<std::int64_t>(laid.cuts.size());
  const std::int64_t net = laid.whole + cuts - most_pairs(laid.cuts, unit, kerf);
  if (article.net != net)
    found.push_back(
        wrong(article.id, std::to_string(article.net) + " said to be needed, " + std::to_string(net) + " counted"));
  const std::int64_t broken = article.net * breakage_for(job, kind);
  if (article.spare * 100 < broken || (article.spare - 1) * 100 >= broken)
    found.push_back(wrong(article.id, "another number breaks"));
  const std::int64_t all = article.net + article.spare;
  const std::int64_t pallet = pallet_for(job, kind).value_or(1);
  const std::int64_t ordered = all == 0 ? 0 : ((all - 1) / pallet + 1) * pallet;
  if (article.rounding != ordered - all || article.least != ordered || article.most != ordered)
    found.push_back(wrong(article.id, "not the fewest pallets"));
}

void check_units(Violations& found, const Job& job, const Building& building, const Layout& layout,
                 const Order& order) {
  std::size_t seen = 0;
  for (const auto& [key, laid] : laid_by_kind(building, layout)) {
    const Series& series = building.series[static_cast<std::size_t>(key.first)];
    const std::string id = "unit/" + series.id + "/" + std::string(kind_name(key.second));
    const auto article = std::ranges::find(order.articles, id, &Article::id);
    if (article == order.articles.end()) {
      if (key.second != UnitKind::CornerSet) found.push_back(wrong(id, "laid, and not ordered"));
      continue;
    }
    ++seen;
    check_kind(found, job, series, key.second, laid, *article);
  }
  const auto units = [](const Article& article) { return article.id.starts_with("unit/"); };
  if (seen != static_cast<std::size_t>(std::ranges::count_if(order.articles, units)))
    found.push_back(wrong("units", "one is ordered twice, or ordered and not laid"));
}

using Cubic = int128;
Cubic box(Length a, Length b, Length c) {
  return static_cast<Cubic>(a.in_nanometres()) * b.in_nanometres() * c.in_nanometres();
}

/// Length of a stretch that lies on what was left out for an opening.
Length over_holes(const Building& building, const Run& run) {
  Length over;
  for (const ResolvedOpening& opening : building.openings) {
    if (opening.wall != run.wall || opening.last_course + 1 != run.course) continue;
    const Length from = std::max(run.start, opening.from_in(opening.last_course).distance_from_start());
    const Length to = std::min(run.end, opening.to_in(opening.last_course).distance_from_start());
    if (from < to) over += to - from;
  }
  return over;
}

struct Held {
  Cubic first = 0, beds = 0, heads = 0;
};

Held held_by(const Building& building, const Layout& layout) {
  Held held;
  const auto depth_of = [](const Series& series) {
    const Length both = series.face_shell + series.face_shell;
    return both > Length() && both < series.thickness ? both : series.thickness;
  };
  const auto bed_of = [&](int course) {
    const auto at = static_cast<std::size_t>(course) - 1;
    return course == 1 ? building.joint : building.courses[at].underside() - building.courses[at - 1].top;
  };
  for (const Run& run : layout.runs) {
    const Series& series = building.series_of(building.walls[static_cast<std::size_t>(run.wall)]);
    Length pieces;
    for (std::uint32_t k = 0; k < run.piece_count; ++k) pieces += layout.pieces[run.first_piece + k].length;
    const Length bedded = run.end - run.start - over_holes(building, run);
    const Length high = building.courses[static_cast<std::size_t>(run.course) - 1].unit_height;
    held.heads += box(run.end - run.start - pieces, depth_of(series), high);
    if (run.course == 1) held.first += box(bedded, series.thickness, bed_of(1));
    else held.beds += box(bedded, depth_of(series), bed_of(run.course));
  }
  for (const PlacedLintel& lintel : layout.lintels) {
    const ResolvedOpening& opening = building.openings[static_cast<std::size_t>(lintel.opening)];
    if (!opening.lintel || opening.lintel->make != LintelMake::OnePiece) continue;
    const Series& series = building.series_of(building.walls[static_cast<std::size_t>(opening.wall)]);
    held.beds += box(lintel.start_bearing + lintel.end_bearing, depth_of(series), bed_of(opening.lintel->first_course));
  }
  return held;
}

void check_mortar(Violations& found, const Building& building, const Layout& layout, const Order& order) {
  const Held held = held_by(building, layout);
  if (order.mortar.beds.cubic_nanometres != held.beds) found.push_back(wrong("mortar", "the beds hold another amount"));
  if (order.mortar.heads.cubic_nanometres != held.heads)
    found.push_back(wrong("mortar", "the head joints hold another amount"));
  if (order.mortar.beds_read == 0 && order.mortar.first_bed.cubic_nanometres != held.first)
    found.push_back(wrong("mortar", "the first bed holds another amount"));
}

/// Nearest, a tie up.
std::int64_t rounded(Cubic of, Cubic over) { return static_cast<std::int64_t>((2 * of + over) / (2 * over)); }

std::int64_t parts_of(const Article& article) {
  return article.sold == SoldIn::QuarterCubicYards ? 4 : article.sold == SoldIn::TenthCubicMetres ? 10 : 1;
}

void check_money(Violations& found, const Job& job, const Order& order) {
  if (!job.order) return;
  const int decimals = job.order->decimals.value_or(2);
  Cubic least = 0, most = 0;
  std::vector<Sum> points(6);
  std::int64_t priced = 0, unpriced = 0;
  for (const Article& article : order.articles) {
    const auto stated = std::ranges::find(job.order->prices, article.id, &ArticlePrice::article);
    const bool known = stated != job.order->prices.end();
    if (known != article.price.has_value())
      found.push_back(wrong(article.id, "priced, and it is not, or the other way"));
    if (!article.told) continue;
    ++(known ? priced : unpriced);
    if (!known) continue;
    const auto price = read_money(stated->price, decimals);
    const Cubic one = price ? price->units : 0;
    const Sum cost{rounded(one * article.least, parts_of(article)), rounded(one * article.most, parts_of(article))};
    if (article.cost != cost) found.push_back(wrong(article.id, "costs another amount"));
    least += cost.least, most += cost.most;
    Sum& point = points[static_cast<std::size_t>(article.wanted) - 1];
    point.least += cost.least, point.most += cost.most;
  }
  const Prices& said = order.prices;
  const auto sum_of = [](Cubic a, Cubic b) { return Sum{static_cast<std::int64_t>(a), static_cast<std::int64_t>(b)}; };
  const Cubic rate = job.order->tax ? read_hundredths(*job.order->tax).value_or(0) : 0;
  const Sum tax{rounded(least * rate, 1'000'000), rounded(most * rate, 1'000'000)};
  const auto delivery = job.order->delivery ? read_money(*job.order->delivery, decimals) : Money{};
  const Cubic brings = delivery ? delivery->units : 0;
  if (said.goods != sum_of(least, most) || said.by_point != points)
    found.push_back(wrong("money", "goods do not add up"));
  if (said.tax != tax) found.push_back(wrong("money", "another tax"));
  if (said.delivery != sum_of(brings, brings)) found.push_back(wrong("money", "another delivery"));
  if (said.all != sum_of(least + tax.least + brings, most + tax.most + brings))
    found.push_back(wrong("money", "the sum of all is another one"));
  if (said.priced != priced || said.unpriced != unpriced) found.push_back(wrong("money", "other counts of prices"));
}

}  // namespace

Violations check_order(const Job& job, const Building& building, const Layout& layout, const Order& order) {
  Violations found;
  check_units(found, job, building, layout, order);
  check_mortar(found, building, layout, order);
  check_money(found, job, order);
  return found;
}

}  // namespace stringcourse::proof
