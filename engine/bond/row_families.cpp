// The families of a row's runs: which sums of pieces close them, with which joints.
#include <algorithm>
#include <array>

#include "bond/row_graph.hpp"
#include "measure/sorting.hpp"

namespace stringcourse::bond {
namespace {

constexpr std::int64_t kBeyond = std::int64_t{1} << 60;  // past every wall
constexpr int kRoughCounts = 2;
constexpr std::size_t kKinds = 4;  // of families

std::int64_t rounded_to_step(std::int64_t length, std::int64_t step) {
  return rounded_to(Length::nanometres(length), Length::nanometres(step)).in_nanometres();
}

}  // namespace

void RowGraph::make_families() {
  for (std::size_t index = 0; index < row_->runs.size(); ++index) {
    first_family_.push_back(static_cast<std::int32_t>(families_.size()));
    const RowRun& stretch = row_->runs[index];
    const auto run = static_cast<std::int32_t>(index);
    const std::int64_t target = stretch.end - stretch.start + (1 - joint_ends(stretch)) * panel_->joint;
    const std::size_t before = families_.size();
    if (row_->fixed) {
      add_printed(run, target);
      continue;
    }
    add_even(run, target);
    const bool closes_even = families_.size() > before;
    if (menu_->stage == Stage::Whole && closes_even) continue;
    add_shared(run, target);
    if (menu_->stage == Stage::Few && closes_even) continue;
    if (menu_->make_up_from > 0) add_odd(run, target);
    if (panel_->concedes && families_.size() == before) add_bare(run);
  }
  first_family_.push_back(static_cast<std::int32_t>(families_.size()));
}

/// A run that nothing fills is left bare.
void RowGraph::add_bare(std::int32_t run) {
  Family family;
  family.kind = Family::Kind::Bare;
  family.run = run;
  families_.push_back(family);
}

void RowGraph::add_even(std::int32_t run, std::int64_t target) {
  if (target < 0) return;
  Family family;
  family.run = run;
  family.target = target;
  if (can_finish(family, 0, 0, false)) families_.push_back(family);
}

void RowGraph::add_printed(std::int32_t run, std::int64_t target) {
  const std::vector<Chosen>& pieces = row_->printed[static_cast<std::size_t>(run)];
  Family family;
  family.run = run;
  for (const Chosen& piece : pieces) family.target += piece.length + panel_->joint;
  family.leftover = target - family.target;
  if (family.leftover != 0) {
    family.kind = Family::Kind::Shared;
    family.pieces = static_cast<std::int32_t>(pieces.size());
    family.joints = family.pieces - 1 + joint_ends(row_->runs[static_cast<std::size_t>(run)]);
    if (family.joints < 1 || !may_have_joints(family.leftover, family.joints)) return;
  }
  families_.push_back(family);
}

bool RowGraph::in_joint_range(std::int64_t leftover, std::int64_t joints) const {
  const int128 slack = static_cast<int128>(panel_->joint) * joints + leftover;
  return slack >= static_cast<int128>(panel_->joint_least) * joints &&
         slack <= static_cast<int128>(panel_->joint_most) * joints;
}

bool RowGraph::may_have_joints(std::int64_t leftover, std::int64_t joints) const {
  if (in_joint_range(leftover, joints)) return true;
  const int128 slack = static_cast<int128>(panel_->joint) * joints + leftover;
  return panel_->concedes && slack >= static_cast<int128>(panel_->far_joint_least) * joints &&
         slack <= static_cast<int128>(panel_->far_joint_most) * joints;
}

/// One family for each number of pieces whose joints are in range.
void RowGraph::add_counted(Family family, std::int32_t least, std::int32_t most) {
  const std::int32_t ends = joint_ends(row_->runs[static_cast<std::size_t>(family.run)]);
  int taken = 0;
  for (std::int32_t pieces = least; pieces <= most; ++pieces) {
    family.joints = pieces - 1 + ends;
    if (family.joints < 1 || !may_have_joints(family.leftover, family.joints)) continue;
    if (families_.size() >= menu_->most_families) {
      cut_short_ = true;
      return;
    }
    family.pieces = pieces;
    families_.push_back(family);
    if (is_rough(menu_->stage) && ++taken == kRoughCounts) return;
  }
}

/// What the pieces of a family of this kind may be: in stage Few joints share a leftover between whole pieces alone.
const Reach& RowGraph::reach_of(Family::Kind kind) const {
  return !row_->fixed && menu_->stage == Stage::Few && kind == Family::Kind::Shared ? uncut_ : *reach_;
}

void RowGraph::add_shared(std::int32_t run, std::int64_t target) {
  const Reach& reach = reach_of(Family::Kind::Shared);
  std::int64_t least_module = std::max<std::int64_t>(target, 1);
  for (const PieceChoice& choice : menu_->choices) {
    if (may_lay(Family::Kind::Shared, choice)) least_module = std::min(least_module, choice.length + panel_->joint);
  }
  const std::int64_t most_joints = std::max<std::int64_t>(target, 0) / least_module + 2;
  const std::int64_t widest = panel_->concedes ? panel_->far_joint_most : panel_->joint_most;
  const std::int64_t tightest = panel_->concedes ? panel_->far_joint_least : panel_->joint_least;
  const std::int64_t wider = (widest - panel_->joint) * most_joints;
  const std::int64_t tighter = (panel_->joint - tightest) * most_joints;
  const std::int64_t grain = reach.grain();
  const std::int64_t first = std::max<std::int64_t>(0, (target - wider) / grain * grain);
  for (std::int64_t sum = first; sum <= target + tighter && !cut_short_; sum += grain) {
    if (sum == target || !reach.can_fill(sum)) continue;
    Family family;
    family.kind = Family::Kind::Shared;
    family.run = run;
    family.target = sum;
    family.leftover = target - sum;
    add_counted(family, reach.least_count(sum), reach.most_count(sum));
  }
}

void RowGraph::add_odd(std::int32_t run, std::int64_t target) {
  const std::int64_t grain = reach_->grain();
  const std::int64_t most_others = target - panel_->joint - panel_->least_piece + panel_->cut_step;
  const std::int64_t least_others = target - panel_->joint - menu_->make_up_from - panel_->cut_step;
  for (std::int64_t others = std::max<std::int64_t>(0, least_others / grain * grain);
       others <= most_others && !cut_short_; others += grain) {
    if (!reach_->can_fill(others)) continue;
    const std::int64_t rest = target - others - panel_->joint;
    const std::int64_t length = rounded_to_step(rest, panel_->cut_step);
    if (length == rest || !lawful_make_up(length)) continue;
    Family family;
    family.kind = Family::Kind::Odd;
    family.run = run;
    family.make_up = length;
    family.target = others + length + panel_->joint;
    family.leftover = rest - length;
    add_counted(family, reach_->least_count(others) + 1, reach_->most_count(others) + 1);
  }
}

bool RowGraph::lawful_make_up(std::int64_t length) const {
  if (length < panel_->least_piece || length >= menu_->make_up_from || length % panel_->cut_step != 0) return false;
  return std::ranges::none_of(menu_->choices, [&](const PieceChoice& choice) { return choice.length == length; });
}

bool RowGraph::can_make_up(std::int64_t rest, std::int32_t) const {
  const std::int64_t grain = reach_->grain();
  const std::int64_t least = rest - panel_->joint - menu_->make_up_from;
  const std::int64_t beside = rest - panel_->joint;  // the make-up and what is laid with it
  const Meetings on_step = saw_steps_.meetings(std::max<std::int64_t>(0, least / grain * grain), beside);
  if (on_step.first < 0) return false;
  for (std::int64_t others = on_step.first; others <= beside - panel_->least_piece; others += on_step.stride) {
    if (reach_->can_fill(others) && lawful_make_up(rest - others - panel_->joint)) return true;
  }
  return false;
}

bool RowGraph::can_finish(const Family& family, std::int64_t sum, std::int32_t count, bool made_up) const {
  const bool owes_make_up = family.kind == Family::Kind::Odd && !made_up;
  const std::int64_t rest = family.target - sum - (owes_make_up ? family.make_up + panel_->joint : 0);
  const Reach& reach = reach_of(family.kind);
  if (reach.can_fill(rest)) {
    if (family.leftover == 0) return true;
    const std::int32_t left = family.pieces - count - (owes_make_up ? 1 : 0);
    return reach.least_count(rest) <= left && left <= reach.most_count(rest);
  }
  return family.kind == Family::Kind::Even && !made_up && menu_->make_up_from > 0 && can_make_up(rest, 0);
}

void RowGraph::open_likeliest(std::size_t most) {
  const auto magnitude_of = [&](std::int32_t family) {
    const std::int64_t leftover = families_[static_cast<std::size_t>(family)].leftover;
    return leftover < 0 ? -leftover : leftover;
  };
  open_.assign(families_.size(), 0);
  for (std::size_t run = 0; run + 1 < first_family_.size(); ++run) {
    std::vector<std::int32_t> likeliest;
    for (std::int32_t f = first_family_[run]; f < first_family_[run + 1]; ++f) likeliest.push_back(f);
    sort_stably(likeliest, {}, magnitude_of);
    std::array<std::size_t, kKinds> opened{};
    for (const std::int32_t f : likeliest) {
      std::size_t& of_kind = opened[static_cast<std::size_t>(families_[static_cast<std::size_t>(f)].kind)];
      if (of_kind < most) open_[static_cast<std::size_t>(f)] = 1;
      ++of_kind;
    }
  }
}

void RowGraph::measure_modules() {
  least_module_ = kBeyond;
  for (const PieceChoice& choice : menu_->choices) {
    longest_module_ = std::max(longest_module_, choice.length + panel_->joint);
    least_module_ = std::min(least_module_, choice.length + panel_->joint);
  }
  for (const PieceChoice& choice : menu_->choices) {
    const bool is_long = choice.length + panel_->joint_most >= 2 * panel_->short_lap_below;
    if (is_long) long_deficit_ = std::max(long_deficit_, longest_module_ - choice.length - panel_->joint);
  }
}

/// Of `left` pieces that must make `rest`, what is missing to as many longest pieces comes from shorter ones; long
/// pieces miss at most long_deficit_ each. One piece may be the make-up, of any length.
std::int32_t RowGraph::least_short_to_come(const Node& node) const {
  if (node.family < 0 || node.run_done) return 0;
  const Family& family = families_[static_cast<std::size_t>(node.family)];
  if (family.leftover == 0) return 0;
  std::int64_t rest = family.target - node.sum, left = family.pieces - node.count;
  if (family.kind == Family::Kind::Odd && !node.made_up) {
    rest -= family.make_up + panel_->joint;
    --left;
  }
  const std::int64_t missing = left * longest_module_ - rest - left * long_deficit_;
  const std::int64_t each = longest_module_ - least_module_ - long_deficit_;
  if (missing <= 0 || each <= 0) return 0;
  return static_cast<std::int32_t>((missing + each - 1) / each);
}

std::uint64_t RowGraph::least_deviation() const {
  std::uint64_t sum = 0;
  for (std::size_t run = 0; run + 1 < first_family_.size(); ++run) {
    std::uint64_t least = ~std::uint64_t{0};
    for (std::int32_t f = first_family_[run]; f < first_family_[run + 1]; ++f) {
      const std::int64_t leftover = families_[static_cast<std::size_t>(f)].leftover;
      least = std::min(least, static_cast<std::uint64_t>(leftover < 0 ? -leftover : leftover));
    }
    if (least != ~std::uint64_t{0}) sum += least * row_->courses.size();
  }
  return sum;
}

}  // namespace stringcourse::bond
