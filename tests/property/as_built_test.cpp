// Re-solving from what was found, on the kiln house: each answer is certified, what is laid keeps its very pieces, what
// lies elsewhere does not change, and a jamb found within what joints can take changes no unit.
#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <random>
#include <sstream>

#include "bond/layout_parts.hpp"
#include "certify.hpp"
#include "job/read.hpp"

namespace stringcourse::property {
namespace {

Job kiln_house() {
  std::ostringstream text;
  text << std::ifstream(std::string(STRINGCOURSE_ROOT) + "/examples/kiln-house.json").rdbuf();
  return *read_job(text.str());
}

LaidEntry found(const ResolvedOpening& opening, const std::string& wall, bool near, Length at) {
  LaidEntry entry;
  entry.id = "f";
  entry.found = FoundPlace{wall, near ? FoundWhat::NearJamb : FoundWhat::FarJamb, opening.name, at};
  return entry;
}

/// Where every piece of a course stands, exactly.
std::vector<ExactPosition> starts_of(const Layout& layout, int wall, int course) {
  std::vector<ExactPosition> all;
  for (const Run& run : bond::runs_in(layout, wall, course)) {
    for (const Piece& piece : bond::pieces_of(layout, run)) all.push_back(piece.start);
  }
  return all;
}

std::vector<std::tuple<Length, UnitKind, CutEnd>> pieces_of(const Layout& layout, int wall, int course) {
  std::vector<std::tuple<Length, UnitKind, CutEnd>> all;
  for (const Run& run : bond::runs_in(layout, wall, course)) {
    for (const Piece& piece : bond::pieces_of(layout, run)) all.emplace_back(piece.length, piece.kind, piece.cut);
  }
  return all;
}

TEST(AsBuilt, EveryJambFoundOffIsBuiltOnWithACertificateAndTheLaidCoursesKeepTheirPieces) {
  std::mt19937 random(20261127);
  const Job plain = kiln_house();
  const auto planned = solve(plain, Wishes{});
  ASSERT_TRUE(planned.has_value());
  int kept = 0, unchanged = 0, changed = 0;
  for (int round = 0; round < 120; ++round) {
    const auto& opening = planned->building.openings[random() % planned->building.openings.size()];
    const std::string wall = planned->building.walls[static_cast<std::size_t>(opening.wall)].name;
    const bool near = random() % 2 == 0;
    const Length off = Length::sixteenths(static_cast<int>(random() % 41) - 20);
    const Length at = (near ? opening.from : opening.to).distance_from_start() + off;
    Job job = plain;
    job.laid.push_back(found(opening, wall, near, at));
    const int laid = static_cast<int>(random() % 4);
    for (int course = 1; course <= laid; ++course) {
      LaidEntry entry;
      entry.id = "c" + std::to_string(course);
      entry.laid = CourseLaid{wall, course};
      job.laid.push_back(entry);
    }
    const auto answer = solve(job, Wishes{});
    ASSERT_TRUE(answer.has_value());
    ASSERT_TRUE(answer->as_built.has_value()) << wall << " " << off.in_nanometres();
    EXPECT_EQ(faults_of(*answer), "") << opening.name << (near ? " near " : " far ") << tape_text(off, Tape::Inches)
                                      << " laid " << laid;
    EXPECT_TRUE(answer->layout.stopped.empty());
    // The jamb stands where it was found, exactly; the corners run through as printed.
    const ResolvedOpening& now =
        answer->building.openings[static_cast<std::size_t>(&opening - planned->building.openings.data())];
    EXPECT_EQ((near ? now.from : now.to).distance_from_start(), at);
    EXPECT_EQ(answer->layout.arriving_through, planned->layout.arriving_through);
    if (answer->as_built->laid_kept) {
      ++kept;
      for (int course = 1; course <= laid; ++course) {
        // The very units, where they were printed, though the jamb over them is elsewhere.
        EXPECT_EQ(pieces_of(planned->layout, opening.wall, course), pieces_of(answer->layout, opening.wall, course))
            << course;
        EXPECT_EQ(starts_of(planned->layout, opening.wall, course), starts_of(answer->layout, opening.wall, course))
            << course;
      }
    }
    // Other walls are as printed.
    for (int other = 0; other < static_cast<int>(planned->building.walls.size()); ++other) {
      if (other == opening.wall) continue;
      for (const Course& course : planned->building.courses)
        EXPECT_EQ(pieces_of(planned->layout, other, course.number), pieces_of(answer->layout, other, course.number));
    }
    // Dowels stay where they were poured, and nothing laid is told to change.
    ASSERT_EQ(answer->dowels.size(), planned->dowels.size());
    for (std::size_t k = 0; k < planned->dowels.size(); ++k)
      EXPECT_EQ(answer->dowels[k].along, planned->dowels[k].along);
    for (const CourseChange& change : answer->as_built->changes) {
      if (change.wall != opening.wall || !answer->as_built->laid_kept) continue;
      for (const int course : change.courses) EXPECT_GT(course, laid);
    }
    // A quarter inch over a pier of several joints is theirs to take: no unit beside the opening changes.
    const bool same = std::ranges::all_of(answer->as_built->changes, [&](const CourseChange& change) {
      return std::ranges::all_of(change.courses,
                                 [&](int course) { return course > opening.last_course || change.units.empty(); });
    });
    (same ? unchanged : changed) += 1;
  }
  EXPECT_GT(kept, 60);
  EXPECT_GT(unchanged, 20);
  EXPECT_GT(changed, 20);
}

TEST(AsBuilt, ACornerFoundOffMakesTheBuildingLongerAndIsCertified) {
  const Job plain = kiln_house();
  for (const int sixteenths : {-12, -5, 4, 10}) {
    Job job = plain;
    LaidEntry entry;
    entry.id = "f";
    const auto planned = solve(plain, Wishes{});
    const Wall& wall = planned->building.walls[1];
    entry.found = FoundPlace{wall.name, FoundWhat::WallEnd, std::nullopt, wall.actual + Length::sixteenths(sixteenths)};
    job.laid = {entry};
    const auto answer = solve(job, Wishes{});
    ASSERT_TRUE(answer.has_value() && answer->as_built.has_value());
    EXPECT_EQ(answer->building.walls[1].actual, wall.actual + Length::sixteenths(sixteenths));
    EXPECT_EQ(faults_of(*answer), "");
  }
}

TEST(AsBuilt, WhatIsFoundFarFromItsPlanIsQuestionedUntilItIsReadTwiceAlike) {
  Job job = kiln_house();
  const auto planned = solve(job, Wishes{});
  const ResolvedOpening& opening = planned->building.openings.front();
  const std::string wall = planned->building.walls[static_cast<std::size_t>(opening.wall)].name;
  job.laid = {found(opening, wall, true, opening.from.distance_from_start() - Length::inches(4))};
  const auto once = solve(job, Wishes{});
  EXPECT_FALSE(once->as_built.has_value());
  EXPECT_TRUE(std::ranges::any_of(once->findings,
                                  [](const Finding& finding) { return finding.code == "found-place-doubtful"; }));
  job.laid.push_back(job.laid.front());
  job.laid.back().id = "g";
  const auto twice = solve(job, Wishes{});
  ASSERT_TRUE(twice->as_built.has_value());
  EXPECT_EQ(faults_of(*twice), "");
}

}  // namespace
}  // namespace stringcourse::property
