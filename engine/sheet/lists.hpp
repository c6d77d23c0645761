#pragma once
// The lists of the set as tables: opening schedule, saw list, gauge rod, corner leads, findings and standards.
#include "sheet/context.hpp"
#include "sheet/table.hpp"

namespace stringcourse::sheet {

[[nodiscard]] Table opening_schedule(const Context& context);
[[nodiscard]] Table saw_table(const Context& context);
[[nodiscard]] Table gauge_rod_table(const Context& context);
/// The setting-out card: what the tape must read, the square check at each corner, kerfs of the boards, the line of each
/// side. No lines where the job asks for no setting out.
[[nodiscard]] Table setting_out_table(const Context& context);
/// Dowels before the pour, by side: running distance, offset, the cells of courses 1 and 2. No lines without bars.
[[nodiscard]] Table dowel_table(const Context& context);
[[nodiscard]] Table lead_table(const Context& context);
[[nodiscard]] Table notes_table(const Context& context);
/// Sizes and units of each wall, for a table so wide.
[[nodiscard]] Table side_sizes_table(const Context& context, Micrometres width, Micrometres height_of_text);

/// The sentence under the saw list: which end is meant, the kerf, and which cuts share a unit.
[[nodiscard]] std::string saw_note(const Context& context);

}  // namespace stringcourse::sheet
