#include "laying/correction.hpp"

#include <algorithm>

#include "catalogue/rules.hpp"

namespace stringcourse::laying {
namespace {

/// Whole steps within a length (down) or that cover it (up).
std::int64_t steps_down(Length length, Length step) { return length.whole_multiples(step); }
std::int64_t steps_up(Length length, Length step) { return -(-length).whole_multiples(step); }

struct Search {
  const Wanted& wanted;
  const JointRules& rules;

  /// What the joints up to this mark have to take.
  Length to_take(std::size_t bay) const {
    return wanted.past + (bay < wanted.ahead.size() ? wanted.ahead[bay] : Length());
  }
  std::vector<std::int64_t> all_past() const {
    std::vector<std::int64_t> all{0};
    for (std::size_t bay = 0; bay < wanted.bays.size(); ++bay) all.push_back(past(bay));
    return all;
  }
  std::int64_t past(std::size_t bay) const { return rounded_to(to_take(bay), rules.step).whole_multiples(rules.step); }
  Length left(std::size_t bay) const { return to_take(bay) - rounded_to(to_take(bay), rules.step); }

  Steps steps(bool tolerance) const {
    const Length least = tolerance ? rules.least : rules.working_least,
                 most = tolerance ? rules.most : rules.working_most;
    return {steps_down(rules.joint + rules.step.half_down(), rules.step), steps_up(least, rules.step),
            steps_down(most, rules.step)};
  }
  /// Without those in `lost`, for joints that end at this mark. Rounding's rest counts against a bar.
  std::vector<Window> windows(const std::vector<int>& lost, std::size_t bay) const {
    std::vector<Window> all;
    const Length by_mark = to_take(bay) - wanted.past;
    for (std::size_t k = 0; k < wanted.bars.size(); ++k) {
      if (std::ranges::contains(lost, static_cast<int>(k))) continue;
      const BarAhead& bar = wanted.bars[k];
      // What is counted at the mark already has not come about yet at the bar.
      const Length shift = by_mark - bar.ahead - left(bay);
      all.push_back(
          {bar.joints, steps_up(shift - bar.short_most, rules.step), steps_down(shift + bar.past_most, rules.step)});
    }
    return all;
  }
};

void put(Correction& correction, const std::vector<std::int64_t>& widths, const Search& search, bool tolerance) {
  const Steps working = search.steps(false);
  for (const std::int64_t width : widths) {
    correction.joints.push_back(search.rules.step * width);
    correction.outside_working =
        correction.outside_working || (tolerance && (width < working.least || width > working.most));
  }
}

/// Over as few bays as can take it; true where any can.
bool over_bays(Correction& correction, const Search& search, std::int64_t cut, bool tolerance,
               const std::vector<int>& lost) {
  int count = 0;
  for (std::size_t bay = 0; bay < search.wanted.bays.size(); ++bay) {
    count += search.wanted.bays[bay];
    // A bar beyond these bays stands as planned again.
    const auto widths = even_joints(count, search.past(bay) - cut, search.steps(tolerance), search.windows(lost, bay));
    if (!widths) continue;
    correction.bays = static_cast<int>(bay) + 1;
    correction.left = search.left(bay);
    put(correction, *widths, search, tolerance);
    return true;
  }
  return false;
}

bool by_joints(Correction& correction, const Search& search, const std::vector<int>& lost) {
  if (over_bays(correction, search, 0, false, lost)) return true;
  return search.wanted.beyond_working && over_bays(correction, search, 0, true, lost);
}

/// The next unit shorter by the least that leaves the rest to the joints.
bool by_cut(Correction& correction, const Search& search, const std::vector<int>& lost) {
  const std::int64_t unit = steps_down(search.wanted.unit, search.rules.step);
  const std::int64_t most = std::min(unit / 2 - 1, std::ranges::max(search.all_past()));
  for (std::int64_t cut = 1; cut <= most; ++cut) {
    if (!over_bays(correction, search, cut, false, lost)) continue;
    correction.cut = search.rules.step * cut;
    return true;
  }
  return false;
}

Correction with_lost(const Search& search, const std::vector<int>& lost) {
  Correction correction;
  correction.bars_lost = lost;
  if (search.wanted.bays.empty()) return correction;
  if (by_joints(correction, search, lost)) correction.what = Correction::What::Joints;
  else if (by_cut(correction, search, lost)) correction.what = Correction::What::SawCut;
  return correction;
}

}  // namespace

JointRules joint_rules(Tape tape, Length joint) {
  const Length least = limit_of("head-joint-range"), most = limit_of("head-joint-range", Tape::Inches, 1);
  return {tape_step(tape), joint, limit_of("working-joints", tape), limit_of("working-joints", tape, 1), least, most};
}

Correction corrected(const Wanted& wanted, const JointRules& rules) {
  const Search search{wanted, rules};
  std::vector<int> lost;
  for (;;) {
    const Correction correction = with_lost(search, lost);
    // A bar is given up only where nothing at all keeps it: the nearest first, for it has the fewest joints before it.
    if (correction.what != Correction::What::CannotBe || lost.size() == wanted.bars.size()) return correction;
    int next = -1;
    for (std::size_t k = 0; k < wanted.bars.size(); ++k) {
      if (std::ranges::contains(lost, static_cast<int>(k))) continue;
      if (next < 0 || wanted.bars[k].joints < wanted.bars[static_cast<std::size_t>(next)].joints)
        next = static_cast<int>(k);
    }
    lost.push_back(next);
  }
}

}  // namespace stringcourse::laying
