#include "solve/offers.hpp"

#include <algorithm>
#include <array>
#include <limits>
#include <optional>
#include <span>

#include "bond/assemble.hpp"
#include "bond/key.hpp"
#include "measure/sorting.hpp"
#include "solve/best_layout.hpp"
#include "solve/concession_findings.hpp"
#include "solve/offer_changes.hpp"
#include "walls/resolve.hpp"

namespace stringcourse {
namespace {

bond::Order order_of(const Building& building) {
  return building.bond == BondWish::Quarter ? bond::Order::QuarterBond : bond::Order::HalfBond;
}

/// A changed job solved, if it can be built at all.
struct Tried {
  Cost cost;
  std::int64_t bars = 0;
  bool relaxed_piece = false, relaxed_bearing = false;
  std::vector<Concession> conceded;
  bool counts_are_proven = false;  // a longer search would find the same numbers
};

/// An offer as a short search found it, and the change behind it.
struct Found {
  Offer offer;
  Wanted wanted;
  Tried tried;
};

/// A change, and what laying it at once says of it.
struct Likely {
  Wanted wanted;
  std::optional<Tried> at_once;
};

/// All changes that are tried lay this many pieces at most; the kiln house's come to a quarter of that.
constexpr std::size_t kMostPieces = 800'000;
/// All changes together have as many looks as the job itself: a quarter of them for laying each at once, to know which
/// are likely to help, the rest for searching those, the likeliest first; when all but an eighth is used up, no more
/// are tried. Those that are searched long share as many again, or what the job left where that is more; where the job
/// gives up rules, as many as such a job may take.
constexpr std::int64_t kShareAtOnce = 4, kShareKept = 8, kShareConceding = 3;
/// How many of the best offers whose numbers a short search leaves open are searched as long as the job itself.
constexpr std::size_t kSearchedLong = 4;
/// Offers whose buildings come to so many pieces together are solved whole, for what their orders cost: the best first.
constexpr std::size_t kPricedPieces = 100'000, kMostPriced = 12;
/// How many offers are named beside a finding.
constexpr std::size_t kBesideFinding = 3;

std::int64_t bars_of(const Layout& layout) { return static_cast<std::int64_t>(layout.bars.size()); }

/// No layout gives up less, has fewer short laps, nor as few and fewer cuts (or the other way round): a longer search
/// would tell the same.
bool counts_are_proven(const Cost& cost, const Cost& least) {
  return cost.conceded == least.conceded && cost.short_laps == least.short_laps && cost.cuts == least.cuts;
}

Tried tried_of(const Layout& layout) {
  const bool proven = counts_are_proven(layout.cost, layout.least_possible);
  return {layout.cost, bars_of(layout), layout.relaxed_piece, layout.relaxed_bearing, layout.conceded, proven};
}

/// How a saving of one kind is told.
struct SavingNames {
  std::string_view none, fewer, more;
};
constexpr SavingNames kCuts{"no-cuts", "cuts-fewer", "cuts-more"},
    kShortLaps{"no-short-laps", "short-laps-fewer", "short-laps-more"}, kBars{"no-bars", "bars-fewer", "bars-more"};

/// "no cuts", "3 short laps fewer", "1 bar more"; nothing where nothing changes.
void add_saving(std::vector<Fact>& all, std::int64_t saved, std::int64_t left, const SavingNames& names) {
  if (saved > 0) all.push_back(left == 0 ? fact(names.none) : fact(names.fewer, {saved}));
  if (saved < 0) all.push_back(fact(names.more, {-saved}));
}

/// "every rule kept", "2 rules fewer given up": places are counted, and where they are not fewer, it is milder ones.
void add_rules(std::vector<Fact>& all, const Layout& now, const Tried& tried) {
  if (now.cost.conceded <= tried.cost.conceded) return;
  const auto fewer = static_cast<std::int64_t>(now.conceded.size()) - static_cast<std::int64_t>(tried.conceded.size());
  if (tried.cost.conceded == 0) all.push_back(fact("every-rule-kept"));
  else all.push_back(fewer > 0 ? fact("rules-kept-at", {fewer}) : fact("milder-rules"));
}

FactValue savings(const Offer& offer, const Layout& now, const Tried& tried) {
  std::vector<Fact> all;
  add_rules(all, now, tried);
  add_saving(all, offer.cuts, tried.cost.cuts, kCuts);
  add_saving(all, offer.short_laps, tried.cost.short_laps, kShortLaps);
  if (offer.what == OfferWhat::MoveHead) all.push_back(fact("head-on-course"));
  add_saving(all, offer.bars, tried.bars, kBars);
  return listed(FactValue::Kind::Commas, all);
}

class OfferFinder {
 public:
  OfferFinder(Answer& answer, bond::PanelMemo& memo, const Wishes& wishes, std::int64_t long_looks)
      : answer_(&answer), memo_(&memo), wishes_(&wishes), long_looks_(long_looks), order_(order_of(answer.building)) {}

