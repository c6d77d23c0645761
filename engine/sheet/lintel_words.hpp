#pragma once
// What the sheets say of lintels: what spans, and what it bears as asked and as laid.
#include <string>
#include <vector>

#include "sheet/context.hpp"
#include "supply/lintels.hpp"

namespace stringcourse::sheet {

/// The lintel over an opening, or null where none is placed.
[[nodiscard]] const supply::LintelAsLaid* lintel_over(const std::vector<supply::LintelAsLaid>& lintels,
                                                      std::size_t opening);

/// "lintel units, on shores": what spans the opening; of one piece its length.
[[nodiscard]] std::string span_text(const Context& context, const supply::LintelAsLaid& lintel);

/// Both bearings as laid, each with the corner that it lies toward, and what is asked: one line.
[[nodiscard]] std::string bearing_text(const Context& context, const supply::LintelAsLaid& lintel);

/// The schedule's lines: what spans, its units by kind, the bearings.
[[nodiscard]] std::string lintel_text(const Context& context, const supply::LintelAsLaid& lintel);

}  // namespace stringcourse::sheet
