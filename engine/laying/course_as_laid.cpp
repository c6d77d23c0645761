#include "laying/course_as_laid.hpp"

#include <algorithm>
#include <iterator>
#include <map>

#include "bond/layout_parts.hpp"
#include "laying/replay.hpp"
#include "setout/laying_order.hpp"

namespace stringcourse::laying {
namespace {

using setout::MarkKind;

RunAsLaid run_of(const Layout& layout, const Building& building, const HowLaid& how, const Run& run) {
  RunAsLaid state;
  state.start = run.start, state.end = run.end, state.joints = run.joints;
  const auto pieces = bond::pieces_of(layout, run);
  state.pieces = static_cast<int>(pieces.size());
  if (!how.batch) return state;
  Length others;
  int whole = 0;
  for (const Piece& piece : pieces) {
    if (piece.length == building.series.front().full) ++whole;
    else others = others + piece.length;
  }
  state.closing = closing_joint(run.end - run.start - others, whole, how.batch->mean, run.joints, how.joints.step,
                                how.joints.working_least, how.joints.working_most);
  return state;
}

std::vector<WallMark> marks_of(const Building& building, const Layout& layout, int wall, int course) {
  std::vector<WallMark> marks;
  const auto runs = bond::runs_in(layout, wall, course);
  // A course's units are numbered on from run to run; a run may have none.
  std::vector<std::int32_t> last;
  for (const Run& run : runs)
    last.push_back((last.empty() ? 0 : last.back()) + static_cast<std::int32_t>(run.piece_count));
  std::vector<std::uint32_t> closing;  // in order, as the runs are
  for (const setout::Closure& closure : setout::closures_on(building, layout, wall, course))
    closing.push_back(closure.piece);
  for (const setout::Mark& mark : setout::running_marks(building, layout, wall, course)) {
    WallMark met;
    met.mark = mark;
    if (mark.kind == MarkKind::BlockEnd) {
      const auto r = static_cast<std::size_t>(std::ranges::lower_bound(last, mark.piece) - last.begin());
      met.run = static_cast<int>(r);
      met.units = mark.piece - (r == 0 ? 0 : last[r - 1]);
      // Behind zero it lies inside the wall that this one enters: no tape reads it there.
      met.to_read = (mark.third_unit || mark.piece == last[r]) && mark.at >= Length();
      met.closes = std::ranges::binary_search(closing, runs[r].first_piece + static_cast<std::uint32_t>(met.units - 1));
      // Of a pier of two units the second is laid last, to the jamb.
      const bool pier = runs[r].piece_count == 2 && shows_face(runs[r].at_start) && shows_face(runs[r].at_end);
      met.closes = met.closes || (pier && met.units == 2);
    }
    marks.push_back(std::move(met));
  }
  return marks;
}

/// Past or short, whichever way it was given.
Length past_of(const MarkReading& reading) {
  return reading.past ? *reading.past : reading.read.value_or(reading.at) - reading.at;
}

/// Where the printed layout had the ends of this course's units, by unit number.
std::map<int, Length> printed_marks(const Building& building, const Layout* printed, int wall, int course) {
  std::map<int, Length> marks;
  if (printed == nullptr) return marks;
  for (const setout::Mark& mark : setout::running_marks(building, *printed, wall, course)) {
    if (mark.kind == MarkKind::BlockEnd) marks[mark.piece] = mark.at;
  }
  return marks;
}

struct Read {
  std::size_t entry;
  Length past;
};

/// What several readings of one mark come to.
void judge_mark(WallMark& mark, const std::vector<Read>& reads, const std::vector<Length>& others, const HowLaid& how,
                Tape tape) {
  if (reads.empty()) return;
  const Length last = reads.back().past;
  // Two readings may each be wrong by so much.
  const Length apart = how.mark_reading * 2;
  const bool alike = std::ranges::all_of(reads, [&](const Read& one) { return magnitude(one.past - last) <= apart; });
  for (const Read& one : reads) mark.entries.push_back(one.entry);
  mark.state = alike ? WallMark::State::Read : WallMark::State::Disputed;
  mark.past = last;
  if (alike && reads.size() > 1) return;  // read twice alike: then it is so
  mark.doubtful = doubtful(mark.mark.at, last, others, tape);
  if (mark.doubtful) mark.state = WallMark::State::Doubtful;
}

/// Readings at this course's marks: those of the log, and one that is tried.
struct Readings {
  const Job& job;
  const std::vector<std::size_t>& entries;
  std::optional<Trial> trial;
  std::map<int, Length> printed;
};

void read_marks(CourseAsLaid& course, const Building& building, const HowLaid& how, const Readings& readings) {
  const auto& [job, here, trial, printed] = readings;
  std::vector<Length> places;
  for (const WallMark& mark : course.marks) {
    if (mark.run >= 0) places.push_back(mark.mark.at);
  }
  for (WallMark& mark : course.marks) {
    if (mark.run < 0) continue;
    std::vector<Read> reads;
    for (const std::size_t k : here) {
      const MarkReading& reading = *job.laid[k].mark;
      const auto before = printed.find(mark.mark.piece);
      if (reading.at == mark.mark.at) reads.push_back({k, past_of(reading)});
      else if (before != printed.end() && reading.at == before->second && !std::ranges::contains(places, reading.at))
        reads.push_back({k, past_of(reading) + reading.at - mark.mark.at});
    }
    judge_mark(mark, reads, places, how, building.tape);
    if (!trial || trial->at != mark.mark.at) continue;
    mark.past = trial->past, mark.state = WallMark::State::Read;
    mark.doubtful = doubtful(mark.mark.at, trial->past, places, building.tape);
    if (mark.doubtful) mark.state = WallMark::State::Doubtful;
  }
}

}  // namespace

std::vector<Length> head_joints(const Layout& layout, int wall, int course) {
  std::vector<Length> centres;
  for (const Run& run : bond::runs_in(layout, wall, course)) {
    const auto pieces = bond::pieces_of(layout, run);
    for (std::size_t k = 1; k < pieces.size(); ++k) {
      centres.push_back(
          (bond::far_end(pieces[k - 1]).nearest_nanometre() + pieces[k].start.nearest_nanometre()).half_down());
    }
  }
  return centres;
}

CourseAsLaid course_as_laid(const Job& job, const Building& building, const Layouts& layouts, const HowLaid& how,
                            const std::vector<bool>& counts, int wall, int course, std::optional<Trial> trial) {
  return course_as_laid(job, building, layouts, how, CourseLog(job, building, counts), wall, course, trial);
}

CourseAsLaid course_as_laid(const Job& job, const Building& building, const Layouts& layouts, const HowLaid& how,
                            const CourseLog& log, int wall, int course, std::optional<Trial> trial) {
  const Layout& layout = layouts.now;
  CourseAsLaid found;
  found.wall = wall, found.course = course;
  found.marks = marks_of(building, layout, wall, course);
  found.finished = log.laid(wall, course);
  read_marks(found, building, how,
             {job, log.marks(wall, course), trial, printed_marks(building, layouts.printed, wall, course)});
  const auto runs = bond::runs_in(layout, wall, course);
  for (const Run& run : runs) found.runs.push_back(run_of(layout, building, how, run));
  std::vector<std::vector<std::size_t>> own(runs.size());
  for (std::size_t m = 0; m < found.marks.size(); ++m) {
    if (found.marks[m].run >= 0) own[static_cast<std::size_t>(found.marks[m].run)].push_back(m);
  }
  const auto bars = bond::bars_on_wall(building, layout, wall);
  const auto below = head_joints(layout, wall, course - 1);
  for (std::size_t r = 0; r < runs.size(); ++r) {
    std::vector<std::size_t>& ahead = found.runs[r].ahead;
    std::ranges::copy_if(own[r], std::back_inserter(ahead), [&](std::size_t m) { return found.marks[m].to_read; });
    replay({building, layout, how, runs[r], bars, below}, found, r, own[r]);
  }
  for (std::size_t r = 0; r < found.runs.size() && found.run < 0; ++r) {
    if (!found.runs[r].finished) found.run = static_cast<int>(r);
  }
  found.finished = found.run < 0;
  return found;
}

Fact next_said(const RunAsLaid& run) {
  if (run.finished) return {};
  const Fact next = correction_said(run.next);
  return run.instead ? fact("one-or-other", {next, correction_said(*run.instead)}) : next;
}

Fact correction_said(const Correction& next) {
  // Equal neighbours in one: "2 of 5/16", then 1 of 3/8"".
  std::vector<std::pair<int, Length>> widths;
  for (const Length joint : next.joints) {
    if (!widths.empty() && widths.back().second == joint) ++widths.back().first;
    else widths.emplace_back(1, joint);
  }
  std::vector<Fact> joints;
  for (const auto& [count, width] : widths)
    joints.push_back(fact(joints.empty() ? "joints-of" : "then-joints-of", {count, width}));
  const FactValue all = listed(FactValue::Kind::Commas, joints);
  switch (next.what) {
    case Correction::What::Joints: return joints.empty() ? fact("no-joint") : fact("next-joints", {all});
    case Correction::What::SawCut:
      return joints.empty() ? fact("cut-next-unit", {next.cut}) : fact("cut-next-unit-then", {next.cut, all});
    case Correction::What::LayAgain:
      return next.again == 1 ? fact("lay-one-again", {all}) : fact("lay-again", {next.again, all});
    case Correction::What::CannotBe: return fact("no-joints-bring-back");
  }
  return {};
}

Fact lost_said(const Lost& lost) {
  return fact(lost.what == Lost::What::Bar ? "bar-lost" : "lap-lost", {FactValue(lost.at, LengthForm::Both)});
}

std::optional<ClosureOdds> closure_odds(const CourseAsLaid& course, const HowLaid& how, const Building& building,
                                        int courses, std::uint64_t seed) {
  if (course.run < 0) return std::nullopt;
  const RunAsLaid& run = course.runs[static_cast<std::size_t>(course.run)];
  CourseAhead ahead;
  ahead.units = run.pieces - run.laid;
  ahead.past = run.past, ahead.unit = building.series.front().full;
  // The closure's two joints take what is left.
  ahead.past_most = (how.joints.joint - how.joints.least) * 2,
  ahead.short_most = (how.joints.most - how.joints.joint) * 2;
  if (ahead.units <= 0) return std::nullopt;
  Workmanship hand = how.hand;
  hand.bias = run.bias.mean;
  ClosureOdds odds;
  odds.units = ahead.units, odds.past_most = ahead.past_most, odds.short_most = ahead.short_most;
  odds.with_marks = simulate(ahead, hand, how.joints, Marks::Used, courses, seed);
  odds.without = simulate(ahead, hand, how.joints, Marks::NotUsed, courses, seed);
  return odds;
}

}  // namespace stringcourse::laying
