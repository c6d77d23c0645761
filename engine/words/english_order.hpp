#pragma once
// English words of the order's and the days' sheets.
#include "words/order_words.hpp"

namespace stringcourse::words {

inline constexpr OrderWords kEnglishOrder{
    .title = "Order list",
    .article = "What",
    .to_order = "Order",
    .made_of = "Made up of",
    .net_alone = "{0} needed",
    .with_spare = "{0} needed, {1} spare",
    .with_pallets = "{0} needed, {1} spare, {2} to whole pallets",
    .beside = "Beside",
    .price = "Price of one",
    .cost = "Cost",
    .must_not = "Must not run short. In need: {0}.",
    .must_not_alone = "Must not run short.",
    .reckoned = "Published figures disagree.",
    .reckoned_chosen = "By the figure that the job picks.",
    .figure = "How mortar, water and grout are reckoned: published figures disagree, none is averaged",
    .assumed = "What is assumed",
    .stated = "as the job says",
    .unstated = "assumed: the job does not say",
    .sums = "Money",
    .goods = "Goods",
    .goods_for = "of these, wanted for {0}",
    .tax = "Tax",
    .delivery = "Delivery",
    .all = "In all",
    .unpriced = "No price yet: {0} of {1} articles. They are in no sum.",
    .note =
        "Counted from the layout, block by block. Bars, bolts, lintels and mortar type as your drawings ask. Compare "
        "delivery notes with this list before anything is unloaded.",
    .title_reckoning = "How the order is reckoned",
    .amount = "Amount",
    .because = "Why",
    .csv = {"id", "what", "order", "order from", "order to", "sold in", "needed", "spare", "to whole pallets",
            "on a pallet", "wanted for", "must not run short", "instead", "price", "cost from", "cost to", "currency",
            "note"},
    .csv_yes = "yes",
    .title_drops = "What comes when",
    .wanted_for = "Wanted for",
    .weight = "Weight",
    .load = "load {0} of {1}",
    .unweighed = "Weight not stated: {0}.",
    .too_heavy = "More than the truck carries: {0}.",
    .short_of = "Runs out",
    .note_drops =
        "All of it has to be there on the evening before. Loads are made up of what has a weight, in the order of the "
        "list, pallets whole. Ask the yard what its truck and its crane may carry.",
    .title_pallets = "Where pallets stand",
    .stands = "Stands",
    .serves_what = "For the blocks",
    .serves = "from {0} {1} to {2} {3}",
    .all_spare = "spare",
    .pallet_of = "{2}. {0}, {1} on the pallet",
    .stands_at = "outside {0}: its middle {2} from {1}, {3} off the wall",
    .note_pallets =
        "No pallet stands within {0} of a wall: that is kept clear while walls have no bracing. On these places blocks "
        "are carried {1} in all, in straight lines; no other placing of these pallets on them needs less. Check that "
        "the ground bears a pallet and that the truck reaches it.",
    .title_pallet_plan = "Pallets from above",
    .pallet_plan_note =
        "Numbers are those of the list. The ground within {0} of a wall is kept clear while the wall has no bracing.",
    .title_days = "Days",
    .day = "Day",
    .work = "Work",
    .blocks = "Blocks",
    .kinds_laid = "{0} {1}",
    .cut_laid = "{0} cut from {1}",
    .mortar = "Mortar",
    .batch = "1 batch",
    .batches = "{0} batches",
    .tonight = "Tonight",
    .reached = "{0}: course {1}, {2} high",
    .reached_none = "{0}: no course finished",
    .reached_filled = ", filled to course {0}",
    .reached_begun = "; blocks up to course {0}, {1} high",
    .note_days =
        "{0} {1} At most {2} courses a day ({3}). Use each batch within {4} minutes of mixing ({5}). Waits are counted "
        "in "
        "working days. In cold, heat or wind the weather card comes first: days move, limits do not.",
    .pace_assumed = "Crew: {0} x {1}, each {2} blocks an hour (assumed; put in your own).",
    .pace_stated = "Crew: {0} x {1}, each {2} blocks an hour (as the job says).",
    .pace_logged = "Crew: {0} x {1}.",
    .rise = "{0} courses",
    .beginners = "pair of beginners",
    .mason = "mason with a tender",
    .title_chart = "Days in a chart",
    .chart_day = "day {0}",
    .chart_works = {"Boards and lines", "Footing or slab, dowels", "Footing hardens", "Lines, course 1 laid dry",
                    "Leads", "Course {0}", "Shores: {0}", "Masonry sets: pour {0}", "Grout: pour {0}",
                    "Grout sets: pour {0}", "Bolts"},
    .chart_note =
        "Filled: if it is late, the end is late. Open: it may be as late as the thin line shows. Waits are hatched.",
};

}  // namespace stringcourse::words
