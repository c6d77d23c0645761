#pragma once
// Field tables of bars as they are cut.
#include "document/shown_lists.hpp"

namespace stringcourse::document {

template <>
struct Shown<steel::BarPiece> {
  using Of = steel::BarPiece;
  static constexpr std::string_view name = "bar_piece";
  static constexpr std::string_view description = "One bar to be cut.";
  static constexpr auto fields = std::tuple{
      shown("use", &Of::use),
      shown("mark", [](const View&, const Of& of) { return of.mark + 1; }),
      side("side", &Of::wall),
      shown(
          "number",
          [](const View& view, const Of& of) {
            return of.bar < 0 ? 0
                              : dowel_number(view.answer, view.answer.layout.bars[static_cast<std::size_t>(of.bar)]);
          },
          "of its dowel along the side; 0: none stands there, or the bar lies along the side"),
      shown(
          "at",
          [](const View& view, const Of& of) {
            return of.bar < 0 ? std::nullopt
                              : std::optional(view.answer.layout.bars[static_cast<std::size_t>(of.bar)].centre);
          },
          "upright: its centre along the side"),
      shown(
          "corner",
          [](const View& view, const Of& of) {
            return of.corner < 0 ? std::nullopt
                                 : std::optional<std::string_view>(
                                       view.building().corners[static_cast<std::size_t>(of.corner)].name);
          },
          "that it goes round; the side is the one that arrives there"),
      opening("opening", &Of::opening, "whose lintel it lies in"),
      shown("beside", &Of::beside, "which of those side by side, from 1"),
      shown("first_course", &Of::first_course),
      shown("last_course", &Of::last_course),
      shown("from", &Of::from, "upright: height of its foot from the datum; else a place along the side"),
      shown("to", &Of::to, "round a corner: of the leg along the side"),
      shown("lap", &Of::lap, "shared with the next piece, upwards or towards the side's end"),
      shown(
          "length", [](const View&, const Of& of) { return of.length(); },
          "of all its legs; of a dowel what stands over the bearing"),
  };
};

template <>
struct Shown<steel::BarMark> {
  using Of = steel::BarMark;
  static constexpr std::string_view name = "bar_mark";
  static constexpr std::string_view description = "Bars cut alike.";
  static constexpr auto fields = std::tuple{
      shown("use", &Of::use),
      shown("size", &Of::size),
      shown("count", &Of::count),
      shown("length", &Of::length, "of all its legs; of a dowel what stands over the bearing"),
      shown(
          "shape",
          [](const View&, const Of& of) -> std::string_view { return of.use == steel::BarUse::Corner ? "11" : "00"; },
          "shape code of ISO 3766: 00 straight, 11 two legs"),
  };
};

template <>
struct Shown<steel::BarTotal> {
  using Of = steel::BarTotal;
  static constexpr std::string_view name = "bar_total";
  static constexpr std::string_view description = "All bars of one size, without dowels.";
  static constexpr auto fields = std::tuple{
      shown("size", &Of::size),
      shown("count", &Of::count),
      shown("length", &Of::length),
      shown("grams", &Of::grams),
  };
};

template <>
struct Shown<steel::LapChoice> {
  using Of = steel::LapChoice;
  static constexpr std::string_view name = "lap_choice";
  static constexpr std::string_view description = "What one lap rule comes to.";
  static constexpr auto fields = std::tuple{
      shown("rule", [](const View&, const Of& of) { return of.by.rule; }),
      shown(
          "steel_psi",
          [](const View&, const Of& of) {
            return of.by.steel ? std::optional((of.by.steel->parts + Stress::kPerPsi / 2) / Stress::kPerPsi)
                               : std::nullopt;
          },
          "the stress or yield strength it is filled with, to a pound on the square inch"),
      shown("length", &Of::length),
  };
};

template <>
struct Shown<steel::LapTable> {
  using Of = steel::LapTable;
  static constexpr std::string_view name = "lap_table";
  static constexpr std::string_view description =
      "What the lap rules come to for the bar of its kind that has least masonry round it.";
  static constexpr auto fields = std::tuple{
      shown("use", &Of::use),
      shown("size", &Of::size),
      shown("side",
            [](const View& view, const Of& of) {
              return of.wall < 0 ? std::nullopt : std::optional<std::string_view>(view.wall(of.wall).name);
            }),
      shown("clear", &Of::clear, "the least of cover and clear space between lapped bars"),
      shown("choices", &Of::choices),
  };
};

template <>
struct Shown<steel::Unsaid> {
  using Of = steel::Unsaid;
  static constexpr std::string_view name = "bars_unsaid";
  static constexpr std::string_view description = "What the job does not say of bars.";
  static constexpr auto fields = std::tuple{
      shown("text", [](const View& view, const Of& of) { return words::told(of.says, view.reader()); }),
      shown("place", &Of::place, "JSON pointer of the field"),
  };
};

template <>
struct Shown<supply::CutPattern> {
  using Of = supply::CutPattern;
  static constexpr std::string_view name = "cut_pattern";
  static constexpr std::string_view description = "One way to cut a bar.";
  static constexpr auto fields = std::tuple{
      shown("times", &Of::times),
      shown("cuts", &Of::cuts, "of each of the marks"),
      shown("left", &Of::left, "what remains of one bar"),
  };
};

template <>
struct Shown<BarsFromStock> {
  using Of = BarsFromStock;
  static constexpr std::string_view name = "bars_from_stock";
  static constexpr std::string_view description = "Bars of one size to buy, and what is cut from each.";
  static constexpr auto fields = std::tuple{
      shown("size", &Of::size),
      shown(
          "bars", [](const View&, const Of& of) { return of.plan.bars; }, "to buy"),
      shown(
          "least", [](const View&, const Of& of) { return of.plan.least; }, "no plan takes fewer"),
      shown(
          "marks",
          [](const View&, const Of& of) {
            std::vector<std::int32_t> marks = of.marks;
            for (std::int32_t& mark : marks) ++mark;
            return marks;
          },
          "the first is mark 1"),
      shown("patterns", [](const View&, const Of& of) -> const auto& { return of.plan.patterns; }),
  };
};

template <>
struct Shown<steel::BarPieces> {
  using Of = steel::BarPieces;
  static constexpr std::string_view name = "bar_pieces";
  static constexpr std::string_view description =
      "Bars as they are cut, by the lap rule that the job names. Dowels below the bearing are as the drawings say.";
  static constexpr auto fields = std::tuple{
      shown(
          "stock", [](const View&, const Of& of) { return of.stock.length; }, "the longest bar sold"),
      shown(
          "stock_stated", [](const View&, const Of& of) { return of.stock.stated; }, "by the job; else assumed"),
      shown(
          "kerf", [](const View&, const Of& of) { return of.kerf.length; }, "what a cut takes of a bar"),
      shown(
          "kerf_stated", [](const View&, const Of& of) { return of.kerf.stated; }, "by the job; else assumed"),
      shown(
          "end_cover", [](const View&, const Of& of) { return of.end_cover.length; },
          "from a bar's end to the masonry's"),
      shown(
          "end_cover_stated", [](const View&, const Of& of) { return of.end_cover.stated; },
          "by the job; else assumed"),
      shown("marks", &Of::marks, "the first is mark 1"),
      shown("totals", &Of::totals),
      shown("laps", &Of::laps),
      shown("unsaid", &Of::unsaid),
      shown("pieces", [](const View& view, const Of& of) { return filled(view, of.pieces); }),
  };
};

template <>
struct Shown<steel::WireStretch> {
  using Of = steel::WireStretch;
  static constexpr std::string_view name = "wire_stretch";
  static constexpr std::string_view description = "Joint reinforcement without a break, in the bed on top of a course.";
  static constexpr auto fields = std::tuple{
      side("side", &Of::wall),
      shown("course", &Of::course, "whose top it lies on"),
      shown("from", &Of::from, "of its straight pieces along the side"),
      shown("to", &Of::to),
      shown("at_start", &Of::at_start, "corner: it laps the corner's leg; else it stops there"),
      shown("at_end", &Of::at_end),
      shown("pieces", &Of::pieces, "0: the corners' legs fill it"),
      shown("last", &Of::last, "length of the last piece; the others are as long as the stock"),
  };
};

template <>
struct Shown<steel::Wires> {
  using Of = steel::Wires;
  static constexpr std::string_view name = "wires";
  static constexpr std::string_view description = "Joint reinforcement by course, as pieces.";
  static constexpr auto fields = std::tuple{
      shown(
          "stock", [](const View&, const Of& of) { return of.stock.length; }, "length that it is sold in"),
      shown(
          "stock_stated", [](const View&, const Of& of) { return of.stock.stated; }, "by the job; else assumed"),
      shown("lap", [](const View&, const Of& of) { return of.lap.length; }),
      shown(
          "lap_stated", [](const View&, const Of& of) { return of.lap.stated; },
          "by the job; else by rule \"wire-lap\""),
      shown(
          "leg", [](const View&, const Of& of) { return of.leg.length; }, "of a corner, along the outer face"),
      shown(
          "leg_stated", [](const View&, const Of& of) { return of.leg.stated; }, "by the job; else assumed"),
      shown("corners_are", &Of::corners_are),
      shown("corners_stated", &Of::corners_stated, "by the job; else assumed"),
      shown("courses", &Of::courses, "whose tops it lies on"),
      shown("corner_count", &Of::corner_count, "pieces round corners, of all courses"),
      shown("tees_are", &Of::tees_are),
      shown("tees_stated", &Of::tees_stated, "by the job; else assumed"),
      shown("tee_count", &Of::tee_count, "pieces where inner walls meet others, of all courses"),
      shown("pieces", &Of::pieces, "straight ones"),
      shown("to_buy", &Of::to_buy, "stock lengths that all is cut from"),
      shown("unsaid", &Of::unsaid, "what keeps them from being counted"),
      shown(
          "stretches", [](const View& view, const Of& of) { return filled(view, of.stretches); },
          "by course, side, place"),
  };
};

inline const Junction& junction_of(const View& view, std::int32_t index) {
  return view.answer.building.junctions[static_cast<std::size_t>(index)];
}

template <>
struct Shown<steel::Tie> {
  using Of = steel::Tie;
  static constexpr std::string_view name = "tie";
  static constexpr std::string_view description = "A tie of an inner wall, in the bed on top of a course.";
  static constexpr auto fields = std::tuple{
      shown("side",
            [](const View& view, const Of& of) { return view.wall(junction_of(view, of.junction).abutting).name; }),
      shown(
          "to", [](const View& view, const Of& of) { return view.wall(junction_of(view, of.junction).main).name; },
          "the wall that it meets"),
      shown("course", &Of::course),
  };
};

template <>
struct Shown<steel::Ties> {
  using Of = steel::Ties;
  static constexpr std::string_view name = "ties";
  static constexpr std::string_view description = "Ties where inner walls are butted and tied.";
  static constexpr auto fields = std::tuple{
      shown("every", &Of::every, "courses, as the job says; absent: it does not"),
      shown("ties", &Of::ties, "by course"),
      shown(
          "unsaid",
          [](const View& view, const Of& of) {
            std::vector<std::string> names;
            for (const std::int32_t one : of.unsaid) names.push_back(view.wall(junction_of(view, one).abutting).name);
            return names;
          },
          "inner walls that are tied by nothing that the job says, once for each end"),
  };
};

}  // namespace stringcourse::document
