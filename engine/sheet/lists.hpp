#pragma once
// The lists of the set as tables: opening schedule, saw list, gauge rod, corner leads, findings and standards.
#include "paper/table.hpp"
#include "sheet/context.hpp"

namespace stringcourse::sheet {

/// The names too long for some drawing, with the keys that stand for them there. No lines where there are none.
[[nodiscard]] Table names_table(const Context& context);
[[nodiscard]] Table opening_schedule(const Context& context);
[[nodiscard]] Table saw_table(const Context& context);
[[nodiscard]] Table gauge_rod_table(const Context& context);
/// The setting-out card: what the tape must read, the square check at each corner, kerfs of the boards, the line of each
/// side. No lines where the job asks for no setting out.
[[nodiscard]] Table setting_out_table(const Context& context);
/// Dowels before the pour, by wall, each wall under what its numbers are measured from: running distance, how far in from
/// which face, the cells of courses 1 and 2 and whose units they are in, how far it may be out. No lines without bars.
[[nodiscard]] Table dowel_table(const Context& context);
/// The sentences under it: what the numbers go to, and where the form stands.
[[nodiscard]] std::string dowel_note(const Context& context);
[[nodiscard]] Table lead_table(const Context& context);
[[nodiscard]] Table notes_table(const Context& context);
/// Sizes and units of each wall, for a table so wide.
[[nodiscard]] Table side_sizes_table(const Context& context, Micrometres width, Micrometres height_of_text);

/// The sentence under the saw list: which end is meant, the kerf, and which cuts share a unit.
[[nodiscard]] std::string saw_note(const Context& context);

}  // namespace stringcourse::sheet
