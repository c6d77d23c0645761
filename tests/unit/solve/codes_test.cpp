// Every code of the list is raised by a job that a row names, at the place that the row names.
#include "job/codes.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <set>
#include <sstream>

#include "code_rows.hpp"
#include "job/read.hpp"

namespace stringcourse::tests {
namespace {

std::string line_of(std::string_view code, std::string_view place) {
  return std::string(code) + " " + std::string(place);
}

std::vector<CodeRow> every_row() {
  std::vector<CodeRow> rows;
  for (auto* table : {document_rows, plan_rows, wall_rows, layout_rows, reading_rows, laid_rows})
    std::ranges::copy(table(), std::back_inserter(rows));
  return rows;
}

TEST(Codes, EachIsRaisedWhereItsRowSays) {
  for (const CodeRow& row : every_row()) {
    const Told told = row.told();
    std::string all;
    for (const std::string& line : told) all += "  " + line + "\n";
    EXPECT_TRUE(std::ranges::contains(told, line_of(row.code, row.place)))
        << line_of(row.code, row.place) << " is not among\n"
        << all;
  }
}

TEST(Codes, EachOfTheListHasARow) {
  std::set<std::string_view> told;
  for (const CodeRow& row : every_row()) told.insert(row.code.text());
  EXPECT_EQ(told, std::set<std::string_view>(std::begin(kCodes), std::end(kCodes)));
}

}  // namespace

Told told_of(const Refusals& refusals) {
  Told told;
  for (const Refusal& refusal : refusals.shown) told.push_back(line_of(refusal.code, refusal.place));
  return told;
}

Told told_of(const Job& job, const Wishes& wishes) {
  const auto answer = solve(job, wishes);
  if (!answer) return told_of(answer.error());
  Told told;
  for (const Finding& finding : answer->findings) told.push_back(line_of(finding.code, finding.place));
  return told;
}

Told told_of_text(std::string_view text) {
  const auto job = read_job(text);
  return job ? Told() : told_of(job.error());
}

namespace {

Job job_in(const std::string& folder, const std::string& name) {
  std::ostringstream text;
  text << std::ifstream(std::string(STRINGCOURSE_ROOT) + folder + name + ".json").rdbuf();
  return *read_job(text.str());
}

}  // namespace

Told told_of_case(const std::string& name, std::int64_t search_budget) {
  Wishes wishes;
  wishes.search_budget = search_budget;
  return told_of(job_in("/tests/cases/codes/", name), wishes);
}

Job example(const std::string& name) { return job_in("/examples/", name); }

}  // namespace stringcourse::tests