  void run() {
    const std::vector<Likely> all = likeliest_first(affordable(all_wanted()));
    steps_ = all.size() + kSearchedLong + (answer_->order.prices.asked ? kMostPriced : 0);
    const std::int64_t least_left = memo_->room().left() / kShareKept;
    for (const Likely& change : all) {
      if (!go_on()) break;
      if (memo_->room().left() < least_left) {
        answer_->offers_complete = false;
        break;
      }
      try_out(change);
    }
    put_best_first();
    search_long();
    put_best_first();
    reckon_money();
    note_mended();
    for (Found& found : found_) answer_->offers.push_back(std::move(found.offer));
    for (FreePlaces& free : answer_->free_places) sort_stably(free.from);
  }

 private:
  [[nodiscard]] bool can_save() const {
    const Cost& cost = answer_->layout.cost;
    return cost.conceded > 0 || cost.cuts > 0 || cost.short_laps > 0;
  }

  /// Where nothing is cut and nothing laps short, only where openings may go is asked.
  [[nodiscard]] std::vector<Wanted> all_wanted() {
    const Building& building = answer_->building;
    std::vector<Wanted> all;
    const auto add = [&](const std::vector<Wanted>& more) { all.insert(all.end(), more.begin(), more.end()); };
    for (std::size_t o = 0; o < building.openings.size(); ++o) {
      answer_->free_places.push_back({static_cast<std::int32_t>(o), {}});
      if (answer_->layout.cost.cuts == 0) note_free(o, Length());
      add(moves_of(building, o));
      std::vector<Wanted> sizes = sizes_of(answer_->job, building, o);
      if (!can_save()) std::erase_if(sizes, [](const Wanted& size) { return size.what != OfferWhat::MoveHead; });
      add(sizes);
    }
    for (std::size_t s = 0; s < answer_->job.outline.sides.size() && can_save(); ++s) add(lengths_of(building, s));
    return all;
  }

  /// Of a large building the changes that are likeliest to help: on walls with cuts, small ones first.
  [[nodiscard]] std::vector<Wanted> affordable(std::vector<Wanted> all) {
    const std::size_t most =
        std::max<std::size_t>(16, kMostPieces / std::max<std::size_t>(1, answer_->layout.pieces.size()));
    answer_->offers_complete = all.size() <= most;
    if (answer_->offers_complete) return all;
    const std::vector<bool> cut = walls_with_cuts();
    sort_stably(all, [&](const Wanted& a, const Wanted& b) {
      const bool first = cut[wall_changed(answer_->building, a)], second = cut[wall_changed(answer_->building, b)];
      return first != second ? first : magnitude(a.by) < magnitude(b.by);
    });
    all.resize(most);
    return all;
  }

  /// Each change laid at once, without a search: those that come out best are searched first, while there is room. (Of
  /// a large building the likeliest were chosen already.)
  [[nodiscard]] std::vector<Likely> likeliest_first(std::vector<Wanted> all) {
    std::vector<Likely> likely;
    const std::int64_t looks = memo_->room().left() / kShareAtOnce;
    const bool lays_each = can_save() && answer_->offers_complete;
    bond::PanelMemo at_once(0);
    at_once.begin_change(looks);
    if (lays_each) sort_stably(all, {}, [](const Wanted& wanted) { return magnitude(wanted.by); });
    for (const Wanted& wanted : all) {
      const bool lays = lays_each && !at_once.room().is_out();
      likely.push_back({wanted, lays ? solved(wanted, at_once) : std::nullopt});
    }
    if (!lays_each) return likely;
    memo_->refill(memo_->room().left() - (looks - at_once.room().left()));
    const Cost most{.conceded = std::numeric_limits<std::int64_t>::max()};
    const auto cost = [&](const Likely& change) { return counts(change.at_once ? change.at_once->cost : most); };
    sort_stably(likely, [&](const Likely& a, const Likely& b) {
      const auto first = cost(a), second = cost(b);
      return first != second ? first < second : magnitude(a.wanted.by) < magnitude(b.wanted.by);
    });
    return likely;
  }

  [[nodiscard]] std::vector<bool> walls_with_cuts() const {
    std::vector<bool> cut(answer_->building.walls.size(), false);
    for (const Run& run : answer_->layout.runs) {
      const std::span pieces(answer_->layout.begin_of(run), run.piece_count);
      if (std::ranges::any_of(pieces, [](const Piece& piece) { return piece.cut != CutEnd::None; })) {
        cut[static_cast<std::size_t>(run.wall)] = true;
      }
    }
    return cut;
  }

  bool go_on() {
    ++done_;
    if (wishes_->progress && !wishes_->progress(static_cast<double>(done_) / static_cast<double>(steps_)))
      cancelled_ = true;
    return !cancelled_;
  }

