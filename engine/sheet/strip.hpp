#pragma once
// A side's units in one course from above, outer face towards the reader, with running marks: one band of a sheet.
#include <span>
#include <string>
#include <vector>

#include "sheet/kind.hpp"

namespace stringcourse::sheet {

/// A wall at one scale over as many parts as it takes; parts end at ends of the course's blocks.
[[nodiscard]] WallParts parts_at_scale(const Context& context, int wall, int course, Scale scale);
/// Those of the scale at which the marks of all these courses have room in both forms of the tape, in the fewest parts.
[[nodiscard]] WallParts parts_of_strip(const Context& context, int wall, std::span<const int> courses);
/// "Course 2: side AB".
[[nodiscard]] std::string strip_title(const Context& context, int wall, int course);
[[nodiscard]] Group draw_strip(const Context& context, const Band& band, Scale scale, const Area& room);
/// A band's title and, behind it or under it, what its numbers are measured from; gives the y under both.
[[nodiscard]] Micrometres write_band_heading(Pad& pad, const Area& room, const std::string& title,
                                             const std::string& from);
/// What the marks, arrows, boxes and letters of these strips mean, each where one of them has it: the foot of their
/// sheet; and how high that is.
void write_strip_notes(Pad& pad, const Context& context, std::span<const Band> bands);
[[nodiscard]] Micrometres strip_notes_height(const Context& context, std::span<const Band> bands);

}  // namespace stringcourse::sheet
