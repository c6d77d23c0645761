// Bars, grout spaces and rules against the published rows; every figure says where it comes from.
#include <gtest/gtest.h>

#include <set>

#include "catalogue/rules.hpp"
#include "words/language.hpp"

namespace stringcourse {
namespace {

TEST(Bars, inch_bars_have_the_diameters_of_astm_a615) {
  // Published rows: inches as printed, and the same table's millimetres to one place.
  struct Row {
    const char* name;
    std::int64_t thousandths, tenths_of_millimetre;
  };
  const Row kRows[] = {{"#3", 375, 95},   {"#4", 500, 127},  {"#5", 625, 159},   {"#6", 750, 191},  {"#7", 875, 222},
                       {"#8", 1000, 254}, {"#9", 1128, 287}, {"#10", 1270, 323}, {"#11", 1410, 358}};
  for (const Row& row : kRows) {
    const Bar* bar = find_bar(row.name);
    ASSERT_NE(bar, nullptr) << row.name;
    EXPECT_EQ(bar->diameter, Length::nanometres(row.thousandths * 25'400)) << row.name;
    EXPECT_EQ(rounded_to(bar->diameter, Length::nanometres(100'000)),
              Length::nanometres(row.tenths_of_millimetre * 100'000));
  }
}

TEST(Bars, metric_bars_are_as_thick_as_their_name_says) {
  for (const char* name : {"N12", "N16", "N20", "H10", "H12", "H16", "H20"}) {
    const Bar* bar = find_bar(name);
    ASSERT_NE(bar, nullptr) << name;
    EXPECT_EQ(bar->diameter, Length::millimetres(std::stoll(name + 1)));
    EXPECT_EQ(bar->source.knowledge, Knowledge::CommonPractice);
  }
  EXPECT_EQ(find_bar("#2"), nullptr);
  EXPECT_EQ(catalogue_bars().size(), 16u);
}

Length halves(std::int64_t count) { return Length::sixteenths(8 * count); }

TEST(GroutSpaces, the_coarse_column_is_that_of_the_federal_guide_specification) {
  struct Row {
    std::int64_t feet, across, along;
  };  // halves of an inch
  const Row kRows[] = {{5, 5, 6}, {8, 6, 6}, {12, 6, 6}, {24, 6, 8}};
  std::size_t at = 0;
  for (const GroutSpace& space : grout_spaces()) {
    if (space.grout != Grout::Coarse) continue;
    ASSERT_LT(at, std::size(kRows));
    EXPECT_EQ(space.pour_at_most, Length::feet(kRows[at].feet));
    EXPECT_EQ(space.across, halves(kRows[at].across));
    EXPECT_EQ(space.along, halves(kRows[at].along));
    EXPECT_EQ(space.source.knowledge, Knowledge::Seen);
    ++at;
  }
  EXPECT_EQ(at, std::size(kRows));
}

TEST(GroutSpaces, the_fine_column_is_printed_as_unverified) {
  int rows = 0;
  for (const GroutSpace& space : grout_spaces()) {
    if (space.grout != Grout::Fine) continue;
    ++rows;
    EXPECT_EQ(space.source.knowledge, Knowledge::Memory);
  }
  EXPECT_EQ(rows, 4);  // 1 ft, 5'-4", 12'-8", 24 ft
}

TEST(GroutSpaces, a_higher_pour_never_needs_less_room) {
  const auto spaces = grout_spaces();
  for (std::size_t i = 1; i < spaces.size(); ++i) {
    if (spaces[i].grout != spaces[i - 1].grout) continue;
    EXPECT_GT(spaces[i].pour_at_most, spaces[i - 1].pour_at_most);
    EXPECT_GE(spaces[i].across, spaces[i - 1].across);
    EXPECT_GE(spaces[i].along, spaces[i - 1].along);
  }
}

TEST(GroutSpaces, a_bar_keeps_a_quarter_in_fine_and_a_half_inch_in_coarse_grout) {
  EXPECT_EQ(bar_clearance(Grout::Fine), Length::sixteenths(4));
  EXPECT_EQ(bar_clearance(Grout::Coarse), Length::sixteenths(8));
}

TEST(GroutSpaces, every_series_that_grouts_takes_a_number_five_bar_in_coarse_grout_up_to_twelve_feet) {
  // Least clear opening of cells half a unit apart along the wall, and between face shells across it.
  for (const Series& series : catalogue_series()) {
    if (!series.grouts) continue;
    const Length across = series.thickness - 2 * series.face_shell;
    const Length along = series.full_cells[0].to - (series.full_cells[1].from - series.pitch());
    EXPECT_GE(across, halves(6)) << series.id;
    EXPECT_GE(along, halves(6)) << series.id;
    EXPECT_GE(across, find_bar("#5")->diameter + 2 * bar_clearance(Grout::Coarse)) << series.id;
  }
}

TEST(Rules, every_rule_that_the_engine_names_is_there) {
  for (const char* id : {"cleanout-pour", "running-bond", "control-joint-us", "control-joint-uk",
                         "control-joint-horizontal-steel", "first-bed", "joint-range", "lintel-bearing",
                         "limited-access-zone", "brace-over-8-ft", "mortar-two-and-a-half-hours", "saw-dust",
                         "wet-cement", "lifting", "engineer", "grout-space", "bar-clearance"}) {
    EXPECT_NE(find_rule(id), nullptr) << id;
  }
  EXPECT_EQ(find_rule("no-such-rule"), nullptr);
}

TEST(Rules, texts_state_the_published_limits) {
  const auto says = [](const char* id, const char* limit) {
    return words::rule_text(*find_rule(id), {Tape::Inches}).contains(limit);
  };
  EXPECT_TRUE(says("cleanout-pour", "5'-4\""));          // TMS 602 3.2 F
  EXPECT_TRUE(says("running-bond", "a quarter"));        // TMS 402
  EXPECT_TRUE(says("control-joint-us", "1 1/2 times"));  // TEK 10-2B table 1
  EXPECT_TRUE(says("control-joint-us", "25 ft"));
  EXPECT_TRUE(says("control-joint-uk", "6 m"));                  // NHBC
  EXPECT_TRUE(says("control-joint-horizontal-steel", "0.002"));  // TEK 10-3
  EXPECT_TRUE(says("first-bed", "1/4 in to 3/4 in"));            // TMS 602 3.3
  EXPECT_TRUE(says("first-bed", "1 1/4 in"));
  EXPECT_TRUE(says("lintel-bearing", "4 in"));            // MSJC-08 2.3.3.3
  EXPECT_TRUE(says("limited-access-zone", "plus 4 ft"));  // 29 CFR 1926.706(a)
  EXPECT_TRUE(says("brace-over-8-ft", "over 8 ft"));
  EXPECT_TRUE(says("mortar-two-and-a-half-hours", "2 1/2 hours"));  // IBC 2103
  EXPECT_TRUE(says("saw-dust", "fitted respirator"));
}

TEST(Rules, ids_are_unique_and_texts_are_one_sentence_without_a_full_stop) {
  std::set<std::string> ids;
  for (const Rule& rule : catalogue_rules()) {
    const std::string text = words::rule_text(rule, {Tape::Inches});
    EXPECT_TRUE(ids.insert(std::string(rule.id)).second) << rule.id;
    ASSERT_FALSE(text.empty()) << rule.id;
    EXPECT_NE(text.back(), '.') << rule.id;
    EXPECT_EQ(text.find(". "), std::string::npos) << rule.id;
  }
}

std::string text_of(std::string_view id) { return words::rule_text(*find_rule(id), {Tape::Inches}); }

// By hand: (100 - 32) 5/9 = 37.8, (90 - 32) 5/9 = 32.2, (25 - 32) 5/9 = -3.9, (20 - 32) 5/9 = -6.7; 8 and 15 miles are
// 12.9 and 24.1 km.
TEST(Rules, Temperatures_winds_and_times_are_told_as_they_are_typed) {
  EXPECT_EQ(temperature_of("hot-above", 0), Fahrenheit{100});
  EXPECT_EQ(wind_of("hot-above", 2), MilesPerHour{8});
  EXPECT_EQ(
      text_of("hot-above"),
      "Hot-weather work begins over 100 \u00B0F (37.8 \u00B0C), or over 90 \u00B0F (32.2 \u00B0C) with wind over 8 "
      "mph (13 km/h)");
  EXPECT_NE(text_of("cold-25-to-20").find("25 \u00B0F (-3.9 \u00B0C) to 20 \u00B0F (-6.7 \u00B0C)"), std::string::npos);
  EXPECT_NE(text_of("cold-25-to-20").find("15 mph (24 km/h)"), std::string::npos);
  EXPECT_EQ(minutes_of("mortar-life"), Minutes{150});
  EXPECT_EQ(text_of("mortar-life"), "Mortar is used within 2 1/2 hours of mixing");
  EXPECT_EQ(minutes_of("cold-cover", 2), Minutes{24 * 60});
}

// Each card of the cold ends where the next begins, so that no temperature is left without one.
TEST(Rules, The_cards_of_the_cold_follow_one_another) {
  EXPECT_EQ(temperature_of("cold-below-40"), temperature_of("cold-40-to-32", 0));
  EXPECT_EQ(temperature_of("cold-40-to-32", 1), temperature_of("cold-32-to-25", 0));
  EXPECT_EQ(temperature_of("cold-32-to-25", 1), temperature_of("cold-25-to-20", 0));
  EXPECT_EQ(temperature_of("cold-25-to-20", 1), temperature_of("cold-20", 0));
}

// Every limit is said in its rule's sentence, each once or more: a figure that no sentence has is a slip of the table.
TEST(Rules, Every_typed_limit_stands_in_its_sentence) {
  int looked_at = 0;
  for (const Rule& rule : catalogue_rules()) {
    const std::string text = words::rule_text(rule, {Tape::Inches});
    for (const RuleFigure& figure : rule.figures) {
      ++looked_at;
      const std::int32_t whole = std::visit(
          [](auto one) -> std::int32_t {
            if constexpr (std::same_as<decltype(one), Fahrenheit>) return one.degrees;
            else if constexpr (std::same_as<decltype(one), MilesPerHour>) return one.miles;
            else return one.count >= 90 ? one.count / 60 : one.count;
          },
          figure);
      EXPECT_NE(text.find(std::to_string(whole)), std::string::npos) << rule.id;
    }
  }
  EXPECT_GT(looked_at, 25);
}

void expect_source(const Source& source, const std::string& whose) {
  EXPECT_FALSE(source.text.empty()) << whose;
  EXPECT_FALSE(knowledge_name(source.knowledge).empty()) << whose;
  const bool warns = source.text.find("unverified: check your code") != std::string::npos;
  if (source.knowledge == Knowledge::Memory) EXPECT_TRUE(warns) << whose;
}

TEST(Sources, every_figure_has_one_and_memory_says_check_your_code) {
  for (const Series& series : catalogue_series()) expect_source(series.source, series.id);
  for (const Bar& bar : catalogue_bars()) expect_source(bar.source, bar.name);
  for (const GroutSpace& space : grout_spaces()) expect_source(space.source, "grout space");
  for (const Rule& rule : catalogue_rules()) {
    // A rule of the job itself has no source.
    if (rule.standing || !rule.source.text.empty()) expect_source(rule.source, std::string(rule.id));
  }
}

TEST(Sources, knowledge_is_printed_in_its_own_words) {
  EXPECT_EQ(knowledge_name(Knowledge::Seen), "seen");
  EXPECT_EQ(knowledge_name(Knowledge::SecondHand), "second-hand");
  EXPECT_EQ(knowledge_name(Knowledge::CommonPractice), "common practice");
  EXPECT_EQ(knowledge_name(Knowledge::Memory), "memory");
  EXPECT_EQ(knowledge_name(Knowledge::Measured), "measured");
}

}  // namespace
}  // namespace stringcourse
