#pragma once
// One run at a time: joints, places, lengths, faces, corner units (rules 1, 2, 4).
#include "proof/facts.hpp"

namespace stringcourse::proof {

/// Rules 1, 2 and 4 and the lawful lengths, for every run that has pieces or must have some.
Violations check_rows(const Building& building, const Layout& layout, const Facts& facts);

/// Pieces are numbered 1, 2, ... along their wall in each course.
Violations check_numbers(const Building& building, const Facts& facts);

}  // namespace stringcourse::proof
