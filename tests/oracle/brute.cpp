// Pricing every combination of rows, and judging a given layout.
#include "oracle/brute.hpp"

#include <algorithm>
#include <string>
#include <utility>

#include "oracle/rows.hpp"

namespace stringcourse::oracle {
namespace {

using bond::Panel;
using bond::Row;

/// How often row a lies directly under row b, and two courses under it with another band, in the whole panel.
struct Meetings {
  std::int64_t touching = 0;  // in either order
  std::int64_t shifting = 0;  // a under b, two courses apart, bands differ
};

Meetings meetings(const Panel& panel, std::size_t a, std::size_t b) {
  Meetings found;
  const auto& courses = panel.course_rows;
  for (std::size_t p = 0; p + 1 < courses.size(); ++p) {
    const auto here = static_cast<std::size_t>(courses[p]), next = static_cast<std::size_t>(courses[p + 1]);
    if ((here == a && next == b) || (here == b && next == a)) ++found.touching;
    if (p + 2 >= courses.size()) continue;
    const auto above = static_cast<std::size_t>(courses[p + 2]);
    if (here == a && above == b && panel.rows[a].band != panel.rows[b].band) ++found.shifting;
  }
  return found;
}

std::int64_t times_laid(const Panel& panel, std::size_t row) {
  return std::count(panel.course_rows.begin(), panel.course_rows.end(), static_cast<std::int32_t>(row));
}

bool not_compared(const HeadJoint& a, const HeadJoint& b) {
  return a.lintel >= 0 && a.lintel == b.lintel && a.after_lintel == b.after_lintel;
}

bool bars_share_enough(const Panel& panel, const FilledRow& a, const FilledRow& b) {
  for (std::size_t i = 0; i < panel.bars.size(); ++i) {
    if (!a.cells[i] || !b.cells[i]) continue;
    const Fraction from = compare(a.cells[i]->from, b.cells[i]->from) < 0 ? b.cells[i]->from : a.cells[i]->from;
    const Fraction to = compare(a.cells[i]->to, b.cells[i]->to) < 0 ? a.cells[i]->to : b.cells[i]->to;
    if (compare(to, from) < 0 || compare_distance(from, to, panel.bars[i].common_along) < 0) return false;
  }
  return true;
}

Cost row_cost(const Panel& panel, const FilledRow& row, std::int64_t times) {
  if (panel.weighted) return {.short_laps = row.weight * times};
  Cost cost = row.cost;
  cost.cuts *= times;
  cost.short_pieces *= times;
  cost.joint_deviation *= times;
  cost.units *= times;
  return cost;
}

Cost sum(const Cost& a, const Cost& b) {
  return {a.short_laps + b.short_laps,
          a.cuts + b.cuts,
          a.short_pieces + b.short_pieces,
          a.shifted_joints + b.shifted_joints,
          a.extra_bars + b.extra_bars,
          a.joint_deviation + b.joint_deviation,
          a.units + b.units};
}

/// What a filling of one row and a filling of another cost together.
struct Together {
  bool lawful = true;
  std::int32_t short_laps = 0, shifted = 0;
};

/// Every filling of row i with every filling of row j <= i, written down once. Empty: these rows never meet.
struct PairTable {
  std::vector<Together> entries;
  std::size_t width = 0;
  const Together& at(std::size_t a, std::size_t b) const { return entries[a * width + b]; }
};

Together together(const Panel& panel, const Meetings& up, const Meetings& down,
                  std::pair<std::size_t, std::size_t> index, const FilledRow& a, const FilledRow& b) {
  Together found;
  if (up.touching > 0) {
    const std::optional<std::int64_t> laps = short_laps_between(panel, a, b);
    if (!laps) return {false, 0, 0};
    found.short_laps = static_cast<std::int32_t>(*laps * up.touching);
  }
  if (up.shifting > 0)
    found.shifted += static_cast<std::int32_t>(up.shifting * shifted_joints(panel, a, panel.rows[index.second], b));
  if (down.shifting > 0 && index.first != index.second)
    found.shifted += static_cast<std::int32_t>(down.shifting * shifted_joints(panel, b, panel.rows[index.first], a));
  if (panel.weighted) found.short_laps = found.shifted = 0;
  return found;
}

PairTable pair_table(const Panel& panel, std::size_t i, std::size_t j,
                     const std::vector<std::vector<FilledRow>>& rows) {
  const Meetings up = meetings(panel, i, j), down = meetings(panel, j, i);
  PairTable table;
  if (up.touching + up.shifting + down.shifting == 0) return table;
  table.width = rows[j].size();
  for (const FilledRow& a : rows[i])
    for (const FilledRow& b : rows[j]) table.entries.push_back(together(panel, up, down, {i, j}, a, b));
  return table;
}

/// Depth-first over the rows of a panel; all costs are at least 0, so a partial cost not better than the best is
/// dropped.
class Combiner {
 public:
  Combiner(const Panel& panel, const std::vector<std::vector<FilledRow>>& rows) : panel_(panel), rows_(rows) {
    for (std::size_t i = 0; i < rows.size(); ++i) {
      tables_.emplace_back();
      for (std::size_t j = 0; j <= i; ++j) tables_.back().push_back(pair_table(panel, i, j, rows));
    }
  }

