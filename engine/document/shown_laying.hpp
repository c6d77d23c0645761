#pragma once
// Field tables of the wall as it is laid: marks, next joints, what the laid log comes to.
#include <cmath>

#include "document/shown_ground.hpp"

namespace stringcourse::document {

inline std::int64_t millionths(double share) { return static_cast<std::int64_t>(share * 1e6 + 0.5); }
inline Nanometres nanometres_of(double metres) { return {length_of(metres).in_nanometres()}; }

/// Where a mark stands.
struct MarkPlace {
  Length at;
};
template <>
struct Shown<MarkPlace> {
  static constexpr std::string_view name = "mark_place";
  static constexpr std::string_view description = "Where a mark stands: as the tape reads, in both forms of inches, exactly.";
  static constexpr auto fields = std::tuple{
      shown("text", [](const View& view, const MarkPlace& of) { return tape_text(of.at, view.tape()); }),
      shown("both", [](const View& view, const MarkPlace& of) { return both_forms(of.at, view.tape()); }),
      shown("nm", [](const View&, const MarkPlace& of) { return of.at.in_nanometres(); }),
  };
};

template <>
struct Shown<laying::Doubtful> {
  using Of = laying::Doubtful;
  static constexpr std::string_view name = "doubtful";
  static constexpr std::string_view description = "Why a reading is doubted, and what was probably meant.";
  static constexpr auto fields = std::tuple{
      shown("why", &Of::why),
      shown("likely", &Of::likely),
      shown("past", &Of::past),
      shown("at", &Of::at),
  };
};

/// What only the end of a block has, of its marks.
template <class Value>
std::optional<Value> if_block_end(const laying::WallMark& of, Value value) {
  return of.run < 0 ? std::nullopt : std::optional<Value>(std::move(value));
}

template <>
struct Shown<laying::WallMark> {
  using Of = laying::WallMark;
  static constexpr std::string_view name = "wall_mark";
  static constexpr std::string_view description = "A mark at the wall.";
  static constexpr auto fields = std::tuple{
      shown("kind", [](const View&, const Of& of) { return of.mark.kind; }),
      shown("at", [](const View&, const Of& of) { return MarkPlace{of.mark.at}; }),
      shown("opening", [](const View& view, const Of& of) {
        return of.mark.opening < 0 ? std::optional<std::string_view>() : std::optional<std::string_view>(view.opening(of.mark.opening).name);
      }),
      shown("unit", [](const View&, const Of& of) { return if_block_end(of, of.mark.piece); }),
      shown("run", [](const View&, const Of& of) { return if_block_end(of, of.run); }),
      shown("to_read", [](const View&, const Of& of) { return if_block_end(of, of.to_read); },
            "past or short is read here: every third unit, and the last of a run"),
      shown("third_unit", [](const View&, const Of& of) { return if_block_end(of, of.mark.third_unit); }),
      shown("closes", [](const View&, const Of& of) { return if_block_end(of, of.closes); }, "this unit closes its run"),
      shown("state", [](const View&, const Of& of) { return if_block_end(of, of.state); }),
      shown("past", [](const View&, const Of& of) { return of.run < 0 ? std::nullopt : of.past; }),
      shown("entries", [](const View&, const Of& of) { return if_block_end(of, of.entries); }, "of the job's laid log, from 0"),
      shown("doubtful", [](const View&, const Of& of) { return of.run < 0 ? std::nullopt : of.doubtful; }),
  };
};

/// Units that come up and are laid again.
struct LaidAgain {
  const laying::Correction& correction;
};
template <>
struct Shown<LaidAgain> {
  static constexpr std::string_view name = "laid_again";
  static constexpr std::string_view description = "Units that come up and are laid again.";
  static constexpr auto fields = std::tuple{
      shown("text", [](const View& view, const LaidAgain& of) { return laying::correction_text(of.correction, view.tape()); }),
      shown("again", [](const View&, const LaidAgain& of) { return of.correction.again; }),
  };
};

/// The next joints of a run.
struct NextJoints {
  const laying::RunAsLaid& run;
};
template <>
struct Shown<NextJoints> {
  using What = laying::Correction::What;
  static constexpr std::string_view name = "next_joints";
  static constexpr std::string_view description = "The next joints of a run.";
  static constexpr auto fields = std::tuple{
      shown("what", [](const View&, const NextJoints& of) { return of.run.next.what; }),
      shown("text", [](const View& view, const NextJoints& of) {
        return of.run.finished ? std::string() : laying::correction_text(of.run.next, view.tape());
      }),
      shown("joints", [](const View& view, const NextJoints& of) {
        std::vector<std::string> joints;
        for (const Length joint : of.run.next.joints) joints.push_back(tape_text(joint, view.tape()));
        return joints;
      }, "in the order of laying"),
      shown("bays", [](const View&, const NextJoints& of) { return of.run.next.bays; }),
      shown("outside_working", [](const View&, const NextJoints& of) { return of.run.next.outside_working; }),
      shown("cut", [](const View&, const NextJoints& of) {
        return of.run.next.what == What::SawCut ? std::optional(of.run.next.cut) : std::nullopt;
      }),
      shown("again", [](const View&, const NextJoints& of) {
        return of.run.next.what == What::LayAgain ? std::optional(of.run.next.again) : std::nullopt;
      }),
      shown("instead", [](const View&, const NextJoints& of) {
        return of.run.instead ? std::optional(LaidAgain{*of.run.instead}) : std::nullopt;
      }, "beside a saw cut: units that come up and are laid again"),
      shown("loses", [](const View&, const NextJoints& of) { return of.run.lost; }, "bars and laps that these joints do not keep"),
  };
};

/// What each unit adds to the course.
struct UnitAdds {
  const laying::RunAsLaid& run;
};
template <>
struct Shown<UnitAdds> {
  static constexpr std::string_view name = "unit_adds";
  static constexpr std::string_view description = "What each unit adds, as learned.";
  static constexpr auto fields = std::tuple{
      shown("learned", [](const View&, const UnitAdds& of) { return Rounded{length_of(of.run.bias.mean)}; }),
      shown("doubt_nm", [](const View&, const UnitAdds& of) { return nanometres_of(std::sqrt(of.run.bias.variance)); }),
      shown("taken_off_ahead", [](const View&, const UnitAdds& of) { return Rounded{of.run.bias_taken}; }),
  };
};

template <>
struct Shown<laying::ClosingJoint> {
  using Of = laying::ClosingJoint;
  static constexpr std::string_view name = "closing_joint";
  static constexpr std::string_view description = "One joint for the whole run, with the units as measured.";
  static constexpr auto fields = std::tuple{
      shown("joint", &Of::joint),
      rounded("left", &Of::left),
  };
};

template <>
struct Shown<laying::RunAsLaid> {
  using Of = laying::RunAsLaid;
  static constexpr std::string_view name = "run_as_laid";
  static constexpr std::string_view description = "One run of a course as it is laid.";
  static constexpr auto fields = std::tuple{
      rounded("from", &Of::start),
      rounded("to", &Of::end),
      shown("units", &Of::pieces),
      shown("laid", &Of::laid, "units up to the last mark that was read"),
      shown("finished", &Of::finished),
      rounded("past", &Of::past),
      shown("next", [](const View&, const Of& of) { return NextJoints{of}; }),
      shown("each_unit_adds", [](const View&, const Of& of) { return UnitAdds{of}; }),
      shown("one_joint", &Of::closing),
  };
};

template <>
struct Shown<laying::CourseAsLaid> {
  using Of = laying::CourseAsLaid;
  static constexpr std::string_view name = "course_at_wall";
  static constexpr std::string_view description = "One course of one side as it is laid.";
  static constexpr auto fields = std::tuple{
      side("side", &Of::wall),
      shown("course", &Of::course),
      shown("name", [](const View& view, const Of& of) { return laying::course_name(view.building(), of.wall, of.course); }),
      shown("from", [](const View& view, const Of& of) { return sheet::hook_text(view.building(), of.wall, sheet::kEnglish); },
            "the corner that marks are measured from"),
      shown("finished", &Of::finished),
      shown("run", &Of::run, "the run that is laid now, -1 when all are"),
      shown("marks", &Of::marks),
      shown("runs", &Of::runs),
  };
};

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
      shown("known", [](const View&, const Spreads& of) {
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
      shown("mean_exact", [](const View& view, const Of& of) {
        const Length step = view.tape() == Tape::Inches ? Length::sixty_fourths(1) : Length::nanometres(100'000);
        return exact_text(rounded_to(of.mean, step), view.tape());
      }),
      shown("longer_nm", [](const View& view, const Of& of) { return (of.mean - view.building().series.front().full).in_nanometres(); }),
      shown("doubt_nm", [](const View&, const Of& of) { return nanometres_of(2 * of.doubt); }),
      shown("spread_nm", [](const View&, const Of& of) { return of.spread ? std::optional(nanometres_of(*of.spread)) : std::nullopt; }),
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
      shown("entry", &Of::entry),
      side("side", &Of::wall),
      shown("course", &Of::course),
      shown("high", &Of::high),
      shown("to", &Of::to_what),
      shown("beds", beds_of),
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
      shown("text", [](const View& view, const Of& of) { return change_text(view.building(), of); }),
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
      shown("text", [](const View& view, const Of& of) { return laying::closure_text(of, view.tape()); }),
      shown("pieces", &Of::pieces, "one or two, from the gap's near side"),
      shown("last", &Of::last, "which of the pieces is laid last, from 0"),
      rounded("joint", &Of::joint),
      shown("lost_over", [](const View&, const Of& of) { return of.lost_over ? std::optional(Rounded{*of.lost_over}) : std::nullopt; },
            "joint below that the joint between the pieces comes nearer to than a quarter unit"),
      shown("lost_lap", [](const View&, const Of& of) { return of.lost_over ? std::optional(Rounded{of.lost_lap}) : std::nullopt; }),
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
      shown("rule", &Of::rule),
  };
};

template <>
struct Shown<laying::Progress> {
  using Of = laying::Progress;
  static constexpr std::string_view name = "progress";
  static constexpr std::string_view description = "How far the walls are.";
  static constexpr auto fields = std::tuple{
      shown("units", &Of::units_all),
      shown("laid", &Of::units_laid),
      shown("days", &Of::days),
      shown("each_day", &Of::per_day),
      shown("days_left", &Of::days_left),
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
  return std::apply([how](const auto&... fields) {
    return std::tuple{shown(fields.name, [read = fields.read, how](const View& view, const Of& of) { return read(view, how(view, of)); },
                            fields.description)...};
  }, kHowFields);
}

template <>
struct Shown<laying::AsLaid> {
  using Of = laying::AsLaid;
  static constexpr std::string_view name = "laying";
  static constexpr std::string_view description = "The wall as it is laid: marks, next joints, and what the laid log comes to.";
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
          shown("changes", [](const View& view, const Of&) {
            return view.answer.as_built ? std::optional(view.answer.as_built->changes) : std::nullopt;
          }, "what is not as it was printed, where jambs or corners were found otherwise; absent where nothing was"),
          shown("progress", &Of::progress),
      });
};

}  // namespace stringcourse::document
