// Over 400 lines: one search over the panels of a building, whose class holds their states together.
#include "bond/assemble.hpp"

#include <algorithm>
#include <set>

#include "bond/concessions.hpp"
#include "bond/elimination.hpp"
#include "bond/lintel_units.hpp"
#include "bond/panel_site.hpp"
#include "bond/place.hpp"
#include "bond/search.hpp"
#include "bond/stops.hpp"
#include "measure/sorting.hpp"

namespace stringcourse::bond {
namespace {

/// What one set of values makes of a panel: a case for each set of its lintels' bearings.
struct Option {
  std::vector<std::vector<Bearings>> bearings;
  std::vector<Key> lintels;  // what these bearings cost by themselves
  std::vector<PanelCase*> cases;

  /// A case's value or bound, with its lintels'.
  [[nodiscard]] Key with_lintels(std::size_t i, const Key& cost) const {
    return cost.is_impossible() ? cost : cost + lintels[i];
  }
  [[nodiscard]] Key value(std::size_t i, Order order) const { return with_lintels(i, cases[i]->value(order)); }
  [[nodiscard]] Key bound(std::size_t i) const { return with_lintels(i, cases[i]->bound); }
};

/// Bearings of a site's one-piece lintels, and what they cost by themselves.
struct BearingSet {
  std::vector<Bearings> bearings;
  Key cost;
};

/// A stopped panel weighs more than any layout, so that the fewest panels stop.
constexpr std::uint64_t kStoppedWeight = std::uint64_t{1} << 52;
constexpr std::size_t kMostBearingSets = 512, kMostConcedingSets = 12;  // a conceding panel takes long
constexpr std::size_t kFewBearingSets = 2;  // while something is dragged, as long as they lay

class Assembly {
 public:
  Assembly(const Building& building, PanelMemo& memo)
      : building_(&building), memo_(&memo), bits_(bits_of(building)), sites_(sites_of(building, bits_)) {
    order_ = building.bond == BondWish::Quarter ? Order::QuarterBond : Order::HalfBond;
    strictness_.assign(sites_.size(), Strictness::Full);
    few_bearings_.assign(sites_.size(), memo.is_quick() ? 1 : 0);
    std::set<std::int32_t> free;
    for (const PanelSite& site : sites_) free.insert(site.bits.begin(), site.bits.end());
    bits_settled_ = free.size() < bits_.size();
    options_.resize(sites_.size());
  }

  /// As it was printed, where that costs nothing; what is laid stays.
  void follow(const Layout& printed) { printed_ = &printed; }

  /// Only these values of the bits, from now on.
  void keep(const Layout& like) {
    for (const Bit& bit : bits_) {
      const auto& values = bit.of == Bit::Of::Corner ? like.arriving_through : like.entering_first;
      kept_.values.push_back(values[static_cast<std::size_t>(bit.index)]);
    }
    keeps_ = true;
  }

  Layout run() {
    std::size_t cases = 0;
    for (std::size_t s = 0; s < sites_.size(); ++s) {
      cases += bearing_sets(sites_[s], most_sets(s)).size() << (keeps_ ? 0 : sites_[s].bits.size());
    }
    memo_->share_quick_looks(cases);
    for (std::size_t s = 0; s < sites_.size(); ++s) open_site(s);
    for (;;) {
      const Assignment chosen = settle();
      if (!relax_stopped(chosen)) return place(chosen);
    }
  }

 private:
  [[nodiscard]] std::uint32_t values_of(std::size_t site, const Assignment& assignment) const {
    std::uint32_t values = 0;
    for (std::size_t i = 0; i < sites_[site].bits.size(); ++i) {
      values |= static_cast<std::uint32_t>(assignment.values[static_cast<std::size_t>(sites_[site].bits[i])]) << i;
    }
    return values;
  }
  [[nodiscard]] const Option& option(std::size_t site, const Assignment& assignment) const {
    return options_[site][values_of(site, assignment)];
  }

