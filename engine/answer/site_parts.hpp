#pragma once
// What is told of the site is put together from. Internal to answer/.
#include "answer/programme_parts.hpp"

namespace stringcourse::siting {

/// Pieces in the order in which they are laid: what the log says is laid, then as the programme has it.
[[nodiscard]] std::vector<std::uint32_t> laying_order(const Answer& answer);
/// The day on which something is done by that minute of the programme.
[[nodiscard]] PlannedDay day_by(const Programme& programme, std::int64_t minute);
/// The day on which the work of a hold point begins; the first one ahead where it has begun.
[[nodiscard]] PlannedDay day_of_point(const Programme& programme, HoldPoint point);
/// Of which pieces an article is the units.
struct UnitsOf {
  std::int32_t series = 0;
  UnitKind kind = UnitKind::Full;
  [[nodiscard]] bool has(const Wall& wall, const Piece& piece) const {
    return wall.series == series && piece.kind == kind;
  }
};
/// None: no units, or parts of them.
[[nodiscard]] std::optional<UnitsOf> units_of(const Answer& answer, const Article& article);

[[nodiscard]] std::vector<RunsOut> short_of(const Answer& answer);
[[nodiscard]] std::vector<Drop> drops_of(const Answer& answer);
[[nodiscard]] std::optional<PalletPlan> pallets_of(const Answer& answer);

}  // namespace stringcourse::siting
