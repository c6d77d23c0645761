#pragma once
// Questions that all who read a layout ask of it: which runs, which pieces, where they end, which bars stand in a wall.
#include <cstdint>
#include <span>
#include <string>
#include <vector>

#include "bond/layout.hpp"
#include "walls/building.hpp"

namespace stringcourse::bond {

/// The pieces of one run, from the wall's start.
[[nodiscard]] std::span<const Piece> pieces_of(const Layout& layout, const Run& run);
/// The runs of one wall in one course, from the wall's start. Relies on the layout's order (wall, course, start).
[[nodiscard]] std::span<const Run> runs_in(const Layout& layout, int wall, int course);
/// Runs of one wall in courses `first` to `last`, by course, then start.
[[nodiscard]] std::span<const Run> runs_of_courses(const Layout& layout, int wall, int first, int last);
/// All runs of one wall, by course, then start.
[[nodiscard]] std::span<const Run> runs_of_wall(const Layout& layout, int wall);

/// Where a piece's far end comes, exactly.
[[nodiscard]] constexpr ExactPosition far_end(const Piece& piece) {
  return {piece.start.numerator + piece.length.in_nanometres() * piece.start.denominator, piece.start.denominator};
}
[[nodiscard]] constexpr bool is_saw_cut(const Piece& piece) { return piece.cut != CutEnd::None; }

/// Actual length that a kind is bought at: a full unit's or a half unit's.
[[nodiscard]] Length bought_length(const Series& series, UnitKind kind);

/// The cells that a piece has whole, from its start face as it lies. A saw cut keeps those that the saw leaves. A
/// corner set's are those of its long unit.
[[nodiscard]] std::vector<CellSpan> cells_of(const Series& series, const Piece& piece);

/// "AB-3-7": side, course, number of the piece along its wall. What is chalked on the piece and printed in lists.
[[nodiscard]] std::string piece_name(const Building& building, const Run& run, const Piece& piece);

/// A bar as it is met on one wall. A corner's bar is met on both walls that share it.
struct WallBar {
  Length centre;  // along this wall
  BarReason reason = BarReason::Spaced;
  std::int32_t first_course = 1, last_course = 1;
  bool shared = false;       // listed on the other wall of the corner: count it there
  Length off_face = {};      // centre, in from this wall's outer face
  std::int32_t corner = -1;  // in whose units' cell it stands
  friend bool operator==(const WallBar&, const WallBar&) = default;
};
/// All bars that stand in a wall, in order along it, corner bars of its neighbours included.
[[nodiscard]] std::vector<WallBar> bars_on_wall(const Building& building, const Layout& layout, int wall);
/// Those of `bars`, which are in order along their wall, that stand between two places, both included.
[[nodiscard]] std::span<const WallBar> bars_between(std::span<const WallBar> bars, Length from, Length to);

/// A place in plan as a wall sees it.
struct SeenFrom {
  Length along, depth;
};
[[nodiscard]] SeenFrom seen_from(const Wall& wall, PlanPoint point);

/// How far the masonry of a wall reaches along its own line: past a re-entrant corner it reaches beyond 0 or `actual`.
struct WallReach {
  Length from, to;
};
[[nodiscard]] WallReach reach_of_wall(const Building& building, const Layout& layout, int wall);

}  // namespace stringcourse::bond
