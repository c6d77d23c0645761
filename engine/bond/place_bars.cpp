#include <algorithm>

#include "bond/exact.hpp"
#include "bond/place.hpp"
#include "measure/sorting.hpp"
#include "walls/corner_plan.hpp"

namespace stringcourse::bond {
namespace {

template <typename List>
const auto& at(const List& list, std::int32_t index) {
  return list[static_cast<std::size_t>(index)];
}

Exact exact(const ExactPosition& position) { return Exact::make(position.numerator, position.denominator); }

/// The cells of a piece as it lies, from its start face.
std::vector<CellSpan> cells_of(const Series& series, const Piece& piece) {
  const bool is_half = piece.cut == CutEnd::None && piece.length == series.half;
  std::vector<CellSpan> cells;
  for (const CellSpan& cell : is_half ? series.half_cells : series.full_cells) {
    if (piece.cut != CutEnd::None && cell.to >= piece.length) continue;
    cells.push_back(piece.cut == CutEnd::Start ? CellSpan{piece.length - cell.to, piece.length - cell.from} : cell);
  }
  return cells;
}

/// Whole marks of the tape at which a bar may stand, so far: a sorted list of closed intervals of mark numbers.
struct Marks {
  std::int64_t from, to;
};

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

class WallBars {
 public:
  WallBars(const Building& building, const Layout& layout, std::int32_t wall)
      : building_(&building), layout_(&layout), series_(&building.series_of(at(building.walls, wall))) {
    mark_ = tape_step(building.tape).in_nanometres();
    radius_ = (building.bars->diameter.in_nanometres() + 1) / 2 + building.bars->clearance.in_nanometres();
    const auto first = std::ranges::lower_bound(layout.runs, wall, {}, &Run::wall);
    const auto last = std::ranges::upper_bound(layout.runs, wall, {}, &Run::wall);
    runs_.assign(first, last);
  }

