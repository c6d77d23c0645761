#include "ink/pdf_strokes.hpp"

#include <algorithm>

#include "paper/font.hpp"
#include "paper/font_text.hpp"

namespace stringcourse::ink {

using paper::Fill;
using paper::Pen;
using paper::Point;

namespace {

/// Control points of a quarter circle stand 0.5523 radii along the tangents; the error is 0.0003 radii.
constexpr std::int64_t kQuarterCircle = 5523;  // per 10000

void append_point(std::string& out, std::int64_t x, std::int64_t y) {
  append_points(out, x);
  out += ' ';
  append_points(out, y);
}

std::string polyline_path(const paper::Shape& shape) {
  std::string path;
  for (std::size_t k = 0; k < shape.points.size(); ++k) {
    append_point(path, shape.points[k].x, shape.points[k].y);
    path += k == 0 ? " m\n" : " l\n";
  }
  if (shape.closed) path += "h\n";
  return path;
}

std::string circle_path(const paper::Circle& circle) {
  const std::int64_t r = circle.radius, c = r * kQuarterCircle / 10'000;
  // Twelve points after the first, three for each quarter, anticlockwise from the east.
  const std::int64_t offsets[12][2] = {{r, c},   {c, r},   {0, r},  {-c, r}, {-r, c}, {-r, 0},
                                       {-r, -c}, {-c, -r}, {0, -r}, {c, -r}, {r, -c}, {r, 0}};
  std::string path;
  append_point(path, circle.centre.x + r, circle.centre.y);
  path += " m\n";
  for (int k = 0; k < 12; ++k) {
    append_point(path, circle.centre.x + offsets[k][0], circle.centre.y + offsets[k][1]);
    path += k % 3 == 2 ? " c\n" : " ";
  }
  return path + "h\n";
}

void append_colour(std::string& out, Colour colour, std::string_view grey, std::string_view rgb) {
  append_thousandths(out, colour.red);
  if (colour.red == colour.green && colour.green == colour.blue) {
    out += grey;
    return;
  }
  out += ' ';
  append_thousandths(out, colour.green);
  out += ' ';
  append_thousandths(out, colour.blue);
  out += rgb;
}

/// The four directions in which text may run.
Point reading_direction(int quarter_turns) {
  switch (((quarter_turns % 4) + 4) % 4) {
    case 1: return {0, 1};
    case 2: return {-1, 0};
    case 3: return {0, -1};
    default: return {1, 0};
  }
}

Micrometres anchor_offset(const paper::Text& text) {
  if (text.anchor == paper::Anchor::Start) return 0;
  const Micrometres width = paper::text_width(text.text, text.height, text.weight);
  return text.anchor == paper::Anchor::Middle ? width / 2 : width;
}

}  // namespace

void append_points(std::string& out, std::int64_t micrometres) {
  append_thousandths(out, nearest_quotient(micrometres * 360, 127));
}

void Strokes::set_stroke(Colour colour) {
  if (state_.stroke == colour) return;
  state_.stroke = colour;
  append_colour(content_, colour, " G\n", " RG\n");
}

void Strokes::set_fill(Colour colour) {
  if (state_.fill == colour) return;
  state_.fill = colour;
  append_colour(content_, colour, " g\n", " rg\n");
}

void Strokes::set_line(Pen pen, paper::Dash dash) {
  if (state_.line == std::pair(pen, dash)) return;
  state_.line = std::pair(pen, dash);
  append_points(content_, paper::pen_width(pen));
  content_ += " w [";
  const DashLengths dashes = dash_lengths(dash, paper::pen_width(pen));
  for (const Micrometres length : dashes.used()) {
    append_points(content_, length);
    content_ += ' ';
  }
  content_ += "] 0 d\n";
}

/// Lines x * slope + c at whole steps of the sheet's own grid, so that neighbouring fields run on; cut to the box.
void Strokes::append_hatch_lines(Box box, int slope) {
  const auto lift = [&](std::int64_t x) { return slope > 0 ? x : -x; };
  const std::int64_t least = box.low - std::max(lift(box.left), lift(box.right));
  const std::int64_t most = box.high - std::min(lift(box.left), lift(box.right));
  std::int64_t c = (least / kHatchStep - 1) * kHatchStep;
  for (; c <= most; c += kHatchStep) {
    // y = lift(x) + c stays between low and high for x between these two.
    const std::int64_t first = slope > 0 ? box.low - c : c - box.high;
    const std::int64_t last = slope > 0 ? box.high - c : c - box.low;
    const std::int64_t from = std::max(box.left, first), to = std::min(box.right, last);
    if (from >= to) continue;
    append_point(content_, from, lift(from) + c);
    content_ += " m ";
    append_point(content_, to, lift(to) + c);
    content_ += " l\n";
  }
}

void Strokes::hatch(const std::string& path, HatchLines lines, Box box, Colour colour) {
  box = {std::max<std::int64_t>(box.left, 0), std::max<std::int64_t>(box.low, 0), std::min(box.right, width_),
         std::min(box.high, height_)};
  if (box.left >= box.right || box.low >= box.high) return;
  const State before = state_;
  content_ += "q\n" + path + "W n\n";
  set_stroke(colour);
  set_line(Pen::Thin, paper::Dash::Solid);
  if (lines.rising == HatchLines::Drawn::Yes) append_hatch_lines(box, 1);
  if (lines.falling == HatchLines::Drawn::Yes) append_hatch_lines(box, -1);
  content_ += "S\nQ\n";
  state_ = before;
}

void Strokes::paint(const std::string& path, Fill fill, Box box, const paper::Shape& look) {
  const Ground ground = fill_ground(fill);
  const HatchLines lines = fill_hatch(fill);
  const bool filled = ground.laid == Ground::Laid::Yes, stroked = look.pen != Pen::None;
  if (lines.any()) hatch(path, lines, box, ink_colour(look.ink));
  if (!filled && !stroked) return;
  if (filled) set_fill(ground.colour);
  if (stroked) {
    set_stroke(ink_colour(look.ink));
    set_line(look.pen, look.dash);
  }
  content_ += path;
  content_ += filled && stroked ? "B\n" : filled ? "f\n" : "S\n";
}

void Strokes::draw(const paper::Shape& shape) {
  if (shape.points.size() < 2) return;
  const auto [left, right] = std::ranges::minmax(shape.points, {}, &Point::x);
  const auto [low, high] = std::ranges::minmax(shape.points, {}, &Point::y);
  paint(polyline_path(shape), shape.fill, {left.x, low.y, right.x, high.y}, shape);
}

void Strokes::draw(const paper::Circle& circle) {
  if (circle.radius <= 0) return;
  const std::int64_t x = circle.centre.x, y = circle.centre.y, r = circle.radius;
  const paper::Shape look{{}, true, circle.pen, paper::Dash::Solid, circle.ink, circle.fill};
  paint(circle_path(circle), circle.fill, {x - r, y - r, x + r, y + r}, look);
}

void Strokes::draw(const paper::Text& text) {
  const std::u32string characters = paper::drawable_characters(text.text);
  if (characters.empty()) return;
  const paper::Font& face = paper::font(text.weight);
  std::string codes;
  bool lacking = false;
  for (const char32_t character : characters) {
    const paper::GlyphId glyph = face.glyph(character);
    lacking = lacking || glyph == paper::kMissingGlyph;
    used_.add(text.weight, glyph, glyph == paper::kMissingGlyph ? paper::kReplacement : character);
    append_hexadecimal(codes, glyph, 4);
  }
  const Point run = reading_direction(text.quarter_turns);
  const std::int64_t back = anchor_offset(text);
  set_fill(ink_colour(text.ink));
  if (lacking) content_ += "/Span << /ActualText " + pdf_text(text.text) + " >> BDC\n";
  content_ += text.weight == paper::Weight::Bold ? "BT /B " : "BT /R ";
  append_points(content_, em_size(text.height, text.weight));
  content_ += " Tf ";
  for (const int number : {run.x, run.y, -run.y, run.x}) {
    append_whole(content_, number);
    content_ += ' ';
  }
  append_point(content_, text.at.x - back * run.x, text.at.y - back * run.y);
  content_ += " Tm <" + codes + "> Tj ET\n";
  if (lacking) content_ += "EMC\n";
}

}  // namespace stringcourse::ink
