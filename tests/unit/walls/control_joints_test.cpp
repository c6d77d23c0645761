// Control joints by rule and placed.
#include <gtest/gtest.h>

#include <algorithm>
#include <compare>
#include <vector>

#include "made_jobs.hpp"
#include "walls/control_joint_search.hpp"

namespace stringcourse::tests {
namespace {

TEST(ControlJoints, TheGreatestPanelIsOneAndAHalfHeightsAndAtMostTwentyFiveFeet) {
  // E13: 8 ft -> 12.0; 10 -> 15; 12 -> 18; 16 -> 24; 16'-8" and up -> 25 ft.
  EXPECT_EQ(greatest_panel(JointRule::Us, Length::feet(8)), Length::feet(12));
  EXPECT_EQ(greatest_panel(JointRule::Us, Length::feet(10)), Length::feet(15));
  EXPECT_EQ(greatest_panel(JointRule::Us, Length::feet(12)), Length::feet(18));
  EXPECT_EQ(greatest_panel(JointRule::Us, Length::feet(16)), Length::feet(24));
  EXPECT_EQ(greatest_panel(JointRule::Us, in(200)), Length::feet(25));
  EXPECT_EQ(greatest_panel(JointRule::Us, Length::feet(30)), Length::feet(25));
  EXPECT_EQ(greatest_panel(JointRule::Uk, Length::millimetres(3000)), Length::millimetres(6000));
}

Job free_wall(std::int64_t inches, int courses) {
  Job job = job_with(outline_of({{inches}}, false), courses);
  job.control_joints.rule = JointRule::Us;
  return job;
}

TEST(ControlJoints, UnderTheTwentyFiveFootLimitAPanelIsTwentyFourEight) {
  // C9: 18.5 blocks = 24'-8" suits block under 25 ft. A free wall of two such panels, 25 courses (16'-8") high.
  RESOLVED(building, free_wall(592, 25));
  ASSERT_EQ(building.control_joints.size(), 1u);
  EXPECT_EQ(building.control_joints[0].to.distance_from_start(), in(296));
  // 18.5 blocks of 16 in less their last joint: 295 5/8 in from the end to the joint's edge closes with a half.
  EXPECT_EQ(building.control_joints[0].from.distance_from_start(), in16(295, 10));
  EXPECT_TRUE(building.control_joints[0].by_rule);
  EXPECT_NE(test::told(finding(building, "control-joint-rule")->says).find("24'-8\""), std::string::npos);
}

TEST(ControlJoints, AWallNoLongerThanThePanelHasNone) {
  RESOLVED(building, free_wall(296, 25));
  EXPECT_TRUE(building.control_joints.empty());
}

TEST(ControlJoints, FromACornerTheFirstStandsWithinHalfTheSpacing) {
  Job job = job_with(outline_of({{480}, {480}, {480}, {480}}));  // 12 courses: 144 in panels, first within 72
  job.control_joints.rule = JointRule::Us;
  RESOLVED(building, job);
  Length last = Length();
  int on_first = 0;
  for (const ControlJoint& joint : building.control_joints) {
    if (joint.wall != 0) continue;
    const Length nominal_line = joint.to.distance_from_start();
    EXPECT_TRUE(nominal_line.is_multiple_of(in(8)));
    EXPECT_LE(nominal_line - last, on_first == 0 ? in(72) : in(144));
    EXPECT_EQ(joint.to - joint.from, Length::sixteenths(6));
    last = nominal_line;
    ++on_first;
  }
  EXPECT_LE(in(480) - last, in(72));
  EXPECT_EQ(on_first, 4);  // ceil(480 / 144)
}

TEST(ControlJoints, KeepAHalfUnitClearOfLintelBearingsAndMoreOfOnePieceOnes) {
  Job job = free_wall(240, 12);                                             // panels of at most 144 in
  job.openings = {plain_hole("P", "AB", at("A", in(96)), in(48), in(56))};  // 95 5/8 .. 144
  RESOLVED(block, job);
  // Block lintel: 95 5/8 - 7 5/8 bearing - 7 5/8 clear = 80 3/8, and 144 + 15 1/4 = 159 1/4: joints on 80 and 160.
  ASSERT_EQ(block.control_joints.size(), 2u);
  EXPECT_EQ(block.control_joints[0].to.distance_from_start(), in(80));
  EXPECT_EQ(block.control_joints[1].to.distance_from_start(), in(160));
  // One piece: it may bear 8 in longer, so 72 3/8 and 167 1/4: joints on 72 and 168.
  job.openings[0].lintel = Lintel{LintelMake::OnePiece, 1, std::nullopt, {}};
  RESOLVED(one_piece, job);
  ASSERT_EQ(one_piece.control_joints.size(), 2u);
  EXPECT_EQ(one_piece.control_joints[0].to.distance_from_start(), in(72));
  EXPECT_EQ(one_piece.control_joints[1].to.distance_from_start(), in(168));
}

TEST(ControlJoints, WithoutAPlaceInReachAFindingSaysSo) {
  Job job = free_wall(240, 12);
  job.openings = {plain_hole("P", "AB", at("A", in(32)), in(176), in(56))};
  RESOLVED(building, job);
  EXPECT_NE(finding(building, "control-joint-no-place"), nullptr);
}

TEST(ControlJoints, WithBeamSteelThroughNoneAreNeededAndTheRuleIsNamed) {
  Job job = free_wall(592, 25);
  job.steel.beam_steel_in_joints = true;
  RESOLVED(building, job);
  EXPECT_TRUE(building.control_joints.empty());
  EXPECT_NE(test::told(finding(building, "control-joint-rule")->says).find("0.002"), std::string::npos);
}

Job placed(Place place) {
  Job job = shed();
  job.control_joints.placed = {{"AB", std::move(place)}};
  return job;
}

TEST(ControlJoints, APlacedOneEndsOnItsNominalLine) {
  RESOLVED(building, placed(at("A", in(96))));
  EXPECT_EQ(building.control_joints[0].from.distance_from_start(), in16(95, 10));
  EXPECT_EQ(building.control_joints[0].to.distance_from_start(), in(96));
  EXPECT_TRUE(building.findings.empty());
}

TEST(ControlJoints, AnOffGridPlaceIsSnappedUnlessItIsActual) {
  RESOLVED(snapped, placed(at("A", in(99))));
  EXPECT_EQ(snapped.control_joints[0].to.distance_from_start(), in(96));
  EXPECT_NE(finding(snapped, "control-joint-off-grid"), nullptr);
  RESOLVED(kept, placed({"A", actual(in(99)), Face::Near}));
  EXPECT_EQ(kept.control_joints[0].from.distance_from_start(), in(99));
  EXPECT_NE(finding(kept, "control-joint-off-grid"), nullptr);
}

TEST(ControlJoints, ThroughAnOpeningOrABearingAreRefused) {
  Job job = placed(at("A", in(96)));
  job.openings = {plain_hole("P", "AB", at("A", in(80)), in(40), in(56))};
  REFUSED(hole, job);
  EXPECT_NE(refusal(hole, "control-joint-blocked"), nullptr);
  job.openings[0].place = at("A", in(104));  // jamb 103 5/8, bearing down to 96: the joint 95 5/8 .. 96 just clears
  RESOLVED(near, job);
  EXPECT_NE(finding(near, "control-joint-near-lintel"), nullptr);
  job.openings[0].lintel = Lintel{LintelMake::BuiltUp, 1, in(8), {}};
  REFUSED(bearing, job);
  EXPECT_NE(test::told(refusal(bearing, "control-joint-blocked")->reason).find("bearing"), std::string::npos);
}

/// Every subset of the lines, scored by the rule's own words.
struct Score {
  std::int64_t excess = 0, joints = 0, squares = 0;
  friend auto operator<=>(const Score&, const Score&) = default;
};
Score score(const walls::PanelSearch& search, const std::vector<Length>& lines) {
  Score total;
  std::vector<Length> bounds{search.start};
  bounds.insert(bounds.end(), lines.begin(), lines.end());
  bounds.push_back(search.end);
  for (std::size_t i = 0; i + 1 < bounds.size(); ++i) {
    const bool first = i == 0 && search.at_start == walls::PanelEnd::Held;
    const bool last = i + 2 == bounds.size() && search.at_end == walls::PanelEnd::Held;
    const Length limit = first != last ? search.greatest.half_down() : search.greatest;
    const Length panel = bounds[i + 1] - bounds[i];
    if (panel > limit) total.excess += (panel - limit).in_nanometres();
    total.squares += panel.in_nanometres() * panel.in_nanometres();
  }
  total.joints = static_cast<std::int64_t>(lines.size());
  return total;
}

TEST(ControlJointSearch, EqualsBruteForceOverEverySubsetOfSmallWalls) {
  std::uint64_t seed = 12345;
  const auto roll = [&](std::uint64_t below) {
    seed = seed * 6364136223846793005u + 1442695040888963407u;
    return (seed >> 33) % below;
  };
  for (int round = 0; round < 400; ++round) {
    walls::PanelSearch search;
    search.end = Length::nanometres(static_cast<std::int64_t>(6 + roll(12)));
    search.greatest = Length::nanometres(static_cast<std::int64_t>(2 + roll(7)));
    search.at_start = roll(2) ? walls::PanelEnd::Held : walls::PanelEnd::Open;
    search.at_end = roll(2) ? walls::PanelEnd::Held : walls::PanelEnd::Open;
    for (std::int64_t line = 1; line < search.end.in_nanometres() && search.lines.size() < 10; ++line) {
      if (roll(3) != 0) search.lines.push_back(Length::nanometres(line));
    }
    Score best = score(search, {});
    for (std::uint32_t subset = 1; subset < (1u << search.lines.size()); ++subset) {
      std::vector<Length> lines;
      for (std::size_t i = 0; i < search.lines.size(); ++i)
        if (subset >> i & 1) lines.push_back(search.lines[i]);
      best = std::min(best, score(search, lines));
    }
    const walls::PanelAnswer answer = walls::best_joint_lines(search);
    EXPECT_EQ(score(search, answer.lines), best) << "round " << round;
    EXPECT_EQ(answer.too_long.in_nanometres(), best.excess);
  }
}

}  // namespace
}  // namespace stringcourse::tests
