#include "oracle/conceding.hpp"

#include <algorithm>
#include <map>
#include <tuple>
#include <vector>

#include "oracle/brute.hpp"

namespace stringcourse::oracle {
namespace {

using bond::Cell;
using bond::Panel;
using bond::PieceChoice;
using bond::Row;
using bond::RowRun;

struct CellHere {
  bool any = false;
  Fraction from, to;
};

/// One row, or a part of it from the left: what it gives up by itself, and what its neighbours see of it.
struct Filling {
  std::int64_t weight = 0;  // over all its courses
  std::vector<HeadJoint> joints;
  std::vector<CellHere> cells;  // by bar
};

std::int64_t sum(const std::vector<PieceChoice>& pieces) {
  std::int64_t total = 0;
  for (const PieceChoice& piece : pieces) total += piece.length;
  return total;
}

class RunFiller {
 public:
  RunFiller(const Panel& panel, const Row& row, const RowRun& run, std::size_t limit)
      : panel_(panel), row_(row), run_(run), limit_(limit) {
    starts_ = has_joint(run.at_start), ends_ = has_joint(run.at_end);
  }

  /// Every filling of the run; bare where there is none. False: too many.
  bool fill(std::vector<Filling>& all) {
    std::vector<PieceChoice> pieces;
    grow(pieces, false, all);
    if (all.empty()) {
      Filling bare;
      bare.weight = 1024 * courses();
      bare.cells.resize(panel_.bars.size());
      all.push_back(bare);
    }
    return all.size() <= limit_ && begun_ <= 40 * limit_;
  }

 private:
  std::int64_t courses() const { return static_cast<std::int64_t>(row_.courses.size()); }
  std::int64_t joints_of(std::size_t pieces) const {
    return static_cast<std::int64_t>(pieces) - 1 + (starts_ ? 1 : 0) + (ends_ ? 1 : 0);
  }

  void grow(std::vector<PieceChoice>& pieces, bool made_up, std::vector<Filling>& all) {
    if (++begun_ > 40 * limit_ || all.size() > limit_) return;
    close(pieces, made_up, all);
    const std::int64_t tightest =
        sum(pieces) + std::max<std::int64_t>(joints_of(pieces.size()), 0) * panel_.far_joint_least;
    if (tightest > run_.end - run_.start) return;
    for (const PieceChoice& choice : row_.choices) {
      pieces.push_back(choice);
      grow(pieces, made_up, all);
      pieces.pop_back();
    }
    if (made_up || row_.make_up_from == 0) return;
    PieceChoice unknown;
    unknown.make_up = unknown.is_cut = true;  // its length is what the others leave
    pieces.push_back(unknown);
    grow(pieces, true, all);
    pieces.pop_back();
  }

  void close(std::vector<PieceChoice> pieces, bool made_up, std::vector<Filling>& all) {
    const std::int64_t m = joints_of(pieces.size());
    const std::int64_t length = run_.end - run_.start;
    if (m < 0 || (m == 0 && !made_up && sum(pieces) != length)) return;
    if (pieces.empty() && m != 1) return;
    if (made_up) {
      const std::int64_t rest = length - sum(pieces) - m * panel_.joint;
      if (rest <= 0) return;
      const std::int64_t step = panel_.cut_step, made = (rest + step / 2) / step * step;
      const auto is_listed = [&](const PieceChoice& choice) { return choice.length == made; };
      if (made < panel_.least_piece || made >= row_.make_up_from || std::ranges::any_of(row_.choices, is_listed))
        return;
      if (m == 0 && made != rest) return;
      for (PieceChoice& piece : pieces) {
        if (!piece.make_up) continue;
        piece.length = made;
        for (const Cell& cell : row_.make_up_cells) {
          if (cell.to < made) piece.cells.push_back(cell);
        }
      }
    }
    const std::int64_t slack = length - sum(pieces);
    if (m > 0 && (slack < panel_.far_joint_least * m || slack > panel_.far_joint_most * m)) return;
    const bool exact = slack == panel_.joint * m;
    const bool wide = !exact && (slack < panel_.joint_least * m || slack > panel_.joint_most * m);
    turn(pieces, std::vector<bool>(pieces.size(), false), 0, slack, wide, all);
  }

