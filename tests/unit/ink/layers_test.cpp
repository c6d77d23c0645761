#include "ink/layers.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

#include "ink/svg.hpp"
#include "specimen.hpp"

namespace stringcourse::ink_test {
namespace {

using ink::Box;
using ink::Layer;

/// Upright rectangles thrown at random over a sheet, so that many lie on one another, in few looks.
Sheet thrown(unsigned seed, int count) {
  std::minstd_rand dice(seed);
  const auto within = [&](int most) { return static_cast<Micrometres>(dice() % static_cast<unsigned>(most)); };
  Sheet sheet;
  sheet.groups.emplace_back();
  for (int k = 0; k < count; ++k) {
    const Point low{within(200'000), within(200'000)};
    const Point high{low.x + 1'000 + within(30'000), low.y + 1'000 + within(30'000)};
    const Fill fill = within(2) == 0 ? Fill::White : Fill::Tint;
    sheet.groups.back().shapes.push_back(rectangle(low, high, fill, within(2) == 0 ? Pen::Thin : Pen::Thick));
  }
  return sheet;
}

/// The layer of each of the sheet's shapes, in the order of painting.
std::vector<std::size_t> layer_numbers(const Sheet& sheet, const std::vector<Layer>& layers) {
  std::vector<std::size_t> numbers;
  for (const Shape& shape : sheet.groups[0].shapes) {
    const auto holds = [&](const Layer& layer) { return std::ranges::contains(layer.shapes, &shape); };
    numbers.push_back(static_cast<std::size_t>(std::ranges::find_if(layers, holds) - layers.begin()));
  }
  return numbers;
}

/// Worked out here anew: corners and half a line round them.
bool lie_on_one_another(const Shape& a, const Shape& b) {
  const Micrometres reach = (pen_width(a.pen) + pen_width(b.pen)) / 2;
  return a.points[0].x <= b.points[2].x + reach && b.points[0].x <= a.points[2].x + reach &&
         a.points[0].y <= b.points[2].y + reach && b.points[0].y <= a.points[2].y + reach;
}

TEST(Layers, WhatIsPaintedOverSomethingComesInALaterLayer) {
  for (unsigned seed = 1; seed <= 200; ++seed) {
    const Sheet sheet = thrown(seed, 60);
    const std::vector<Layer> layers = ink::layers_of(sheet);
    const auto& shapes = sheet.groups[0].shapes;
    const std::vector<std::size_t> numbers = layer_numbers(sheet, layers);
    for (std::size_t later = 0; later < shapes.size(); ++later) {
      ASSERT_LT(numbers[later], layers.size());
      for (std::size_t earlier = 0; earlier < later; ++earlier) {
        if (lie_on_one_another(shapes[earlier], shapes[later])) {
          ASSERT_LT(numbers[earlier], numbers[later]) << "seed " << seed;
        }
      }
    }
  }
}

TEST(Layers, ShapesOfOneLookThatTouchNothingShareOneLayer) {
  Sheet sheet;
  sheet.groups.emplace_back();
  for (Micrometres x = 0; x < 100'000; x += 10'000) {
    sheet.groups[0].shapes.push_back(rectangle({x, 0}, {x + 9'000, 4'000}, Fill::White, Pen::Thin));
    sheet.groups[0].shapes.push_back(rectangle({x + 1'000, 1'000}, {x + 2'000, 2'000}, Fill::Black, Pen::None));
  }
  EXPECT_EQ(ink::layers_of(sheet).size(), 2u);
}

TEST(Layers, NothingOfTheSheetIsLost) {
  const Sheet sheet = specimen();
  std::size_t shapes = 0, circles = 0, texts = 0;
  for (const Layer& layer : ink::layers_of(sheet)) {
    shapes += layer.shapes.size(), circles += layer.circles.size(), texts += layer.texts.size();
  }
  std::size_t all_shapes = 0, all_circles = 0, all_texts = 0;
  const auto count = [&](this auto&& self, const Group& group) -> void {
    all_shapes += group.shapes.size(), all_circles += group.circles.size(), all_texts += group.texts.size();
    for (const Group& inner : group.groups) self(inner);
  };
  for (const Group& group : sheet.groups) count(group);
  EXPECT_EQ(shapes, all_shapes);
  EXPECT_EQ(circles, all_circles);
  EXPECT_EQ(texts, all_texts);
}

}  // namespace
}  // namespace stringcourse::ink_test
