#pragma once
// Which pieces make up a lintel built of units. One rule for kinds, bearings, counts and drawings: a piece belongs to
// it where it stands over the opening, or where the masonry nearer to the opening bears less than is asked.
#include <optional>

#include "bond/layout.hpp"
#include "bond/panel_site.hpp"
#include "walls/building.hpp"

namespace stringcourse::bond {

/// A bearing asked for counts as met within this: a unit may differ so much from its listed size, so that no closer can
/// be laid. SOURCE ASTM C90, reported in an NCMA TEK of 1976: 1/8 in.
inline constexpr Length kBearingWithin = Length::sixteenths(2);

/// Whether a piece, in its place in its run, is part of the lintel of units over this opening. Exact.
[[nodiscard]] bool in_lintel(const ResolvedOpening& opening, const Run& run, const Piece& piece);

/// Where the pieces of a lintel of units end in its lowest course, each less the jamb: what it bears as laid. Not
/// less than is asked by more than kBearingWithin, unless the masonry of its run ends before (a corner, another wall);
/// never below zero. None where no run of the layout crosses the opening there (its panel has no layout).
[[nodiscard]] std::optional<Bearings> bearings_as_laid(const Layout& layout, const ResolvedOpening& opening);

}  // namespace stringcourse::bond
