// What the marks at the wall say that a run of units ends at.
#include <gtest/gtest.h>

#include <string>

#include "sheet/sheets.hpp"
#include "solve/printed_set.hpp"
#include "solve/solve.hpp"
#include "unit/walls/made_jobs.hpp"

namespace stringcourse {
namespace {

using namespace tests;

void gather(const paper::Group& group, std::string& text) {
  for (const paper::Text& one : group.texts) text += one.text + " ";
  for (const paper::Group& inner : group.groups) gather(inner, text);
}

std::string all_text(const Answer& answer) {
  std::string text;
  for (const paper::Sheet& one : sheet::make_sheets(answer, paper::Paper::Letter)) {
    for (const paper::Group& group : one.groups) gather(group, text);
  }
  return text;
}

/// 24 by 16 ft, a control joint 10 ft from A, a doorway in CD, a log begun.
Answer laid_to_course_one() {
  Job job = job_with(outline_of({{288}, {192}, {288}, {192}}), 10);
  job.control_joints.placed = {{"AB", at("A", in(120))}};
  job.openings = {plain_hole("D1", "CD", at("C", in(96)), in(40), in(56))};
  LaidEntry first;
  first.id = "1";
  first.units = UnitSample{};
  first.units->together = 10, first.units->row = in16(156, 4);
  job.laid = {first};
  return *solve(job, {});
}

// Course 1 of AB runs from 8 in to the joint at 119 5/8: (119 5/8 + 3/8 - 8) / 16 = 7 units. Of CD to D1's jamb at
// 95 5/8, from 0 or from 8: 6 units, or 5 and a half.
TEST(MarksSaid, TheEndOfARunIsCalledWhatItIs) {
  const std::string text = all_text(laid_to_course_one());
  EXPECT_NE(text.find("end of unit 7, at the control joint"), std::string::npos) << text;
  EXPECT_EQ(text.find("end of unit 7, at the jamb"), std::string::npos);
  EXPECT_NE(text.find("end of unit 6, at the jamb"), std::string::npos);
  EXPECT_NE(text.find(", at the corner"), std::string::npos);
}

// 20 ft and open: a wall alone has ends, no corners.
TEST(MarksSaid, AFreeEndIsNoCorner) {
  Job job = job_with(outline_of({{240}}, false), 10);
  LaidEntry first;
  first.id = "1";
  first.units = UnitSample{};
  first.units->together = 10, first.units->row = in16(156, 4);
  job.laid = {first};
  const std::string text = all_text(*solve(job, {}));
  EXPECT_NE(text.find(", at the end of the wall"), std::string::npos) << text;
  EXPECT_EQ(text.find(", at the corner"), std::string::npos);
}

}  // namespace
}  // namespace stringcourse
