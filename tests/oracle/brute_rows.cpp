// Writing down every row: the rules that one run, and one row by itself, must keep.
#include <algorithm>
#include <cstdlib>
#include <numeric>

#include "oracle/brute.hpp"
#include "oracle/rows.hpp"

namespace stringcourse::oracle {
namespace {

using bond::Chosen;
using bond::Panel;
using bond::PieceChoice;
using bond::Row;
using bond::RowRun;

std::int64_t joint_ends(const RowRun& run) { return has_joint(run.at_start) + has_joint(run.at_end); }

bool is_cut(const Row& row, const Chosen& piece) {
  return piece.choice < 0 || row.choices[static_cast<std::size_t>(piece.choice)].is_cut;
}

/// The nearest whole multiple of step; a tie goes up.
std::int64_t nearest_multiple(std::int64_t length, std::int64_t step) {
  std::int64_t below = length / step * step;
  if (below > length) below -= step;
  return 2 * (length - below) >= step ? below + step : below;
}

/// Whether `length` may be the run's make-up piece, the other pieces being `others` long in all and the joints m.
bool make_up_is_lawful(const Panel& panel, const Row& row, std::int64_t rest, std::int64_t length) {
  if (row.make_up_from <= 0 || length != nearest_multiple(rest, panel.cut_step)) return false;
  if (length < panel.least_piece || length >= row.make_up_from) return false;
  return std::none_of(row.choices.begin(), row.choices.end(),
                      [&](const PieceChoice& choice) { return choice.length == length; });
}

bool stands_at_corner(const Row& row, const Chosen& piece, std::size_t pieces_in_run) {
  if (piece.choice < 0) return false;
  const PieceChoice& choice = row.choices[static_cast<std::size_t>(piece.choice)];
  return choice.corner || (choice.half && pieces_in_run == 1);
}

/// The saw's end of every cut meets a joint.
bool saw_meets_joint(const RowRun& run, const FilledRun& filled, std::size_t index) {
  const CutEnd cut = filled.pieces[index].cut;
  if (cut == CutEnd::Start) return index > 0 || has_joint(run.at_start);
  if (cut == CutEnd::End) return index + 1 < filled.pieces.size() || has_joint(run.at_end);
  return false;
}

std::string ends_broken(const Row& row, const RowRun& run, const FilledRun& filled) {
  const auto& pieces = filled.pieces;
  if (run.at_start == RunEnd::ThroughCorner && !stands_at_corner(row, pieces.front(), pieces.size()))
    return "no corner unit at the start";
  if (run.at_end == RunEnd::ThroughCorner && !stands_at_corner(row, pieces.back(), pieces.size()))
    return "no corner unit at the end";
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    if (is_cut(row, pieces[i]) != (pieces[i].cut != CutEnd::None)) return "a cut without a saw's end, or the reverse";
    if (is_cut(row, pieces[i]) && !saw_meets_joint(run, filled, i)) return "a saw's end shows";
  }
  return "";
}

std::string make_up_broken(const Panel& panel, const Row& row, const RowRun& run, const FilledRun& filled) {
  std::int64_t others = 0, make_ups = 0, make_up = 0;
  for (const Chosen& piece : filled.pieces) {
    if (piece.choice < 0) {
      ++make_ups;
      make_up = piece.length;
    } else {
      others += piece.length;
      if (row.choices[static_cast<std::size_t>(piece.choice)].length != piece.length)
        return "a length not of its choice";
    }
  }
  if (make_ups > 1) return "two make-up pieces in one run";
  const std::int64_t rest = run.end - run.start - others - filled.joints * panel.joint;
  if (make_ups == 1 && !make_up_is_lawful(panel, row, rest, make_up)) return "an unlawful make-up length";
  return "";
}

}  // namespace

FilledRun measured(const RowRun& run, std::vector<Chosen> pieces) {
  FilledRun filled;
  filled.joints = static_cast<std::int64_t>(pieces.size()) - 1 + joint_ends(run);
  filled.slack = run.end - run.start;
  for (const Chosen& piece : pieces) filled.slack -= piece.length;
  filled.pieces = std::move(pieces);
  return filled;
}

