#pragma once
// Field tables of what the readings say: tape, and with levels and dowels the whole; where the building sits on the
// slab.
#include "document/shown_dowels.hpp"
#include "document/shown_levels.hpp"
#include "measure/metres.hpp"
#include "measure/notation.hpp"

namespace stringcourse::document {

/// Whole thousandths of a number.
inline std::int64_t thousandths(double value) {
  return static_cast<std::int64_t>(value * 1000 + (value < 0 ? -0.5 : 0.5));
}

inline const std::string& corner_name(const View& view, int corner) {
  return view.building().corners[static_cast<std::size_t>(corner)].name;
}
/// The two corners of a line.
using LineNames = std::array<std::string_view, 2>;
inline LineNames line_names(const View& view, int from, int to) {
  return {corner_name(view, from), corner_name(view, to)};
}

enum class LineUse { Adjusted, Blunder, Slip, Read };
enum class TapeAgreement { Agree, TooFar, TooNear, Unchecked, Disagree };
}  // namespace stringcourse::document
namespace stringcourse {
template <>
inline constexpr std::array<std::string_view, 4> kEnumNames<document::LineUse>{"adjusted", "blunder", "slip", "read"};
template <>
inline constexpr std::array<std::string_view, 5> kEnumNames<document::TapeAgreement>{"agree", "too-far", "too-near",
                                                                                     "unchecked", "disagree"};
}  // namespace stringcourse
namespace stringcourse::document {

[[nodiscard]] inline bool is_adjusted(const View& view) {
  return view.answer.found.tape.state == ground::TapeAsFound::State::Adjusted;
}
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
      shown(
          "from", [](const View& view, const Of& of) -> const std::string& { return corner_name(view, of.from); },
          "corner"),
      shown(
          "to", [](const View& view, const Of& of) -> const std::string& { return corner_name(view, of.to); },
          "corner"),
      shown("read", &Of::read),
      rounded("expected", &Of::expected, "by the plan"),
      shown(
          "use",
          [](const View& view, const Of& of) {
            return of.slip             ? LineUse::Slip
                   : of.wrong          ? LineUse::Blunder
                   : is_adjusted(view) ? LineUse::Adjusted
                                       : LineUse::Read;
          },
          "blunder, slip: left out"),
      shown(
          "meant", [](const View&, const Of& of) { return of.slip ? std::optional(of.slip->length) : std::nullopt; },
          "slip: what was probably meant"),
      shown(
          "against_first",
          [](const View&, const Of& of) { return of.again ? std::optional(Rounded{*of.again}) : std::nullopt; },
          "a second taping less the first"),
      shown("agrees_with_first",
            [](const View&, const Of& of) { return of.again ? std::optional(of.agrees) : std::nullopt; }),
      shown(
          "correction",
          [](const View& view, const Of& of) {
            return is_adjusted(view) && !of.slip ? std::optional(Rounded{length_of(of.residual.value)}) : std::nullopt;
          },
          "adjusted minus read"),
      shown(
          "times_its_doubt_thousandths",
          [](const View& view, const Of& of) {
            return is_adjusted(view) && !of.slip ? std::optional(thousandths(of.residual.standardised)) : std::nullopt;
          },
          "standardised residual, in thousandths"),
  };
};

