#include "paper/running_labels.hpp"

#include <algorithm>

#include "measure/sorting.hpp"

namespace stringcourse::paper {
namespace {

constexpr Micrometres kLine = 7'000;  // from one turned line to the next
constexpr Micrometres kLeastPitch = kLine + 700;
constexpr Micrometres kTick = 1'500;  // plumb again under the label

struct LabelText {
  std::string first, second;  // second is empty where one form says it all
};

LabelText text_of(const RunningLabel& label, Tape tape) {
  if (tape == Tape::Millimetres) return {millimetres_text(label.at), {}};
  LabelText text{total_inches(label.at), feet_and_inches(label.at)};
  if (text.second == text.first) text.second.clear();  // under a foot both forms are one
  return text;
}

constexpr Micrometres kBeforeWhat = 2'000;

/// How long a label's longer line is at least, its numbers so high.
Micrometres length_of_label(const RunningLabel& label, const LabelText& text, Micrometres height) {
  const Weight weight = label.bold ? Weight::Bold : Weight::Regular;
  const std::string& what = label.short_what.empty() ? label.what : label.short_what;
  const Micrometres first = text_width(text.first, height, weight) +
                            (what.empty() ? 0 : kBeforeWhat + text_width(what, kSmallText, Weight::Regular));
  return std::max(first, text_width(text.second, height, weight));
}

Lettering turned(Weight weight, Micrometres height, Anchor anchor) { return {height, weight, anchor, Ink::Black, 1}; }

// The text column of one label, its middle at x. Above: the text starts at y; below: it ends there.
void write_label(Pad& pad, const RunningLabel& label, const LabelText& text, Point at, Micrometres room,
                 Micrometres height, LabelSide side) {
  const Weight weight = label.bold ? Weight::Bold : Weight::Regular;
  const Anchor anchor = side == LabelSide::Above ? Anchor::Start : Anchor::End;
  const Micrometres columns = text.second.empty() ? 0 : kLine;
  const Micrometres first_x = at.x - columns / 2 + height / 2;
  pad.write({first_x, at.y}, text.first, turned(weight, height, anchor));
  if (!text.second.empty()) pad.write({first_x + columns, at.y}, text.second, turned(weight, height, anchor));
  if (label.what.empty()) return;
  const Micrometres taken = text_width(text.first, height, weight) + kBeforeWhat;
  const Micrometres y = side == LabelSide::Above ? at.y + taken : at.y - taken;
  const bool whole = fits(label.what, room - taken, {kSmallText});
  const std::string& what = whole || label.short_what.empty() ? label.what : label.short_what;
  pad.write({first_x, y}, what,
            turned(Weight::Regular, fits(what, room - taken, {kText}) ? kText : kSmallText, anchor));
}

}  // namespace

bool labels_fit(std::size_t count, Micrometres width) {
  return static_cast<std::int64_t>(count) * kLeastPitch <= width;
}

Group draw_running_labels(std::vector<RunningLabel> labels, const Area& room, Leader leader, LabelSide side,
                          Tape tape) {
  sort_stably(labels, [](const auto& a, const auto& b) { return a.x < b.x; });
  std::vector<Micrometres> wanted;
  for (const RunningLabel& label : labels) wanted.push_back(label.x);
  const auto count = static_cast<Micrometres>(labels.size());
  Micrometres pitch = tape == Tape::Millimetres ? kLine + 1'000 : 2 * kLine + 1'500;
  const bool one_line = count * pitch > room.width();
  if (one_line) pitch = kLeastPitch;
  const Micrometres inset = pitch / 2;
  const auto places = spread(wanted, pitch, room.left + inset, room.right - inset);
  const Micrometres way = side == LabelSide::Above ? 1 : -1;
  const Micrometres edge = side == LabelSide::Above ? room.bottom : room.top;
  std::vector<LabelText> texts;
  for (const RunningLabel& label : labels) {
    texts.push_back(text_of(label, tape));
    if (one_line) texts.back().second.clear();
  }
  // Long numbers in a low room stand smaller, all alike.
  const Micrometres long_room = room.height() - leader.high - 1'000;
  Micrometres height = kLargeText;
  for (const Micrometres smaller : {kText, kSmallText}) {
    for (std::size_t index = 0; index < labels.size(); ++index) {
      if (length_of_label(labels[index], texts[index], height) > long_room) height = std::min(height, smaller);
    }
  }
  Pad pad(Role::Figure);
  for (std::size_t index = 0; index < labels.size(); ++index) {
    const Point foot{labels[index].x, edge}, head{places[index], edge + way * leader.high};
    const Stroke stroke{labels[index].bold ? Pen::Medium : Pen::Thin};
    pad.path({foot, {foot.x, edge + way * leader.plumb}, {head.x, head.y - way * kTick}, head}, stroke);
    write_label(pad, labels[index], texts[index], {head.x, head.y + way * 1'000}, long_room, height, side);
  }
  return std::move(pad).take();
}

}  // namespace stringcourse::paper
