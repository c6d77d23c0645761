#pragma once
// A user's own series, completed with the defaults of its tape.
#include "walls/draft.hpp"

namespace stringcourse::walls {

/// The series that one measured unit stands for. Defaults: half-high (height - j) / 2; joint tolerance 1/8 in or 3 mm,
/// at most j; least piece a quarter unit as laid; short-lap margin 1/2 in or 12 mm; cut step 1/16 in or 1 mm; relaxed
/// piece 2 in or 50 mm, at most the least piece; face shell by thickness (least of C90-06). Sizes that are no sizes:
/// refusals.
[[nodiscard]] std::optional<Series> series_from_own(Draft& draft, const OwnSeries& own, const std::string& place);

}  // namespace stringcourse::walls
