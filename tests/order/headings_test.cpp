// The order list under its headings: what is said over articles is not said of each, and nothing is lost by it.
#include <algorithm>
#include <set>
#include <vector>

#include "answer/order_groups.hpp"
#include "order/examples.hpp"
#include "words/language.hpp"

namespace stringcourse::order_test {
namespace {

std::string told(const Answer& answer, const Fact& fact) {
  return words::told(fact, words::Reader{answer.building.tape, words::english()});
}

/// The headings in the list's order, each as often as it is said.
std::vector<std::string> headings_of(const Answer& answer) {
  std::vector<std::string> said;
  for (const Article& article : answer.order.articles) {
    const std::string heading = told(answer, heading_over(article));
    if (said.empty() || said.back() != heading) said.push_back(heading);
  }
  return said;
}

TEST(OrderHeadings, EachIsSaidOnceAndTheBlockComesFirst) {
  for (const char* name : kExamples) {
    const Answer answer = solved(example_job(name));
    const std::vector<std::string> said = headings_of(answer);
    EXPECT_EQ(std::set(said.begin(), said.end()).size(), said.size()) << name;
    EXPECT_EQ(said.front(), answer.building.series.front().title) << name;
  }
}

TEST(OrderHeadings, UnitsAreCalledByTheirKindAndWithTheHeadingByTheirWholeName) {
  for (const char* name : kExamples) {
    const Answer answer = solved(example_job(name));
    for (const Article& article : answer.order.articles) {
      const std::string whole = told(answer, article.name), called = told(answer, called_under_heading(article));
      if (article.id.starts_with("unit/") || article.id.starts_with("corner-part/"))
        EXPECT_EQ(called + ": " + told(answer, heading_over(article)), whole) << name;
      else EXPECT_EQ(called, whole) << name;
    }
  }
}

TEST(OrderHeadings, TheKilnHouseIsBoughtUnderThese) {
  const Answer answer = solved(example_job("kiln-house"));
  const std::string block = answer.building.series.front().title;
  EXPECT_EQ(headings_of(answer), (std::vector<std::string>{block, "Mortar and grout", "Steel",
                                                           "Forms, lumber and bolts", "Tools and what is worn"}));
}

// Twelve courses: ties in the beds on 2, 4 to 10, at both ends of the inner wall; none on the last course.
TEST(OrderHeadings, TiesStandWithTheSteel) {
  Job job = example_job("glaze-store");
  for (InteriorWall& wall : job.interior_walls) wall.start_junction = wall.end_junction = JunctionKind::Tied;
  job.steel.tie_every = 2;
  const Answer answer = solved(job);
  ASSERT_EQ(answer.building.courses.size(), 12U);
  const auto tie = std::ranges::find(answer.order.articles, "tie", &Article::id);
  ASSERT_NE(tie, answer.order.articles.end());
  EXPECT_EQ(tie->net, 5 * 2);
  EXPECT_EQ(told(answer, heading_over(*tie)), "Steel");
}

}  // namespace
}  // namespace stringcourse::order_test
