// Jogs of every length from a joint to beyond a unit and a half, in every thickness: refused with a length that would
// do, stopped with a reason, or laid so that the certificate finds no unit in another's place and no hole.
#include <gtest/gtest.h>

#include "property/certify.hpp"
#include "unit/walls/made_jobs.hpp"

namespace stringcourse::property {
namespace {

using namespace stringcourse::tests;

Job jogged(const std::string& series, Length jog) {
  Outline outline = outline_of({{80}, {0, Turn::Left}, {80}, {96}, {160}, {96}});
  outline.sides[1].length = nominal(jog);
  outline.sides[5].length = nominal(in(96) + jog);
  Job job = job_with(outline, 2);
  job.units.series = series;
  return job;
}

TEST(Jogs, OfAnyLengthAreRefusedStoppedOrLaidWithoutAFault) {
  int solved = 0, refused = 0;
  for (const std::string series : {"us-4", "us-6", "us-8", "us-10", "us-12"}) {
    for (std::int64_t sixteenths = 2; sixteenths <= 26 * 16; sixteenths += sixteenths < 40 ? 2 : 8) {
      const Verdict verdict = certify(jogged(series, Length::sixteenths(sixteenths)), 20'000);
      EXPECT_EQ(verdict.faults, "") << series << " " << sixteenths << "/16";
      solved += verdict.outcome == Outcome::Solved;
      refused += verdict.outcome == Outcome::Refused;
    }
  }
  // 4, 6, 8, 10 and 12 in block: refused below 12, 10, 8, 14 and 12 in, a joint's 1/8 in less.
  EXPECT_LT(100, refused);
  EXPECT_LT(10, solved);
}

// What the remedy names is laid: 2 b - t + j or, where one unit cannot make both corners, 15 5/8 + j + b - t.
TEST(Jogs, TheLengthThatARefusalNamesIsLaid) {
  const std::pair<std::string, Length> named[] = {
      {"us-4", in(12)}, {"us-6", in(10)}, {"us-8", in(8)}, {"us-10", in(14)}, {"us-12", in(12)}};
  for (const auto& [series, jog] : named) {
    const Verdict verdict = certify(jogged(series, jog));
    EXPECT_EQ(verdict.outcome, Outcome::Solved) << series;
    EXPECT_EQ(verdict.faults, "") << series;
  }
}

}  // namespace
}  // namespace stringcourse::property
