#include "laying/replay.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

#include "bond/layout_parts.hpp"
#include "measure/metres.hpp"

namespace stringcourse::laying {
namespace {

/// Where a run stood after so many units, and what each unit was known to add then.
struct Stand {
  int units = 0;
  Length past;
  Bias bias;
};

struct Aimed {
  Correction correction;
  std::vector<Lost> lost;  // what it will not keep
  Length bias_taken;       // over the first bay
  std::size_t bays = 0;    // still ahead
};

/// One run while its course is replayed, mark by mark.
class Replay {
 public:
  Replay(const RunToReplay& what, const CourseAsLaid& course, RunAsLaid& state)
      : building_(what.building),
        layout_(what.layout),
        how_(what.how),
        run_(what.run),
        standing_(what.bars),
        below_(what.below),
        pieces_(bond::pieces_of(layout_, run_)),
        course_(course),
        state_(state),
        to_read_(state.ahead) {
    length_to_.push_back(Length());
    for (const Piece& piece : pieces_) length_to_.push_back(length_to_.back() + piece.length);
    state_.bias = unknown_bias();
    if (how_.batch) state_.bias = {how_.hand.bias, how_.batch->doubt * how_.batch->doubt};
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
  Length planned(int k) const {
    return k == 0 ? run_.start : bond::far_end(pieces_[static_cast<std::size_t>(k - 1)]).nearest_nanometre();
  }
  /// Joints laid by the time unit k lies.
  int joints_to(int k) const { return k == 0 ? 0 : k - 1 + (starts_with_joint() ? 1 : 0); }
  Length lengths(int from, int to) const {
    return length_to_[static_cast<std::size_t>(to)] - length_to_[static_cast<std::size_t>(from)];
  }
  /// What planned joints and units of planned length add up to beyond the plan, from unit to unit.
  Length drift(int from, int to, int joints, Length target) const {
    return how_.joints.joint * joints + lengths(from, to) - (target - planned(from));
  }
  Length joints_asked(int joints) const {
    Length sum;
    for (int j = 0; j < joints; ++j)
      sum = sum + (j < static_cast<int>(state_.next.joints.size())
                       ? state_.next.joints[static_cast<std::size_t>(j)] - how_.joints.joint
                       : Length());
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
    for (const int lost : aimed.correction.bars_lost)
      aimed.lost.push_back({Lost::What::Bar, bars[static_cast<std::size_t>(lost)]});
    if (aimed.correction.what == Correction::What::Joints) name_short_laps(aimed, from);
    return aimed;
  }

  /// How far each unit ahead may lie off before the bar in it loses its clearance. Hands back the bars' centres.
  std::vector<Length> add_bars(Wanted& wanted, const Stand& from) const {
    std::vector<Length> centres;
    if (!building_.bars) return centres;
    const Length half = building_.bars->diameter.half_down() + building_.bars->clearance;
    for (const bond::WallBar& bar : bond::bars_between(standing_, run_.start, run_.end)) {
      if (course_.course < bar.first_course || course_.course > bar.last_course) continue;
      // The one unit that it can stand in, and at a face the one before.
      const auto over = std::ranges::upper_bound(pieces_, bar.centre, {},
                                                 [](const Piece& piece) { return piece.start.nearest_nanometre(); });
      const int last = static_cast<int>(over - pieces_.begin());
      for (int k = std::max(from.units + 1, last - 1); k <= last; ++k) {
        const Piece& piece = pieces_[static_cast<std::size_t>(k - 1)];
        const Length start = piece.start.nearest_nanometre(), in = bar.centre - start;
        const int joints = joints_to(k) - joints_to(from.units);
        if (in < Length() || in > piece.length || joints == 0) continue;
        for (const CellSpan& cell :
             bond::cells_of(building_.series_of(building_.walls[static_cast<std::size_t>(run_.wall)]), piece)) {
          if (in <= cell.from || in >= cell.to) continue;
          const Length taken = corrected_ahead(from.bias, k - from.units, how_.joints.step);
          wanted.bars.push_back(
              {joints, in - half - cell.from, cell.to - half - in, drift(from.units, k, joints, planned(k)) + taken});
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
    const std::int64_t change =
        (after->past - before.past).in_nanometres() * (units - before.units) / (after->units - before.units);
    return {units, before.past + Length::nanometres(change), before.bias};
  }

  /// The fewest units that come up and are laid again with joints that keep everything. They go before what loses a bar
  /// or a lap; beside a saw cut they are the other way.
  void weigh_laying_again(Aimed& now) {
    for (int units = state_.laid - 1; units >= 0; --units) {
      Aimed again = aimed_from(stood_at(units));
      if (again.correction.what != Correction::What::Joints || !again.lost.empty()) continue;
      again.correction.what = Correction::What::LayAgain, again.correction.again = state_.laid - units;
      if (now.correction.what == Correction::What::SawCut && now.lost.empty())
        state_.instead = std::move(again.correction);
      else now = std::move(again);
      return;
    }
  }

  /// Joints that, laid so, come nearer than a quarter unit to one of the course below.
  void name_short_laps(Aimed& aimed, const Stand& from) const {
    if (below_.empty()) return;
    const Length least = Length::nanometres(
        (building_.series_of(building_.walls[static_cast<std::size_t>(run_.wall)]).full.in_nanometres() + 3) / 4);
    Length at = planned(from.units) + from.past;
    int unit = from.units;
    if (unit == 0 && !starts_with_joint()) at = at + pieces_[0].length, unit = 1;
    for (const Length joint : aimed.correction.joints) {
      const Length centre = at + joint.half_down();
      for (const Length other : std::ranges::subrange(std::ranges::upper_bound(below_, centre - least),
                                                      std::ranges::lower_bound(below_, centre + least))) {
        aimed.lost.push_back({Lost::What::Lap, other});
      }
      at = at + joint;
      if (unit < static_cast<int>(pieces_.size())) at = at + pieces_[static_cast<std::size_t>(unit)].length, ++unit;
    }
  }

  const Building& building_;
  const Layout& layout_;
  const HowLaid& how_;
  const Run& run_;
  std::span<const bond::WallBar> standing_;  // all of the wall's, in order
  std::span<const Length> below_;
  std::span<const Piece> pieces_;
  std::vector<Length> length_to_;  // of the first k pieces
  const CourseAsLaid& course_;
  RunAsLaid& state_;
  const std::vector<std::size_t> to_read_;  // marks of the run, from its start
  std::vector<Stand> stood_;                // at the start and at every mark that was read
};

}  // namespace

void replay(const RunToReplay& what, CourseAsLaid& course, std::size_t run, const std::vector<std::size_t>& own) {
  RunAsLaid& state = course.runs[run];
  Replay replay(what, course, state);
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

}  // namespace stringcourse::laying
