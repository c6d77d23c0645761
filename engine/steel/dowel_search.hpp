#pragma once
// Another layout that saves dowels which miss their cells: the bond solved anew with bars where the dowels were found.
#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

#include "bond/layout.hpp"
#include "steel/dowels.hpp"

namespace stringcourse::steel {

/// A layout of the whole building in which more dowels stand.
struct DowelLayout {
  std::vector<std::string> kept;                    // ids for Steel::kept_dowels; the job with these is laid so
  int stands = 0;                                   // of the dowels found, how many stand in it
  std::int64_t cuts = 0, short_laps = 0, bars = 0;  // more than in the layout as it is; below zero: fewer
  bool proven = false;                              // its cost is the least with these kept
};

struct DowelSearch {
  int stands = 0, found = 0;         // in the layout as it is
  std::vector<DowelLayout> layouts;  // the one that saves most first; each later one saves fewer and costs less
  bool complete = true;              // false: there were more sets of dowels than were tried
  int tried = 0;                     // layouts solved
};

/// Where layouts are looked for, and where those that are offered are priced.
struct DowelSearchRoom {
  std::int64_t search = 500;  // budget of each panel (bond::PanelMemo); below kLeastSearch a layout may be overlooked
  std::int64_t price = 20'000;
  int layouts = 60;  // solved at most in the search
};

/// All sets of the dowels that do not stand, the larger first, each with those that do: kept, the bond is solved with
/// them (bars through whole cells of every course, rule 5 of the bond model). One that cannot be kept alone is in no
/// set. Among sets of one size the least cost counts, in the order of the bond model.
[[nodiscard]] DowelSearch search_dowels(const Job& job, const Layout& layout, const std::vector<FoundDowel>& found,
                                        const std::vector<bool>& counts, Length doubt,
                                        const DowelSearchRoom& room = {});

/// "5 stand: 2 cuts more".
[[nodiscard]] Fact dowel_layout_said(const DowelLayout& layout);

}  // namespace stringcourse::steel
