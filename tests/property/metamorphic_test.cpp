// Jobs that say the same thing in two ways get answers of equal cost, or the same answer. Ties may fall another way in
// a mirrored plan, so costs are compared there, and only where both are proven least.
#include <gtest/gtest.h>

#include <algorithm>

#include "bond/assemble.hpp"
#include "document/answer_json.hpp"
#include "job/read.hpp"
#include "job/write.hpp"
#include "random_jobs.hpp"
#include "said_otherwise.hpp"
#include "solve/solve.hpp"
#include "unit/walls/made_jobs.hpp"
#include "walls/resolve.hpp"

namespace stringcourse::property {
namespace {

constexpr std::int64_t kBudget = 20'000;
constexpr std::uint64_t kJobs = 80;

std::optional<Answer> solved(const Job& job) {
  auto answer = solve(job, Wishes{.search_budget = kBudget});
  if (!answer) return std::nullopt;
  return std::move(*answer);
}

/// Compares what must be equal. Says whether there was anything to compare.
bool expect_equal_cost(const Job& job, const Job& other, std::uint64_t seed) {
  const auto a = solved(job), b = solved(other);
  EXPECT_EQ(a.has_value(), b.has_value()) << "seed " << seed;
  if (!a || !b || !a->layout.proven || !b->layout.proven) return false;
  EXPECT_EQ(a->layout.cost, b->layout.cost)
      << "seed " << seed << ": cuts " << a->layout.cost.cuts << " and " << b->layout.cost.cuts << ", short laps "
      << a->layout.cost.short_laps << " and " << b->layout.cost.short_laps;
  return true;
}

bool same_runs(const Layout& a, const Layout& b) {
  const auto run = [](const Run& x, const Run& y) {
    return x.wall == y.wall && x.course == y.course && x.start == y.start && x.end == y.end &&
           x.at_start == y.at_start && x.at_end == y.at_end && x.joints == y.joints && x.slack == y.slack &&
           x.piece_count == y.piece_count;
  };
  const auto piece = [](const Piece& x, const Piece& y) {
    return x.start == y.start && x.length == y.length && x.kind == y.kind && x.cut == y.cut && x.make_up == y.make_up &&
           x.number == y.number;
  };
  return std::ranges::equal(a.runs, b.runs, run) && std::ranges::equal(a.pieces, b.pieces, piece);
}

TEST(Metamorphic, MirroredPlansCostTheSame) {
  int compared = 0;
  for (std::uint64_t seed = 1; seed <= kJobs; ++seed) {
    Job job = random_job(seed);
    job.control_joints.rule = JointRule::None;  // a rule spaces its joints from the wall's start
    job.outline.building_on = std::nullopt;
    compared += expect_equal_cost(job, mirrored(job), seed) ? 1 : 0;
  }
  EXPECT_GT(compared, 20);
}

TEST(Metamorphic, TheFirstCornerOfAClosedPlanDoesNotMatter) {
  int compared = 0;
  for (std::uint64_t seed = 1; seed <= kJobs; ++seed) {
    const Job job = random_job(seed);
    if (job.outline.closed) compared += expect_equal_cost(job, with_other_first_corner(job), seed) ? 1 : 0;
  }
  EXPECT_GT(compared, 20);
}

TEST(Metamorphic, TheOrderOfOpeningsInTheDocumentMovesNoPiece) {
  int compared = 0;
  for (std::uint64_t seed = 1; seed <= 2 * kJobs; ++seed) {
    const Job job = random_job(seed);
    if (job.openings.size() < 2) continue;
    Job other = job;
    for (std::size_t i = 0; i < other.openings.size(); ++i) {
      if (other.openings[i].name.empty()) other.openings[i].name = "O" + std::to_string(i + 1);
    }
    std::ranges::reverse(other.openings);
    const auto a = solved(job), b = solved(other);
    ASSERT_EQ(a.has_value(), b.has_value()) << "seed " << seed;
    if (!a) continue;
    EXPECT_TRUE(same_runs(a->layout, b->layout)) << "seed " << seed;
    EXPECT_EQ(a->layout.cost, b->layout.cost) << "seed " << seed;
    ++compared;
  }
  EXPECT_GT(compared, 20);
}

TEST(Metamorphic, InchesWrittenInMillimetresGiveTheSameLayout) {
  int compared = 0;
  for (std::uint64_t seed = 1; seed <= 2 * kJobs; ++seed) {
    Job job = random_job(seed);
    if (!job.units.own_series.empty() || job.tape != Tape::Inches)
      continue;                                                  // an own series takes its steps from the tape
    if (job.steel.bars) job.steel.bars->spacing = std::nullopt;  // spaced bars stand on marks of the tape
    Job other = job;
    other.tape = Tape::Millimetres;
    const auto read = read_job(write_job(other));
    ASSERT_TRUE(read.has_value()) << "seed " << seed << "\n" << tests::codes(read.error());
    EXPECT_EQ(*read, other) << "seed " << seed;
    const auto a = solved(job), b = solved(*read);
    ASSERT_EQ(a.has_value(), b.has_value()) << "seed " << seed;
    if (!a) continue;
    EXPECT_TRUE(same_runs(a->layout, b->layout)) << "seed " << seed;
    EXPECT_EQ(a->layout.cost, b->layout.cost) << "seed " << seed;
    ++compared;
  }
  EXPECT_GT(compared, 30);
}

/// One long wall between free ends, a control joint in its middle: 20 ft on either side of it.
Job wall_with_joint() {
  Job job;
  job.name = "long wall";
  job.units.series = "us-8";
  job.outline.closed = false;
  Side side;
  side.from = "A";
  side.to = "B";
  side.length = {Length::feet(40), Basis::Nominal};
  job.outline.sides = {side};
  job.heights.courses = 10;
  job.control_joints.placed = {{"AB", tests::at("A", Length::feet(20))}};
  job.openings = {
      tests::plain_hole("D1", "AB", tests::at("A", Length::inches(61)), Length::inches(40), Length::inches(48))};
  return job;
}

TEST(Metamorphic, AnOpeningBeyondAControlJointMovesNoPieceOnThisSide) {
  const Job job = wall_with_joint();
  Job more = job;
  more.openings.push_back(
      tests::plain_hole("D2", "AB", tests::at("B", Length::inches(53)), Length::inches(43), Length::inches(56)));
  const auto a = solved(job), b = solved(more);
  ASSERT_TRUE(a && b);
  const Position joint = a->building.control_joints.front().from;
  const auto before_joint = [&](const Answer& answer) {
    std::vector<std::tuple<int, ExactPosition, Length, UnitKind>> pieces;
    for (const stringcourse::Run& run : answer.layout.runs) {
      if (run.end > joint.distance_from_start()) continue;
      for (std::uint32_t p = 0; p < run.piece_count; ++p) {
        const Piece& piece = answer.layout.begin_of(run)[p];
        pieces.emplace_back(run.course, piece.start, piece.length, piece.kind);
      }
    }
    return pieces;
  };
  EXPECT_GT(before_joint(*a).size(), 100u);
  EXPECT_EQ(before_joint(*a), before_joint(*b));
  EXPECT_FALSE(same_runs(a->layout, b->layout));
}

TEST(Metamorphic, TheSameJobGivesTheSameBytesWithAFreshAndWithAWarmMemory) {
  const Building other_building = *resolve(tests::shed());
  for (std::uint64_t seed = 1; seed <= 40; ++seed) {
    const Job job = random_job(seed);
    auto first = solved(job), second = solved(job);
    if (!first) continue;
    const std::string text = answer_text(*first);
    EXPECT_EQ(text, answer_text(*second)) << "seed " << seed;
    bond::PanelMemo memo(kBudget);
    (void)bond::lay_out(first->building, memo);
    (void)bond::lay_out(other_building, memo);
    second->layout = bond::lay_out(first->building, memo);
    EXPECT_EQ(text, answer_text(*second)) << "seed " << seed;
  }
}

}  // namespace
}  // namespace stringcourse::property
