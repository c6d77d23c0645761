#pragma once
// What the makers of bar pieces share. Internal to steel/.
#include <optional>
#include <vector>

#include "steel/bar_pieces.hpp"

namespace stringcourse::steel {

/// A job's answers to what all pieces ask.
struct BarRoom {
  const Job& job;
  const Building& building;
  const Layout& layout;
  Length step, stock, cover;  // of the tape; whole steps
  std::optional<LapBy> by;    // a rule with all that it needs
};

[[nodiscard]] inline Length down_to_step(Length length, Length step) { return step * length.whole_multiples(step); }
[[nodiscard]] inline Length up_to_step(Length length, Length step) { return -down_to_step(-length, step); }

/// The top of course `course`, and what a course stands on: the top of the one below, or the bearing.

/// What is clear round each bar of the layout, see LapOf: to the faces of its wall, to the ends of the masonry that it
/// stands in in any of its courses, and to the bars beside it, each lapped.
[[nodiscard]] std::vector<Length> clear_round_bars(const Building& building, const Layout& layout);
/// Round bars side by side in a trough, against whose shells they stand with the grout's clearance; one alone is in the
/// middle. The least of all walls that bars lie along.
[[nodiscard]] Length clear_in_trough(const Building& building, const Bar& bar, int count);

/// How many bars lie side by side in the narrowest trough, with the grout's clearance to its shells and rule
/// "bar-apart" between them; 0: not even one.
[[nodiscard]] int most_abreast(const Building& building, const Bar& bar);

/// Dowels and upright bars; none without a lap for them.
void add_uprights(std::vector<BarPiece>& pieces, const BarRoom& room, const std::vector<Length>& clear);
/// Bars along lintels, along beams, and round corners.
void add_level_bars(BarPieces& bars, const BarRoom& room);

/// Findings about what was made.
void find_bar_troubles(BarPieces& bars, const BarRoom& room);

}  // namespace stringcourse::steel
