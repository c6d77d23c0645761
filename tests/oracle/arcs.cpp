#include "oracle/arcs.hpp"

#include <map>
#include <numeric>
#include <set>
#include <tuple>
#include <utility>

namespace stringcourse::oracle {
namespace {

using bond::Panel;
using bond::Row;
using bond::RowRun;

/// Runs whose joints are all over / under wide; with a make-up piece of the given length (0: none). Where the make-up
/// was rounded the joints differ from the panel's, and the number of pieces is then part of the group (0: any).
struct Group {
  Exact joint;
  std::int64_t make_up = 0;
  std::int64_t pieces = 0;
  friend auto operator<=>(const Group&, const Group&) = default;
};

/// All (length in all, number of pieces) that listed pieces can have inside the run.
std::set<std::pair<std::int64_t, std::int64_t>> totals(const Row& row, std::int64_t room) {
  std::set<std::pair<std::int64_t, std::int64_t>> seen{{0, 0}};
  std::vector<std::pair<std::int64_t, std::int64_t>> open{{0, 0}};
  while (!open.empty()) {
    const auto [length, pieces] = open.back();
    open.pop_back();
    for (const bond::PieceChoice& choice : row.choices) {
      const std::pair next{length + choice.length, pieces + 1};
      if (next.first <= room && seen.insert(next).second) open.push_back(next);
    }
  }
  return seen;
}

std::int64_t make_up_length(const Panel& panel, const Row& row, std::int64_t rest) {
  if (row.make_up_from <= 0 || rest <= 0) return 0;
  const std::int64_t length = (2 * rest + panel.cut_step) / (2 * panel.cut_step) * panel.cut_step;
  if (length < panel.least_piece || length >= row.make_up_from) return 0;
  for (const bond::PieceChoice& choice : row.choices)
    if (choice.length == length) return 0;
  return length;
}

std::set<Group> groups(const Panel& panel, const Row& row, const RowRun& run) {
  const std::int64_t room = run.end - run.start;
  const std::int64_t ends = has_joint(run.at_start) + has_joint(run.at_end);
  std::set<Group> found;
  const auto in_range = [&](std::int64_t slack, std::int64_t m) {
    return slack >= m * panel.joint_least && slack <= m * panel.joint_most;
  };
  for (const auto& [length, pieces] : totals(row, room)) {
    const std::int64_t m = pieces - 1 + ends, slack = room - length;
    if (pieces > 0 && m == 0 && slack == 0) found.insert({{panel.joint, 1}, 0, 0});
    if (pieces > 0 && m > 0 && in_range(slack, m)) found.insert({Exact::of(slack, m), 0, 0});
    const std::int64_t make_up = make_up_length(panel, row, room - length - (m + 1) * panel.joint);
    if (make_up == 0 || m + 1 <= 0 || !in_range(slack - make_up, m + 1)) continue;
    const Exact joint = Exact::of(slack - make_up, m + 1);
    found.insert({joint, make_up, joint == Exact{panel.joint, 1} ? 0 : pieces + 1});
  }
  return found;
}

/// Builds one group's arcs. Places are whole in units of 1 / scale nanometre, half joints too.
class GroupGraph {
 public:
  GroupGraph(const Panel& panel, const Row& row, std::int32_t run, const Group& group, RunGraph& graph)
      : panel_(panel),
        row_(row),
        run_(row.runs[static_cast<std::size_t>(run)]),
        run_index_(run),
        group_(group),
        graph_(graph),
        scale_(2 * group.joint.under),
        joint_(2 * group.joint.over),
        end_(run_.end * scale_) {}

  void build() {
    const std::int64_t first = run_.start * scale_ + (has_joint(run_.at_start) ? joint_ : 0);
    leave(kSource, {first, false, 0});
  }

 private:
  using State = std::tuple<std::int64_t, bool, std::int64_t>;  // start face; make-up laid; pieces laid, if they count

  /// The node of a state from which the run's end can be reached; -1: it cannot.
  int node(const State& state) {
    if (const auto known = known_.find(state); known != known_.end()) return known->second;
    const int made = graph_.nodes++;
    const std::size_t before = graph_.arcs.size();
    leave(made, state);
    const int result = graph_.arcs.size() > before ? made : -1;
    known_[state] = result;
    return result;
  }