  /// Each cut with its sawn end at its start or at its end; at a face the sawn end is turned away if it can be.
  void turn(const std::vector<PieceChoice>& pieces, std::vector<bool> at_start, std::size_t i, std::int64_t slack,
            bool wide, std::vector<Filling>& all) {
    if (i == pieces.size()) return all.push_back(weigh(pieces, at_start, slack, wide));
    const bool start_shows = i == 0 && shows_face(run_.at_start),
               end_shows = i + 1 == pieces.size() && shows_face(run_.at_end);
    const bool may_start = pieces[i].is_cut && !start_shows && (end_shows || !panel_.bars.empty());
    if (!pieces[i].is_cut || !end_shows || start_shows) turn(pieces, at_start, i + 1, slack, wide, all);
    if (!may_start) return;
    at_start[i] = true;
    turn(pieces, at_start, i + 1, slack, wide, all);
  }

  Filling weigh(const std::vector<PieceChoice>& pieces, const std::vector<bool>& at_start, std::int64_t slack,
                bool wide) {
    Filling filling;
    filling.cells.resize(panel_.bars.size());
    const std::int64_t m = std::max<std::int64_t>(joints_of(pieces.size()), 1);
    std::int64_t each_course = wide ? 1 : 0, once = 0, before = 0;
    const auto add_joint = [&](std::int64_t number, RunEnd end, std::int32_t lintel, bool after) {
      if (end == RunEnd::TiedJunction) return;
      filling.joints.push_back({{2 * (run_.start + before) * m + (2 * number + 1) * slack, 2 * m},
                                end == RunEnd::LintelEnd ? lintel : -1,
                                after});
    };
    if (starts_ && !pieces.empty()) add_joint(0, run_.at_start, run_.start_lintel, true);
    if (pieces.empty())
      add_joint(0,
                run_.at_end == RunEnd::LintelEnd || run_.at_end == RunEnd::TiedJunction ? run_.at_end : run_.at_start,
                run_.at_end == RunEnd::LintelEnd ? run_.end_lintel : run_.start_lintel, false);
    std::vector<bool> held(panel_.bars.size(), false);
    for (std::size_t i = 0; i < pieces.size(); ++i) {
      const PieceChoice& piece = pieces[i];
      const std::int64_t number = static_cast<std::int64_t>(i) + (starts_ ? 1 : 0);
      const Fraction start{(run_.start + before) * m + number * slack, m};
      const Fraction end{start.numerator + piece.length * m, m};
      const bool first = i == 0, last = i + 1 == pieces.size();
      const bool turns = piece.corner || (piece.half && first && last);
      if (first && run_.at_start == RunEnd::ThroughCorner && !turns) each_course += 128;
      if (last && run_.at_end == RunEnd::ThroughCorner && !turns) each_course += 128;
      if (piece.is_cut && first && last && shows_face(run_.at_start) && shows_face(run_.at_end)) each_course += 32;
      for (const bond::UncutZone& zone : row_.uncut_zones) {
        if (!piece.is_cut || (zone.rule == bond::UnderBearing::WholeCell && !piece.cells.empty())) continue;
        if (compare(start, {zone.to, 1}) < 0 && compare(end, {zone.from, 1}) > 0) once += 8;
      }
      for (std::size_t b = 0; b < panel_.bars.size(); ++b) {
        for (const Cell& cell : piece.cells) {
          const std::int64_t from = at_start[i] ? piece.length - cell.to : cell.from,
                             to = at_start[i] ? piece.length - cell.from : cell.to;
          const Fraction a{start.numerator + from * m, m}, z{start.numerator + to * m, m};
          const std::int64_t centre = panel_.bars[b].centre, half = panel_.bars[b].half_width;
          if (centre <= run_.start || centre >= run_.end) continue;
          if (compare(a, {centre - half, 1}) > 0 || compare(z, {centre + half, 1}) < 0 || filling.cells[b].any)
            continue;
          filling.cells[b] = {true, a, z};
        }
      }
      before += piece.length;
      if (!last) add_joint(number, RunEnd::ButtCorner, -1, false);
      else if (ends_) add_joint(number, run_.at_end, run_.end_lintel, false);
    }
    for (std::size_t b = 0; b < panel_.bars.size() && !pieces.empty(); ++b) {
      const std::int64_t centre = panel_.bars[b].centre;
      if (run_.start < centre && centre < run_.end && !filling.cells[b].any) each_course += 4;
    }
    filling.weight = each_course * courses() + once;
    return filling;
  }