  /// Marks between two places at which every course has a cell that meets the cell below.
  [[nodiscard]] std::vector<Marks> marks_between(Length from, Length to) const {
    std::vector<Marks> marks{{last_mark(Exact::at(from.in_nanometres()), mark_) + 1, last_mark(Exact::at(to.in_nanometres() - 1), mark_)}};
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
  [[nodiscard]] std::int64_t mark() const { return mark_; }

 private:
  struct Held {
    Exact from, to;
  };

  /// Where a bar's centre may stand in this cell.
  [[nodiscard]] Marks marks_in(const Held& cell) const {
    return {first_mark(cell.from.moved(radius_), mark_), last_mark(cell.to.moved(-radius_), mark_)};
  }

  [[nodiscard]] std::vector<Marks> own_marks(const std::vector<Held>& cells) const {
    std::vector<Marks> marks;
    for (const Held& cell : cells) {
      const Marks own = marks_in(cell);
      if (own.from <= own.to) marks.push_back(own);
    }
    return marks;
  }

  [[nodiscard]] std::vector<Marks> shared_marks(const std::vector<Held>& above, const std::vector<Held>& below) const {
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

  [[nodiscard]] std::vector<Held> cells_in(std::int32_t course, Length from, Length to) const {
    std::vector<Held> cells;
    for (const Run& run : runs_) {
      if (run.course != course || run.end <= from || run.start >= to) continue;
      for (std::uint32_t p = 0; p < run.piece_count; ++p) {
        const Piece& piece = layout_->pieces[run.first_piece + p];
        const Exact start = exact(piece.start);
        for (const CellSpan& cell : cells_of(*series_, piece)) {
          cells.push_back({start.moved(cell.from.in_nanometres()), start.moved(cell.to.in_nanometres())});
        }
      }
    }
    return cells;
  }

  const Building* building_;
  const Layout* layout_;
  const Series* series_;
  std::int64_t mark_ = 1, radius_ = 0;
  std::vector<Run> runs_;
};

std::vector<Length> fixed_on(const Building& building, std::int32_t wall) {
  std::vector<Length> places;
  for (const FixedBar& bar : building.fixed_bars) {
    if (bar.wall == wall) {
      places.push_back(bar.centre.distance_from_start());
    } else if (bar.reason == BarReason::Corner && bar.corner >= 0) {
      const Corner& corner = at(building.corners, bar.corner);
      if (corner.arriving == wall || corner.leaving == wall) places.push_back(walls::corner_bar_place(building, corner, wall).along);
    }
  }
  sort_stably(places);
  return places;
}

struct Stretch {
  Length from, to;
};

/// Masonry of full height: between openings, control joints and the wall's ends.
std::vector<Stretch> stretches_of(const Building& building, std::int32_t wall) {
  std::vector<Stretch> breaks;
  for (const ResolvedOpening& opening : building.openings) {
    if (opening.wall == wall) breaks.push_back({opening.from.distance_from_start(), opening.to.distance_from_start()});
  }
  for (const ControlJoint& joint : building.control_joints) {
    if (joint.wall == wall) breaks.push_back({joint.from.distance_from_start(), joint.to.distance_from_start()});
  }
  sort_stably(breaks, {}, &Stretch::from);
  std::vector<Stretch> stretches;
  Length from;
  for (const Stretch& gap : breaks) {
    if (from < gap.from) stretches.push_back({from, gap.from});
    from = std::max(from, gap.to);
  }
  if (from < at(building.walls, wall).actual) stretches.push_back({from, at(building.walls, wall).actual});
  return stretches;
}

class Spacer {
 public:
  Spacer(const Building& building, Layout& layout, std::int32_t wall)
      : building_(&building), layout_(&layout), wall_(wall), cells_(building, layout, wall), spacing_(*building.bars->spacing) {}

  std::int64_t run() {
    const std::vector<Length> fixed = fixed_on(*building_, wall_);
    const std::vector<Stretch> stretches = stretches_of(*building_, wall_);
    std::int64_t extra = 0;
    for (std::size_t s = 0; s < stretches.size(); ++s) {
      std::vector<Length> posts;
      for (const Length place : fixed) {
        const bool after = s == 0 || place >= stretches[s].from, before = s + 1 == stretches.size() || place <= stretches[s].to;
        if (after && before) posts.push_back(place);
      }
      if (posts.empty() || stretches[s].from < posts.front()) posts.insert(posts.begin(), stretches[s].from);
      if (posts.back() < stretches[s].to) posts.push_back(stretches[s].to);
      for (std::size_t p = 1; p < posts.size(); ++p) extra += fill(posts[p - 1], posts[p]);
    }
    return extra;
  }

 private:
  /// Bars between two posts, each as far on as the spacing allows.
  std::int64_t fill(Length from, Length to) {
    if (to - from <= spacing_) return 0;
    const std::vector<Marks> marks = cells_.marks_between(from, to);
    const std::int64_t needed = -(from - to).whole_multiples(spacing_) - 1;  // ceil(gap / spacing) - 1
    std::int64_t placed = 0;
    Length last = from;
    while (to - last > spacing_) {
      const std::int64_t farthest = (last + spacing_).whole_multiples(Length::nanometres(cells_.mark()));
      std::int64_t best = -1;
      for (const Marks& stretch : marks) {
        if (stretch.from <= farthest) best = std::max(best, std::min(stretch.to, farthest));
      }
      const Length next = Length::nanometres(best * cells_.mark());
      if (best < 0 || next <= last) {
        stop(last, to);
        return 0;
      }
      place(next);
      last = next;
      ++placed;
    }
    return placed - needed;
  }

  void place(Length centre) {
    PlacedBar bar;
    bar.wall = wall_;
    bar.centre = centre;
    bar.last_course = static_cast<std::int32_t>(building_->courses.size());
    bar.off_face = walls::middle_of(*building_, wall_);
    layout_->bars.push_back(bar);
  }

  void stop(Length from, Length to) {
    layout_->stopped.push_back(Stopped{wall_, 1, static_cast<std::int32_t>(building_->courses.size()), from, to,
                                       "no cell that all courses share lies within " + tape_text(spacing_, building_->tape) +
                                           " of the bar at " + tape_text(from, building_->tape),
                                       "allow a wider spacing, or move the opening beside it to a half-unit line"});
  }

  const Building* building_;
  Layout* layout_;
  std::int32_t wall_;
  WallBars cells_;
  Length spacing_;
};

}  // namespace

std::int64_t place_bars(const Building& building, Layout& layout) {
  if (!building.bars) return 0;
  for (const FixedBar& fixed : building.fixed_bars) {
    PlacedBar bar;
    bar.wall = fixed.wall;
    bar.centre = fixed.centre.distance_from_start();
    bar.reason = fixed.reason;
    bar.corner = fixed.corner;
    bar.opening = fixed.opening;
    bar.last_course = static_cast<std::int32_t>(building.courses.size());
    bar.off_face = fixed.off_face;
    layout.bars.push_back(bar);
  }
  std::int64_t extra = 0;
  for (std::size_t w = 0; w < building.walls.size() && building.bars->spacing; ++w) {
    const bool whole = std::ranges::none_of(layout.stopped, [&](const Stopped& s) { return s.wall == static_cast<std::int32_t>(w); });
    if (building.series_of(building.walls[w]).grouts && whole) extra += Spacer(building, layout, static_cast<std::int32_t>(w)).run();
  }
  sort_stably(layout.bars, [](const PlacedBar& a, const PlacedBar& b) {
    return a.wall != b.wall ? a.wall < b.wall : a.centre < b.centre;
  });
  return extra;
}

void name_bar_units(const Building& building, Layout& layout) {
  for (const PlacedBar& bar : layout.bars) {
    const std::vector<Kind>& made = building.series_of(at(building.walls, bar.wall)).made;
    const auto stocks = [&](Kind kind) {
      return std::ranges::find(building.stocked, kind) != building.stocked.end() && std::ranges::find(made, kind) != made.end();
    };
    auto run = std::ranges::lower_bound(layout.runs, bar.wall, {}, &Run::wall);
    for (; run != layout.runs.end() && run->wall == bar.wall; ++run) {
      if (bar.centre <= run->start || bar.centre >= run->end) continue;
      for (std::uint32_t p = 0; p < run->piece_count; ++p) {
        Piece& piece = layout.pieces[run->first_piece + p];
        const Length start = piece.start.nearest_nanometre();
        const bool covers = start < bar.centre && bar.centre < start + piece.length;
        if (!covers || piece.kind != Kind::Full) continue;
        const bool inside = p > 0 && p + 1 < run->piece_count;
        if (inside && piece.cut == CutEnd::None && stocks(Kind::OpenEnd)) piece.kind = Kind::OpenEnd;
      }
    }
  }
}

}  // namespace stringcourse::bond