  /// The case of least value: what this option is chosen by.
  [[nodiscard]] std::size_t best_of(const Option& option) const {
    std::size_t best = 0;
    for (std::size_t i = 1; i < option.cases.size(); ++i) {
      if (option.value(i, order_) < option.value(best, order_)) best = i;
    }
    return best;
  }

  /// The best assignment, with every case that it rests on made final and no other.
  Assignment settle() {
    for (;;) {
      Assignment chosen = best_assignment(factors(&Assembly::value_of), bits_.size());
      bool refined = false;
      for (std::size_t s = 0; s < sites_.size(); ++s) {
        const Option& used = option(s, chosen);
        PanelCase& panel = *used.cases[best_of(used)];
        if (panel.known == PanelCase::Known::Final) continue;
        memo_->refine(panel);
        refined = true;
      }
      if (!refined) return chosen;
    }
  }

  /// That none of the bearings lays by these rules is proven, not only not found in time.
  static bool all_proven_stops(const Option& option) {
    return std::ranges::all_of(option.cases, [](const PanelCase* each) {
      return each->stop ? each->stop->proven : each->bound.is_impossible();
    });
  }

  /// What does not lay by the full rules may by the relaxed ones. Where the full rules were only searched until the
  /// room ran out, the answer is proven no more.
  bool relax_stopped(const Assignment& chosen) {
    bool again = false;
    for (std::size_t s = 0; s < sites_.size(); ++s) {
      const Option& used = option(s, chosen);
      const PanelCase& best = *used.cases[best_of(used)];
      const bool last = strictness_[s] == Strictness::ShortestPieces && is_within_a_corner(sites_[s].wall);
      const bool was_last = strictness_[s] == Strictness::Conceding || last;
      const bool not_further = memo_->when_out_of_room() == OutOfRoom::Stop && !memo_->is_quick() &&
                               strictness_[s] == Strictness::ShortestPieces;
      if (best.answer) continue;
      if (few_bearings_[s] != 0 && !sites_[s].one_piece.empty()) {
        few_bearings_[s] = 0;
        open_site(s);
        again = true;
        continue;
      }
      if (was_last || not_further) continue;
      if (!all_proven_stops(used)) {
        if (memo_->when_out_of_room() == OutOfRoom::Stop && !memo_->is_quick()) continue;
        relaxed_unproven_ = true;
      }
      const bool quickly = memo_->is_quick() && strictness_[s] == Strictness::Full;
      strictness_[s] =
          quickly ? Strictness::ShortestPieces : static_cast<Strictness>(static_cast<int>(strictness_[s]) + 1);
      open_site(s);
      again = true;
    }
    return again;
  }

  /// A wall shorter than the wall that it meets is thick: no unit of its own has a place, whatever is given up.
  [[nodiscard]] bool is_within_a_corner(std::int32_t wall) const {
    const auto& of = building_->walls[static_cast<std::size_t>(wall)];
    return std::ranges::any_of(building_->corners, [&](const Corner& corner) {
      if (corner.arriving != wall && corner.leaving != wall) return false;
      const std::int32_t other = corner.arriving == wall ? corner.leaving : corner.arriving;
      return of.actual < building_->series_of(building_->walls[static_cast<std::size_t>(other)]).thickness;
    });
  }

  /// How many bearings each of `lintels` may choose from, so that there are no more than `most` together.
  static std::size_t bearings_each(std::size_t lintels, std::size_t most) {
    std::size_t each = 1;
    const auto sets = [&](std::size_t choices) {
      std::size_t product = 1;
      for (std::size_t i = 0; i < lintels && product <= most; ++i) product *= choices;
      return product;
    };
    while (each < most && sets(each + 1) <= most) ++each;
    return each;
  }

