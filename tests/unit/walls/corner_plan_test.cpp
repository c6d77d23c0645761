// What makes a corner, in plan, by hand arithmetic: joints are 3/8 in (10 mm), legs 7 5/8 in (190 mm).
#include <gtest/gtest.h>

#include "made_jobs.hpp"
#include "walls/corner_plan.hpp"

namespace stringcourse::tests {
namespace {

using walls::corner_parts;
using walls::CornerPart;

/// "from-to x near-far name" in sixteenths of an inch or millimetres, a line each.
std::string told(const std::optional<std::vector<CornerPart>>& parts, Length step) {
  if (!parts) return "none";
  std::string text;
  for (const CornerPart& part : *parts) {
    const auto count = [&](Length length) { return std::to_string(length.in_nanometres() / step.in_nanometres()); };
    text += count(part.from) + "-" + count(part.to) + " x " + count(part.near) + "-" + count(part.far) + " " +
            test::told(part.name) + "\n";
  }
  return text;
}

std::string us(const char* series, const char* butting, Length length, walls::Makes makes = walls::Makes::OneCorner) {
  return told(corner_parts(*find_series(series), find_series(butting)->thickness, true, length, makes),
              Length::sixteenths(1));
}

constexpr Length kFull = Length::sixteenths(250), kHalf = Length::sixteenths(122);

// 12 in: 7 5/8 + 3/8 = 8 in to 11 5/8; along, the other wall takes 11 5/8 and a joint, 12 in.
TEST(CornerPlan, AThickWallsFillerStandsBehindTheUnitBesideTheOtherWall) {
  EXPECT_EQ(us("us-12", "us-12", kFull), "0-250 x 0-122 8 in unit\n192-250 x 128-186 4 in filler\n");
  EXPECT_EQ(us("us-10", "us-10", kFull), "0-250 x 0-122 8 in unit\n160-250 x 128-154 2 in filler\n");
}
TEST(CornerPlan, AThickWallsFillerIsAsLongAsAThinnerWallLeavesIt) {
  EXPECT_EQ(us("us-12", "us-6", kFull),
            "0-250 x 0-122 8 in unit\n96-250 x 128-186 filler 3 5/8\" thick, 9 5/8\" long\n");
}
// A half is 7 5/8 in long: the other wall, 11 5/8 thick, would stand before what comes after it.
TEST(CornerPlan, AHalfMakesNoCornerOfAThickWall) { EXPECT_EQ(us("us-12", "us-12", kHalf), "none"); }

TEST(CornerPlan, AThinWallHasAnLUnitOrAFillerOverItsEnd) {
  EXPECT_EQ(us("us-6", "us-6", kFull), "0-250 x 0-90 6 in L-corner unit\n0-90 x 90-122 \n");
  EXPECT_EQ(us("us-4", "us-4", kFull), "0-250 x 0-58 4 in plain-end unit\n0-58 x 64-122 4 in filler\n");
}
// 7 5/8 - 5 5/8 - 3/8 = 1 5/8 in.
TEST(CornerPlan, WhereNoLUnitFitsAFillerClosesTheCorner) {
  EXPECT_EQ(us("us-6", "us-8", kFull),
            "0-250 x 0-90 plain-end unit\n0-122 x 96-122 filler 1 5/8\" thick, 7 5/8\" long\n");
  EXPECT_EQ(us("us-6", "us-6", kHalf), "0-122 x 0-90 \n0-90 x 96-122 filler 1 5/8\" thick, 5 5/8\" long\n");
  EXPECT_EQ(us("us-6", "us-6", kFull, walls::Makes::TwoCorners),
            "0-250 x 0-90 plain-end unit\n0-90 x 96-122 filler 1 5/8\" thick, 5 5/8\" long\n");
}
TEST(CornerPlan, AUnitHalfAUnitThickMakesItsCornerAlone) {
  EXPECT_EQ(us("us-8", "us-8", kFull), "0-250 x 0-122 \n");
  EXPECT_EQ(us("us-8", "us-12", kHalf), "0-122 x 0-122 \n");
}
TEST(CornerPlan, MetricSetsCloseToo) {
  const auto mm = [](const char* series) {
    const Series& s = *find_series(series);
    return told(corner_parts(s, s.thickness, true, s.full), Length::millimetres(1));
  };
  EXPECT_EQ(mm("au-290"), "0-390 x 0-190 190 mm unit\n300-390 x 200-290 90 mm filler\n");
  EXPECT_EQ(mm("au-140"), "0-390 x 0-140 140 mm L-corner unit\n0-140 x 140-190 \n");
  EXPECT_EQ(mm("uk-100"), "0-440 x 0-100 100 mm plain-end unit\n0-100 x 110-215 105 mm filler\n");
}

Job barred(const char* series, Grout grout) {
  Job job = job_with(outline_of({{288}, {192}, {288}, {192}}));
  job.units.series = series;
  job.steel.bars = Bars{};
  job.steel.bars->size = "#4";
  job.steel.bars->corners = true;
  job.steel.bars->grout = grout;
  return job;
}

// 12 in: the corner's unit is 7 5/8 thick with shells of 1 1/4, whichever wall runs through: 1 1/4 to 6 3/8 in from
// both outer faces. In its middle a 1/2 in bar keeps 2 5/16 in of grout. Half the wall, 5 13/16, would leave 5/16.
TEST(CornerBars, StandInTheMiddleOfWhatBothWallsCornerUnitsShare) {
  RESOLVED(building, barred("us-12", Grout::Coarse));
  ASSERT_EQ(building.fixed_bars.size(), 4u);
  for (const FixedBar& bar : building.fixed_bars) {
    EXPECT_EQ(bar.off_face, in16(3, 13));
    EXPECT_EQ(building.walls[static_cast<std::size_t>(bar.wall)].actual - bar.centre.distance_from_start(),
              in16(3, 13));
  }
  EXPECT_EQ(finding(building, "corner-bar-clearance"), nullptr);
}
TEST(CornerBars, StandInTheMiddleOfAThinWall) {
  RESOLVED(building, barred("us-6", Grout::Coarse));
  for (const FixedBar& bar : building.fixed_bars) EXPECT_EQ(bar.off_face, in16(2, 13));
}
// At a re-entrant corner the unit stands at the inner face: 11 5/8 - 3 13/16 in from the outer one, and as far beyond.
TEST(CornerBars, StandOnTheInnerSideOfAReEntrantCorner) {
  Job job = barred("us-12", Grout::Coarse);
  job.outline = outline_of({{288}, {240}, {144}, {96, Turn::Left}, {144}, {144}});
  RESOLVED(building, job);
  const auto bar = std::ranges::find_if(building.fixed_bars, [&](const FixedBar& one) {
    return !building.corners[static_cast<std::size_t>(one.corner)].convex;
  });
  ASSERT_NE(bar, building.fixed_bars.end());
  EXPECT_EQ(bar->off_face, in16(7, 13));
  EXPECT_EQ(bar->centre.distance_from_start() - building.walls[static_cast<std::size_t>(bar->wall)].actual,
            in16(7, 13));
}

// A block of the user's own, 4 in thick with shells of 1 in: 2 in clear. A 1/2 in bar leaves 3/4 in on either side.
// With shells of 1 1/4 it leaves 1/2, with shells of 1 5/16 in it leaves 7/16: too little for coarse grout, enough for
// fine.
TEST(CornerBars, WithoutRoomForTheirGroutAreAFinding) {
  const auto job = [](Length shell, Grout grout) {
    Job made = barred("us-8", grout);
    OwnSeries own;
    own.id = "mine";
    own.full = kFull, own.half = kHalf, own.thickness = in(4), own.height = kHalf, own.joint = in16(0, 6);
    own.face_shell = shell;
    own.full_cells = find_series("us-6")->full_cells, own.half_cells = find_series("us-6")->half_cells;
    made.units.own_series = {own};
    made.units.series = "mine";
    return made;
  };
  RESOLVED(roomy, job(in16(1, 4), Grout::Coarse));
  EXPECT_EQ(finding(roomy, "corner-bar-clearance"), nullptr);
  RESOLVED(tight, job(in16(1, 5), Grout::Coarse));
  ASSERT_NE(finding(tight, "corner-bar-clearance"), nullptr);
  EXPECT_EQ(test::told(finding(tight, "corner-bar-clearance")->says),
            "At corner B the bar #4 has 7/16\" of grout to the unit round it, and coarse grout needs 1/2\". Ask for a "
            "thinner bar or fine grout, or for no bars in corners.");
  EXPECT_EQ(finding(tight, "corner-bar-clearance")->place, "/outline/sides/0");
  EXPECT_NE(finding(tight, "bar-clearance-across"), nullptr);
  RESOLVED(fine, job(in16(1, 5), Grout::Fine));
  EXPECT_EQ(finding(fine, "corner-bar-clearance"), nullptr);
}

TEST(CornerSets, InBeamsAndHalfHighCoursesAreCutOnSiteAndThatIsSaid) {
  Job job = job_with(outline_of({{288}, {192}, {288}, {192}}));
  job.units.series = "us-12";
  job.steel.bond_beams = {12};
  job.heights.half_high_courses = {1, 5};
  RESOLVED(building, job);
  ASSERT_NE(finding(building, "corner-sets-in-beam"), nullptr);
  EXPECT_NE(test::told(finding(building, "corner-sets-in-beam")->says).find("(course 12)"), std::string::npos);
  ASSERT_NE(finding(building, "corner-sets-half-high"), nullptr);
  EXPECT_NE(
      test::told(finding(building, "corner-sets-half-high")->says).find("courses 1 and 5 saw each to 3 5/8\" high"),
      std::string::npos);
  job.units.series = "us-8";
  RESOLVED(plain, job);
  EXPECT_EQ(finding(plain, "corner-sets-in-beam"), nullptr);
  EXPECT_EQ(finding(plain, "corner-sets-half-high"), nullptr);
}

}  // namespace
}  // namespace stringcourse::tests
