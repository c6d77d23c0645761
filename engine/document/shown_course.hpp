#pragma once
// Field tables of one course as it is laid: marks, and the next joints of its runs.
#include <cmath>

#include "document/shown_ground.hpp"

namespace stringcourse::document {

inline std::int64_t millionths(double share) { return static_cast<std::int64_t>(share * 1e6 + 0.5); }
inline Nanometres nanometres_of(double metres) { return {length_of(metres).in_nanometres()}; }

/// Where a mark stands.
struct MarkPlace {
  Length at;
};
/// The second of both forms, where there are two.
inline std::optional<std::string> other_form(const View& view, const MarkPlace& of) {
  if (view.tape() == Tape::Millimetres) return std::nullopt;
  std::string inches = total_inches(of.at);
  return inches == feet_and_inches(of.at) ? std::nullopt : std::optional(std::move(inches));
}
template <>
struct Shown<MarkPlace> {
  static constexpr std::string_view name = "mark_place";
  static constexpr std::string_view description =
      "Where a mark stands: as the tape reads, in both forms of inches, exactly.";
  static constexpr auto fields = std::tuple{
      shown("text", [](const View& view, const MarkPlace& of) { return tape_text(of.at, view.tape()); }),
      shown("both", [](const View& view, const MarkPlace& of) { return both_forms(of.at, view.tape()); }),
      shown("other", other_form, "in inches alone; absent where \"text\" is no other"),
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
      shown("opening",
            [](const View& view, const Of& of) {
              return of.mark.opening < 0 ? std::optional<std::string_view>()
                                         : std::optional<std::string_view>(view.opening(of.mark.opening).name);
            }),
      shown("unit", [](const View&, const Of& of) { return if_block_end(of, of.mark.piece); }),
      shown("run", [](const View&, const Of& of) { return if_block_end(of, of.run); }),
      shown(
          "to_read", [](const View&, const Of& of) { return if_block_end(of, of.to_read); },
          "past or short is read here: every third unit, and the last of a run"),
      shown("third_unit", [](const View&, const Of& of) { return if_block_end(of, of.mark.third_unit); }),
      shown(
          "closes", [](const View&, const Of& of) { return if_block_end(of, of.closes); }, "this unit closes its run"),
      shown("state", [](const View&, const Of& of) { return if_block_end(of, of.state); }),
      shown("past", [](const View&, const Of& of) { return of.run < 0 ? std::nullopt : of.past; }),
      shown(
          "entries", [](const View&, const Of& of) { return if_block_end(of, of.entries); },
          "of the job's laid log, from 0"),
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
      shown("text", [](const View&, const LaidAgain& of) { return laying::correction_said(of.correction); }),
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
      shown("text",
            [](const View&, const NextJoints& of) {
              return of.run.finished ? Fact() : laying::correction_said(of.run.next);
            }),
      shown(
          "joints",
          [](const View& view, const NextJoints& of) {
            std::vector<std::string> joints;
            for (const Length joint : of.run.next.joints) joints.push_back(tape_text(joint, view.tape()));
            return joints;
          },
          "in the order of laying"),
      shown("bays", [](const View&, const NextJoints& of) { return of.run.next.bays; }),
      shown("outside_working", [](const View&, const NextJoints& of) { return of.run.next.outside_working; }),
      shown("cut",
            [](const View&, const NextJoints& of) {
              return of.run.next.what == What::SawCut ? std::optional(of.run.next.cut) : std::nullopt;
            }),
      shown("again",
            [](const View&, const NextJoints& of) {
              return of.run.next.what == What::LayAgain ? std::optional(of.run.next.again) : std::nullopt;
            }),
      shown(
          "instead",
          [](const View&, const NextJoints& of) {
            return of.run.instead ? std::optional(LaidAgain{*of.run.instead}) : std::nullopt;
          },
          "beside a saw cut: units that come up and are laid again"),
      shown(
          "loses",
          [](const View&, const NextJoints& of) {
            std::vector<Fact> lost;
            for (const laying::Lost& one : of.run.lost) lost.push_back(laying::lost_said(one));
            return lost;
          },
          "bars and laps that these joints do not keep"),
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
      shown("name",
            [](const View& view, const Of& of) { return laying::course_name(view.building(), of.wall, of.course); }),
      shown(
          "from",
          [](const View& view, const Of& of) { return sheet::hook_text(view.building(), of.wall, words::kEnglish); },
          "the corner that marks are measured from"),
      shown("finished", &Of::finished),
      shown("run", &Of::run, "the run that is laid now, -1 when all are"),
      shown("marks", &Of::marks),
      shown("runs", &Of::runs),
  };
};

}  // namespace stringcourse::document
