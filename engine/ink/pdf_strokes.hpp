#pragma once
// Content-stream operators for shapes and texts. Coordinates are printed as thousandths of a point, by whole-number
// arithmetic: 1 micrometre = 360/127 thousandths, so neighbouring micrometres stay apart.
#include <optional>
#include <string>

#include "ink/paint.hpp"
#include "ink/pdf_fonts.hpp"
#include "sheet/display.hpp"

namespace stringcourse::ink {

/// Appends a length in points.
void append_points(std::string& out, std::int64_t micrometres);

/// Appends operators to one page and remembers pen, dash and colours, so that nothing is said twice.
class Strokes {
 public:
  explicit Strokes(const sheet::Sheet& sheet) : width_(sheet.width), height_(sheet.height) {}

  void draw(const sheet::Shape& shape);
  void draw(const sheet::Circle& circle);
  void draw(const sheet::Text& text);
  /// Appends an operator line that changes no drawing state (marks).
  void put(std::string_view line) { content_ += line; }

  [[nodiscard]] const std::string& content() const { return content_; }
  [[nodiscard]] const UsedGlyphs& used() const { return used_; }

 private:
  struct State {
    std::optional<Colour> stroke, fill;
    std::optional<std::pair<sheet::Pen, sheet::Dash>> line;
    bool operator==(const State&) const = default;
  };
  struct Box {
    std::int64_t left, low, right, high;
  };

  void set_stroke(Colour colour);
  void set_fill(Colour colour);
  void set_line(sheet::Pen pen, sheet::Dash dash);
  void paint(const std::string& path, sheet::Fill fill, Box box, const sheet::Shape& look);
  void hatch(const std::string& path, HatchLines lines, Box box, Colour colour);
  void append_hatch_lines(Box box, int slope);

  std::int64_t width_, height_;
  std::string content_;
  State state_;
  UsedGlyphs used_;
};

}  // namespace stringcourse::ink
