#include "answer/answer.hpp"

namespace stringcourse {

void count_and_list(Answer& answer) {
  const Building& building = answer.building;
  const Layout& layout = answer.layout;
  answer.tallies = {supply::count_units(building, layout), supply::units_to_buy(building, layout), supply::corner_set_parts(building, layout),
                    supply::one_piece_lintels(building, layout), supply::count_bars(building, layout), supply::count_cleanouts(building, layout)};
  answer.saw_list = setout::saw_list(building, layout);
  answer.gauge_rod = setout::gauge_rod(building);
  answer.lintels = supply::lintels_as_laid(building, layout);
  answer.cleanouts = setout::cleanouts_of(building, layout);
}

}  // namespace stringcourse
