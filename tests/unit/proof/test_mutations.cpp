// One fault at a time, put into a layout that passes: the checker names just the rule that it breaks. Costs are settled
// first where a fault changes them too, so that only the rule speaks.
#include <gtest/gtest.h>

#include "hand.hpp"

namespace stringcourse::hand {
namespace {

/// What is broken once the stated cost is made true.
std::string broken_but_cost(Plan plan) {
  settle(plan);
  return broken(plan);
}

TEST(Fault, PieceShiftedByANanometreBreaksJoints) {
  Plan plan = rectangle();
  ++piece_of(plan, 0, 1, 0, 1).start.numerator;
  EXPECT_EQ(broken(plan), "1 joints");
}
TEST(Fault, JointCountOffByOneBreaksJoints) {
  Plan plan = rectangle();
  ++run_of(plan, 2, 1).joints;
  EXPECT_EQ(broken(plan), "1 joints");
}
TEST(Fault, SlackOffByANanometreBreaksJoints) {
  Plan plan = rectangle();
  run_of(plan, 2, 1).slack += Length::nanometres(1);
  EXPECT_EQ(broken(plan), "1 joints");
}
TEST(Fault, MissingUnitBreaksJoints) {
  Plan plan = rectangle();
  relay(plan, 1, 2, 0, "F");  // one full where two fulls and a joint stood: 16 in are left over, also in plan
  EXPECT_EQ(broken_but_cost(plan), "1 joints, corners");
}
TEST(Fault, JointOutsideTheRangeBreaksJoints) {
  Plan plan = make_up_wall();
  relay(plan, 0, 1, 0, "FTFFq");  // 3 x 15 5/8 + 11 5/8 + 3 5/8 = 62 1/8 in pieces for 62 1/64
  EXPECT_EQ(broken_but_cost(plan), "1 joints");
}
TEST(Fault, NarrowerRangeAskedBreaksJoints) {
  Plan plan = make_up_wall();  // its joints are 3/8 in and a third of 1/64
  plan.job.units.joint_most = plan.building.joint_most = in(0, 3);
  EXPECT_EQ(broken(plan), "1 joints");
}
TEST(Fault, MakeUpPieceASixteenthShortBreaksJoints) {
  Plan plan = make_up_wall();
  relay(plan, 0, 1, 0, "FMFF", Length::sixteenths(223));  // joints miss j by 1/16 + 1/64 together
  EXPECT_EQ(broken_but_cost(plan), "1 joints");
}
TEST(Fault, MakeUpPieceOffTheSawsMarksIsNoPiece) {
  Plan plan = make_up_wall();
  relay(plan, 0, 1, 0, "FMFF", in(14) + Length::sixty_fourths(1));
  EXPECT_EQ(broken_but_cost(plan), "pieces");
}
TEST(Fault, TwoMakeUpPiecesInARunAreNoRow) {
  Plan plan = make_up_wall();
  relay(plan, 0, 1, 0, "FMMF", Length::sixteenths(237));  // 14 13/16 twice: 60 7/8 + 3 x 3/8 = 62
  EXPECT_EQ(broken_but_cost(plan), "pieces");
}
TEST(Fault, PieceANanometreShortIsNoPiece) {
  Plan plan = rectangle();
  piece_of(plan, 0, 1, 0, 1).length -= Length::nanometres(1);
  close(plan.layout);
  EXPECT_EQ(broken_but_cost(plan), "pieces");
}
TEST(Fault, CutThatTheSawDoesNotListIsNoPiece) {
  Plan plan = garden_wall();
  relay(plan, 0, 4, 0, "HFFFFTQF");
  plan.job.units.cuts = plan.building.cuts = {in(11, 5)};
  EXPECT_EQ(broken_but_cost(plan), "pieces");
}
TEST(Fault, UncutPieceOfCutLengthIsNoPiece) {
  Plan plan = garden_wall();
  relay(plan, 0, 4, 0, "HFFFFTQF");
  piece_of(plan, 0, 4, 0, 5).cut = CutEnd::None;
  EXPECT_EQ(broken_but_cost(plan), "pieces");
}
TEST(Fault, WrongNumberIsNoPiece) {
  Plan plan = rectangle();
  piece_of(plan, 3, 2, 0, 1).number = 3;
  EXPECT_EQ(broken(plan), "pieces");
}
TEST(Fault, ShortPieceBreaksLeastPiece) {
  Plan plan = garden_wall();
  relay(plan, 0, 4, 0, "HFFFFTQF");
  plan.job.units.cuts = plan.building.cuts;
  plan.job.units.least_piece = plan.building.least_piece = in(4);
  EXPECT_EQ(broken_but_cost(plan), "2 least piece");
  plan.layout.relaxed_piece = true;  // then 2 in will do
  EXPECT_EQ(broken_but_cost(plan), "");
}
TEST(Fault, StackedJointsBreakLap) {
  Plan plan = garden_wall();
  relay(plan, 0, 2, 0, "FHF");  // 15 13/16 over 15 13/16
  EXPECT_EQ(broken_but_cost(plan), "3 lap");
}
// Course 2 sawn so that a joint stands at 27 13/16, right over the side of the slot.
TEST(Fault, JointOverTheSideOfASlotBreaksLap) {
  Plan plan = lapped_tee();
  relay(plan, 0, 2, 0, "HFQTFH");  // joints 7, 23, 27, 39, 55 13/16
  EXPECT_EQ(broken_but_cost(plan), "3 lap");
}
TEST(Fault, JointOverTheEndOfALintelBreaksLap) {
  Plan plan = garden_wall();
  relay(plan, 0, 4, 0, "FFFFFFH");
  EXPECT_EQ(broken_but_cost(plan), "3 lap");
}
TEST(Fault, CutShowingAtAFreeEndBreaksFaces) {
  Plan plan = garden_wall();
  relay(plan, 0, 1, 0, "tQFH");  // a joint at 11 13/16, 4 in from 7 13/16
  EXPECT_EQ(broken_but_cost(plan), "4 faces");
}
TEST(Fault, CutShowingAtAJambBreaksFaces) {
  Plan plan = garden_wall();
  relay(plan, 0, 2, 1, "tQFF");  // 56 to 67 5/8, 68 to 71 5/8: a joint 4 in from 63 13/16; cut under the bearing too
  plan.layout.relaxed_bearing = true;
  EXPECT_EQ(broken_but_cost(plan), "4 faces");
}
TEST(Fault, CutShowingAtAControlJointBreaksFaces) {
  Plan plan = jointed_wall();
  relay(plan, 0, 1, 1, "tQF");  // 32 to 43 5/8, 44 to 47 5/8: a joint 4 in from 39 13/16
  EXPECT_EQ(broken_but_cost(plan), "4 faces");
}
TEST(Fault, CutAtACornerThatRunsThroughIsNoCorner) {
  Plan plan = rectangle();
  relay(plan, 0, 1, 0, "TQFF");
  EXPECT_EQ(broken_but_cost(plan), "corners");
}
TEST(Fault, SwappedCornerBitBreaksRuns) {
  Plan plan = rectangle();
  plan.layout.arriving_through[1] ^= 1;
  EXPECT_EQ(broken(plan), "runs");
}
TEST(Fault, SwappedBitAtAReentrantCornerBreaksRuns) {
  Plan plan = notched();
  plan.layout.arriving_through[3] ^= 1;
  EXPECT_EQ(broken(plan), "runs");
}
TEST(Fault, SwappedJunctionBitBreaksRuns) {
  Plan plan = lapped_tee();
  plan.layout.entering_first[0] = 0;
  EXPECT_EQ(broken(plan), "runs");
}
TEST(Fault, MissingRunBreaksRuns) {
  Plan plan = rectangle();
  relay(plan, 3, 2, 0, "");
  plan.layout.runs.pop_back();
  close(plan.layout);
  EXPECT_EQ(broken_but_cost(plan), "corners, runs");  // DA runs through in course 2: nothing stands at D and A
}
TEST(Fault, PiecesOutOfOrderBreakRuns) {
  Plan plan = rectangle();
  ++run_of(plan, 1, 1).first_piece;
  EXPECT_EQ(broken(plan), "runs");
}
TEST(Fault, RunThroughAnOpeningBreaksRuns) {
  Plan plan = garden_wall();
  plan.layout.runs[0].at_end = RunEnd::FreeEnd;
  EXPECT_EQ(broken(plan), "runs");
}
TEST(Fault, RowThatDiffersInsideABandBreaksBands) {
  Plan plan = banded_wall();
  relay(plan, 0, 4, 0, "HFTQFH");  // a joint at 35 13/16, 4 in from 31 13/16
  EXPECT_EQ(broken_but_cost(plan), "bands");
}
TEST(Fault, HalfKindOfFullLengthIsWrong) {
  Plan plan = rectangle();
  piece_of(plan, 0, 1, 0, 1).kind = UnitKind::Half;
  EXPECT_EQ(broken(plan), "kinds");
}
TEST(Fault, KindThatTheYardLacksIsWrong) {
  Plan plan = rectangle();
  piece_of(plan, 0, 1, 0, 0).kind = UnitKind::Corner;
  EXPECT_EQ(broken(plan), "kinds");
}
TEST(Fault, PlainUnitWhereACornerSetMustStandIsWrong) {
  Plan plan = rectangle("us-12");
  piece_of(plan, 0, 1, 0, 0).kind = UnitKind::Full;
  EXPECT_EQ(broken(plan), "corners, kinds");
}
TEST(Fault, PlainUnitOverAnOpeningIsWrong) {
  Plan plan = built_up_wall();
  piece_of(plan, 0, 3, 0, 2).kind = UnitKind::Full;
  EXPECT_EQ(broken(plan), "kinds");
}
TEST(Fault, LintelUnitAwayFromItsOpeningIsWrong) {
  Plan plan = built_up_wall();
  piece_of(plan, 0, 4, 0, 2).kind = UnitKind::Lintel;
  EXPECT_EQ(broken(plan), "kinds");
}
TEST(Fault, PlainUnitInABondBeamIsWrong) {
  Plan plan = banded_wall();
  for (UnitKind kind : {UnitKind::BondBeam, UnitKind::BondBeamHalf}) {
    plan.job.units.stocked->push_back(kind);
    plan.building.stocked.push_back(kind);
  }
  plan.job.steel.bond_beams = {4};
  plan.building.courses[3].bond_beam = true;
  for (int i = 0; i < 5; ++i)
    piece_of(plan, 0, 4, 0, i).kind = i % 4 == 0 ? UnitKind::BondBeamHalf : UnitKind::BondBeam;
  EXPECT_EQ(broken(plan), "");
  piece_of(plan, 0, 4, 0, 2).kind = UnitKind::Full;
  EXPECT_EQ(broken(plan), "kinds");
}
TEST(Fault, ShortBearingBreaksLintels) {
  Plan plan = garden_wall();
  plan.job.openings[0].lintel->bearing = in(8);
  plan.building.openings[0].lintel->least_bearing = in(8);
  EXPECT_EQ(broken(plan), "6 lintels");
}
// As laid it bears 7 5/8 at either end (32 to 63 5/8 over 39 5/8 to 56): nothing else may be claimed.
TEST(Fault, AnotherBearingThanTheUnitsHaveBreaksLintels) {
  Plan plan = built_up_wall();
  plan.layout.lintels[0].end_bearing = in(8);
  EXPECT_EQ(broken(plan), "6 lintels");
}
// 8 in asked: the unit that ends at 7 5/8 does not reach it, so the next one belongs to the lintel too (48 + 15 5/8).
TEST(Fault, ALintelOfUnitsShorterThanAskedBreaksLintels) {
  Plan plan = built_up_wall();
  plan.job.openings[0].lintel->bearing = in(8);
  plan.building.openings[0].lintel->least_bearing = in(8);
  EXPECT_EQ(broken(plan), "6 lintels");
  piece_of(plan, 0, 3, 0, 1).kind = piece_of(plan, 0, 3, 0, 4).kind = UnitKind::Lintel;
  plan.layout.lintels[0] = {0, in(23, 5), in(23, 5)};
  EXPECT_EQ(broken(plan), "");
}
TEST(Fault, UnitsWithoutAFloorOverAnOpeningBreakKindsWhereLintelUnitsAreStocked) {
  Plan plan = built_up_wall();
  for (UnitKind kind : {UnitKind::BondBeam, UnitKind::BondBeamHalf}) {
    plan.job.units.stocked->push_back(kind);
    plan.building.stocked.push_back(kind);
  }
  piece_of(plan, 0, 3, 0, 2).kind = UnitKind::BondBeam;
  EXPECT_EQ(broken(plan), "kinds");
}
TEST(Fault, LintelOffTheHalfUnitsBreaksLintels) {
  Plan plan = garden_wall();
  plan.layout.lintels[0].end_bearing += Length::sixteenths(1);
  run_of(plan, 0, 3, 1).start += Length::sixteenths(1);
  close(plan.layout);
  EXPECT_EQ(broken_but_cost(plan), "6 lintels");
}
TEST(Fault, CutUnderABearingBreaksLintels) {
  Plan plan = garden_wall();
  relay(plan, 0, 2, 0, "HFQt");  // the last piece stands from 28 to 39 5/8, the bearing from 32
  EXPECT_EQ(broken_but_cost(plan), "6 lintels");
  plan.layout.relaxed_bearing = true;  // it keeps a whole cell
  EXPECT_EQ(broken_but_cost(plan), "");
}
TEST(Fault, SecondLintelOverAnOpeningBreaksLintels) {
  Plan plan = garden_wall();
  plan.layout.lintels.push_back(plan.layout.lintels[0]);
  EXPECT_EQ(broken(plan), "6 lintels");
}
TEST(Fault, ControlJointOffTheGridBreaksControlJoints) {
  Plan plan = jointed_wall();
  const Length off = Length::sixteenths(1);
  ControlJoint& joint = plan.building.control_joints[0];
  joint.from = joint.from + off;
  joint.to = joint.to + off;
  for (int course : {1, 2}) {
    run_of(plan, 0, course, 0).end += off;
    run_of(plan, 0, course, 1).start += off;
  }
  close(plan.layout);
  EXPECT_EQ(broken_but_cost(plan), "7 control joints");
}
TEST(Fault, ControlJointWiderThanAJointBreaksControlJoints) {
  Plan plan = jointed_wall();
  const Length off = Length::sixteenths(1);
  plan.building.control_joints[0].from = plan.building.control_joints[0].from - off;
  plan.building.control_joints[0].to = plan.building.control_joints[0].to + off;
  for (int course : {1, 2}) {
    run_of(plan, 0, course, 0).end -= off;
    run_of(plan, 0, course, 1).start += off;
  }
  close(plan.layout);
  EXPECT_EQ(broken_but_cost(plan), "7 control joints");
}

class StatedCost : public testing::TestWithParam<std::int64_t Cost::*> {};
TEST_P(StatedCost, OffByOneIsFound) {
  Plan plan = barred_wall();
  ++(plan.layout.cost.*GetParam());
  EXPECT_EQ(broken(plan), "cost");
}
INSTANTIATE_TEST_SUITE_P(Terms, StatedCost,
                         testing::Values(&Cost::short_laps, &Cost::cuts, &Cost::short_pieces, &Cost::shifted_joints,
                                         &Cost::extra_bars, &Cost::joint_deviation, &Cost::units));
TEST(Fault, CutLengthsOffByOneAreFound) {
  Plan plan = lapped_tee();
  ++plan.layout.cut_lengths;
  EXPECT_EQ(broken(plan), "cost");
}
TEST(Fault, ProofWithAnotherBoundIsFound) {
  Plan plan = rectangle();
  plan.layout.proven = true;
  EXPECT_EQ(broken(plan), "cost");
}

}  // namespace
}  // namespace stringcourse::hand
