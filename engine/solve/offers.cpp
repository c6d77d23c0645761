#include "solve/offers.hpp"

#include <algorithm>
#include <array>
#include <optional>
#include <set>

#include "bond/assemble.hpp"
#include "bond/key.hpp"
#include "measure/sorting.hpp"
#include "solve/edit.hpp"
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
};

class OfferFinder {
 public:
  OfferFinder(Answer& answer, bond::PanelMemo& memo, const Wishes& wishes)
      : answer_(&answer), memo_(&memo), wishes_(&wishes), order_(order_of(answer.building)) {
    changes_ = answer.building.openings.size() * kOpeningSteps + answer.job.outline.sides.size() * kSideSteps;
  }

  void run() {
    for (std::size_t o = 0; o < answer_->building.openings.size() && !cancelled_; ++o) try_opening(o);
    for (std::size_t s = 0; s < answer_->job.outline.sides.size() && !cancelled_; ++s) try_side(s);
    sort_stably(answer_->offers, [this](const Offer& a, const Offer& b) { return worth(b) < worth(a); });
  }

 private:
  static constexpr std::size_t kOpeningSteps = 8, kSideSteps = 4;

  /// Savings in the order of the cost, to sort by.
  [[nodiscard]] std::array<std::int64_t, 3> worth(const Offer& offer) const {
    if (order_ == bond::Order::QuarterBond) return {offer.cuts, offer.short_laps, offer.bars};
    return {offer.short_laps, offer.cuts, offer.bars};
  }

  void step() {
    ++done_;
    if (wishes_->progress && !wishes_->progress(static_cast<double>(done_) / static_cast<double>(std::max<std::size_t>(changes_, 1)))) {
      cancelled_ = true;
    }
  }

  [[nodiscard]] std::optional<Tried> solve_changed(const Job& job) {
    const std::expected<Building, Refusals> building = resolve(job);
    if (!building) return std::nullopt;
    const Layout layout = bond::lay_out(*building, *memo_);
    if (!layout.stopped.empty()) return std::nullopt;
    const Layout& now = answer_->layout;  // no saving at the price of a rule
    if ((layout.relaxed_piece && !now.relaxed_piece) || (layout.relaxed_bearing && !now.relaxed_bearing)) return std::nullopt;
    return Tried{layout.cost, static_cast<std::int64_t>(layout.bars.size())};
  }

  void offer(Offer::What what, const std::string& place, const std::string& name, Length change, const std::string& words,
             const Tried& tried) {
    const Cost& now = answer_->layout.cost;
    if (!(bond::key_of(tried.cost, order_) < bond::key_of(now, order_)) && tried.bars >= static_cast<std::int64_t>(answer_->layout.bars.size())) return;
    Offer made;
    made.what = what;
    made.place = place;
    made.name = name;
    made.change = change;
    made.cuts = now.cuts - tried.cost.cuts;
    made.short_laps = now.short_laps - tried.cost.short_laps;
    made.bars = static_cast<std::int64_t>(answer_->layout.bars.size()) - tried.bars;
    if (!(worth(made) > std::array<std::int64_t, 3>{0, 0, 0})) return;
    made.text = name + " " + words + ": " + savings(made);
    answer_->offers.push_back(std::move(made));
  }

  static std::string savings(const Offer& offer) {
    std::string text;
    const auto add = [&](std::int64_t count, const char* one, const char* many) {
      if (count == 0) return;
      const std::int64_t size = count < 0 ? -count : count;
      text += (text.empty() ? "" : ", ") + std::to_string(size) + " " + (size == 1 ? one : many) + (count < 0 ? " more" : " fewer");
    };
    add(offer.short_laps, "short lap", "short laps");
    add(offer.cuts, "cut", "cuts");
    add(offer.bars, "bar", "bars");
    return text;
  }

