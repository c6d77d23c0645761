// What runs out, loads and pallets of solved jobs, against hand arithmetic and slow twins.
#include <numeric>

#include "order/examples.hpp"

namespace stringcourse::order_test {
namespace {

std::string full_of(const Job& job) { return "unit/" + job.units.series + "/full"; }

const RunsOut* out_of(const Answer& answer, const std::string& id) {
  for (const RunsOut& out : answer.site.short_of) {
    if (answer.order.articles[static_cast<std::size_t>(out.article)].id == id) return &out;
  }
  return nullptr;
}

TEST(WhatRunsOut, NothingDoesWhereEnoughCame) {
  Job job = example_job("kiln-house");
  const Article whole = *article_of(solved(job), full_of(job));
  job.order.emplace();
  job.order->brought = {{whole.id, static_cast<int>(whole.net + whole.spare) - 10},
                        {whole.id, 10}};  // in two deliveries
  EXPECT_EQ(out_of(solved(job), whole.id), nullptr);
  job.order->brought.back().count = 9;
  const Answer answer = solved(job);
  const RunsOut* out = out_of(answer, whole.id);
  ASSERT_NE(out, nullptr);
  EXPECT_EQ(out->lacks, 1);
  EXPECT_EQ(out->brought, whole.net + whole.spare - 1);
  // The last one of all lacks: it is laid in the last course that has one.
  int last = 0;
  for (const auto& run : answer.layout.runs) {
    for (std::uint32_t k = run.first_piece; k < run.first_piece + run.piece_count; ++k) {
      if (answer.layout.pieces[k].kind == UnitKind::Full) last = std::max(last, static_cast<int>(run.course));
    }
  }
  EXPECT_EQ(out->course, last);
}

TEST(WhatRunsOut, SoonerWhereLessCame) {
  Job job = example_job("kiln-house");
  job.order.emplace();
  job.days.emplace();
  const Article whole = *article_of(solved(job), full_of(job));
  std::pair<std::int64_t, int> before{0, 0};
  for (std::int64_t came = 0; came < whole.net + whole.spare; came += 17) {
    job.order->brought = {{whole.id, static_cast<int>(came)}};
    const Answer answer = solved(job);
    const RunsOut* out = out_of(answer, whole.id);
    ASSERT_NE(out, nullptr) << came;
    ASSERT_GE(out->wall, 0);
    const std::pair<std::int64_t, int> now{out->day.number, out->course};
    EXPECT_GE(now.first, before.first) << came;
    before = now;
    if (came == 0) EXPECT_EQ(out->course, 1);
  }
}

/// Where every course but the last is said to be laid, it is the last that lacks.
TEST(WhatRunsOut, CoursesThatAreLaidComeFirst) {
  Job job = example_job("kiln-house");
  const Answer bare = solved(job);
  const auto courses = static_cast<int>(bare.building.courses.size());
  const Article whole = *article_of(bare, full_of(job));
  for (std::size_t wall = 1; wall < bare.building.walls.size(); ++wall) {
    for (int course = 1; course <= courses; ++course) {
      LaidEntry entry;
      entry.id = std::to_string(job.laid.size() + 1);
      entry.laid.emplace().on = bare.building.walls[wall].name;
      entry.laid->course = course;
      job.laid.push_back(entry);
    }
  }
  std::int64_t others = 0;  // whole blocks of the walls that stand
  for (const auto& run : bare.layout.runs) {
    for (std::uint32_t k = run.first_piece; run.wall > 0 && k < run.first_piece + run.piece_count; ++k) {
      const Piece& piece = bare.layout.pieces[k];
      if (piece.kind == UnitKind::Full && piece.cut == CutEnd::None) ++others;
    }
  }
  job.order.emplace().kinds = {{UnitKind::Full, 0, std::nullopt}};  // nothing breaks
  job.order->brought = {{whole.id, static_cast<int>(others)}};
  const Answer answer = solved(job);
  const RunsOut* out = out_of(answer, whole.id);
  ASSERT_NE(out, nullptr);
  EXPECT_EQ(out->wall, 0);
  EXPECT_EQ(out->course, 1);
}

TEST(Loads, AreTheFewestOrOneMoreOfWhatIsCarriedOneByOne) {
  Job job = example_job("wash-stand");
  const Answer answer = solved(job);
  std::size_t loaded = 0;
  for (const Drop& drop : answer.site.drops) {
    if (drop.loads.empty()) continue;
    ++loaded;
    EXPECT_GE(static_cast<std::int64_t>(drop.loads.size()), drop.least_loads);
    // First fit never leaves two loads that would go on one truck: it needs less than twice the fewest, and one.
    EXPECT_LE(static_cast<std::int64_t>(drop.loads.size()), 2 * drop.least_loads + 1);
    for (std::size_t k = 1; k < drop.loads.size(); ++k)
      EXPECT_GT(drop.loads[0].weight.units + drop.loads[k].weight.units, read_mass(*job.order->truck)->units);
  }
  EXPECT_GE(loaded, 1U);
}

TEST(Loads, SayWhatIsTooHeavyForTheTruck) {
  Job job = example_job("wash-stand");
  job.order->truck = "1000 lb";  // a pallet of 90 blocks of 36 lb weighs 3240 lb
  const Answer answer = solved(job);
  const auto drop = std::ranges::find(answer.site.drops, HoldPoint::FirstCourse, &Drop::point);
  ASSERT_NE(drop, answer.site.drops.end());
  ASSERT_EQ(drop->too_heavy.size(), 1U);
  EXPECT_EQ(answer.order.articles[static_cast<std::size_t>(drop->too_heavy.front())].id, full_of(job));
}

TEST(WeightsOfArticles, AreTheJobsOrPrintedOrATablesOrNobodys) {
  const Answer answer = solved(example_job("kiln-house"));
  EXPECT_EQ(article_of(answer, "mortar/premix")->weight, read_mass("80 lb"));
  // #5 weighs 1.552 kg a metre (ASTM A615); 20 ft are 6.096 m: 9.461 kg.
  EXPECT_EQ(article_of(answer, "bar/#5")->weight->units / 100'000, 9'460);
  EXPECT_FALSE(article_of(answer, full_of(answer.job))->weight.has_value());
  EXPECT_FALSE(article_of(answer, full_of(answer.job))->weight_stated);
}

/// Prices and sums, and places outside; that the prices prove it is the certificate's (proof/site).
TEST(PlacesOfPallets, AreApartAndClearAndTheirPricesAreTheSum) {
  Job job = example_job("kiln-house");
  job.order.emplace().kinds = {{UnitKind::Full, std::nullopt, 60}};
  const Answer answer = solved(job);
  ASSERT_TRUE(answer.site.pallets.has_value());
  const PalletPlan& plan = *answer.site.pallets;
  ASSERT_GE(plan.pallets.size(), 5U);
  std::int64_t sum = 0;
  std::set<std::pair<Length, Length>> used;
  for (const PlacedPallet& pallet : plan.pallets) {
    sum += pallet.carried;
    EXPECT_TRUE(used.insert({pallet.middle.x, pallet.middle.y}).second);
    // Outside, by more than the zone.
    EXPECT_GT(pallet.out, plan.zone);
    EXPECT_EQ(pallet.units, 60);
  }
  EXPECT_EQ(sum, plan.carried);
  EXPECT_EQ(std::accumulate(plan.pallet_prices.begin(), plan.pallet_prices.end(), std::int64_t{0}) +
                std::accumulate(plan.place_prices.begin(), plan.place_prices.end(), std::int64_t{0}),
            plan.carried);
  EXPECT_FALSE(solved(example_job("kiln-house")).site.pallets.has_value()) << "no kind is bought by pallets";
}

}  // namespace
}  // namespace stringcourse::order_test
