#pragma once
// Words of the order list's sheet, of the days' and of their lists.
#include <string_view>

namespace stringcourse::words {

struct OrderWords {
  // The order
  std::string_view title, article, to_order, made_of, net_alone, with_spare, with_pallets, beside, price, cost,
      must_not, must_not_alone, reckoned, reckoned_chosen, figure, assumed, stated, unstated, sums, goods, goods_for,
      tax, delivery, all, unpriced, note, title_reckoning, amount, because, csv[18], csv_yes;
  // The site
  std::string_view title_drops, wanted_for, weight, load, unweighed, too_heavy, short_of, note_drops, title_pallets,
      stands, serves_what, serves, all_spare, pallet_of, stands_at, note_pallets, title_pallet_plan, pallet_plan_note;
  // The days
  std::string_view title_days, day, work, blocks, kinds_laid, cut_laid, mortar, batch, batches, tonight, reached,
      reached_none, reached_filled, reached_begun, note_days, pace_assumed, pace_stated, pace_logged, rise, beginners,
      mason, title_chart, chart_day, chart_works[11], chart_note;  // works in the order of WorkKind
};

}  // namespace stringcourse::words
