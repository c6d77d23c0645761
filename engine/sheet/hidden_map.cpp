// What is in each side, seen from outside: cells and troughs with grout, bars and where they lap, cleanouts, dowels
// that were found off their places. Before the pour it says what is to be filled; afterwards it is kept with the house.
#include <algorithm>

#include "bond/layout_parts.hpp"
#include "measure/digits.hpp"
#include "measure/sorting.hpp"
#include "sheet/registry.hpp"

namespace stringcourse::sheet {
namespace {

constexpr Micrometres kLeft = 16'000, kRight = 16'000, kAbove = 3'000, kBelow = 9'000, kNotes = 13'500,
                      kTitleHigh = 6'000;

/// What stands on the drawing, so that its legend tells of nothing else.
struct Drawn {
  bool filled = false, open = false, bars = false, along = false, laps = false, cleanouts = false, dowels = false;
};

/// One side's drawing.
struct Map {
  const Context& context;
  int wall;
  WallView view;
  Area frame, room;
  Drawn drawn = {};

  [[nodiscard]] Micrometres level(Length height) const {
    return frame.bottom + view.scale.paper(height - foot_of_course(context.building, 1));
  }
  [[nodiscard]] Area box(Length from, Length to, Length low, Length high) const {
    return clipped_box({view.at(to), level(low), view.at(from), level(high)}, frame);
  }
};

/// Where a bar is met on this wall; none where it stands in others.
std::optional<Length> met_at(const Map& map, const PlacedBar& bar) {
  const Building& building = map.context.building;
  const Wall& wall = map.context.wall(map.wall);
  if (bar.wall == map.wall) return bar.centre;
  const bond::SeenFrom seen = bond::seen_from(wall, plan_point(wall_of(building, bar.wall), bar.centre, bar.off_face));
  const bond::WallReach reach = bond::reach_of_wall(building, map.context.layout, map.wall);
  const bool inside = seen.depth >= Length() && seen.depth <= building.series_of(wall).thickness &&
                      seen.along >= reach.from && seen.along <= reach.to;
  return inside ? std::optional(seen.along) : std::nullopt;
}

void draw_grout(Pad& pad, Map& map, const Area& box, const GroutStep& step) {
  if (box.empty()) return;
  const bool filled = step.filled >= 0;
  (filled ? map.drawn.filled : map.drawn.open) = true;
  if (filled) pad.box(box, {Pen::None}, Fill::Tint);
  else pad.box(box, {Pen::Thin, Dash::Dashed, Ink::Black}, Fill::White);
}

/// Half of what a cell is drawn wide: a whole unit's.
Length half_cell(const Building& building, int wall) {
  const Series& series = building.series_of(wall_of(building, wall));
  if (series.full_cells.empty()) return series.thickness.half_down().half_down();
  return (series.full_cells.front().to - series.full_cells.front().from).half_down();
}

void draw_step(Pad& pad, Map& map, const LiftCard& card, const GroutStep& step) {
  const Building& building = map.context.building;
  if (step.into == GroutInto::Cell) {
    const PlacedBar& bar = map.context.layout.bars[static_cast<std::size_t>(step.of)];
    const std::optional<Length> at = met_at(map, bar);
    if (!at) return;
    const Length half = half_cell(building, bar.wall);
    const std::int32_t first = std::max(card.first_course, bar.first_course),
                       last = std::min(card.last_course, bar.last_course);
    draw_grout(pad, map,
               map.box(*at - half, *at + half, top_of_course(building, first - 1), top_of_course(building, last)),
               step);
    return;
  }
  if (step.wall != map.wall) return;
  for (const supply::GroutPour& pour : map.context.answer.tallies.grout) {
    for (const supply::GroutTrough& trough : pour.troughs) {
      if (trough.wall != map.wall || trough.from != step.at || trough.course != step.course) continue;
      draw_grout(pad, map,
                 map.box(trough.from, trough.to, top_of_course(building, trough.course - 1),
                         top_of_course(building, trough.course)),
                 step);
    }
  }
}

void draw_all_grout(Pad& pad, Map& map) {
  for (const LiftCard& card : map.context.answer.pour_cards) {
    for (const GroutStep& step : card.steps) draw_step(pad, map, card, step);
  }
}

void draw_openings(Pad& pad, const Map& map) {
  for (const ResolvedOpening& opening : map.context.building.openings) {
    if (opening.wall != map.wall) continue;
    const Area box = map.box(opening.from.distance_from_start(), opening.to.distance_from_start(),
                             std::max(opening.underside, foot_of_course(map.context.building, 1)), opening.soffit);
    if (box.empty()) continue;
    pad.box(box, {Pen::Medium}, Fill::White);
    const Setting name =
        fitting_name(map.context, opening.name, {box.width() - 1'500, box.height() - 1'500},
                     {kText, Weight::Bold, Anchor::Middle, Ink::Black, 0}, std::array{kText, kSmallText});
    write_setting(pad, box.centre(), name);
  }
}

void draw_uprights(Pad& pad, Map& map) {
  const Building& building = map.context.building;
  for (const PlacedBar& bar : map.context.layout.bars) {
    const std::optional<Length> at = met_at(map, bar);
    if (!at) continue;
    const Micrometres x = map.view.at(*at);
    pad.line({x, map.level(top_of_course(building, bar.first_course - 1))},
             {x, map.level(top_of_course(building, bar.last_course))}, {Pen::Medium});
    map.drawn.bars = true;
  }
}

/// Where two pieces lie side by side: their lap, heavy.
void draw_lap(Pad& pad, Map& map, const steel::BarPiece& piece) {
  if (piece.lap <= Length()) return;
  if (piece.use == steel::BarUse::Upright || piece.use == steel::BarUse::Dowel) {
    const auto at = met_at(map, map.context.layout.bars[static_cast<std::size_t>(piece.bar)]);
    if (!at) return;
    const Micrometres x = map.view.at(*at);
    const Length low =
        piece.use == steel::BarUse::Dowel ? std::max(piece.from, piece.to - piece.lap) : piece.to - piece.lap;
    pad.line({x, map.level(low)}, {x, map.level(piece.to)}, {Pen::Heavy});
    map.drawn.laps = true;
  } else if (piece.use == steel::BarUse::Beam && piece.wall == map.wall && piece.beside == 1) {
    const Course& course = map.context.building.courses[static_cast<std::size_t>(piece.first_course - 1)];
    const Micrometres y = map.level(course.underside() + course.unit_height.half_down());
    pad.line({map.view.at(piece.to), y}, {map.view.at(piece.to - piece.lap), y}, {Pen::Heavy});
    map.drawn.laps = true;
  }
}

void draw_level_bar(Pad& pad, Map& map, const steel::BarPiece& piece) {
  const bool along = piece.use == steel::BarUse::Beam || piece.use == steel::BarUse::Lintel;
  if (!along || piece.wall != map.wall || piece.beside != 1) return;
  const Course& course = map.context.building.courses[static_cast<std::size_t>(piece.first_course - 1)];
  const Micrometres y = map.level(course.underside() + course.unit_height.half_down());
  pad.line({map.view.at(piece.to), y}, {map.view.at(piece.from), y}, {Pen::Medium});
  map.drawn.along = true;
}

void draw_cleanouts(Pad& pad, Map& map) {
  constexpr Micrometres kHalf = 900;
  for (const setout::WallCleanout& cleanout : map.context.answer.cleanouts) {
    if (cleanout.wall != map.wall) continue;
    const Micrometres x = map.view.at(cleanout.along),
                      y = map.level(top_of_course(map.context.building, cleanout.course - 1));
    pad.box({x - kHalf, y, x + kHalf, y + 2 * kHalf}, {Pen::Thin}, Fill::White);
    pad.line({x - kHalf, y}, {x + kHalf, y + 2 * kHalf}, {Pen::Thin});
    map.drawn.cleanouts = true;
  }
}

void draw_found_dowels(Pad& pad, Map& map) {
  constexpr Micrometres kHalf = 1'100;
  for (const steel::FoundDowel& dowel : map.context.answer.found_dowels) {
    if (dowel.wall != map.wall || dowel.action == steel::Action::Stands) continue;
    const Micrometres x = map.view.at(dowel.along), y = map.frame.bottom;
    pad.line({x - kHalf, y - kHalf}, {x + kHalf, y + kHalf}, {Pen::Medium});
    pad.line({x - kHalf, y + kHalf}, {x + kHalf, y - kHalf}, {Pen::Medium});
    map.drawn.dowels = true;
  }
}

/// A bar's number, and its place.
struct Label {
  Micrometres x = 0;
  std::string name, place;
};

std::string name_of(const Map& map, const PlacedBar& bar, std::size_t index) {
  std::string name;
  for (const PourToInspect& pour : map.context.answer.inspection) {
    for (const BarToInspect& one : pour.bars) {
      if (one.bar == index && name.empty()) name = one.short_name;
    }
  }
  return bar.wall == map.wall ? name : map.context.wall(bar.wall).name + " " + name;
}

/// From left to right.
std::vector<Label> labels_of(const Map& map) {
  std::vector<Label> labels;
  for (std::size_t k = 0; k < map.context.layout.bars.size(); ++k) {
    const PlacedBar& bar = map.context.layout.bars[k];
    const std::optional<Length> at = met_at(map, bar);
    if (!at) continue;
    labels.push_back({map.view.at(*at), name_of(map, bar, k),
                      height_text(map.context, rounded_to(*at, tape_step(map.context.tape())))});
  }
  sort_stably(labels, {}, &Label::x);
  return labels;
}

void write_labels(Pad& pad, const Map& map, const std::vector<Label>& labels) {
  std::vector<Micrometres> wanted, widths;
  for (const Label& label : labels) {
    wanted.push_back(label.x);
    widths.push_back(text_width(label.name, kSmallText, Weight::Regular));
  }
  const auto places = spread(wanted, widths, 1'200, map.room.left, map.room.right);
  const Micrometres y = map.frame.bottom;
  for (std::size_t k = 0; k < labels.size(); ++k) {
    pad.path({{labels[k].x, y - 1'000}, {labels[k].x, y - 1'600}, {places[k], y - 3'600}}, {Pen::Thin});
    pad.write({places[k], y - 4'300 - kSmallText}, labels[k].name, {kSmallText, Weight::Regular, Anchor::Middle});
  }
}

/// As one walks from the side's start.
std::string places_text(const std::vector<Label>& labels) {
  std::vector<std::string> parts;
  for (auto label = labels.rbegin(); label != labels.rend(); ++label)
    parts.push_back(label->name + ": " + label->place);
  return joined(parts, ", ");
}

void write_courses(Pad& pad, const Map& map) {
  Micrometres from = map.frame.bottom - 1'000'000;
  for (const Course& course : map.context.building.courses) {
    const Micrometres y = map.level(course.underside() + course.unit_height.half_down()) - kSmallText / 2;
    if (y < from) continue;
    pad.write({map.frame.right + 1'500, y}, number_text(course.number), {kSmallText});
    from = y + kSmallText + 700;
  }
}

bool is_filled(const Context& context) {
  return std::ranges::any_of(context.answer.pour_cards, [](const LiftCard& card) {
    return std::ranges::any_of(card.steps, [](const GroutStep& step) { return step.filled >= 0; });
  });
}

std::string title_of(const Context& context, int wall) {
  const words::SteelWords& words = context.words.steel;
  return words::fill_in(is_filled(context) ? words.title_map_filled : words.title_map, {context.wall(wall).name});
}

std::string legend_of(const Map& map) {
  const words::SteelWords& words = map.context.words.steel;
  std::vector<std::string> parts;
  const auto add = [&](bool drawn, std::string_view text) {
    if (drawn) parts.emplace_back(text);
  };
  add(map.drawn.filled, words.map_filled), add(map.drawn.open, words.map_open);
  add(map.drawn.bars, words.map_bar), add(map.drawn.along, words.map_beam), add(map.drawn.laps, words.map_lap);
  add(map.drawn.cleanouts, words.map_cleanout), add(map.drawn.dowels, words.map_dowel);
  return parts.empty() ? std::string(words.map_nothing) : joined(parts, "; ");
}

void write_corners(Pad& pad, const Map& map) {
  const Wall& wall = map.context.wall(map.wall);
  const auto write = [&](const std::string& name, Micrometres x, Anchor anchor) {
    write_setting(pad, {x, map.frame.top - kText},
                  fitting_name(map.context, name, {kLeft - 4'000, 6'000}, {kText, Weight::Bold, anchor, Ink::Black, 0},
                               std::array{kText, kSmallText}));
  };
  write(wall.start_name, map.frame.right + 7'000, Anchor::Start);
  write(wall.end_name, map.frame.left - 2'500, Anchor::End);
}

Group draw_map(const Context& context, int wall, Scale scale, const Area& room) {
  const bond::WallReach reach = bond::reach_of_wall(context.building, context.layout, wall);
  const Length length = reach.to - reach.from;
  const Micrometres wide = scale.paper(length), left = room.left + (room.width() - wide) / 2;
  const Area frame{left, room.bottom + kBelow + kNotes, left + wide,
                   room.bottom + kBelow + kNotes +
                       scale.paper(context.building.courses.back().top - foot_of_course(context.building, 1))};
  Map map{context, wall, {scale, left + wide, reach.from, false}, frame, room};
  Pad pad(Role::Figure, title_of(context, wall));
  pad.box(frame, {Pen::Thick}, Fill::White);
  draw_all_grout(pad, map);
  draw_openings(pad, map);
  draw_uprights(pad, map);
  for (const steel::BarPiece& piece : context.answer.bar_pieces.pieces) draw_level_bar(pad, map, piece);
  for (const steel::BarPiece& piece : context.answer.bar_pieces.pieces) draw_lap(pad, map, piece);
  draw_cleanouts(pad, map);
  draw_found_dowels(pad, map);
  pad.line({frame.left - 4'000, frame.bottom}, {frame.right + 4'000, frame.bottom}, {Pen::Heavy});
  write_courses(pad, map);
  write_corners(pad, map);
  const std::vector<Label> labels = labels_of(map);
  write_labels(pad, map, labels);
  const words::SteelWords& words = context.words.steel;
  const std::string places = labels.empty() ? std::string(words.map_no_bar) : places_text(labels);
  const std::string note = words::fill_in(
      words.map_note, {legend_of(map), short_name(context.names, context.wall(wall).start_name), places});
  write_paragraph(pad, {room.left, room.bottom + kNotes}, room.width(), note, {kSmallText});
  return std::move(pad).take();
}

Micrometres half_of(const Context& context) { return context.page.drawing.height() / 2; }

/// As large as both sides of a sheet allow.
Scale scale_of(const Context& context, int wall, Micrometres room) {
  const Length high = context.building.courses.back().top - foot_of_course(context.building, 1);
  const bond::WallReach reach = bond::reach_of_wall(context.building, context.layout, wall);
  return fitting_scale(reach.to - reach.from, high, context.page.drawing.width() - kLeft - kRight,
                       room - kAbove - kBelow - kNotes - kTitleHigh, {20});
}

std::vector<PlannedSheet> map_sheets(const Context& context) {
  std::vector<PlannedSheet> sheets;
  if (context.answer.pour_cards.empty()) return sheets;
  const int walls = static_cast<int>(context.building.walls.size());
  for (int wall = 0; wall < walls; wall += 2) {
    PlannedSheet sheet{.title = title_of(context, wall)};
    Scale scale{1};
    for (int one = wall; one < std::min(wall + 2, walls); ++one) {
      sheet.bands.push_back({one, 0, {Length(), context.wall(one).actual, 1, 1}});
      scale = std::max(scale, scale_of(context, one, half_of(context)),
                       [](Scale a, Scale b) { return a.denominator < b.denominator; });
    }
    sheet.scale = scale;
    if (sheet.bands.size() == 2)
      sheet.title = words::fill_in(context.words.title_both_strips, {sheet.title, title_of(context, wall + 1)});
    sheets.push_back(std::move(sheet));
  }
  return sheets;
}

Group draw_map_sheet(const Context& context, const PlannedSheet& sheet) {
  const Area& room = context.page.drawing;
  Pad pad(Role::Figure, sheet.title);
  Micrometres top = room.top;
  for (const Band& band : sheet.bands) {
    if (top != room.top) pad.line({room.left, top}, {room.right, top}, {Pen::Thin, Dash::Solid, Ink::Grey});
    write_paragraph(pad, {room.left, top - 800}, room.width(), title_of(context, band.wall),
                    {kText, Weight::Bold, Anchor::Start, Ink::Black, 0});
    pad.add(
        draw_map(context, band.wall, *sheet.scale, {room.left, top - half_of(context), room.right, top - kTitleHigh}));
    top -= half_of(context);
  }
  return std::move(pad).take();
}

}  // namespace

constinit const SheetKind kHiddenMapSheet{
    .name = "hidden",
    .hold_point = HoldPoint::Grout,
    .purpose = &words::SheetWords::purpose_map,
    .caution = {"engineer"},
    .sheets = map_sheets,
    .draw = draw_map_sheet,
};

}  // namespace stringcourse::sheet
