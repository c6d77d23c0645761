// Jogs, by hand geometry. A jog of length L goes from a convex corner to a re-entrant one; t is the thickness of all
// walls, b the leg of their corner sets (t where a plain unit makes the corner), j the joint. From the convex corner's
// outer point along the jog: the side before it covers 0..b where it runs through, the side after it L+t-b..L+t.
//   Both run through in one course: a joint at least between them, L >= 2b - t + j, and the jog's own piece in the next
//   course is L + t long.
//   One of them runs through in each course: the jog's corner piece and a joint, L >= piece + j + b - t.
#include <gtest/gtest.h>

#include "unit/walls/made_jobs.hpp"

namespace stringcourse::tests {
namespace {

Job jogged(const std::string& series, Length jog) {
  Outline outline = outline_of({{144}, {0, Turn::Left}, {144}, {240}, {288}, {240}});
  outline.sides[1].length = nominal(jog);
  outline.sides[5].length = nominal(in(240) + jog);
  Job job = job_with(outline);
  job.units.series = series;
  return job;
}

struct Least {
  std::string series;
  Length at_design_joint;  // j = 3/8 in
};

// 4 in:  2 x 7 5/8 - 3 5/8 + 3/8 = 12; a half, 7 5/8 + 3/8 + 7 5/8 - 3 5/8 = 12.
// 6 in:  2 x 7 5/8 - 5 5/8 + 3/8 = 10; 7 5/8 + 3/8 + 7 5/8 - 5 5/8 = 10.
// 8 in:  2 x 7 5/8 - 7 5/8 + 3/8 = 8.
// 10 in: one unit cannot stand at the outer face for one corner and at the inner for the other: two whole units make
// them,
//        31 1/4 + 3/8 - 9 5/8 = 22; a whole unit in turn, 15 5/8 + 3/8 + 7 5/8 - 9 5/8 = 14.
// 12 in: the same, 20 and 15 5/8 + 3/8 + 7 5/8 - 11 5/8 = 12.
const Least kLeast[] = {{"us-4", in(12)}, {"us-6", in(10)}, {"us-8", in(8)}, {"us-10", in(14)}, {"us-12", in(12)}};

TEST(Jogs, AreRefusedBelowTheLengthAtWhichTheCornerUnitsPassEachOther) {
  const Length thinnest = Length::sixteenths(2);  // the joint may be 1/8 in thinner
  for (const Least& least : kLeast) {
    EXPECT_TRUE(resolve(jogged(least.series, least.at_design_joint)).has_value()) << least.series;
    EXPECT_TRUE(resolve(jogged(least.series, least.at_design_joint - thinnest)).has_value()) << least.series;
    for (const Length jog :
         {Length::sixteenths(6), in(2), in(4), least.at_design_joint - thinnest - Length::sixteenths(1)}) {
      REFUSED(refusals, jogged(least.series, jog));
      const Refusal* refused = refusal(refusals, "jog-too-short");
      ASSERT_NE(refused, nullptr) << least.series << codes(refusals);
      EXPECT_EQ(refused->place, "/outline/sides/1/length");
    }
  }
}

TEST(Jogs, TheRemedyNamesTheNearestLengthThatWouldDo) {
  REFUSED(refusals, jogged("us-12", in(4)));
  const Refusal* refused = refusal(refusals, "jog-too-short");
  ASSERT_NE(refused, nullptr);
  EXPECT_NE(test::told(refused->reason).find("BC is a jog of 4\""), std::string::npos) << test::told(refused->reason);
  EXPECT_NE(test::told(refused->remedy).find("Make BC 1'-0\" long"), std::string::npos) << test::told(refused->remedy);
}

TEST(Jogs, WalkedTheOtherWayTheyAreJudgedAlike) {
  Outline back = outline_of({{240}, {144}, {0, Turn::Left}, {144}, {240}, {288}});
  for (const auto& [jog, stands] : {std::pair{in(6), false}, std::pair{in(8), true}}) {
    back.sides[0].length = nominal(in(240)), back.sides[2].length = nominal(jog),
    back.sides[4].length = nominal(in(240) - jog);
    EXPECT_EQ(resolve(job_with(back)).has_value(), stands);
    Outline turned = back;  // from the re-entrant corner to the convex one
    turned.sides[0].length = nominal(in(240) - jog), turned.sides[4].length = nominal(in(240));
    turned.sides[1].turn = Turn::Left, turned.sides[2].turn = Turn::Right;
    EXPECT_EQ(resolve(job_with(turned)).has_value(), stands);
  }
}

TEST(Jogs, TwoCornersOfOneKindAreNoJog) {
  // The court of a U, 8 in wide: between two re-entrant corners.
  EXPECT_TRUE(
      resolve(job_with(outline_of({{264}, {240}, {128}, {96, Turn::Left}, {8, Turn::Left}, {96}, {128}, {240}})))
          .has_value());
}

}  // namespace
}  // namespace stringcourse::tests
