// What the ways to bed course 1 cost: bags of premix and units beside those of laying level, summed by hand.
#include <cmath>
#include <set>

#include "order/examples.hpp"

namespace stringcourse::order_test {
namespace {

using ground::BedChoice;

/// The kiln house on a footing read at its corners so far under the datum mark, in sixteenths of an inch.
Job read_at_corners(std::initializer_list<std::int64_t> sixteenths) {
  Job job = example_job("kiln-house");
  const char* const names[] = {"datum", "A", "B", "C", "D"};
  std::size_t k = 0;
  for (const std::int64_t rod : sixteenths) {
    Reading& reading = job.readings.emplace_back();
    reading.id = "r" + std::to_string(k), reading.rod.emplace();
    reading.rod->setup = "1", reading.rod->station = names[k++], reading.rod->rod = Length::sixteenths(rod);
  }
  job.order.emplace();
  job.order->tax = "8.25";
  job.order->prices = {{"mortar/premix", "8.40"}, {"unit/us-8/half-high", "1.90"}, {"unit/us-8/full", "2.45"}};
  return job;
}

/// A curb's worth lower at C and D: level beds are far too thick there.
Job far_out() { return read_at_corners({800, 930, 930, 1'010, 1'010}); }

std::vector<BedChoice> choices_of(const Answer& answer) { return answer.found.levels->bed->choices; }

/// 80 lb bags of 0.7 cu ft for what the joints hold and a tenth more (rules "mortar-premix-yield", "mortar-joints").
std::int64_t bags(double cubic_feet) { return static_cast<std::int64_t>(std::ceil(cubic_feet * 1.1 / 0.7 - 1e-9)); }
double cubic_feet(double cubic_centimetres) { return cubic_centimetres / 28'316.846592; }

/// Bags of the whole order with a way's beds instead of level ones.
std::int64_t bags_with(const Answer& answer, std::int64_t more_cubic_centimetres) {
  const double joints = static_cast<double>(answer.order.mortar.all().cubic_nanometres) / 1e21;
  return bags(cubic_feet(joints + static_cast<double>(more_cubic_centimetres)));
}

TEST(BedMoney, IsTheBagsAndUnitsThatAWayTakesBesideLayingLevel) {
  const Answer answer = solved(far_out());
  const std::vector<BedChoice> choices = choices_of(answer);
  const auto level = std::ranges::find(choices, BedRemedy::Level, &BedChoice::what);
  ASSERT_NE(level, choices.end());
  std::set<BedRemedy> seen;
  for (const BedMoney& known : answer.bed_money) {
    const auto choice = std::ranges::find(choices, known.what, &BedChoice::what);
    ASSERT_NE(choice, choices.end());
    seen.insert(known.what);
    const std::int64_t more = choice->mortar_cubic_centimetres - level->mortar_cubic_centimetres;
    std::int64_t cents = 840 * (bags_with(answer, more) - bags_with(answer, 0));
    const std::int64_t spare = (choice->units * 5 + 99) / 100;  // 5 in 100, as the job does not say otherwise
    if (known.what == BedRemedy::HalfHigh) cents += 190 * (choice->units + spare);
    if (known.what == BedRemedy::Step) cents += 245 * (choice->units + spare);
    // Tax is rounded once on each whole sum: the difference is within a cent of its own tax.
    const double with_tax = static_cast<double>(cents) * 1.0825;
    EXPECT_NEAR(static_cast<double>(known.more.least), with_tax, 1.0) << static_cast<int>(known.what);
    EXPECT_EQ(known.more.least, known.more.most);
  }
  EXPECT_TRUE(seen.contains(BedRemedy::HalfHigh));
  EXPECT_TRUE(seen.contains(BedRemedy::RipUnits));
  EXPECT_FALSE(seen.contains(BedRemedy::Level)) << "the order counts it";
}

TEST(BedMoney, IsNotSaidOfConcreteNorWithoutPrices) {
  Job job = far_out();
  const Answer priced = solved(job);
  for (const BedChoice& choice : choices_of(priced)) {
    if (choice.concrete_cubic_centimetres > 0) EXPECT_TRUE(bed_money_said(priced, choice.what).empty());
  }
  job.order->prices = {{"unit/us-8/full", "2.45"}};
  for (const BedMoney& known : solved(job).bed_money) EXPECT_EQ(known.more, Sum{}) << "mortar has no price";
  job.order->prices.clear();
  EXPECT_TRUE(solved(job).bed_money.empty());
}

}  // namespace
}  // namespace stringcourse::order_test
