// What is poured or laid is frozen: whatever is found or kept afterwards, dowels keep the places that they were poured
// to, laid courses their units and marks, boards and gauge rod their numbers; and what differs is told.
#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <sstream>

#include "bond/layout_parts.hpp"
#include "job/read.hpp"
#include "setout/gauge_rod.hpp"
#include "setout/marks.hpp"
#include "sheet/sheets.hpp"
#include "solve/printed_set.hpp"
#include "solve/solve.hpp"
#include "told.hpp"

namespace stringcourse {
namespace {

Job example(const std::string& name) {
  std::ostringstream text;
  text << std::ifstream(std::string(STRINGCOURSE_ROOT) + "/examples/" + name + ".json").rdbuf();
  return *read_job(text.str());
}

Answer solved(const Job& job) { return *solve(job, Wishes{}); }

Job without_found(Job job) {
  std::erase_if(job.laid, [](const LaidEntry& entry) { return entry.found.has_value(); });
  return job;
}

LaidEntry found(const std::string& id, const std::string& wall, const std::string& opening, FoundWhat what, Length at) {
  LaidEntry entry;
  entry.id = id;
  entry.found = FoundPlace{wall, what, opening, at};
  return entry;
}

std::vector<std::pair<int, Length>> places(const std::vector<steel::Dowel>& dowels) {
  std::vector<std::pair<int, Length>> all;
  for (const steel::Dowel& dowel : dowels) all.emplace_back(dowel.wall, dowel.along);
  return all;
}

bool has(const Answer& answer, Code code) {
  return std::ranges::any_of(answer.findings, [&](const Finding& finding) { return finding.code == code; });
}

std::vector<setout::Mark> marks(const Answer& answer, int wall, int course, setout::MarkKind kind) {
  std::vector<setout::Mark> all = setout::running_marks(answer.building, answer.layout, wall, course);
  std::erase_if(all, [&](const setout::Mark& mark) { return mark.kind != kind; });
  return all;
}

void gather(const paper::Group& group, std::string& text) {
  for (const paper::Text& one : group.texts) text += one.text + "\n";
  for (const paper::Group& inner : group.groups) gather(inner, text);
}

/// All that is lettered inside the frame of sheets with this in their name.
std::string sheet_text(const Answer& answer, const std::string& name) {
  std::string text;
  for (const paper::Sheet& sheet : sheet::make_sheets(answer, paper::Paper::Letter)) {
    if (sheet.name.find(name) == std::string::npos) continue;
    gather(sheet.groups[1], text);  // the frame's own groups stand before and behind it
  }
  return text;
}

constexpr Length kJamb = Length::sixteenths(95 * 16 + 10);   // 8'-0" nominal from A, less a joint
constexpr Length kDowel = Length::sixteenths(91 * 16 + 13);  // half a half unit, 3 13/16 in, before it

TEST(Poured, TheDryingShedsDowelsStayWhereTheyWerePouredThoughAJambIsFoundElsewhere) {
  const Job job = example("drying-shed");
  const Answer answer = solved(job), before = solved(without_found(job));
  ASSERT_TRUE(answer.as_built.has_value());
  EXPECT_TRUE(answer.poured);
  EXPECT_EQ(answer.dowels[1].along, kDowel);
  EXPECT_EQ(places(answer.dowels), places(before.dowels));
  // And the bars stand over them: the jamb's own too.
  for (const steel::DowelNow& now : answer.dowels_now->dowels) EXPECT_EQ(now.bar, answer.dowels[now.dowel].along);
  EXPECT_TRUE(answer.dowels_now->without.empty());
  const std::string list = sheet_text(answer, "dowels");
  EXPECT_NE(list.find("As poured"), std::string::npos);
  EXPECT_NE(list.find("7'-7 13/16\" = 91 13/16\""), std::string::npos);
  EXPECT_EQ(list.find("What differs"), std::string::npos);
  EXPECT_EQ(sheet_text(answer, "form-AB"), sheet_text(before, "form-AB"));
  EXPECT_EQ(sheet_text(answer, "template"), sheet_text(before, "template"));
}

TEST(Laid, CoursesLaidKeepTheirMarksAndOnlyWhatIsStillToBeLaidChanges) {
  const Job job = example("drying-shed");
  const Answer answer = solved(job), before = solved(without_found(job));
  for (const int course : {1, 2}) {
    const auto old = setout::running_marks(before.building, before.layout, 0, course);
    const auto now = setout::running_marks(answer.building, answer.layout, 0, course);
    ASSERT_EQ(old.size(), now.size());
    for (std::size_t k = 0; k < old.size(); ++k) EXPECT_EQ(old[k].at, now[k].at) << course;
    EXPECT_EQ(marks(answer, 0, course, setout::MarkKind::NearJamb)[0].at, kJamb);
  }
  EXPECT_EQ(marks(answer, 0, 3, setout::MarkKind::NearJamb)[0].at, Length::sixteenths(95 * 16 + 4));
  ASSERT_FALSE(answer.as_built->changes.empty());
  for (const CourseChange& change : answer.as_built->changes) {
    for (const int course : change.courses) EXPECT_GT(course, 2) << test::told(change_said(answer.building, change));
  }
  const auto told = std::ranges::find(answer.findings, Code("found-place"), &Finding::code);
  ASSERT_NE(told, answer.findings.end());
  EXPECT_NE(test::told(told->says).find("3/8\" toward A"), std::string::npos);
  EXPECT_NE(test::told(told->says).find("3'-4 3/4\" = 40 3/4\" wide; 3'-4 3/8\" = 40 3/8\" was planned"),
            std::string::npos);
  // Three units of course 3 stand: of its nine block ends only those behind them move.
  const auto third = std::ranges::find(answer.as_built->changes, std::vector{3}, &CourseChange::courses);
  ASSERT_NE(third, answer.as_built->changes.end());
  EXPECT_EQ(third->marks_moved, 3);
}

TEST(Laid, NumbersOfEarlierHoldPointsAreTheSameAfterAnyJambIsFound) {
  Job job = example("kiln-house");
  const Answer before = solved(job);
  LaidEntry laid;
  laid.id = "l", laid.laid = CourseLaid{"BC", 1};
  for (const ResolvedOpening& opening : before.building.openings) {
    for (const int off : {-20, 7}) {
      const std::string wall = before.building.walls[static_cast<std::size_t>(opening.wall)].name;
      job.laid = {laid, found("f", wall, opening.name, FoundWhat::FarJamb,
                              opening.to.distance_from_start() + Length::sixteenths(off))};
      const Answer answer = solved(job);
      ASSERT_TRUE(answer.as_built.has_value());
      EXPECT_EQ(places(answer.dowels), places(before.dowels));
      EXPECT_EQ(sheet_text(answer, "setting-out"), sheet_text(before, "setting-out"));
      EXPECT_EQ(sheet_text(answer, "form-"), sheet_text(before, "form-"));
      const auto old = setout::gauge_rod(before.building), now = setout::gauge_rod(answer.building);
      ASSERT_EQ(old.size(), now.size());
      for (std::size_t k = 0; k < old.size(); ++k) EXPECT_EQ(old[k].at, now[k].at);
      // What leaf and frame ask for stands in the schedule as before.
      for (std::size_t k = 0; k < before.building.openings.size(); ++k) {
        EXPECT_EQ(answer.building.openings[k].asked_width, before.building.openings[k].asked_width);
        EXPECT_EQ(answer.building.openings[k].use, before.building.openings[k].use);
        EXPECT_EQ(answer.building.openings[k].height(), before.building.openings[k].height());
      }
      EXPECT_TRUE(has(answer, "found-place"));
    }
  }
}

TEST(Laid, AFarCornerFoundElsewhereMovesNoDowelAndNoBoard) {
  Job job = example("kiln-house");
  const Answer before = solved(job);
  LaidEntry end;
  end.id = "f";
  end.found =
      FoundPlace{"BC", FoundWhat::WallEnd, std::nullopt, before.building.walls[1].actual + Length::sixteenths(6)};
  job.laid = {end};
  const Answer answer = solved(job);
  ASSERT_TRUE(answer.as_built.has_value());
  EXPECT_EQ(places(answer.dowels), places(before.dowels));
  EXPECT_EQ(sheet_text(answer, "setting-out"), sheet_text(before, "setting-out"));
  // The corner's bar goes with its corner, 3/8 in off its dowel: told in the list.
  EXPECT_NE(sheet_text(answer, "dowels").find("3/8\" toward C"), std::string::npos);
}

TEST(Poured, ADowelThatNoBarComesDownToAnyMoreIsTold) {
  Job job = example("kiln-house");
  const Answer before = solved(job);
  const ResolvedOpening& door = before.building.openings[1];
  // The near jamb read twice alike 6 in toward the start: the dowel, 3 13/16 in before the old jamb, stands in the
  // doorway.
  const Length at = door.from.distance_from_start() - Length::inches(6);
  job.laid = {found("f", "BC", door.name, FoundWhat::NearJamb, at),
              found("g", "BC", door.name, FoundWhat::NearJamb, at)};
  const Answer answer = solved(job);
  ASSERT_TRUE(answer.as_built.has_value());
  EXPECT_EQ(places(answer.dowels), places(before.dowels));
  EXPECT_TRUE(has(answer, "dowel-without-bar"));
  EXPECT_NE(sheet_text(answer, "dowels").find("no bar comes down"), std::string::npos);
}

TEST(Poured, KeptDowelsChangeTheLayoutAndNotTheListOfWhatStands) {
  Job job = example("kiln-house");
  const Answer before = solved(job);
  const steel::Dowel& dowel = before.dowels[2];
  Reading read;
  read.id = "d";
  read.dowel = DowelReading{before.building.walls[static_cast<std::size_t>(dowel.wall)].name,
                            {},
                            dowel.along + Length::sixteenths(40),
                            dowel.off_face};
  job.readings = {read};
  job.steel.kept_dowels = {"d"};
  const Answer answer = solved(job);
  EXPECT_EQ(places(answer.dowels), places(before.dowels));
  EXPECT_EQ(answer.dowels_now->dowels[2].found, dowel.along + Length::sixteenths(40));
  EXPECT_EQ(answer.found_dowels.front().number, dowel.number);
}

TEST(Poured, PegsAloneAreNoConcreteAndAListToBeSetSaysSo) {
  const Answer pegs = solved(example("glaze-store"));
  EXPECT_FALSE(pegs.poured);
  EXPECT_FALSE(pegs.dowels_now.has_value());
  EXPECT_EQ(sheet_text(pegs, "dowels").find("As poured"), std::string::npos);
  Job job = example("kiln-house");
  Reading edge;
  edge.id = "e", edge.edge = EdgeReading{"AB", {}, Length::feet(3), Length::inches(4)};
  job.readings = {edge};
  EXPECT_TRUE(solved(job).poured);
  job.readings.push_back({});
  job.readings.back().id = "s", job.readings.back().strike = "e";
  EXPECT_FALSE(solved(job).poured);
}

TEST(Laid, ControlJointsByRuleStayWhereTheyAreWhenAnOpeningIsFoundElsewhere) {
  Job job = example("wash-stand");
  Opening door;
  door.name = "D1", door.on = "BC";
  door.place = {"B", {Length::feet(8), Basis::Nominal}, Face::Near};
  door.masonry = MasonrySize{{Length::inches(40), Basis::Nominal}, {Length::inches(64), Basis::Nominal}};
  job.openings = {door};
  const Answer planned = solved(job);
  ASSERT_FALSE(planned.building.control_joints.empty());
  const ResolvedOpening& opening = planned.building.openings.front();
  job.laid.push_back(found("f", planned.building.walls[static_cast<std::size_t>(opening.wall)].name, opening.name,
                           FoundWhat::NearJamb, opening.from.distance_from_start() - Length::sixteenths(5)));
  const Answer answer = solved(job);
  ASSERT_TRUE(answer.as_built.has_value());
  ASSERT_EQ(answer.building.control_joints.size(), planned.building.control_joints.size());
  for (std::size_t k = 0; k < planned.building.control_joints.size(); ++k) {
    EXPECT_EQ(answer.building.control_joints[k].from, planned.building.control_joints[k].from);
  }
}

}  // namespace
}  // namespace stringcourse
