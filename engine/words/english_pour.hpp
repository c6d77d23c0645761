#pragma once
// English words of the sheets for the pour.
#include "words/pour_words.hpp"

namespace stringcourse::words {

inline constexpr PourWords kEnglishPour{
    .outer_corner = "outer corner {0}",
    .inside_corner = "inside corner {0}, the outer face of {1}",
    .met_face = "the inner face of {0}",
    .met_inner = "the face of {0} where {1} starts",
    .free_end = "the end of the wall at {0}",
    .along_outer = "along its outer face",
    .along_either = "along either face",
    .marks_hooked = "All marks from {0}, {1}: hook the tape there once.",
    .marks_held = "All marks from {0}, {1}: hold the tape's end to it, once.",
    .behind_corner = "{0}, behind {1}",

    .list_heading = "{0}: from {1}, {2}; in from {3}",
    .centre_at = "Centre",
    .in_from_line = "In from face",
    .from_outer = "its outer face",
    .from_either = "either face",
    .cell_of_course = "Course {0} unit",
    .room_to_start = "To start",
    .room_to_end = "To end",
    .room_across = "Across",
    .cell_own = "{0}, cell {1}",
    .cell_other = "{0} {1}, cell {2}",
    .no_cell = "no cell",
    .list_note =
        "To the dowel's centre. Never from dowel to dowel. To start, to end, across: how far it may be out of "
        "place, toward the end that the numbers start from, toward the other end, either way across, and still have "
        "{0} of grout between it and the block, in the cell courses 1 and 2 share; rounded down. A unit with "
        "another side's name is that side's. Cap every dowel.",
    .lap_note = "They stand up {0} over the footing or slab, as your drawings ask.",
    .form_here = "The form's edge is the outer face line.",
    .form_at = "The form stands {0} outside the outer face line: from the form, add {0} to what stands under In from.",
    .form_unknown =
        "The form may stand outside the face line: chalk or string the face lines first, and measure from them.",

    .template_line = "Outer face line of the wall.",
    .template_inner_line = "Face line of the wall (either face)",
    .template_is_form = "It is the form's edge too.",
    .template_form_at = "The form stands {0} farther out.",
    .template_form_unknown = "The form stands where your drawings put it.",
    .template_parallel = "Line {0} in from the outer face line",
    .template_use =
        "Full size: lay a tape on the ruler first. Cut along the dashed lines and the heavy ones. Lay the heavy edge "
        "on the face line, the cross's line on the mark. Solid: cell of course 1; dashed: of course 2. The dowel "
        "stands at the dot, plumb.",
    .template_from_line = "{0} from the face line",
    .template_from_this = "{0} from the line drawn",
    .template_from_form = "{0} from the form",
    .template_places = "{0}, from {1}:",
    .template_other_line = "Outer face line of {0}",
    .template_other_lines = "Outer face line of the wall round the corner",
    .template_board = "The board of {0} begins {1} before that corner: from the board's end add {1}.",

    .title_form_boards = "Form boards: {0}",
    .title_board_inner = "Form board: wall {0}",
    .board_dowel = "no. {0}",
    .board_note =
        "Seen from above. Dots: dowel centres, numbered as in the list. Thick lines: openings, with their jambs.",
    .board_form_line = "Heavy line: the outer face line. Line outside it: the form's edge, {0} farther out.",
    .board_before = "The board begins {0} before 0: from the board's end, add {0} to every number.",
    .board_after = "The board begins {0} past 0: from the board's end, take {0} off every number.",
    .board_unknown =
        "Heavy line: the face line, not the form. Where the form's board begins is not known here: measure from the "
        "face lines.",

    .cleanouts = "Cleanouts",
    .cleanouts_bought = "{0}, all in cleanout units",
    .cleanouts_cut = "{0}, all cut into other units",
    .cleanouts_both = "{0}: {1} are cleanout units, {2} cut into other units",
    .cleanout_note =
        "A cleanout at each bar (wedge: its open side). Where the unit is no cleanout unit (CO), cut a hole at least 3 "
        "in (75 mm) high and wide through that shell before it is laid. Close them only when the cells are clean and "
        "seen.",
    .cleanout_wedge = "wedge: cleanout, open to that side",
    .cleanout_mark_note = "Square at a unit's foot: cleanout (black: open to this side).",

    .title_corners = "Corners in courses 1 and 2",
    .corner_course = "Corner {0}, course {1}",
    .corner_unit = "{0}: {1}",
    .corner_bar = "Bar: {0} from the outer face of {1}, {2} from that of {3}.",
    .corner_cell = "It stands in {0} unit {1}, cell {2}.",
    .corner_note =
        "Seen from above, turned as in the plan. Dot: the bar and its dowel. Thick: what turns the corner. Cells are "
        "counted from the end that the side's numbers start from.",
    .corner_runs = "{0} runs through.",
    .corner_alike = "Built alike, each along its own sides: {0}.",
};

}  // namespace stringcourse::words
