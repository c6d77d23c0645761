#include "sheet/sides.hpp"

#include "measure/digits.hpp"
#include "sheet/registry.hpp"
#include "sheet/summary.hpp"
#include "supply/counts.hpp"

namespace stringcourse::sheet {

Table side_sizes_table(const Context& context, Micrometres width, Micrometres height_of_text) {
  const words::SheetWords& words = context.words;
  Table table = new_table(width, words.sizes,
                          {{words.side, 15}, {words.nominal, 24}, {words.actual, 44}, {words.units, 17, Anchor::End}},
                          height_of_text);
  for (std::size_t wall = 0; wall < context.building.walls.size(); ++wall) {
    const supply::Counts counts = supply::count_units_of_wall(context.building, context.layout, static_cast<int>(wall));
    const Wall& side = context.building.walls[wall];
    table.add_row({side.name, tape_text(side.nominal, context.tape()), both_forms(side.actual, context.tape()),
                   number_text(counts.pieces)});
  }
  return table;
}

constinit const SheetKind kSidesSheet{
    .name = "sides",
    .purpose = &words::SheetWords::purpose_sides,
    .caution = {"engineer"},
    .applies = [](const Context& context) { return !summary_holds_sides(context); },
    .table = [](const Context& context) { return side_sizes_table(context, context.page.drawing.width(), kText); },
};

}  // namespace stringcourse::sheet
