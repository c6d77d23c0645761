#include "oracle/milp.hpp"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <map>
#include <numeric>
#include <utility>

#include "oracle/arcs.hpp"
#include "oracle/laps.hpp"

namespace stringcourse::oracle {
namespace {

using bond::Panel;
using bond::Row;

struct Stage {
  std::vector<Term> objective;
  std::vector<std::vector<Term>> held;  // what the next stages hold at the value found, each whole
};

class Builder {
 public:
  explicit Builder(const Panel& panel) : panel_(panel), times_(panel.rows.size(), 0), spacing_(joint_spacing(panel)) {
    for (const std::int32_t row : panel.course_rows) ++times_[static_cast<std::size_t>(row)];
  }

  MilpAnswer solve(Program program, const MilpLimits& limits) {
    build();
    MilpAnswer answer;
    answer.columns = model_.upper.size();
    if (impossible_ || answer.columns > limits.most_columns) {
      answer.outcome = impossible_ ? Outcome::Infeasible : Outcome::TooLarge;
      return answer;
    }
    for (const Stage& stage : stages()) {
      std::fill(model_.objective.begin(), model_.objective.end(), 0.0);
      for (const Term& term : stage.objective) model_.objective[static_cast<std::size_t>(term.column)] += term.factor;
      const LinearAnswer found = solve_linear(model_, program, limits.seconds_a_stage);
      answer.outcome = found.outcome;
      if (found.outcome != Outcome::Optimal) return answer;
      read(found.values, answer);
      if (limits.terms == Terms::First) break;
      for (const std::vector<Term>& held : stage.held) hold(held, found.values);
    }
    return answer;
  }

 private:
  // ---- building ----
  void build() {
    for (std::size_t r = 0; r < panel_.rows.size(); ++r) add_row(r);
    for (std::size_t a = 0; a < panel_.rows.size(); ++a)
      for (std::size_t b = 0; b < panel_.rows.size(); ++b) {
        const std::int64_t touching = (a < b) ? touching_times(a, b) : 0, shifting = shifting_times(a, b);
        if (touching > 0) add_meeting(a, b, static_cast<double>(touching));
        if (shifting > 0) add_shifts(a, b, static_cast<double>(shifting));
      }
  }

  std::int64_t touching_times(std::size_t a, std::size_t b) const {
    std::int64_t count = 0;
    for (std::size_t p = 1; p < panel_.course_rows.size(); ++p) {
      const auto low = static_cast<std::size_t>(panel_.course_rows[p - 1]);
      const auto high = static_cast<std::size_t>(panel_.course_rows[p]);
      count += (low == a && high == b) || (low == b && high == a) ? 1 : 0;
    }
    return count;
  }

  std::int64_t shifting_times(std::size_t a, std::size_t b) const {
    std::int64_t count = 0;
    for (std::size_t p = 2; p < panel_.course_rows.size(); ++p) {
      const bool these = panel_.course_rows[p - 2] == static_cast<std::int32_t>(a) &&
                         panel_.course_rows[p] == static_cast<std::int32_t>(b);
      count += these && panel_.rows[a].band != panel_.rows[b].band ? 1 : 0;
    }
    return count;
  }

  void add_row(std::size_t r) {
    const Row& row = panel_.rows[r];
    graphs_.emplace_back();
    first_column_.emplace_back();
    joints_.emplace_back(row.runs.size());
    std::map<ArcJoint, std::vector<Term>> brought;
    std::map<std::pair<std::int32_t, std::pair<Exact, Exact>>, std::vector<Term>> cells;
    for (std::size_t k = 0; k < row.runs.size(); ++k) {
      graphs_[r].push_back(run_graph(panel_, row, static_cast<std::int32_t>(k)));
      const RunGraph& graph = graphs_[r].back();
      first_column_[r].push_back(static_cast<int>(model_.upper.size()));
      for (std::size_t i = 0; i < graph.arcs.size(); ++i) {
        const int column = model_.add_binary();
        for (const ArcJoint& joint : graph.arcs[i].joints) brought[joint].push_back({column, -1});
        for (const ArcCell& cell : graph.arcs[i].cells) cells[{cell.bar, {cell.from, cell.to}}].push_back({column, 1});
        add_piece_costs(row, graph.arcs[i], column, static_cast<double>(times_[r]));
      }
      require_one_path(graph, first_column_[r].back());
      require_bars(row.runs[k], graph, first_column_[r].back());
    }
    for (auto& [joint, terms] : brought) {
      const int column = model_.add_share();
      terms.push_back({column, 1});
      model_.require(terms, 0, 0);
      joints_[r][static_cast<std::size_t>(joint.run)].push_back({joint, column});
    }
    cells_.push_back(std::move(cells));
  }