  [[nodiscard]] std::vector<std::vector<Bearings>> bearing_sets(const PanelSite& site, std::size_t most) {
    std::vector<std::vector<Bearings>> sets{{}};
    const std::size_t each = bearings_each(site.one_piece.size(), most);
    for (const std::int32_t opening : site.one_piece) {
      std::vector<Bearings> choices = bearings_of(*building_, building_->openings[static_cast<std::size_t>(opening)]);
      if (choices.size() > each) {
        choices.resize(each);
        bearings_left_out_ = true;
      }
      std::vector<std::vector<Bearings>> longer;
      for (const auto& set : sets) {
        for (const Bearings& bearings : choices) {
          longer.push_back(set);
          longer.back().push_back(bearings);
        }
      }
      sets = std::move(longer);
    }
    return sets;
  }

  /// Half units that a lintel is longer than it must be (two each), and half units begun by which its ends differ
  /// (three each: equal ends are worth a half unit more, not two), count below cuts and short pieces and above what
  /// only shows: joints that shift, joints that are not j, and units (a longer lintel saves units, and is no better).
  [[nodiscard]] Key cost_of_lintels(const PanelSite& site, const std::vector<Bearings>& set) const {
    Charge charge;
    for (std::size_t i = 0; i < set.size(); ++i) {
      const ResolvedOpening& opening = building_->openings[static_cast<std::size_t>(site.one_piece[i])];
      const Length pitch = building_->series_of(building_->walls[static_cast<std::size_t>(site.wall)]).pitch();
      const Length more = set[i].start + set[i].end - opening.lintel->least_bearing * 2;
      const Length apart = magnitude(set[i].start - set[i].end);
      charge.lintels += 2 * static_cast<std::uint32_t>(more.whole_multiples(pitch)) -
                        3 * static_cast<std::uint32_t>((-apart).whole_multiples(pitch));
    }
    return key_of(charge, order_);
  }

  /// How many sets of bearings are tried.
  [[nodiscard]] std::size_t most_sets(std::size_t s) const {
    if (memo_->is_quick() && few_bearings_[s] != 0) return kFewBearingSets;
    return memo_->is_quick() || strictness_[s] == Strictness::Conceding ? kMostConcedingSets : kMostBearingSets;
  }

  void open_site(std::size_t s) {
    const PanelSite& site = sites_[s];
    std::vector<BearingSet> sets = sets_of(s);
    options_[s].assign(std::size_t{1} << site.bits.size(), Option{});
    for (std::uint32_t values = 0; values < options_[s].size(); ++values) {
      if (keeps_ && values != values_of(s, kept_)) continue;  // no choice
      fill(options_[s][values], s, values, sets);
    }
  }

  /// Of a conceding site all sets, the likeliest first: some of them bear on nothing, and only a few of the others are
  /// tried.
  [[nodiscard]] std::vector<BearingSet> sets_of(std::size_t s) {
    const bool concedes = strictness_[s] == Strictness::Conceding;
    std::vector<BearingSet> sets;
    for (auto& bearings : bearing_sets(sites_[s], concedes ? kMostBearingSets : most_sets(s))) {
      const Key cost = cost_of_lintels(sites_[s], bearings);
      sets.push_back({std::move(bearings), cost});
    }
    if (concedes) sort_stably(sets, {}, &BearingSet::cost);
    return sets;
  }

  void fill(Option& option, std::size_t s, std::uint32_t values, const std::vector<BearingSet>& sets) {
    const auto add = [&](const BearingSet& set, Panel panel) {
      option.bearings.push_back(set.bearings);
      option.lintels.push_back(set.cost);
      option.cases.push_back(&memo_->case_of(std::move(panel)));
    };
    const auto panel_with = [&](const BearingSet& set) {
      return panel_of(*building_, sites_[s], bits_, values, set.bearings, strictness_[s], printed_);
    };
    for (const BearingSet& set : sets) {
      if (option.cases.size() == most_sets(s)) {
        bearings_left_out_ = true;
        return;
      }
      Panel panel = panel_with(set);
      if (strictness_[s] != Strictness::Conceding || !bears_on_nothing(panel)) add(set, std::move(panel));
    }
    if (option.cases.empty()) add(sets.front(), panel_with(sets.front()));  // it stands for all of them
  }

