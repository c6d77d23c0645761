#pragma once
// What has to be on the site: units by kind, corner sets' parts, lintels, bars. Counted from the placed pieces alone,
// so a corner's unit counts once, on the wall that runs through it.
#include <cstdint>
#include <string>
#include <vector>

#include "bond/layout.hpp"
#include "walls/building.hpp"

namespace stringcourse::supply {

/// Pieces of one kind of one series.
struct UnitCount {
  std::int32_t series = 0;
  UnitKind kind = UnitKind::Full;
  std::int64_t whole = 0;   // laid as they come
  std::int64_t pieces = 0;  // saw cuts laid that were cut from this kind
  friend bool operator==(const UnitCount&, const UnitCount&) = default;
};

/// Cut pieces of one length.
struct CutCount {
  std::int32_t series = 0;
  UnitKind from = UnitKind::Full;
  Length length;
  std::int64_t pieces = 0;
  friend bool operator==(const CutCount&, const CutCount&) = default;
};

struct Counts {
  std::vector<UnitCount> units;  // by series, then kind
  std::vector<CutCount> cuts;    // by series, kind, longest first
  std::int64_t pieces = 0;       // all pieces laid
};

/// Counts of the whole building.
[[nodiscard]] Counts count_units(const Building& building, const Layout& layout);
/// Counts of one wall: the pieces that stand on its line.
[[nodiscard]] Counts count_units_of_wall(const Building& building, const Layout& layout, int wall);

/// `percent` hundredths of `count`, rounded up: whole units are bought.
[[nodiscard]] constexpr std::int64_t spare_units(std::int64_t count, int percent) {
  return (count * percent + 99) / 100;
}

/// Units to buy. A unit yields two cuts only if both keep a factory end and their lengths and one saw kerf fit into it;
/// anything else is cut from a unit of its own.
struct Purchase {
  std::int32_t series = 0;
  UnitKind kind = UnitKind::Full;
  std::int64_t whole = 0;    // laid as they come
  std::int64_t for_saw = 0;  // go to the saw
  std::int64_t spare = 0;    // for breakage, by Building::breakage
  std::int64_t to_buy() const { return whole + for_saw + spare; }
};
[[nodiscard]] std::vector<Purchase> units_to_buy(const Building& building, const Layout& layout);

/// What is done to a part of a corner set before it is laid: no set is made for beams or half-high.
enum class PartWork { AsBought, WebsCutDown, SawnHalfHigh };

/// A part of the corner sets: "L-corner unit", or "8 in unit" and "4 in filler". Counted corner by corner, course by
/// course.
struct PartCount {
  std::int32_t series = 0;
  Fact part;
  PartWork work = PartWork::AsBought;
  std::int64_t count = 0;  // laid
  std::int64_t spare = 0;  // for breakage
  std::int64_t to_buy() const { return count + spare; }
  friend bool operator==(const PartCount&, const PartCount&) = default;
};
[[nodiscard]] std::vector<PartCount> corner_set_parts(const Building& building, const Layout& layout);

/// One-piece lintels of one length (opening and both bearings) and depth in courses.
struct LintelCount {
  Length length;
  std::int32_t courses = 1;
  std::int64_t count = 0;
  friend bool operator==(const LintelCount&, const LintelCount&) = default;
};
[[nodiscard]] std::vector<LintelCount> one_piece_lintels(const Building& building, const Layout& layout);

/// Upright bars. Length is that of the courses they pass, bed to top: no laps, no dowels, no hooks.
struct BarCount {
  std::string size;
  std::int64_t bars = 0;
  Length total;
};
/// Cleanouts: one for every bar of each pour that asks for them, corner units included.
struct CleanoutCount {
  std::int64_t bought = 0;  // in cleanout units, one in each
  std::int64_t cut = 0;     // cut into units of other kinds, or a second one into a cleanout unit
  std::int64_t all() const { return bought + cut; }
  friend bool operator==(const CleanoutCount&, const CleanoutCount&) = default;
};
[[nodiscard]] CleanoutCount count_cleanouts(const Building& building, const Layout& layout);

/// A corner's bar counts once, whichever walls list it. Without bars: 0 of size "".
[[nodiscard]] BarCount count_bars(const Building& building, const Layout& layout);

}  // namespace stringcourse::supply
