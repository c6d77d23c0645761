#include "ink/svg.hpp"

#include <set>
#include <span>
#include <utility>

#include "ink/layers.hpp"
#include "ink/paint.hpp"
#include "paper/font_text.hpp"

namespace stringcourse::ink {

using paper::Circle;
using paper::Fill;
using paper::Group;
using paper::Ink;
using paper::Pen;
using paper::Role;
using paper::Shape;
using paper::Sheet;
using paper::Text;

namespace {

std::string_view ink_name(Ink ink) {
  switch (ink) {
    case Ink::Black: return "black";
    case Ink::Grey: return "grey";
    case Ink::Blue: return "blue";
    case Ink::Red: return "red";
    case Ink::White: return "white";
  }
  return "black";
}

std::string_view fill_name(Fill fill) {
  switch (fill) {
    case Fill::None: return "none";
    case Fill::White: return "white";
    case Fill::Tint: return "tint";
    case Fill::Hatch45: return "hatch45";
    case Fill::Hatch135: return "hatch135";
    case Fill::CrossHatch: return "crosshatch";
    case Fill::Black: return "black";
    case Fill::Grey: return "grey";
  }
  return "none";
}

std::string colour_text(Colour colour) {
  std::string text = "#";
  for (const int part : {colour.red, colour.green, colour.blue}) {
    append_hexadecimal(text, static_cast<std::uint64_t>(nearest_quotient(part * 255, 1000)), 2);
  }
  return text;
}

class SvgWriter {
 public:
  SvgWriter(const Sheet& sheet, Classes classes) : sheet_(sheet), classes_(classes), prefix_(safe_id(sheet.name)) {
    if (prefix_[0] >= '0' && prefix_[0] <= '9') prefix_.insert(0, "sheet-");  // an id starts with a letter
  }

  std::string write() {
    for (const Group& group : sheet_.groups) draw(group);
    return finished();
  }

  std::string write_layers() {
    for (const Layer& layer : layers_of(sheet_)) draw(layer);
    return finished();
  }

 private:
  /// Hatches stand in the head, and are known when the body is written.
  std::string finished() {
    std::string body;
    body.swap(out_);
    head();
    out_ += body;
    out_ += "</svg>\n";
    return std::move(out_);
  }

  void whole(std::string_view before, std::int64_t number, std::string_view after) {
    out_ += before;
    append_whole(out_, number);
    out_ += after;
  }

  void place(std::int64_t x, std::int64_t y) {
    append_whole(out_, x);
    out_ += ' ';
    append_whole(out_, sheet_.height - y);
  }

  void attribute(std::string_view name, std::string_view value) {
    out_ += ' ';
    out_ += name;
    out_ += "=\"";
    out_ += value;
    out_ += '"';
  }

  /// An id that no other element of this picture has.
  std::string new_id(std::string_view label) {
    const std::string wished = prefix_ + '-' + safe_id(label);
    std::string id = wished;
    for (std::int64_t k = 2; !ids_.insert(id).second; ++k) {
      id = wished + '-';
      append_whole(id, k);
    }
    return id;
  }

  void head() {
    out_ += "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"graphics-document\" width=\"";
    append_thousandths(out_, sheet_.width);
    out_ += "mm\" height=\"";
    append_thousandths(out_, sheet_.height);
    whole("mm\" viewBox=\"0 0 ", sheet_.width, " ");
    whole("", sheet_.height, "\"");
    attribute("id", prefix_);
    attribute("aria-labelledby", prefix_ + "--title " + prefix_ + "--desc");
    out_ += " font-family=\"B612, sans-serif\" fill=\"none\" style=\"font-kerning:none\" xml:space=\"preserve\">\n";
    out_ += "<title id=\"" + prefix_ + "--title\">" + escaped(sheet_.title) + "</title>\n";
    out_ += "<desc id=\"" + prefix_ + "--desc\">" + escaped(description()) + "</desc>\n";
    hatches();
  }