  void add_piece_costs(const Row& row, const Arc& arc, int column, double times) {
    const double deviation = deviation_of(arc);
    if (deviation > 0) deviation_.push_back({column, times * deviation});
    if (arc.empty) return;
    const bool cut = arc.piece.choice < 0 || row.choices[static_cast<std::size_t>(arc.piece.choice)].is_cut;
    if (cut) cuts_.push_back({column, times});
    if (arc.piece.length < panel_.half_length) shorts_.push_back({column, times});
    units_.push_back({column, times});
    if (arc.piece.choice >= 0)
      weights_.push_back(
          {column, times * static_cast<double>(row.choices[static_cast<std::size_t>(arc.piece.choice)].weight)});
  }

  /// |joint - j| of every joint that the arc brings, in grains. Summed over a run's path this is |S - m j|: whole.
  double deviation_of(const Arc& arc) const {
    const std::int64_t off = std::abs(arc.joint_width.over - panel_.joint * arc.joint_width.under);
    return static_cast<double>(arc.all_joints * off) / static_cast<double>(arc.joint_width.under) /
           static_cast<double>(grain());
  }

  /// The greatest length of which every length of the panel is a whole multiple: |S - m j| is whole in grains.
  std::int64_t grain() const {
    if (grain_ > 0) return grain_;
    grain_ = std::gcd(panel_.joint, panel_.cut_step);
    for (const Row& row : panel_.rows) {
      for (const bond::PieceChoice& choice : row.choices) grain_ = std::gcd(grain_, choice.length);
      for (const bond::RowRun& run : row.runs) grain_ = std::gcd(grain_, run.end - run.start);
    }
    return grain_;
  }

  void require_one_path(const RunGraph& graph, int first) {
    std::vector<std::vector<Term>> balance(static_cast<std::size_t>(graph.nodes));
    for (std::size_t i = 0; i < graph.arcs.size(); ++i) {
      const int column = first + static_cast<int>(i);
      balance[static_cast<std::size_t>(graph.arcs[i].from)].push_back({column, 1});
      if (graph.arcs[i].to != kSink) balance[static_cast<std::size_t>(graph.arcs[i].to)].push_back({column, -1});
    }
    if (balance[kSource].empty()) impossible_ = true;
    model_.require(balance[kSource], 1, 1);
    for (std::size_t node = 2; node < balance.size(); ++node)
      if (!balance[node].empty()) model_.require(balance[node], 0, 0);
  }

  /// A run that covers a bar has exactly one piece with a cell around it: the bar never stands in a joint.
  void require_bars(const bond::RowRun& run, const RunGraph& graph, int first) {
    for (std::size_t b = 0; b < panel_.bars.size(); ++b) {
      if (panel_.bars[b].centre <= run.start || panel_.bars[b].centre >= run.end) continue;
      std::vector<Term> good;
      for (std::size_t i = 0; i < graph.arcs.size(); ++i)
        for (const ArcCell& cell : graph.arcs[i].cells)
          if (cell.bar == static_cast<std::int32_t>(b)) good.push_back({first + static_cast<int>(i), 1});
      if (good.empty()) impossible_ = true;
      model_.require(good, 1, 1);
    }
  }

  // ---- two rows that touch ----
  void add_meeting(std::size_t a, std::size_t b, double times) {
    require_common_cells(a, b);
    const LapConstraints constraints(panel_);
    for (const Joints& lower : joints_[a])
      for (const Joints& upper : joints_[b]) {
        constraints.require_laps(lower, upper, model_);
        if (panel_.weighted) continue;
        for (const int y : constraints.count_short_laps(lower, upper, model_)) laps_.push_back({y, times});
      }
  }

