#pragma once
// Bars as the pieces that they are cut to: dowels, upright bars from lap to lap, bars along beams and lintels, corner
// bars. Lengths hang on the lap rule that the job names; where it names none there are no pieces, only what each rule
// would come to.
#include <cstdint>
#include <string>
#include <vector>

#include "bond/layout.hpp"
#include "job/enum_names.hpp"
#include "job/job.hpp"
#include "steel/laps.hpp"
#include "walls/building.hpp"

namespace stringcourse::steel {

enum class BarUse : std::uint8_t { Dowel, Upright, Lintel, Beam, Corner };

/// One bar to be cut.
struct BarPiece {
  BarUse use = BarUse::Upright;
  std::int32_t mark = 0;  // index into BarPieces::marks
  std::int32_t wall = 0;  // Corner: the wall that arrives there
  std::int32_t bar = -1;  // Dowel, Upright: into Layout::bars
  std::int32_t corner = -1, opening = -1;
  std::int32_t beside = 1;                         // which of those side by side, from 1
  std::int32_t first_course = 1, last_course = 1;  // that it reaches into
  Length from, to;  // upright: heights of its ends from the datum. Along the wall: places. Corner: the leg along `wall`
  Length lap;       // shared with the next piece, upwards or towards the wall's end; Corner: with each wall's bars
  /// Of all its legs. Dowel: of what stands over the bearing alone; what is below is as the drawings say.
  [[nodiscard]] Length length() const { return use == BarUse::Corner ? (to - from) * 2 : to - from; }
};

/// Pieces alike: cut and tied up together.
struct BarMark {
  BarUse use = BarUse::Upright;
  std::string size;
  Length length;  // see BarPiece::length
  std::int32_t count = 0;
  friend bool operator==(const BarMark&, const BarMark&) = default;
};

/// All that is cut of one size; dowels are not in it, their lower part not being known.
struct BarTotal {
  std::string size;
  std::int32_t count = 0;
  Length length;
  std::int64_t grams = 0;  // rounded
};

/// What the rules come to for the bar of its kind that has least masonry round it.
struct LapTable {
  BarUse use = BarUse::Upright;
  std::string size;
  std::int32_t wall = -1;  // that it stands in; beams and lintels: -1
  Length clear;            // see LapOf
  std::vector<LapChoice> choices;
};

/// What the job does not say, so that pieces of some use are not listed.
struct Unsaid {
  Fact says;
  std::string place;  // JSON pointer of the field
};

/// A length, and whether the job says it; else it is assumed.
struct StatedOr {
  Length length;
  bool stated = false;
};

struct BarPieces {
  StatedOr stock, end_cover, kerf;
  std::vector<BarPiece> pieces;  // by use, wall, course, place
  std::vector<BarMark> marks;    // by use, size; longest first
  std::vector<BarTotal> totals;  // by size
  std::vector<LapTable> laps;
  std::vector<Unsaid> unsaid;
  std::vector<Finding> findings;
};

/// Of the layout as it is to stand.
[[nodiscard]] BarPieces bar_pieces(const Job& job, const Building& building, const Layout& layout);

}  // namespace stringcourse::steel

namespace stringcourse {
template <>
inline constexpr std::array<std::string_view, 5> kEnumNames<steel::BarUse>{"dowel", "upright", "lintel", "beam",
                                                                           "corner"};
}
