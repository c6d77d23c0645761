#pragma once
// What an opening asks for: the masonry opening that its leaf, frame, buck and shim need, and where it stands in
// height.
#include "walls/draft.hpp"

namespace stringcourse::walls {

/// The masonry opening that is needed, actual.
struct OpeningNeed {
  OpeningUse use = OpeningUse::Plain;
  Length width, height;
  bool goes_up = false;  // rounded up to the next width on the module (a bare masonry size is kept as it is)
};

/// Sizes of an opening, or nothing (refused): none or several size groups, sizes that are no sizes.
[[nodiscard]] std::optional<OpeningNeed> opening_need(Draft& draft, std::size_t index);

/// True if the opening's height is counted from a floor; false: from a sill.
[[nodiscard]] bool stands_on_floor(const Opening& opening);

/// The floor of an opening, from the datum: as stated, else one joint under course 1.
[[nodiscard]] Length floor_of(const Draft& draft, const Opening& opening, Length first_unit_height);

/// The head that the first opening on a floor (else the first of all) asks for, from the datum, with course 1
/// whole; nothing where no opening says so. Never refuses: opening_need() does.
[[nodiscard]] std::optional<Length> first_head_asked(const Draft& draft);

}  // namespace stringcourse::walls
