// Published and derived counts, through the whole of solve(); every layout is certified.
#include <gtest/gtest.h>

#include <map>

#include "certify.hpp"
#include "supply/counts.hpp"
#include "unit/walls/made_jobs.hpp"

namespace stringcourse::property {
namespace {

using tests::at;
using tests::in;
using tests::in16;

Answer answer_of(const Job& job) {
  auto answer = solve(job, {});
  EXPECT_TRUE(answer.has_value());
  if (!answer) return {};
  EXPECT_TRUE(answer->layout.stopped.empty());
  EXPECT_TRUE(answer->layout.proven);
  EXPECT_EQ(faults_of(*answer), "");
  return std::move(*answer);
}

Job straight_wall(Length length, int courses) {
  Job job = tests::job_with(tests::outline_of({{1}}, false), courses);
  job.outline.sides.front().length = {length, Basis::Nominal};
  return job;
}

// A 20 x 8 ft building, 8 ft high: 40 blocks a course at 3/4 of a block a foot, once each corner is counted once:
// 40 x 12 = 480. The rule of thumb that counts the corners in both sides says 56 ft x 3/4 x 12 = 504 (a builder
// manual's example, which asks that corner handling be made explicit): 4 corners x 12 courses x half a block = 24 too
// many.
TEST(Published, ABuildingOfTwentyByEightFeetTakes480BlocksWithEachCornerCountedOnce) {
  const Answer answer = answer_of(tests::job_with(tests::outline_of({{240}, {96}, {240}, {96}}), 12));
  EXPECT_EQ(answer.layout.cost.units, 480);
  EXPECT_EQ(answer.layout.cost.units + 4 * 12 / 2, 504);
  EXPECT_EQ(answer.layout.cost.cuts, 0);
  for (const Piece& piece : answer.layout.pieces) EXPECT_EQ(piece.length, in16(15, 10));
}

// 100 x 10 ft of plain wall: 75 x 15 = 1125 blocks (the same manual). Between free ends every other course has two
// halves for one whole: 7 courses of one piece more.
TEST(Published, AWallOfAHundredByTenFeetTakes1125Blocks) {
  const Answer answer = answer_of(straight_wall(Length::feet(100), 15));
  std::int64_t halves = 0, wholes = 0;
  for (const Piece& piece : answer.layout.pieces) (piece.length == in16(7, 10) ? halves : wholes) += 1;
  EXPECT_EQ(2 * wholes + halves, 2 * 1125);
  EXPECT_EQ(halves, 7 * 2);
  EXPECT_EQ(answer.layout.cost.cuts, 0);
}

/// 24'-0" x 8'-0", a door 3'-4" x 7'-4" and a window 4'-0" x 4'-0".
Job wall_with_door_and_window() {
  Job job = straight_wall(Length::feet(24), 12);
  job.openings = {tests::plain_hole("D1", "AB", at("A", in(48)), in(40), in(88)),
                  tests::window_hole("W1", "AB", at("A", in(144)), in(48), in(48), 5)};
  return job;
}

TEST(Published, TheWallWithDoorAndWindowHasTheSizesThatFollowFromItsNominalOnes) {
  const Answer answer = answer_of(wall_with_door_and_window());
  EXPECT_EQ(answer.building.walls.front().actual, Length::feet(23) + in16(11, 10));
  EXPECT_EQ(answer.building.openings[0].width(), in16(40, 6));
  EXPECT_EQ(answer.building.openings[1].width(), in16(48, 6));
}

// Conservation: the faces of the pieces and of their joints fill the net area. Counted on nominal cells of 8 x 8 in
// (half a unit with its joints), a course of n nominal half units holds n halves whatever it is laid of, as whole units
// cover two and saw cuts with their joints cover the rest. Net area 192 - 24.44 - 16 = 151.56 sq ft at 8/9 sq ft a
// block = 170.5 blocks.
TEST(Published, TheWallWithDoorAndWindowIsMadeOf170AndAHalfBlocksOfFace) {
  const Answer answer = answer_of(wall_with_door_and_window());
  Length laid;  // along all courses, each piece with one joint
  std::int64_t runs = 0;
  for (const stringcourse::Run& run : answer.layout.runs) {
    laid += run.end - run.start;
    ++runs;
    Length pieces;
    for (std::uint32_t p = 0; p < run.piece_count; ++p) pieces += answer.layout.begin_of(run)[p].length;
    EXPECT_EQ(pieces + run.slack, run.end - run.start);
  }
  laid += in16(0, 6) * runs;  // every run is one joint short of its nominal length: free ends and jambs at both ends
  EXPECT_EQ(laid * 2, in(16) * 341);  // 170.5 blocks
  EXPECT_EQ(answer.layout.cost.cuts, 0);
  EXPECT_EQ(answer.layout.cost.short_laps, 0);
}

// 40 in is five half units. With bearings of one half unit each a one-piece lintel is seven half units long, its ends
// stand over head joints of the same course below; 8 and 16 in makes it 8 half units and closes.
TEST(Published, AOnePieceLintelOverADoorOfThreeFeetFourBearsEightAndSixteenInches) {
  Job job = straight_wall(Length::feet(24), 14);
  job.openings = {tests::plain_hole("D1", "AB", at("A", in(64)), in(40), in(88))};
  job.openings.front().lintel = Lintel{LintelMake::OnePiece, 1, in16(7, 10), {}};
  const Answer answer = answer_of(job);
  ASSERT_EQ(answer.layout.lintels.size(), 1u);
  const PlacedLintel& lintel = answer.layout.lintels.front();
  EXPECT_EQ(std::min(lintel.start_bearing, lintel.end_bearing), in16(7, 10));
  EXPECT_EQ(std::max(lintel.start_bearing, lintel.end_bearing), in16(15, 10));
  EXPECT_EQ(answer.layout.cost.cuts, 0);
  EXPECT_EQ(answer.layout.cost.short_laps, 0);
}

// A jog of 8 in: the side between its convex and its re-entrant corner is one nominal half unit, and actual too. It is
// laid only if both its corners run the same way: one whole unit over one joint, in turn.
TEST(Published, AJogOfEightInchesIsLaidOfWholeUnitsAndSingleJoints) {
  const Answer answer =
      answer_of(tests::job_with(tests::outline_of({{240}, {160}, {120}, {8, Turn::Left}, {120}, {152}}), 6));
  EXPECT_EQ(answer.layout.cost.cuts, 0);
  int joints_alone = 0, whole_units = 0;
  for (const stringcourse::Run& run : answer.layout.runs) {
    if (answer.building.walls[static_cast<std::size_t>(run.wall)].name != "DE") continue;
    if (run.piece_count == 0) {
      ++joints_alone;
      EXPECT_EQ(run.end - run.start, in16(0, 6));
    } else {
      ++whole_units;
      EXPECT_EQ(run.piece_count, 1u);
      EXPECT_EQ(answer.layout.begin_of(run)->length, in16(15, 10));
    }
  }
  EXPECT_EQ(joints_alone, 3);
  EXPECT_EQ(whole_units, 3);
}

// The corner law (docs/bond-model.md): 8 in walls on the half-unit grid, no openings, close without a cut, a short lap
// or a half.
TEST(CornerLaw, ThreeHundredRectanglesAndLPlansOfEightInchBlockLayWhole) {
  int plans = 0;
  const auto expect_whole = [&](const Outline& outline, int courses) {
    const auto answer = solve(tests::job_with(outline, courses), {});
    ASSERT_TRUE(answer.has_value()) << plans;
    const Layout& layout = answer->layout;
    EXPECT_TRUE(layout.stopped.empty() && layout.proven) << plans;
    EXPECT_EQ(layout.cost.cuts + layout.cost.short_laps + layout.cost.short_pieces, 0) << plans;
    for (const Piece& piece : layout.pieces) ASSERT_EQ(piece.length, in16(15, 10)) << plans;
    if (plans % 10 == 0) EXPECT_EQ(faults_of(*answer), "") << plans;
    ++plans;
  };
  for (std::int64_t a = 6; a < 20; ++a)
    for (std::int64_t b = 6; b < 16; ++b) expect_whole(tests::outline_of({{8 * a}, {8 * b}, {8 * a}, {8 * b}}), 3);
  for (std::int64_t a = 12; a < 16; ++a)
    for (std::int64_t c = 4; c < 9; ++c)
      for (std::int64_t d = 2; d < 10; ++d)
        expect_whole(
            tests::outline_of({{8 * a}, {8 * 14}, {8 * c}, {8 * d, Turn::Left}, {8 * (a - c)}, {8 * (14 - d)}}), 4);
  EXPECT_EQ(plans, 140 + 160);
}

}  // namespace
}  // namespace stringcourse::property