  BruteAnswer best() {
    choose(0, {});
    return answer_;
  }

 private:
  bool too_dear(const Cost& cost) const {
    return answer_.lawful && in_order(panel_, cost) >= in_order(panel_, answer_.cost);
  }

  void choose(std::size_t index, const Cost& so_far) {
    if (too_dear(so_far)) return;
    if (index == rows_.size()) {
      answer_.lawful = true;
      answer_.cost = so_far;
      return;
    }
    const std::int64_t times = times_laid(panel_, index);
    for (std::size_t k = 0; k < rows_[index].size(); ++k) {
      chosen_.push_back(k);
      const std::optional<Cost> cost = with_others(index, so_far);
      if (cost) choose(index + 1, sum(*cost, row_cost(panel_, rows_[index][k], times)));
      chosen_.pop_back();
    }
  }

  /// The cost so far and what the row chosen last costs with those chosen before, and with itself.
  std::optional<Cost> with_others(std::size_t index, Cost cost) const {
    for (std::size_t other = 0; other <= index; ++other) {
      const PairTable& table = tables_[index][other];
      if (table.entries.empty()) continue;
      const Together& pair = table.at(chosen_[index], chosen_[other]);
      if (!pair.lawful) return std::nullopt;
      cost.short_laps += pair.short_laps;
      cost.shifted_joints += pair.shifted;
    }
    return cost;
  }

  const Panel& panel_;
  const std::vector<std::vector<FilledRow>>& rows_;
  std::vector<std::vector<PairTable>> tables_;
  std::vector<std::size_t> chosen_;
  BruteAnswer answer_;
};

std::string where(std::size_t row, std::size_t run) {
  return " (row " + std::to_string(row) + ", run " + std::to_string(run) + ")";
}

struct JudgedRows {
  std::string broken;
  std::vector<std::vector<FilledRow>> rows;  // one filling each
};

JudgedRows judge_rows(const Panel& panel, const std::vector<std::vector<std::vector<bond::Chosen>>>& rows) {
  if (rows.size() != panel.rows.size()) return {"a row is missing", {}};
  JudgedRows judged;
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const Row& row = panel.rows[i];
    if (rows[i].size() != row.runs.size()) return {"a run is missing" + where(i, 0), {}};
    std::vector<FilledRun> runs;
    for (std::size_t k = 0; k < rows[i].size(); ++k) {
      runs.push_back(measured(row.runs[k], rows[i][k]));
      const std::string broken = run_broken(panel, row, row.runs[k], runs.back());
      if (!broken.empty()) return {broken + where(i, k), {}};
    }
    std::vector<const FilledRun*> places;
    for (const FilledRun& run : runs) places.push_back(&run);
    RowOrRule filled = filled_row(panel, row, places);
    if (!filled.broken.empty()) return {filled.broken + where(i, 0), {}};
    judged.rows.push_back({std::move(filled.row)});
  }
  return judged;
}

}  // namespace

