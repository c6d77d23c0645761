#include "supply/grout.hpp"

#include <algorithm>
#include <tuple>

#include "bond/layout_parts.hpp"
#include "catalogue/rules.hpp"
#include "measure/sorting.hpp"
#include "setout/over.hpp"

namespace stringcourse::supply {
namespace {

const Course& course_of(const Building& building, int course) {
  return building.courses[static_cast<std::size_t>(course - 1)];
}

/// With the bed under it.
Length height_of(const Building& building, int course) {
  return course_of(building, course).top - foot_of_course(building, course);
}

Length clear_across(const Building& building, int wall) {
  const Series& series = building.series_of(wall_of(building, wall));
  return series.thickness - series.face_shell * 2;
}

/// The first cell of a whole unit: what stands for a part whose own is not known.
Length usual_cell(const Series& series) {
  return series.full_cells.empty() ? Length() : series.full_cells.front().to - series.full_cells.front().from;
}

/// What goes round a bar in one course; none in a trough.
Volume add_course(GroutColumn& column, const Building& building, const Layout& layout, const PlacedBar& bar,
                  int course) {
  if (course_of(building, course).bond_beam) return {};
  const setout::Over over = setout::what_stands_over(building, layout, bar.wall, course, {bar.centre, bar.off_face});
  if (over.piece != nullptr && takes_bars_along(over.piece->kind)) return {};
  const Length height = height_of(building, course);
  ++column.cells;
  if (over.cell) {
    const setout::OnWall& clear = over.cell->clear;
    return Volume::box(clear.to - clear.from, clear.deep - clear.shallow, height);
  }
  ++column.unlike;
  const Series& series = building.series_of(wall_of(building, bar.wall));
  return Volume::box(usual_cell(series), clear_across(building, bar.wall), height);
}

void add_columns(GroutPour& pour, const Building& building, const Layout& layout) {
  for (std::size_t k = 0; k < layout.bars.size(); ++k) {
    const PlacedBar& bar = layout.bars[k];
    GroutColumn column{static_cast<std::uint32_t>(k), std::max(bar.first_course, pour.first_course),
                       std::min(bar.last_course, pour.last_course)};
    if (column.first_course > column.last_course) continue;
    column.by_lift.resize(pour.lift_tops.size());
    for (int course = column.first_course; course <= column.last_course; ++course) {
      const auto lift = std::ranges::lower_bound(pour.lift_tops, course) - pour.lift_tops.begin();
      column.by_lift[static_cast<std::size_t>(lift)] += add_course(column, building, layout, bar, course);
    }
    for (const Volume& lift : column.by_lift) column.volume += lift;
    pour.cells += column.volume;
    pour.columns.push_back(std::move(column));
  }
  sort_stably(pour.columns, {}, [&](const GroutColumn& column) {
    const PlacedBar& bar = layout.bars[column.bar];
    return std::tuple(bar.wall, bar.centre);
  });
}

/// The opening over which a trough lies; -1: none.
std::int32_t opening_under(const Building& building, const GroutTrough& trough) {
  const auto over = std::ranges::find_if(building.openings, [&](const ResolvedOpening& one) {
    return one.wall == trough.wall && one.lintel && one.lintel->first_course <= trough.course &&
           trough.course < one.lintel->first_course + one.lintel->courses &&
           one.from.distance_from_start() < trough.to && one.to.distance_from_start() > trough.from;
  });
  return over == building.openings.end() ? -1 : static_cast<std::int32_t>(over - building.openings.begin());
}

/// The troughs of one run: the whole of it in a bond beam, else its lintels' units with the joints between them.
void add_troughs(GroutPour& pour, const Building& building, const Layout& layout, const Run& run) {
  const Length across = clear_across(building, run.wall), height = height_of(building, run.course);
  if (course_of(building, run.course).bond_beam) {
    pour.troughs.push_back(
        {run.wall, run.course, run.start, run.end, -1, Volume::box(run.end - run.start, across, height)});
    pour.beams += pour.troughs.back().volume;
    return;
  }
  bool beside = false;
  for (const Piece& piece : bond::pieces_of(layout, run)) {
    const bool trough = takes_bars_along(piece.kind);
    const Length from = piece.start.nearest_nanometre();
    if (trough && !beside) pour.troughs.push_back({run.wall, run.course, from, from, -1, {}});
    if (trough) {
      const Volume volume = Volume::box(piece.length + (beside ? building.joint : Length()), across, height);
      GroutTrough& whole = pour.troughs.back();
      whole.to = from + piece.length, whole.volume += volume;
      pour.lintels += volume;
    }
    beside = trough;
  }
}

void add_lifts(GroutPour& pour, const Building& building) {
  const Length most = limit_of("grout-lift");
  Length foot = foot_of_course(building, pour.first_course);
  for (int course = pour.first_course; course <= pour.last_course; ++course) {
    const bool last = course == pour.last_course;
    if (!last && course_of(building, course + 1).top - foot <= most) continue;
    pour.lift_tops.push_back(course);
    foot = course_of(building, course).top;
  }
}

GroutPour pour_of(const Building& building, const Layout& layout, int first, int last) {
  GroutPour pour{first, last, course_of(building, last).top - foot_of_course(building, first)};
  add_lifts(pour, building);
  add_columns(pour, building, layout);
  for (const Run& run : layout.runs) {
    if (first <= run.course && run.course <= last) add_troughs(pour, building, layout, run);
  }
  for (GroutTrough& trough : pour.troughs) {
    if (!course_of(building, trough.course).bond_beam) trough.opening = opening_under(building, trough);
  }
  return pour;
}

}  // namespace

bool is_consolidated_again(Length lift) { return lift > limit_of("grout-again"); }

std::vector<GroutPour> grout_pours(const Building& building, const Layout& layout) {
  std::vector<int> tops = building.pour_tops;
  const int top = static_cast<int>(building.courses.size());
  if (tops.empty() || tops.back() < top) tops.push_back(top);
  std::vector<GroutPour> pours;
  int first = 1;
  for (const int last : tops) {
    GroutPour pour = pour_of(building, layout, first, last);
    first = last + 1;
    if (pour.all() != Volume()) pours.push_back(std::move(pour));
  }
  return pours;
}

}  // namespace stringcourse::supply
