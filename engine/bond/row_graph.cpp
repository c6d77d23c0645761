#include "bond/row_graph.hpp"

#include <algorithm>

#include "bond/concessions.hpp"
#include "measure/fault.hpp"

namespace stringcourse::bond {
namespace {

constexpr std::int64_t kBeyond = std::int64_t{1} << 60;  // past every wall
constexpr std::int32_t kMakeUp = -1;
constexpr std::int32_t kNoPiece = -2;
constexpr std::size_t kMostMarks = std::size_t{1} << 20;  // the bits that a node's key has for them

/// The cells a cut keeps, seen from its start face.
std::vector<Cell> cells_as_laid(const PieceChoice& choice, CutEnd cut) {
  std::vector<Cell> cells = choice.cells;
  if (cut != CutEnd::Start) return cells;
  for (Cell& cell : cells) cell = Cell{choice.length - cell.to, choice.length - cell.from};
  return cells;
}

}  // namespace

std::int64_t longest_target(const Panel& panel) {
  std::int64_t longest = 0;
  for (const Row& row : panel.rows) {
    for (const RowRun& run : row.runs) longest = std::max(longest, run.end - run.start + 2 * panel.joint);
  }
  return longest + longest / 8 + 4 * panel.joint;
}

Order order_of(const Panel& panel) {
  if (panel.weighted) return Order::Weighted;
  return panel.cuts_before_laps ? Order::QuarterBond : Order::HalfBond;
}

Menu menu_of(const Row& row, Stage stage) {
  Menu menu;
  menu.stage = stage;
  for (std::size_t i = 0; i < row.choices.size(); ++i) {
    const bool uncut_alone = stage == Stage::Whole || stage == Stage::Fewest;
    if (uncut_alone && row.choices[i].is_cut && !row.fixed) continue;
    menu.choices.push_back(row.choices[i]);
    menu.original.push_back(static_cast<std::int32_t>(i));
  }
  menu.make_up_from = stage == Stage::Whole ? 0 : row.make_up_from;
  return menu;
}

std::size_t most_families(const Panel& panel, const Room& room) {
  constexpr std::int64_t kQuarter = 4 * kLooksOfArc, kLeast = 100, kMost = 50'000;
  const auto rows = static_cast<std::int64_t>(std::max<std::size_t>(panel.rows.size(), 1));
  return static_cast<std::size_t>(std::clamp(room.left() / (rows * kQuarter), kLeast, kMost));
}

RowGraph::RowGraph(const Panel& panel, const Row& row, const Menu& menu, const Reach& reach)
    : panel_(&panel),
      row_(&row),
      menu_(&menu),
      reach_(&reach),
      saw_steps_(reach.grain(), panel.cut_step),
      order_(order_of(panel)) {
  Node before;
  before.place = Exact::at(row.runs.empty() ? 0 : row.runs.front().start);
  before.low = before.high = before.next = before.place.whole;
  before.run_done = true;
  nodes_.push_back(before);
  if (menu.stage == Stage::Few) uncut_ = Reach(menu_of(row, Stage::Whole), panel.joint, longest_target(panel));
  measure_modules();
  sum_printed();
  make_families();
  open_all_families();
}

std::int32_t RowGraph::run_without_family() const {
  for (std::size_t run = 0; run + 1 < first_family_.size(); ++run) {
    if (first_family_[run] == first_family_[run + 1]) return static_cast<std::int32_t>(run);
  }
  return -1;
}

void RowGraph::close_others(const std::vector<char>& alive) {
  for (std::size_t family = 0; family < open_.size(); ++family) open_[family] = open_[family] && alive[family];
}

// ---- nodes ---------------------------------------------------------------------------------------------------------

Exact RowGraph::joint_place(const Family& family, std::int64_t sum, std::int32_t count) const {
  const RowRun& run = row_->runs[static_cast<std::size_t>(family.run)];
  const std::int64_t starts = has_joint(run.at_start) ? 1 : 0;
  const int128 doubled = 2 * static_cast<int128>(run.start + sum + starts * panel_->joint) - panel_->joint;
  if (family.leftover == 0) return Exact::make(doubled, 2);
  const int128 share = static_cast<int128>(2 * (starts + count) - 1) * family.leftover;
  return Exact::make(doubled * family.joints + share, 2 * family.joints);
}

void RowGraph::place_node(Node& node, const Family& family) const {
  const RowRun& run = row_->runs[static_cast<std::size_t>(family.run)];
  if (family.kind == Family::Kind::Bare) {
    node.place = Exact::at(run.end);
    node.low = node.high = node.place.whole;
    return;
  }
  const bool at_run_start = node.sum == 0;
  const bool jointless = node.run_done && at_run_start && joint_ends(run) == 1;  // n = 0 and m = 0
  const bool joint_here =
      at_run_start ? has_joint(run.at_start) && !jointless : !node.run_done || has_joint(run.at_end);
  if (!joint_here) {
    node.place = Exact::at(node.run_done ? run.end : run.start);
    node.low = node.high = node.place.whole;
    return;
  }
  node.place = joint_place(family, node.sum, node.count);
  const bool fraction = node.place.numerator != node.place.whole * node.place.denominator;
  node.low = node.place.whole;
  node.high = node.place.whole + (fraction ? 1 : 0);
  const bool tied =
      (at_run_start && run.at_start == RunEnd::TiedJunction) || (node.run_done && run.at_end == RunEnd::TiedJunction);
  node.head_joint = !tied;
  if (at_run_start && run.at_start == RunEnd::LintelEnd) node.lintel = run.start_lintel;
  if (node.run_done && run.at_end == RunEnd::LintelEnd) node.lintel = run.end_lintel;
}

std::int32_t RowGraph::node_at(std::int32_t family_index, std::int64_t sum, std::int32_t count, bool made_up,
                               std::uint32_t mark) {
  const Family& family = families_[static_cast<std::size_t>(family_index)];
  const std::int32_t kept_count = family.leftover == 0 ? 0 : count;
  const std::uint64_t high = (static_cast<std::uint64_t>(family_index) << 44) ^
                             (static_cast<std::uint64_t>(mark) << 24) ^ (static_cast<std::uint64_t>(kept_count) << 1) ^
                             (made_up ? 1U : 0U);
  const std::int32_t known = index_.find(high, static_cast<std::uint64_t>(sum));
  if (known != IndexMap::kAbsent) return known;
  Node node;
  node.run = family.run;
  node.family = family_index;
  node.sum = sum;
  node.count = kept_count;
  node.made_up = made_up;
  node.run_done = sum == family.target;
  place_node(node, family);
  node.next = node.low;
  const auto index = static_cast<std::int32_t>(nodes_.size());
  index_.insert(high, static_cast<std::uint64_t>(sum), index);
  if (mark != 0) {
    node.first_held = static_cast<std::int32_t>(held_.size());
    node.held_count = static_cast<std::int32_t>(holding_.size());
    held_.insert(held_.end(), holding_.begin(), holding_.end());
  }
  nodes_.push_back(node);
  return index;
}

// ---- arcs ----------------------------------------------------------------------------------------------------------

std::int32_t RowGraph::grow_arcs(std::int32_t index) {
  if (node(index).first_arc >= 0) return node(index).first_arc;
  fresh_.clear();
  const Node from = node(index);
  if (from.run_done && !from.finished) {
    enter_run(from.run + 1);
  } else if (!from.finished) {
    grow_pieces(index);
  }
  Node& grown = nodes_[static_cast<std::size_t>(index)];
  grown.first_arc = static_cast<std::int32_t>(arcs_.size());
  grown.arc_count = static_cast<std::int32_t>(fresh_.size());
  grown.next = kBeyond;
  for (const Arc& arc : fresh_) grown.next = std::min(grown.next, node(arc.target).low);
  arcs_.insert(arcs_.end(), fresh_.begin(), fresh_.end());
  if (room_ != nullptr) static_cast<void>(room_->take(kLooksOfArc * static_cast<std::int64_t>(fresh_.size() + 1)));
  return grown.first_arc;
}

std::int32_t RowGraph::finished_node() {
  if (finished_ >= 0) return finished_;
  Node end;
  end.finished = true;
  end.run = static_cast<std::int32_t>(row_->runs.size());
  end.place = Exact::at(kBeyond);
  end.low = end.high = end.next = kBeyond;
  finished_ = static_cast<std::int32_t>(nodes_.size());
  nodes_.push_back(end);
  return finished_;
}

void RowGraph::enter_run(std::int32_t run) {
  if (run == static_cast<std::int32_t>(row_->runs.size())) {
    fresh_.push_back(Arc{finished_node(), kNoPiece, 0, CutEnd::None, Key{}});
    return;
  }
  const auto courses = row_->courses.size();
  for (std::int32_t f = first_family_[static_cast<std::size_t>(run)];
       f < first_family_[static_cast<std::size_t>(run) + 1]; ++f) {
    const Family& family = families_[static_cast<std::size_t>(f)];
    const std::int64_t leftover = family.leftover;
    Charge charge;
    if (family.kind == Family::Kind::Bare) charge.conceded = weight::kBare * static_cast<std::uint32_t>(courses);
    else if (leftover != 0 && !in_joint_range(leftover, family.joints))
      charge.conceded = weight::kWideJoints * static_cast<std::uint32_t>(courses);
    if (order_ != Order::Weighted)
      charge.deviation = static_cast<std::uint64_t>(leftover < 0 ? -leftover : leftover) * courses;
    fresh_.push_back(Arc{node_at(f, 0, 0, false, 0), kNoPiece, 0, CutEnd::None, key_of(charge, order_)});
  }
}

void RowGraph::grow_pieces(std::int32_t from) {
  const Family::Kind kind = families_[static_cast<std::size_t>(node(from).family)].kind;
  for (std::size_t i = 0; i < menu_->choices.size(); ++i) {
    if (may_lay(kind, menu_->choices[i])) try_piece(from, menu_->choices[i], menu_->original[i]);
  }
  if (menu_->make_up_from > 0 && !node(from).made_up) try_make_ups(from);
  // Longer pieces first: the order in which ties are broken.
  std::ranges::stable_sort(fresh_, [](const Arc& a, const Arc& b) { return a.length > b.length; });
}

void RowGraph::try_make_ups(std::int32_t from) {
  const Node node = nodes_[static_cast<std::size_t>(from)];
  const Family family = families_[static_cast<std::size_t>(node.family)];
  if (family.kind == Family::Kind::Shared) return;
  PieceChoice piece;
  piece.is_cut = true;
  const auto lay_length = [&](std::int64_t length) {
    piece.length = length;
    piece.cells.clear();
    for (const Cell& cell : row_->make_up_cells) {
      if (cell.to < length) piece.cells.push_back(cell);
    }
    try_piece(from, piece, kMakeUp);
  };
  if (family.kind == Family::Kind::Odd) {
    lay_length(family.make_up);
    return;
  }
  const std::int64_t rest = family.target - node.sum - panel_->joint;
  const std::int64_t grain = reach_->grain();
  const std::int64_t least = std::max<std::int64_t>(0, (rest - menu_->make_up_from) / grain * grain);
  const Meetings on_step = saw_steps_.meetings(least, rest);
  if (on_step.first < 0) return;
  for (std::int64_t others = on_step.first; others <= rest - panel_->least_piece; others += on_step.stride) {
    if (reach_->can_fill(others) && lawful_make_up(rest - others)) lay_length(rest - others);
  }
}

void RowGraph::sum_printed() {
  for (const std::vector<Chosen>& run : row_->printed) {
    std::vector<std::int64_t>& sums = printed_sums_.emplace_back();
    std::int64_t sum = 0;
    for (const Chosen& piece : run) {
      sums.push_back(sum);
      sum += piece.length + panel_->joint;
    }
  }
}

bool RowGraph::as_printed(std::int32_t run, std::int64_t sum, std::int64_t length, CutEnd cut) const {
  if (static_cast<std::size_t>(run) >= printed_sums_.size()) return false;
  const std::vector<std::int64_t>& sums = printed_sums_[static_cast<std::size_t>(run)];
  const auto found = std::ranges::lower_bound(sums, sum);
  if (found == sums.end() || *found != sum) return false;
  const Chosen& piece = row_->printed[static_cast<std::size_t>(run)][static_cast<std::size_t>(found - sums.begin())];
  return piece.length == length && piece.cut == cut;
}

Key RowGraph::charge(const PieceChoice& choice, bool changed, std::uint32_t conceded) const {
  const auto courses = static_cast<std::uint32_t>(row_->courses.size());
  Charge charge;
  charge.conceded = conceded;
  if (order_ == Order::Weighted) {
    charge.units = static_cast<std::uint64_t>(choice.weight) * courses;
    return key_of(charge, order_);
  }
  charge.units = courses;
  charge.changed = changed ? courses : 0;
  charge.cuts = choice.is_cut ? courses : 0;
  charge.short_pieces = choice.length < panel_->half_length ? courses : 0;
  return key_of(charge, order_);
}

RowGraph::Faces RowGraph::faces_of(const Node& from, std::int64_t length) const {
  const Family& family = families_[static_cast<std::size_t>(from.family)];
  const RowRun& run = row_->runs[static_cast<std::size_t>(from.run)];
  const std::int64_t starts = has_joint(run.at_start) ? 1 : 0;
  const std::int64_t base = run.start + from.sum + starts * panel_->joint;
  Faces faces;
  const bool counted = family.leftover != 0;
  const std::int64_t m = counted ? family.joints : 1;
  const std::int64_t shared = counted ? family.leftover : 0;
  faces.start = Exact::make(static_cast<int128>(base) * m + static_cast<int128>(starts + from.count) * shared, m);
  faces.end = faces.start.moved(length);
  const bool first = from.sum == 0;
  faces.previous_end = first ? Exact::at(run.start)
                             : Exact::make(static_cast<int128>(base - panel_->joint) * m +
                                               static_cast<int128>(starts + from.count - 1) * shared,
                                           m);
  return faces;
}

bool RowGraph::covers_bar(const Faces& faces) const {
  return std::ranges::any_of(panel_->bars, [&](const PanelBar& bar) {
    const Exact centre = Exact::at(bar.centre);
    return compare(centre, faces.previous_end) > 0 && compare(centre, faces.end) < 0;
  });
}

bool RowGraph::holds(const PanelBar& bar, std::size_t index, const PieceChoice& choice, CutEnd cut,
                     const Faces& faces) {
  const Exact centre = Exact::at(bar.centre);
  for (const Cell& cell : cells_as_laid(choice, cut)) {
    const Exact from = faces.start.moved(cell.from), to = faces.start.moved(cell.to);
    if (compare(centre, from, bar.half_width) < 0 || compare(to, centre, bar.half_width) < 0) continue;
    holding_.push_back(HeldCell{static_cast<std::int32_t>(index), from, to});
    return true;
  }
  return false;
}

std::uint32_t RowGraph::hold_bars(const RowRun& run, const PieceChoice& choice, CutEnd cut, const Faces& faces,
                                  bool last) {
  holding_.clear();
  std::uint32_t unheld = 0;
  for (std::size_t i = 0; i < panel_->bars.size(); ++i) {
    const PanelBar& bar = panel_->bars[i];
    if (bar.centre <= run.start || bar.centre >= run.end) continue;
    const Exact centre = Exact::at(bar.centre);
    if (compare(centre, faces.previous_end) < 0) continue;
    if (compare(centre, faces.end) >= 0) {
      if (last) ++unheld;  // in the joint at the run's end
      continue;            // else the next piece's affair
    }
    const bool in_joint = compare(centre, faces.start) <= 0;  // in the joint before this piece
    if (in_joint || !holds(bar, i, choice, cut, faces)) ++unheld;
  }
  return unheld;
}

std::uint32_t RowGraph::barring_zones(const PieceChoice& cut, const Faces& faces) const {
  return static_cast<std::uint32_t>(std::ranges::count_if(row_->uncut_zones, [&](const UncutZone& zone) {
    if (zone.rule == UnderBearing::WholeCell && !cut.cells.empty()) return false;
    return compare(faces.start, Exact::at(zone.to)) < 0 && compare(faces.end, Exact::at(zone.from)) > 0;
  }));
}

void RowGraph::try_piece(std::int32_t from, const PieceChoice& choice, std::int32_t original) {
  const Node node = nodes_[static_cast<std::size_t>(from)];
  const Family& family = families_[static_cast<std::size_t>(node.family)];
  const RowRun& run = row_->runs[static_cast<std::size_t>(node.run)];
  const std::int64_t sum = node.sum + choice.length + panel_->joint;
  if (sum > family.target || !can_finish(family, sum, node.count + 1, node.made_up || original == kMakeUp)) return;
  const bool first = node.sum == 0, last = sum == family.target;
  if (last && family.kind == Family::Kind::Odd && !node.made_up && original != kMakeUp) return;
  const bool makes_corner = choice.corner || (choice.half && first && last);
  const std::uint32_t corners = (first && run.at_start == RunEnd::ThroughCorner ? 1U : 0U) +
                                (last && run.at_end == RunEnd::ThroughCorner ? 1U : 0U);
  std::uint32_t conceded = makes_corner ? 0 : corners * weight::kCutCorner;
  if (conceded != 0 && !panel_->concedes) return;
  if (!choice.is_cut) return lay(from, choice, original, CutEnd::None, conceded);
  const bool start_shows = first && shows_face(run.at_start), end_shows = last && shows_face(run.at_end);
  if (start_shows && end_shows) {
    if (!panel_->concedes) return;
    conceded += weight::kCutFace;
  }
  if (!end_shows || start_shows) lay(from, choice, original, CutEnd::End, conceded);
  const bool either_way = !start_shows && !end_shows;
  if ((end_shows && !start_shows) || (either_way && covers_bar(faces_of(node, choice.length))))
    lay(from, choice, original, CutEnd::Start, conceded);
}

/// Tells apart pieces that end at the same place: with it the cells that hold bars are known.
std::uint32_t RowGraph::mark_of(const PieceChoice& choice, std::int32_t original, CutEnd cut) {
  std::size_t which = static_cast<std::size_t>(original);
  if (original == kMakeUp) {
    const auto found = std::ranges::find(make_ups_, choice.length);
    which = row_->choices.size() + static_cast<std::size_t>(found - make_ups_.begin());
    if (found == make_ups_.end()) make_ups_.push_back(choice.length);
  }
  const std::size_t mark = which * 4 + static_cast<std::size_t>(cut) + 1;
  ensure(mark < kMostMarks, "a row has more different pieces than its nodes can tell apart");
  return static_cast<std::uint32_t>(mark);
}

void RowGraph::lay(std::int32_t from, const PieceChoice& choice, std::int32_t original, CutEnd cut,
                   std::uint32_t conceded) {
  const Node node = nodes_[static_cast<std::size_t>(from)];
  const Family family = families_[static_cast<std::size_t>(node.family)];
  const RowRun& run = row_->runs[static_cast<std::size_t>(node.run)];
  const std::int64_t sum = node.sum + choice.length + panel_->joint;
  const bool changed = !row_->printed.empty() && !as_printed(node.run, node.sum, choice.length, cut);
  if (row_->fixed && changed) return;
  holding_.clear();
  std::uint32_t under_bearings = 0;
  if (!panel_->bars.empty() || !row_->uncut_zones.empty()) {
    const Faces faces = faces_of(node, choice.length);
    if (choice.is_cut) under_bearings = barring_zones(choice, faces);
    if (under_bearings != 0 && !panel_->concedes) return;
    conceded += weight::kBarUnheld * hold_bars(run, choice, cut, faces, sum == family.target);
    if (conceded != 0 && !panel_->concedes) return;
  }
  conceded = conceded * static_cast<std::uint32_t>(row_->courses.size()) + weight::kCutUnderBearing * under_bearings;
  const std::uint32_t mark = holding_.empty() ? 0 : mark_of(choice, original, cut);
  const std::int32_t target = node_at(node.family, sum, node.count + 1, node.made_up || original == kMakeUp, mark);
  fresh_.push_back(Arc{target, original, choice.length, cut, charge(choice, changed, conceded)});
}

}  // namespace stringcourse::bond