  const Panel& panel_;
  const Row& row_;
  const RowRun& run_;
  std::size_t limit_;
  std::size_t begun_ = 0;
  bool starts_ = false, ends_ = false;
};

Filling joined(const Filling& left, const Filling& right) {
  Filling both = left;
  both.weight += right.weight;
  both.joints.insert(both.joints.end(), right.joints.begin(), right.joints.end());
  for (std::size_t b = 0; b < both.cells.size(); ++b) {
    if (right.cells[b].any) both.cells[b] = right.cells[b];
  }
  return both;
}

bool fill_row(const Panel& panel, const Row& row, std::size_t limit, std::vector<Filling>& all) {
  Filling nothing;
  nothing.cells.resize(panel.bars.size());
  all.assign(1, nothing);
  for (const RowRun& run : row.runs) {
    std::vector<Filling> here, longer;
    if (!RunFiller(panel, row, run, limit).fill(here) || here.size() * all.size() > limit) return false;
    for (const Filling& left : all) {
      for (const Filling& right : here) longer.push_back(joined(left, right));
    }
    all = std::move(longer);
  }
  std::ranges::stable_sort(all, {}, &Filling::weight);
  return true;
}

std::int64_t between(const Panel& panel, const Filling& a, const Filling& b) {
  std::int64_t weight = 0;
  for (const HeadJoint& lower : a.joints) {
    for (const HeadJoint& upper : b.joints) {
      if (lower.lintel >= 0 && lower.lintel == upper.lintel) continue;
      if (compare_distance(lower.centre, upper.centre, panel.least_lap) >= 0) continue;
      weight += compare_distance(lower.centre, upper.centre, panel.stacked_lap) < 0 ? 64 : 16;
    }
  }
  for (std::size_t i = 0; i < panel.bars.size(); ++i) {
    if (!a.cells[i].any || !b.cells[i].any) continue;
    const Fraction from = compare(a.cells[i].from, b.cells[i].from) < 0 ? b.cells[i].from : a.cells[i].from;
    const Fraction to = compare(a.cells[i].to, b.cells[i].to) < 0 ? a.cells[i].to : b.cells[i].to;
    if (compare(to, from) < 0 || compare_distance(from, to, panel.bars[i].common_along) < 0) weight += 4;
  }
  return weight;
}

class Combiner {
 public:
  Combiner(const Panel& panel, std::vector<std::vector<Filling>> rows) : panel_(panel), rows_(std::move(rows)) {
    for (std::size_t c = 0; c + 1 < panel.course_rows.size(); ++c)
      ++times_[std::minmax(panel.course_rows[c], panel.course_rows[c + 1])];
  }
  std::int64_t least() {
    choose(0, 0);
    return best_;
  }

 private:
  void choose(std::size_t row, std::int64_t so_far) {
    if (so_far >= best_) return;
    if (row == rows_.size()) {
      best_ = so_far;
      return;
    }
    for (const Filling& filling : rows_[row]) {
      std::int64_t cost = so_far + filling.weight;
      if (cost >= best_) return;  // lightest first
      for (std::size_t other = 0; other < row && cost < best_; ++other) {
        const auto met = times_.find({static_cast<std::int32_t>(other), static_cast<std::int32_t>(row)});
        if (met != times_.end()) cost += met->second * between(panel_, *chosen_[other], filling);
      }
      chosen_.resize(row);
      chosen_.push_back(&filling);
      choose(row + 1, cost);
    }
  }

  const Panel& panel_;
  std::vector<std::vector<Filling>> rows_;
  std::map<std::pair<std::int32_t, std::int32_t>, std::int64_t> times_;
  std::vector<const Filling*> chosen_;
  std::int64_t best_ = std::int64_t{1} << 60;
};

}  // namespace

std::optional<std::int64_t> least_given_up(const Panel& panel, std::size_t limit) {
  std::vector<std::vector<Filling>> rows(panel.rows.size());
  for (std::size_t r = 0; r < rows.size(); ++r) {
    if (!fill_row(panel, panel.rows[r], limit, rows[r])) return std::nullopt;
  }
  return Combiner(panel, std::move(rows)).least();
}

}  // namespace stringcourse::oracle