int compare(Fraction a, Fraction b) {
  const int128 left = static_cast<int128>(a.numerator) * b.denominator;
  const int128 right = static_cast<int128>(b.numerator) * a.denominator;
  return left < right ? -1 : left > right ? 1 : 0;
}

int compare_distance(Fraction a, Fraction b, std::int64_t limit) {
  int128 gap = static_cast<int128>(a.numerator) * b.denominator - static_cast<int128>(b.numerator) * a.denominator;
  if (gap < 0) gap = -gap;
  const int128 bound = static_cast<int128>(limit) * a.denominator * b.denominator;
  return gap < bound ? -1 : gap > bound ? 1 : 0;
}

std::optional<std::int64_t> short_laps_between(const Panel& panel, const FilledRow& a, const FilledRow& b) {
  if (!bars_share_enough(panel, a, b)) return std::nullopt;
  std::int64_t laps = 0;
  for (const HeadJoint& one : a.joints)
    for (const HeadJoint& other : b.joints) {
      if (not_compared(one, other)) continue;
      if (compare_distance(one.centre, other.centre, panel.least_lap) < 0) return std::nullopt;
      laps += compare_distance(one.centre, other.centre, panel.short_lap_below) < 0 ? 1 : 0;
    }
  return laps;
}

std::int64_t shifted_joints(const Panel& panel, const FilledRow& lower, const Row& upper_row, const FilledRow& upper) {
  std::int64_t count = 0;
  for (const HeadJoint& joint : lower.joints) {
    const bool inside = std::any_of(upper_row.runs.begin(), upper_row.runs.end(), [&](const bond::RowRun& run) {
      return compare({run.start, 1}, joint.centre) < 0 && compare(joint.centre, {run.end, 1}) < 0;
    });
    const bool met = std::any_of(upper.joints.begin(), upper.joints.end(), [&](const HeadJoint& other) {
      return compare_distance(joint.centre, other.centre, panel.match_within) <= 0;
    });
    count += inside && !met ? 1 : 0;
  }
  return count;
}

std::optional<BruteAnswer> brute_force(const Panel& panel, std::size_t limit) {
  std::vector<std::vector<FilledRow>> rows;
  std::size_t written = 0;
  for (const Row& row : panel.rows) {
    std::optional<std::vector<FilledRow>> filled = all_rows(panel, row, limit);
    if (!filled) return std::nullopt;
    written += filled->size();
    rows.push_back(std::move(*filled));
  }
  BruteAnswer answer = Combiner(panel, rows).best();
  answer.rows = written;
  return answer;
}

Judged judge(const Panel& panel, const std::vector<std::vector<std::vector<bond::Chosen>>>& rows) {
  const JudgedRows judged = judge_rows(panel, rows);
  if (!judged.broken.empty()) return {judged.broken, {}};
  const BruteAnswer answer = Combiner(panel, judged.rows).best();
  return answer.lawful ? Judged{"", answer.cost} : Judged{"two rows break rule 3 or a bar's common opening", {}};
}

std::array<std::int64_t, 6> in_order(const Panel& panel, const Cost& cost) {
  if (panel.weighted) return {cost.short_laps, 0, 0, 0, 0, 0};
  if (panel.cuts_before_laps)
    return {cost.cuts, cost.short_pieces, cost.short_laps, cost.shifted_joints, cost.joint_deviation, cost.units};
  return {cost.short_laps, cost.cuts, cost.short_pieces, cost.shifted_joints, cost.joint_deviation, cost.units};
}

std::string say(const Cost& cost) {
  return "short laps " + std::to_string(cost.short_laps) + ", cuts " + std::to_string(cost.cuts) + ", short pieces " +
         std::to_string(cost.short_pieces) + ", shifted " + std::to_string(cost.shifted_joints) + ", deviation " +
         std::to_string(cost.joint_deviation) + ", units " + std::to_string(cost.units);
}

}  // namespace stringcourse::oracle
