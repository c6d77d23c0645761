#pragma once
// Field tables of the wall as it is laid: what courses are laid by, and what the laid log comes to.
#include "document/shown_course.hpp"

namespace stringcourse::document {

template <>
struct Shown<laying::JointRules> {
  using Of = laying::JointRules;
  static constexpr std::string_view name = "joint_rules";
  static constexpr std::string_view description = "How wide head joints may be.";
  static constexpr auto fields = std::tuple{
      shown("planned", &Of::joint),
      shown("working_least", &Of::working_least),
      shown("working_most", &Of::working_most),
      shown("least", &Of::least),
      shown("most", &Of::most),
  };
};

/// How far units and joints come out otherwise than meant.
struct Spreads {
  const laying::HowLaid& how;
};
template <>
struct Shown<Spreads> {
  static constexpr std::string_view name = "spreads";
  static constexpr std::string_view description = "How far units and joints spread.";
  static constexpr auto fields = std::tuple{
      shown("unit_nm", [](const View&, const Spreads& of) { return nanometres_of(of.how.hand.unit); }),
      shown("joint_nm", [](const View&, const Spreads& of) { return nanometres_of(of.how.hand.joint); }),
      shown("known",
            [](const View&, const Spreads& of) {
              return of.how.spreads_measured ? std::string_view("measured") : std::string_view("assumed, unverified");
            }),
  };
};

using BatchMeasured = std::remove_cvref_t<decltype(*std::declval<laying::HowLaid>().batch)>;
template <>
struct Shown<BatchMeasured> {
  using Of = BatchMeasured;
  static constexpr std::string_view name = "batch";
  static constexpr std::string_view description = "The units as they were measured.";
  static constexpr auto fields = std::tuple{
      shown("units", &Of::units),
      rounded("mean", &Of::mean),
      shown("mean_exact",
            [](const View& view, const Of& of) {
              const Length step = view.tape() == Tape::Inches ? Length::sixty_fourths(1) : Length::nanometres(100'000);
              return exact_text(rounded_to(of.mean, step), view.tape());
            }),
      shown("longer_nm", [](const View& view,
                            const Of& of) { return (of.mean - view.building().series.front().full).in_nanometres(); }),
      shown("doubt_nm", [](const View&, const Of& of) { return nanometres_of(2 * of.doubt); }),
      shown("spread_nm",
            [](const View&, const Of& of) {
              return of.spread ? std::optional(nanometres_of(*of.spread)) : std::nullopt;
            }),
      shown("within_tolerance", &Of::within),
  };
};

template <>
struct Shown<laying::GaugeAsLaid> {
  using Of = laying::GaugeAsLaid;
  /// The next beds, lowest first.
  struct Bed {
    int course = 0;
    Length bed;
  };
  static std::vector<Bed> beds_of(const View&, const Of& of) {
    std::vector<Bed> beds;
    for (std::size_t k = 0; of.beds && k < of.beds->beds.size(); ++k) beds.push_back({of.courses[k], of.beds->beds[k]});
    return beds;
  }
  static constexpr std::string_view name = "gauge";
  static constexpr std::string_view description = "A height of the wall as read, and the beds that bring it back.";
  static constexpr auto fields = std::tuple{
      shown("entry", &Of::entry), side("side", &Of::wall),   shown("course", &Of::course),
      shown("high", &Of::high),   shown("to", &Of::to_what), shown("beds", beds_of),
  };
};
template <>
struct Shown<Shown<laying::GaugeAsLaid>::Bed> {
  using Of = Shown<laying::GaugeAsLaid>::Bed;
  static constexpr std::string_view name = "bed";
  static constexpr std::string_view description = "One bed joint still to be laid.";
  static constexpr auto fields = std::tuple{shown("course", &Of::course), shown("bed", &Of::bed)};
};

template <>
struct Shown<CourseChange> {
  using Of = CourseChange;
  static constexpr std::string_view name = "course_change";
  static constexpr std::string_view description = "Courses that are not as they were printed.";
  static constexpr auto fields = std::tuple{
      side("side", &Of::wall),
      shown("courses", &Of::courses),
      shown("units", &Of::units),
      shown("marks_moved", &Of::marks_moved),
      rounded("farthest", &Of::farthest),
      shown("text", [](const View& view, const Of& of) { return change_said(view.building(), of); }),
  };
};

template <>
struct Shown<laying::Tap> {
  static constexpr std::string_view name = "tap";
  static constexpr std::string_view description = "A corner of the unit to be tapped down.";
  static constexpr auto fields = std::tuple{shown("corner", &laying::Tap::corner), shown("down", &laying::Tap::down)};
};

template <>
struct Shown<laying::SetAsLaid> {
  using Of = laying::SetAsLaid;
  static constexpr std::string_view name = "set_as_laid";
  static constexpr std::string_view description = "How one unit lies, and what sets it right.";
  static constexpr auto fields = std::tuple{
      shown("entry", &Of::entry),
      side("side", &Of::wall),
      shown("course", &Of::course),
      shown("lift", [](const View&, const Of& of) { return of.advice.lift; }),
      shown("taps", [](const View&, const Of& of) { return of.advice.taps; }),
      shown("from_line", &Of::from_line),
  };
};

template <>
struct Shown<laying::ClosurePiece> {
  using Of = laying::ClosurePiece;
  static constexpr std::string_view name = "closure_piece";
  static constexpr std::string_view description = "A unit that closes a gap.";
  static constexpr auto fields = std::tuple{shown("kind", &Of::kind), rounded("length", &Of::length)};
};

template <>
struct Shown<laying::Closure> {
  using Of = laying::Closure;
  static constexpr std::string_view name = "closure";
  static constexpr std::string_view description = "What closes a gap.";
  static constexpr auto fields = std::tuple{
      shown("text", [](const View&, const Of& of) { return laying::closure_said(of); }),
      shown("pieces", &Of::pieces, "one or two, from the gap's near side"),
      shown("last", &Of::last, "which of the pieces is laid last, from 0"),
      rounded("joint", &Of::joint),
      shown(
          "lost_over",
          [](const View&, const Of& of) { return of.lost_over ? std::optional(Rounded{*of.lost_over}) : std::nullopt; },
          "joint below that the joint between the pieces comes nearer to than a quarter unit"),
      shown("lost_lap", [](const View&,
                           const Of& of) { return of.lost_over ? std::optional(Rounded{of.lost_lap}) : std::nullopt; }),
  };
};

template <>
struct Shown<laying::GapAsLaid> {
  using Of = laying::GapAsLaid;
  static constexpr std::string_view name = "gap";
  static constexpr std::string_view description = "A gap as measured.";
  static constexpr auto fields = std::tuple{
      shown("entry", &Of::entry),
      side("side", &Of::wall),
      shown("course", &Of::course),
      shown("measured", &Of::measured),
      opening("opening", &Of::opening, "an opening of this course that lies in the gap: nothing is laid there"),
      shown("closure", &Of::closure),
  };
};

template <>
struct Shown<laying::CheckAsLaid> {
  using Of = laying::CheckAsLaid;
  static constexpr std::string_view name = "check";
  static constexpr std::string_view description = "A check of the wall, against its limits.";
  static constexpr auto fields = std::tuple{
      shown("entry", &Of::entry),
      side("side", &Of::wall),
      shown("course", &Of::course),
      shown("verdict", &Of::verdict),
      rounded("least", &Of::allowed_least),
      rounded("most", &Of::allowed_most),
      nanometres("doubt_nm", &Of::doubt),
      shown("conformance_millionths", [](const View&, const Of& of) { return millionths(of.conformance); }),
      shown("rule", [](const View& view, const Of& of) { return words::cited(of.rule, view.reader()); }),
  };
};

template <>
struct Shown<laying::Progress> {
  using Of = laying::Progress;
  static constexpr std::string_view name = "progress";
  static constexpr std::string_view description = "How far the walls are.";
  static constexpr auto fields = std::tuple{
      shown("units", &Of::units_all),  shown("laid", &Of::units_laid),     shown("days", &Of::days),
      shown("each_day", &Of::per_day), shown("days_left", &Of::days_left),
  };
};

/// Rules, joints and spreads that courses are laid by: fields of a course asked for by itself too.
inline constexpr auto kHowFields = std::tuple{
    shown("rules", [](const View&, const laying::HowLaid& of) { return of.rules; }),
    shown("joints", [](const View&, const laying::HowLaid& of) { return of.joints; }),
    shown("mark_reading", [](const View&, const laying::HowLaid& of) { return of.mark_reading; }),
    shown("spreads", [](const View&, const laying::HowLaid& of) { return Spreads{of}; }),
    shown("batch", [](const View&, const laying::HowLaid& of) { return of.batch; }),
};
/// The same fields of something that is laid by `how(of)`.
template <class Of, class How>
constexpr auto how_fields(How how) {
  return std::apply(
      [how](const auto&... fields) {
        return std::tuple{shown(
            fields.name,
            [read = fields.read, how](const View& view, const Of& of) { return read(view, how(view, of)); },
            fields.description)...};
      },
      kHowFields);
}

template <>
struct Shown<laying::AsLaid> {
  using Of = laying::AsLaid;
  static constexpr std::string_view name = "laying";
  static constexpr std::string_view description =
      "The wall as it is laid: marks, next joints, and what the laid log comes to.";
  static constexpr auto fields = std::tuple_cat(
      how_fields<Of>([](const View&, const Of& of) -> const laying::HowLaid& { return of.how; }),
      std::tuple{
          shown("next_courses", &Of::next_course, "by wall; 0: all laid"),
          shown("begun", &Of::begun),
          shown("at_hand", &Of::at_hand, "each wall's next course and the one after it"),
          shown("gauges", &Of::gauges),
          shown("sets", &Of::sets),
          shown("gaps", &Of::gaps),
          shown("checks", &Of::checks),
          shown(
              "changes",
              [](const View& view, const Of&) {
                return view.answer.as_built ? std::optional(view.answer.as_built->changes) : std::nullopt;
              },
              "what is not as it was printed, where jambs or corners were found otherwise; absent where nothing was"),
          shown("progress", &Of::progress),
      });
};

}  // namespace stringcourse::document
