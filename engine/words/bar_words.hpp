#pragma once
// Words of the bar schedule.
#include <string_view>

namespace stringcourse::words {

struct BarWords {
  std::string_view title, mark, size, count, shape, length, where;
  std::string_view uses[5];  // headings, in the order of steel::BarUse
  std::string_view straight, bent;
  std::string_view in_courses, in_course, at_places, at_corners, over_openings;
  std::string_view total, pounds, kilograms;
  std::string_view laps_upright, laps_beam, rules[7], at_stress, psi, megapascals, stated, assumed;
  std::string_view note, note_stock, note_cover, note_stated, note_assumed, note_dowels, note_uprights, note_beams;
  std::string_view title_to_buy, bars, cut_each, left_over, to_buy, fewest, at_least, cut_of,
      note_kerf;                             // cutting from stock
  std::string_view dowels_up, dowels_up_to;  // on the list of dowels
};

}  // namespace stringcourse::words
