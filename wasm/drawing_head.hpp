#pragma once
// A drawing's head as the page reads it: what can be taken hold of in it. Written as one JSON value.
#include "document/json_out.hpp"
#include "sheet/drawing.hpp"
#include "walls/building.hpp"

namespace stringcourse {

/// {"name", "title", "width", "height", "scale", "course", "side", "handles": [...]}. Micrometres on paper, y downwards
/// from the drawing's upper edge, as in its SVG. One micrometre stands for `scale` x 1000 nanometres of the building.
void write_drawing_head(JsonOut& out, const Building& building, const sheet::Drawing& drawing);

}  // namespace stringcourse