  void require_common_cells(std::size_t a, std::size_t b) {
    for (const auto& [lower, lower_terms] : cells_[a]) {
      std::vector<Term> terms = lower_terms;
      for (const auto& [upper, upper_terms] : cells_[b]) {
        if (lower.first != upper.first) continue;
        const Exact from = std::max(lower.second.first, upper.second.first);
        const Exact to = std::min(lower.second.second, upper.second.second);
        if (to < from + panel_.bars[static_cast<std::size_t>(lower.first)].common_along)
          terms.insert(terms.end(), upper_terms.begin(), upper_terms.end());
      }
      if (terms.size() > lower_terms.size()) model_.require(terms, -kNoLimit, 1);
    }
  }

  // ---- joints that shift ----
  void add_shifts(std::size_t a, std::size_t b, double times) {
    if (panel_.weighted) return;
    for (const Joints& lower : joints_[a]) {
      std::map<std::vector<int>, Joints> by_matches;
      for (const JointColumn& p : lower)
        if (inside_a_run(p.joint.centre, panel_.rows[b])) by_matches[matches(p, b)].push_back(p);
      for (const auto& [columns, all] : by_matches)
        for (const Joints& few : stretches(all, spacing_)) {
          const int s = model_.add_binary();
          std::vector<Term> terms{{s, -1}};
          add_terms(terms, few, 1);
          for (const int column : columns) terms.push_back({column, -1});
          model_.require(terms, -kNoLimit, 0);
          shifts_.push_back({s, times});
        }
    }
  }

  static bool inside_a_run(Exact centre, const Row& row) {
    return std::any_of(row.runs.begin(), row.runs.end(), [&](const bond::RowRun& run) {
      return Exact{run.start, 1} < centre && centre < Exact{run.end, 1};
    });
  }

  std::vector<int> matches(const JointColumn& p, std::size_t b) const {
    std::vector<int> columns;
    for (const Joints& upper : joints_[b])
      for (const JointColumn& q : upper)
        if (within(p.joint.centre, q.joint.centre, panel_.match_within)) columns.push_back(q.column);
    return columns;
  }

  // ---- stages ----
  /// Most pieces that the whole panel can have.
  double most_pieces() const {
    std::int64_t least = panel_.least_piece > 0 ? panel_.least_piece : INT64_MAX, count = 0;
    for (const Row& row : panel_.rows)
      for (const bond::PieceChoice& choice : row.choices) least = std::min(least, choice.length);
    for (const std::int32_t row : panel_.course_rows)
      for (const bond::RowRun& run : panel_.rows[static_cast<std::size_t>(row)].runs)
        count += (run.end - run.start) / least;
    return static_cast<double>(count);
  }

  static void append(std::vector<Term>& to, const std::vector<Term>& terms, double factor) {
    for (const Term& term : terms) to.push_back({term.column, term.factor * factor});
  }

  /// With N the most pieces: cuts <= N and short pieces <= N. So with weights (N + 1)^2, N + 1, 1 one short lap more
  /// outweighs every saving below it, since N (N + 1) + N < (N + 1)^2, and one cut more outweighs N < N + 1 short
  /// pieces; the packed minimum is the minimum in order. Likewise units <= N < N + 1 under the deviation's grain.
  std::vector<Stage> stages() const {
    const double base = most_pieces() + 1;
    if (panel_.weighted) return {{weights_, {weights_}}};
    Stage first, second, shift{shifts_, {shifts_}}, last;
    append(first.objective, cuts_, base);
    append(first.objective, shorts_, 1);
    first.held = {cuts_, shorts_};
    if (panel_.cuts_before_laps) second = {laps_, {laps_}};
    else {
      append(first.objective, laps_, base * base);
      first.held.push_back(laps_);
    }
    append(last.objective, deviation_, base);
    append(last.objective, units_, 1);
    std::vector<Stage> all{first};
    if (!second.objective.empty()) all.push_back(second);
    if (!shift.objective.empty()) all.push_back(shift);
    all.push_back(last);
    return all;
  }

  /// Holds a sum of whole terms at the value found.
  void hold(const std::vector<Term>& terms, const std::vector<double>& values) {
    if (terms.empty()) return;
    double found = 0;
    for (const Term& term : terms) found += term.factor * std::round(values[static_cast<std::size_t>(term.column)]);
    model_.require(terms, -kNoLimit, found);
  }

