#pragma once
// Panels of a building: which stretch of which wall, which choices (bits) they hang on, and the bond problem that each
// set of choices makes of them.
#include <cstdint>
#include <vector>

#include "bond/layout.hpp"
#include "bond/panel.hpp"
#include "walls/building.hpp"

namespace stringcourse::bond {

/// One yes-or-no choice of the whole building.
/// Corner: the arriving wall runs through in odd courses. Junction (lapped): the abutting wall enters in odd courses.
struct Bit {
  enum class Of { Corner, Junction } of = Of::Corner;
  std::int32_t index = 0;
};

/// Bearings of a lintel: towards the wall's start and towards its end.
struct Bearings {
  Length start, end;
};

/// A stretch of one wall between control joints and its ends.
struct PanelSite {
  std::int32_t wall = 0;
  std::int64_t from = 0, to = 0;              // actual faces, without what corners add
  bool from_joint = false, to_joint = false;  // ends at a control joint
  std::vector<std::int32_t> bits;             // into the building's list of bits, ascending
  std::vector<std::int32_t> openings;         // in it, by place
  std::vector<std::int32_t> slots;            // lapped junctions on it
  std::vector<std::int32_t> one_piece;        // openings with one-piece lintels
};

/// What rule 2 and rule 6 give way to where nothing else lays; and, last, any rule at its weight (concessions.hpp).
enum class Strictness { Full, CelledCutsUnderBearings, ShortestPieces, Conceding };

[[nodiscard]] std::vector<Bit> bits_of(const Building& building);
/// Where very many walls lap into few panels, some of the bits are settled: in no site's list (docs/bond-model.md).
[[nodiscard]] std::vector<PanelSite> sites_of(const Building& building, const std::vector<Bit>& bits);

/// The bearings that a one-piece lintel may have (rule 6), the whole length the least number of half-unit pitches less
/// a joint, or one or two more: equal ends first, then an end where a unit of the half-unit grid would end, then the
/// least at one end. A row beside the lintel closes best at one of these: anywhere else both sides of it want a cut.
[[nodiscard]] std::vector<Bearings> bearings_of(const Building& building, const ResolvedOpening& opening);

/// The bond problem of one site. `values` are the site's bits in order; `bearings` one for each of site.one_piece.
/// `printed`: a layout of the same building before it was changed a little; courses that Building::laid_to says are
/// laid keep its pieces, others are asked to be like it where that costs nothing. Places are measured from site.from,
/// so that equal panels anywhere are equal problems.
[[nodiscard]] Panel panel_of(const Building& building, const PanelSite& site, const std::vector<Bit>& bits,
                             std::uint32_t values, const std::vector<Bearings>& bearings, Strictness strictness,
                             const Layout* printed = nullptr);

}  // namespace stringcourse::bond