  void leave(int from, const State& state) {
    for (std::size_t i = 0; i < row_.choices.size(); ++i)
      lay(from, state, {row_.choices[i].length, static_cast<std::int32_t>(i), CutEnd::None});
    if (group_.make_up > 0 && !std::get<1>(state)) lay(from, state, {group_.make_up, -1, CutEnd::None});
  }

  bool ends_run(std::int64_t face) const { return face + (has_joint(run_.at_end) ? joint_ : 0) == end_; }

  void lay(int from, const State& state, const bond::Chosen& piece) {
    const auto [face, made_up, laid] = state;
    const std::int64_t far = face + piece.length * scale_;
    if (far > end_) return;
    const bool made_up_now = made_up || piece.choice < 0;
    const std::int64_t count = group_.pieces > 0 ? laid + 1 : 0;
    if (ends_run(far)) {
      const bool whole = made_up_now == (group_.make_up > 0) && count == group_.pieces;
      if (whole && corner_allows(piece, from == kSource, true)) add_both_ways(from, kSink, face, piece);
      return;
    }
    if (!corner_allows(piece, from == kSource, false)) return;
    const int to = node({far + joint_, made_up_now, count});
    if (to >= 0) add_both_ways(from, to, face, piece);
  }

  bool corner_allows(const bond::Chosen& piece, bool first, bool last) const {
    const bool at_corner =
        (first && run_.at_start == RunEnd::ThroughCorner) || (last && run_.at_end == RunEnd::ThroughCorner);
    if (!at_corner) return true;
    if (piece.choice < 0) return false;
    const bond::PieceChoice& choice = row_.choices[static_cast<std::size_t>(piece.choice)];
    return choice.corner || (choice.half && first && last);
  }

  bool cut(const bond::Chosen& piece) const {
    return piece.choice < 0 || row_.choices[static_cast<std::size_t>(piece.choice)].is_cut;
  }

  void add_both_ways(int from, int to, std::int64_t face, bond::Chosen piece) {
    if (!cut(piece)) return add(from, to, face, piece);
    const std::int64_t far = face + piece.length * scale_;
    for (const bond::UncutZone& zone : row_.uncut_zones)
      if (face < zone.to * scale_ && far > zone.from * scale_) return;
    bool near_bar = false;
    for (const bond::PanelBar& bar : panel_.bars)
      near_bar = near_bar || (face <= bar.centre * scale_ && bar.centre * scale_ <= far);
    const bool at_start = from != kSource || has_joint(run_.at_start);
    piece.cut = CutEnd::Start;
    if (at_start) add(from, to, face, piece);
    piece.cut = CutEnd::End;
    if ((to != kSink || has_joint(run_.at_end)) && (near_bar || !at_start)) add(from, to, face, piece);
  }

  void add(int from, int to, std::int64_t face, const bond::Chosen& piece) {
    Arc arc{from, to, piece, false, group_.joint, 0, {}, {}};
    const std::int64_t far = face + piece.length * scale_;
    if (!meets_bars(arc, face, to == kSink && !has_joint(run_.at_end) ? far : far + joint_)) return;
    if (from == kSource && has_joint(run_.at_start))
      add_joint(arc, run_.at_start, face - joint_ / 2, run_.start_lintel, 1);
    if (to != kSink) add_joint(arc, RunEnd::ButtCorner, far + joint_ / 2, -1, 0);
    if (to == kSink && has_joint(run_.at_end)) add_joint(arc, run_.at_end, far + joint_ / 2, run_.end_lintel, 0);
    graph_.arcs.push_back(std::move(arc));
  }

  void add_joint(Arc& arc, RunEnd end, std::int64_t centre, std::int32_t lintel, std::int32_t side) const {
    ++arc.all_joints;
    if (end == RunEnd::TiedJunction) return;
    const bool closes_lintel = end == RunEnd::LintelEnd && lintel >= 0;
    arc.joints.push_back(
        {run_index_, Exact::of(centre, scale_), closes_lintel ? lintel : -1, closes_lintel ? side : 0});
  }

