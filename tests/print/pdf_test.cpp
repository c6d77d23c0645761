// The printed sets as files, read by programs of others: poppler's tools and qpdf.
#include <gtest/gtest.h>

#include <sstream>

#include "ink/pdf.hpp"
#include "print/solved_examples.hpp"
#include "unit/ink/outside_tools.hpp"

namespace stringcourse::print_test {
namespace {

using ink_test::holds;
using ink_test::run;

std::string set_file(const Solved& solved, paper::Paper paper) {
  const std::string name = "set_" + solved.name + (paper == paper::Paper::A4 ? "_a4.pdf" : "_letter.pdf");
  return ink_test::write_file(name, ink::pdf_bytes(solved.sheets(paper), {.title = solved.answer.job.name}));
}

TEST(PrintedFiles, PassAnIndependentCheckOnBothPapers) {
  for (const Solved& solved : solved_examples()) {
    SCOPED_TRACE(solved.name);
    for (const paper::Paper paper : {paper::Paper::Letter, paper::Paper::A4}) {
      const auto outcome = run("qpdf --check " + set_file(solved, paper));
      EXPECT_EQ(outcome.status, 0) << outcome.output;
    }
  }
}

TEST(PrintedFiles, EmbedEveryFontAndAreTagged) {
  for (const Solved& solved : solved_examples()) {
    SCOPED_TRACE(solved.name);
    const std::string file = set_file(solved, paper::Paper::Letter);
    std::istringstream fonts(run("pdffonts " + file).output);
    std::string line;
    std::getline(fonts, line);
    const std::size_t column = line.find("emb");  // name, type, encoding, emb, sub, uni, object
    ASSERT_NE(column, std::string::npos);
    std::getline(fonts, line);
    int count = 0;
    while (std::getline(fonts, line)) {
      EXPECT_EQ(line.substr(column, 3), "yes") << line;
      ++count;
    }
    EXPECT_EQ(count, 2);  // B612 in two weights
    EXPECT_TRUE(holds(run("pdfinfo " + file).output, "Tagged:          yes"));
  }
}

// By hand: third-unit marks at 47 5/8, 95 5/8 ... and 55 5/8, 103 5/8 ...
TEST(PrintedFiles, RunningMarksAreFoundByATextReader) {
  const std::string text =
      run("pdftotext " + set_file(solved_example("kiln-house"), paper::Paper::Letter) + " -").output;
  for (const char* mark : {"47 5/8\"", "95 5/8\"", "55 5/8\"", "103 5/8\""}) EXPECT_TRUE(holds(text, mark)) << mark;
}

TEST(PrintedFiles, AMetricSetSpeaksOnlyMillimetres) {
  const Solved& solved = solved_example("clay-store");
  for (const paper::Sheet& sheet : solved.sheets(paper::Paper::A4)) {
    if (!sheet.title.starts_with("Side") && !sheet.title.starts_with("Elevation")) continue;
    for (const std::string& text : texts_of(sheet)) EXPECT_FALSE(text.ends_with("\"")) << sheet.name << " " << text;
  }
  const std::string text = run("pdftotext " + set_file(solved, paper::Paper::A4) + " -").output;
  EXPECT_TRUE(holds(text, "7190 mm"));  // 7200 mm nominal between outside corners, less the 10 mm joint
}

}  // namespace
}  // namespace stringcourse::print_test
