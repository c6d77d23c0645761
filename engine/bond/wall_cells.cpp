#include "bond/wall_cells.hpp"

#include <algorithm>
#include <span>

namespace stringcourse::bond {
namespace {

Exact exact(const ExactPosition& position) { return Exact::make(position.numerator, position.denominator); }

/// The cells of a piece as it lies, from its start face on. A piece cut at its start lies turned round.
void add_cells_of(const Series& series, const Piece& piece, const auto& add) {
  const bool is_half = piece.cut == CutEnd::None && piece.length == series.half, turned = piece.cut == CutEnd::Start;
  const std::vector<CellSpan>& cells = is_half ? series.half_cells : series.full_cells;
  for (std::size_t i = 0; i < cells.size(); ++i) {
    const CellSpan& cell = cells[turned ? cells.size() - 1 - i : i];
    if (piece.cut != CutEnd::None && cell.to >= piece.length) continue;
    add(turned ? CellSpan{piece.length - cell.to, piece.length - cell.from} : cell);
  }
}

std::vector<Marks> common(const std::vector<Marks>& a, const std::vector<Marks>& b) {
  std::vector<Marks> both;
  for (std::size_t i = 0, k = 0; i < a.size() && k < b.size();) {
    const Marks overlap{std::max(a[i].from, b[k].from), std::min(a[i].to, b[k].to)};
    if (overlap.from <= overlap.to) both.push_back(overlap);
    (a[i].to < b[k].to ? i : k) += 1;
  }
  return both;
}

std::int64_t first_mark(const Exact& place, std::int64_t mark) {  // the first mark not before `place`
  const std::int64_t whole = place.whole + (place.numerator != place.whole * place.denominator ? 1 : 0);
  return -Length::nanometres(-whole).whole_multiples(Length::nanometres(mark));
}

std::int64_t last_mark(const Exact& place, std::int64_t mark) {  // the last mark not after `place`
  return Length::nanometres(place.whole).whole_multiples(Length::nanometres(mark));
}

}  // namespace

std::vector<Marks> without(const std::vector<Marks>& marks, const Marks& taken) {
  if (taken.from > taken.to) return marks;
  std::vector<Marks> left;
  for (const Marks& stretch : marks) {
    if (stretch.from < taken.from) left.push_back({stretch.from, std::min(stretch.to, taken.from - 1)});
    if (stretch.to > taken.to) left.push_back({std::max(stretch.from, taken.to + 1), stretch.to});
  }
  return left;
}

WallCells::WallCells(const Building& building, const Layout& layout, std::int32_t wall)
    : building_(&building),
      layout_(&layout),
      series_(&building.series_of(building.walls[static_cast<std::size_t>(wall)])) {
  mark_ = tape_step(building.tape).in_nanometres();
  radius_ = (building.bars->diameter.in_nanometres() + 1) / 2 + building.bars->clearance.in_nanometres();
  const auto first = std::ranges::lower_bound(layout.runs, wall, {}, &Run::wall);
  const auto last = std::ranges::upper_bound(layout.runs, wall, {}, &Run::wall);
  runs_.assign(first, last);
}

std::vector<Marks> WallCells::marks_between(Length from, Length to) const {
  std::vector<Marks> marks{
      {last_mark(Exact::at(from.in_nanometres()), mark_) + 1, last_mark(Exact::at(to.in_nanometres() - 1), mark_)}};
  std::vector<Held> below;
  for (std::int32_t course = 1; course <= static_cast<std::int32_t>(building_->courses.size()); ++course) {
    std::vector<Held> here = cells_in(course, from, to);
    if (here.empty()) return {};
    std::vector<Marks> allowed = below.empty() ? own_marks(here) : shared_marks(here, below);
    marks = common(marks, allowed);
    below = std::move(here);
  }
  return marks;
}

Marks WallCells::marks_beside(Length bar) const {
  Marks taken{1, 0};
  const Exact place = Exact::at(bar.in_nanometres());
  for (std::int32_t course = 1; course <= static_cast<std::int32_t>(building_->courses.size()); ++course) {
    for (const Held& cell : cells_in(course, bar - Length::nanometres(1), bar + Length::nanometres(1))) {
      if (compare(cell.from, place) > 0 || compare(cell.to, place) < 0) continue;
      const Marks here{first_mark(cell.from, mark_), last_mark(cell.to, mark_)};
      taken = taken.from > taken.to ? here : Marks{std::min(taken.from, here.from), std::max(taken.to, here.to)};
    }
  }
  return taken;
}

Marks WallCells::marks_in(const Held& cell) const {
  return {first_mark(cell.from.moved(radius_), mark_), last_mark(cell.to.moved(-radius_), mark_)};
}

std::vector<Marks> WallCells::own_marks(const std::vector<Held>& cells) const {
  std::vector<Marks> marks;
  for (const Held& cell : cells) {
    const Marks own = marks_in(cell);
    if (own.from <= own.to) marks.push_back(own);
  }
  return marks;
}

std::vector<Marks> WallCells::shared_marks(const std::vector<Held>& above, const std::vector<Held>& below) const {
  const std::int64_t least = building_->bars->common_along.in_nanometres();
  std::vector<Marks> marks;
  for (std::size_t i = 0, k = 0; i < above.size() && k < below.size();) {
    const Exact& from = compare(above[i].from, below[k].from) > 0 ? above[i].from : below[k].from;
    const Exact& to = compare(above[i].to, below[k].to) < 0 ? above[i].to : below[k].to;
    if (compare(to, from, least) >= 0) {
      const Marks a = marks_in(above[i]), b = marks_in(below[k]);
      const Marks both{std::max(a.from, b.from), std::min(a.to, b.to)};
      if (both.from <= both.to) marks.push_back(both);
    }
    (compare(above[i].to, below[k].to) < 0 ? i : k) += 1;
  }
  return marks;
}

std::vector<WallCells::Held> WallCells::cells_in(std::int32_t course, Length from, Length to) const {
  std::vector<Held> cells;
  const auto here = std::ranges::equal_range(runs_, course, {}, &Run::course);
  for (const Run& run : here) {
    if (run.end <= from || run.start >= to) continue;
    const auto all = std::span(layout_->pieces).subspan(run.first_piece, run.piece_count);
    const auto ends_before = [&](const Piece& piece) {
      return exact(piece.start).whole + piece.length.in_nanometres() + 1 < from.in_nanometres();
    };
    for (auto piece = std::ranges::partition_point(all, ends_before); piece != all.end(); ++piece) {
      const Exact start = exact(piece->start);
      if (start.whole > to.in_nanometres()) break;
      add_cells_of(*series_, *piece, [&](const CellSpan& cell) {
        cells.push_back({start.moved(cell.from.in_nanometres()), start.moved(cell.to.in_nanometres())});
      });
    }
  }
  return cells;
}

}  // namespace stringcourse::bond
