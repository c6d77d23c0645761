#include "answer/answer.hpp"

#include <algorithm>

namespace stringcourse {

Answer::Answer() = default;
Answer::Answer(const Answer&) = default;
Answer::Answer(Answer&&) noexcept = default;
Answer& Answer::operator=(const Answer&) = default;
Answer& Answer::operator=(Answer&&) noexcept = default;
Answer::~Answer() = default;

const Offer* offer_that_mends(const Answer& answer, std::size_t finding) {
  const auto mends = [&](const Offer& offer) { return std::ranges::contains(offer.mends, finding); };
  const auto offer = std::ranges::find_if(answer.offers, mends);
  return offer == answer.offers.end() ? nullptr : &*offer;
}

std::int32_t dowel_number(const Answer& answer, const PlacedBar& bar) {
  if (bar.first_course != 1) return 0;
  const auto dowel = std::ranges::find_if(answer.dowels, [&](const steel::Dowel& one) {
    return one.wall == bar.wall && one.along == bar.centre && one.off_face == bar.off_face;
  });
  return dowel == answer.dowels.end() ? 0 : dowel->number;
}

namespace {

/// Kinds whose breakage the order states.
void put_own_breakage(Answer& answer) {
  if (!answer.job.order) return;
  for (const KindOrder& own : answer.job.order->kinds) {
    for (supply::Purchase& purchase : answer.tallies.to_buy) {
      if (purchase.kind == own.kind && own.breakage)
        purchase.spare = supply::spare_units(purchase.whole + purchase.for_saw, *own.breakage);
    }
  }
}

}  // namespace

void tally(Answer& answer) {
  const Building& building = answer.building;
  const Layout& layout = answer.layout;
  answer.tallies = {supply::count_units(building, layout),      supply::units_to_buy(building, layout),
                    supply::corner_set_parts(building, layout), supply::one_piece_lintels(building, layout),
                    supply::count_bars(building, layout),       supply::count_cleanouts(building, layout),
                    supply::grout_pours(building, layout)};
  put_own_breakage(answer);
  answer.saw_list = setout::saw_list(building, layout);
  answer.lintels = supply::lintels_as_laid(building, layout);
  answer.cleanouts = setout::cleanouts_of(building, layout);
}

void count_and_list(Answer& answer) {
  tally(answer);
  const Building& building = answer.building;
  const Layout& layout = answer.layout;
  answer.gauge_rod = setout::gauge_rod(building);
  answer.bridged = supply::bridged(building, layout, answer.lintels);
  answer.heads = supply::heads_off_course(building, layout, answer.bridged);
  answer.plates = setout::plates_of(building, layout);
}

}  // namespace stringcourse