  /// Labels of the sheet's own figures, in order.
  std::string description() const {
    std::string text;
    for (const Group& group : sheet_.groups) {
      if (group.role != Role::Figure || group.label.empty()) continue;
      if (!text.empty()) text += ". ";
      text += group.label;
    }
    return text;
  }

  std::string hatch_id(Fill fill, Ink ink) const {
    return prefix_ + "--" + std::string(fill_name(fill)) + "-" + std::string(ink_name(ink));
  }

  void hatches() {
    if (hatches_.empty()) return;
    out_ += "<defs>\n";
    for (const auto& [fill, ink] : hatches_) hatch(fill, ink);
    out_ += "</defs>\n";
  }

  /// Upright lines 1.2 mm apart, turned by half a right angle; across for cross hatches.
  void hatch(Fill fill, Ink ink) {
    out_ +=
        "<pattern id=\"" + hatch_id(fill, ink) + "\" width=\"1200\" height=\"1200\" patternUnits=\"userSpaceOnUse\"";
    attribute("patternTransform", fill == Fill::Hatch135 ? "rotate(-45)" : "rotate(45)");
    out_ += "><path d=\"M600 0V1200";
    if (fill == Fill::CrossHatch) out_ += "M0 600H1200";
    out_ += '"';
    stroke(Pen::Thin, paper::Dash::Solid, ink);
    out_ += "/></pattern>\n";
  }

  void stroke(Pen pen, paper::Dash dash, Ink ink) {
    if (pen == Pen::None) return;
    attribute("stroke", colour_text(ink_colour(ink)));
    whole(" stroke-width=\"", paper::pen_width(pen), "\"");
    const DashLengths dashes = dash_lengths(dash, paper::pen_width(pen));
    if (dashes.count == 0) return;
    out_ += " stroke-dasharray=\"";
    for (std::size_t k = 0; k < dashes.count; ++k) whole(k == 0 ? "" : " ", dashes.lengths[k], "");
    out_ += '"';
  }

  void ground(Fill fill, Ink ink) {
    const Ground laid = fill_ground(fill);
    if (laid.laid == Ground::Laid::Yes) attribute("fill", colour_text(laid.colour));
    if (!fill_hatch(fill).any()) return;
    hatches_.emplace(fill, ink);
    attribute("fill", "url(#" + hatch_id(fill, ink) + ")");
  }

  void classes(Pen pen, Ink ink, Fill fill) {
    if (classes_ == Classes::Omit) return;
    std::string names;
    if (pen != Pen::None) names = "ink-" + std::string(ink_name(ink));
    if (fill != Fill::None) names += std::string(names.empty() ? "" : " ") + "fill-" + std::string(fill_name(fill));
    if (!names.empty()) attribute("class", names);
  }

  void outline(const Shape& shape) {
    for (std::size_t k = 0; k < shape.points.size(); ++k) {
      out_ += k == 0 ? "M" : "L";
      place(shape.points[k].x, shape.points[k].y);
    }
    if (shape.closed) out_ += 'Z';
  }

  void look(const Shape& shape) {
    classes(shape.pen, shape.ink, shape.fill);
    stroke(shape.pen, shape.dash, shape.ink);
    ground(shape.fill, shape.ink);
  }

  void outline_attribute(const Shape& shape) {
    out_ += " d=\"";
    outline(shape);
    out_ += '"';
  }

  void draw(const Shape& shape) {
    if (shape.points.size() < 2) return;
    out_ += "<path";
    outline_attribute(shape);
    look(shape);
    out_ += "/>\n";
  }

  /// Their look is said once. Not one path of many outlines: renderers draw many plain outlines faster.
  void draw(std::span<const Shape* const> shapes) {
    if (shapes.size() == 1) return draw(*shapes[0]);
    out_ += "<g";
    look(*shapes[0]);
    out_ += ">\n";
    for (const Shape* shape : shapes) {
      out_ += "<path";
      outline_attribute(*shape);
      out_ += "/>\n";
    }
    out_ += "</g>\n";
  }

