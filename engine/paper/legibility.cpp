#include "paper/legibility.hpp"

#include <algorithm>
#include <array>
#include <cstdint>
#include <set>

#include "measure/sorting.hpp"
#include "paper/font.hpp"
#include "paper/font_text.hpp"

namespace stringcourse::paper {
namespace {

/// How far ink reaches below the baseline and above it, in font units (capitals: 0 and 1500).
struct Reach {
  std::int32_t below = 0, above = 0;
};

/// Measured on the outlines of both weights of B612 1.008, the larger of the two; capitals and digits stay within 20
/// units of their lines and count as 0..1500. What is not listed gets the font's deepest and highest letter.
Reach character_reach(char32_t c) {
  constexpr std::u32string_view kAscending = U"bdfhkl", kDescending = U"gjpqy",
                                kFlat = U" !\"#%&'*+-.:<=>?^`~°±·×÷–—′″½¼¾⅛⅜⅝⅞";
  if ((c >= U'0' && c <= U'9') || (c >= U'A' && c <= U'Z' && c != U'Q')) return {0, 1500};
  if (kAscending.find(c) != std::u32string_view::npos) return {0, 1632};
  if (kDescending.find(c) != std::u32string_view::npos) return {517, 1500};
  if ((c >= U'a' && c <= U'z') || kFlat.find(c) != std::u32string_view::npos) return {0, 1500};
  if (c == U'/' || c == U'\\') return {100, 1600};
  if (c == U',' || c == U';') return {303, 1500};
  if (c == U'Q') return {145, 1500};
  if (c == U'(' || c == U')' || c == U'[' || c == U']') return {420, 1600};
  return {710, 1928};
}

Reach text_reach(const std::string& text) {
  Reach reach;
  for (const char32_t c : drawable_characters(text)) {
    const Reach one = character_reach(c);
    reach = {std::max(reach.below, one.below), std::max(reach.above, one.above)};
  }
  return reach;
}

Micrometres clamped(std::int64_t value) {
  return static_cast<Micrometres>(std::clamp<std::int64_t>(value, INT32_MIN, INT32_MAX));
}

/// The box turned about the text's own point; along and across are in the text's reading direction.
Box turned_box(Point at, int quarter_turns, std::int64_t from, std::int64_t to, std::int64_t low, std::int64_t high) {
  const std::int64_t x = at.x, y = at.y;
  switch (((quarter_turns % 4) + 4) % 4) {
    case 1: return {clamped(x - high), clamped(y + from), clamped(x - low), clamped(y + to)};
    case 2: return {clamped(x - to), clamped(y - high), clamped(x - from), clamped(y - low)};
    case 3: return {clamped(x + low), clamped(y - to), clamped(x + high), clamped(y - from)};
    default: return {clamped(x + from), clamped(y + low), clamped(x + to), clamped(y + high)};
  }
}

bool overlap(const Box& a, const Box& b) {
  return a.left < b.right && b.left < a.right && a.low < b.high && b.low < a.high;
}

struct Placed {
  const Text* text;
  Box box;
};

/// Everything of a sheet that rules look at, in drawing order.
struct Contents {
  std::vector<Placed> texts;
  std::set<Pen> pens;
};

void collect(Contents& contents, const Group& group) {
  for (const Shape& shape : group.shapes) {
    if (shape.pen != Pen::None) contents.pens.insert(shape.pen);
  }
  for (const Circle& circle : group.circles) {
    if (circle.pen != Pen::None) contents.pens.insert(circle.pen);
  }
  for (const Text& text : group.texts) {
    const Box box = text_box(text);
    if (box.left < box.right && box.low < box.high) contents.texts.push_back({&text, box});
  }
  for (const Group& inner : group.groups) collect(contents, inner);
}

using Pair = std::array<std::size_t, 2>;

/// Pairs of overlapping texts in drawing order: a sweep up the sheet that keeps the texts at the present height.
std::vector<Pair> overlapping_pairs(const std::vector<Placed>& texts) {
  std::vector<std::size_t> by_low(texts.size());
  for (std::size_t k = 0; k < texts.size(); ++k) by_low[k] = k;
  sort_stably(by_low, {}, [&](std::size_t k) { return std::pair(texts[k].box.low, k); });
  std::vector<std::size_t> present;
  std::vector<Pair> pairs;
  for (const std::size_t k : by_low) {
    std::erase_if(present, [&](std::size_t p) { return texts[p].box.high <= texts[k].box.low; });
    for (const std::size_t p : present) {
      if (overlap(texts[p].box, texts[k].box)) pairs.push_back({std::min(p, k), std::max(p, k)});
    }
    present.push_back(k);
  }
  sort_stably(pairs);
  return pairs;
}

bool inside(const Box& box, const Sheet& sheet, Micrometres margin) {
  return box.left >= margin && box.low >= margin && box.right <= sheet.width - margin &&
         box.high <= sheet.height - margin;
}

template <std::size_t n>
bool is_one_of(const std::array<Micrometres, n>& series, Micrometres value) {
  return std::ranges::find(series, value) != series.end();
}

/// Heights of lettering (ISO 3098) and line widths (ISO 128) that the sheets use, micrometres; common practice.
constexpr std::array<Micrometres, 5> kHeights{2'500, 3'500, 5'000, 7'000, 10'000};
constexpr std::array<Micrometres, 7> kLineWidths{130, 180, 250, 350, 500, 700, 1'000};

/// The rule of one text's place and size that it breaks, if `rule` is one of those.
bool breaks(const Placed& placed, LegibilityRule rule, const Sheet& sheet, const LegibilityLimits& limits) {
  const Text& text = *placed.text;
  switch (rule) {
    case LegibilityRule::OffSheet: return !inside(placed.box, sheet, 0);
    case LegibilityRule::InMargin: return inside(placed.box, sheet, 0) && !inside(placed.box, sheet, limits.margin);
    case LegibilityRule::TooSmall: return text.height < limits.least_height;
    case LegibilityRule::HeightSeries: return !is_one_of(kHeights, text.height);
    case LegibilityRule::NoGlyph: return !missing_characters(text.text, text.weight).empty();
    case LegibilityRule::Overlap:
    case LegibilityRule::PenSeries:
    case LegibilityRule::TooManyPens: break;
  }
  return false;
}

/// Troubles of line widths, which belong to the sheet as a whole.
bool breaks(const std::set<Pen>& pens, LegibilityRule rule) {
  if (rule == LegibilityRule::TooManyPens) return pens.size() > 4;
  return rule == LegibilityRule::PenSeries &&
         std::ranges::any_of(pens, [](Pen pen) { return !is_one_of(kLineWidths, pen_width(pen)); });
}

}  // namespace

Box text_box(const Text& text) {
  const std::int64_t width = text_width(text.text, text.height, text.weight);
  const std::int64_t from = text.anchor == Anchor::Start ? 0 : text.anchor == Anchor::Middle ? -(width / 2) : -width;
  const std::int32_t capital = font(text.weight).capital_height();
  const Reach reach = text_reach(text.text);
  const std::int64_t low = -(std::int64_t{reach.below} * text.height + capital - 1) / capital;
  const std::int64_t high = (std::int64_t{reach.above} * text.height + capital - 1) / capital;
  return turned_box(text.at, text.quarter_turns, from, from + width, low, high);
}

std::vector<LegibilityTrouble> legibility_troubles(const Sheet& sheet, LegibilityLimits limits) {
  Contents contents;
  for (const Group& group : sheet.groups) collect(contents, group);
  const std::vector<Placed>& texts = contents.texts;
  std::vector<LegibilityTrouble> troubles;
  for (const auto [a, b] : overlapping_pairs(texts)) {
    troubles.push_back({LegibilityRule::Overlap, texts[a].text->text, texts[b].text->text, texts[a].box});
  }
  using enum LegibilityRule;
  for (const LegibilityRule rule : {OffSheet, InMargin, TooSmall, HeightSeries, PenSeries, TooManyPens, NoGlyph}) {
    for (const Placed& placed : texts) {
      if (breaks(placed, rule, sheet, limits)) troubles.push_back({rule, placed.text->text, "", placed.box});
    }
    if (breaks(contents.pens, rule)) troubles.push_back({rule, "", "", {}});
  }
  return troubles;
}

}  // namespace stringcourse::paper
