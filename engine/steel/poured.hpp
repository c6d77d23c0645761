#pragma once
// Dowels that stand in the concrete, against the layout as it is now: they stay where they were poured, whatever is
// laid otherwise afterwards.
#include <optional>
#include <vector>

#include "steel/dowels.hpp"

namespace stringcourse::steel {

/// A poured dowel, where it was found, and where the bar that it is for comes down now.
struct DowelNow {
  std::size_t dowel = 0;        // index into the list as poured
  std::optional<Length> found;  // along, as last read; none: not read
  std::optional<Length>
      bar;  // along, of the nearest bar of its wall within rule "bar-place" of where it stands; none: no bar
};

struct DowelsNow {
  std::vector<DowelNow> dowels;                  // by dowel as poured
  std::vector<Dowel> without;                    // bars of the layout now that no poured dowel is for
  std::vector<std::optional<std::size_t>> read;  // by dowel found: which of those poured it is
};

/// `poured` is the list as it was poured, `now` the list of the layout as it is now, both by wall, then along it.
/// `found` as judged against the layout now.
[[nodiscard]] DowelsNow dowels_now(const std::vector<Dowel>& poured, const std::vector<Dowel>& now,
                                   const std::vector<FoundDowel>& found);

}  // namespace stringcourse::steel
