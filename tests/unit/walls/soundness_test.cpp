// Whatever is asked: a building that comes back keeps its promises, and anything else is a refusal with a place and a
// remedy.
#include <gtest/gtest.h>

#include <set>

#include "made_jobs.hpp"

namespace stringcourse::tests {
namespace {

class Dice {
 public:
  explicit Dice(std::uint64_t seed) : seed_(seed) {}
  std::int64_t roll(std::int64_t below) {
    seed_ = seed_ * 6364136223846793005u + 1442695040888963407u;
    return static_cast<std::int64_t>((seed_ >> 33) % static_cast<std::uint64_t>(below));
  }

 private:
  std::uint64_t seed_;
};

StatedLength random_place(Dice& dice) {
  const Length length = in(dice.roll(36) * 8) + Length::sixteenths(dice.roll(4) == 0 ? dice.roll(200) - 40 : 0);
  return {length, dice.roll(4) == 0 ? Basis::Actual : Basis::Nominal};
}

Place random_spot(Dice& dice, const std::string& from) {
  Place place{from, random_place(dice), std::nullopt};
  if (dice.roll(3) == 0) place.to = dice.roll(2) ? Face::Far : Face::Near;
  return place;
}

constexpr std::string_view kWalls[] = {"AB", "BC", "CD", "DE", "EF", "FA", "P0", "P1"};

std::string random_end(Dice& dice, std::string_view wall) {
  if (wall[0] == 'P') return dice.roll(2) ? "start" : "end";
  return std::string(1, wall[static_cast<std::size_t>(dice.roll(2))]);
}

Opening random_opening(Dice& dice, int number) {
  const std::string_view wall = kWalls[dice.roll(8)];
  Opening opening =
      plain_hole("O" + std::to_string(number), std::string(wall), random_spot(dice, random_end(dice, wall)),
                 in(16 + 8 * dice.roll(8)), in(24 + 8 * dice.roll(9)));
  if (dice.roll(2)) opening.sill_course = static_cast<int>(dice.roll(8));
  if (dice.roll(3) == 0)
    opening.lintel = Lintel{dice.roll(2) ? LintelMake::OnePiece : LintelMake::BuiltUp,
                            1 + static_cast<int>(dice.roll(2)),
                            std::nullopt,
                            {}};
  return opening;
}

Job random_job(Dice& dice) {
  Job job =
      job_with(outline_of({{288}, {240}, {144}, {96, Turn::Left}, {144}, {144}}), 8 + static_cast<int>(dice.roll(6)));
  for (int i = 0; i < dice.roll(3); ++i) {
    const std::string_view off = kWalls[dice.roll(8)];
    job.interior_walls.push_back(
        inner_wall("P" + std::to_string(i), std::string(off), random_spot(dice, random_end(dice, off))));
    if (dice.roll(3) == 0) job.interior_walls.back().length = random_place(dice);
  }
  for (int i = 0; i < dice.roll(4); ++i) job.openings.push_back(random_opening(dice, i));
  if (dice.roll(2)) job.control_joints.rule = dice.roll(2) ? JointRule::Us : JointRule::Uk;
  if (dice.roll(3) == 0) job.control_joints.placed = {{"AB", random_spot(dice, "A")}};
  if (dice.roll(2)) {
    job.steel.bars = Bars{};
    job.steel.bars->size = "#5";
    job.steel.bars->corners = dice.roll(2) == 0;
    job.steel.bars->jambs = dice.roll(2) == 0;
    job.steel.bars->control_joints = dice.roll(2) == 0;
    if (dice.roll(2)) job.steel.bars->dimensioned = {{"BC", random_spot(dice, "C")}};
  }
  return job;
}

bool share_courses(const ResolvedOpening& a, const ResolvedOpening& b) {
  return a.first_course <= b.last_course && b.first_course <= a.last_course;
}

void expect_sound_opening(const Building& building, const ResolvedOpening& opening) {
  const Wall& wall = building.walls[static_cast<std::size_t>(opening.wall)];
  EXPECT_GE(opening.from.distance_from_start(), Length());
  EXPECT_LE(opening.to.distance_from_start(), wall.actual);
  EXPECT_LT(opening.from, opening.to);
  EXPECT_LE(opening.first_course, opening.last_course);
  EXPECT_EQ(opening.soffit, building.courses[static_cast<std::size_t>(opening.last_course - 1)].top + building.joint);
  EXPECT_GE(opening.height(),
            opening.last_course == static_cast<int>(building.courses.size()) ? Length() : opening.asked_height);
  for (const ResolvedOpening& other : building.openings) {
    if (&other == &opening || other.wall != opening.wall || !share_courses(opening, other)) continue;
    EXPECT_TRUE(other.to <= opening.from || other.from >= opening.to);
  }
  for (const ControlJoint& joint : building.control_joints) {
    EXPECT_TRUE(joint.wall != opening.wall || joint.to <= opening.from || joint.from >= opening.to);
  }
  for (const Junction& junction : building.junctions) {
    EXPECT_TRUE(junction.main != opening.wall || junction.to <= opening.from || junction.from >= opening.to);
  }
}

void expect_sound_junctions(const Building& building) {
  for (std::size_t i = 0; i < building.junctions.size(); ++i) {
    const Junction& junction = building.junctions[i];
    const Wall& abutting = building.walls[static_cast<std::size_t>(junction.abutting)];
    const WallEnd& end = junction.at_abutting_start ? abutting.start : abutting.end;
    EXPECT_EQ(end.kind, EndKind::Junction);
    EXPECT_EQ(end.junction, static_cast<int>(i));
    EXPECT_EQ(junction.to - junction.from, building.series_of(abutting).thickness);
    EXPECT_GT(abutting.actual, Length());
  }
}

TEST(Soundness, OfTwoThousandRandomJobs) {
  Dice dice(2024);
  int resolved = 0, refused = 0;
  for (int round = 0; round < 2000; ++round) {
    const auto building = resolve(random_job(dice));
    if (!building) {
      ++refused;
      EXPECT_FALSE(building.error().empty());
      for (const Refusal& refusal : building.error().shown) {
        EXPECT_FALSE(refusal.place.empty() || refusal.reason.empty() || refusal.remedy.empty());
      }
      continue;
    }
    ++resolved;
    for (const ResolvedOpening& opening : building->openings) expect_sound_opening(*building, opening);
    expect_sound_junctions(*building);
    std::set<std::pair<int, Position>> bars;
    for (const FixedBar& bar : building->fixed_bars) EXPECT_TRUE(bars.emplace(bar.wall, bar.centre).second);
    if (HasFailure()) {
      ADD_FAILURE() << "round " << round;
      break;
    }
  }
  // Both kinds must come up often, or this test looks at nothing.
  EXPECT_GT(resolved, 200);
  EXPECT_GT(refused, 200);
}

/// The least move that a refusal names mends it: move the opening as told, and that refusal is gone.
TEST(Soundness, MovingAnOpeningAsTheRefusalSaysMendsIt) {
  Job job = shed();
  job.openings = {plain_hole("P", "AB", at("A", in(64)), in(40), in(96)),
                  plain_hole("Q", "AB", at("A", in(90)), in(40), in(96))};
  REFUSED(refusals, job);
  // P ends at 104, Q starts at 89 5/8: 14 3/8 over; with the least pier of 3 5/8 that is 18 in.
  EXPECT_NE(test::told(refusals.shown[0].remedy).find("at least 1'-6\" toward B"), std::string::npos)
      << codes(refusals);
  job.openings[1].place = at("A", in(90 + 18));
  EXPECT_TRUE(resolve(job).has_value());
}

}  // namespace
}  // namespace stringcourse::tests
