// The summary's line of proof says nothing that its own numbers contradict.
#include <gtest/gtest.h>

#include "print/solved_examples.hpp"

namespace stringcourse::print_test {
namespace {

TEST(ProofLine, NothingIsCalledNotProvenLeastThatIsNoMoreThanTheLeast) {
  bool met = false;
  for (const Solved& solved : solved_examples()) {
    const Layout& layout = solved.answer.layout;
    const bool least =
        layout.cost.short_laps == layout.least_possible.short_laps && layout.cost.cuts == layout.least_possible.cuts;
    met = met || (least && !layout.proven);
    for (const paper::Sheet& sheet : solved.sheets(paper::Paper::Letter)) {
      if (sheet.title != "Summary") continue;
      const bool open = has_text(sheet, "No layout has fewer short joint laps");
      EXPECT_EQ(has_text(sheet, "Proven least") + has_text(sheet, "Not proven least") + open, 1) << solved.name;
      EXPECT_EQ(has_text(sheet, "Proven least"), layout.proven) << solved.name;
      EXPECT_EQ(has_text(sheet, "Not proven least"), !layout.proven && !least) << solved.name;
    }
  }
  EXPECT_TRUE(met);  // the drying shed: solved anew from what is laid, no cut, no short lap, finer terms open
}

}  // namespace
}  // namespace stringcourse::print_test
