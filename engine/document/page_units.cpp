// One unit's card, and all units as boxes.
#include <algorithm>
#include <array>

#include "setout/marks.hpp"
#include "setout/places.hpp"
#include "sheet/hook_words.hpp"
#include "document/answer_parts.hpp"
#include "document/answer_words.hpp"
#include "document/page_parts.hpp"

namespace stringcourse {
namespace {

using answer_parts::write_length;

struct FoundPiece {
  const Run* run = nullptr;
  const Piece* piece = nullptr;
};

FoundPiece find_piece(const Answer& answer, std::string_view name) {
  for (const Run& run : answer.layout.runs) {
    if (!name.starts_with(answer_parts::wall_name(answer.building, run.wall))) continue;
    for (const Piece& piece : setout::pieces_of(answer.layout, run)) {
      if (setout::piece_name(answer.building, run, piece) == name) return {&run, &piece};
    }
  }
  return {};
}

// Units of a neighbouring course that touch this one's bed.
void write_touching(JsonOut& out, std::string_view key, const Answer& answer, const FoundPiece& found, int course) {
  out.list(key, [&] {
    for (const Run& run : setout::runs_in(answer.layout, found.run->wall, course)) {
      for (const Piece& piece : setout::pieces_of(answer.layout, run)) {
        const bool touches = piece.start < setout::far_end(*found.piece) && found.piece->start < setout::far_end(piece);
        if (touches) out.text(setout::piece_name(answer.building, run, piece));
      }
    }
  });
}

void write_neighbour(JsonOut& out, std::string_view key, const Answer& answer, const FoundPiece& found, int step) {
  std::string name;
  const auto pieces = setout::pieces_of(answer.layout, *found.run);
  const std::ptrdiff_t place = found.piece - pieces.data() + step;
  if (place >= 0 && place < static_cast<std::ptrdiff_t>(pieces.size())) {
    name = setout::piece_name(answer.building, *found.run, pieces[static_cast<std::size_t>(place)]);
  }
  out.field(key, name);
}

void write_cells(JsonOut& out, const Answer& answer, const FoundPiece& found) {
  const Building& building = answer.building;
  const Series& series = building.series_of(building.walls[static_cast<std::size_t>(found.run->wall)]);
  const auto bars = setout::bars_on_wall(building, answer.layout, found.run->wall);
  const Length start = found.piece->start.nearest_nanometre();
  out.list("cells", [&] {
    for (const CellSpan& cell : setout::cells_of(series, *found.piece)) {
      const bool barred = std::ranges::any_of(bars, [&](const setout::WallBar& bar) {
        return bar.first_course <= found.run->course && found.run->course <= bar.last_course && bar.centre > start + cell.from &&
               bar.centre < start + cell.to;
      });
      out.object([&] {
        write_length(out, "from", rounded_to(start + cell.from, tape_step(building.tape)), building.tape);
        write_length(out, "to", rounded_to(start + cell.to, tape_step(building.tape)), building.tape);
        out.field("bar", barred && building.bars ? building.bars->size : std::string());
      });
    }
  });
}

// The view from outside has a wall's start at the right.
void write_card(JsonOut& out, const Answer& answer, std::string_view name, const FoundPiece& found) {
  const Building& building = answer.building;
  const Wall& wall = building.walls[static_cast<std::size_t>(found.run->wall)];
  const Piece& piece = *found.piece;
  const Length step = tape_step(building.tape);
  out.object([&] {
    out.field("name", name);
    out.field("side", wall.name);
    out.field("course", found.run->course);
    out.field("number", piece.number);
    out.field("kind", kind_name(piece.kind));
    out.field("kind_words", sheet::kEnglish.kinds[static_cast<std::size_t>(piece.kind)]);
    out.field("series", building.series_of(wall).title);
    out.field("cut", cut_end_name(piece.cut));
    write_length(out, "length", piece.length, building.tape);
    write_length(out, "from", rounded_to(piece.start.nearest_nanometre(), step), building.tape);
    write_length(out, "to", rounded_to(setout::far_end(piece).nearest_nanometre(), step), building.tape);
    out.field("measured_from", sheet::hook_text(building, found.run->wall, sheet::kEnglish));
    write_length(out, "joint", found.run->joints == 0 ? Length() : Length::nanometres(found.run->slack.in_nanometres() / found.run->joints), building.tape);
    write_neighbour(out, "left", answer, found, 1);
    write_neighbour(out, "right", answer, found, -1);
    write_touching(out, "above", answer, found, found.run->course + 1);
    write_touching(out, "below", answer, found, found.run->course - 1);
    write_cells(out, answer, found);
  });
}

struct Span {
  std::int64_t low, size;
};
std::int64_t micrometres(Length length) { return length.whole_multiples(Length::nanometres(1000)); }
Span span_of(Length a, Length b) { return {micrometres(std::min(a, b)), micrometres(std::max(a, b)) - micrometres(std::min(a, b))}; }

void write_numbers(JsonOut& out, std::initializer_list<std::int64_t> numbers) {
  for (const std::int64_t number : numbers) out.number(number);
}

void write_box(JsonOut& out, const Building& building, const Run& run, const Piece& piece) {
  const Wall& wall = building.walls[static_cast<std::size_t>(run.wall)];
  const Course& course = building.courses[static_cast<std::size_t>(run.course - 1)];
  const PlanPoint near = plan_point(wall, piece.start.nearest_nanometre(), Length());
  const PlanPoint far = plan_point(wall, setout::far_end(piece).nearest_nanometre(), building.series_of(wall).thickness);
  const Span x = span_of(near.x, far.x), y = span_of(near.y, far.y), z = span_of(course.underside(), course.top);
  write_numbers(out, {x.low, y.low, z.low, x.size, y.size, z.size});
}

void write_bar(JsonOut& out, const Answer& answer, const PlacedBar& bar) {
  const Building& building = answer.building;
  const Wall& wall = building.walls[static_cast<std::size_t>(bar.wall)];
  const PlanPoint at = plan_point(wall, bar.centre, bar.off_face);
  const Length low = building.courses[static_cast<std::size_t>(bar.first_course - 1)].underside();
  const Length high = building.courses[static_cast<std::size_t>(bar.last_course - 1)].top;
  const Length diameter = building.bars ? building.bars->diameter : Length();
  write_numbers(out, {micrometres(at.x), micrometres(at.y), micrometres(low), micrometres(high), micrometres(diameter)});
}

template <typename Write>
void for_each_piece(const Answer& answer, Write&& write) {
  for (const Run& run : answer.layout.runs) {
    for (const Piece& piece : setout::pieces_of(answer.layout, run)) write(run, piece);
  }
}

}  // namespace

bool write_piece_card(JsonOut& out, const Answer& answer, std::string_view name) {
  const FoundPiece found = find_piece(answer, name);
  if (found.piece == nullptr) return false;
  write_card(out, answer, name, found);
  return true;
}

void write_solids(JsonOut& out, const Answer& answer) {
  const Building& building = answer.building;
  out.object([&] {
    out.list("names", [&] {
      for_each_piece(answer, [&](const Run& run, const Piece& piece) { out.text(setout::piece_name(building, run, piece)); });
    });
    out.list("courses", [&] { for_each_piece(answer, [&](const Run& run, const Piece&) { out.number(run.course); }); });
    out.list("kinds", [&] { for_each_piece(answer, [&](const Run&, const Piece& piece) { out.text(kind_name(piece.kind)); }); });
    out.list("cut", [&] {
      for_each_piece(answer, [&](const Run&, const Piece& piece) { out.number(setout::is_saw_cut(piece) ? 1 : 0); });
    });
    out.list("boxes", [&] { for_each_piece(answer, [&](const Run& run, const Piece& piece) { write_box(out, building, run, piece); }); });
    out.list("bars", [&] { for (const PlacedBar& bar : answer.layout.bars) write_bar(out, answer, bar); });
  });
}

}  // namespace stringcourse
