// One unit's card, and all units as boxes.
#include <algorithm>
#include <array>

#include "document/page_parts.hpp"
#include "document/put.hpp"
#include "document/shown_layout.hpp"
#include "setout/marks.hpp"
#include "sheet/context.hpp"
#include "sheet/hook_words.hpp"

namespace stringcourse::document {

/// A unit where it lies.
struct FoundPiece {
  const Run* run = nullptr;
  const Piece* piece = nullptr;
};
/// A cell of a unit, and the bar in it.
struct CellOfUnit {
  Length from, to;
  std::string bar;
};

namespace {

FoundPiece find_piece(const Answer& answer, std::string_view name) {
  for (const Run& run : answer.layout.runs) {
    if (!name.starts_with(answer.building.walls[static_cast<std::size_t>(run.wall)].name)) continue;
    for (const Piece& piece : bond::pieces_of(answer.layout, run)) {
      if (bond::piece_name(answer.building, run, piece) == name) return {&run, &piece};
    }
  }
  return {};
}

/// Units of a neighbouring course that touch this one's bed.
std::vector<std::string> touching(const View& view, const FoundPiece& found, int course) {
  std::vector<std::string> names;
  for (const Run& run : bond::runs_in(view.answer.layout, found.run->wall, course)) {
    for (const Piece& piece : bond::pieces_of(view.answer.layout, run)) {
      const bool touches = piece.start < bond::far_end(*found.piece) && found.piece->start < bond::far_end(piece);
      if (touches) names.push_back(bond::piece_name(view.building(), run, piece));
    }
  }
  return names;
}

std::string neighbour(const View& view, const FoundPiece& found, int step) {
  const auto pieces = bond::pieces_of(view.answer.layout, *found.run);
  const std::ptrdiff_t place = found.piece - pieces.data() + step;
  if (place < 0 || place >= static_cast<std::ptrdiff_t>(pieces.size())) return {};
  return bond::piece_name(view.building(), *found.run, pieces[static_cast<std::size_t>(place)]);
}

Length on_tape(const View& view, Length length) { return rounded_to(length, tape_step(view.tape())); }

std::vector<CellOfUnit> cells_of(const View& view, const FoundPiece& found) {
  const Building& building = view.building();
  const auto bars = bond::bars_on_wall(building, view.answer.layout, found.run->wall);
  const Length start = found.piece->start.nearest_nanometre();
  std::vector<CellOfUnit> cells;
  for (const CellSpan& cell : bond::cells_of(building.series_of(view.wall(found.run->wall)), *found.piece)) {
    const bool barred = std::ranges::any_of(bars, [&](const bond::WallBar& bar) {
      return bar.first_course <= found.run->course && found.run->course <= bar.last_course &&
             bar.centre > start + cell.from && bar.centre < start + cell.to;
    });
    cells.push_back({on_tape(view, start + cell.from), on_tape(view, start + cell.to),
                     barred && building.bars ? building.bars->size : std::string()});
  }
  return cells;
}

}  // namespace

template <>
struct Shown<CellOfUnit> {
  static constexpr std::string_view name = "cell_of_unit";
  static constexpr std::string_view description = "A cell of a unit, and the bar in it.";
  static constexpr auto fields =
      std::tuple{shown("from", &CellOfUnit::from), shown("to", &CellOfUnit::to), shown("bar", &CellOfUnit::bar)};
};

// The view from outside has a wall's start at the right.
template <>
struct Shown<FoundPiece> {
  using Of = FoundPiece;
  static constexpr std::string_view name = "piece_card";
  static constexpr std::string_view description = "What a tapped unit is.";
  static constexpr auto fields = std::tuple{
      shown("name",
            [](const View& view, const Of& of) { return bond::piece_name(view.building(), *of.run, *of.piece); }),
      shown("side", [](const View& view, const Of& of) -> const std::string& { return view.wall(of.run->wall).name; }),
      shown("course", [](const View&, const Of& of) { return of.run->course; }),
      shown("number", [](const View&, const Of& of) { return of.piece->number; }),
      shown("kind", [](const View&, const Of& of) { return of.piece->kind; }),
      shown("kind_words",
            [](const View&, const Of& of) { return words::kEnglish.kinds[static_cast<std::size_t>(of.piece->kind)]; }),
      shown("series",
            [](const View& view, const Of& of) -> const std::string& {
              return view.building().series_of(view.wall(of.run->wall)).title;
            }),
      shown("cut", [](const View&, const Of& of) { return of.piece->cut; }),
      shown("length", [](const View&, const Of& of) { return of.piece->length; }),
      shown("from", [](const View& view, const Of& of) { return on_tape(view, of.piece->start.nearest_nanometre()); }),
      shown("to",
            [](const View& view, const Of& of) { return on_tape(view, bond::far_end(*of.piece).nearest_nanometre()); }),
      shown("measured_from",
            [](const View& view, const Of& of) {
              return sheet::hook_text(view.building(), of.run->wall, words::kEnglish);
            }),
      shown("joint",
            [](const View&, const Of& of) {
              return of.run->joints == 0 ? Length()
                                         : Length::nanometres(of.run->slack.in_nanometres() / of.run->joints);
            }),
      shown("left", [](const View& view, const Of& of) { return neighbour(view, of, 1); }),
      shown("right", [](const View& view, const Of& of) { return neighbour(view, of, -1); }),
      shown("above", [](const View& view, const Of& of) { return touching(view, of, of.run->course + 1); }),
      shown("below", [](const View& view, const Of& of) { return touching(view, of, of.run->course - 1); }),
      shown("cells", [](const View& view, const Of& of) { return cells_of(view, of); }),
  };
};

}  // namespace stringcourse::document