std::string run_broken(const Panel& panel, const Row& row, const RowRun& run, const FilledRun& filled) {
  const std::int64_t m = filled.joints;
  if (m < 0) return "an empty run with no joint";
  if (filled.slack < panel.joint_least * m || filled.slack > panel.joint_most * m) return "joints outside their range";
  if (filled.pieces.empty()) return "";
  const std::string broken = make_up_broken(panel, row, run, filled);
  return broken.empty() ? ends_broken(row, run, filled) : broken;
}

namespace {

/// Walks through every sequence of pieces of one run.
class RunWriter {
 public:
  RunWriter(const Panel& panel, const Row& row, const RowRun& run, std::size_t limit)
      : panel_(panel), row_(row), run_(run), limit_(limit) {}

  std::optional<std::vector<FilledRun>> write() {
    extend(0);
    if (too_many()) return std::nullopt;
    return std::move(found_);
  }

 private:
  bool too_many() const { return found_.size() > limit_ || visited_ > 5 * limit_; }

  std::int64_t least_with(std::int64_t length, std::size_t pieces) const {
    const std::int64_t joints = static_cast<std::int64_t>(pieces) - 1 + joint_ends(run_);
    return length + std::max<std::int64_t>(joints, 0) * panel_.joint_least;
  }

  void extend(std::int64_t length) {
    if (too_many()) return;
    ++visited_;
    if (fits()) take_with_saw_ends(0);
    insert_make_up(length);
    for (std::size_t i = 0; i < row_.choices.size(); ++i) {
      const std::int64_t next = length + row_.choices[i].length;
      if (least_with(next, pieces_.size() + 1) > run_.end - run_.start) continue;
      pieces_.push_back({row_.choices[i].length, static_cast<std::int32_t>(i), CutEnd::None});
      extend(next);
      pieces_.pop_back();
    }
  }

  void insert_make_up(std::int64_t others) {
    if (row_.make_up_from <= 0) return;
    const std::int64_t joints = static_cast<std::int64_t>(pieces_.size()) + joint_ends(run_);
    const std::int64_t rest = run_.end - run_.start - others - joints * panel_.joint;
    const std::int64_t length = nearest_multiple(rest, panel_.cut_step);
    if (!make_up_is_lawful(panel_, row_, rest, length)) return;
    const std::vector<Chosen> others_only = pieces_;
    for (std::size_t at = 0; at <= others_only.size(); ++at) {
      pieces_ = others_only;
      pieces_.insert(pieces_.begin() + static_cast<std::ptrdiff_t>(at), {length, -1, CutEnd::None});
      if (fits()) take_with_saw_ends(0);
    }
    pieces_ = others_only;
  }

  /// Whether the joints come out in their range; asked before the saw's ends are tried, of which there may be many.
  bool fits() const {
    const FilledRun filled = measured(run_, pieces_);
    return filled.joints >= 0 && filled.slack >= panel_.joint_least * filled.joints &&
           filled.slack <= panel_.joint_most * filled.joints;
  }

  /// Gives every cut from `index` on each of its possible saw's ends and keeps what is lawful.
  void take_with_saw_ends(std::size_t index) {
    if (too_many()) return;
    while (index < pieces_.size() && !is_cut(row_, pieces_[index])) ++index;
    if (index == pieces_.size()) return keep();
    const std::size_t before = found_.size();
    for (const CutEnd end : {CutEnd::Start, CutEnd::End}) {
      pieces_[index].cut = end;
      if (saw_meets_joint(run_, {pieces_, 0, 0}, index)) take_with_saw_ends(index + 1);
      if (panel_.bars.empty() && found_.size() > before) break;  // the saw's end matters to bars only
    }
    pieces_[index].cut = CutEnd::None;
  }

  void keep() {
    ++visited_;
    FilledRun filled = measured(run_, pieces_);
    if (run_broken(panel_, row_, run_, filled).empty()) found_.push_back(std::move(filled));
  }

