#pragma once
// Kinds are labels of what is bought; they must agree with the piece's length, the yard's stock and the course.
#include "proof/facts.hpp"

namespace stringcourse::proof {

/// Whether this kind is a half unit.
bool is_half_kind(UnitKind kind);
/// Length of an uncut unit of this kind.
Length unit_length(const Series& series, UnitKind kind);
/// Whether the yard has this kind in this series.
bool is_stocked(const Building& building, const Series& series, UnitKind kind);
/// Kinds of every piece against length, stock, bond-beam and half-high courses, and lintels built of units.
Violations check_kinds(const Building& building, const Facts& facts);

}  // namespace stringcourse::proof
