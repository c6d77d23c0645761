// What refusals tell: never what contradicts itself, never a rounded-away number, never a raw character of a
// stranger's.
#include <gtest/gtest.h>

#include "made_jobs.hpp"

namespace stringcourse::tests {
namespace {

std::string told(const Job& job, Code code) {
  const auto resolved = resolve(job);
  if (resolved) return "";
  const Refusal* found = refusal(resolved.error(), code);
  return found ? test::told(sentences({found->reason, found->remedy}), job.tape) : "";
}

TEST(RefusalWords, AWallFromItselfIsToldSoAndIsNotOfferedToItself) {
  Job job = shed();
  job.interior_walls = {inner_wall("a", "a", at("start", in(48)))};
  EXPECT_NE(told(job, "junction-loop").find("a is to start from itself"), std::string::npos)
      << told(job, "junction-loop");
  job.interior_walls[0].off = "b";
  const std::string unknown = told(job, "unknown-wall");
  EXPECT_NE(unknown.find("AB, BC, CD, DA."), std::string::npos) << unknown;
}

TEST(RefusalWords, AnAskedLengthFinerThanTheTapeIsToldAsItWasAsked) {
  Job job = shed();
  job.steel.bars.emplace().size = "#5";
  job.steel.bars->spacing = Length::sixty_fourths(1);
  const std::string spacing = told(job, "bar-spacing");
  EXPECT_NE(spacing.find("1/64\""), std::string::npos) << spacing;
  job.steel.bars->spacing = Length::millimetres(150);  // 5 115/128 in: nothing that an inch tape can mark
  const std::string metric = told(job, "bar-spacing");
  EXPECT_NE(metric.find("150 mm"), std::string::npos) << metric;
}

TEST(RefusalWords, LengthsThatAreComparedAreNeverToldAlike) {
  Job job = shed();
  // The jamb stands a joint nearer than its nominal place: 11 1/4 in less 1/64 from A. DA takes 7 5/8 of that; what is
  // left, 3 39/64, is less than the least piece, 3 5/8, by what an inch tape cannot mark.
  job.openings = {plain_hole("W", "AB", at("A", in16(11, 10) - Length::sixty_fourths(1)), in(32), in(32))};
  const std::string pier = told(job, "pier-short");
  EXPECT_NE(pier.find("3 39/64\""), std::string::npos) << pier;
  EXPECT_NE(pier.find("3 5/8\""), std::string::npos) << pier;
}

TEST(RefusalWords, ANameThatTurnsTheLineIsSpelled) {
  Job job = shed();
  job.openings = {plain_hole("W", "A\u202EB", at("A", in(48)), in(32), in(32))};
  const std::string unknown = told(job, "unknown-wall");
  EXPECT_NE(unknown.find("A\\u202EB"), std::string::npos) << unknown;
}

}  // namespace
}  // namespace stringcourse::tests
