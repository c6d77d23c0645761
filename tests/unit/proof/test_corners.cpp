// Corners in plan. A rectangle of two courses, of 12 in block (11 5/8 thick, leg 7 5/8) and of 6 in block (5 5/8 thick, the
// same leg): the wall that butts begins at 8 in, one joint beyond the leg.
#include <gtest/gtest.h>

#include "hand.hpp"

namespace stringcourse::hand {
namespace {

/// The rectangle with a bond beam in course 2, laid in bond-beam units but for its corners.
Plan with_beam(const std::string& series) {
  Plan plan = rectangle(series);
  plan.job.units.stocked->push_back(Kind::BondBeam);
  plan.building.stocked.push_back(Kind::BondBeam);
  plan.job.steel.bond_beams = {2};
  plan.building.courses[1].bond_beam = true;
  for (const Run& run : plan.layout.runs) {
    if (run.course != 2) continue;
    for (std::uint32_t i = 0; i < run.piece_count; ++i) {
      Piece& piece = plan.layout.pieces[run.first_piece + i];
      if (piece.kind == Kind::Full) piece.kind = Kind::BondBeam;
    }
  }
  return plan;
}

/// In course 2 side 1 (BC) runs through at its first corner.
std::string with_plain_beam_unit_at_b(const std::string& series) {
  Plan plan = with_beam(series);
  piece_of(plan, 1, 2, 0, 0).kind = Kind::BondBeam;
  return told(plan);
}

TEST(Corners, SetsInABondBeamPass) {
  for (const char* series : {"us-6", "us-10", "us-12"}) EXPECT_EQ(told(with_beam(series)), "") << series;
}
// 11 5/8 thick, it covers 0 to 11 5/8 of the other wall's line, whose first unit begins at 8: 3 5/8 in of both in one place.
TEST(Corners, AThickPlainUnitOverlapsTheWallThatButts) {
  const std::string text = with_plain_beam_unit_at_b("us-12");
  EXPECT_NE(text.find("corners | corner B course 2 | units of the two walls overlap in plan\n"), std::string::npos) << text;
}
// 5 5/8 thick, it leaves 5 5/8 to 8 open: 2 3/8 in where a joint is at most 1/2.
TEST(Corners, AThinPlainUnitLeavesAGap) {
  const std::string text = with_plain_beam_unit_at_b("us-6");
  EXPECT_NE(text.find("corners | corner B course 2 | a gap wider than a joint is left in plan\n"), std::string::npos) << text;
}
// Sets of a series whose thickness is the leg do not exist; a plain corner of 8 in block closes as it is.
TEST(Corners, PlainUnitsOfHalfAUnitsThicknessCloseARectangleAndAnL) {
  EXPECT_EQ(told(rectangle()), "");
  EXPECT_EQ(told(notched()), "");
}
// Without sets the wall that butts begins a joint beyond the thickness. Said of a 12 in layout laid for sets, it is wrong:
// runs end elsewhere, and the plain corners overlap.
TEST(Corners, ALayoutForSetsIsNoneForPlainUnits) {
  Plan plan = rectangle("us-12");
  plan.job.units.stocked = std::vector<Kind>{Kind::Full, Kind::Half};
  plan.building.stocked = {Kind::Full, Kind::Half};
  plan.building.corner_sets_stocked = false;
  for (Piece& piece : plan.layout.pieces) piece.kind = Kind::Full;
  EXPECT_EQ(broken(plan), "corners, runs");
}
// A joint of 1/4 in between the corner unit and the wall that butts is the least; a unit a sixteenth nearer is too near.
TEST(Corners, TheWallThatButtsKeepsTheLeastJoint) {
  Plan plan = rectangle("us-12");
  const auto move = [&](Length by) { piece_of(plan, 0, 2, 0, 0).start.numerator += by.in_nanometres() * piece_of(plan, 0, 2, 0, 0).start.denominator; };
  move(-in(0, 1));
  EXPECT_EQ(told(plan).find("corners |"), std::string::npos);
  move(-Length::sixteenths(1));
  EXPECT_NE(told(plan).find("corners | corner A course 2 | units of the two walls stand nearer than the least joint"), std::string::npos) << told(plan);
}

}  // namespace
}  // namespace stringcourse::hand
