#include <cmath>
#include <optional>

#include "measure/metres.hpp"
#include "sheet/hook_words.hpp"
#include "document/answer_parts.hpp"
#include "document/page_parts.hpp"

namespace stringcourse {
namespace {

using namespace laying;
using answer_parts::wall_name;
using answer_parts::verdict_name;
using answer_parts::write_found;
using answer_parts::write_length;

constexpr int kCoursesPlayed = 500;       // for the odds in a page; the command line plays as many
constexpr std::uint64_t kSeed = 20261127;  // one job, one answer

std::int64_t millionths(double share) { return static_cast<std::int64_t>(share * 1e6 + 0.5); }

std::string_view kind_name(setout::MarkKind kind) {
  switch (kind) {
    case setout::MarkKind::BlockEnd: return "block-end";
    case setout::MarkKind::NearJamb: return "near-jamb";
    case setout::MarkKind::FarJamb: return "far-jamb";
    case setout::MarkKind::JointNearEdge: return "joint-near-edge";
    case setout::MarkKind::JointFarEdge: return "joint-far-edge";
    case setout::MarkKind::BarCentre: return "bar-centre";
  }
  return "";
}

std::string_view state_name(WallMark::State state) {
  switch (state) {
    case WallMark::State::Unread: return "unread";
    case WallMark::State::Read: return "read";
    case WallMark::State::Doubtful: return "doubtful";
    case WallMark::State::Disputed: return "disputed";
  }
  return "";
}

std::string_view what_name(Correction::What what) {
  switch (what) {
    case Correction::What::Joints: return "joints";
    case Correction::What::SawCut: return "saw-cut";
    case Correction::What::LayAgain: return "lay-again";
    case Correction::What::CannotBe: return "cannot-be";
  }
  return "";
}

void write_mark(JsonOut& out, const Answer& answer, const WallMark& mark) {
  const Tape tape = answer.building.tape;
  out.object([&] {
    out.field("kind", kind_name(mark.mark.kind));
    out.object("at", [&] {
      out.field("text", tape_text(mark.mark.at, tape));
      out.field("both", both_forms(mark.mark.at, tape));
      out.field("nm", mark.mark.at.in_nanometres());
    });
    if (mark.mark.opening >= 0) out.field("opening", answer.building.openings[static_cast<std::size_t>(mark.mark.opening)].name);
    if (mark.run < 0) return;
    out.field("unit", mark.mark.piece);
    out.field("run", mark.run);
    out.field("to_read", mark.to_read);
    out.field("third_unit", mark.mark.third_unit);
    out.field("closes", mark.closes);
    out.field("state", state_name(mark.state));
    if (mark.past) write_length(out, "past", *mark.past, tape);
    out.list("entries", [&] {
      for (const std::size_t entry : mark.entries) out.number(static_cast<std::int64_t>(entry));
    });
    if (!mark.doubtful) return;
    out.object("doubtful", [&] {
      out.field("why", mark.doubtful->why);
      out.field("likely", mark.doubtful->likely);
      if (mark.doubtful->past) write_length(out, "past", *mark.doubtful->past, tape);
      if (mark.doubtful->at) write_length(out, "at", *mark.doubtful->at, tape);
    });
  });
}

void write_next(JsonOut& out, const RunAsLaid& run, Tape tape) {
  out.object("next", [&] {
    out.field("what", what_name(run.next.what));
    out.field("text", run.finished ? "" : correction_text(run.next, tape));
    out.list("joints", [&] {
      for (const Length joint : run.next.joints) out.text(tape_text(joint, tape));
    });
    out.field("bays", run.next.bays);
    out.field("outside_working", run.next.outside_working);
    if (run.next.what == Correction::What::SawCut) write_length(out, "cut", run.next.cut, tape);
    if (run.next.what == Correction::What::LayAgain) out.field("again", run.next.again);
    if (run.instead) {
      out.object("instead", [&] {
        out.field("text", correction_text(*run.instead, tape));
        out.field("again", run.instead->again);
      });
    }
    out.list("loses", [&] {
      for (const std::string& lost : run.lost) out.text(lost);
    });
  });
}

void write_run(JsonOut& out, const RunAsLaid& run, Tape tape) {
  out.object([&] {
    write_found(out, "from", run.start, tape);
    write_found(out, "to", run.end, tape);
    out.field("units", run.pieces);
    out.field("laid", run.laid);
    out.field("finished", run.finished);
    write_found(out, "past", run.past, tape);
    write_next(out, run, tape);
    out.object("each_unit_adds", [&] {
      write_found(out, "learned", length_of(run.bias.mean), tape);
      out.field("doubt_nm", length_of(std::sqrt(run.bias.variance)).in_nanometres());
      write_found(out, "taken_off_ahead", run.bias_taken, tape);
    });
    if (run.closing) {
      out.object("one_joint", [&] {
        write_length(out, "joint", run.closing->joint, tape);
        write_found(out, "left", run.closing->left, tape);
      });
    }
  });
}

void write_one_course(JsonOut& out, const Answer& answer, const CourseAsLaid& course) {
  const Building& building = answer.building;
  out.object([&] {
    out.field("side", wall_name(building, course.wall));
    out.field("course", course.course);
    out.field("name", course_name(building, course.wall, course.course));
    out.field("from", sheet::hook_text(building, course.wall, sheet::kEnglish));
    out.field("finished", course.finished);
    out.field("run", course.run);
    out.list("marks", [&] {
      for (const WallMark& mark : course.marks) write_mark(out, answer, mark);
    });
    out.list("runs", [&] {
      for (const RunAsLaid& run : course.runs) write_run(out, run, building.tape);
    });
  });
}

void write_how(JsonOut& out, const HowLaid& how, const Building& building) {
  const Tape tape = building.tape;
  out.field("rules", how.rules == RuleSet::Us ? "us" : "uk");
  out.object("joints", [&] {
    write_length(out, "planned", how.joints.joint, tape);
    write_length(out, "working_least", how.joints.working_least, tape);
    write_length(out, "working_most", how.joints.working_most, tape);
    write_length(out, "least", how.joints.least, tape);
    write_length(out, "most", how.joints.most, tape);
  });
  write_length(out, "mark_reading", how.mark_reading, tape);
  out.object("spreads", [&] {
    out.field("unit_nm", length_of(how.hand.unit).in_nanometres());
    out.field("joint_nm", length_of(how.hand.joint).in_nanometres());
    out.field("known", how.spreads_measured ? "measured" : "assumed, unverified");
  });
  if (!how.batch) return;
  out.object("batch", [&] {
    out.field("units", how.batch->units);
    write_found(out, "mean", how.batch->mean, tape);
    out.field("mean_exact", exact_text(rounded_to(how.batch->mean, tape == Tape::Inches ? Length::sixty_fourths(1) : Length::nanometres(100'000)), tape));
    out.field("longer_nm", (how.batch->mean - building.series.front().full).in_nanometres());
    out.field("doubt_nm", length_of(2 * how.batch->doubt).in_nanometres());
    if (how.batch->spread) out.field("spread_nm", length_of(*how.batch->spread).in_nanometres());
    out.field("within_tolerance", verdict_name(how.batch->within));
  });
}

void write_gauge(JsonOut& out, const Answer& answer, const GaugeAsLaid& gauge) {
  const Tape tape = answer.building.tape;
  out.object([&] {
    out.field("entry", static_cast<std::int64_t>(gauge.entry));
    out.field("side", wall_name(answer.building, gauge.wall));
    out.field("course", gauge.course);
    write_length(out, "high", gauge.high, tape);
    out.field("to", gauge.to_what);
    out.list("beds", [&] {
      for (std::size_t k = 0; gauge.beds && k < gauge.beds->beds.size(); ++k) {
        out.object([&] {
          out.field("course", gauge.courses[k]);
          write_length(out, "bed", gauge.beds->beds[k], tape);
        });
      }
    });
  });
}

void write_change(JsonOut& out, const Answer& answer, const CourseChange& change) {
  out.object([&] {
    out.field("side", wall_name(answer.building, change.wall));
    out.list("courses", [&] {
      for (const int course : change.courses) out.number(course);
    });
    out.list("units", [&] {
      for (const std::string& unit : change.units) out.text(unit);
    });
    out.field("marks_moved", change.marks_moved);
    write_found(out, "farthest", change.farthest, answer.building.tape);
    out.field("text", change_text(answer.building, change));
  });
}

std::string_view corner_text(UnitCorner corner) {
  switch (corner) {
    case UnitCorner::NearOuter: return "near-outer";
    case UnitCorner::NearInner: return "near-inner";
    case UnitCorner::FarOuter: return "far-outer";
    case UnitCorner::FarInner: return "far-inner";
  }
  return "";
}

void write_set(JsonOut& out, const Answer& answer, const SetAsLaid& set) {
  const Tape tape = answer.building.tape;
  out.object([&] {
    out.field("entry", static_cast<std::int64_t>(set.entry));
    out.field("side", wall_name(answer.building, set.wall));
    out.field("course", set.course);
    out.field("lift", set.advice.lift);
    out.list("taps", [&] {
      for (const Tap& tap : set.advice.taps) {
        out.object([&] {
          out.field("corner", corner_text(tap.corner));
          write_length(out, "down", tap.down, tape);
        });
      }
    });
    if (set.from_line) write_length(out, "from_line", *set.from_line, tape);
  });
}

void write_gap(JsonOut& out, const Answer& answer, const GapAsLaid& gap) {
  const Tape tape = answer.building.tape;
  out.object([&] {
    out.field("entry", static_cast<std::int64_t>(gap.entry));
    out.field("side", wall_name(answer.building, gap.wall));
    out.field("course", gap.course);
    write_length(out, "measured", gap.measured, tape);
    if (gap.opening >= 0) out.field("opening", answer.building.openings[static_cast<std::size_t>(gap.opening)].name);
    if (!gap.closure) return;
    const Closure& closure = *gap.closure;
    out.object("closure", [&] {
      out.field("text", closure_text(closure, tape));
      out.list("pieces", [&] {
        for (const ClosurePiece& piece : closure.pieces) {
          out.object([&] {
            const std::string_view kinds[] = {"whole", "half", "cut"};
            out.field("kind", kinds[static_cast<int>(piece.kind)]);
            write_found(out, "length", piece.length, tape);
          });
        }
      });
      out.field("last", closure.last);
      write_found(out, "joint", closure.joint, tape);
      if (!closure.lost_over) return;
      write_found(out, "lost_over", *closure.lost_over, tape);
      write_found(out, "lost_lap", closure.lost_lap, tape);
    });
  });
}

void write_check(JsonOut& out, const Answer& answer, const CheckAsLaid& check) {
  const Tape tape = answer.building.tape;
  out.object([&] {
    out.field("entry", static_cast<std::int64_t>(check.entry));
    out.field("side", wall_name(answer.building, check.wall));
    out.field("course", check.course);
    out.field("verdict", verdict_name(check.verdict));
    write_found(out, "least", check.allowed_least, tape);
    write_found(out, "most", check.allowed_most, tape);
    out.field("doubt_nm", check.doubt.in_nanometres());
    out.field("conformance_millionths", millionths(check.conformance));
    out.field("rule", check.rule);
  });
}

void write_odds(JsonOut& out, std::string_view key, const Odds& odds) {
  out.object(key, [&] {
    const Share share = binomial_interval(odds.inside, odds.courses, 0.95);
    out.field("courses", odds.courses);
    out.field("inside", odds.inside);
    out.field("least_millionths", millionths(share.least));
    out.field("most_millionths", millionths(share.most));
    out.field("spread_nm", length_of(odds.spread).in_nanometres());
  });
}

}  // namespace

namespace answer_parts {

void write_laying(JsonOut& out, const Answer& answer) {
  const AsLaid& laid = *answer.laid;
  out.object("laying", [&] {
    write_how(out, laid.how, answer.building);
    out.list("next_courses", [&] {
      for (const int next : laid.next_course) out.number(next);
    });
    out.list("begun", [&] {
      for (const CourseAsLaid& course : laid.begun) write_one_course(out, answer, course);
    });
    out.list("at_hand", [&] {
      for (const CourseAsLaid& course : laid.at_hand) write_one_course(out, answer, course);
    });
    out.list("gauges", [&] {
      for (const GaugeAsLaid& gauge : laid.gauges) write_gauge(out, answer, gauge);
    });
    out.list("sets", [&] {
      for (const SetAsLaid& set : laid.sets) write_set(out, answer, set);
    });
    out.list("gaps", [&] {
      for (const GapAsLaid& gap : laid.gaps) write_gap(out, answer, gap);
    });
    out.list("checks", [&] {
      for (const CheckAsLaid& check : laid.checks) write_check(out, answer, check);
    });
    if (answer.as_built) {
      out.list("changes", [&] {
        for (const CourseChange& change : answer.as_built->changes) write_change(out, answer, change);
      });
    }
    out.object("progress", [&] {
      out.field("units", laid.progress.units_all);
      out.field("laid", laid.progress.units_laid);
      out.field("days", laid.progress.days);
      out.field("each_day", laid.progress.per_day);
      out.field("days_left", laid.progress.days_left);
    });
  });
}

}  // namespace answer_parts

bool write_course(JsonOut& out, const Answer& answer, const CourseAsked& asked) {
  const int wall = laying::wall_of(answer.building, asked.side);
  if (wall < 0 || asked.course < 1 || asked.course > static_cast<int>(answer.building.courses.size())) return false;
  const HowLaid how = answer.laid ? answer.laid->how : how_laid(answer.job, answer.building);
  const std::vector<bool> counts = entries_that_count(answer.job);
  const CourseAsLaid course = course_as_laid(answer.job, answer.building, layouts_of(answer), how, counts, wall, asked.course, asked.trial);
  out.object([&] {
    out.name("course");
    write_one_course(out, answer, course);
    write_how(out, how, answer.building);
    if (!asked.odds) return;
    const auto odds = closure_odds(course, how, answer.building, kCoursesPlayed, kSeed);
    if (!odds) return;
    out.object("odds", [&] {
      out.field("units", odds->units);
      write_length(out, "past_most", odds->past_most, answer.building.tape);
      write_length(out, "short_most", odds->short_most, answer.building.tape);
      write_odds(out, "with_marks", odds->with_marks);
      write_odds(out, "without", odds->without);
    });
  });
  return true;
}

}  // namespace stringcourse
