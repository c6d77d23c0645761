#pragma once
// A drawing as a small display list. Whole micrometres on paper, origin at the sheet's lower left corner, y up.
// Made by sheet/, turned into bytes by ink/. One list makes the page's drawing, the PDF sheet and the SVG picture.
#include <cstdint>
#include <string>
#include <vector>

namespace stringcourse::paper {

using Micrometres = std::int32_t;

struct Point {
  Micrometres x = 0, y = 0;
  friend bool operator==(const Point&, const Point&) = default;
};

/// Line widths of ISO 128's series (0.13 0.18 0.25 0.35 0.5 0.7 1.0 mm); at most four on one sheet.
enum class Pen { None, Thin, Medium, Thick, Heavy };  // 0.18, 0.35, 0.7, 1.0 mm
/// Width of a pen's line; 0 for Pen::None.
[[nodiscard]] constexpr Micrometres pen_width(Pen pen) {
  switch (pen) {
    case Pen::Thin: return 180;
    case Pen::Medium: return 350;
    case Pen::Thick: return 700;
    case Pen::Heavy: return 1'000;
    case Pen::None: break;
  }
  return 0;
}
enum class Dash { Solid, Dashed, DashDot };        // seen; hidden; centre lines and control joints
enum class Ink { Black, Grey, Blue, Red, White };  // blue: what the user can move; red: what must not go on
enum class Fill { None, White, Tint, Hatch45, Hatch135, CrossHatch, Black, Grey };  // Tint: light grey ground

/// A polyline or polygon.
struct Shape {
  std::vector<Point> points;
  bool closed = false;
  Pen pen = Pen::Thin;
  Dash dash = Dash::Solid;
  Ink ink = Ink::Black;
  Fill fill = Fill::None;
};

struct Circle {
  Point centre;
  Micrometres radius = 0;
  Pen pen = Pen::Thin;
  Ink ink = Ink::Black;
  Fill fill = Fill::None;
};

enum class Anchor { Start, Middle, End };
enum class Weight { Regular, Bold };

/// One line of text. `at` is on the baseline. Height is that of the capitals, from ISO 3098's series
/// (2500 3500 5000 7000 10000 micrometres). Turned text reads from the right: quarter_turns 1 = upwards.
struct Text {
  Point at;
  std::string text;  // UTF-8; fractions as digits: 14'-7 5/16"
  Micrometres height = 2500;
  Weight weight = Weight::Regular;
  Anchor anchor = Anchor::Start;
  Ink ink = Ink::Black;
  int quarter_turns = 0;
};

/// What a group is, for the tagged PDF and for screen readers.
enum class Role { Figure, Heading, Paragraph, Table, TableRow, TableCell, Artifact };

struct Group {
  Role role = Role::Figure;
  std::string label;  // alternative text of a figure; "AB-3-7" names a piece (SVG id and title)
  std::vector<Shape> shapes;
  std::vector<Circle> circles;
  std::vector<Text> texts;
  std::vector<Group> groups;  // drawn after its own items, in order
};

struct Sheet {
  std::string name;  // file-name friendly: "first-course", "side-AB"
  std::string title;
  Micrometres width = 279'400, height = 215'900;  // Letter landscape
  std::vector<Group> groups;
};

/// Paper sizes that sheets come in.
enum class Paper { Letter, A4 };

struct PaperSize {
  Micrometres width = 0, height = 0;
};
/// Landscape size of a paper: Letter 11 x 8 1/2 in (ANSI/ASME Y14.1 size A), A4 297 x 210 mm (ISO 216).
[[nodiscard]] constexpr PaperSize paper_size(Paper paper) {
  return paper == Paper::A4 ? PaperSize{297'000, 210'000} : PaperSize{279'400, 215'900};
}

/// Advance width of `text` in micrometres at capital height `height` (B612, the sheets' font).
[[nodiscard]] Micrometres text_width(const std::string& text, Micrometres height, Weight weight);

}  // namespace stringcourse::paper
