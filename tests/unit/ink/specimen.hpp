#pragma once
// A sheet that shows every pen, dash, ink, fill, text size and direction once: what the tests print and people look at.
#include <string>
#include <tuple>
#include <utility>
#include <vector>

#include "paper/display.hpp"

namespace stringcourse::ink_test {

using namespace stringcourse::paper;

inline Shape rectangle(Point low, Point high, Fill fill, Pen pen) {
  return {{low, {high.x, low.y}, high, {low.x, high.y}}, true, pen, Dash::Solid, Ink::Black, fill};
}

inline Group heading() {
  Group group{Role::Heading, "", {}, {}, {}, {}};
  group.texts.push_back(
      {{15'000, 196'000}, "Specimen of lines and letters", 7'000, Weight::Bold, Anchor::Start, Ink::Black, 0});
  return group;
}

inline Group lines() {
  Group group{Role::Figure, "Four pens, three dashes", {}, {}, {}, {}};
  Micrometres y = 186'000;
  for (const Pen pen : {Pen::Thin, Pen::Medium, Pen::Thick, Pen::Heavy}) {
    for (const Dash dash : {Dash::Solid, Dash::Dashed, Dash::DashDot}) {
      group.shapes.push_back({{{15'000, y}, {95'000, y}}, false, pen, dash, Ink::Black, Fill::None});
      y -= 3'500;
    }
  }
  return group;
}

inline Group fills() {
  Group group{Role::Figure, "Fills", {}, {}, {}, {}};
  Micrometres x = 110'000;
  for (const Fill fill : {Fill::None, Fill::White, Fill::Tint, Fill::Hatch45, Fill::Hatch135, Fill::CrossHatch,
                          Fill::Grey, Fill::Black}) {
    group.shapes.push_back(rectangle({x, 170'000}, {x + 16'000, 186'000}, fill, Pen::Medium));
    group.circles.push_back({{x + 8'000, 158'000}, 7'000, Pen::Thick, Ink::Black, fill});
    x += 19'000;
  }
  group.shapes.push_back(rectangle({110'000, 135'000}, {150'000, 148'000}, Fill::Hatch45, Pen::Thick));
  group.shapes.push_back(rectangle({150'000, 135'000}, {190'000, 148'000}, Fill::Hatch45, Pen::Thick));
  Shape ell{{{200'000, 130'000},
             {255'000, 130'000},
             {255'000, 137'000},
             {207'000, 137'000},
             {207'000, 148'000},
             {200'000, 148'000}},
            true,
            Pen::Thick,
            Dash::Solid,
            Ink::Blue,
            Fill::Hatch135};
  group.shapes.push_back(std::move(ell));
  return group;
}

inline Group sizes() {
  Group group{Role::Paragraph, "", {}, {}, {}, {}};
  Micrometres y = 132'000;
  for (const Micrometres height : {2'500, 3'500, 5'000, 7'000, 10'000}) {
    y -= height + 3'000;
    group.texts.push_back(
        {{15'000, y}, "14'-7 5/16\" = 175 5/16\"", height, Weight::Regular, Anchor::Start, Ink::Black, 0});
  }
  for (const Micrometres height : {2'500, 3'500, 5'000}) {
    y -= height + 3'000;
    group.texts.push_back(
        {{15'000, y}, "47 5/8\"  3/16\"  11/16\"  15'-11 15/16\"", height, Weight::Bold, Anchor::Start, Ink::Black, 0});
  }
  group.texts.push_back({{15'000, y - 7'000},
                         "Ø 5/8\"  ½ ¾ ⅜  6′-8 3/8″  ± × ° – ✓ ☐  lacking: △ ⁄",
                         3'500,
                         Weight::Regular,
                         Anchor::Start,
                         Ink::Black,
                         0});
  return group;
}

inline Group inks() {
  Group group{Role::Paragraph, "", {}, {}, {}, {}};
  group.shapes.push_back(rectangle({185'000, 84'000}, {262'000, 92'000}, Fill::Black, Pen::None));
  const std::pair<Ink, const char*> samples[] = {{Ink::Black, "Black: what stands"},
                                                 {Ink::Grey, "Grey: what is behind"},
                                                 {Ink::Blue, "Blue: what moves"},
                                                 {Ink::Red, "Red: must not go on"},
                                                 {Ink::White, "White on black"}};
  Micrometres y = 116'000;
  for (const auto& [ink, words] : samples) {
    group.texts.push_back({{190'000, y}, words, 3'500, Weight::Bold, Anchor::Start, ink, 0});
    y -= 7'300;
  }
  return group;
}

inline Group turned() {
  Group group{Role::Figure, "Texts turned about a point", {}, {}, {}, {}};
  const Point centre{225'000, 50'000};
  group.circles.push_back({centre, 1'000, Pen::Thin, Ink::Red, Fill::None});
  for (int turns = 0; turns < 4; ++turns) {
    const Point out[] = {{3'000, 0}, {0, 3'000}, {-3'000, 0}, {0, -3'000}};
    group.texts.push_back({{centre.x + out[turns].x, centre.y + out[turns].y},
                           "7 5/8\" up",
                           3'500,
                           Weight::Regular,
                           Anchor::Start,
                           Ink::Black,
                           turns});
  }
  Micrometres y = 20'000;
  for (const Anchor anchor : {Anchor::Start, Anchor::Middle, Anchor::End}) {
    group.texts.push_back({{225'000, y}, "anchor", 2'500, Weight::Regular, anchor, Ink::Blue, 0});
    y -= 4'000;
  }
  group.shapes.push_back(
      {{{225'000, 10'000}, {225'000, 24'000}}, false, Pen::Thin, Dash::Solid, Ink::Blue, Fill::None});
  return group;
}

inline Group table() {
  Group group{Role::Table, "Tally", {}, {}, {}, {}};
  Micrometres y = 18'000;
  for (const auto& [name, count] : {std::pair{"full", "412"}, std::pair{"half", "38"}}) {
    Group row{Role::TableRow, "", {}, {}, {}, {}};
    for (const auto& [x, words, anchor] :
         {std::tuple{15'000, name, Anchor::Start}, std::tuple{60'000, count, Anchor::End}}) {
      Group cell{Role::TableCell, "", {}, {}, {}, {}};
      cell.texts.push_back({{x, y}, words, 2'500, Weight::Regular, anchor, Ink::Black, 0});
      row.groups.push_back(std::move(cell));
    }
    group.groups.push_back(std::move(row));
    y -= 5'000;
  }
  return group;
}

inline Group frame() {
  Group group{Role::Artifact, "", {}, {}, {}, {}};
  group.shapes.push_back(rectangle({7'000, 7'000}, {272'400, 208'900}, Fill::None, Pen::Medium));
  return group;
}

/// Letter landscape, the size that a Sheet has unless told otherwise.
inline Sheet specimen() {
  Sheet sheet;
  sheet.name = "specimen";
  sheet.title = "Specimen of lines and letters";
  sheet.groups = {frame(), heading(), lines(), fills(), sizes(), inks(), turned(), table()};
  return sheet;
}

}  // namespace stringcourse::ink_test
