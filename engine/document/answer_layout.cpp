#include "setout/cleanouts.hpp"
#include "setout/places.hpp"
#include "document/answer_parts.hpp"
#include "document/answer_words.hpp"
#include "steel/dowels.hpp"
#include "supply/lintels.hpp"

namespace stringcourse::answer_parts {

namespace {

// A place as whole nanometres and a fraction of one, so that every number fits a browser's exact range.
void write_exact(JsonOut& out, const ExactPosition& at) {
  std::int64_t whole = at.numerator / at.denominator;
  std::int64_t rest = at.numerator % at.denominator;
  if (rest < 0) --whole, rest += at.denominator;
  out.number(whole);
  out.number(rest);
  out.number(rest == 0 ? 1 : at.denominator);
}

// [name, kind, length, start, start_numerator, start_denominator, cut] and "make-up" for the run's one free cut.
void write_piece(JsonOut& out, const Building& building, const Run& run, const Piece& piece) {
  out.list([&] {
    out.text(setout::piece_name(building, run, piece));
    out.text(kind_name(piece.kind));
    out.number(piece.length.in_nanometres());
    write_exact(out, piece.start);
    out.text(cut_end_name(piece.cut));
    if (piece.make_up) out.text("make-up");
  });
}

void write_run(JsonOut& out, const Building& building, const Layout& layout, const Run& run) {
  out.line_break();
  out.object([&] {
    out.field("side", wall_name(building, run.wall));
    out.field("course", run.course);
    out.field("from", run.start.in_nanometres());
    out.field("to", run.end.in_nanometres());
    out.field("at_start", run_end_name(run.at_start));
    out.field("at_end", run_end_name(run.at_end));
    out.field("joints", run.joints);
    out.field("slack", run.slack.in_nanometres());
    out.list("pieces", [&] {
      for (const Piece& piece : setout::pieces_of(layout, run)) write_piece(out, building, run, piece);
    });
  });
}

void write_bar_through(JsonOut& out, const Building& building, const Layout& layout, const supply::BarThrough& bar) {
  out.object([&] {
    out.field("course", bar.course);
    if (bar.unit > 0) out.field("unit", bar.unit);
    write_length(out, "centre", bar.centre, building.tape);
    const auto cell = steel::cell_at(building, layout, bar.wall, bar.course, {bar.centre, building.series_of(building.walls[static_cast<std::size_t>(bar.wall)]).thickness.half_down()});
    if (cell) out.field("cell", cell->cell);
  });
}

// What is asked and what is laid: bearings, what spans, and the bars that have to pass it.
void write_lintel(JsonOut& out, const Building& building, const Layout& layout, const supply::LintelAsLaid& lintel) {
  const ResolvedOpening& opening = building.openings[static_cast<std::size_t>(lintel.opening)];
  out.object([&] {
    out.field("opening", opening.name);
    out.field("side", wall_name(building, opening.wall));
    write_length(out, "asked_bearing", opening.lintel->least_bearing, building.tape);
    write_length(out, "start_bearing", lintel.start.bearing, building.tape);
    write_length(out, "end_bearing", lintel.end.bearing, building.tape);
    out.field("soffit", soffit_name(lintel.soffit));
    out.list("units", [&] {
      for (const supply::UnitCount& unit : lintel.units) {
        out.object([&] {
          out.field("kind", kind_name(unit.kind));
          out.field("whole", unit.whole);
          out.field("cut_pieces", unit.pieces);
        });
      }
    });
    out.list("bars_through", [&] {
      for (const supply::BarThrough& bar : lintel.bars) write_bar_through(out, building, layout, bar);
    });
  });
}

void write_bar(JsonOut& out, const Building& building, const PlacedBar& bar) {
  out.object([&] {
    out.field("side", wall_name(building, bar.wall));
    write_length(out, "centre", bar.centre, building.tape);
    out.field("reason", bar_reason_name(bar.reason));
    if (bar.corner >= 0) out.field("corner", building.corners[static_cast<std::size_t>(bar.corner)].name);
    if (bar.opening >= 0) out.field("opening", building.openings[static_cast<std::size_t>(bar.opening)].name);
    out.field("first_course", bar.first_course);
    out.field("last_course", bar.last_course);
  });
}

void write_cleanout(JsonOut& out, const Building& building, const Layout& layout, const setout::WallCleanout& cleanout) {
  out.object([&] {
    out.field("side", wall_name(building, cleanout.wall));
    out.field("course", cleanout.course);
    out.field("unit", layout.pieces[cleanout.piece].number);
    write_length(out, "at", cleanout.along, building.tape);
    out.field("bought", cleanout.bought);
    out.field("opens", cleanout.outward ? "outward" : "inward");
  });
}

}  // namespace

void write_layout(JsonOut& out, const Building& building, const Layout& layout, Placed placed) {
  const bool filled = placed == Placed::Write;
  out.list("lintels", [&] {
    for (const supply::LintelAsLaid& lintel : supply::lintels_as_laid(building, layout))
      write_lintel(out, building, layout, lintel);
  });
  out.list("bars", [&] {
    for (const PlacedBar& bar : layout.bars) if (filled) write_bar(out, building, bar);
  });
  out.list("cleanouts", [&] {
    for (const setout::WallCleanout& cleanout : setout::cleanouts_of(building, layout)) {
      if (filled) write_cleanout(out, building, layout, cleanout);
    }
  });
  out.list("runs", [&] {
    for (const Run& run : layout.runs) if (filled) write_run(out, building, layout, run);
  });
}

}  // namespace stringcourse::answer_parts
