// Corners in plan. A rectangle of two courses, of 12 in block (11 5/8 thick, leg 7 5/8) and of 6 in block (5 5/8 thick,
// the same leg): the wall that butts begins at 8 in, one joint beyond the leg.
#include <gtest/gtest.h>

#include "hand.hpp"

namespace stringcourse::hand {
namespace {

/// The rectangle with a bond beam in course 2, laid in bond-beam units but for its corners.
Plan with_beam(const std::string& series) {
  Plan plan = rectangle(series);
  plan.job.units.stocked->push_back(UnitKind::BondBeam);
  plan.building.stocked.push_back(UnitKind::BondBeam);
  plan.job.steel.bond_beams = {2};
  plan.building.courses[1].bond_beam = true;
  for (const Run& run : plan.layout.runs) {
    if (run.course != 2) continue;
    for (std::uint32_t i = 0; i < run.piece_count; ++i) {
      Piece& piece = plan.layout.pieces[run.first_piece + i];
      if (piece.kind == UnitKind::Full) piece.kind = UnitKind::BondBeam;
    }
  }
  return plan;
}

/// In course 2 side 1 (BC) runs through at its first corner.
std::string with_plain_beam_unit_at_b(const std::string& series) {
  Plan plan = with_beam(series);
  piece_of(plan, 1, 2, 0, 0).kind = UnitKind::BondBeam;
  return told(plan);
}

TEST(Corners, SetsInABondBeamPass) {
  for (const char* series : {"us-6", "us-10", "us-12"}) EXPECT_EQ(told(with_beam(series)), "") << series;
}
// 11 5/8 thick, it covers 0 to 11 5/8 of the other wall's line, whose first unit begins at 8: 3 5/8 in of both in one
// place.
TEST(Corners, AThickPlainUnitOverlapsTheWallThatButts) {
  const std::string text = with_plain_beam_unit_at_b("us-12");
  EXPECT_NE(text.find("corners | corner B course 2 | units of the two walls overlap in plan\n"), std::string::npos)
      << text;
}
// 5 5/8 thick, it leaves 5 5/8 to 8 open: 2 3/8 in where a joint is at most 1/2.
TEST(Corners, AThinPlainUnitLeavesAGap) {
  const std::string text = with_plain_beam_unit_at_b("us-6");
  EXPECT_NE(text.find("corners | corner B course 2 | a gap wider than a joint is left in plan\n"), std::string::npos)
      << text;
}
// Sets of a series whose thickness is the leg do not exist; a plain corner of 8 in block closes as it is.
TEST(Corners, PlainUnitsOfHalfAUnitsThicknessCloseARectangleAndAnL) {
  EXPECT_EQ(told(rectangle()), "");
  EXPECT_EQ(told(notched()), "");
}
// Without sets the wall that butts begins a joint beyond the thickness. Said of a 12 in layout laid for sets, it is
// wrong: runs end elsewhere, and the plain corners overlap.
TEST(Corners, ALayoutForSetsIsNoneForPlainUnits) {
  Plan plan = rectangle("us-12");
  plan.job.units.stocked = std::vector<UnitKind>{UnitKind::Full, UnitKind::Half};
  plan.building.stocked = {UnitKind::Full, UnitKind::Half};
  plan.building.corner_sets_stocked = false;
  for (Piece& piece : plan.layout.pieces) piece.kind = UnitKind::Full;
  EXPECT_EQ(broken(plan), "corners, runs");
}
// A joint of 1/4 in between the corner unit and the wall that butts is the least; a unit a sixteenth nearer is too
// near.
TEST(Corners, TheWallThatButtsKeepsTheLeastJoint) {
  Plan plan = rectangle("us-12");
  const auto move = [&](Length by) {
    piece_of(plan, 0, 2, 0, 0).start.numerator += by.in_nanometres() * piece_of(plan, 0, 2, 0, 0).start.denominator;
  };
  move(-in(0, 1));
  EXPECT_EQ(told(plan).find("corners |"), std::string::npos);
  move(-Length::sixteenths(1));
  EXPECT_NE(told(plan).find("corners | corner A course 2 | units of the two walls stand nearer than the least joint"),
            std::string::npos)
      << told(plan);
}

/// A jog: BC between the convex corner B and the re-entrant C, laid in its two courses; the other sides are not looked
/// at.
Plan jog(const std::string& series, int jog_inches) {
  Plan plan = rectangle(series);
  plan.job.outline.sides.clear();
  plan.building.walls.clear(), plan.building.corners.clear();
  plan.layout.runs.clear(), plan.layout.pieces.clear();
  add_outline(plan, {48, jog_inches, 48, 48, 96, 48 + jog_inches}, "RLRRRR");
  plan.layout.arriving_through = {1, 0, 0, 0, 0, 0};  // BC runs through at both its corners in course 2
  return plan;
}
// 12 in walls, 4 in jog: 4 + 11 5/8 is one unit, 7 5/8 thick. It would cover 0 to 7 5/8 in from the outer face for B,
// and 4 to 11 5/8, up to the inner face, for C.
TEST(Corners, OneUnitDoesNotTurnAThickWallBothWays) {
  Plan plan = jog("us-12", 4);
  lay(plan, 1, 2, in(0), in(15, 5), RunEnd::ThroughCorner, RunEnd::ThroughCorner, "C");
  close(plan.layout);
  for (const char* corner : {"B", "C"})
    EXPECT_TRUE(told(plan).contains(std::string("corner ") + corner +
                                    " course 2 | one unit would have to stand at the outer and at "
                                    "the inner face\n"))
        << told(plan);
}
// 6 in walls, 2 in jog: where it runs through at one corner and butts at the other, 2 + 5 5/8 - 7 5/8 is left: nothing.
// The side before it begins at 8 in, so that 5 5/8 by 2 3/8 in lie open.
TEST(Corners, AJogOfWhichNothingIsLeftIsAHole) {
  Plan plan = jog("us-6", 2);
  plan.layout.arriving_through[1] = 1;  // in course 1 BC runs through at C alone, in course 2 at B alone
  lay(plan, 0, 1, in(0), in(47, 5), RunEnd::ThroughCorner, RunEnd::ThroughCorner, "CFC");
  close(plan.layout);
  for (const char* where : {"C course 1", "B course 2"})
    EXPECT_TRUE(told(plan).contains(std::string("corner ") + where + " | nothing stands where a wall runs through\n"))
        << told(plan);
}

}  // namespace
}  // namespace stringcourse::hand
