// What the marks, arrows, boxes and letters of a sheet's strips mean.
#include <algorithm>

#include "bond/layout_parts.hpp"
#include "setout/laying_order.hpp"
#include "sheet/strip.hpp"

namespace stringcourse::sheet {
namespace {

constexpr Lettering kRule{kText, Weight::Bold, Anchor::Start, Ink::Black, 0},
    kMeaning{kSmallText, Weight::Regular, Anchor::Start, Ink::Black, 0};
constexpr Micrometres kBehindRule = 3'000;

using OfBand = bool (*)(const Context&, const Band&);

bool any_of(const Context& context, std::span<const Band> bands, OfBand has) {
  return std::ranges::any_of(bands, [&](const Band& band) { return has(context, band); });
}

bool has_arrow(const Context& context, const Band& band) {
  const auto runs = bond::runs_in(context.layout, band.wall, band.course);
  const auto turns = [](RunEnd end) { return end == RunEnd::ThroughCorner || end == RunEnd::ButtCorner; };
  if (runs.empty()) return false;
  return (band.part.first() && turns(runs.front().at_start)) || (band.part.last() && turns(runs.back().at_end));
}

bool has_closure(const Context& context, const Band& band) {
  const auto closures = setout::closures_on(context.building, context.layout, band.wall, band.course);
  return std::ranges::any_of(closures, [&](const setout::Closure& closure) {
    const Piece& piece = context.layout.pieces[closure.piece];
    return band.part.holds(piece.start.nearest_nanometre() + piece.length.half_down());
  });
}

bool has_bar(const Context& context, const Band& band) {
  const auto bars = bond::bars_on_wall(context.building, context.layout, band.wall);
  return std::ranges::any_of(bars, [&](const bond::WallBar& bar) {
    return bar.first_course <= band.course && band.course <= bar.last_course && band.part.holds(bar.centre);
  });
}

/// Letters of all these strips, each once, in the order of one strip's.
std::vector<std::string> letters_of(const Context& context, std::span<const Band> bands) {
  std::vector<std::string> all;
  for (const Band& band : bands) {
    for (std::string& one : legend_of(context, {band.wall, band.course, band.part})) {
      if (!std::ranges::contains(all, one)) all.push_back(std::move(one));
    }
  }
  return all;
}

std::string meanings_of(const Context& context, std::span<const Band> bands) {
  const words::SheetWords& words = context.words;
  std::vector<std::string> meanings{std::string(words.box_note)};
  if (any_of(context, bands, has_arrow)) meanings.emplace_back(words.arrow_note);
  if (any_of(context, bands, has_closure)) meanings.emplace_back(words.closure_note);
  if (any_of(context, bands, has_bar)) meanings.emplace_back(words.bar_note);
  meanings.push_back(joined(letters_of(context, bands), "; "));
  return joined(meanings, " ");
}

/// Beside the rule, which is short in every language.
Micrometres width_of_meanings(const Context& context, Micrometres rule) {
  return context.page.drawing.width() - rule - kBehindRule;
}

Micrometres width_of_rule(const Context& context) {
  return text_width(std::string(context.words.block_end_rule), kText, Weight::Bold);
}

}  // namespace

Micrometres strip_notes_height(const Context& context, std::span<const Band> bands) {
  const Micrometres wide = width_of_meanings(context, width_of_rule(context));
  return std::max(line_pitch(kText), paragraph_height(meanings_of(context, bands), wide, kMeaning));
}

void write_strip_notes(Pad& pad, const Context& context, std::span<const Band> bands) {
  const Area& room = context.page.drawing;
  const Micrometres top = room.bottom + strip_notes_height(context, bands), rule = width_of_rule(context);
  write_paragraph(pad, {room.left, top}, rule + 1'000, std::string(context.words.block_end_rule), kRule);
  write_paragraph(pad, {room.left + rule + kBehindRule, top}, width_of_meanings(context, rule),
                  meanings_of(context, bands), kMeaning);
}

}  // namespace stringcourse::sheet
