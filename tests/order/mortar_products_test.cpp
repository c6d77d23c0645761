// Mortar by what it is mixed of, against published figures worked by hand.
#include "order/examples.hpp"

namespace stringcourse::order_test {
namespace {

Answer with_mortar(MortarOf of, MortarType type, std::optional<MortarBy> by = std::nullopt) {
  Job job = example_job("kiln-house");
  job.order.emplace();
  job.order->mortar = of, job.order->type = type, job.order->mortar_by = by;
  job.order->mortar_waste = 0, job.order->sand_waste = 0;
  return solved(job);
}

double cubic_feet_in_joints(const Answer& answer) {
  return static_cast<double>(answer.order.mortar.all().cubic_nanometres) / 2.8316846592e25;
}

std::int64_t up(double value) { return static_cast<std::int64_t>(std::ceil(value - 1e-9)); }

const Figure& figure_of(const Article& article, std::string_view rule) {
  return *std::ranges::find(article.figures, rule, &Figure::rule);
}

TEST(MortarProducts, PremixBagsAreThoseOfEachFigure) {
  const Answer answer = with_mortar(MortarOf::Premix, MortarType::S);
  const Article& bags = *article_of(answer, "mortar/premix");
  const auto blocks = static_cast<double>(answer.order.mortar.blocks);
  EXPECT_EQ(figure_of(bags, "mortar-joints").most, up(cubic_feet_in_joints(answer) / 0.7));
  EXPECT_EQ(figure_of(bags, "mortar-litres-a-block").most, up(blocks * 1.25 / 28.316846592 / 0.7));
  EXPECT_EQ(figure_of(bags, "mortar-feet-a-hundred").most, up(blocks * 0.085 / 0.7));
  EXPECT_EQ(figure_of(bags, "mortar-blocks-a-bag").least, up(blocks / 8));
  EXPECT_EQ(figure_of(bags, "mortar-blocks-a-bag").most, up(blocks / 6));
  std::int64_t least = bags.figures.front().least, most = 0;
  for (const Figure& figure : bags.figures) least = std::min(least, figure.least), most = std::max(most, figure.most);
  EXPECT_EQ(bags.least, least);
  EXPECT_EQ(bags.most, most);
}

TEST(MortarProducts, MasonryCementTakesThreeOfSandAndRule38) {
  const Answer answer = with_mortar(MortarOf::MasonryCement, MortarType::N, MortarBy::Joints);
  const double raw = cubic_feet_in_joints(answer) * 38 / 27;  // 1 of cement to 3 of sand
  EXPECT_EQ(article_of(answer, "mortar/masonry-cement")->most, up(raw / 4));
  EXPECT_EQ(article_of(answer, "sand")->most, up(raw * 3 / 4));
  EXPECT_EQ(article_of(answer, "lime"), nullptr);
}

TEST(MortarProducts, CementLimeAndSandStandInTheProportionsOfTheirType) {
  struct Parts {
    MortarType type;
    double lime, sand;
  };
  for (const Parts& parts : {Parts{MortarType::M, 0.25, 3.5}, Parts{MortarType::S, 0.5, 4.5},
                             Parts{MortarType::N, 1, 6}, Parts{MortarType::O, 2, 9}}) {
    const Answer answer = with_mortar(MortarOf::CementLime, parts.type, MortarBy::CubicFeet);
    const double mortar = static_cast<double>(answer.order.mortar.blocks) * 0.085;
    const double cement = mortar * 38 / 27 / (1 + parts.lime + parts.sand);
    EXPECT_EQ(article_of(answer, "mortar/cement")->most, up(cement));
    EXPECT_EQ(article_of(answer, "lime")->most, up(cement * parts.lime));
    EXPECT_EQ(article_of(answer, "sand")->most, up(cement * parts.sand));
  }
}

TEST(MortarProducts, RuleThirtyEightMakesNineAndAHalfSacksToACubicYard) {
  // US Navy builder manual: a 1 : 3 mix takes 38 / 4 = 9.5 sacks of cement to 27 cu ft of mortar. The figure of 8 1/2
  // cu ft to 100 blocks: so 9.5 sacks lay 27 / 8.5 x 100 = 317.6 blocks.
  const Answer answer = with_mortar(MortarOf::MasonryCement, MortarType::N, MortarBy::CubicFeet);
  const auto blocks = static_cast<double>(answer.order.mortar.blocks);
  EXPECT_EQ(article_of(answer, "mortar/masonry-cement")->most, up(blocks / (2700 / 8.5) * 9.5));
}

TEST(MortarProducts, BlocksOfOtherLengthsHaveNoPublishedFigures) {
  const auto job = read_job(R"({"stringcourse": 1, "tape": "millimetres", "units": {"series": "uk-215"},
    "outline": {"sides": [{"from": "A", "to": "B", "length": "4500", "turn": "right"},
      {"from": "B", "to": "C", "length": "3600", "turn": "right"}, {"from": "C", "to": "D", "length": "4500",
      "turn": "right"}, {"from": "D", "to": "A", "length": "3600", "turn": "right"}]}, "heights": {"courses": 4}})");
  ASSERT_TRUE(job.has_value());
  const Answer answer = solved(*job);
  const Article& bags = *article_of(answer, "mortar/premix");
  ASSERT_EQ(bags.figures.size(), 1U);
  EXPECT_EQ(bags.figures.front().rule, "mortar-joints");
}

}  // namespace
}  // namespace stringcourse::order_test
