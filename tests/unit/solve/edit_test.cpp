// Edits are judged by the building that the changed job resolves to: where jambs and corners then stand.
#include <gtest/gtest.h>

#include "answer/packing.hpp"
#include "document/page_parts.hpp"
#include "edits/edit.hpp"
#include "sheet/drawing.hpp"
#include "solve/printed_set.hpp"
#include "solve/solve.hpp"
#include "told.hpp"
#include "unit/walls/made_jobs.hpp"
#include "walls/resolve.hpp"

namespace stringcourse {
namespace {

using tests::at;
using tests::in;

Building built(const Job& job) {
  const auto building = resolve(job);
  EXPECT_TRUE(building.has_value()) << (building ? std::string() : tests::codes(building.error()));
  return building.value_or(Building{});
}

Building after(const Job& job, const Edit& edit) {
  const auto changed = edited(job, built(job), edit);
  EXPECT_TRUE(changed.has_value()) << test::told(changed.error_or(Fact()));
  return built(changed.value_or(job));
}

/// One door on AB, stated from either end of it and to either of its jambs.
Job with_door(const char* from, std::optional<Face> to) {
  Job job = tests::shed();
  job.openings = {tests::plain_hole("D1", "AB", at(from, in(64)), in(40), in(80))};
  job.openings.front().place.to = to;
  return job;
}

const std::pair<const char*, std::optional<Face>> kStated[] = {
    {"A", std::nullopt}, {"A", Face::Near}, {"A", Face::Far}, {"B", Face::Near}, {"B", Face::Far}};

TEST(Edit, AnOpeningComesWhereItIsMovedHoweverItIsStated) {
  for (const auto& [from, to] : kStated) {
    const Job job = with_door(from, to);
    const ResolvedOpening before = built(job).openings.front();
    const Length wanted = before.from.distance_from_start() + in(5);
    const ResolvedOpening moved = after(job, MoveOpening{0, wanted}).openings.front();
    EXPECT_EQ(moved.from.distance_from_start(), wanted) << from;
    EXPECT_EQ(moved.width(), before.width()) << from;
  }
}

TEST(Edit, AResizedOpeningKeepsItsOtherJambHoweverItIsStated) {
  for (const auto& [from, to] : kStated) {
    const Job job = with_door(from, to);
    const ResolvedOpening before = built(job).openings.front();
    const ResolvedOpening near =
        after(job, ResizeOpening{0, Jamb::From, before.from.distance_from_start() - in(8)}).openings.front();
    EXPECT_EQ(near.from, before.from - in(8)) << from;
    EXPECT_EQ(near.to, before.to) << from;
    const ResolvedOpening far =
        after(job, ResizeOpening{0, Jamb::To, before.to.distance_from_start() + in(8)}).openings.front();
    EXPECT_EQ(far.from, before.from) << from;
    EXPECT_EQ(far.to, before.to + in(8)) << from;
  }
}

TEST(Edit, AFreeDragIsRoundedToTheTapeAndAPlaceOnItIsKept) {
  const Job job = with_door("A", std::nullopt);
  const Length from = built(job).openings.front().from.distance_from_start();
  // 3.000001 in is rounded to 3 in; 3 1/64 in stands on the tape's finest line and is kept.
  EXPECT_EQ(
      after(job, MoveOpening{0, from + in(3) + Length::nanometres(25)}).openings.front().from.distance_from_start(),
      from + in(3));
  const Length fine = Length::sixty_fourths(3 * 64 + 1);
  EXPECT_EQ(after(job, MoveOpening{0, from + fine}).openings.front().from.distance_from_start(), from + fine);
}

TEST(Edit, ASideOfARectangleMovesOutwardAndItsNeighboursGrow) {
  const Job job = tests::shed();
  for (std::size_t side = 0; side < 4; ++side) {
    const Building before = built(job), moved = after(job, MoveSide{side, in(16)});
    for (std::size_t other = 0; other < 4; ++other) {
      const Length grown = moved.walls[other].actual - before.walls[other].actual;
      EXPECT_EQ(grown, other % 2 == side % 2 ? Length() : in(16)) << side << " " << other;
    }
  }
}

TEST(Edit, ASideAtAReentrantCornerShortensOneNeighbourAndLengthensTheOther) {
  // An L: the turn at D is to the left.
  const Job job = tests::job_with(tests::outline_of({{320}, {240}, {160, Turn::Left}, {80}, {160}, {320}}));
  const Building before = built(job),
                 moved = after(job, MoveSide{3, in(16)});  // DE outward, to the west: CD ends sooner
  EXPECT_EQ(moved.walls[2].actual - before.walls[2].actual, in(-16));
  EXPECT_EQ(moved.walls[4].actual - before.walls[4].actual, in(16));
  EXPECT_EQ(moved.walls[0].actual, before.walls[0].actual);
}

TEST(Edit, ATakenOfferMovesTheJambOrTheHeadThatItSaysAndNoOther) {
  for (const auto& [from, to] : kStated) {
    const Job job = with_door(from, to);
    const ResolvedOpening before = built(job).openings.front();
    const auto taken = [&](OfferWhat what) {
      return after(job, TakeOffer{what, "/openings/0", in(8)}).openings.front();
    };
    const ResolvedOpening near = taken(OfferWhat::MoveNearJamb), far = taken(OfferWhat::MoveFarJamb),
                          head = taken(OfferWhat::MoveHead);
    EXPECT_EQ(near.from, before.from + in(8)) << from;
    EXPECT_EQ(near.to, before.to) << from;
    EXPECT_EQ(far.from, before.from) << from;
    EXPECT_EQ(far.to, before.to + in(8)) << from;
    EXPECT_EQ(head.soffit, before.soffit + in(8)) << from;
    EXPECT_EQ(head.from, before.from) << from;
    EXPECT_EQ(head.to, before.to) << from;
  }
}

TEST(Edit, WhatIsNotThereIsSaid) {
  const Job job = tests::shed();
  const Building building = built(job);
  EXPECT_FALSE(edited(job, building, MoveOpening{99, in(0)}).has_value());
  EXPECT_FALSE(edited(job, building, MoveSide{99, in(8)}).has_value());
  EXPECT_FALSE(edited(job, building, TakeOffer{OfferWhat::MoveOpening, "/openings/0x", in(8)}).has_value());
  EXPECT_FALSE(edited(job, building, TakeOffer{OfferWhat::ChangeSide, "/outline/sides/", in(8)}).has_value());
  EXPECT_FALSE(edited(job, building, MoveHead{0, in(64)}).has_value());
}

TEST(Edit, WhatIsPutInStandsOnTheGridWithAWholeUnitOfWallBesideIt) {
  // 24 ft: doors of 40 in at 48, 48 + 40 + 16 = 104, 160 and 216; a fifth at 272 would end beyond the wall.
  Job job = tests::shed();
  for (const int at : {48, 104, 160, 216}) {
    const auto changed = edited(job, built(job), PutIn{NewPart::Door, "/outline/sides/2"});
    ASSERT_TRUE(changed.has_value());
    job = *changed;
    const Opening& door = job.openings.back();
    EXPECT_EQ(door.on, "CD");
    EXPECT_EQ(door.place.from, "C");
    EXPECT_EQ(door.place.at.length, in(at));
    const ResolvedOpening resolved = built(job).openings.back();
    EXPECT_EQ(resolved.width(), Length::sixteenths(40 * 16 + 6));
  }
  const auto full = edited(job, built(job), PutIn{NewPart::Door, "/outline/sides/2"});
  ASSERT_TRUE(full.has_value());
  EXPECT_EQ(full->openings.size(), 5u);
  EXPECT_EQ(full->openings.back().name, "D5");
  EXPECT_FALSE(resolve(*full).has_value());
  EXPECT_FALSE(edited(job, built(job), PutIn{NewPart::Door, "/outline/sides/4"}).has_value());
}

TEST(Edit, UsualLeavesArePutInWithTheirFramesAndWhatIsPackedIsSaid) {
  // A leaf of 3-0 x 6-8 in a frame of 2 in: 40 in by 82 in. The hole is 40 3/8 in wide, and its head on a course line
  // at 88 in: 3/16 in at each jamb and 6 in at the head are packed. Frames of 2 3/16 in and 8 in would leave nothing.
  const Job job = tests::shed();
  const auto changed = edited(job, built(job), PutIn{NewPart::ManDoor, "/outline/sides/0"});
  ASSERT_TRUE(changed.has_value());
  const auto answer = solve(*changed, {});
  ASSERT_TRUE(answer.has_value());
  const ResolvedOpening& door = answer->building.openings.front();
  EXPECT_EQ(door.asked_width, in(40));
  EXPECT_EQ(door.asked_height, in(82));
  EXPECT_EQ(door.packing_each_side, Length::sixteenths(3));
  EXPECT_EQ(test::told(packing_said(*answer, door)),
            "Pack 3/16\" at each jamb and 6 3/8\" at the head. A frame of 2 3/16\" at the jambs and 8 3/8\" at the "
            "head leaves "
            "nothing to pack.");
  // 9 x 7 ft between bucks of 1 1/2 in: 111 by 85 1/2 in, in a hole of 112 3/8 by 88.
  const auto wide = edited(job, built(job), PutIn{NewPart::SingleOverhead, "/outline/sides/0"});
  ASSERT_TRUE(wide.has_value());
  EXPECT_EQ(built(*wide).openings.front().width(), Length::sixteenths(112 * 16 + 6));
  EXPECT_TRUE(
      packing_said(*solve(with_door("A", std::nullopt), {}), built(with_door("A", std::nullopt)).openings[0]).empty());
}

TEST(Edit, AnInnerWallStartsAtTheMiddleOfItsSideOnTheGrid) {
  const Job job = tests::shed();
  const auto changed = edited(job, built(job), PutIn{NewPart::InnerWall, "/outline/sides/0"});
  ASSERT_TRUE(changed.has_value());
  const Wall side = built(job).walls[0];
  const Building building = built(*changed);
  const Wall& inner = building.walls.back();
  EXPECT_TRUE(inner.interior);
  const Length at = changed->interior_walls.front().place.at.length;
  EXPECT_TRUE(at.is_multiple_of(in(8)));
  EXPECT_LE(magnitude(at - side.nominal.half_down()), in(8));
  const auto two = edited(*changed, building, PutIn{NewPart::InnerWall, "/outline/sides/1"});
  ASSERT_TRUE(two.has_value());
  EXPECT_EQ(two->interior_walls.back().name, "inner 2");
}

TEST(Edit, BondBeamsGoOverTheOpeningsAndOnTopInOneStep) {
  // A hole of 80 in ends at the top of course 10: its lintel, and the beam, are course 11; the top one of 96 in is 12.
  const Job job = with_door("A", std::nullopt);
  const int top = static_cast<int>(built(job).courses.size());
  const auto both = edited(job, built(job), PutBeams{true, true});
  EXPECT_EQ(both->steel.bond_beams, (std::vector<int>{11, top}));
  EXPECT_EQ(edited(job, built(job), PutBeams{false, true})->steel.bond_beams, std::vector<int>{top});
  EXPECT_TRUE(edited(*both, built(*both), PutBeams{})->steel.bond_beams.empty());
}

TEST(Edit, ACornerIsSteppedInAndFilledAgainAndWhatStandsInItsSidesStays) {
  for (std::size_t side = 0; side < 4; ++side) {
    const Job job = with_door("B", std::nullopt);  // from the corner that moves
    const ResolvedOpening before = built(job).openings.front();
    const auto stepped = edited(job, built(job), StepCorner{side, in(40), in(64)});
    ASSERT_TRUE(stepped.has_value());
    const Building building = built(*stepped);
    ASSERT_EQ(building.walls.size(), 6u);
    // An L loses a rectangle of 40 by 64 in, and no length of wall.
    Length was, is;
    for (const Wall& wall : built(job).walls) was += wall.nominal;
    for (const Wall& wall : building.walls) is += wall.nominal;
    EXPECT_EQ(is, was);
    const ResolvedOpening& now = building.openings.front();
    if (side != 3) EXPECT_EQ(now.from, before.from) << side;  // stepped at A its side begins farther on
    const auto filled = edited(*stepped, building, FillCorner{side});
    ASSERT_TRUE(filled.has_value()) << side;
    EXPECT_EQ(filled->outline, job.outline) << side;
    EXPECT_EQ(filled->openings, job.openings) << side;
  }
  const Job job = tests::shed();
  EXPECT_FALSE(edited(job, built(job), StepCorner{0, in(9999), in(8)}).has_value());
  EXPECT_FALSE(edited(job, built(job), StepCorner{0, in(8), Length()}).has_value());
  EXPECT_FALSE(edited(job, built(job), StepCorner{9, in(8), in(8)}).has_value());
  EXPECT_FALSE(edited(job, built(job), FillCorner{0}).has_value());
}

TEST(PageParts, AHandleStandsWhereTheOpeningIs) {
  const Job job = with_door("A", std::nullopt);
  const auto answer = solve(job, {});
  ASSERT_TRUE(answer.has_value());
  for (const char* name : {"plan-course-1", "plan-course-3", "elevation-1"}) {
    const auto drawing = sheet::make_named_drawing(*answer, name);
    ASSERT_TRUE(drawing.has_value()) << name;
    const sheet::Handle& handle = drawing->handles.back();
    ASSERT_EQ(handle.what, sheet::Handle::What::Opening);
    // Nominal 40 in is 40 3/8 in between jambs; at 1:N that is 40.375 * 25,400 / N micrometres, each edge rounded to
    // one.
    EXPECT_NEAR(handle.box.width(), 40.375 * 25'400 / drawing->scale.denominator, 1.0) << name;
    EXPECT_TRUE(handle.shown);
    EXPECT_EQ(handle.along_x, -1);  // the first side starts at the right
  }
  for (const char* name :
       {"plan-course-0", "plan-course-99", "plan-course-", "plan-course-01", "elevation-9", "plan"}) {
    EXPECT_FALSE(sheet::make_named_drawing(*answer, name).has_value()) << name;
  }
}

std::string card_of(const Answer& answer, std::string_view name) {
  std::string text;
  JsonOut out([&](std::string_view bytes) {
    text += bytes;
    return true;
  });
  if (!write_piece_card(out, answer, name)) return "none";
  EXPECT_TRUE(out.finish());
  return text;
}

TEST(PageParts, ACardSaysWhereAUnitStands) {
  Job job = tests::shed();
  job.openings.clear();
  const auto answer = solve(job, {});
  ASSERT_TRUE(answer.has_value());
  // The first two units of a side that runs through end at 15 5/8 and 31 5/8 in; of one that butts (8 in wall), after
  // the corner's 7 5/8 and a joint, at 23 5/8 in.
  const bool through = answer->layout.arriving_through[0] == 0;
  const std::string card = card_of(*answer, "AB-1-1");
  EXPECT_NE(card.find(through ? "\"to\":{\"text\":\"1'-3 5/8\\\"\"" : "\"to\":{\"text\":\"1'-11 5/8\\\"\""),
            std::string::npos)
      << card;
  EXPECT_NE(card.find("\"left\":\"AB-1-2\""), std::string::npos) << card;
  EXPECT_EQ(card_of(*answer, "AB-1-999"), "none");
}

}  // namespace
}  // namespace stringcourse