  void note_free(std::size_t opening, Length move) {
    const Length from = answer_->building.openings[opening].from.distance_from_start();
    answer_->free_places[opening].from.push_back(from + move);
  }

  /// A short search by all the rules. Where it finds nothing, what was laid at once may be searched long.
  void try_out(const Likely& change) {
    const Wanted& wanted = change.wanted;
    const bool gives_up = change.at_once && change.at_once->cost.conceded > 0;
    std::optional<Tried> tried = gives_up ? std::nullopt : solved(wanted, *memo_);
    const bool is_free = tried && tried->cost.conceded == 0 && tried->cost.cuts == 0;
    if (is_free && wanted.what == OfferWhat::MoveOpening) note_free(wanted.index, wanted.by);
    if (!tried && change.at_once) {
      tried = change.at_once;
      tried->counts_are_proven = false;
    }
    auto offer = tried ? priced(wanted, *tried) : std::nullopt;
    if (offer) found_.push_back({*std::move(offer), wanted, *std::move(tried)});
  }

  /// The best few that are open still, each as a job of its own, so that its numbers are those of whoever takes it; the
  /// others are not promised.
  void search_long() {
    std::int64_t took = 0;
    std::size_t searched = answer_->layout.pieces.size() * kSearchedLong > kMostPieces / 8 ? kSearchedLong : 0;
    std::vector<Found> kept;
    for (Found& found : found_) {
      if (found.tried.counts_are_proven) {
        kept.push_back(std::move(found));
      } else if (searched < kSearchedLong && took <= long_looks_ && !cancelled_ && go_on()) {
        ++searched;
        bond::PanelMemo memo(wishes_->search_budget);
        const std::int64_t given = memo.room().left();
        std::optional<Tried> tried = solved(found.wanted, memo, best_layout);
        took = given - memo.room().left() + memo.looks_again();
        long_looks_ -= took;
        if (long_looks_ < 0) break;  // more than its share: nothing is promised
        if (auto offer = tried ? priced(found.wanted, *tried) : std::nullopt) {
          tried->counts_are_proven = true;
          kept.push_back({*std::move(offer), found.wanted, *std::move(tried)});
        }
      }
    }
    found_ = std::move(kept);
  }

  /// Where the job has prices: what the order costs more or less with it. Each is solved as a job of its own, as it is
  /// once it is taken.
  void reckon_money() {
    if (!answer_->order.prices.asked || cancelled_) return;
    const std::size_t pieces = std::max<std::size_t>(1, answer_->layout.pieces.size());
    const std::size_t most = std::min({found_.size(), kMostPriced, kPricedPieces / pieces});
    for (std::size_t k = 0; k < most && go_on(); ++k) {
      Offer& offer = found_[k].offer;
      const std::optional<Job> job = changed_job(answer_->job, answer_->building, found_[k].wanted);
      if (!job) continue;
      const auto changed =
          solve(*job, {.save_dowels = false, .at_rest = false, .search_budget = wishes_->search_budget});
      if (!changed) continue;
      offer.money = dearer_by(answer_->order, changed->order);
      if (offer.money)
        offer.text = fact("offer-with-money", {offer.text, dearer_said(answer_->order.prices, *offer.money)});
    }
  }

  using LayOut = Layout (*)(const Building&, bond::PanelMemo&);
  [[nodiscard]] std::optional<Tried> solved(const Wanted& wanted, bond::PanelMemo& memo,
                                            LayOut lay_out = bond::lay_out) const {
    const std::optional<Job> job = changed_job(answer_->job, answer_->building, wanted);
    if (!job) return std::nullopt;
    const std::expected<Building, Refusals> building = resolve(*job);
    if (!building) return std::nullopt;
    const Layout layout = lay_out(*building, memo);
    if (!layout.stopped.empty() || layout.cost.conceded > answer_->layout.cost.conceded) return std::nullopt;
    const Layout& now = answer_->layout;  // no saving at the price of a rule
    const bool relaxes =
        (layout.relaxed_piece && !now.relaxed_piece) || (layout.relaxed_bearing && !now.relaxed_bearing);
    if (relaxes && layout.cost.conceded == now.cost.conceded) return std::nullopt;
    return tried_of(layout);
  }

  /// What offers are about, in the order of the cost.
  [[nodiscard]] std::array<std::int64_t, 3> counts(const Cost& cost) const {
    if (order_ == bond::Order::QuarterBond) return {cost.conceded, cost.cuts, cost.short_laps};
    return {cost.conceded, cost.short_laps, cost.cuts};
  }

