#pragma once
// Before the pour: kerfs on the batter boards, what the tape must read between the corners, and the square check.
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "job/job.hpp"
#include "walls/building.hpp"

namespace stringcourse::setout {

enum class KerfKind : std::uint8_t { FootingOutside, OuterFace, DowelLine, InnerFace, FootingInside };

/// Where a line crosses a board: from the board's outer end, the one away from the building.
struct Kerf {
  KerfKind kind = KerfKind::OuterFace;
  Length at;
};

/// The two boards of one side, one beyond each of its corners, across its line. Both carry the same kerfs.
struct SideBoards {
  std::int32_t wall = 0;
  Length beyond;  // the boards stand so far beyond the outer faces of the walls that the side meets
  std::vector<Kerf> kerfs;
};

/// Boards of all outer sides, as the job's `setting_out` asks; none where it asks for none.
[[nodiscard]] std::vector<SideBoards> boards_of(const Job& job, const Building& building);

/// What the tape must read from the outer corner point of one corner to that of another.
struct ExpectedTape {
  std::int32_t from = 0, to = 0;  // corners
  Length length;                  // to the nearest nanometre, exactly (integer square root)
  bool side = false;
};
/// Every pair of corners where there are at most eight; else sides, and corners two apart.
[[nodiscard]] std::vector<ExpectedTape> expected_tapes(const Building& building);

/// The nearest whole nanometre to sqrt(x^2 + y^2); a tie cannot be.
[[nodiscard]] Length straight_between(PlanPoint a, PlanPoint b);

/// The largest 3-4-5 triangle at a corner whose legs lie along its two sides and are no longer than `room`.
struct SquareCheck {
  std::int32_t corner = 0;
  Length leg_a, leg_b, hypotenuse;  // leg_a along the side that leaves the corner
  Length slip_costs;  // at the far end of the longer side, for the tape's finest step read wrong on the hypotenuse
};
/// Multiples are whole feet or 100 mm. At a slip dc on the hypotenuse c the corner is out by c dc / (a b) (derived),
/// and a side of length L leaves its place by L times that.
[[nodiscard]] std::vector<SquareCheck> square_checks(const Building& building, std::optional<Length> room);

}  // namespace stringcourse::setout