  /// Notes the cell of each bar; false: a bar of this run stands in this piece or its joint, but in no cell.
  bool meets_bars(Arc& arc, std::int64_t face, std::int64_t past_joint) const {
    for (std::size_t b = 0; b < panel_.bars.size(); ++b) {
      const bond::PanelBar& bar = panel_.bars[b];
      if (bar.centre <= run_.start || bar.centre >= run_.end) continue;
      const std::int64_t centre = bar.centre * scale_, half = bar.half_width * scale_;
      const std::size_t before = arc.cells.size();
      for (const auto& [from, to] : clear_cells(arc.piece)) {
        const std::int64_t left = face + from * scale_, right = face + to * scale_;
        if (left <= centre - half && centre + half <= right)
          arc.cells.push_back({static_cast<std::int32_t>(b), Exact::of(left, scale_), Exact::of(right, scale_)});
      }
      if (arc.cells.size() == before && face < centre && centre < past_joint) return false;
    }
    return true;
  }

  std::vector<std::pair<std::int64_t, std::int64_t>> clear_cells(const bond::Chosen& piece) const {
    const bool made_up = piece.choice < 0;
    const auto& listed = made_up ? row_.make_up_cells : row_.choices[static_cast<std::size_t>(piece.choice)].cells;
    std::vector<std::pair<std::int64_t, std::int64_t>> cells;
    for (const bond::Cell& cell : listed) {
      if (made_up && cell.to >= piece.length) continue;
      if (piece.cut == CutEnd::Start) cells.emplace_back(piece.length - cell.to, piece.length - cell.from);
      else cells.emplace_back(cell.from, cell.to);
    }
    return cells;
  }

  const Panel& panel_;
  const Row& row_;
  const RowRun& run_;
  std::int32_t run_index_;
  Group group_;
  RunGraph& graph_;
  std::int64_t scale_, joint_, end_;
  std::map<State, int> known_;
};

/// A run without a piece: nothing long beside one joint end, or one joint between two joint ends.
void add_empty(const Panel& panel, const RowRun& run, std::int32_t index, RunGraph& graph) {
  const std::int64_t room = run.end - run.start;
  const int ends = has_joint(run.at_start) + has_joint(run.at_end);
  Arc arc;
  arc.empty = true;
  if (ends == 1 && room == 0) graph.arcs.push_back(arc);
  if (ends != 2 || room < panel.joint_least || room > panel.joint_most) return;
  arc.joint_width = {room, 1};
  arc.all_joints = 1;
  ArcJoint joint{index, Exact::of(run.start + run.end, 2), -1, 0};
  if (run.at_start == RunEnd::LintelEnd && run.start_lintel >= 0) joint = {index, joint.centre, run.start_lintel, 1};
  if (run.at_end == RunEnd::LintelEnd && run.end_lintel >= 0) joint = {index, joint.centre, run.end_lintel, 0};
  if (run.at_start != RunEnd::TiedJunction) arc.joints.push_back(joint);
  graph.arcs.push_back(arc);
}

}  // namespace

Exact Exact::of(std::int64_t over, std::int64_t under) {
  const std::int64_t common = std::gcd(over, under);
  return {over / common, under / common};
}

Exact operator+(Exact a, std::int64_t b) { return {a.over + b * a.under, a.under}; }
bool nearer_than(Exact a, Exact b, std::int64_t limit) { return a < b ? b < a + limit : a < b + limit; }
bool within(Exact a, Exact b, std::int64_t limit) { return a < b ? b <= a + limit : a <= b + limit; }

RunGraph run_graph(const Panel& panel, const Row& row, std::int32_t run) {
  RunGraph graph;
  add_empty(panel, row.runs[static_cast<std::size_t>(run)], run, graph);
  for (const Group& group : groups(panel, row, row.runs[static_cast<std::size_t>(run)]))
    GroupGraph(panel, row, run, group, graph).build();
  return graph;
}

}  // namespace stringcourse::oracle
