// Layouts that save dowels, on the kiln house: each that is offered is laid from the job with those dowels kept, and
// certified; the dowels that it promises to save stand in it.
#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <random>
#include <sstream>

#include "certify.hpp"
#include "job/read.hpp"

namespace stringcourse::property {
namespace {

Job kiln_house() {
  std::ostringstream text;
  text << std::ifstream(std::string(STRINGCOURSE_ROOT) + "/examples/kiln-house.json").rdbuf();
  return *read_job(text.str());
}

TEST(KeptDowels, EveryLayoutThatIsOfferedIsCertifiedAndSavesWhatItPromises) {
  std::mt19937 random(20261128);
  const Job plain = kiln_house();
  const auto planned = solve(plain, Wishes{});
  ASSERT_TRUE(planned.has_value());
  int offered = 0;
  for (int round = 0; round < 3; ++round) {
    Job job = plain;
    for (const steel::Dowel& dowel : planned->dowels) {
      // One in three dowels is 2 1/2 to 4 in off its place, either way.
      const Length off = random() % 3 == 0
                             ? Length::sixteenths(40 + static_cast<int>(random() % 25)) * (random() % 2 == 0 ? 1 : -1)
                             : Length();
      Reading reading;
      reading.id = "d" + std::to_string(job.readings.size());
      reading.dowel = DowelReading{
          planned->building.walls[static_cast<std::size_t>(dowel.wall)].name, {}, dowel.along + off, dowel.off_face};
      job.readings.push_back(reading);
    }
    const auto answer = solve(job, Wishes{});
    ASSERT_TRUE(answer.has_value());
    for (const steel::DowelLayout& layout : answer->dowel_search.layouts) {
      Job kept = job;
      kept.steel.kept_dowels = layout.kept;
      const auto laid = solve(kept, Wishes{});
      ASSERT_TRUE(laid.has_value());
      EXPECT_EQ(faults_of(*laid), "");
      const auto stands = std::ranges::count_if(
          laid->found_dowels, [](const steel::FoundDowel& dowel) { return dowel.action == steel::Action::Stands; });
      EXPECT_GE(stands, layout.stands);  // a longer search may find one that keeps more
      EXPECT_GT(layout.stands, answer->dowel_search.stands);
      EXPECT_LE(laid->layout.cost.short_laps, answer->layout.cost.short_laps + layout.short_laps);
      ++offered;
    }
  }
  EXPECT_GT(offered, 2);
}

}  // namespace
}  // namespace stringcourse::property
