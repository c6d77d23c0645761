#pragma once
// English words of the bar schedule.
#include "words/bar_words.hpp"

namespace stringcourse::words {

inline constexpr BarWords kEnglishBars{
    .title = "Bar schedule",
    .mark = "Mark",
    .size = "Bar",
    .count = "Count",
    .shape = "Shape",
    .length = "Length",
    .where = "Where",
    .uses = {"Dowels: what stands over the footing or slab", "Upright bars", "Bars in lintels", "Bars in bond beams",
             "Corner bars of bond beams"},
    .straight = "straight (00)",
    .bent = "two legs (11) of {0}",
    .in_courses = "courses {0} to {1}: {2}",
    .in_course = "course {0}: {1}",
    .at_places = "{0} at {1}",
    .at_corners = "at {0}",
    .over_openings = "over {0}",
    .total = "In all, without dowels",
    .pounds = "{0} lb",
    .kilograms = "{0} kg",
    .laps_upright = "Laps of upright {0} bars by each rule, on {1}, where least masonry is round one: {2}",
    .laps_beam = "Laps of {0} bars in bond beams by each rule, with {1} of masonry and grout round one",
    .rules = {"TMS 402, editions to 2008", "TMS 402, editions from 2011 on", "IBC, bars used at {0}",
              "Florida Building Code 2017", "40 bar diameters", "48 bar diameters", "as your drawings say"},
    .at_stress = "f'm {0}, bars that yield at {1}",
    .psi = "{0} psi",
    .megapascals = "{0} MPa",
    .stated = "As the job says: {0}.",
    .assumed = "For the rules listed these are assumed: {0}.",
    .note =
        "Cut, mark and bundle by this list. Bars, grades, laps and hooks come from your drawings or an engineer: "
        "compare each length with them before a bar is cut.",
    .note_stock = "Bars are sold {0} long ({1}); longer ones are lapped on a course.",
    .note_cover = "Bars end {0} inside the masonry ({1}).",
    .note_stated = "as the job says",
    .note_assumed = "assumed",
    .note_dowels = "A dowel's part below that is as your drawings say and is not in its length.",
    .note_uprights =
        "Numbers are the dowels'. An upright bar begins on the footing or slab, or over an opening; where a pour stops "
        "it stands out of the top by its lap, and the next one begins on that course.",
    .note_beams =
        "Of beam bars side by side every second one lies the other way round, so that laps are staggered. A "
        "corner bar's legs are measured to its outside; each laps a wall's bar.",
    .title_to_buy = "Bars to buy and cut",
    .bars = "Bars",
    .cut_each = "Cut from each",
    .left_over = "Over",
    .to_buy = "{0}: {1} bars of {2}; {3}",
    .fewest = "no way of cutting takes fewer",
    .at_least = "at least {0} are needed",
    .cut_of = "{0} of {1} (mark {2})",
    .note_kerf = "Marks are those of the bar schedule. Dowels are not in it. A cut takes {0} ({1}).",
    .dowels_up = "They stand up {0} by the lap rule.",
    .dowels_up_to = "They stand up {0} to {1} by the lap rule: see bar schedule.",
};

}  // namespace stringcourse::words
