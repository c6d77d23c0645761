#pragma once
// Content-stream operators for shapes and texts. Coordinates are printed as thousandths of a point, by whole-number
// arithmetic: 1 micrometre = 360/127 thousandths, so neighbouring micrometres stay apart.
#include <optional>
#include <string>

#include "ink/paint.hpp"
#include "ink/pdf_fonts.hpp"
#include "paper/display.hpp"

namespace stringcourse::ink {

/// Appends a length in points.
void append_points(std::string& out, std::int64_t micrometres);

/// Appends operators to one page and remembers pen, dash and colours, so that nothing is said twice.
class Strokes {
 public:
  explicit Strokes(const paper::Sheet& sheet) : width_(sheet.width), height_(sheet.height) {}

  void draw(const paper::Shape& shape);
  void draw(const paper::Circle& circle);
  void draw(const paper::Text& text);
  /// Appends an operator line that changes no drawing state (marks).
  void put(std::string_view line) { content_ += line; }

  [[nodiscard]] const std::string& content() const { return content_; }
  [[nodiscard]] const UsedGlyphs& used() const { return used_; }

 private:
  struct State {
    std::optional<Colour> stroke, fill;
    std::optional<std::pair<paper::Pen, paper::Dash>> line;
    bool operator==(const State&) const = default;
  };
  struct Box {
    std::int64_t left, low, right, high;
  };

  void set_stroke(Colour colour);
  void set_fill(Colour colour);
  void set_line(paper::Pen pen, paper::Dash dash);
  void paint(const std::string& path, paper::Fill fill, Box box, const paper::Shape& look);
  void hatch(const std::string& path, HatchLines lines, Box box, Colour colour);
  void append_hatch_lines(Box box, int slope);

  std::int64_t width_, height_;
  std::string content_;
  State state_;
  UsedGlyphs used_;
};

}  // namespace stringcourse::ink
