// Walls and pallets from above: each pallet with its number in the list, the ground that is kept clear hatched.
#include <algorithm>

#include "measure/digits.hpp"
#include "sheet/registry.hpp"

namespace stringcourse::sheet {
namespace {

const PalletPlan& plan_of(const Context& context) { return *context.answer.site.pallets; }

/// From the plan to the paper: the same scale both ways, whole nanometres for a micrometre.
struct Map {
  Length west, north;
  std::int64_t nanometres = 1;  // of the plan, for a micrometre of the paper
  Area room;
  [[nodiscard]] Point at(PlanPoint point) const {
    return {room.left + static_cast<Micrometres>((point.x - west).in_nanometres() / nanometres),
            room.top - static_cast<Micrometres>((north - point.y).in_nanometres() / nanometres)};
  }
  [[nodiscard]] Micrometres long_as(Length length) const {
    return static_cast<Micrometres>(length.in_nanometres() / nanometres);
  }
};

Length half_of_a_pallet(Tape tape) { return tape == Tape::Inches ? Length::feet(2) : Length::millimetres(600); }

/// Everything that is shown: walls, places that were looked at.
Map map_of(const Context& context, const Area& room) {
  std::vector<PlanPoint> points = plan_of(context).places;
  for (const Wall& wall : context.building.walls) {
    points.push_back(wall.start_point);
    points.push_back(plan_point(wall, wall.actual, context.building.series_of(wall).thickness));
  }
  const Length edge = half_of_a_pallet(context.building.tape) * 2;
  const auto [west, east] = std::ranges::minmax(points, {}, &PlanPoint::x);
  const auto [south, north] = std::ranges::minmax(points, {}, &PlanPoint::y);
  const Length wide = east.x - west.x + edge * 2, high = north.y - south.y + edge * 2;
  return {west.x - edge, north.y + edge,
          std::max(wide.in_nanometres() / room.width(), high.in_nanometres() / room.height()) + 1, room};
}

Area spanned(Point a, Point b) {
  return {std::min(a.x, b.x), std::min(a.y, b.y), std::max(a.x, b.x), std::max(a.y, b.y)};
}

Area wall_box(const Context& context, const Map& map, const Wall& wall, Length wider) {
  const Length thick = context.building.series_of(wall).thickness;
  return spanned(map.at(plan_point(wall, -wider, -wider)),
                 map.at(plan_point(wall, wall.actual + wider, thick + wider)));
}

Group draw_pallets(const Context& context, const PlannedSheet& sheet) {
  constexpr Micrometres kNoteRoom = 10'000;
  const PalletPlan& plan = plan_of(context);
  Area room = context.page.list;
  room.bottom += kNoteRoom;
  const Map map = map_of(context, room);
  Pad pad(Role::Figure, sheet.title);
  for (const Wall& wall : context.building.walls)
    pad.box(wall_box(context, map, wall, plan.zone), {Pen::None}, Fill::Tint);
  for (const Wall& wall : context.building.walls) pad.box(wall_box(context, map, wall, Length()), {}, Fill::Grey);
  const Micrometres half = map.long_as(half_of_a_pallet(context.building.tape));
  for (std::size_t k = 0; k < plan.pallets.size(); ++k) {
    const Point middle = map.at(plan.pallets[k].middle);
    pad.box({middle.x - half, middle.y - half, middle.x + half, middle.y + half}, {}, Fill::White);
    pad.write({middle.x, middle.y - kSmallText / 2}, number_text(k + 1), {kSmallText, Weight::Bold, Anchor::Middle});
  }
  for (const Wall& wall : context.building.walls) {
    const Length in = context.building.series_of(wall).thickness * 6;
    const Point at = map.at(plan_point(wall, wall.actual.half_down(), in));
    pad.write({at.x, at.y - kSmallText / 2}, wall.name, {kSmallText, Weight::Regular, Anchor::Middle});
  }
  write_paragraph(pad, {room.left, room.bottom - 2'000}, room.width(),
                  words::fill_in(context.words.order.pallet_plan_note, {tape_text(plan.zone, context.building.tape)}),
                  {kSmallText});
  return std::move(pad).take();
}

std::vector<PlannedSheet> pallet_sheets(const Context& context) {
  return numbered_sheets(context, context.words.order.title_pallet_plan, std::nullopt);
}

}  // namespace

constinit const SheetKind kPalletPlanSheet{
    .name = "pallet-plan",
    .purpose = &words::SheetWords::purpose_pallets,
    .caution = {"limited-access-zone"},
    .applies = [](const Context& context) { return context.answer.site.pallets.has_value(); },
    .sheets = pallet_sheets,
    .draw = draw_pallets,
};

}  // namespace stringcourse::sheet
