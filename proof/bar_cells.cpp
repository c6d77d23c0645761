#include "proof/bar_cells.hpp"

#include <algorithm>
#include <optional>

#include "proof/cells.hpp"
#include "proof/conceded.hpp"
#include "proof/runs.hpp"

namespace stringcourse::proof {
namespace {

template <typename List>
const auto& at(const List& list, int index) {
  return list[static_cast<std::size_t>(index)];
}

/// A clear stretch along a wall that need not end at whole nanometres.
struct Stretch {
  ExactPosition from, to;
};

ExactPosition shifted(const ExactPosition& place, Length by) {
  return {place.numerator + by.in_nanometres() * place.denominator, place.denominator};
}
ExactPosition whole(Length place) { return {place.in_nanometres(), 1}; }

/// The stretch holds centre +- (diameter / 2 + clearance).
bool holds(const Stretch& cell, Length centre, const BarRules& rules) {
  const Length doubled = rules.diameter + rules.clearance * 2;
  const ExactPosition left{(centre * 2 - doubled).in_nanometres(), 2}, right{(centre * 2 + doubled).in_nanometres(), 2};
  return cell.from <= left && right <= cell.to;
}

/// Whether two stretches share at least `least`.
bool share(const Stretch& a, const Stretch& b, Length least) {
  return shifted(std::max(a.from, b.from), least) <= std::min(a.to, b.to);
}

const RunFacts* run_over(const CourseFacts& course, Length centre) {
  for (const RunFacts& run : course.runs)
    if (run.run->start < centre && centre < run.run->end) return &run;
  return nullptr;
}

/// Where piece number `index` of a run starts, counted again: start + pieces before + joints before.
ExactPosition start_of(const RunFacts& facts, std::size_t index) {
  const std::int64_t m = std::max<std::int64_t>(facts.joints, 1);
  Length before = facts.run->start;
  for (std::size_t i = 0; i < index; ++i) before += facts.pieces[i]->length;
  const std::int64_t joints = static_cast<std::int64_t>(index) + (has_joint(facts.run->at_start) ? 1 : 0);
  return {before.in_nanometres() * m + joints * facts.slack.in_nanometres(), m};
}

/// The last piece that starts at or before `centre`; all pieces are checked to stand where they say.
std::size_t piece_at(const RunFacts& facts, Length centre) {
  const auto after =
      std::ranges::partition_point(facts.pieces, [&](const Piece* piece) { return piece->start <= whole(centre); });
  return after == facts.pieces.begin() ? 0 : static_cast<std::size_t>(after - facts.pieces.begin()) - 1;
}

std::optional<Stretch> cell_around(const Series& series, const RunFacts& facts, Length centre, const BarRules& rules) {
  if (facts.pieces.empty() || facts.slack < Length()) return std::nullopt;
  const std::size_t index = piece_at(facts, centre);
  const ExactPosition start = start_of(facts, index);
  for (const CellSpan& span : whole_cells(series, *facts.pieces[index])) {
    const Stretch cell{shifted(start, span.from), shifted(start, span.to)};
    if (holds(cell, centre, rules)) return cell;
  }
  return std::nullopt;
}

/// The run of a lapped wall whose end unit fills the slot of its main wall around `centre`, and the middle of the main
/// wall as that wall sees it: there the bar stands.
struct Entering {
  const RunFacts* run = nullptr;
  Length middle;
};
std::optional<Entering> entering_run(const Building& b, const Layout& layout, const Facts& facts, int main, int course,
                                     Length centre) {
  for (int j = 0; j < static_cast<int>(b.junctions.size()); ++j) {
    const Junction& junction = at(b.junctions, j);
    const bool around = junction.from.distance_from_start() < centre && centre < junction.to.distance_from_start();
    if (junction.main != main || junction.kind != JunctionKind::Lapped || !around || !enters(layout, j, course))
      continue;
    const auto& runs = at(at(facts.walls, junction.abutting).courses, course - 1).runs;
    if (runs.empty()) continue;
    const Length half_through = b.series_of(at(b.walls, main)).thickness.half_down();
    if (junction.at_abutting_start) return Entering{&runs.front(), -half_through};
    return Entering{&runs.back(), at(b.walls, junction.abutting).actual + half_through};
  }
  return std::nullopt;
}

/// What one course offers a bar: a cell along the bar's wall, nothing there to pass, or an obstacle. In a slot what
/// stands in the way is a unit of the wall that enters: the bar is then given up there, on that wall.
struct Passage {
  std::optional<Stretch> cell;
  std::string obstacle;
  std::optional<Concession> entering = {};
};

/// The clear stretch between the shells of an ordinary unit, from the wall's outer face.
Stretch between_shells(const Series& series) {
  return {whole(series.face_shell), whole(series.thickness - series.face_shell)};
}

/// ... and of the unit that makes a corner, which a corner set makes no thicker than its leg. It stands on the corner's
/// outer side: at the wall's outer face, at a re-entrant corner at its inner one.
Stretch between_corner_shells(const Building& b, const Corner& corner, int wall) {
  const Series& series = b.series_of(at(b.walls, wall));
  const Length thick = std::min(series.thickness, corner_leg(series, b.corner_sets_stocked));
  if (corner.convex) return {whole(series.face_shell), whole(thick - series.face_shell)};
  return {whole(series.thickness - thick + series.face_shell), whole(series.thickness - series.face_shell)};
}

/// A corner's bar passes the unit of whichever wall runs through: in that unit's cell along it, between its shells
/// across. The stretch that comes back lies along the bar's own wall.
Passage corner_passage(const Building& b, const Layout& layout, const Facts& facts, const PlacedBar& bar, int course) {
  const BarRules& rules = *b.bars;
  const Corner& corner = at(b.corners, bar.corner);
  const int other = corner.arriving == bar.wall ? corner.leaving : corner.arriving;
  const bool own = runs_through(b, layout, bar.corner, bar.wall, course);
  const int wall = own ? bar.wall : other;
  const CornerBar seen = own ? CornerBar{bar.centre, bar.off_face} : seen_from_other(b, bar);
  const RunFacts* run = run_over(at(at(facts.walls, wall).courses, course - 1), seen.along);
  if (!run || at(facts.walls, wall).stopped || gives_up_an_end(layout, wall, course)) return {};
  const std::optional<Stretch> cell = cell_around(b.series_of(at(b.walls, wall)), *run, seen.along, rules);
  if (!cell) return {std::nullopt, "meets a web of the corner unit, or lacks its clearance along it"};
  const Stretch shells = between_corner_shells(b, corner, wall);
  if (!holds(shells, seen.off_face, rules))
    return {std::nullopt, "lacks its clearance to a face shell of the corner unit"};
  if (own) return {cell, ""};
  // Across the other wall is along this one.
  const Length origin = corner.arriving == bar.wall ? at(b.walls, bar.wall).actual : Length();
  const bool forward = (corner.arriving == bar.wall) != corner.convex;
  const auto along = [&](const ExactPosition& depth) {
    const Length in = Length::nanometres(depth.numerator);
    return whole(forward ? origin + in : origin - in);
  };
  return forward ? Passage{Stretch{along(shells.from), along(shells.to)}, ""}
                 : Passage{Stretch{along(shells.to), along(shells.from)}, ""};
}

Passage passage_in(const Building& b, const Layout& layout, const Facts& facts, const PlacedBar& bar, int course) {
  if (bar.corner >= 0) return corner_passage(b, layout, facts, bar, course);
  const BarRules& rules = *b.bars;
  const Series& series = b.series_of(at(b.walls, bar.wall));
  if (const RunFacts* run = run_over(at(at(facts.walls, bar.wall).courses, course - 1), bar.centre)) {
    if (run->pieces.empty()) return {};  // bare, or a joint alone: no unit of this wall is passed
    std::optional<Stretch> cell = cell_around(series, *run, bar.centre, rules);
    if (!cell) return {std::nullopt, "meets a web, a joint or a cut instead of a whole cell with its clearance"};
    if (!holds(between_shells(series), bar.off_face, rules))
      return {std::nullopt, "lacks its clearance to a face shell"};
    return {cell, ""};
  }
  if (const auto unit = entering_run(b, layout, facts, bar.wall, course, bar.centre)) {
    const int entering = unit->run->run->wall;
    const Series& its = b.series_of(at(b.walls, entering));
    if (is_bare(its, *unit->run) || cell_around(its, *unit->run, unit->middle, rules)) return {};
    return {std::nullopt, "meets no cell of the unit that enters the wall here",
            Concession{Concession::What::Bar, entering, course, unit->middle, unit->middle, Length()}};
  }
  return {};
}

/// The building says of this bar that its clearance cannot be kept: then that is no secret.
bool is_told(const Building& b, const PlacedBar& bar) {
  const bool corner = bar.corner >= 0;
  const std::string place =
      corner ? at(b.walls, at(b.corners, bar.corner).arriving).place : at(b.walls, bar.wall).place;
  const Code code = corner ? Code("corner-bar-clearance") : Code("bar-clearance-across");
  return std::ranges::any_of(b.findings, [&](const Finding& f) { return f.code == code && f.place == place; });
}

}  // namespace

CornerBar seen_from_other(const Building& b, const PlacedBar& bar) {
  const Corner& corner = at(b.corners, bar.corner);
  const bool arriving = corner.arriving == bar.wall;
  const Length past = arriving ? bar.centre - at(b.walls, bar.wall).actual : -bar.centre;  // beyond the corner point
  const Length in =
      corner.convex ? bar.off_face : -bar.off_face;  // along the other wall, from the corner point inwards
  return {arriving ? in : at(b.walls, corner.arriving).actual - in, corner.convex ? -past : past};
}

bool share_a_cell(const Building& b, const Facts& facts, int wall, Length one, Length other) {
  const Series& series = b.series_of(at(b.walls, wall));
  for (const CourseFacts& course : at(facts.walls, wall).courses) {
    const RunFacts* run = run_over(course, one);
    if (!run || run != run_over(course, other) || run->pieces.empty() || run->slack < Length()) continue;
    const std::size_t index = piece_at(*run, one);
    const ExactPosition start = start_of(*run, index);
    for (const CellSpan& span : whole_cells(series, *run->pieces[index])) {
      const Stretch cell{shifted(start, span.from), shifted(start, span.to)};
      const auto inside = [&](Length place) { return cell.from <= whole(place) && whole(place) <= cell.to; };
      if (inside(one) && inside(other)) return true;
    }
  }
  return false;
}

Violations check_cells_of(const Building& building, const Layout& layout, const Facts& facts, const PlacedBar& bar) {
  Violations found;
  std::optional<Stretch> below;
  if (is_told(building, bar)) return found;
  for (int course = bar.first_course; course <= bar.last_course; ++course) {
    const std::string where = place_of(building, bar.wall, course);
    const std::string who = "the bar at " + in_millimetres(bar.centre) + " ";
    const Passage passage = passage_in(building, layout, facts, bar, course);
    const auto fail = [&](const std::string& text, Concession::What what) {
      found.push_back(violation(kBars, where, who + text));
      const bool of_its_own_place = bar.corner < 0 && bar.reason != BarReason::Spaced;
      const Concession here{what, bar.wall, course, bar.centre, bar.centre, Length()};
      if (of_its_own_place) found.back().may_be = passage.entering.value_or(here);
    };
    if (!passage.obstacle.empty()) fail(passage.obstacle, Concession::What::Bar);
    if (passage.cell && below && !share(*below, *passage.cell, building.bars->common_along))
      fail("finds its cell too far off the cell below", Concession::What::BarCells);
    below = passage.cell;
  }
  return found;
}

}  // namespace stringcourse::proof
