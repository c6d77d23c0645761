// Metamorphic pairs: one building, described in two ways.
#include <gtest/gtest.h>

#include <algorithm>

#include "made_jobs.hpp"

namespace stringcourse::tests {
namespace {

/// An L with a door, a window measured from the far corner, an interior wall and bars.
Job furnished() {
  Job job = job_with(outline_of({{288}, {240}, {144}, {96, Turn::Left}, {144}, {144}}));
  job.openings = {plain_hole("D", "AB", at("A", in(64)), in(40), in(88)),
                  window_hole("W", "EF", at("F", in(64)), in(32), in(40), 4)};
  job.interior_walls = {inner_wall("P", "BC", at("B", in(104)))};
  job.steel.bars = Bars{};
  job.steel.bars->size = "#5";
  job.steel.bars->corners = job.steel.bars->jambs = true;
  return job;
}

TEST(SameBuilding, APlaceFromEitherEndIsTheSamePlace) {
  Job job = furnished();
  RESOLVED(from_a, job);
  // Both corners of AB are convex: 288 nominal less 64 less 40 leaves 184 to the door's other jamb.
  job.openings[0].place = at("B", in(184));
  RESOLVED(from_b, job);
  EXPECT_EQ(from_a.openings[0].from, from_b.openings[0].from);
  // EF runs from the re-entrant corner E: 144 less 64 less 32 leaves 48.
  job.openings[1].place = at("E", in(48));
  RESOLVED(from_e, job);
  EXPECT_EQ(from_a.openings[1].from, from_e.openings[1].from);
}

TEST(SameBuilding, StatedInActualLengthsItIsTheSame) {
  Job job = furnished();
  RESOLVED(stated_nominal, job);
  for (std::size_t i = 0; i < job.outline.sides.size(); ++i) {
    job.outline.sides[i].length = actual(stated_nominal.walls[i].actual);
  }
  job.openings[0].place.at = actual(stated_nominal.openings[0].from.distance_from_start());
  job.openings[0].masonry = MasonrySize{actual(in16(40, 6)), actual(in16(88, 6))};
  job.interior_walls[0].place.at = actual(stated_nominal.junctions[0].from.distance_from_start());
  RESOLVED(stated_actual, job);
  for (std::size_t i = 0; i < stated_nominal.walls.size(); ++i) {
    EXPECT_EQ(stated_actual.walls[i].nominal, stated_nominal.walls[i].nominal);
    EXPECT_EQ(stated_actual.walls[i].actual, stated_nominal.walls[i].actual);
  }
  EXPECT_EQ(stated_actual.openings[0].from, stated_nominal.openings[0].from);
  EXPECT_EQ(stated_actual.openings[0].soffit, stated_nominal.openings[0].soffit);
  EXPECT_EQ(stated_actual.fixed_bars.size(), stated_nominal.fixed_bars.size());
}

/// The same outline with its sides listed the other way round and every turn flipped.
Outline turned_round(const Outline& outline) {
  Outline back = outline;
  const std::size_t count = outline.sides.size();
  for (std::size_t i = 0; i < count; ++i) {
    const Side& source = outline.sides[count - 1 - i];
    back.sides[i] = source;
    back.sides[i].name = source.from + source.to;
    std::swap(back.sides[i].from, back.sides[i].to);
    const Turn before = *outline.sides[(2 * count - 2 - i) % count].turn;
    back.sides[i].turn = before == Turn::Right ? Turn::Left : Turn::Right;
  }
  return back;
}

TEST(SameBuilding, WalkedLeftHandedEveryWallAndOpeningIsTheSame) {
  Job job = furnished();
  RESOLVED(right, job);
  job.outline = turned_round(job.outline);
  RESOLVED(left, job);
  ASSERT_EQ(left.walls.size(), right.walls.size());
  for (const Wall& wall : right.walls) {
    const auto same = std::ranges::find(left.walls, wall.name, &Wall::name);
    ASSERT_NE(same, left.walls.end()) << wall.name;
    EXPECT_EQ(same->actual, wall.actual);
    EXPECT_EQ(same->start_name, wall.start_name);
  }
  for (std::size_t i = 0; i < right.openings.size(); ++i) EXPECT_EQ(left.openings[i].from, right.openings[i].from);
  EXPECT_EQ(left.fixed_bars.size(), right.fixed_bars.size());
}

TEST(SameBuilding, EverySideIsNominalPlusHalfAJointForEachEndPushedInAndLessForEachPushedOut) {
  // Staircases of random jogs: the nominal law, side by side, against the corners that came out.
  std::uint64_t seed = 7;
  const auto roll = [&](std::int64_t below) {
    seed = seed * 6364136223846793005u + 1442695040888963407u;
    return static_cast<std::int64_t>((seed >> 33) % static_cast<std::uint64_t>(below));
  };
  for (int round = 0; round < 50; ++round) {
    // Along the top: down by a jog, on by a tread, as often as told; closed by the two long sides.
    std::vector<Leg> legs;
    std::int64_t width = 0, height = 96;
    const int steps = 1 + static_cast<int>(roll(5));
    std::vector<Leg> stairs;
    for (int i = 0; i < steps; ++i) {
      const std::int64_t tread = 32 + 8 * roll(10), riser = 24 + 8 * roll(10);
      stairs.push_back({tread, Turn::Right});
      stairs.push_back({riser, Turn::Left});
      width += tread;
      height += riser;
    }
    const std::int64_t last_tread = 48 + 8 * roll(5);
    width += last_tread;
    legs.push_back({width});
    legs.push_back({height});
    legs.insert(legs.end(), stairs.begin(), stairs.end());
    legs.push_back({last_tread});
    legs.push_back({96});
    Outline outline;
    for (std::size_t i = 0; i < legs.size(); ++i) {
      Side side;
      side.from = "c" + std::to_string(i);
      side.to = "c" + std::to_string((i + 1) % legs.size());
      side.length = nominal(in(legs[i].inches));
      side.turn = legs[i].turn;
      outline.sides.push_back(side);
    }
    RESOLVED(building, job_with(outline));
    for (const Wall& wall : building.walls) {
      const int pushed_in = (building.corners[static_cast<std::size_t>(wall.start.corner)].convex ? 0 : 1) +
                            (building.corners[static_cast<std::size_t>(wall.end.corner)].convex ? 0 : 1);
      EXPECT_EQ(wall.actual, wall.nominal + Length::sixteenths(6) * (pushed_in - 1));
    }
    EXPECT_EQ(building.walls.back().start_point.y, building.walls.back().actual);
  }
}

}  // namespace
}  // namespace stringcourse::tests