  // ---- reading ----
  void read(const std::vector<double>& values, MilpAnswer& answer) const {
    answer.rows.clear();
    answer.cost = {};
    std::vector<std::vector<ArcJoint>> standing;
    for (std::size_t r = 0; r < graphs_.size(); ++r) {
      answer.rows.emplace_back();
      standing.emplace_back();
      for (std::size_t k = 0; k < graphs_[r].size(); ++k)
        answer.rows.back().push_back(path(r, k, values, standing.back(), answer.cost));
    }
    if (panel_.weighted) return;
    for (std::size_t a = 0; a < standing.size(); ++a)
      for (std::size_t b = 0; b < standing.size(); ++b) {
        if (a < b) answer.cost.short_laps += touching_times(a, b) * short_laps(standing[a], standing[b]);
        answer.cost.shifted_joints += shifting_times(a, b) * shifts(standing[a], panel_.rows[b], standing[b]);
      }
  }

  std::vector<bond::Chosen> path(std::size_t r, std::size_t k, const std::vector<double>& values,
                                 std::vector<ArcJoint>& standing, Cost& cost) const {
    const RunGraph& graph = graphs_[r][k];
    const Row& row = panel_.rows[r];
    std::vector<bond::Chosen> pieces;
    std::int64_t joints = 0, slack = row.runs[k].end - row.runs[k].start;
    for (int node = kSource; node != kSink;) {
      std::size_t i = 0;
      while (graph.arcs[i].from != node || values[static_cast<std::size_t>(first_column_[r][k]) + i] < 0.5) ++i;
      const Arc& arc = graph.arcs[i];
      standing.insert(standing.end(), arc.joints.begin(), arc.joints.end());
      joints += arc.all_joints;
      node = arc.to;
      if (arc.empty) continue;
      pieces.push_back(arc.piece);
      slack -= arc.piece.length;
      count_piece(row, arc.piece, times_[r], cost);
    }
    if (!panel_.weighted) cost.joint_deviation += times_[r] * std::abs(slack - joints * panel_.joint);
    return pieces;
  }

  void count_piece(const Row& row, const bond::Chosen& piece, std::int64_t times, Cost& cost) const {
    const bond::PieceChoice* choice = piece.choice < 0 ? nullptr : &row.choices[static_cast<std::size_t>(piece.choice)];
    if (panel_.weighted) {
      cost.short_laps += choice != nullptr ? times * choice->weight : 0;
      return;
    }
    cost.cuts += choice == nullptr || choice->is_cut ? times : 0;
    cost.short_pieces += piece.length < panel_.half_length ? times : 0;
    cost.units += times;
  }

  std::int64_t short_laps(const std::vector<ArcJoint>& lower, const std::vector<ArcJoint>& upper) const {
    std::int64_t count = 0;
    for (const ArcJoint& p : lower)
      for (const ArcJoint& q : upper)
        count += !exempt(p, q) && nearer_than(p.centre, q.centre, panel_.short_lap_below) ? 1 : 0;
    return count;
  }

  std::int64_t shifts(const std::vector<ArcJoint>& lower, const Row& row, const std::vector<ArcJoint>& upper) const {
    return std::count_if(lower.begin(), lower.end(), [&](const ArcJoint& p) {
      return inside_a_run(p.centre, row) && std::none_of(upper.begin(), upper.end(), [&](const ArcJoint& q) {
               return within(p.centre, q.centre, panel_.match_within);
             });
    });
  }

  const Panel& panel_;
  std::vector<std::int64_t> times_;  // courses laid to each row
  LinearModel model_;
  std::vector<std::vector<RunGraph>> graphs_;
  std::vector<std::vector<int>> first_column_;
  std::vector<std::vector<Joints>> joints_;  // [row][run], sorted by place
  std::vector<std::map<std::pair<std::int32_t, std::pair<Exact, Exact>>, std::vector<Term>>> cells_;
  std::vector<Term> laps_, cuts_, shorts_, shifts_, deviation_, units_, weights_;
  std::int64_t spacing_;  // joints of one run are at least this far apart
  mutable std::int64_t grain_ = 0;
  bool impossible_ = false;  // a run without any path, or a bar without any cell
};

}  // namespace

MilpAnswer solve_by_milp(const Panel& panel, Program program, MilpLimits limits) {
  return Builder(panel).solve(program, limits);
}

}  // namespace stringcourse::oracle
