#include "laying/course_as_laid.hpp"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <map>
#include <span>

#include "job/words.hpp"
#include "measure/metres.hpp"
#include "setout/laying_order.hpp"
#include "setout/places.hpp"

namespace stringcourse::laying {
namespace {

using setout::MarkKind;

/// Where a run stood after so many units, and what each unit was known to add then.
struct Stand {
  int units = 0;
  Length past;
  Bias bias;
};

struct Aimed {
  Correction correction;
  std::vector<std::string> lost;  // what it will not keep
  Length bias_taken;              // over the first bay
  std::size_t bays = 0;           // still ahead
};

/// One run while its course is replayed, mark by mark.
class Replay {
 public:
  Replay(const Building& building, const Layout& layout, const HowLaid& how, const Run& run, std::span<const setout::WallBar> bars, CourseAsLaid& course, RunAsLaid& state, std::vector<std::size_t> to_read)
      : building_(building), layout_(layout), how_(how), run_(run), standing_(bars), pieces_(setout::pieces_of(layout, run)), course_(course), state_(state), to_read_(std::move(to_read)) {
    length_to_.push_back(Length());
    for (const Piece& piece : pieces_) length_to_.push_back(length_to_.back() + piece.length);
    state_.bias = unknown_bias();
    if (how.batch) state_.bias = {how.hand.bias, how.batch->doubt * how.batch->doubt};
    stood_.push_back({0, Length(), state_.bias});
  }

  /// What is to be done from where the run stands now.
  void aim() {
    state_.next = {}, state_.instead.reset(), state_.lost.clear(), state_.bias_taken = {};
    const Stand& here = stood_.back();
    Aimed now = aimed_from(here);
    if (now.bays == 0) return;
    state_.bias_taken = now.bias_taken;
    if (now.correction.what != Correction::What::Joints || !now.lost.empty()) weigh_laying_again(now);
    state_.next = std::move(now.correction), state_.lost = std::move(now.lost);
  }

  /// A mark that was read: what it teaches, and where the run stands then.
  void meet(const WallMark& mark) {
    const int units = mark.units - state_.laid;
    if (units > 0 && state_.next.what != Correction::What::LayAgain && state_.next.what != Correction::What::CannotBe) {
      const Noise noise{std::sqrt(how_.hand.unit * how_.hand.unit + how_.hand.joint * how_.hand.joint), how_.hand.mark};
      state_.bias = learned(state_.bias, units, metres(*mark.past - expected(mark.units)), noise);
    }
    state_.laid = mark.units, state_.past = *mark.past;
    stood_.push_back({state_.laid, state_.past, state_.bias});
  }

 private:
  bool starts_with_joint() const { return has_joint(run_.at_start); }
  /// Planned place of the far end of unit k (1 ...); of none: the run's start.
  Length planned(int k) const { return k == 0 ? run_.start : setout::far_end(pieces_[static_cast<std::size_t>(k - 1)]).nearest_nanometre(); }
  /// Joints laid by the time unit k lies.
  int joints_to(int k) const { return k == 0 ? 0 : k - 1 + (starts_with_joint() ? 1 : 0); }
  Length lengths(int from, int to) const { return length_to_[static_cast<std::size_t>(to)] - length_to_[static_cast<std::size_t>(from)]; }
  /// What planned joints and units of planned length add up to beyond the plan, from unit to unit.
  Length drift(int from, int to, int joints, Length target) const {
    return how_.joints.joint * joints + lengths(from, to) - (target - planned(from));
  }
  Length joints_asked(int joints) const {
    Length sum;
    for (int j = 0; j < joints; ++j) sum = sum + (j < static_cast<int>(state_.next.joints.size()) ? state_.next.joints[static_cast<std::size_t>(j)] - how_.joints.joint : Length());
    return sum;
  }
  /// Where unit k would lie beyond its mark if joints were laid as asked and units were as planned.
  Length expected(int k) const {
    const int joints = joints_to(k) - joints_to(state_.laid);
    const Length cut = state_.next.what == Correction::What::SawCut ? state_.next.cut : Length();
    return state_.past + drift(state_.laid, k, joints, planned(k)) + joints_asked(joints) - cut;
  }

