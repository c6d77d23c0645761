// The plate and its bolts from above, and the zone beside walls: what stands on the drawings.
#include <gtest/gtest.h>

#include <algorithm>

#include "paper/legibility.hpp"
#include "print/solved_examples.hpp"
#include "sheet/drawing.hpp"

namespace stringcourse::print_test {
namespace {

/// White circles of a bolt's size.
std::size_t bolts_drawn(const std::vector<paper::Group>& groups) {
  std::size_t count = 0;
  visit_groups(groups, [&](const paper::Group& group) {
    count += static_cast<std::size_t>(
        std::ranges::count_if(group.circles, [](const paper::Circle& one) { return one.radius == 1'300; }));
  });
  return count;
}

std::size_t bolts_of(const Answer& answer, int wall) {
  std::size_t count = 0;
  for (const setout::PlatePiece& piece : answer.plates) count += piece.wall == wall ? piece.bolts.size() : 0;
  return count;
}

TEST(PlateFromAbove, EverySideWithAPlateIsDrawnWithAllItsBolts) {
  std::size_t sides = 0;
  for (const Solved& solved : solved_examples()) {
    for (int wall = 0; wall < static_cast<int>(solved.answer.building.walls.size()); ++wall) {
      const auto drawing = sheet::make_named_drawing(solved.answer, "plate-" + std::to_string(wall + 1));
      const bool has_plate = std::ranges::contains(solved.answer.plates, wall, &setout::PlatePiece::wall);
      ASSERT_EQ(drawing.has_value(), has_plate) << solved.name << " " << wall;
      if (!has_plate) continue;
      ++sides;
      EXPECT_EQ(bolts_drawn(drawing->sheet.groups), bolts_of(solved.answer, wall)) << solved.name << " " << wall;
    }
  }
  EXPECT_GE(sides, 8u);
}

TEST(PlateFromAbove, AStretchWithoutABoltIsDrawnAndToldRed) {
  Job job = solved_example("kiln-house").answer.job;
  job.top->trusses.front().clear = Length::inches(13);  // at every place a truss is too near
  const auto answer = solve(job, {.search_budget = 20'000});
  const bool none = std::ranges::any_of(answer->plates, [](const auto& piece) { return !piece.without.empty(); });
  ASSERT_TRUE(none);
  const auto drawing = sheet::make_named_drawing(*answer, "plate-1");
  ASSERT_TRUE(drawing);
  std::string all;
  for (const std::string& text : texts_of(drawing->sheet)) all += text + " ";
  EXPECT_NE(all.find(words::kEnglish.top.no_bolt_here), std::string::npos);
  EXPECT_NE(all.find("ask your engineer for a strap"), std::string::npos);
}

// By hand: fourteen courses of 8 in over the footing, and 4 ft (29 CFR 1926.706(a)): 13'-4".
TEST(AccessZone, IsAsWideAsTheWallIsHighAndFourFeet) {
  const auto drawing = sheet::make_named_drawing(solved_example("kiln-house").answer, "zone");
  ASSERT_TRUE(drawing);
  std::string all;
  std::size_t widths = 0;
  for (const std::string& text : texts_of(drawing->sheet)) all += text + " ", widths += text.ends_with(": 13'-4\"");
  EXPECT_EQ(widths, 1u);
  EXPECT_NE(all.find("the zone is 13'-4\" wide"), std::string::npos) << all;
  EXPECT_NE(all.find("how high a wall may stand unbraced is not told here"), std::string::npos) << all;
}

}  // namespace
}  // namespace stringcourse::print_test
