#include "bond/assemble.hpp"

#include <algorithm>
#include <set>

#include "bond/elimination.hpp"
#include "bond/panel_site.hpp"
#include "bond/place.hpp"
#include "bond/stops.hpp"

namespace stringcourse::bond {
namespace {

/// What one set of values makes of a panel: the best over its lintels' bearings.
struct Option {
  std::vector<Bearings> bearings;
  const PanelMemo::Result* result = nullptr;
};

/// A stopped panel weighs more than any layout, so that the fewest panels stop.
constexpr std::uint64_t kStoppedWeight = std::uint64_t{1} << 48;
constexpr std::size_t kMostBearingSets = 4096;

class Assembly {
 public:
  Assembly(const Building& building, PanelMemo& memo)
      : building_(&building), memo_(&memo), bits_(bits_of(building)), sites_(sites_of(building, bits_)) {
    order_ = building.bond == BondWish::Quarter ? Order::QuarterBond : Order::HalfBond;
    strictness_.assign(sites_.size(), Strictness::Full);
    options_.resize(sites_.size());
  }

  Layout run() {
    for (std::size_t s = 0; s < sites_.size(); ++s) solve_site(s);
    Assignment chosen = best_assignment(factors(&PanelAnswer::cost), bits_.size());
    for (bool again = true; again;) {  // what does not lay by the full rules may by the relaxed ones
      again = false;
      for (std::size_t s = 0; s < sites_.size(); ++s) {
        if (*option(s, chosen).result || strictness_[s] == Strictness::ShortestPieces) continue;
        strictness_[s] = static_cast<Strictness>(static_cast<int>(strictness_[s]) + 1);
        solve_site(s);
        again = true;
      }
      if (again) chosen = best_assignment(factors(&PanelAnswer::cost), bits_.size());
    }
    return place(chosen);
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

  void solve_site(std::size_t s) {
    const PanelSite& site = sites_[s];
    std::vector<std::vector<Bearings>> sets{{}};
    for (const std::int32_t opening : site.one_piece) {
      std::vector<std::vector<Bearings>> longer;
      for (const auto& set : sets) {
        for (const Bearings& bearings : bearings_of(*building_, building_->openings[static_cast<std::size_t>(opening)])) {
          longer.push_back(set);
          longer.back().push_back(bearings);
        }
      }
      if (longer.size() > kMostBearingSets) longer.resize(kMostBearingSets);
      sets = std::move(longer);
    }
    options_[s].assign(std::size_t{1} << site.bits.size(), Option{});
    for (std::uint32_t values = 0; values < options_[s].size(); ++values) {
      Option& best = options_[s][values];
      for (const auto& set : sets) {
        const PanelMemo::Result& result = memo_->solve(panel_of(*building_, site, bits_, values, set, strictness_[s]));
        const bool better = best.result == nullptr || (result && (!*best.result || key_of(result->cost, order_) < key_of((*best.result)->cost, order_)));
        if (better) best = Option{set, &result};
      }
    }
  }

  [[nodiscard]] std::vector<Factor> factors(Cost PanelAnswer::* cost) const {
    std::vector<Factor> all;
    for (std::size_t s = 0; s < sites_.size(); ++s) {
      Factor factor{sites_[s].bits, {}};
      for (const Option& each : options_[s]) {
        factor.costs.push_back(*each.result ? key_of((**each.result).*cost, order_) : Key{{kStoppedWeight, 0, 0, 0}});
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
    Key total;
    for (std::size_t s = 0; s < sites_.size(); ++s) {
      const Option& used = option(s, chosen);
      PlacedPanel placed{&sites_[s], panel_of(*building_, sites_[s], bits_, values_of(s, chosen), used.bearings, strictness_[s]), nullptr};
      if (*used.result) {
        placed.answer = &**used.result;
        total = total + key_of(placed.answer->cost, order_);
        layout.relaxed_piece |= strictness_[s] == Strictness::ShortestPieces;
        layout.relaxed_bearing |= strictness_[s] != Strictness::Full;
        for (std::size_t i = 0; i < sites_[s].one_piece.size(); ++i) {
          layout.lintels.push_back(PlacedLintel{sites_[s].one_piece[i], used.bearings[i].start, used.bearings[i].end});
        }
      } else {
        layout.stopped.push_back(stop_of(*building_, sites_[s], placed.panel, used.result->error()));
      }
      panels.push_back(std::move(placed));
    }
    for (const ResolvedOpening& opening : building_->openings) {
      if (!opening.lintel || opening.lintel->make != LintelMake::BuiltUp) continue;
      layout.lintels.push_back(PlacedLintel{static_cast<std::int32_t>(&opening - building_->openings.data()),
                                            opening.lintel->least_bearing, opening.lintel->least_bearing});
    }
    std::ranges::sort(layout.lintels, {}, &PlacedLintel::opening);
    place_pieces(*building_, panels, layout);
    layout.cost = cost_of(total, order_);
    layout.cost.extra_bars = place_bars(*building_, layout);
    name_bar_units(*building_, layout);
    prove(layout, chosen, total);
    return layout;
  }

  /// Proven: no assignment's bound is less than what was found, and no more bars than the spacing alone needs.
  void prove(Layout& layout, const Assignment& chosen, const Key& total) const {
    const Assignment least = best_assignment(factors(&PanelAnswer::least_possible), bits_.size());
    layout.least_possible = least.exact ? cost_of(least.cost, order_) : Cost{};
    layout.proven = layout.stopped.empty() && chosen.exact && least.exact && !(least.cost < total) && layout.cost.extra_bars == 0;
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
  std::vector<std::vector<Option>> options_;  // by site, by values
};

}  // namespace

Layout lay_out(const Building& building, PanelMemo& memo) { return Assembly(building, memo).run(); }

}  // namespace stringcourse::bond