  void draw(const Circle& circle) {
    if (circle.radius <= 0) return;
    out_ += "<circle";
    classes(circle.pen, circle.ink, circle.fill);
    whole(" cx=\"", circle.centre.x, "\"");
    whole(" cy=\"", std::int64_t{sheet_.height} - circle.centre.y, "\"");
    whole(" r=\"", circle.radius, "\"");
    stroke(circle.pen, paper::Dash::Solid, circle.ink);
    ground(circle.fill, circle.ink);
    out_ += "/>\n";
  }

  void draw(const Text& text) {
    out_ += "<text";
    if (classes_ == Classes::Write) attribute("class", "ink-" + std::string(ink_name(text.ink)));
    const std::int64_t x = text.at.x, y = std::int64_t{sheet_.height} - text.at.y;
    whole(" x=\"", x, "\"");
    whole(" y=\"", y, "\"");
    whole(" font-size=\"", em_size(text.height, text.weight), "\"");
    if (text.weight == paper::Weight::Bold) attribute("font-weight", "bold");
    if (text.anchor != paper::Anchor::Start) {
      attribute("text-anchor", text.anchor == paper::Anchor::Middle ? "middle" : "end");
    }
    if (const int turns = ((text.quarter_turns % 4) + 4) % 4; turns != 0) {
      whole(" transform=\"rotate(", -90 * turns, " ");
      whole("", x, " ");
      whole("", y, ")\"");
    }
    attribute("fill", colour_text(ink_colour(text.ink)));
    out_ += '>' + escaped(text.text) + "</text>\n";
  }

  void draw(const Group& group) {
    out_ += "<g";
    if (group.role == Role::Artifact) attribute("aria-hidden", "true");
    if (!group.label.empty()) attribute("id", new_id(group.label));
    out_ += ">\n";
    if (!group.label.empty()) out_ += "<title>" + escaped(group.label) + "</title>\n";
    for (const Shape& shape : group.shapes) draw(shape);
    for (const Circle& circle : group.circles) draw(circle);
    for (const Text& text : group.texts) draw(text);
    for (const Group& inner : group.groups) draw(inner);
    out_ += "</g>\n";
  }

  void draw(const Layer& layer) {
    if (!layer.shapes.empty()) draw(std::span(layer.shapes));
    for (const Circle* circle : layer.circles) draw(*circle);
    for (const Text* text : layer.texts) draw(*text);
  }

  const Sheet& sheet_;
  Classes classes_;
  std::string prefix_;  // ids of the picture's own parts take two dashes after it, which no label's id has
  std::string out_;
  std::set<std::string> ids_;
  std::set<std::pair<Fill, Ink>> hatches_;
};

}  // namespace

std::string svg_text(const Sheet& sheet, Classes classes) { return SvgWriter(sheet, classes).write(); }

std::string moving_svg_text(const Sheet& sheet) { return SvgWriter(sheet, Classes::Write).write_layers(); }

std::string safe_id(std::string_view label) {
  std::string id;
  for (const char c : label) {
    const bool safe = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '_';
    if (safe) id += c;
    else if (!id.empty() && id.back() != '-') id += '-';
  }
  while (!id.empty() && id.back() == '-') id.pop_back();
  return id.empty() ? "x" : id;
}

std::string escaped(std::string_view text) {
  std::string out;
  for (const char32_t c : paper::drawable_characters(text)) {
    if (c == U'&') out += "&amp;";
    else if (c == U'<') out += "&lt;";
    else if (c == U'>') out += "&gt;";
    else if (c == U'"') out += "&quot;";
    else if (c == U'\'') out += "&#39;";
    else out += paper::utf8_of(c);
  }
  return out;
}

}  // namespace stringcourse::ink
