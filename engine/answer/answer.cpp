#include "answer/answer.hpp"

#include <algorithm>

namespace stringcourse {

const Offer* offer_that_mends(const Answer& answer, std::size_t finding) {
  const auto mends = [&](const Offer& offer) { return std::ranges::contains(offer.mends, finding); };
  const auto offer = std::ranges::find_if(answer.offers, mends);
  return offer == answer.offers.end() ? nullptr : &*offer;
}

void count_and_list(Answer& answer) {
  const Building& building = answer.building;
  const Layout& layout = answer.layout;
  answer.tallies = {supply::count_units(building, layout),      supply::units_to_buy(building, layout),
                    supply::corner_set_parts(building, layout), supply::one_piece_lintels(building, layout),
                    supply::count_bars(building, layout),       supply::count_cleanouts(building, layout)};
  answer.saw_list = setout::saw_list(building, layout);
  answer.gauge_rod = setout::gauge_rod(building);
  answer.lintels = supply::lintels_as_laid(building, layout);
  answer.cleanouts = setout::cleanouts_of(building, layout);
}

}  // namespace stringcourse
