// Corners of walls that are not half a unit thick, in beams and half-high courses: laid whole, certified in plan, and
// every corner of every course has its set among the counts.
#include <gtest/gtest.h>

#include <algorithm>

#include "certify.hpp"
#include "supply/counts.hpp"
#include "unit/walls/made_jobs.hpp"

namespace stringcourse::property {
namespace {

using tests::outline_of;

/// 36 by 24 half units, twelve courses; the last a bond beam, the first and the ninth half-high where the series is
/// made so.
Job box_of(const Series& series) {
  Job job = tests::job_with(outline_of({{0}, {0}, {0}, {0}}));
  job.tape = series.tape;
  job.units.series = series.id;
  for (std::size_t side = 0; side < 4; ++side)
    job.outline.sides[side].length = tests::nominal(series.pitch() * (side % 2 == 0 ? 36 : 24));
  const auto makes = [&](UnitKind kind) { return std::ranges::find(series.made, kind) != series.made.end(); };
  if (makes(UnitKind::HalfHigh)) job.heights.half_high_courses = {1, 9};
  if (makes(UnitKind::BondBeam)) job.steel.bond_beams = {12};
  return job;
}

TEST(Corners, CloseInEveryCourseOfEverySeries) {
  for (const Series& series : catalogue_series()) {
    const auto answer = solve(box_of(series), {});
    ASSERT_TRUE(answer.has_value()) << series.id;
    EXPECT_TRUE(answer->layout.stopped.empty()) << series.id;
    EXPECT_EQ(faults_of(*answer), "") << series.id;
    std::int64_t sets = 0;
    for (const Piece& piece : answer->layout.pieces) sets += piece.kind == UnitKind::CornerSet ? 1 : 0;
    EXPECT_EQ(sets, series.corner_set ? 48 : 0) << series.id;  // 4 corners of 12 courses
    std::int64_t parts = 0;
    for (const supply::PartCount& part : supply::corner_set_parts(answer->building, answer->layout))
      parts += part.count;
    EXPECT_EQ(parts, series.corner_set ? 48 * static_cast<std::int64_t>(series.corner_set->parts.size()) : 0)
        << series.id;
  }
}

// Where walls of two thicknesses meet, the filler is as long as the other wall leaves it.
TEST(Corners, OfTwoThicknessesCloseToo) {
  for (const char* other : {"us-6", "us-8", "us-10", "us-12"})
    for (const char* own : {"us-6", "us-8", "us-10", "us-12"}) {
      Job job = box_of(*find_series(own));
      job.outline.sides[1].series = other;
      const auto answer = solve(job, {});
      ASSERT_TRUE(answer.has_value()) << own << " " << other;
      EXPECT_EQ(faults_of(*answer), "") << own << " " << other;
    }
}

// A return as long as a half unit, 7 5/8 in, on the end of a wall: in every other course it would run through as one
// half. 12 in walls are 11 5/8 in thick and would reach past it; in 6 in walls the half and a filler make the corner.
TEST(Corners, OfThickWallsAreNeverHalves) {
  for (const auto& [series, closes] : {std::pair{"us-6", true}, {"us-8", true}, {"us-10", false}, {"us-12", false}}) {
    Job job = tests::job_with(outline_of({{192}, {8}}, false));
    job.units.series = series;
    const auto answer = solve(job, {});
    ASSERT_TRUE(answer.has_value()) << series;
    EXPECT_EQ(faults_of(*answer), "") << series;
    EXPECT_EQ(answer->layout.stopped.empty(), closes) << series;
  }
}

// Fine or coarse grout, any bar that the catalogue has up to #8: a corner's bar has its grout in both courses' units,
// or a finding says that it has not; the certificate measures both ways and knows no more than the places.
TEST(Corners, BarsHaveTheirGroutInBothCourses) {
  for (const char* series : {"us-6", "us-8", "us-10", "us-12"})
    for (const char* size : {"#4", "#5", "#8"}) {
      Job job = box_of(*find_series(series));
      job.steel.bars = Bars{};
      job.steel.bars->size = size;
      job.steel.bars->corners = true;
      const auto answer = solve(job, {});
      ASSERT_TRUE(answer.has_value()) << series << size;
      EXPECT_EQ(faults_of(*answer), "") << series << size;
    }
}

}  // namespace
}  // namespace stringcourse::property