  /// The joints, and what they will not keep, from a place where the run stands or stood.
  Aimed aimed_from(const Stand& from) const {
    Aimed aimed;
    Wanted wanted;
    wanted.past = from.past, wanted.beyond_working = how_.beyond_working, wanted.unit = building_.series.front().full;
    const int count = static_cast<int>(pieces_.size());
    int met = 0;
    for (const std::size_t index : to_read_) {
      const int k = course_.marks[index].units;
      const bool to_end = k == count && has_joint(run_.at_end);
      const int joints = joints_to(k) - joints_to(from.units) + (to_end ? 1 : 0);
      if (joints <= met) continue;
      wanted.bays.push_back(joints - met);
      const Length taken = corrected_ahead(from.bias, k - from.units, how_.joints.step);
      if (met == 0) aimed.bias_taken = taken;
      wanted.ahead.push_back(drift(from.units, k, joints, to_end ? run_.end : planned(k)) + taken);
      met = joints;
    }
    aimed.bays = wanted.bays.size();
    if (wanted.bays.empty()) return aimed;
    const std::vector<Length> bars = add_bars(wanted, from);
    aimed.correction = corrected(wanted, how_.joints);
    for (const int lost : aimed.correction.bars_lost) aimed.lost.push_back("the bar at " + both_forms(bars[static_cast<std::size_t>(lost)], building_.tape));
    if (aimed.correction.what == Correction::What::Joints) name_short_laps(aimed, from);
    return aimed;
  }

  /// How far each unit ahead may lie off before the bar in it loses its clearance. Hands back the bars' centres.
  std::vector<Length> add_bars(Wanted& wanted, const Stand& from) const {
    std::vector<Length> centres;
    if (!building_.bars) return centres;
    const Length half = building_.bars->diameter.half_down() + building_.bars->clearance;
    for (const setout::WallBar& bar : setout::bars_between(standing_, run_.start, run_.end)) {
      if (course_.course < bar.first_course || course_.course > bar.last_course) continue;
      // The one unit that it can stand in, and at a face the one before.
      const auto over = std::ranges::upper_bound(pieces_, bar.centre, {}, [](const Piece& piece) { return piece.start.nearest_nanometre(); });
      const int last = static_cast<int>(over - pieces_.begin());
      for (int k = std::max(from.units + 1, last - 1); k <= last; ++k) {
        const Piece& piece = pieces_[static_cast<std::size_t>(k - 1)];
        const Length start = piece.start.nearest_nanometre(), in = bar.centre - start;
        const int joints = joints_to(k) - joints_to(from.units);
        if (in < Length() || in > piece.length || joints == 0) continue;
        for (const CellSpan& cell : setout::cells_of(building_.series_of(building_.walls[static_cast<std::size_t>(run_.wall)]), piece)) {
          if (in <= cell.from || in >= cell.to) continue;
          const Length taken = corrected_ahead(from.bias, k - from.units, how_.joints.step);
          wanted.bars.push_back({joints, in - half - cell.from, cell.to - half - in, drift(from.units, k, joints, planned(k)) + taken});
          centres.push_back(bar.centre);
        }
      }
    }
    return centres;
  }

  /// Where the run stood after so many units: as read at a mark; between two, as if it had gone wrong evenly.
  Stand stood_at(int units) const {
    const auto after = std::ranges::lower_bound(stood_, units, {}, &Stand::units);
    if (after->units == units) return *after;
    const Stand& before = *(after - 1);
    const std::int64_t change = (after->past - before.past).in_nanometres() * (units - before.units) / (after->units - before.units);
    return {units, before.past + Length::nanometres(change), before.bias};
  }

