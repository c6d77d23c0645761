#pragma once
// English words of the sheets for shores, the look before a pour, bolts, weather and wind.
#include "words/top_words.hpp"

namespace stringcourse::words {

inline constexpr TopWords kEnglishTop{
    .title_shores = "What goes over each opening, and what holds it up",
    .head_over = "Its head",
    .bears_on = "Lintel bears on units",
    .held = "Held up meanwhile",
    .beams_there = "Beam courses",
    .over_floor = "{0} over its floor",
    .over_sill = "{0} over its sill",
    .over_bearing = "{0} over the footing or slab",
    .seat = "{0}-{1}: {2} toward {3}",
    .no_seat = "nothing toward {0}",
    .lifted_in = "one piece: nothing is shored",
    .shores_stated = "before course {0}: {1} shores, one at each jamb, at most {2} apart",
    .shores_unstated = "before course {0}: shores as your drawings or their maker say",
    .no_lintel = "no lintel",
    .beam_in = "{0}: in the lintel",
    .beam_cut = "{0}: stops at the jambs",
    .beam_over = "{0}: over it",
    .shores_note =
        "A shore is as long as the head is high over what it stands on, less all that lies under and over it: sole, "
        "wedges, header, form. Shores, header and form stand on ground that carries, and are braced, before the first "
        "lintel unit is laid.",

    .lintel_called = "drawings: {0}",
    .lintel_pieces = {"precast concrete", "steel section"},
    .lintel_weighs = "weighs {0} as its maker says",
    .lintel_steel = "ask before a bar passes steel: a hole by its maker, or stop the bar",

    .title_heads = "Heads off a course line: what can be done",
    .head_ways = "What can be done",
    .head_units = "Blocks more",
    .head_cuts = "Saw cuts more",
    .head_says = {"leave it, and pack {0} over the frame",
                  "make it {0} higher: its head comes to the course line above",
                  "set it {0} higher, and bed up the sill",
                  "make it {0} lower: its head comes to the course line below",
                  "lintel at the head asked: saw blocks {0} lower under its ends, and pieces {0} high to lie over it"},
    .head_asked = "{0}: asked {1} high, head {2} under the line of course {3}",
    .heads_note =
        "The layout has the first of these. Blocks more are whole ones by their length, cuts those of this choice "
        "alone; "
        "another height is laid out anew.",

    .title_inspection = "Before the pour",
    .pour_of = "Pour {0}: courses {1} to {2}",
    .bars_there = "Bars, by dowel",
    .holes_there = "Cleanouts, by bar",
    .floors_there = "Floors broken out",
    .beam_ready = "bond beam {0}: steel in, laps tied, corners turned",
    .lintel_ready = "lintels, steel in, form and shores standing: {0}",
    .photos_there = "Photos",
    .photos_as = "{0}...",
    .at_place = "{0}: {1}",
    .inspection_note =
        "Once grouted none of this can be seen again: tick what you saw; photograph each bar, its number beside it, "
        "and name the photo as listed with that number behind. Bars: size, lap and place as your drawings say, grout "
        "room all round. Cells: clean, no mortar standing out. Have your inspector or engineer look before cleanouts "
        "close.",

    .title_bolts = "Anchor bolts",
    .plate = "Plate",
    .plate_from = "{0}: {1} to {2}",
    .bolts = "Bolts",
    .bolts_at = "To each bolt's middle, from the start",
    .none_between = "none can stand from {0} to {1}",
    .nearest_behind = "; nearest behind: {0}",
    .bolts_asked =
        "As your drawings ask: plate {0}, bolts {1}, at most {2} apart, {3} to {4} from each end of a piece.",
    .bolts_asked_bars = "At least {0} from upright bars.",
    .bolts_asked_trusses = "On {0} at least {1} from trusses.",
    .bolts_grout = "At least {0} from the block beside them (assumed).",
    .bolts_note =
        "Fewest bolts for that, all in grouted cells of the top course. Set them as you grout, in a template, in the "
        "plate's middle third. Plates lie as the top course does. Where none can stand ask your engineer: a strap, or "
        "a cell more to fill.",

    .title_plate = "Plate and bolts of {0}",
    .plate_ends = "plate ends",
    .no_bolt_here = "no bolt can stand here",
    .trusses_given = "Trusses as given: the first at {0}, then every {1} toward {2}.",
    .plan_bolts = "From above, outer face below. Circles with a cross: bolts, by their middles.",
    .plan_bars = "Dots: upright bars that reach the top.",
    .plan_trusses = "Dashed across the wall: trusses.",
    .plan_laps = "Heavy, at the inner face: laps of the beam's bars.",
    .plan_plate = "Plates are as long as drawn, not as wide.",
    .plan_gaps =
        "Red: no bolt can stand in a stretch where one is asked for: ask your engineer for a strap, or fill "
        "a cell more.",

    .title_zone = "Keep out: the zone beside unbraced walls",
    .zone_beside = "{0}: {1}",
    .zone_note =
        "Red: walls stand {0} over their footing or slab; the zone is {1} wide, along each side that has no scaffold, "
        "outside as drawn and inside alike, also beside inner walls. It stays until the wall has its final support.",
    .zone_section = "Section, to the same scale: dashes at {0}, a wall over it is braced",
    .zone_no_height = "A warning: how high a wall may stand unbraced is not told here; the brace's designer says it.",

    .brace_line_note = "Red dashes: {0} over the footing; a wall over it is braced.",

    .title_weather = "Weather and wind",
    .cold = "Cold",
    .hot = "Hot",
    .wind = "Wind",
    .weather_note =
        "Warnings, not permission: your local code, your engineer and the brace's designer set what holds here. What "
        "is marked unverified was not read in its document. How high a wall may stand unbraced is not told here.",
    .title_forecast = "Weather expected",
    .forecast_days = "Days of the forecast",
    .forecast_asks = "What it brings up",
    .forecast_day = "{0}: {1}",
    .forecast_what = "Day, or rule",
    .forecast_known = "What it brings up, or where it stands",
    .forecast_on = "On which days",
    .forecast_nothing = "nothing of these rules; that permits nothing",
    .forecast_pour = "Pour {0}, {1}: {2}.",
    .forecast_note =
        "Forecasts are wrong: look at the sky, a thermometer and a wind gauge on the day. These are warnings, not "
        "permission; a day on which nothing is brought up, or that has no forecast, is not said to be safe.",
};

}  // namespace stringcourse::words