  const Panel& panel_;
  const Row& row_;
  const RowRun& run_;
  std::size_t limit_;
  std::size_t visited_ = 0;  // sequences begun or finished, lawful or not
  std::vector<Chosen> pieces_;
  std::vector<FilledRun> found_;
};

Fraction plus(std::int64_t whole, std::int64_t part, std::int64_t divisor) {
  return divisor == 0 ? Fraction{whole, 1} : Fraction{whole * divisor + part, divisor};
}

void add_end_joint(FilledRow& filled, RunEnd end, Fraction centre, std::int32_t lintel, bool after_lintel) {
  if (end == RunEnd::TiedJunction) return;
  filled.joints.push_back({centre, end == RunEnd::LintelEnd ? lintel : -1, after_lintel});
}

/// All head joints of one run. Each joint is S / m wide; with 2 m as divisor its centre is whole.
void add_joints(FilledRow& filled, const RowRun& run, const FilledRun& laid) {
  const std::int64_t m = laid.joints, half = laid.slack, divisor = 2 * m;  // half a joint is S / (2 m)
  if (m == 0) return;
  if (laid.pieces.empty()) {  // one joint between two ends: it closes the lintel, if either end is one
    const bool at_start = run.at_end != RunEnd::LintelEnd;
    return add_end_joint(filled, at_start ? run.at_start : run.at_end, {run.start + run.end, 2},
                         at_start ? run.start_lintel : run.end_lintel, at_start);
  }
  std::int64_t face = run.start, passed = 0;  // passed joints, each 2 S / (2 m) wide
  if (has_joint(run.at_start)) {
    add_end_joint(filled, run.at_start, plus(face, half, divisor), run.start_lintel, true);
    ++passed;
  }
  for (std::size_t i = 0; i + 1 < laid.pieces.size(); ++i, ++passed) {
    face += laid.pieces[i].length;
    filled.joints.push_back({plus(face, (2 * passed + 1) * half, divisor), -1, false});
  }
  if (has_joint(run.at_end)) add_end_joint(filled, run.at_end, plus(run.end, -half, divisor), run.end_lintel, false);
}

std::vector<bond::Cell> cells_of(const Row& row, const Chosen& piece) {
  std::vector<bond::Cell> cells;
  if (piece.choice >= 0) cells = row.choices[static_cast<std::size_t>(piece.choice)].cells;
  else
    for (const bond::Cell& cell : row.make_up_cells)
      if (cell.to < piece.length) cells.push_back(cell);
  if (piece.cut == CutEnd::Start)
    for (bond::Cell& cell : cells) cell = {piece.length - cell.to, piece.length - cell.from};
  return cells;
}

/// Start face of every piece of a run.
std::vector<Fraction> starts(const RowRun& run, const FilledRun& laid) {
  std::vector<Fraction> faces;
  std::int64_t face = run.start, passed = has_joint(run.at_start) ? 1 : 0;
  for (const Chosen& piece : laid.pieces) {
    faces.push_back(plus(face, passed * laid.slack, laid.joints));
    face += piece.length;
    ++passed;
  }
  return faces;
}

Fraction shifted(Fraction place, std::int64_t by) {
  return {place.numerator + by * place.denominator, place.denominator};
}

std::optional<CellPlace> cell_around(const Row& row, const RowRun& run, const FilledRun& laid,
                                     const bond::PanelBar& bar) {
  const std::vector<Fraction> faces = starts(run, laid);
  for (std::size_t i = 0; i < laid.pieces.size(); ++i)
    for (const bond::Cell& cell : cells_of(row, laid.pieces[i])) {
      const CellPlace place{shifted(faces[i], cell.from), shifted(faces[i], cell.to)};
      if (compare(place.from, {bar.centre - bar.half_width, 1}) <= 0 &&
          compare({bar.centre + bar.half_width, 1}, place.to) <= 0)
        return place;
    }
  return std::nullopt;
}

std::string zones_broken(const Row& row, const RowRun& run, const FilledRun& laid) {
  const std::vector<Fraction> faces = starts(run, laid);
  for (std::size_t i = 0; i < laid.pieces.size(); ++i)
    for (const bond::UncutZone& zone : row.uncut_zones)
      if (is_cut(row, laid.pieces[i]) && compare(faces[i], {zone.to, 1}) < 0 &&
          compare(shifted(faces[i], laid.pieces[i].length), {zone.from, 1}) > 0)
        return "a cut in an uncut zone";
  return "";
}

void add_cost(const Panel& panel, const Row& row, const FilledRun& laid, FilledRow& filled) {
  for (const Chosen& piece : laid.pieces) {
    filled.cost.cuts += is_cut(row, piece) ? 1 : 0;
    filled.cost.short_pieces += piece.length < panel.half_length ? 1 : 0;
    filled.cost.units += 1;
    if (piece.choice >= 0) filled.weight += row.choices[static_cast<std::size_t>(piece.choice)].weight;
  }
  filled.cost.joint_deviation += std::abs(laid.slack - laid.joints * panel.joint);
}

}  // namespace