  [[nodiscard]] Key value_of(const Option& option) const {
    return option.cases.empty() ? Key::impossible() : option.value(best_of(option), order_);
  }
  [[nodiscard]] Key bound_of(const Option& option) const {
    Key least = Key::impossible();
    for (std::size_t i = 0; i < option.cases.size(); ++i) least = std::min(least, option.bound(i));
    return least;
  }

  [[nodiscard]] std::vector<Factor> factors(Key (Assembly::*cost)(const Option&) const) const {
    std::vector<Factor> all;
    for (std::size_t s = 0; s < sites_.size(); ++s) {
      Factor factor{sites_[s].bits, {}};
      for (const Option& each : options_[s]) {
        const Key value = (this->*cost)(each);
        const std::uint64_t stopped = each.cases.empty() ? 2 * kStoppedWeight : kStoppedWeight;
        factor.costs.push_back(value.is_impossible() ? Key{{stopped, 0, 0, 0}} : value);
      }
      all.push_back(std::move(factor));
    }
    return all;
  }

  Layout place(const Assignment& chosen) {
    Layout layout;
    layout.arriving_through.assign(building_->corners.size(), 0);
    layout.entering_first.assign(building_->junctions.size(), 0);
    for (std::size_t i = 0; i < bits_.size(); ++i) {
      auto& values = bits_[i].of == Bit::Of::Corner ? layout.arriving_through : layout.entering_first;
      values[static_cast<std::size_t>(bits_[i].index)] = chosen.values[i];
    }
    std::vector<PlacedPanel> panels;
    Room naming(kLooksOfStops);
    Key total;
    for (std::size_t s = 0; s < sites_.size(); ++s) {
      const Option& used = option(s, chosen);
      const std::size_t best = best_of(used);
      const PanelCase& solved = *used.cases[best];
      PlacedPanel placed{
          &sites_[s],
          panel_of(*building_, sites_[s], bits_, values_of(s, chosen), used.bearings[best], strictness_[s], printed_),
          nullptr};
      if (solved.answer) {
        placed.answer = &*solved.answer;
        total = total + used.with_lintels(best, key_of(placed.answer->cost, order_));
        note_relaxed(s, placed, layout);
        for (std::size_t i = 0; i < sites_[s].one_piece.size(); ++i) {
          layout.lintels.push_back(
              PlacedLintel{sites_[s].one_piece[i], used.bearings[best][i].start, used.bearings[best][i].end});
        }
      } else {
        const PanelStop stop = located(placed.panel, *solved.stop, naming);
        layout.stopped.push_back(stop_of(*building_, sites_[s], placed.panel, stop));
      }
      panels.push_back(std::move(placed));
    }
    place_pieces(*building_, panels, layout);
    layout.conceded = concessions_of(panels);
    place_built_lintels(layout);
    layout.cost = cost_of(total, order_);
    layout.cost.extra_bars = place_bars(*building_, layout);
    for (const Concession& c : layout.conceded)
      layout.cost.conceded += c.what == Concession::What::BarSpacing ? weight_of(c.what) : 0;
    place_cleanouts(*building_, layout);
    name_bar_units(*building_, layout);
    prove(layout, chosen, total);
    return layout;
  }

  /// Where rules are given up, only what is really used of the milder relaxations is told.
  void note_relaxed(std::size_t s, const PlacedPanel& placed, Layout& layout) const {
    const bool concedes = strictness_[s] == Strictness::Conceding;
    bool shorter = false, cut_on_zone_row = false;
    for (std::size_t row = 0; concedes && row < placed.panel.rows.size(); ++row) {
      for (const std::vector<Chosen>& run : placed.answer->rows[row]) {
        for (const Chosen& piece : run) {
          shorter |= Length::nanometres(piece.length) < building_->least_piece;
          cut_on_zone_row |= piece.cut != CutEnd::None && !placed.panel.rows[row].uncut_zones.empty();
        }
      }
    }
    layout.relaxed_piece |= concedes ? shorter : strictness_[s] == Strictness::ShortestPieces;
    layout.relaxed_bearing |= concedes ? cut_on_zone_row : strictness_[s] != Strictness::Full;
  }

