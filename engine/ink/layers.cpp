#include "ink/layers.hpp"

#include <algorithm>

namespace stringcourse::ink {
namespace {

using paper::Circle;
using paper::Group;
using paper::Micrometres;
using paper::Shape;
using paper::Text;

Box grown(Box box, Micrometres by) { return {box.left - by, box.bottom - by, box.right + by, box.top + by}; }

Micrometres half_line(paper::Pen pen) { return (paper::pen_width(pen) + 1) / 2; }

/// How far a line reaches beyond its points: half its width where all corners are right angles along the axes; else the
/// tip of a mitre, at most 4 half widths (SVG 2, 13.5.6: stroke-miterlimit is 4 unless said).
Micrometres reach(const Shape& shape) {
  bool upright = true;
  for (std::size_t k = 1; k < shape.points.size(); ++k) {
    const paper::Point a = shape.points[k - 1], b = shape.points[k];
    upright = upright && (a.x == b.x || a.y == b.y);
  }
  return half_line(shape.pen) * (upright ? 1 : 4);
}

Box box_of(const Shape& shape) {
  Box box{shape.points[0].x, shape.points[0].y, shape.points[0].x, shape.points[0].y};
  for (const paper::Point& point : shape.points) {
    box.left = std::min(box.left, point.x), box.right = std::max(box.right, point.x);
    box.bottom = std::min(box.bottom, point.y), box.top = std::max(box.top, point.y);
  }
  return grown(box, reach(shape));
}

Box box_of(const Circle& circle) {
  const auto [x, y] = circle.centre;
  return grown({x, y, x, y}, circle.radius + half_line(circle.pen));
}

/// Letters may hang below the baseline and stand over the capitals by less than their height; a turned text is taken in
/// every direction that its length can lie in.
Box box_of(const Text& text) {
  const Micrometres length = text_width(text.text, text.height, text.weight);
  const auto [x, y] = text.at;
  const Micrometres before = text.anchor == paper::Anchor::Start ? 0 : length, after = length;
  if (text.quarter_turns % 2 == 0) return grown({x - before, y, x + after, y}, 2 * text.height);
  return grown({x, y - length, x, y + length}, 2 * text.height);
}

bool same_look(const Shape& a, const Shape& b) {
  return a.pen == b.pen && a.dash == b.dash && a.ink == b.ink && a.fill == b.fill;
}

bool meets(const Layer& layer, const Box& box) {
  return std::ranges::any_of(layer.boxes, [&](const Box& other) { return overlap(other, box); });
}

class Sorter {
 public:
  void take(const Group& group) {
    for (const Shape& shape : group.shapes) {
      if (shape.points.size() >= 2) put(shape);
    }
    for (const Circle& circle : group.circles) {
      if (circle.radius > 0) put(circle, &Layer::circles);
    }
    for (const Text& text : group.texts) put(text, &Layer::texts);
    for (const Group& inner : group.groups) take(inner);
  }

  std::vector<Layer> layers;

 private:
  void put(const Shape& shape) {
    const Box box = box_of(shape);
    Layer* best = nullptr;
    for (std::size_t k = layers.size(); k-- > 0;) {
      if (meets(layers[k], box)) break;
      if (!layers[k].shapes.empty() && same_look(*layers[k].shapes[0], shape)) best = &layers[k];
    }
    Layer& layer = best != nullptr ? *best : layers.emplace_back();
    layer.shapes.push_back(&shape);
    layer.boxes.push_back(box);
  }

  /// Circles and texts keep their order inside a layer, so there they may overlap.
  template <typename Item>
  void put(const Item& item, std::vector<const Item*> Layer::* list) {
    const Box box = box_of(item);
    Layer* best = nullptr;
    for (std::size_t k = layers.size(); k-- > 0;) {
      if (!(layers[k].*list).empty()) best = &layers[k];
      if (meets(layers[k], box)) break;
    }
    Layer& layer = best != nullptr ? *best : layers.emplace_back();
    (layer.*list).push_back(&item);
    layer.boxes.push_back(box);
  }
};

}  // namespace

std::vector<Layer> layers_of(const paper::Sheet& sheet) {
  Sorter sorter;
  for (const Group& group : sheet.groups) sorter.take(group);
  return std::move(sorter.layers);
}

}  // namespace stringcourse::ink