  /// The fewest units that come up and are laid again with joints that keep everything. They go before what loses a bar or
  /// a lap; beside a saw cut they are the other way.
  void weigh_laying_again(Aimed& now) {
    for (int units = state_.laid - 1; units >= 0; --units) {
      Aimed again = aimed_from(stood_at(units));
      if (again.correction.what != Correction::What::Joints || !again.lost.empty()) continue;
      again.correction.what = Correction::What::LayAgain, again.correction.again = state_.laid - units;
      if (now.correction.what == Correction::What::SawCut && now.lost.empty()) state_.instead = std::move(again.correction);
      else now = std::move(again);
      return;
    }
  }

  /// Head joints of the course below, centres.
  std::vector<Length> joints_below() const {
    std::vector<Length> centres;
    if (course_.course < 2) return centres;
    for (const Run& run : setout::runs_in(layout_, run_.wall, course_.course - 1)) {
      const auto pieces = setout::pieces_of(layout_, run);
      for (std::size_t k = 1; k < pieces.size(); ++k) {
        centres.push_back((setout::far_end(pieces[k - 1]).nearest_nanometre() + pieces[k].start.nearest_nanometre()).half_down());
      }
    }
    return centres;
  }

  /// Joints that, laid so, come nearer than a quarter unit to one of the course below.
  void name_short_laps(Aimed& aimed, const Stand& from) const {
    if (course_.course < 2 || aimed.correction.joints.empty()) return;
    const std::vector<Length> below = joints_below();  // in order along the wall
    const Length least = Length::nanometres((building_.series_of(building_.walls[static_cast<std::size_t>(run_.wall)]).full.in_nanometres() + 3) / 4);
    Length at = planned(from.units) + from.past;
    int unit = from.units;
    if (unit == 0 && !starts_with_joint()) at = at + pieces_[0].length, unit = 1;
    for (const Length joint : aimed.correction.joints) {
      const Length centre = at + joint.half_down();
      for (const Length other : std::ranges::subrange(std::ranges::upper_bound(below, centre - least), std::ranges::lower_bound(below, centre + least))) {
        aimed.lost.push_back("the lap over the joint at " + both_forms(other, building_.tape) + " below");
      }
      at = at + joint;
      if (unit < static_cast<int>(pieces_.size())) at = at + pieces_[static_cast<std::size_t>(unit)].length, ++unit;
    }
  }