/// The uncertainty of a peg's place.
struct Ellipse {
  const ground::PegMove& move;
};
template <>
struct Shown<Ellipse> {
  static constexpr std::string_view name = "ellipse";
  static constexpr std::string_view description =
      "The readings' own uncertainty, k = 2; direction of the longer half axis.";
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
      shown("corner",
            [](const View& view, const Of& of) -> const std::string& { return corner_name(view, of.corner); }),
      shown(
          "text", [](const View& view, const Of& of) { return ground::move_said(view.building(), of); },
          "along its walls"),
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

template <>
struct Shown<ground::ShapeChoice> {
  using Of = ground::ShapeChoice;
  static constexpr std::string_view name = "shape_choice";
  static constexpr std::string_view description = "What can be done where corners stand off their places.";
  static constexpr auto fields = std::tuple{
      shown("what", &Of::what),
      shown("text", &Of::says),
      shown("gives_up", &Of::gives_up, "what it gives up, or asks for; or \"\""),
      shown("recommended", &Of::recommended),
      shown("places", &Of::places, "pegs that move, lines that are chalked"),
      rounded("most", &Of::most, "the farthest move"),
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
            "of shape and size: not-read as long as a corner, a line that holds the shape or one that checks it is "
            "lacking (see missing); "
            "cannot-tell also while tapings disagree"),
      shown("lines", &Of::lines),
      shown(
          "missing", [](const View& view, const Of& of) { return lines_named(view, of.missing); },
          "lines still to be taped: they would hold the shape, or check it"),
      shown(
          "held",
          [](const View& view, const Of& of) {
            return is_adjusted(view) ? std::optional<std::string_view>(corner_name(view, of.held)) : std::nullopt;
          },
          "the corner whose peg stays"),
      shown(
          "beyond_need", [](const View&, const Of& of) { return if_adjusted(of, of.freedom); },
          "readings beyond what the shape needs"),
      shown(
          "agreement", [](const View&, const Of& of) { return if_adjusted(of, agreement_of(of)); },
          "disagree: a blunder that these readings cannot place"),
      shown(
          "s0_thousandths", [](const View&, const Of& of) { return if_adjusted(of, thousandths(of.s0)); },
          "size of the corrections against the stated doubt, in thousandths of 1"),
      shown("s0_least_thousandths",
            [](const View&, const Of& of) { return if_adjusted(of, thousandths(of.s0_least)); }),
      shown(
          "s0_most_thousandths", [](const View&, const Of& of) { return if_adjusted(of, thousandths(of.s0_most)); },
          "95 of 100 right jobs lie between these two"),
      shown(
          "tape_again",
          [](const View& view, const Of& of) {
            std::vector<LineNames> again;
            for (const std::size_t line : of.tape_again)
              again.push_back(line_names(view, of.lines[line].from, of.lines[line].to));
            return if_adjusted(of, std::move(again));
          },
          "lines to tape again, the first first"),
      shown(
          "moves", [](const View&, const Of& of) { return if_adjusted(of, of.moves); }, "none while tapings disagree"),
      shown(
          "diagonals", [](const View&, const Of& of) { return if_adjusted(of, of.diagonals); },
          "pairs of diagonals of a rectangle, both taped"),
      shown("choices", &Of::choices, "best first; none where the shape surely fits or is not known"),
  };
};

template <>
struct Shown<ground::ChosenNow> {
  using Of = ground::ChosenNow;
  static constexpr std::string_view name = "chosen_now";
  static constexpr std::string_view description = "A remedy that was chosen, against all that is read by now.";
  static constexpr auto fields = std::tuple{
      shown("text", &Of::says),
      shown("against", &Of::against, "what was read since and says otherwise, or \"\""),
  };
};

template <>
struct Shown<ground::ReadingSaid> {
  using Of = ground::ReadingSaid;
  static constexpr std::string_view name = "reading_said";
  static constexpr std::string_view description = "What one reading says by itself.";
  static constexpr auto fields = std::tuple{
      shown("reading", &Of::entry, "its number in the job's readings, from 0"),
      shown("text", &Of::says),
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
      shown(
          "text", [](const View& view, const Of& of) { return fit_text(of, view.tape()); },
          "the shift; east is right on the plan, north up"),
      rounded("east", &Of::east, "shift of the plan's middle"),
      rounded("north", &Of::north),
      shown(
          "turn_micrometres_in_a_metre",
          [](const View&, const Of& of) {
            return static_cast<std::int64_t>(of.turn * 1e6 + (of.turn < 0 ? -0.5 : 0.5));
          },
          "to the left"),
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
      shown(
          "dowel_layouts",
          [](const View& view, const Ground&) -> const auto& { return view.answer.dowel_search.layouts; },
          "layouts in which more of the dowels found stand: the most first, each later one cheaper; steel.kept_dowels "
          "of the job asks for one"),
      shown(
          "fit_lacks",
          [](const View& view, const Ground&) {
            const auto& lacks = view.answer.slab.lacks;
            return lacks.empty() ? std::nullopt : std::optional(lacks);
          },
          "what is still to be read before it is known where the walls sit on the slab"),
      shown(
          "fit", [](const View& view, const Ground&) -> const auto& { return view.answer.slab.fit; },
          "absent without edge readings"),
      shown(
          "bed_chosen", [](const View& view, const Ground&) -> const auto& { return view.answer.found.bed_chosen; },
          "absent where no remedy of the first bed is chosen"),
      shown(
          "shape_chosen", [](const View& view, const Ground&) -> const auto& { return view.answer.found.shape_chosen; },
          "absent where no remedy of the shape is chosen"),
      shown("said", [](const View& view, const Ground&) -> const auto& { return view.answer.found.said; }),
  };
};

}  // namespace stringcourse::document
