// From a building to bond problems: where runs begin and end, which courses share a row, what lintels may bear.
#include <gtest/gtest.h>

#include <algorithm>

#include "bond/panel_site.hpp"
#include "unit/walls/made_jobs.hpp"

namespace stringcourse::bond {
namespace {

using tests::at;
using tests::codes;
using tests::in;
using tests::in16;

std::int64_t nm(Length length) { return length.in_nanometres(); }

struct Laid {
  std::vector<Bit> bits;
  std::vector<PanelSite> sites;
};

Laid laid(const Building& building) {
  Laid all;
  all.bits = bits_of(building);
  all.sites = sites_of(building, all.bits);
  return all;
}

/// The panel of wall `w` (one without control joints), all its bits having `value`.
Panel panel_with(const Building& building, std::size_t w, bool value, const std::vector<Bearings>& bearings = {}) {
  const Laid all = laid(building);
  const std::uint32_t values = value ? (1U << all.sites[w].bits.size()) - 1 : 0;
  return panel_of(building, all.sites[w], all.bits, values, bearings, Strictness::Full);
}

const RowRun& run_in(const Panel& panel, std::size_t course) {
  return panel.rows[static_cast<std::size_t>(panel.course_rows[course - 1])].runs.front();
}

// Both corners say that the arriving wall runs through in odd courses: AB arrives at B and leaves A, so in course 1 it
// butts at A (short of it by b) and runs through at B, and in course 2 the other way.
TEST(PanelSite, AConvexCornerTakesTheShortLegOffTheSideThatButts) {
  for (const auto& [series, leg] :
       {std::pair<const char*, Length>{"us-8", in16(7, 10)}, {"us-12", in16(7, 10)}, {"us-6", in16(7, 10)}}) {
    Job job = tests::shed();
    job.units.series = series;
    RESOLVED(building, job);
    const Panel panel = panel_with(building, 0, true);
    const std::int64_t actual = nm(building.walls[0].actual);
    EXPECT_EQ(run_in(panel, 1).start, nm(leg)) << series;
    EXPECT_EQ(run_in(panel, 1).at_start, RunEnd::ButtCorner);
    EXPECT_EQ(run_in(panel, 1).end, actual);
    EXPECT_EQ(run_in(panel, 1).at_end, RunEnd::ThroughCorner);
    EXPECT_EQ(run_in(panel, 2).start, 0);
    EXPECT_EQ(run_in(panel, 2).end, actual - nm(leg)) << series;
  }
}

TEST(PanelSite, PlainCornersOfAYardWithoutSetsTakeTheThickness) {
  Job job = tests::shed();
  job.units.series = "us-12";
  job.units.stocked = {{UnitKind::Full, UnitKind::Half, UnitKind::Corner}};
  RESOLVED(building, job);
  EXPECT_EQ(run_in(panel_with(building, 0, true), 1).start, nm(in16(11, 10)));
}

// The table of ends: at a re-entrant corner the through side adds +t of the other wall, the butt side t - b.
TEST(PanelSite, AReentrantCornerAddsTheOtherWallsThicknessToTheSideThatRunsThrough) {
  Job job = tests::job_with(tests::outline_of({{240}, {200}, {120}, {80, Turn::Left}, {120}, {120}}), 4);
  job.units.series = "us-12";
  RESOLVED(building, job);
  const Panel panel = panel_with(building, 3, true);  // DE arrives at the re-entrant E
  const std::int64_t actual = nm(building.walls[3].actual);
  EXPECT_EQ(run_in(panel, 1).at_end, RunEnd::ThroughCorner);
  EXPECT_EQ(run_in(panel, 1).end, actual + nm(in16(11, 10)));
  EXPECT_EQ(run_in(panel, 2).at_end, RunEnd::ButtCorner);
  EXPECT_EQ(run_in(panel, 2).end, actual + nm(in16(11, 10)) - nm(in16(7, 10)));
}

TEST(PanelSite, ABandEndsOnlyForTheCoursesOfOneParity) {
  Job job = tests::shed();
  job.heights.courses = 8;
  job.steel.bond_beams = {1};
  RESOLVED(building, job);
  const Panel panel = panel_with(building, 0, false);
  // Courses 1 and 2 are one band; course 3 is another kind than course 1, so a new one starts there.
  ASSERT_EQ(panel.rows.size(), 4u);
  EXPECT_EQ(panel.rows[0].courses, (std::vector<std::int32_t>{1}));
  EXPECT_EQ(panel.rows[1].courses, (std::vector<std::int32_t>{2}));
  EXPECT_EQ(panel.rows[2].courses, (std::vector<std::int32_t>{3, 5, 7}));
  EXPECT_EQ(panel.rows[3].courses, (std::vector<std::int32_t>{4, 6, 8}));
}

TEST(PanelSite, APlainWallIsOneBandOfTwoRows) {
  RESOLVED(building, tests::shed());
  const Panel panel = panel_with(building, 0, false);
  ASSERT_EQ(panel.rows.size(), 2u);
  EXPECT_EQ(panel.course_rows, (std::vector<std::int32_t>{0, 1, 0, 1, 0, 1, 0, 1, 0, 1, 0, 1}));
}

Job with_lintel(Length place, Length width, Length bearing) {
  Job job = tests::shed();
  job.openings = {tests::plain_hole("D1", "AB", at("A", place), width, in(80))};
  job.openings.front().lintel = Lintel{LintelMake::OnePiece, 1, bearing, {}};
  return job;
}

// 40 in nominal is 40 3/8 in clear. With 7 5/8 in at one end: 40 3/8 + 7 5/8 + 7 5/8 = 55 5/8 = 7 x 8 - 3/8: 7 half
// units.
TEST(PanelSite, BearingsMakeTheLintelAWholeNumberOfHalfUnitsLessAJoint) {
  for (const std::int64_t width : {36, 40, 43, 48}) {
    RESOLVED(building, with_lintel(in(64), in(width), in16(7, 10)));
    const ResolvedOpening& opening = building.openings.front();
    const std::vector<Bearings> all = bearings_of(building, opening);
    ASSERT_FALSE(all.empty());
    for (const Bearings& bearings : all) {
      EXPECT_GE(std::min(bearings.start, bearings.end), in16(7, 10)) << width;
      EXPECT_TRUE((opening.width() + bearings.start + bearings.end + in16(0, 6)).is_multiple_of(in(8))) << width;
      EXPECT_LT(opening.width() + bearings.start + bearings.end, opening.width() + in16(7, 10) * 2 + in(24)) << width;
    }
    const auto has = [&](Length start, Length end) {
      return std::ranges::any_of(all, [&](const Bearings& b) { return b.start == start && b.end == end; });
    };
    EXPECT_LE((all.front().start - all.front().end).in_nanometres(), in16(0, 1).in_nanometres())
        << width;  // equal ends first
    EXPECT_GE((all.front().start - all.front().end).in_nanometres(), -in16(0, 1).in_nanometres()) << width;
    if (width == 40)
      EXPECT_TRUE(has(in16(7, 10), in16(15, 10)) && has(in16(15, 10), in16(7, 10)) && has(in16(7, 10), in16(7, 10)));
  }
}

// A pier of 15 5/8 in at a corner: 7 5/8 in of bearing leave the corner its unit, 15 5/8 in take its place.
TEST(PanelSite, ABearingThatStandsOnNoRunOfItsWallLeavesTheRowUnderItWithoutUnits) {
  RESOLVED(building, with_lintel(in(16), in(40), in16(7, 10)));
  const auto row_under = [&](Length start, Length end) {
    const Panel panel = panel_with(building, 0, true, {{start, end}});
    return panel.rows[static_cast<std::size_t>(
        panel.course_rows[static_cast<std::size_t>(building.openings.front().last_course) - 1])];
  };
  EXPECT_FALSE(row_under(in16(7, 10), in16(15, 10)).choices.empty());
  EXPECT_TRUE(row_under(in16(15, 10), in16(7, 10)).choices.empty() ||
              row_under(in16(15, 10), in16(7, 10)).runs.front().start == 0);
}

TEST(PanelSite, ControlJointsPartAWallIntoPanelsMeasuredFromTheirOwnStart) {
  Job job = tests::shed();
  job.control_joints.placed = {{"AB", at("A", in(144))}};
  RESOLVED(building, job);
  const Laid all = laid(building);
  ASSERT_EQ(all.sites.size(), 5u);
  EXPECT_EQ(all.sites[0].to + nm(in16(0, 6)), all.sites[1].from);
  EXPECT_EQ(all.sites[0].bits.size(), 1u);
  const Panel second = panel_of(building, all.sites[1], all.bits, 0, {}, Strictness::Full);
  EXPECT_EQ(run_in(second, 1).start, 0);
  EXPECT_EQ(run_in(second, 1).at_start, RunEnd::ControlJoint);
}

}  // namespace
}  // namespace stringcourse::bond
