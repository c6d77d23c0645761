#pragma once
// Field tables of what is placed: runs with their pieces, lintels, bars, cleanouts.
#include <span>

#include "bond/layout_parts.hpp"
#include "document/shown_building.hpp"

namespace stringcourse::document {

enum class CutFreely { MakeUp };
}  // namespace stringcourse::document
namespace stringcourse {
template <>
inline constexpr std::array<std::string_view, 1> kEnumNames<document::CutFreely>{"make-up"};
}
namespace stringcourse::document {

/// One piece of a run.
struct PlacedPiece {
  const Run& run;
  const Piece& piece;
};
/// A place as whole nanometres and a fraction of one, so that every number fits a browser's exact range.
struct WholeAndRest {
  std::int64_t whole, rest, of;
};
inline WholeAndRest exact_start(const Piece& piece) {
  std::int64_t whole = piece.start.numerator / piece.start.denominator;
  std::int64_t rest = piece.start.numerator % piece.start.denominator;
  if (rest < 0) --whole, rest += piece.start.denominator;
  return {whole, rest, rest == 0 ? 1 : piece.start.denominator};
}

template <>
struct Shown<PlacedPiece> {
  static constexpr std::string_view name = "piece";
  static constexpr std::string_view description =
      "One piece: [name, kind, length, start, start_numerator, start_denominator, cut] and \"make-up\" for the one "
      "free cut of its run. "
      "name is side-course-number. length and start are whole nanometres; the exact start is start + start_numerator / "
      "start_denominator, with 0 <= start_numerator < start_denominator. cut says which end the saw made.";
  static constexpr bool is_list = true;
  static constexpr auto fields = std::tuple{
      shown("name", [](const View& view,
                       const PlacedPiece& of) { return bond::piece_name(view.building(), of.run, of.piece); }),
      shown("kind", [](const View&, const PlacedPiece& of) { return of.piece.kind; }),
      shown(
          "length", [](const View&, const PlacedPiece& of) { return of.piece.length.in_nanometres(); },
          "length, whole nanometres"),
      shown(
          "start", [](const View&, const PlacedPiece& of) { return exact_start(of.piece).whole; },
          "start, whole nanometres"),
      shown(
          "start_numerator", [](const View&, const PlacedPiece& of) { return exact_start(of.piece).rest; },
          "numerator"),
      shown(
          "start_denominator", [](const View&, const PlacedPiece& of) { return exact_start(of.piece).of; },
          "denominator"),
      shown("cut", [](const View&, const PlacedPiece& of) { return of.piece.cut; }),
      shown(
          "make_up",
          [](const View&, const PlacedPiece& of) {
            return of.piece.make_up ? std::optional(CutFreely::MakeUp) : std::nullopt;
          },
          "the run's one free cut"),
  };
};

inline std::vector<PlacedPiece> pieces_of(const View& view, const Run& run) {
  std::vector<PlacedPiece> pieces;
  for (const Piece& piece : bond::pieces_of(view.answer.layout, run)) pieces.push_back({run, piece});
  return pieces;
}

template <>
struct Shown<Run> {
  static constexpr std::string_view name = "run";
  static constexpr std::string_view description = "A stretch of one course without a break.";
  static constexpr bool on_own_line = true;
  static constexpr auto fields = std::tuple{
      side("side", &Run::wall),
      shown("course", &Run::course, kCourseNumber),
      shown(
          "from", [](const View&, const Run& of) { return of.start.in_nanometres(); },
          "start of the run, whole nanometres"),
      shown(
          "to", [](const View&, const Run& of) { return of.end.in_nanometres(); }, "end of the run, whole nanometres"),
      shown("at_start", &Run::at_start),
      shown("at_end", &Run::at_end),
      shown("joints", &Run::joints, "number of head joints, all equally wide: slack / joints"),
      shown(
          "slack", [](const View&, const Run& of) { return of.slack.in_nanometres(); },
          "the run less its pieces, whole nanometres"),
      shown("pieces", pieces_of),
  };
};

template <>
struct Shown<supply::BarThrough> {
  static constexpr std::string_view name = "bar_through";
  static constexpr std::string_view description = "A bar that passes a unit with a floor, or a lintel in one piece.";
  static constexpr auto fields = std::tuple{
      shown("course", &supply::BarThrough::course, kCourseNumber),
      shown(
          "unit",
          [](const View&, const supply::BarThrough& of) { return of.unit > 0 ? std::optional(of.unit) : std::nullopt; },
          "number along its side in its course; absent: the lintel is one piece"),
      shown("centre", &supply::BarThrough::centre),
      shown(
          "cell",
          [](const View& view, const supply::BarThrough& of) {
            const Length deep = view.building().series_of(view.wall(of.wall)).thickness.half_down();
            const auto cell =
                steel::cell_at(view.building(), view.answer.layout, of.wall, of.course, {of.centre, deep});
            return cell ? std::optional(cell->cell) : std::nullopt;
          },
          "from the unit's end nearer to the side's start"),
  };
};

/// Of a lintel built of units: what one kind comes to.
struct LintelUnits {
  const supply::UnitCount& count;
};
template <>
struct Shown<LintelUnits> {
  static constexpr std::string_view name = "lintel_units";
  static constexpr std::string_view description = "Units of one kind in a lintel.";
  static constexpr auto fields = std::tuple{
      shown("kind", [](const View&, const LintelUnits& of) { return of.count.kind; }),
      shown("whole", [](const View&, const LintelUnits& of) { return of.count.whole; }),
      shown("cut_pieces", [](const View&, const LintelUnits& of) { return of.count.pieces; }),
  };
};

template <>
struct Shown<supply::LintelAsLaid> {
  using Of = supply::LintelAsLaid;
  static constexpr std::string_view name = "lintel_as_laid";
  static constexpr std::string_view description =
      "What a lintel bears as laid, what spans, and the bars that have to pass it.";
  static constexpr auto fields = std::tuple{
      shown("opening",
            [](const View& view, const Of& of) -> const std::string& { return view.opening(of.opening).name; }),
      shown("side",
            [](const View& view, const Of& of) -> const std::string& {
              return view.wall(view.opening(of.opening).wall).name;
            }),
      shown(
          "asked_bearing",
          [](const View& view, const Of& of) { return view.opening(of.opening).lintel->least_bearing; },
          "least at each end, by the job or a half unit"),
      shown(
          "start_bearing", [](const View&, const Of& of) { return of.start.bearing; },
          "as laid, from the jamb towards the wall's start"),
      shown(
          "end_bearing", [](const View&, const Of& of) { return of.end.bearing; },
          "as laid, from the jamb towards the wall's end"),
      shown("soffit", &Of::soffit,
            "What closes the underside: the lintel itself, the floor of lintel units, a form under open units; or "
            "nothing there carries."),
      shown(
          "units",
          [](const View&, const Of& of) {
            std::vector<LintelUnits> units;
            for (const supply::UnitCount& unit : of.units) units.push_back({unit});
            return units;
          },
          "Built of units: all its courses, by kind."),
      shown("bars_through", &Of::bars,
            "Bars that pass a unit with a floor, which is broken out there, or a lintel in one piece."),
  };
};

template <>
struct Shown<PlacedBar> {
  static constexpr std::string_view name = "bar";
  static constexpr std::string_view description = "An upright bar.";
  static constexpr auto fields = std::tuple{
      side("side", &PlacedBar::wall),
      shown("centre", &PlacedBar::centre),
      shown("reason", &PlacedBar::reason),
      shown("corner",
            [](const View& view, const PlacedBar& of) {
              return of.corner < 0 ? std::optional<std::string_view>()
                                   : std::optional<std::string_view>(
                                         view.building().corners[static_cast<std::size_t>(of.corner)].name);
            }),
      opening("opening", &PlacedBar::opening),
      shown("first_course", &PlacedBar::first_course, kCourseNumber),
      shown("last_course", &PlacedBar::last_course, kCourseNumber),
  };
};

enum class Opens { Outward, Inward };
}  // namespace stringcourse::document
namespace stringcourse {
template <>
inline constexpr std::array<std::string_view, 2> kEnumNames<document::Opens>{"outward", "inward"};
}
namespace stringcourse::document {

template <>
struct Shown<setout::WallCleanout> {
  using Of = setout::WallCleanout;
  static constexpr std::string_view name = "cleanout";
  static constexpr std::string_view description =
      "A hole at the foot of a high pour, through which a bar's cell is cleaned.";
  static constexpr auto fields = std::tuple{
      side("side", &Of::wall, "whose unit it is in"),
      shown("course", &Of::course, kCourseNumber),
      shown(
          "unit", [](const View& view, const Of& of) { return view.answer.layout.pieces[of.piece].number; },
          kUnitNumber),
      shown("at", &Of::along, "of its bar, along that side"),
      shown("bought", &Of::bought, "a cleanout unit; else the hole is cut"),
      shown("opens", [](const View&, const Of& of) { return of.outward ? Opens::Outward : Opens::Inward; }),
  };
};

}  // namespace stringcourse::document