  /// Lintels built of units, as their pieces lie.
  void place_built_lintels(Layout& layout) const {
    for (std::size_t o = 0; o < building_->openings.size(); ++o) {
      const ResolvedOpening& opening = building_->openings[o];
      if (!opening.lintel || opening.lintel->make != LintelMake::BuiltUp) continue;
      const std::optional<Bearings> laid = bearings_as_laid(layout, opening);
      if (laid) layout.lintels.push_back(PlacedLintel{static_cast<std::int32_t>(o), laid->start, laid->end});
    }
    sort_stably(layout.lintels, {}, &PlacedLintel::opening);
  }

  /// Proven: no assignment's bound is less than what was found, and no more bars than the spacing alone needs.
  void prove(Layout& layout, const Assignment& chosen, const Key& total) const {
    const Assignment least = best_assignment(factors(&Assembly::bound_of), bits_.size());
    layout.least_possible = least.exact && !bits_settled_ ? cost_of(least.cost, order_) : Cost{};
    if (memo_->is_quick() || keeps_)
      layout.least_possible = Cost{};  // what is known of other choices depends on what was asked before
    layout.proven = layout.stopped.empty() && !memo_->is_quick() && !keeps_ && !relaxed_unproven_ &&
                    !bearings_left_out_ && !bits_settled_ && chosen.exact && least.exact && !(least.cost < total) &&
                    layout.cost.extra_bars == 0 && std::ranges::none_of(layout.conceded, [](const Concession& c) {
                      return c.what == Concession::What::BarSpacing;
                    });
    std::set<Length> lengths;
    for (const Piece& piece : layout.pieces) {
      if (piece.cut != CutEnd::None) lengths.insert(piece.length);
    }
    layout.cut_lengths = static_cast<std::int64_t>(lengths.size());
    layout.cut_lengths_at_least = std::min<std::int64_t>(layout.cut_lengths, 1);
  }

  const Building* building_;
  PanelMemo* memo_;
  std::vector<Bit> bits_;
  std::vector<PanelSite> sites_;
  Order order_ = Order::HalfBond;
  std::vector<Strictness> strictness_;
  std::vector<char> few_bearings_;  // by site: only the first are tried
  const Layout* printed_ = nullptr;
  bool relaxed_unproven_ = false, bearings_left_out_ = false, bits_settled_ = false, keeps_ = false;
  Assignment kept_;
  std::vector<std::vector<Option>> options_;  // by site, by values
};

}  // namespace

Layout lay_out(const Building& building, PanelMemo& memo) { return Assembly(building, memo).run(); }

Layout lay_out_like(const Layout& like, const Building& building, PanelMemo& memo) {
  const bool alike = like.arriving_through.size() == building.corners.size() &&
                     like.entering_first.size() == building.junctions.size();
  if (!alike) return lay_out(building, memo);
  Assembly assembly(building, memo);
  assembly.keep(like);
  Layout layout = assembly.run();
  return layout.stopped.empty() && layout.cost.conceded == 0 ? layout : lay_out(building, memo);
}

Layout lay_out_from(const Layout& printed, const Building& building, PanelMemo& memo) {
  const bool alike = printed.arriving_through.size() == building.corners.size() &&
                     printed.entering_first.size() == building.junctions.size();
  if (!alike) return lay_out(building, memo);
  Assembly assembly(building, memo);
  assembly.keep(printed);
  assembly.follow(printed);
  return assembly.run();
}

}  // namespace stringcourse::bond
