#include "paper/pad.hpp"

#include <algorithm>

namespace stringcourse::paper {
namespace {

constexpr Micrometres kObliqueStroke = 1500;  // half the stroke's extent, each way
constexpr Micrometres kExtension = 1500;      // gap and overrun of extension lines
constexpr Micrometres kArrowHead = 2500;
constexpr Micrometres kGutter = 4'000;

// One cluster of labels that touch: they stand `pitch` apart from its first place on.
struct Cluster {
  std::size_t first, count;
  std::int64_t sum;  // of wanted - index within cluster * pitch
  std::int64_t place() const { return sum / static_cast<std::int64_t>(count); }
};

Group dimension_lines(Point from, Point to, Point a, Point b, Point overrun) {
  Pad pad(Role::Artifact);
  const Stroke thin{};
  pad.line({from.x + overrun.x, from.y + overrun.y}, {a.x + overrun.x, a.y + overrun.y}, thin);
  pad.line({to.x + overrun.x, to.y + overrun.y}, {b.x + overrun.x, b.y + overrun.y}, thin);
  pad.line(a, b, thin);
  for (const Point end : {a, b}) {
    pad.line({end.x - kObliqueStroke, end.y - kObliqueStroke}, {end.x + kObliqueStroke, end.y + kObliqueStroke},
             {Pen::Medium, Dash::Solid, Ink::Black});
  }
  return std::move(pad).take();
}

}  // namespace

Area clipped_box(const Area& box, const Area& frame) {
  return {std::max(box.left, frame.left), std::max(box.bottom, frame.bottom), std::min(box.right, frame.right),
          std::min(box.top, frame.top)};
}

Area left_part(Area box, int share) {
  box.right = box.left + box.width() / 100 * share;
  return box;
}

Area right_part(Area box, int share) {
  box.left += box.width() / 100 * share + kGutter;
  return box;
}

Group& Pad::layer() {
  if (group_.groups.empty()) return group_;
  if (!layer_open_) {
    Group over;
    over.role = group_.role == Role::Figure ? Role::Artifact : group_.role;
    group_.groups.push_back(std::move(over));
    layer_open_ = true;
  }
  return group_.groups.back();
}

Pad& Pad::line(Point from, Point to, Stroke stroke) { return path({from, to}, stroke); }

Pad& Pad::path(std::vector<Point> points, Stroke stroke) {
  layer().shapes.push_back({std::move(points), false, stroke.pen, stroke.dash, stroke.ink, Fill::None});
  return *this;
}

Pad& Pad::area(std::vector<Point> points, Stroke stroke, Fill fill) {
  layer().shapes.push_back({std::move(points), true, stroke.pen, stroke.dash, stroke.ink, fill});
  return *this;
}

Pad& Pad::box(const Area& box, Stroke stroke, Fill fill) {
  if (box.empty()) return *this;
  return area({{box.left, box.bottom}, {box.right, box.bottom}, {box.right, box.top}, {box.left, box.top}}, stroke,
              fill);
}

Pad& Pad::dot(Point centre, Micrometres radius, Fill fill) {
  layer().circles.push_back({centre, radius, Pen::Thin, Ink::Black, fill});
  return *this;
}

Pad& Pad::write(Point at, std::string text, Lettering lettering) {
  if (text.empty()) return *this;
  layer().texts.push_back({at, without_control_characters(std::move(text)), lettering.height, lettering.weight,
                           lettering.anchor, lettering.ink, lettering.quarter_turns});
  return *this;
}

Pad& Pad::add(Group group) {
  group_.groups.push_back(std::move(group));
  layer_open_ = false;
  return *this;
}

void write_setting(Pad& pad, Point middle, const Setting& setting) {
  const bool turned = setting.lettering.quarter_turns % 2 != 0;
  Micrometres down = setting.lettering.height - setting.height / 2;  // from the middle to the first baseline
  for (const std::string& line : setting.lines) {
    pad.write(turned ? Point{middle.x + down, middle.y} : Point{middle.x, middle.y - down}, line, setting.lettering);
    down += line_pitch(setting.lettering.height);
  }
}

Micrometres write_paragraph(Pad& pad, Point top_left, Micrometres width, const std::string& text, Lettering lettering) {
  Micrometres y = top_left.y;
  for (const std::string& line : wrapped(text, width, lettering)) {
    pad.write({top_left.x, y - (line_pitch(lettering.height) + lettering.height) / 2}, line, lettering);
    y -= line_pitch(lettering.height);
  }
  return y;
}

std::vector<Micrometres> spread(const std::vector<Micrometres>& wanted, Micrometres pitch, Micrometres first,
                                Micrometres last) {
  if (wanted.empty()) return {};
  const auto count = static_cast<std::int64_t>(wanted.size());
  const std::int64_t room = last - first;
  const std::int64_t step = count > 1 ? std::min<std::int64_t>(pitch, room / (count - 1)) : pitch;
  std::vector<Cluster> clusters;
  for (std::size_t index = 0; index < wanted.size(); ++index) {
    clusters.push_back({index, 1, wanted[index]});
    while (clusters.size() > 1) {
      const Cluster& after = clusters.back();
      Cluster& before = clusters[clusters.size() - 2];
      const auto length = static_cast<std::int64_t>(before.count);
      if (before.place() + length * step <= after.place()) break;
      before.sum += after.sum - static_cast<std::int64_t>(after.count) * length * step;
      before.count += after.count;
      clusters.pop_back();
    }
  }
  std::vector<Micrometres> places;
  for (const Cluster& cluster : clusters) {
    for (std::size_t index = 0; index < cluster.count; ++index) {
      const auto at = static_cast<std::int64_t>(places.size());
      const std::int64_t place = cluster.place() + static_cast<std::int64_t>(index) * step;
      places.push_back(static_cast<Micrometres>(std::clamp(place, first + at * step, last - (count - 1 - at) * step)));
    }
  }
  return places;
}

std::vector<Micrometres> spread(const std::vector<Micrometres>& wanted, const std::vector<Micrometres>& widths,
                                Micrometres gap, Micrometres first, Micrometres last) {
  if (wanted.empty()) return {};
  std::int64_t taken = 0;
  for (const Micrometres width : widths) taken += width;
  const auto gaps = static_cast<std::int64_t>(wanted.size()) - 1;
  if (gaps > 0) gap = static_cast<Micrometres>(std::clamp<std::int64_t>((last - first - taken) / gaps, 0, gap));
  // Each label less what those before it take: equal steps of nothing, which the rule of equal pitches spreads.
  std::vector<Micrometres> before{widths.front() / 2}, free;
  for (std::size_t k = 1; k < widths.size(); ++k)
    before.push_back(before.back() + (widths[k - 1] + widths[k]) / 2 + gap);
  for (std::size_t k = 0; k < wanted.size(); ++k) free.push_back(wanted[k] - before[k]);
  const Micrometres whole = before.back() + widths.back() / 2;
  std::vector<Micrometres> places = spread(free, 0, first, std::max(first, last - whole));
  for (std::size_t k = 0; k < places.size(); ++k) places[k] += before[k];
  return places;
}

Point level_dimension_text(Point from, Point to, Micrometres y, Micrometres height) {
  return {(from.x + to.x) / 2, y + height / 3};
}
Point upright_dimension_text(Point from, Point to, Micrometres x, Micrometres height) {
  return {x - height / 3, (from.y + to.y) / 2};
}

Group level_dimension(Point from, Point to, Micrometres y, const std::string& text, Lettering lettering) {
  const Micrometres over = y < from.y ? -kExtension : kExtension;
  Pad pad(Role::Artifact);
  pad.add(dimension_lines(from, to, {from.x, y}, {to.x, y}, {0, over}));
  lettering.anchor = Anchor::Middle;
  pad.write(level_dimension_text(from, to, y, lettering.height), text, lettering);
  return std::move(pad).take();
}

Group upright_dimension(Point from, Point to, Micrometres x, const std::string& text, Lettering lettering) {
  const Micrometres over = x < from.x ? -kExtension : kExtension;
  Pad pad(Role::Artifact);
  pad.add(dimension_lines(from, to, {x, from.y}, {x, to.y}, {over, 0}));
  lettering.anchor = Anchor::Middle;
  lettering.quarter_turns = 1;
  pad.write(upright_dimension_text(from, to, x, lettering.height), text, lettering);
  return std::move(pad).take();
}

Group arrow(Point from, Point to, Stroke stroke) {
  Pad pad(Role::Artifact);
  pad.line(from, to, stroke);
  const Micrometres wing = kArrowHead / 3;
  const auto sign = [](Micrometres value) { return (value > 0) - (value < 0); };
  const Micrometres dx = sign(to.x - from.x), dy = sign(to.y - from.y);
  const Point base{to.x - dx * kArrowHead, to.y - dy * kArrowHead};
  const Fill fill = Fill::Black;
  pad.area({to, {base.x + dy * wing, base.y + dx * wing}, {base.x - dy * wing, base.y - dx * wing}}, stroke,
           stroke.ink == Ink::Black ? fill : Fill::None);
  return std::move(pad).take();
}

}  // namespace stringcourse::paper
