#include "paper/running_labels.hpp"

#include <algorithm>

#include "measure/sorting.hpp"

namespace stringcourse::paper {
namespace {

constexpr Micrometres kBetween = 2'000;      // clear paper between two lines of a label, of 5 mm
constexpr Micrometres kClose = 1'600;        // and where they stand close
constexpr Micrometres kNext = 3'500;         // from one label to the next,
constexpr Micrometres kCloseNext = 1'500;    // where they stand close,
constexpr Micrometres kOneLineNext = 2'700;  // where each is one line
constexpr Micrometres kTick = 1'500;         // plumb again under the label
constexpr Micrometres kBeforeWhat = 2'000;

struct LabelText {
  std::string first, second;  // second is empty where one form says it all
  std::string what;           // on a line of its own
};

/// How labels of one strip are set.
struct Way {
  Micrometres first = kLargeText, second = kLargeText;  // heights; second 0: one form alone
  Micrometres between = kBetween, next = kNext;
};
constexpr Way kWide{}, kNarrow{kLargeText, kText, kClose, kCloseNext}, kOneLine{kLargeText, 0, kClose, kOneLineNext};

LabelText text_of(const RunningLabel& label, Tape tape) {
  if (tape == Tape::Millimetres) return {millimetres_text(label.at), {}, {}};
  LabelText text{total_inches(label.at), feet_and_inches(label.at), {}};
  if (text.second == text.first) text.second.clear();  // under a foot both forms are one
  return text;
}

std::vector<LabelText> texts_of(const std::vector<RunningLabel>& labels, WhatStands what, Tape tape) {
  std::vector<LabelText> texts;
  for (const RunningLabel& label : labels) {
    texts.push_back(text_of(label, tape));
    if (what == WhatStands::Beside) texts.back().what = label.what;
  }
  return texts;
}

Micrometres width_of(const LabelText& text, Way way) {
  Micrometres width = way.first;
  if (!text.second.empty() && way.second > 0) width += way.between + way.second;
  return text.what.empty() ? width : width + way.between + kSmallText;
}

std::vector<Micrometres> widths_of(const std::vector<LabelText>& texts, Way way) {
  std::vector<Micrometres> widths;
  for (const LabelText& text : texts) widths.push_back(width_of(text, way));
  return widths;
}

bool has_room(const std::vector<LabelText>& texts, Way way, Micrometres width) {
  std::int64_t taken = 0;
  for (const Micrometres each : widths_of(texts, way)) taken += each + way.next;
  return taken <= width;
}

/// How long a label's longest line is at least, its numbers so high.
Micrometres length_of_label(const RunningLabel& label, const LabelText& text, Way way) {
  const Weight weight = label.bold ? Weight::Bold : Weight::Regular;
  const std::string& what = label.short_what.empty() ? label.what : label.short_what;
  Micrometres first = text_width(text.first, way.first, weight);
  if (text.what.empty() && !what.empty()) first += kBeforeWhat + text_width(what, kSmallText, Weight::Regular);
  if (!text.what.empty()) first = std::max(first, text_width(what, kSmallText, Weight::Regular));
  return way.second == 0 ? first : std::max(first, text_width(text.second, way.second, weight));
}

Lettering turned(Weight weight, Micrometres height, Anchor anchor) { return {height, weight, anchor, Ink::Black, 1}; }

// Words behind the first line, or on the last line, as large and as whole as there is room for them.
void write_what(Pad& pad, const RunningLabel& label, Point at, Micrometres room, Anchor anchor, Micrometres most) {
  const bool whole = fits(label.what, room, {kSmallText});
  const std::string& what = whole || label.short_what.empty() ? label.what : label.short_what;
  pad.write(at, what, turned(Weight::Regular, fits(what, room, {most}) ? most : kSmallText, anchor));
}

// The lines of one label, its middle at x. Above: the text starts at y; below: it ends there.
void write_label(Pad& pad, const RunningLabel& label, const LabelText& text, Point at, Micrometres room, Way way,
                 LabelSide side) {
  const Weight weight = label.bold ? Weight::Bold : Weight::Regular;
  const Anchor anchor = side == LabelSide::Above ? Anchor::Start : Anchor::End;
  const Micrometres first_x = at.x - width_of(text, way) / 2 + way.first;
  pad.write({first_x, at.y}, text.first, turned(weight, way.first, anchor));
  Micrometres x = first_x;
  if (!text.second.empty() && way.second > 0) {
    x += way.between + way.second;
    pad.write({x, at.y}, text.second, turned(weight, way.second, anchor));
  }
  if (label.what.empty()) return;
  if (!text.what.empty()) return write_what(pad, label, {x + way.between + kSmallText, at.y}, room, anchor, kSmallText);
  const Micrometres taken = text_width(text.first, way.first, weight) + kBeforeWhat;
  const Micrometres y = side == LabelSide::Above ? at.y + taken : at.y - taken;
  write_what(pad, label, {first_x, y}, room - taken, anchor, kText);
}

/// The largest way in which these have room: beside each other, and each in its length.
Way way_of(const std::vector<RunningLabel>& labels, const std::vector<LabelText>& texts, TextRoom room) {
  const auto ends = [&](Way way) {
    for (std::size_t index = 0; index < labels.size(); ++index) {
      if (length_of_label(labels[index], texts[index], way) > room.width) return false;
    }
    return true;
  };
  for (const Way way : {kWide, kNarrow, kOneLine}) {
    if (has_room(texts, way, room.height) && ends(way)) return way;
  }
  Way way = has_room(texts, kWide, room.height) ? kWide : has_room(texts, kNarrow, room.height) ? kNarrow : kOneLine;
  for (const Micrometres smaller : {kText, kSmallText}) {
    way.first = smaller, way.second = std::min(way.second, smaller);
    if (ends(way)) break;
  }
  return way;
}

}  // namespace

bool labels_fit(std::size_t count, Micrometres width) {
  return static_cast<std::int64_t>(count) * (kLargeText + kOneLineNext) <= width;
}

bool both_forms_fit(const std::vector<RunningLabel>& labels, Micrometres width, Tape tape) {
  return has_room(texts_of(labels, WhatStands::Beside, tape), kNarrow, width);
}

Group draw_running_labels(std::vector<RunningLabel> labels, const Area& room, Leader leader, LabelSide side,
                          Tape tape) {
  sort_stably(labels, [](const auto& a, const auto& b) { return a.x < b.x; });
  std::vector<Micrometres> wanted;
  for (const RunningLabel& label : labels) wanted.push_back(label.x);
  const std::vector<LabelText> texts = texts_of(labels, leader.what, tape);
  const Micrometres sign = side == LabelSide::Above ? 1 : -1;
  const Micrometres edge = side == LabelSide::Above ? room.bottom : room.top;
  const Micrometres long_room = room.height() - leader.high - 1'000;
  const Way way = way_of(labels, texts, {long_room, room.width()});
  const auto places = spread(wanted, widths_of(texts, way), way.next, room.left, room.right);
  Pad pad(Role::Figure);
  for (std::size_t index = 0; index < labels.size(); ++index) {
    const Point foot{labels[index].x, edge}, head{places[index], edge + sign * leader.high};
    const Stroke stroke{labels[index].bold ? Pen::Medium : Pen::Thin};
    pad.path({foot, {foot.x, edge + sign * leader.plumb}, {head.x, head.y - sign * kTick}, head}, stroke);
    write_label(pad, labels[index], texts[index], {head.x, head.y + sign * 1'000}, long_room, way, side);
  }
  return std::move(pad).take();
}

}  // namespace stringcourse::paper
