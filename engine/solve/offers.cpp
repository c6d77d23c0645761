#include "solve/offers.hpp"

#include <algorithm>
#include <array>
#include <optional>
#include <span>

#include "bond/assemble.hpp"
#include "bond/key.hpp"
#include "job/words.hpp"
#include "measure/sorting.hpp"
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
  bool counts_are_proven = false;  // a longer search would find the same numbers of cuts and short laps
};

/// An offer as a short search found it, and the change behind it.
struct Found {
  Offer offer;
  Wanted wanted;
  bool counts_are_proven = false;
};

/// All changes that are tried lay this many pieces at most; a garage's come to a quarter of that.
constexpr std::size_t kMostPieces = 800'000;
/// All changes together have as many looks as the job itself; when all but an eighth of them is used up, no more are tried.
/// Those that are searched long share as many again, or what the job left where that is more.
constexpr std::int64_t kShareKept = 8;
/// How many of the best offers whose numbers a short search leaves open are searched as long as the job itself.
constexpr std::size_t kSearchedLong = 4;

std::int64_t bars_of(const Layout& layout) { return static_cast<std::int64_t>(layout.bars.size()); }

/// No layout has fewer short laps, nor as few and fewer cuts (or the other way round): a longer search would tell the same.
bool counts_are_proven(const Layout& layout) {
  return layout.cost.short_laps == layout.least_possible.short_laps && layout.cost.cuts == layout.least_possible.cuts;
}

/// "no cuts", "3 short laps fewer", "1 bar more"; nothing where nothing changes.
void add_saving(std::string& text, std::int64_t saved, std::int64_t left, const char* one, const char* many) {
  if (saved == 0) return;
  text += text.empty() ? "" : ", ";
  if (saved > 0 && left == 0) {
    text.append("no ").append(many);
    return;
  }
  const std::int64_t size = saved < 0 ? -saved : saved;
  text += number_text(size) + " " + (size == 1 ? one : many) + (saved < 0 ? " more" : " fewer");
}

std::string savings(const Offer& offer, const Tried& tried) {
  std::string text;
  add_saving(text, offer.cuts, tried.cost.cuts, "cut", "cuts");
  add_saving(text, offer.short_laps, tried.cost.short_laps, "short lap", "short laps");
  if (offer.what == OfferWhat::MoveHead) text += (text.empty() ? "" : ", ") + std::string("its head comes on a course");
  add_saving(text, offer.bars, tried.bars, "bar", "bars");
  return text;
}

class OfferFinder {
 public:
  OfferFinder(Answer& answer, bond::PanelMemo& memo, const Wishes& wishes, std::int64_t long_looks)
      : answer_(&answer), memo_(&memo), wishes_(&wishes), long_looks_(long_looks), order_(order_of(answer.building)) {}

  void run() {
    const std::vector<Wanted> all = affordable(all_wanted());
    steps_ = all.size() + kSearchedLong;
    const std::int64_t least_left = memo_->room().left() / kShareKept;
    for (const Wanted& wanted : all) {
      if (!go_on()) break;
      if (memo_->room().left() < least_left) {
        answer_->offers_complete = false;
        break;
      }
      try_out(wanted);
    }
    put_best_first();
    search_long();
    put_best_first();
    for (Found& found : found_) answer_->offers.push_back(std::move(found.offer));
    for (FreePlaces& free : answer_->free_places) sort_stably(free.from);
  }

 private:
  /// Where nothing is cut and nothing laps short, only where openings may go is asked.
  [[nodiscard]] std::vector<Wanted> all_wanted() {
    const Building& building = answer_->building;
    const Cost& cost = answer_->layout.cost;
    const bool can_save = cost.cuts > 0 || cost.short_laps > 0;
    std::vector<Wanted> all;
    const auto add = [&](const std::vector<Wanted>& more) { all.insert(all.end(), more.begin(), more.end()); };
    for (std::size_t o = 0; o < building.openings.size(); ++o) {
      answer_->free_places.push_back({static_cast<std::int32_t>(o), {}});
      if (cost.cuts == 0) note_free(o, Length());
      add(moves_of(building, o));
      std::vector<Wanted> sizes = sizes_of(answer_->job, building, o);
      if (!can_save) std::erase_if(sizes, [](const Wanted& size) { return size.what != OfferWhat::MoveHead; });
      add(sizes);
    }
    for (std::size_t s = 0; s < answer_->job.outline.sides.size() && can_save; ++s) add(lengths_of(building, s));
    return all;
  }

