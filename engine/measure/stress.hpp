#pragma once
// Stresses as people write them, kept exact.
#include <cstdint>
#include <optional>
#include <string_view>

namespace stringcourse {

/// A stress as a whole number of parts so small that both a pound on a square inch and a thousandth of a megapascal are
/// whole: 1 lbf = 4.4482216152605 N and 1 sq in = 645.16 sq mm, both exact.
struct Stress {
  std::int64_t parts = 0;
  static constexpr std::int64_t kPerPsi = 8'896'443'230'521, kPerMegapascal = 1'290'320'000'000'000;
  [[nodiscard]] static constexpr Stress psi(std::int64_t count) { return {count * kPerPsi}; }
  friend constexpr auto operator<=>(const Stress&, const Stress&) = default;
};
static_assert(static_cast<__int128>(Stress::kPerPsi) * 6'451'600'000'000'000 ==
              static_cast<__int128>(Stress::kPerMegapascal) * 44'482'216'152'605);

/// "1500 psi", "1.5 ksi", "10.3 MPa", "10.3 N/mm2", with at most three digits behind the point, and none of a psi. None
/// for anything else, for nothing or less, and above 200,000 psi.
[[nodiscard]] std::optional<Stress> read_stress(std::string_view text);

}  // namespace stringcourse
