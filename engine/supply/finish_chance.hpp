#pragma once
// When work that hangs on other work may be done, if nobody knows how fast it goes: the network is run through many
// times, each work drawn longer or shorter. Whole numbers only: every machine draws the same.
#include <cstdint>
#include <optional>
#include <span>
#include <vector>

#include "supply/task_network.hpp"

namespace stringcourse::supply {

/// How unsure times are, each a standard deviation in hundredths of the time. A drawn deviation never passes three of
/// them, so that at most 33 keeps every time above zero.
struct Unsure {
  std::int64_t each = 0;  // of one work, apart from all others
  std::int64_t all = 0;   // of the pace: one draw for all works of a run
};
inline constexpr std::int64_t kMostUnsure = 33;

/// Drawn times are in thousandths of a minute.
inline constexpr std::int64_t kTicks = 1'000;

/// A deviation with mean 0 and a standard deviation of 1 in 65536ths: the sum of three uniform numbers of 16 bits,
/// twice and centred. Its variance is 2^32 - 1, its ends are 196605 either way.
[[nodiscard]] std::int64_t drawn_deviation(std::uint64_t& state);

/// `ticks`, longer by `hundredths` of it for each standard deviation drawn; rounded to the nearest tick.
[[nodiscard]] std::int64_t drawn_time(std::int64_t ticks, std::int64_t hundredths, std::int64_t deviation);

/// The end of each of `runs` runs, in ticks, in the order drawn. Waits keep their time; works of `paced` (by work) have
/// both deviations, others their own alone. None where links go round or name no work. `day`: minutes of one, above
/// zero; the same seed gives the same ends.
[[nodiscard]] std::optional<std::vector<std::int64_t>> drawn_ends(std::span<const Work> works,
                                                                  std::span<const Link> links,
                                                                  const std::vector<bool>& paced, std::int64_t day,
                                                                  Unsure unsure, int runs, std::uint64_t seed);

}  // namespace stringcourse::supply
