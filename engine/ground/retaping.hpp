#pragma once
// Readings that do not fit: which one is wrong, or, where that cannot be told, which line to tape again first.
#include <expected>
#include <vector>

#include "ground/tape_network.hpp"

namespace stringcourse::ground {

/// Above this a standardised residual is a blunder's: one right reading in a thousand is suspected wrongly.
/// SOURCE: two-sided normal 0.001, as used in data snooping (common practice).
inline constexpr double kBlunderLimit = 3.2905;

enum class Suspicion {
  None,          // every reading fits
  Located,       // the readings named are wrong; without them the rest fits
  NotLocatable,  // something is wrong, and no reading sticks out from those that check it
};

struct Suspects {
  Suspicion suspicion = Suspicion::None;
  std::vector<int> wrong;       // Located: in the order in which they were found
  std::vector<int> tape_again;  // NotLocatable: the line to tape first stands first
  Adjusted adjusted;            // Located: without the wrong readings (their residuals are those they would have)
};

/// More wrong readings than so many are not looked for (this program's limit): then none is named for certain.
inline constexpr std::size_t kMostWrong = 20;

/// Takes out the reading with the largest standardised residual while it is above the limit, then tries to put each
/// back. A reading is named only if the rest, without it, is still checked by something, and if no other one that is
/// nearly as likely (100 to 1: squares of the standardised residuals within 2 ln 100) would do as well. Else nothing is
/// named, and those that would do are to be taped again, each line once, in the order of their corrections |v|: with
/// readings alike it is the order of length, and a reading with more doubt of its own comes sooner. A line whose second
/// taping agrees with its first is left out of that list, unless all are such.
[[nodiscard]] std::expected<Suspects, NetTrouble> suspects_of(const std::vector<NetPoint>& points,
                                                              const std::vector<NetReading>& readings, Datum datum);

/// Whether a second taping of a line agrees with the first: their difference within kBlunderLimit times its doubt.
[[nodiscard]] bool tapings_agree(const NetReading& first, const NetReading& second);

}  // namespace stringcourse::ground