  const Building& building_;
  const Layout& layout_;
  const HowLaid& how_;
  const Run& run_;
  std::span<const setout::WallBar> standing_;  // all of the wall's, in order
  std::span<const Piece> pieces_;
  std::vector<Length> length_to_;  // of the first k pieces
  CourseAsLaid& course_;
  RunAsLaid& state_;
  const std::vector<std::size_t> to_read_;  // marks of the run, from its start
  std::vector<Stand> stood_;  // at the start and at every mark that was read
};

RunAsLaid run_of(const Layout& layout, const Building& building, const HowLaid& how, const Run& run) {
  RunAsLaid state;
  state.start = run.start, state.end = run.end, state.joints = run.joints;
  const auto pieces = setout::pieces_of(layout, run);
  state.pieces = static_cast<int>(pieces.size());
  if (!how.batch) return state;
  Length others;
  int whole = 0;
  for (const Piece& piece : pieces) {
    if (piece.length == building.series.front().full) ++whole;
    else others = others + piece.length;
  }
  state.closing = closing_joint(run.end - run.start - others, whole, how.batch->mean, run.joints, how.joints.step, how.joints.working_least, how.joints.working_most);
  return state;
}

std::vector<WallMark> marks_of(const Building& building, const Layout& layout, int wall, int course) {
  std::vector<WallMark> marks;
  const auto runs = setout::runs_in(layout, wall, course);
  // A course's units are numbered on from run to run; a run may have none.
  std::vector<std::int32_t> last;
  for (const Run& run : runs) last.push_back((last.empty() ? 0 : last.back()) + static_cast<std::int32_t>(run.piece_count));
  std::vector<std::uint32_t> closing;  // in order, as the runs are
  for (const setout::Closure& closure : setout::closures_on(building, layout, wall, course)) closing.push_back(closure.piece);
  for (const setout::Mark& mark : setout::running_marks(building, layout, wall, course)) {
    WallMark met;
    met.mark = mark;
    if (mark.kind == MarkKind::BlockEnd) {
      const auto r = static_cast<std::size_t>(std::ranges::lower_bound(last, mark.piece) - last.begin());
      met.run = static_cast<int>(r);
      met.units = mark.piece - (r == 0 ? 0 : last[r - 1]);
      met.to_read = mark.bay || mark.piece == last[r];
      met.closes = std::ranges::binary_search(closing, runs[r].first_piece + static_cast<std::uint32_t>(met.units - 1));
    }
    marks.push_back(std::move(met));
  }
  return marks;
}

/// Past or short, whichever way it was given.
Length past_of(const MarkReading& reading) { return reading.past ? *reading.past : reading.read.value_or(reading.at) - reading.at; }

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
void judge_mark(WallMark& mark, const std::vector<Read>& reads, const std::vector<Length>& others, const HowLaid& how, Tape tape) {
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

void read_marks(CourseAsLaid& course, const Job& job, const Building& building, const HowLaid& how, const std::vector<bool>& counts, const std::optional<Trial>& trial, const std::map<int, Length>& printed) {
  std::vector<Length> places;
  for (const WallMark& mark : course.marks) {
    if (mark.run >= 0) places.push_back(mark.mark.at);
  }
  std::vector<std::size_t> here;  // entries about this course
  for (std::size_t k = 0; k < job.laid.size(); ++k) {
    const auto& reading = job.laid[k].mark;
    if (counts[k] && reading && reading->course == course.course && wall_of(building, reading->on) == course.wall) here.push_back(k);
  }
  for (WallMark& mark : course.marks) {
    if (mark.run < 0) continue;
    std::vector<Read> reads;
    for (const std::size_t k : here) {
      const MarkReading& reading = *job.laid[k].mark;
      const auto before = printed.find(mark.mark.piece);
      if (reading.at == mark.mark.at) reads.push_back({k, past_of(reading)});
      else if (before != printed.end() && reading.at == before->second && !std::ranges::contains(places, reading.at)) reads.push_back({k, past_of(reading) + reading.at - mark.mark.at});
    }
    judge_mark(mark, reads, places, how, building.tape);
    if (!trial || trial->at != mark.mark.at) continue;
    mark.past = trial->past, mark.state = WallMark::State::Read;
    mark.doubtful = doubtful(mark.mark.at, trial->past, places, building.tape);
    if (mark.doubtful) mark.state = WallMark::State::Doubtful;
  }
}

bool said_to_be_laid(const Job& job, const Building& building, const std::vector<bool>& counts, int wall, int course) {
  for (std::size_t k = 0; k < job.laid.size(); ++k) {
    if (counts[k] && job.laid[k].laid && job.laid[k].laid->course == course && wall_of(building, job.laid[k].laid->on) == wall) return true;
  }
  return false;
}

/// `own`: which of the course's marks are this run's.
void replay(Replay replay, CourseAsLaid& course, RunAsLaid& state, const std::vector<std::size_t>& own) {
  replay.aim();
  for (const std::size_t m : own) {
    const WallMark& mark = course.marks[m];
    if (!mark.past || mark.state == WallMark::State::Doubtful) continue;
    replay.meet(mark);
    std::erase_if(state.ahead, [&](std::size_t ahead) { return course.marks[ahead].units <= mark.units; });
    replay.aim();
  }
  state.finished = course.finished || state.ahead.empty();
}

}  // namespace

CourseAsLaid course_as_laid(const Job& job, const Building& building, const Layouts& layouts, const HowLaid& how, const std::vector<bool>& counts,
                            int wall, int course, std::optional<Trial> trial) {
  const Layout& layout = layouts.now;
  CourseAsLaid found;
  found.wall = wall, found.course = course;
  found.marks = marks_of(building, layout, wall, course);
  found.finished = said_to_be_laid(job, building, counts, wall, course);
  read_marks(found, job, building, how, counts, trial, printed_marks(building, layouts.printed, wall, course));
  const auto runs = setout::runs_in(layout, wall, course);
  for (const Run& run : runs) found.runs.push_back(run_of(layout, building, how, run));
  std::vector<std::vector<std::size_t>> own(runs.size());
  for (std::size_t m = 0; m < found.marks.size(); ++m) {
    if (found.marks[m].run >= 0) own[static_cast<std::size_t>(found.marks[m].run)].push_back(m);
  }
  const auto bars = setout::bars_on_wall(building, layout, wall);
  for (std::size_t r = 0; r < runs.size(); ++r) {
    std::vector<std::size_t>& ahead = found.runs[r].ahead;
    std::ranges::copy_if(own[r], std::back_inserter(ahead), [&](std::size_t m) { return found.marks[m].to_read; });
    replay({building, layout, how, runs[r], bars, found, found.runs[r], ahead}, found, found.runs[r], own[r]);
  }
  for (std::size_t r = 0; r < found.runs.size() && found.run < 0; ++r) {
    if (!found.runs[r].finished) found.run = static_cast<int>(r);
  }
  found.finished = found.run < 0;
  return found;
}

std::string next_text(const RunAsLaid& run, Tape tape) {
  if (run.finished) return "";
  return correction_text(run.next, tape) + (run.instead ? "; or " + correction_text(*run.instead, tape) : "");
}

std::string correction_text(const Correction& next, Tape tape) {
  // Equal neighbours in one: "2 of 5/16", then 1 of 3/8"".
  std::vector<std::pair<int, Length>> widths;
  for (const Length joint : next.joints) {
    if (!widths.empty() && widths.back().second == joint) ++widths.back().first;
    else widths.emplace_back(1, joint);
  }
  std::string text;
  for (const auto& [count, width] : widths) text += (text.empty() ? "" : ", then ") + number_text(count) + (count == 1 ? " joint of " : " joints of ") + tape_text(width, tape);
  switch (next.what) {
    case Correction::What::Joints: return text.empty() ? "no joint: the next unit stands at the start" : "next " + text;
    case Correction::What::SawCut: return "cut the next unit " + tape_text(next.cut, tape) + " shorter" + (text.empty() ? "" : ", then " + text);
    case Correction::What::LayAgain: return "lift the last " + (next.again == 1 ? std::string("unit") : number_text(next.again) + " units") + " and lay again with " + text;
    case Correction::What::CannotBe: return "no lawful joints bring it back before the end";
  }
  return text;
}

std::optional<ClosureOdds> closure_odds(const CourseAsLaid& course, const HowLaid& how, const Building& building, int courses, std::uint64_t seed) {
  if (course.run < 0) return std::nullopt;
  const RunAsLaid& run = course.runs[static_cast<std::size_t>(course.run)];
  CourseAhead ahead;
  ahead.units = run.pieces - run.laid;
  ahead.past = run.past, ahead.unit = building.series.front().full;
  // The closure's two joints take what is left.
  ahead.past_most = (how.joints.joint - how.joints.least) * 2, ahead.short_most = (how.joints.most - how.joints.joint) * 2;
  if (ahead.units <= 0) return std::nullopt;
  Hand hand = how.hand;
  hand.bias = run.bias.mean;
  ClosureOdds odds;
  odds.units = ahead.units, odds.past_most = ahead.past_most, odds.short_most = ahead.short_most;
  odds.with_marks = simulate(ahead, hand, how.joints, Marks::Used, courses, seed);
  odds.without = simulate(ahead, hand, how.joints, Marks::NotUsed, courses, seed);
  return odds;
}

}  // namespace stringcourse::laying
