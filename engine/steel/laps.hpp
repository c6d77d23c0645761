#pragma once
// How long bars lap, by published rules; exact, and rounded up to the step of the tape.
#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

#include "catalogue/series.hpp"
#include "job/job.hpp"
#include "measure/length.hpp"
#include "measure/notation.hpp"
#include "measure/stress.hpp"

namespace stringcourse::steel {

/// A lap rule with its values.
struct LapBy {
  LapRule rule = LapRule::AsDrawn;
  std::optional<Stress> masonry, steel;
  std::optional<Length> length;  // AsDrawn
};
/// As the job states it; its texts have been read before.
[[nodiscard]] LapBy lap_by(const Lap& lap);

/// A value that a rule lacks; the pattern's name in words/.
[[nodiscard]] std::string_view lap_lacks(const LapBy& by);

/// The bar, and how much masonry or grout is round it: the least of its cover (masonry outside it, to the nearest face
/// or end) and the clear distance to the bars lapped beside it.
struct LapOf {
  const Bar& bar;
  Length clear;
};

/// The rule's lap: the least whole step of the tape that is no shorter. None where the rule lacks a value.
/// TMS 402: 0.13 db^2 fy gamma / (K sqrt f'm) in inches and psi, K the least of `clear` and 5 db (editions to 2008) or
/// 9 db (from 2011), and 12 in at least. Florida 2017: the same with its own gammas and 5 db, from 40 db to 72 db. IBC:
/// 0.002 db fs, at least 12 in and 40 db. SOURCES: rules "lap-...".
[[nodiscard]] std::optional<Length> lap_length(const LapBy& by, const LapOf& of, Tape tape);

/// The rule's id in the catalogue.
[[nodiscard]] std::string_view lap_rule_id(LapRule rule);

/// What a rule gives for one bar.
struct LapChoice {
  LapBy by;
  Length length;
};
/// Every rule that gives a length, in the order of LapRule; IBC at 24,000 and 32,000 psi unless its stress is stated.
/// f'm and yield strength as stated with the job's rule, else 1500 psi and 60,000 psi: assumed, and to be said so.
[[nodiscard]] std::vector<LapChoice> lap_choices(const std::optional<Lap>& stated, const LapOf& of, Tape tape);

/// What is assumed of masonry and bars where the job does not say it.
inline constexpr Stress kAssumedMasonry = Stress::psi(1'500), kAssumedSteel = Stress::psi(60'000);

}  // namespace stringcourse::steel