namespace stringcourse {
namespace {

struct Span {
  std::int64_t low, size;
};
std::int64_t micrometres(Length length) { return length.whole_multiples(Length::nanometres(1000)); }
Span span_of(Length a, Length b) {
  return {micrometres(std::min(a, b)), micrometres(std::max(a, b)) - micrometres(std::min(a, b))};
}

/// What an exception's face is filled with.
std::string_view fill_name(paper::Fill fill) {
  switch (fill) {
    case paper::Fill::Tint: return "tint";
    case paper::Fill::Hatch45: return "rising";
    case paper::Fill::Hatch135: return "falling";
    case paper::Fill::Grey: return "grey";
    default: return "plain";
  }
}

void write_numbers(JsonOut& out, std::initializer_list<std::int64_t> numbers) {
  for (const std::int64_t number : numbers) out.number(number);
}

void write_box(JsonOut& out, const Building& building, const Run& run, const Piece& piece) {
  const Wall& wall = building.walls[static_cast<std::size_t>(run.wall)];
  const Course& course = building.courses[static_cast<std::size_t>(run.course - 1)];
  const PlanPoint near = plan_point(wall, piece.start.nearest_nanometre(), Length());
  const PlanPoint far = plan_point(wall, bond::far_end(piece).nearest_nanometre(), building.series_of(wall).thickness);
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
  write_numbers(out,
                {micrometres(at.x), micrometres(at.y), micrometres(low), micrometres(high), micrometres(diameter)});
}

template <typename Write>
void for_each_piece(const Answer& answer, Write&& write) {
  for (const Run& run : answer.layout.runs) {
    for (const Piece& piece : bond::pieces_of(answer.layout, run)) write(run, piece);
  }
}

}  // namespace

bool write_piece_card(JsonOut& out, const Answer& answer, std::string_view name) {
  const document::FoundPiece found = document::find_piece(answer, name);
  if (found.piece == nullptr) return false;
  document::put(out, document::View{answer}, found);
  return true;
}

void write_solids(JsonOut& out, const Answer& answer) {
  const Building& building = answer.building;
  out.object([&] {
    out.list("names", [&] {
      for_each_piece(answer,
                     [&](const Run& run, const Piece& piece) { out.text(bond::piece_name(building, run, piece)); });
    });
    out.list("courses", [&] { for_each_piece(answer, [&](const Run& run, const Piece&) { out.number(run.course); }); });
    out.list("kinds",
             [&] { for_each_piece(answer, [&](const Run&, const Piece& piece) { out.text(kind_name(piece.kind)); }); });
    out.list("cut", [&] {
      for_each_piece(answer, [&](const Run&, const Piece& piece) { out.number(bond::is_saw_cut(piece) ? 1 : 0); });
    });
    // As on the sheets, so that a unit has one mark wherever it is seen.
    out.list("marks", [&] {
      for_each_piece(answer, [&](const Run&, const Piece& piece) { out.text(sheet::exception_of(piece).mark); });
    });
    out.list("fills", [&] {
      for_each_piece(answer,
                     [&](const Run&, const Piece& piece) { out.text(fill_name(sheet::exception_of(piece).fill)); });
    });
    out.list("boxes", [&] {
      for_each_piece(answer, [&](const Run& run, const Piece& piece) { write_box(out, building, run, piece); });
    });
    out.list("bars", [&] {
      for (const PlacedBar& bar : answer.layout.bars) write_bar(out, answer, bar);
    });
  });
}

}  // namespace stringcourse