  /// Moves to the half-unit lines within one unit, and by whole half units from where it is.
  [[nodiscard]] std::set<Length> moves_of(const ResolvedOpening& opening) const {
    const Wall& wall = answer_->building.walls[static_cast<std::size_t>(opening.wall)];
    const Series& series = answer_->building.series_of(wall);
    const Length pitch = series.pitch(), unit = series.full_pitch();
    std::set<Length> moves;
    for (std::int64_t k = -2; k <= 2; ++k) moves.insert(pitch * k);
    // Half-unit lines: jambs stand at N pitches less a joint from a convex corner.
    const Length from = opening.from.distance_from_start() + answer_->building.joint;
    const std::int64_t line = from.whole_multiples(pitch);
    for (std::int64_t k = -2; k <= 3; ++k) moves.insert(pitch * (line + k) - from);
    std::erase_if(moves, [&](Length move) { return move == Length{} || move > unit || move < -unit; });
    return moves;
  }

  void try_opening(std::size_t index) {
    const ResolvedOpening& opening = answer_->building.openings[index];
    const std::size_t in_job = job_index(opening.place);
    if (in_job >= answer_->job.openings.size()) return;
    FreePlaces free{static_cast<std::int32_t>(index), {}};
    if (answer_->layout.cost.cuts == 0) free.from.push_back(opening.from.distance_from_start());
    for (const Length move : moves_of(opening)) {
      step();
      if (cancelled_) break;
      Job changed = answer_->job;
      Place& place = changed.openings[in_job].place;
      const bool from_end = stated_from_end(answer_->building, opening, place);
      place.at.length += from_end ? -move : move;
      const std::optional<Tried> tried = solve_changed(changed);
      if (!tried) continue;
      if (tried->cost.cuts == 0) free.from.push_back(opening.from.distance_from_start() + move);
      const Wall& wall = answer_->building.walls[static_cast<std::size_t>(opening.wall)];
      const Length size = move < Length{} ? -move : move;
      offer(Offer::What::MoveOpening, opening.place, opening.name, move,
            tape_text(size, answer_->building.tape) + " toward " + (move < Length{} ? wall.start_name : wall.end_name), *tried);
    }
    sort_stably(free.from);
    answer_->free_places.push_back(std::move(free));
  }

  void try_side(std::size_t index) {
    const Job& job = answer_->job;
    const Length pitch = answer_->building.series.front().pitch();
    for (const std::int64_t k : {-2, -1, 1, 2}) {
      step();
      if (cancelled_) return;
      const std::optional<Job> changed = with_longer_side(job, index, pitch * k);
      if (!changed) continue;
      const std::optional<Tried> tried = solve_changed(*changed);
      if (!tried) continue;
      const Side& side = job.outline.sides[index];
      const std::string name = side.name.empty() ? side.from + side.to : side.name;
      const Length size = pitch * (k < 0 ? -k : k);
      offer(Offer::What::ChangeSide, "/outline/sides/" + std::to_string(index), name, pitch * k,
            tape_text(size, answer_->building.tape) + (k < 0 ? " shorter" : " longer"), *tried);
    }
  }

  static std::size_t job_index(const std::string& pointer) {
    std::size_t index = 0;
    const std::size_t slash = pointer.find_last_of('/');
    if (slash == std::string::npos) return ~std::size_t{0};
    for (std::size_t i = slash + 1; i < pointer.size(); ++i) {
      if (pointer[i] < '0' || pointer[i] > '9') return ~std::size_t{0};
      index = index * 10 + static_cast<std::size_t>(pointer[i] - '0');
    }
    return index;
  }

  Answer* answer_;
  bond::PanelMemo* memo_;
  const Wishes* wishes_;
  bond::Order order_;
  std::size_t done_ = 0, changes_ = 0;
  bool cancelled_ = false;
};

}  // namespace

/// Changes whose layouts can't be proven quickly are not offered.
void find_offers(Answer& answer, bond::PanelMemo& memo, const Wishes& wishes) {
  memo.set_budget(wishes.search_budget / 20, bond::OutOfRoom::Stop);
  OfferFinder(answer, memo, wishes).run();
  memo.set_budget(wishes.search_budget, bond::OutOfRoom::LayRoughly);
}

}  // namespace stringcourse
