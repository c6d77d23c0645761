#pragma once
// English words of the sheets of steel and grout.
#include "words/steel_words.hpp"

namespace stringcourse::words {

inline constexpr SteelWords kEnglishSteel{
    .title_order = "Order of filling",
    .lift_of = "Pour {0}, lift {1}: courses {2} to {3}, {4} high, {5}. {6} {7}",
    .order_walk = "{0} of walking from corner {1} to the last cell.",
    .cell = "Cell",
    .fill_now = "This lift",
    .fill_so_far = "So far",
    .filled_at = "Full, again",
    .cell_of = "{0} {1}",
    .beam_of = "{0}, beam {1}",
    .beam_from = "{0}, beam {1} from {2}",
    .lintel_of = "{1}, lintel {0}",
    .order_note =
        "Read line by line. The order keeps to the walls' outer faces and starts at the "
        "corner named: of all ways round, the one that is shortest to the last cell; an inner wall is filled outwards "
        "where its foot is passed; beams and lintels come last, on a second round. A cell is named by its side and its "
        "dowel's number, x1, x2 where it has none. Amounts are the most that goes in, before what is spilt. Write the "
        "time beside each cell as it is full, and tick it when it is consolidated again.",
    .order_again = "Again {0} to {1} minutes after a cell is full.",

    .title_wire = "Joint reinforcement",
    .wire_course = "In the beds on top of courses {0}",
    .wire_stretch = "From, to",
    .wire_pieces = "In each bed",
    .wire_ends = "Ends",
    .wire_ends_are = {"laps a corner", "stops at a control joint", "stops at a jamb", "stops at the wall's end",
                      "stops at the wall met", "laps a tee", "stops at a lintel in one piece"},
    .wire_last = "The last of them",
    .wire_meet = "none: legs fill it",
    .wire_corners = "Round corners",
    .wire_straight = "Straight pieces",
    .wire_to_buy = "Stock lengths to buy",
    .wire_bent = "{0}, bent: {1} each",
    .wire_bought = "{0}, bought as corners: legs {1}",
    .wire_tees = "At inner walls",
    .wire_tees_bought = "{0}, bought as tees: legs {1}",
    .wire_note =
        "Each piece laps the one before it. Last pieces are cut longest first, each from the first length with room "
        "for it; kerf and scrap are yours. Tees: two legs along the wall that is met, from the inner "
        "wall's middle; one along the inner wall, from the far face of the wall met; your drawings may tie them "
        "otherwise.",
    .note_stock = "Sold in lengths of {0} ({1}).",
    .note_lap = "Laps {0} ({1}).",
    .note_leg = "Legs round corners {0} ({1}), along the outer face.",

    .title_map = "{0}: what is in it",
    .title_map_filled = "{0}: what is hidden in it",
    .map_note = "Seen from outside. Drawn: {0}. No other cell has grout. Middles of bars, from corner {1}: {2}.",
    .map_filled = "grey: grout",
    .map_bar = "upright line: bar, its dowel's number under it",
    .map_beam = "line along: bars in a beam or lintel",
    .map_lap = "thick: bars lap",
    .map_cleanout = "crossed box: cleanout",
    .map_dowel = "cross: dowel found off its place",
    .map_open = "dashed: still to be filled",
    .map_nothing = "nothing, for nothing is hidden here",
    .map_no_bar = "none",

    .title_top_read = "Top of the walls as read",
    .read_point = "Point",
    .read_off = "Off its design height",
    .read_work = "So that the plate bears",
    .read_verdict = "By rule",
    .works = {"stands as it is", "pack {0}", "bed {0} up in mortar", "plane {0} off"},
    .top_over = "{0} over",
    .top_under = "{0} under",
    .top_right = "right",
    .top_verdicts = {"level", "not level", "the readings can't tell", "not read"},
    .top_bearing = "Plate bears {0}; readings are good to {1}.",
    .top_read_note =
        "The level that bears is the highest point read, no farther from its design height than the rule lets it be: "
        "what is lower comes up to it, what stands over it is planed. Between points nothing was read.",

    .grouted = "{0} at {1}, filled",
    .again = "{0} at {1}, consolidated again",
    .looked_at = "{0} at {1}, {2} seen",
    .looked_at_what = {"bar", "cleanout", "floor", "beam", "lintel"},
};

}  // namespace stringcourse::words
