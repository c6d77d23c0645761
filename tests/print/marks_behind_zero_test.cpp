// A wall that enters another: its units inside that one have no mark, for no tape reads there.
#include <gtest/gtest.h>

#include <fstream>
#include <sstream>

#include "print/solved_examples.hpp"

namespace stringcourse::print_test {
namespace {

TEST(MarksBehindZero, NoMarkOfALappedWallIsBelowZero) {
  std::ostringstream read;
  read << std::ifstream(std::string(STRINGCOURSE_ROOT) + "/examples/glaze-store.json").rdbuf();
  std::string text = read.str();
  const std::string tied = R"("start_junction": "tied")";
  ASSERT_TRUE(text.contains(tied));
  text.replace(text.find(tied), tied.size(), R"("start_junction": "lapped")");
  const Solved solved = solved_job("lapped", text);
  bool behind = false;
  for (const stringcourse::Run& run : solved.answer.layout.runs) behind = behind || run.start < Length();
  EXPECT_TRUE(behind);
  for (const paper::Sheet& sheet : bands_of(solved.sheets(paper::Paper::Letter))) {
    if (!sheet.title.starts_with("Course")) continue;
    for (const std::string& one : texts_of(sheet))
      EXPECT_FALSE(one.size() > 1 && one[0] == '-' && one[1] >= '0' && one[1] <= '9') << sheet.title << ": " << one;
  }
}

}  // namespace
}  // namespace stringcourse::print_test