  /// Of a large building the changes that are likeliest to help: on walls with cuts, small ones first.
  [[nodiscard]] std::vector<Wanted> affordable(std::vector<Wanted> all) {
    const std::size_t most = std::max<std::size_t>(16, kMostPieces / std::max<std::size_t>(1, answer_->layout.pieces.size()));
    answer_->offers_complete = all.size() <= most;
    if (answer_->offers_complete) return all;
    const std::vector<bool> cut = walls_with_cuts();
    sort_stably(all, [&](const Wanted& a, const Wanted& b) {
      const bool first = cut[wall_of(answer_->building, a)], second = cut[wall_of(answer_->building, b)];
      return first != second ? first : magnitude(a.by) < magnitude(b.by);
    });
    all.resize(most);
    return all;
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
    if (wishes_->progress && !wishes_->progress(static_cast<double>(done_) / static_cast<double>(steps_))) cancelled_ = true;
    return !cancelled_;
  }

  void note_free(std::size_t opening, Length move) {
    const Length from = answer_->building.openings[opening].from.distance_from_start();
    answer_->free_places[opening].from.push_back(from + move);
  }

  void try_out(const Wanted& wanted) {
    const std::optional<Tried> tried = solved(wanted, *memo_);
    if (!tried) return;
    if (wanted.what == OfferWhat::MoveOpening && tried->cost.cuts == 0) note_free(wanted.index, wanted.by);
    if (auto made = priced(wanted, *tried)) found_.push_back({*std::move(made), wanted, tried->counts_are_proven});
  }

  /// The best few that are open still, with the job's own search; the others are not promised.
  void search_long() {
    bond::PanelMemo memo(wishes_->search_budget);
    std::size_t searched = answer_->layout.pieces.size() * kSearchedLong > kMostPieces / 8 ? kSearchedLong : 0;
    std::vector<Found> kept;
    for (Found& found : found_) {
      if (found.counts_are_proven) {
        kept.push_back(std::move(found));
      } else if (searched < kSearchedLong && !cancelled_ && go_on()) {
        ++searched;
        memo.begin_change(long_looks_);
        const std::optional<Tried> tried = solved(found.wanted, memo);
        long_looks_ = std::max<std::int64_t>(memo.room().left(), 0);
        if (memo.was_short()) continue;  // the changed job by itself may be laid otherwise
        auto made = tried ? priced(found.wanted, *tried) : std::nullopt;
        if (made) kept.push_back({*std::move(made), found.wanted, true});
      }
    }
    found_ = std::move(kept);
  }

  [[nodiscard]] std::optional<Tried> solved(const Wanted& wanted, bond::PanelMemo& memo) {
    const std::optional<Job> job = changed_job(answer_->job, answer_->building, wanted);
    if (!job) return std::nullopt;
    const std::expected<Building, Refusals> building = resolve(*job);
    if (!building) return std::nullopt;
    const Layout layout = bond::lay_out(*building, memo);
    if (!layout.stopped.empty() || layout.cost.conceded > answer_->layout.cost.conceded) return std::nullopt;
    const Layout& now = answer_->layout;  // no saving at the price of a rule
    if ((layout.relaxed_piece && !now.relaxed_piece) || (layout.relaxed_bearing && !now.relaxed_bearing)) return std::nullopt;
    return Tried{layout.cost, bars_of(layout), counts_are_proven(layout)};
  }

  /// Savings in the order of the cost, to sort by. Fewer bars alone are none: they follow from where cells happen to fall.
  [[nodiscard]] std::array<std::int64_t, 3> worth(const Offer& offer) const {
    const std::int64_t head = offer.what == OfferWhat::MoveHead ? 1 : 0;
    if (order_ == bond::Order::QuarterBond) return {offer.cuts, offer.short_laps, head};
    return {offer.short_laps, offer.cuts, head};
  }

  /// The offer with what it saves, if that is anything.
  [[nodiscard]] std::optional<Offer> priced(const Wanted& wanted, const Tried& tried) const {
    const Cost& now = answer_->layout.cost;
    Offer made = unpriced_offer(answer_->job, answer_->building, wanted);
    made.cuts = now.cuts - tried.cost.cuts;
    made.short_laps = now.short_laps - tried.cost.short_laps;
    made.bars = bars_of(answer_->layout) - tried.bars;
    if (worth(made) <= std::array<std::int64_t, 3>{}) return std::nullopt;
    made.text += ": " + savings(made, tried);
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
        return better.counts_are_proven && one.what == other.what && one.place == other.place && (one.change < Length()) == (other.change < Length()) &&
               magnitude(one.change) <= magnitude(other.change);
      };
      if (std::ranges::none_of(kept, makes_needless)) kept.push_back(std::move(found));
    }
    found_ = std::move(kept);
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
  const std::int64_t for_long = std::max(memo.room().left(), of_job);
  memo.refill(of_job);
  OfferFinder(answer, memo, wishes, for_long).run();
  memo.set_budget(wishes.search_budget, bond::OutOfRoom::LayRoughly);
}

}  // namespace stringcourse
