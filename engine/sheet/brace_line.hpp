#pragma once
// The height over which a wall is braced while it is built. A warning: what stands below it is not said to stand.
#include <optional>

#include "sheet/elevation_view.hpp"

namespace stringcourse::sheet {

/// Over what course 1 stands on; none where the walls do not rise over it. SOURCE: rule "brace-over-8-ft"
[[nodiscard]] std::optional<Length> brace_height(const Context& context);
/// Across an elevation, at that height, with a tick on the right.
void draw_brace_line(Pad& pad, const Elevation& elevation);
/// "Red dashes: 8'-0\" over the footing ..."; empty where none are drawn.
[[nodiscard]] std::string brace_line_note(const Context& context);

}  // namespace stringcourse::sheet
