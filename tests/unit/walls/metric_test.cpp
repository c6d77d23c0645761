// Buildings of metric block.
#include <gtest/gtest.h>

#include "made_jobs.hpp"

namespace stringcourse::tests {
namespace {

Length mm(std::int64_t count) { return Length::millimetres(count); }

Job metric_shed(const char* series) {
  Job job = shed();
  job.tape = Tape::Millimetres;
  job.units.series = series;
  const std::int64_t pitch = std::string_view(series).starts_with("uk") ? 225 : 200;
  for (std::size_t i = 0; i < 4; ++i) job.outline.sides[i].length = nominal(mm(pitch * (i % 2 == 0 ? 36 : 28)));
  job.heights.courses = 12;
  return job;
}

TEST(Metric, ATwoHundredModuleSideIsNominalLessTenMillimetres) {
  // 390 x 190 mm block, 10 mm joint, 400 / 200 module: 7200 nominal is 7190.
  RESOLVED(building, metric_shed("au-190"));
  EXPECT_EQ(building.walls[0].actual, mm(7190));
  EXPECT_EQ(building.courses[3].top, mm(600));  // three courses = 600
  EXPECT_EQ(building.cuts, (std::vector{mm(290), mm(90)}));
}

TEST(Metric, BlockOfFourHundredAndFortyIsCutToWholeMillimetres) {
  // 450 mm module: a quarter less the joint is 102.5, sawn 102; three quarters 327.5, sawn 327.
  RESOLVED(building, metric_shed("uk-140"));
  EXPECT_EQ(building.walls[0].actual, mm(225 * 36 - 10));
  EXPECT_EQ(building.cuts, (std::vector{mm(327), mm(102)}));
  EXPECT_EQ(building.least_piece, mm(102));
}

TEST(Metric, TheUkRuleKeepsPanelsWithinSixMetresAndThreeFromACorner) {
  Job job = metric_shed("uk-140");
  job.control_joints.rule = JointRule::Uk;
  RESOLVED(building, job);
  // 6 m in whole half units of 225: 5850. Sides of 8100 and 6300 need two joints each, within 2925 of both corners.
  ASSERT_EQ(building.control_joints.size(), 8u);
  for (const ControlJoint& joint : building.control_joints) {
    const Length line = joint.to.distance_from_start();
    EXPECT_EQ(joint.to - joint.from, mm(10));
    EXPECT_TRUE(line.is_multiple_of(mm(225)));
    EXPECT_TRUE(line <= mm(2925) || building.walls[static_cast<std::size_t>(joint.wall)].nominal - line <= mm(2925));
  }
}

TEST(Metric, RefusalsSpeakInMillimetres) {
  Job job = metric_shed("au-190");
  job.outline.sides[2].length = nominal(mm(7000));
  REFUSED(refusals, job);
  EXPECT_NE(test::told(refusal(refusals, "outline-open")->reason, refusals.tape).find("200 mm to the west"),
            std::string::npos)
      << codes(refusals);
}

TEST(Metric, ThinBlockWithoutCellsStandsButTakesNoBars) {
  EXPECT_TRUE(resolve(metric_shed("uk-100")).has_value());
  Job job = metric_shed("uk-100");
  job.steel.bars = Bars{};
  job.steel.bars->size = "H12";
  REFUSED(refusals, job);
  EXPECT_NE(refusal(refusals, "bars-no-cell"), nullptr);
}

}  // namespace
}  // namespace stringcourse::tests
