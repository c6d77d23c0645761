#pragma once
// Field tables of what the readings say: tape, levels, bed, dowels, where the building sits on the slab.
#include "document/shown_layout.hpp"
#include "measure/metres.hpp"
#include "measure/notation.hpp"
#include "measure/volume.hpp"
#include "sheet/hook_words.hpp"

namespace stringcourse::document {

/// Whole thousandths of a number.
inline std::int64_t thousandths(double value) { return static_cast<std::int64_t>(value * 1000 + (value < 0 ? -0.5 : 0.5)); }

inline const std::string& corner_name(const View& view, int corner) { return view.building().corners[static_cast<std::size_t>(corner)].name; }
/// The two corners of a line.
using LineNames = std::array<std::string_view, 2>;
inline LineNames line_names(const View& view, int from, int to) { return {corner_name(view, from), corner_name(view, to)}; }

enum class LineUse { Adjusted, Blunder, Slip, Read };
enum class TapeAgreement { Agree, TooFar, TooNear, Unchecked, Disagree };
}  // namespace stringcourse::document
namespace stringcourse {
template <>
inline constexpr std::array<std::string_view, 4> kEnumNames<document::LineUse>{"adjusted", "blunder", "slip", "read"};
template <>
inline constexpr std::array<std::string_view, 5> kEnumNames<document::TapeAgreement>{"agree", "too-far", "too-near", "unchecked", "disagree"};
}  // namespace stringcourse
namespace stringcourse::document {

inline constexpr std::string_view kExpanded = "expanded, k = 2";

[[nodiscard]] inline bool is_adjusted(const View& view) { return view.answer.found.tape.state == ground::TapeAsFound::State::Adjusted; }
/// What only an adjusted net has.
template <class Value>
std::optional<Value> if_adjusted(const ground::TapeAsFound& of, Value value) {
  return of.state == ground::TapeAsFound::State::Adjusted ? std::optional<Value>(std::move(value)) : std::nullopt;
}

template <>
struct Shown<ground::TapedLine> {
  using Of = ground::TapedLine;
  static constexpr std::string_view name = "taped_line";
  static constexpr std::string_view description = "One taping of a side or diagonal.";
  static constexpr auto fields = std::tuple{
      shown("reading", &Of::entry, "its number in the job's readings, from 0"),
      shown("from", [](const View& view, const Of& of) -> const std::string& { return corner_name(view, of.from); }, "corner"),
      shown("to", [](const View& view, const Of& of) -> const std::string& { return corner_name(view, of.to); }, "corner"),
      shown("read", &Of::read),
      rounded("expected", &Of::expected, "by the plan"),
      shown("use", [](const View& view, const Of& of) {
        return of.slip ? LineUse::Slip : of.wrong ? LineUse::Blunder : is_adjusted(view) ? LineUse::Adjusted : LineUse::Read;
      }, "blunder, slip: left out"),
      shown("meant", [](const View&, const Of& of) { return of.slip ? std::optional(of.slip->length) : std::nullopt; },
            "slip: what was probably meant"),
      shown("against_first", [](const View&, const Of& of) { return of.again ? std::optional(Rounded{*of.again}) : std::nullopt; },
            "a second taping less the first"),
      shown("agrees_with_first", [](const View&, const Of& of) { return of.again ? std::optional(of.agrees) : std::nullopt; }),
      shown("correction", [](const View& view, const Of& of) {
        return is_adjusted(view) && !of.slip ? std::optional(Rounded{length_of(of.residual.value)}) : std::nullopt;
      }, "adjusted minus read"),
      shown("times_its_doubt_thousandths", [](const View& view, const Of& of) {
        return is_adjusted(view) && !of.slip ? std::optional(thousandths(of.residual.standardised)) : std::nullopt;
      }, "standardised residual, in thousandths"),
  };
};

/// The uncertainty of a peg's place.
struct Ellipse {
  const ground::PegMove& move;
};
template <>
struct Shown<Ellipse> {
  static constexpr std::string_view name = "ellipse";
  static constexpr std::string_view description = "The readings' own uncertainty, k = 2; direction of the longer half axis.";
  static constexpr auto fields = std::tuple{
      shown("longer", [](const View&, const Ellipse& of) { return Rounded{of.move.longer}; }),
      shown("shorter", [](const View&, const Ellipse& of) { return Rounded{of.move.shorter}; }),
      shown("east_thousandths", [](const View&, const Ellipse& of) { return thousandths(of.move.direction.x); }),
      shown("north_thousandths", [](const View&, const Ellipse& of) { return thousandths(of.move.direction.y); }),
  };
};

template <>
struct Shown<ground::PegMove> {
  using Of = ground::PegMove;
  static constexpr std::string_view name = "peg_move";
  static constexpr std::string_view description = "How a peg is to be moved.";
  static constexpr auto fields = std::tuple{
      shown("corner", [](const View& view, const Of& of) -> const std::string& { return corner_name(view, of.corner); }),
      shown("text", [](const View& view, const Of& of) { return ground::move_text(view.building(), of); }, "along its walls"),
      rounded("east", &Of::east),
      rounded("north", &Of::north),
      rounded("doubt", &Of::doubt, kExpanded),
      shown("within_doubt", &Of::within_doubt, "the tape cannot tell it from standing right"),
      rounded("off", &Of::off, "how far it stands from its place"),
      rounded("allowed", &Of::allowed),
      shown("verdict", &Of::verdict),
      shown("ellipse", [](const View&, const Of& of) { return Ellipse{of}; }),
  };
};

template <>
struct Shown<ground::Diagonals> {
  using Of = ground::Diagonals;
  static constexpr std::string_view name = "diagonals";
  static constexpr std::string_view description = "Two diagonals of a rectangle, both taped.";
  static constexpr auto fields = std::tuple{
      shown("longer", [](const View& view, const Of& of) { return line_names(view, of.one[0], of.one[1]); }),
      shown("shorter", [](const View& view, const Of& of) { return line_names(view, of.other[0], of.other[1]); }),
      rounded("difference", &Of::difference),
      rounded("allowed", &Of::allowed),
      rounded("doubt", &Of::doubt, "k = 2"),
      shown("verdict", &Of::verdict),
  };
};

inline std::vector<LineNames> lines_named(const View& view, const std::vector<std::array<int, 2>>& lines) {
  std::vector<LineNames> names;
  for (const auto& [from, to] : lines) names.push_back(line_names(view, from, to));
  return names;
}
inline TapeAgreement agreement_of(const ground::TapeAsFound& tape) {
  if (tape.suspicion == ground::Suspicion::NotLocatable) return TapeAgreement::Disagree;
  return static_cast<TapeAgreement>(tape.agreement);
}
static_assert(static_cast<int>(ground::Agreement::Unchecked) == static_cast<int>(TapeAgreement::Unchecked));

template <>
struct Shown<ground::TapeAsFound> {
  using Of = ground::TapeAsFound;
  static constexpr std::string_view name = "tape_as_found";
  static constexpr std::string_view description = "What sides and diagonals as taped come to.";
  static constexpr auto fields = std::tuple{
      shown("state", &Of::state),
      shown("verdict", &Of::verdict,
            "of shape and size: not-read as long as a corner, a line that holds the shape or one that checks it is lacking (see missing); "
            "cannot-tell also while tapings disagree"),
      shown("lines", &Of::lines),
      shown("missing", [](const View& view, const Of& of) { return lines_named(view, of.missing); },
            "lines still to be taped: they would hold the shape, or check it"),
      shown("held", [](const View& view, const Of& of) {
        return is_adjusted(view) ? std::optional<std::string_view>(corner_name(view, of.held)) : std::nullopt;
      }, "the corner whose peg stays"),
      shown("beyond_need", [](const View&, const Of& of) { return if_adjusted(of, of.freedom); }, "readings beyond what the shape needs"),
      shown("agreement", [](const View&, const Of& of) { return if_adjusted(of, agreement_of(of)); },
            "disagree: a blunder that these readings cannot place"),
      shown("s0_thousandths", [](const View&, const Of& of) { return if_adjusted(of, thousandths(of.s0)); },
            "size of the corrections against the stated doubt, in thousandths of 1"),
      shown("s0_least_thousandths", [](const View&, const Of& of) { return if_adjusted(of, thousandths(of.s0_least)); }),
      shown("s0_most_thousandths", [](const View&, const Of& of) { return if_adjusted(of, thousandths(of.s0_most)); },
            "95 of 100 right jobs lie between these two"),
      shown("tape_again", [](const View& view, const Of& of) {
        std::vector<LineNames> again;
        for (const std::size_t line : of.tape_again) again.push_back(line_names(view, of.lines[line].from, of.lines[line].to));
        return if_adjusted(of, std::move(again));
      }, "lines to tape again, the first first"),
      shown("moves", [](const View&, const Of& of) { return if_adjusted(of, of.moves); }, "none while tapings disagree"),
      shown("diagonals", [](const View&, const Of& of) { return if_adjusted(of, of.diagonals); },
            "pairs of diagonals of a rectangle, both taped"),
  };
};

template <>
struct Shown<ground::Station> {
  using Of = ground::Station;
  static constexpr std::string_view name = "station";
  static constexpr std::string_view description = "A point that the rod stood on.";
  static constexpr auto fields = std::tuple{
      shown("name", &Of::name),
      shown("side", [](const View& view, const Of& of) { return wall_or_none(view, of.place ? of.place->wall : -1); }),
      shown("at", [](const View&, const Of& of) { return of.place ? std::optional(of.place->along) : std::nullopt; }, "from the side's start"),
      shown("surface", &Of::surface),
      rounded("height", &Of::height, "over the datum"),
      rounded("doubt", &Of::doubt, kExpanded),
  };
};

template <>
struct Shown<ground::UnitBed> {
  using Of = ground::UnitBed;
  static constexpr std::string_view name = "unit_bed";
  static constexpr std::string_view description = "The bed under one unit of course 1.";
  static constexpr auto fields = std::tuple{
      side("side", &Of::wall),
      shown("number", &Of::number),
      rounded("thinnest", &Of::thinnest),
      rounded("thickest", &Of::thickest),
  };
};

template <>
struct Shown<ground::BedChoice> {
  using Of = ground::BedChoice;
  static constexpr std::string_view name = "bed_choice";
  static constexpr std::string_view description = "What can be done where the bed does not fit.";
  static constexpr auto fields = std::tuple{
      shown("what", &Of::what),
      shown("text", [](const View& view, const Of& of) { return ground::choice_text(of, view.tape()); }),
      rounded("top", &Of::top),
      rounded("margin", &Of::margin),
      shown("mortar", [](const View& view, const Of& of) { return bagged_text(of.mortar_cubic_centimetres, Bagged::Mortar, view.tape()); },
            "in the job's own volumes"),
      shown("concrete", [](const View& view, const Of& of) {
        return of.concrete_cubic_centimetres > 0 ? std::optional(bagged_text(of.concrete_cubic_centimetres, Bagged::Concrete, view.tape())) : std::nullopt;
      }),
      shown("mortar_cubic_centimetres", &Of::mortar_cubic_centimetres, "of full beds under the units read"),
      shown("concrete_cubic_centimetres", &Of::concrete_cubic_centimetres, "of a strip or curb"),
  };
};

template <>
struct Shown<ground::BedAsFound> {
  using Of = ground::BedAsFound;
  static constexpr std::string_view name = "bed_as_found";
  static constexpr std::string_view description = "The bed joint of the first course, by the bearing as read.";
  static constexpr auto fields = std::tuple{
      shown("verdict", &Of::verdict,
            "not-read as long as the bearing under some unit of course 1 is not read, unless what was read is out of range already"),
      shown("least", [](const View&, const Of& of) { return Rounded{of.range.least}; }),
      shown("most", [](const View&, const Of& of) { return Rounded{of.range.most}; }),
      shown("top", [](const View&, const Of& of) { return Rounded{of.level.top}; }, "of the bed joint, over the datum"),
      shown("margin", [](const View&, const Of& of) { return Rounded{of.level.margin}; }, "below zero: outside by so much"),
      shown("thinnest", [](const View&, const Of& of) { return Rounded{of.level.thinnest}; }),
      shown("thickest", [](const View&, const Of& of) { return Rounded{of.level.thickest}; }),
      rounded("doubt", &Of::doubt, "of one reading against another, expanded, k = 2"),
      shown("units_without", &Of::units_without, "units of course 1 whose bearing was not read"),
      shown("lacks", &Of::lacks, "where the rod is still to be read"),
      shown("units", &Of::units),
      shown("choices", &Of::choices),
  };
};

template <>
struct Shown<ground::Instrument> {
  using Of = ground::Instrument;
  static constexpr std::string_view name = "instrument";
  static constexpr std::string_view description = "What a two-peg test tells of the level.";
  static constexpr auto fields = std::tuple{
      rounded("over", &Of::over, "how far it looks up over the sight, below zero: down"),
      shown("sight", &Of::sight),
      rounded("doubt", &Of::doubt, kExpanded),
      shown("level", &Of::level, "the test cannot tell it from level"),
      shown("corrected", &Of::corrected, "rod readings corrected by it"),
  };
};

template <>
struct Shown<ground::DoorFloor> {
  using Of = ground::DoorFloor;
  static constexpr std::string_view name = "door_floor";
  static constexpr std::string_view description = "A doorway whose floor was read.";
  static constexpr auto fields = std::tuple{
      shown("opening", [](const View& view, const Of& of) -> const std::string& { return view.opening(of.opening).name; }),
      rounded("tall_least", &Of::tall_least, "floor as read to soffit"),
      rounded("tall_most", &Of::tall_most),
      shown("planned", [](const View& view, const Of& of) { return view.opening(of.opening).height(); }),
      rounded("doubt", &Of::doubt),
      shown("verdict", &Of::verdict),
  };
};

template <>
struct Shown<ground::LoopVerdict> {
  using Of = ground::LoopVerdict;
  static constexpr std::string_view name = "loop";
  static constexpr std::string_view description = "A round of rod readings that comes back to where it began.";
  static constexpr auto fields = std::tuple{
      rounded("misclosure", &Of::misclosure),
      rounded("allowed", &Of::allowed),
      shown("closes", &Of::closes),
  };
};

struct Setup {
  const std::string& name;
  Length height;
};
template <>
struct Shown<Setup> {
  static constexpr std::string_view name = "setup";
  static constexpr std::string_view description = "Where the instrument stood.";
  static constexpr auto fields = std::tuple{
      shown("name", [](const View&, const Setup& of) -> const std::string& { return of.name; }),
      rounded("height", &Setup::height, "of the instrument over the datum"),
  };
};

template <>
struct Shown<ground::LevelsAsFound> {
  using Of = ground::LevelsAsFound;
  static constexpr std::string_view name = "levels_as_found";
  static constexpr std::string_view description = "What rod readings come to.";
  static constexpr auto fields = std::tuple{
      shown("datum", &Of::datum, "the station of height zero"),
      shown("stations", &Of::stations),
      shown("loose", &Of::loose, "stations that no chain of readings ties to the datum"),
      shown("loops", &Of::loops),
      shown("setups", [](const View&, const Of& of) {
        std::vector<Setup> setups;
        for (std::size_t k = 0; k < of.setups.size(); ++k) setups.push_back({of.setups[k], of.instruments[k]});
        return setups;
      }),
      shown("instrument", &Of::instrument, "absent without a two-peg test"),
      shown("doors", &Of::doors, "doorways whose floor was read"),
      shown("bed", &Of::bed),
  };
};

template <>
struct Shown<steel::FoundDowel> {
  using Of = steel::FoundDowel;
  static constexpr std::string_view name = "found_dowel";
  static constexpr std::string_view description = "A dowel as found, and what follows.";
  static constexpr auto fields = std::tuple{
      shown("reading", &Of::entry),
      side("side", &Of::wall),
      shown("number", &Of::number, "of the list of dowels that it is taken for; 0: none"),
      shown("at", &Of::along, "from the side's start"),
      shown("off_face", &Of::off_face),
      shown("off_place", [](const View&, const Of& of) { return of.has_bar ? std::optional(Rounded{of.off_place}) : std::nullopt; },
            "toward the side's end above zero; absent: no bar comes down to this side"),
      rounded("room", &Of::room, "clear of webs and shells beyond the clearance; below zero: too near"),
      shown("action", &Of::action),
      shown("text", [](const View& view, const Of& of) { return steel::action_text(of, view.tape()); }),
  };
};

template <>
struct Shown<steel::DowelLayout> {
  using Of = steel::DowelLayout;
  static constexpr std::string_view name = "dowel_layout";
  static constexpr std::string_view description = "A layout in which more of the dowels found stand.";
  static constexpr auto fields = std::tuple{
      shown("text", [](const View&, const Of& of) { return steel::dowel_layout_text(of); }),
      shown("stands", &Of::stands, "dowels that stand in it"),
      shown("cuts", &Of::cuts, "more than now"),
      shown("short_laps", &Of::short_laps),
      shown("bars", &Of::bars),
      shown("proven", &Of::proven),
      shown("kept", &Of::kept, "ids of readings"),
  };
};

/// "5/8\" east, 1/2\" south"; "stays" where both are nothing on the tape.
[[nodiscard]] std::string fit_text(const ground::SlabFit& fit, Tape tape);

template <>
struct Shown<ground::SlabFit> {
  using Of = ground::SlabFit;
  static constexpr std::string_view name = "slab_fit";
  static constexpr std::string_view description = "Where the building sits on the slab.";
  static constexpr auto fields = std::tuple{
      shown("text", [](const View& view, const Of& of) { return fit_text(of, view.tape()); }, "the shift; east is right on the plan, north up"),
      rounded("east", &Of::east, "shift of the plan's middle"),
      rounded("north", &Of::north),
      shown("turn_micrometres_in_a_metre", [](const View&, const Of& of) {
        return static_cast<std::int64_t>(of.turn * 1e6 + (of.turn < 0 ? -0.5 : 0.5));
      }, "to the left"),
      rounded("room", &Of::room, "least room of faces and dowels after it; below zero: missing"),
      rounded("room_before", &Of::room_before, "as planned"),
  };
};

/// What the readings say, together.
struct Ground {};
template <>
struct Shown<Ground> {
  static constexpr std::string_view name = "ground";
  static constexpr std::string_view description = "What the job's readings say of the ground as it is.";
  static constexpr auto fields = std::tuple{
      shown("tape", [](const View& view, const Ground&) -> const auto& { return view.answer.found.tape; }),
      shown("levels", [](const View& view, const Ground&) -> const auto& { return view.answer.found.levels; }),
      shown("dowels", [](const View& view, const Ground&) -> const auto& { return view.answer.found_dowels; }),
      shown("dowel_layouts", [](const View& view, const Ground&) -> const auto& { return view.answer.dowel_search.layouts; },
            "layouts in which more of the dowels found stand: the most first, each later one cheaper; steel.kept_dowels of the job asks for one"),
      shown("fit_lacks", [](const View& view, const Ground&) {
        const auto& lacks = view.answer.slab.lacks;
        return lacks.empty() ? std::nullopt : std::optional(lacks);
      }, "what is still to be read before it is known where the walls sit on the slab"),
      shown("fit", [](const View& view, const Ground&) -> const auto& { return view.answer.slab.fit; }, "absent without edge readings"),
  };
};

/// A length rounded inwards, as printed; its nanometres are exact.
struct Usable {
  Length length;
};
template <>
struct Shown<Usable> {
  static constexpr std::string_view name = "usable_length";
  static constexpr std::string_view description = "A room as it may be used.";
  static constexpr auto fields = std::tuple{
      shown("text", [](const View& view, const Usable& of) { return tape_text(steel::usable(of.length, view.tape()), view.tape()); },
            "rounded inwards, in the job's tape"),
      shown("nm", [](const View&, const Usable& of) { return of.length.in_nanometres(); }, "not rounded to the tape"),
  };
};

template <>
struct Shown<steel::DowelRoom> {
  using Of = steel::DowelRoom;
  static constexpr std::string_view name = "dowel_room";
  static constexpr std::string_view description =
      "How far the dowel may be out each way and keep the grout's clearance in the cells of courses 1 and 2; below zero: it lacks so much.";
  static constexpr auto fields = std::tuple{
      shown("to_start", [](const View&, const Of& of) { return Usable{of.to_start}; }, "toward the side's start"),
      shown("to_end", [](const View&, const Of& of) { return Usable{of.to_end}; }, "toward its end"),
      shown("to_outer", [](const View&, const Of& of) { return Usable{of.to_outer}; }, "toward the outer face"),
      shown("to_inner", [](const View&, const Of& of) { return Usable{of.to_inner}; }, "toward the inner face"),
  };
};

template <>
struct Shown<steel::InCell> {
  using Of = steel::InCell;
  static constexpr std::string_view name = "in_cell";
  static constexpr std::string_view description = "The cell that a dowel comes up in.";
  static constexpr auto fields = std::tuple{
      side("side", &Of::wall, "whose unit it is: at a corner or in a slot another side's"),
      shown("unit", &Of::unit, kUnitNumber),
      shown("cell", &Of::cell, "from the end nearer to that side's start"),
  };
};

template <>
struct Shown<steel::Dowel> {
  using Of = steel::Dowel;
  static constexpr std::string_view name = "dowel";
  static constexpr std::string_view description = "One dowel to be set, or as it was poured.";
  static constexpr auto fields = std::tuple{
      side("side", &Of::wall),
      shown("number", &Of::number),
      shown("measured_from", [](const View& view, const Of& of) { return sheet::hook_text(view.building(), of.wall, sheet::kEnglish); },
            "what stands at zero of the side's numbers: a corner, or the face of the wall that an inner wall starts from"),
      shown("at", &Of::along, "centre, from there along the side's outer face"),
      shown("off_face", &Of::off_face, "centre, in from the outer face; of an inner wall from either"),
      shown("first_course", &Of::first, "absent: the course has no cell for it"),
      shown("second_course", &Of::second, "absent: the course has no cell for it"),
      shown("room", &Of::room),
  };
};

template <>
struct Shown<steel::DowelNow> {
  using Of = steel::DowelNow;
  static constexpr std::string_view name = "dowel_now";
  static constexpr std::string_view description = "A poured dowel against the layout as it is now.";
  static constexpr auto fields = std::tuple{
      shown("side", [](const View& view, const Of& of) -> const std::string& { return view.wall(view.answer.dowels[of.dowel].wall).name; }),
      shown("number", [](const View& view, const Of& of) { return view.answer.dowels[of.dowel].number; }),
      shown("found_at", &Of::found, "as last read, from the side's start; missing: not read"),
      shown("bar_at", &Of::bar, "of the nearest bar within 2 in; missing: no bar comes down to it"),
  };
};

struct BarAlone {
  const steel::Dowel& bar;
};
template <>
struct Shown<BarAlone> {
  static constexpr std::string_view name = "bar_without_dowel";
  static constexpr std::string_view description = "A bar that no poured dowel is for.";
  static constexpr auto fields = std::tuple{
      shown("side", [](const View& view, const BarAlone& of) -> const std::string& { return view.wall(of.bar.wall).name; }),
      shown("at", [](const View&, const BarAlone& of) { return of.bar.along; }),
  };
};

template <>
struct Shown<steel::DowelsNow> {
  using Of = steel::DowelsNow;
  static constexpr std::string_view name = "poured";
  static constexpr std::string_view description =
      "Dowels stay where they were poured, in the order of the list of dowels; where each was found and where its bar comes down in this layout.";
  static constexpr auto fields = std::tuple{
      shown("dowels", &Of::dowels),
      shown("bars_without_dowel", [](const View&, const Of& of) {
        std::vector<BarAlone> bars;
        for (const steel::Dowel& bar : of.without) bars.push_back({bar});
        return bars;
      }),
  };
};

}  // namespace stringcourse::document