  /// Savings in the order of the cost, to sort by. Fewer bars alone are none: they follow from where cells happen to
  /// fall.
  [[nodiscard]] std::array<std::int64_t, 4> worth(const Offer& offer) const {
    const std::int64_t head = offer.what == OfferWhat::MoveHead ? 1 : 0;
    if (order_ == bond::Order::QuarterBond) return {offer.conceded, offer.cuts, offer.short_laps, head};
    return {offer.conceded, offer.short_laps, offer.cuts, head};
  }

  /// The offer with what it saves, if that is anything.
  [[nodiscard]] std::optional<Offer> priced(const Wanted& wanted, const Tried& tried) const {
    const Cost& now = answer_->layout.cost;
    Offer made = unpriced_offer(answer_->job, answer_->building, wanted);
    made.conceded = now.conceded - tried.cost.conceded;
    made.cuts = now.cuts - tried.cost.cuts;
    made.short_laps = now.short_laps - tried.cost.short_laps;
    made.bars = bars_of(answer_->layout) - tried.bars;
    if (worth(made) <= std::array<std::int64_t, 4>{}) return std::nullopt;
    made.text = fact("offer", {made.text, savings(made, answer_->layout, tried)});
    return made;
  }

  /// Of changes of one thing in one direction the larger ones that save no more are left out.
  void put_best_first() {
    sort_stably(found_, [this](const Found& a, const Found& b) {
      const auto first = worth(a.offer), second = worth(b.offer);
      return first != second ? second < first : magnitude(a.offer.change) < magnitude(b.offer.change);
    });
    std::vector<Found> kept;
    for (Found& found : found_) {
      const auto makes_needless = [&](const Found& better) {
        const Offer &one = better.offer, &other = found.offer;
        const bool same_way = (one.change < Length()) == (other.change < Length());
        return better.tried.counts_are_proven && one.what == other.what && one.place == other.place && same_way &&
               magnitude(one.change) <= magnitude(other.change);
      };
      if (std::ranges::none_of(kept, makes_needless)) kept.push_back(std::move(found));
    }
    found_ = std::move(kept);
  }

  /// How often what a finding says stands in a layout; nothing for a finding that is not of the layout.
  [[nodiscard]] std::optional<std::int64_t> count_of(const Finding& finding, const Tried& laid) const {
    if (const auto what = conceded_in(finding)) {
      return std::ranges::count_if(laid.conceded, [&](const Concession& c) {
        const Wall& wall = answer_->building.walls[static_cast<std::size_t>(c.wall)];
        return c.what == *what && wall.place == finding.place;
      });
    }
    if (finding.code == "short-laps") return laid.cost.short_laps;
    if (finding.code == "piece-relaxed") return laid.relaxed_piece ? 1 : 0;
    if (finding.code == "cut-under-bearing") return laid.relaxed_bearing ? 1 : 0;
    return std::nullopt;
  }

  [[nodiscard]] std::int64_t left_of(const Finding& finding, const Found& found) const {
    if (finding.code == "head-off-course") {
      return found.offer.what == OfferWhat::MoveHead && finding.place == found.offer.place ? 0 : 1;
    }
    return count_of(finding, found.tried).value_or(1);
  }

  /// Beside each finding the best offers that remove what it says; where none does, those that lessen it.
  void note_mended() {
    const Tried now = tried_of(answer_->layout);
    for (std::size_t f = 0; f < answer_->findings.size(); ++f) {
      const Finding& finding = answer_->findings[f];
      const std::int64_t stands = count_of(finding, now).value_or(1);
      const auto left = [&](const Found& found) { return left_of(finding, found); };
      const bool removed = std::ranges::any_of(found_, [&](const Found& found) { return left(found) == 0; });
      std::size_t named = 0;
      for (Found& found : found_) {
        if (named == kBesideFinding) break;
        if (removed ? left(found) > 0 : left(found) >= stands) continue;
        found.offer.mends.push_back(f);
        ++named;
      }
    }
  }

  Answer* answer_;
  bond::PanelMemo* memo_;
  const Wishes* wishes_;
  std::int64_t long_looks_;  // left for those that are searched long
  bond::Order order_;
  std::vector<Found> found_;
  std::size_t done_ = 0, steps_ = 1;
  bool cancelled_ = false;
};

}  // namespace

void find_offers(Answer& answer, bond::PanelMemo& memo, const Wishes& wishes) {
  memo.set_budget(wishes.search_budget / 20, bond::OutOfRoom::Stop);
  const std::int64_t of_job = bond::kLooksOfBudget * wishes.search_budget;
  const std::int64_t as_the_job = answer.layout.cost.conceded > 0 ? kShareConceding * of_job : of_job;
  const std::int64_t for_long = std::max(memo.room().left(), as_the_job);
  memo.refill(of_job);
  OfferFinder(answer, memo, wishes, for_long).run();
  memo.set_budget(wishes.search_budget, bond::OutOfRoom::LayRoughly);
}

}  // namespace stringcourse
