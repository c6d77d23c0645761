#include "wasm/drawing_head.hpp"

#include "measure/notation.hpp"
#include "sheet/hook_words.hpp"

namespace stringcourse {
namespace {

void write_box(JsonOut& out, const paper::Sheet& sheet, const paper::Area& box) {
  out.field("x", box.left);
  out.field("y", sheet.height - box.top);
  out.field("width", box.width());
  out.field("height", box.height());
}

void write_step(JsonOut& out, std::string_view key, int x, int y) {
  out.list(key, [&] {
    out.number(x);
    out.number(-y);  // downwards
  });
}

void write_opening_handle(JsonOut& out, const Building& building, const sheet::Drawing& drawing,
                          const sheet::Handle& handle) {
  const ResolvedOpening& opening = building.openings[static_cast<std::size_t>(handle.index)];
  const Wall& wall = building.walls[static_cast<std::size_t>(opening.wall)];
  const Length from = opening.from.distance_from_start(), to = opening.to.distance_from_start();
  out.object([&] {
    out.field("kind", "opening");
    out.field("index", handle.index);
    out.field("name", opening.name);
    out.field("place", opening.place);
    out.field("side", wall.name);
    out.field("shown", handle.shown);
    write_box(out, drawing.sheet, handle.box);
    write_step(out, "along", handle.along_x, handle.along_y);
    out.field("from_nm", from.in_nanometres());
    out.field("to_nm", to.in_nanometres());
    out.field("label", opening.name + ", " + tape_text(from, building.tape) + " to " + tape_text(to, building.tape) +
                           " from " + sheet::hook_text(building, opening.wall, words::kEnglish));
  });
}

void write_side_handle(JsonOut& out, const Building& building, const sheet::Drawing& drawing,
                       const sheet::Handle& handle) {
  const Wall& wall = building.walls[static_cast<std::size_t>(handle.index)];
  out.object([&] {
    out.field("kind", "side");
    out.field("index", handle.index);
    out.field("name", wall.name);
    out.field("place", wall.place);
    write_box(out, drawing.sheet, handle.box);
    out.name("length");
    out.object([&] { write_box(out, drawing.sheet, handle.length); });
    write_step(out, "outward", -handle.along_y, handle.along_x);  // a quarter turn to the left of the walk
    out.field("length_nm", wall.actual.in_nanometres());
    out.field("label", wall.name + ", " + tape_text(wall.actual, building.tape));
  });
}

}  // namespace

void write_drawing_head(JsonOut& out, const Building& building, const sheet::Drawing& drawing) {
  out.object([&] {
    out.field("name", drawing.sheet.name);
    out.field("title", drawing.sheet.title);
    out.field("width", drawing.sheet.width);
    out.field("height", drawing.sheet.height);
    out.field("scale", drawing.scale.denominator);
    out.field("course", drawing.course);
    out.field("side", drawing.wall < 0 ? std::string() : building.walls[static_cast<std::size_t>(drawing.wall)].name);
    out.list("handles", [&] {
      for (const sheet::Handle& handle : drawing.handles) {
        if (handle.what == sheet::Handle::What::Opening) write_opening_handle(out, building, drawing, handle);
        else write_side_handle(out, building, drawing, handle);
      }
    });
    out.list("names", [&] {
      for (const sheet::LongName& one : drawing.names) {
        out.object([&] {
          out.field("key", one.key);
          out.field("name", one.name);
        });
      }
    });
  });
}

}  // namespace stringcourse
