// The example jobs drawn with a rough fill: L-plans, interior walls, windows, thick walls, control joints, metric.
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>
#include <vector>

#include "job/read.hpp"
#include "paper/legibility.hpp"
#include "sheet/sheets.hpp"
#include "unit/sheet/rough_layout.hpp"
#include "walls/resolve.hpp"

namespace stringcourse::sheet {
namespace {

std::vector<std::filesystem::path> example_files() {
  std::vector<std::filesystem::path> files;
  for (const auto& entry : std::filesystem::directory_iterator(STRINGCOURSE_ROOT "/examples")) {
    if (entry.path().extension() == ".json") files.push_back(entry.path());
  }
  std::sort(files.begin(), files.end());
  return files;
}

std::string contents_of(const std::filesystem::path& path) {
  std::ifstream file(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(file), {}};
}

std::string troubles_of(const Sheet& sheet) {
  std::string all;
  for (const LegibilityTrouble& trouble : legibility_troubles(sheet)) {
    all += sheet.name + ": '" + trouble.text + "' and '" + trouble.other + "'\n";
  }
  return all;
}

TEST(ExampleSheets, AreLegibleOnBothPapers) {
  const auto files = example_files();
  ASSERT_GE(files.size(), 6u);
  for (const auto& file : files) {
    SCOPED_TRACE(file.filename().string());
    const auto job = read_job(contents_of(file));
    ASSERT_TRUE(job.has_value());
    const auto building = resolve(*job);
    ASSERT_TRUE(building.has_value());
    const stringcourse::testing::RoughLayout rough{*building};
    Answer answer;
    answer.job = *job;
    answer.job.readings.clear();
    answer.building = *building;
    answer.layout = rough.layout;
    count_and_list(answer);
    for (const Paper paper : {Paper::Letter, Paper::A4}) {
      for_each_sheet(answer, paper, [](const Sheet& sheet) { EXPECT_EQ(troubles_of(sheet), ""); });
    }
    for (std::size_t index = 0; index < drawing_names(*building).size(); ++index) {
      EXPECT_EQ(troubles_of(make_drawing(answer, index)), "");
    }
  }
}

}  // namespace
}  // namespace stringcourse::sheet
