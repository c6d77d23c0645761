#include "steel/dowel_search.hpp"

#include <algorithm>
#include <array>
#include <optional>

#include "bond/assemble.hpp"
#include "bond/panel_memo.hpp"
#include "measure/sorting.hpp"
#include "walls/resolve.hpp"

namespace stringcourse::steel {
namespace {

using Set = std::uint64_t;  // of candidates, one bit each
constexpr int kMostCandidates = 24;

/// What is best, in the order of the bond model.
using Terms = std::array<std::int64_t, 7>;
Terms terms_of(const Cost& cost, BondWish wish) {
  if (wish == BondWish::Quarter)
    return {cost.cuts,       cost.short_pieces,    cost.short_laps, cost.shifted_joints,
            cost.extra_bars, cost.joint_deviation, cost.units};
  return {cost.short_laps,      cost.cuts, cost.short_pieces, cost.shifted_joints, cost.extra_bars,
          cost.joint_deviation, cost.units};
}

struct Tried {
  DowelLayout result;
  Terms terms;
};

struct Search {
  const Job& job;
  const Layout& layout;
  const std::vector<bool>& counts;
  Length doubt;
  bond::PanelMemo* memo;
  int most;
  std::vector<std::string> standing, candidates;  // ids
  DowelSearch result;
};

int count_standing(const std::vector<FoundDowel>& found) {
  return static_cast<int>(
      std::ranges::count_if(found, [](const FoundDowel& dowel) { return dowel.action == Action::Stands; }));
}

/// The building laid with these kept; none where a run has no layout.
std::optional<Tried> lay_with(Search& search, std::vector<std::string> kept) {
  Job job = search.job;
  job.steel.kept_dowels = std::move(kept);
  ++search.result.tried;
  const auto building = resolve(job);
  if (!building) return std::nullopt;
  const Layout layout = bond::lay_out(*building, *search.memo);
  const bool gives_up_more = layout.cost.conceded > search.layout.cost.conceded;
  if (!layout.stopped.empty() || gives_up_more || (layout.relaxed_piece && !search.layout.relaxed_piece))
    return std::nullopt;
  const Cost &now = search.layout.cost, &then = layout.cost;
  Tried tried;
  tried.terms = terms_of(then, building->bond);
  tried.result.kept = std::move(job.steel.kept_dowels);
  tried.result.stands = count_standing(dowels_found(search.job, *building, layout, search.counts, search.doubt));
  tried.result.cuts = then.cuts - now.cuts, tried.result.short_laps = then.short_laps - now.short_laps;
  tried.result.bars =
      static_cast<std::int64_t>(layout.bars.size()) - static_cast<std::int64_t>(search.layout.bars.size());
  tried.result.proven = layout.proven;
  return tried;
}

std::optional<Tried> lay(Search& search, Set set) {
  std::vector<std::string> kept = search.standing;
  for (std::size_t k = 0; k < search.candidates.size(); ++k) {
    if ((set >> k & 1) != 0) kept.push_back(search.candidates[k]);
  }
  return lay_with(search, std::move(kept));
}

/// The ids of dowels that stand and of those that do not. Where those that stand cannot all be kept at their very
/// places, none of them is: what a layout makes of them is counted all the same.
void sort_out(Search& search, const std::vector<FoundDowel>& found) {
  for (const FoundDowel& dowel : found) {
    const std::string& id = search.job.readings[dowel.entry].id;
    if (dowel.action == Action::Stands) search.standing.push_back(id);
    else if (search.candidates.size() < kMostCandidates) search.candidates.push_back(id);
    else search.result.complete = false;
  }
  if (!search.candidates.empty() && !search.standing.empty() && !lay(search, 0)) search.standing.clear();
}

/// Candidates that cannot be kept even alone leave.
void drop_hopeless(Search& search, std::vector<Tried>& alone) {
  std::vector<std::string> hopeful;
  for (std::size_t k = 0; k < search.candidates.size(); ++k) {
    if (search.result.tried >= search.most) {
      search.result.complete = false;
      break;
    }
    auto tried = lay(search, Set{1} << k);
    if (!tried) continue;
    hopeful.push_back(search.candidates[k]);
    alone.push_back(*std::move(tried));
  }
  search.candidates = std::move(hopeful);
}

/// One after the other, as long as all of them lay: something that saves a good part even where sets are too many.
Set add_greedily(Search& search, std::vector<Tried>& all) {
  Set kept = 0;
  for (std::size_t k = 0; k < search.candidates.size() && search.result.tried < search.most; ++k) {
    const Set more = kept | Set{1} << k;
    if (kept == 0) {
      kept = more;
      continue;
    }  // alone it lays: drop_hopeless
    auto tried = lay(search, more);
    if (!tried) continue;
    all.push_back(*std::move(tried));
    kept = more;
  }
  return kept;
}

/// The next larger number with as many bits set (Gosper).
Set next_of_size(Set set) {
  const Set low = set & (~set + 1), up = set + low;
  return up | (((set ^ up) / low) >> 2);
}

/// Every set of two and more but `done`, the larger first.
void try_sets(Search& search, std::vector<Tried>& all, Set done) {
  const int count = static_cast<int>(search.candidates.size());
  for (int size = count; size >= 2; --size) {
    for (Set set = (Set{1} << size) - 1; set < Set{1} << count; set = next_of_size(set)) {
      if (set == done) continue;
      if (search.result.tried >= search.most) {
        search.result.complete = false;
        return;
      }
      if (auto tried = lay(search, set)) all.push_back(*std::move(tried));
    }
  }
}

bool saves_more(const Tried& a, const Tried& b) {
  return a.result.stands != b.result.stands ? a.result.stands > b.result.stands : a.terms < b.terms;
}

/// The best of each number saved, as long as saving fewer is cheaper.
void keep_best(Search& search, std::vector<Tried> all) {
  sort_stably(all, saves_more);
  const Tried* last = nullptr;
  for (Tried& one : all) {
    if (one.result.stands <= search.result.stands || (last != nullptr && !(one.terms < last->terms))) continue;
    if (last != nullptr && one.result.stands == search.result.layouts.back().stands) continue;
    search.result.layouts.push_back(one.result);
    last = &one;
  }
}

/// What the layouts offered cost when there is more room to find out.
void price(Search& search, std::int64_t budget) {
  bond::PanelMemo memo(budget);
  search.memo = &memo;
  const std::vector<DowelLayout> offered = std::move(search.result.layouts);
  search.result.layouts.clear();
  std::vector<Tried> all;
  const int tried = search.result.tried;
  for (const DowelLayout& one : offered) {
    if (auto priced = lay_with(search, one.kept)) all.push_back(*std::move(priced));
  }
  search.result.tried = tried;
  keep_best(search, std::move(all));
}

}  // namespace

DowelSearch search_dowels(const Job& job, const Layout& layout, const std::vector<FoundDowel>& found,
                          const std::vector<bool>& counts, Length doubt, const DowelSearchRoom& room) {
  bond::PanelMemo memo(room.search);
  Search search{job, layout, counts, doubt, &memo, room.layouts, {}, {}, {}};
  search.result.found = static_cast<int>(found.size()), search.result.stands = count_standing(found);
  if (search.result.stands == search.result.found || !layout.stopped.empty()) return search.result;
  sort_out(search, found);
  std::vector<Tried> all;
  drop_hopeless(search, all);
  const Set done = add_greedily(search, all);
  try_sets(search, all, done);
  keep_best(search, std::move(all));
  if (room.price > room.search) price(search, room.price);
  return search.result;
}

Fact dowel_layout_said(const DowelLayout& layout) {
  std::vector<Fact> cost;
  const auto add = [&](std::int64_t count, std::string_view more, std::string_view fewer) {
    if (count > 0) cost.push_back(fact(more, {count}));
    if (count < 0) cost.push_back(fact(fewer, {-count}));
  };
  add(layout.cuts, "cuts-more", "cuts-fewer");
  add(layout.short_laps, "short-laps-more", "short-laps-fewer");
  add(layout.bars, "bars-more", "bars-fewer");
  return cost.empty() ? fact("dowel-layout-free", {layout.stands})
                      : fact("dowel-layout", {layout.stands, listed(FactValue::Kind::Commas, cost)});
}

}  // namespace stringcourse::steel