std::optional<std::vector<FilledRun>> all_runs(const Panel& panel, const Row& row, std::size_t run, std::size_t limit) {
  return RunWriter(panel, row, row.runs[run], limit).write();
}

RowOrRule filled_row(const Panel& panel, const Row& row, const std::vector<const FilledRun*>& runs) {
  FilledRow filled;
  filled.cells.assign(panel.bars.size(), std::nullopt);
  for (std::size_t i = 0; i < runs.size(); ++i) {
    const RowRun& run = row.runs[i];
    const std::string broken = zones_broken(row, run, *runs[i]);
    if (!broken.empty()) return {broken, {}};
    for (std::size_t b = 0; b < panel.bars.size(); ++b) {
      const bond::PanelBar& bar = panel.bars[b];
      if (bar.centre <= run.start || bar.centre >= run.end) continue;
      filled.cells[b] = cell_around(row, run, *runs[i], bar);
      if (!filled.cells[b]) return {"a bar outside every cell", {}};
    }
    add_joints(filled, run, *runs[i]);
    add_cost(panel, row, *runs[i], filled);
    filled.runs.push_back(*runs[i]);
  }
  return {"", std::move(filled)};
}

namespace {

/// The fillings of one run that keep bars and zones too.
std::optional<std::vector<FilledRun>> lawful_runs(const Panel& panel, const Row& row, std::size_t run) {
  constexpr std::size_t kMost = 100'000;
  Row alone = row;
  alone.runs = {row.runs[run]};
  std::vector<FilledRun> lawful;
  std::optional<std::vector<FilledRun>> all = all_runs(panel, row, run, kMost);
  if (!all) return std::nullopt;
  for (FilledRun& filled : *all)
    if (filled_row(panel, alone, {&filled}).broken.empty()) lawful.push_back(std::move(filled));
  return lawful;
}

}  // namespace

std::optional<std::vector<FilledRow>> all_rows(const Panel& panel, const Row& row, std::size_t limit) {
  std::vector<std::vector<FilledRun>> choices;
  std::size_t product = 1;
  for (std::size_t i = 0; i < row.runs.size(); ++i) {
    std::optional<std::vector<FilledRun>> lawful = lawful_runs(panel, row, i);
    if (!lawful) return std::nullopt;
    choices.push_back(std::move(*lawful));
    product *= choices.back().size();
    if (product > limit) return std::nullopt;
  }
  std::vector<FilledRow> rows;
  for (std::size_t code = 0; code < product; ++code) {
    std::vector<const FilledRun*> runs;
    std::size_t rest = code;
    for (const auto& choice : choices) {
      runs.push_back(&choice[rest % choice.size()]);
      rest /= choice.size();
    }
    rows.push_back(filled_row(panel, row, runs).row);
  }
  return rows;
}

}  // namespace stringcourse::oracle
