// A job that differs in its logs alone has the layout of the answer before: no search, and the very answer of a search.
#include <gtest/gtest.h>

#include <fstream>
#include <sstream>

#include "document/answer_json.hpp"
#include "job/read.hpp"
#include "solve/solve.hpp"

namespace stringcourse {
namespace {

Job example(const std::string& name) {
  std::ostringstream text;
  text << std::ifstream(std::string(STRINGCOURSE_ROOT) + "/examples/" + name + ".json").rdbuf();
  return *read_job(text.str());
}

Job without_last_entry(Job job) {
  job.laid.pop_back();
  return job;
}

/// The same building with another layout: whoever takes it over shows it.
Answer marked(Answer answer) {
  answer.layout.cost.units += 1000;
  return answer;
}

std::string text_of(const Job& job, const Answer* known) {
  Wishes wishes;
  wishes.known = known;
  return answer_text(*solve(job, wishes));
}

LaidEntry course_laid(const Job& job) {
  LaidEntry entry;
  entry.id = "one more";
  entry.laid = CourseLaid{job.outline.sides[0].from + job.outline.sides[0].to, 1};
  return entry;
}

TEST(KnownLayout, AnEntryAtTheWallIsAnsweredAsByASearch) {
  for (const char* name : {"kiln-house", "hillside-shed"}) {
    const Job job = example(name);
    const Answer before = *solve(job, {});
    Job more = job;
    more.laid.push_back(course_laid(job));
    more.name = "another name";
    EXPECT_EQ(text_of(more, &before), text_of(more, nullptr)) << name;
    const Answer other = marked(before);
    EXPECT_NE(text_of(more, &other), text_of(more, nullptr)) << name << ": the known layout is not taken";
  }
}

TEST(KnownLayout, IsNotTakenWhereTheBuildingIsAnother) {
  const Job job = example("kiln-house");
  const Answer before = marked(*solve(job, {}));
  Job wider = job;
  wider.openings[0].place.at.length += Length::inches(8);
  EXPECT_EQ(text_of(wider, &before), text_of(wider, nullptr));
  Job found = job;
  found.laid.push_back(course_laid(job));
  LaidEntry jamb;
  jamb.id = "jamb";
  const Answer plain = *solve(job, {});
  const ResolvedOpening& opening = plain.building.openings[0];
  const std::string& wall = plain.building.walls[static_cast<std::size_t>(opening.wall)].name;
  const Length at = opening.from.distance_from_start() + Length::inches(1);
  jamb.found = FoundPlace{wall, FoundWhat::NearJamb, opening.name, at};
  found.laid.push_back(jamb);
  EXPECT_EQ(text_of(found, &before), text_of(found, nullptr));
  // ... nor that of a building as it was found for the one that was planned.
  const Answer as_found = *solve(found, {});
  ASSERT_TRUE(as_found.as_built.has_value());
  EXPECT_EQ(text_of(without_last_entry(found), &as_found), text_of(without_last_entry(found), nullptr));
}

}  // namespace
}  // namespace stringcourse
