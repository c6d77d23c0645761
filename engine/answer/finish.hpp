#pragma once
// The chance of being done by a date: the programme drawn ten thousand times with a pace that nobody knows for sure.
#include <cstdint>
#include <optional>
#include <vector>

#include "measure/date.hpp"
#include "measure/fact.hpp"

namespace stringcourse {

struct Answer;

/// So many of the programmes drawn are done by the end of this day.
struct DoneBy {
  std::int64_t day = 1;  // its number in the programme
  Date date;
  std::int64_t programmes = 0;
};

/// Where the figures of how unsure times are come from.
enum class UnsureBy : std::uint8_t { Assumed, Log, Stated };

struct FinishChance {
  std::int64_t programmes = 10'000;
  Date by;
  std::int64_t done = 0;               // of them, by then
  std::int64_t spread = 0, doubt = 0;  // hundredths: of one work, of the pace (supply::Unsure)
  UnsureBy spread_by = UnsureBy::Assumed, doubt_by = UnsureBy::Assumed;
  std::vector<DoneBy> days = {};  // from the first on which one is done to the first on which all are
};

/// Only where the job says by when it is to be done, and its first day. Lost days (weather, deliveries) are not drawn.
[[nodiscard]] std::optional<FinishChance> finish_chance(const Answer& answer);

/// The first day by which so many hundredths of the programmes are done.
[[nodiscard]] const DoneBy& done_for(const FinishChance& chance, std::int64_t hundredths);
/// "Done by 2027-07-02 in 7312 of 10000 programmes drawn; half are done by 2027-06-29, nine in ten by 2027-07-08".
[[nodiscard]] Fact finish_said(const FinishChance& chance);
/// "Drawn with each piece of work 25 % off (assumed) and the pace 30 % off (assumed); lost days come on top"
[[nodiscard]] Fact unsure_said(const FinishChance& chance);

}  // namespace stringcourse
