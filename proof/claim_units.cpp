// Series, stock, joint range, least piece, saw list, courses.
#include <algorithm>

#include "proof/claim.hpp"

namespace stringcourse::proof {
namespace {

Violation differs(std::string where, std::string text) {
  return violation(kBuilding, std::move(where), std::move(text));
}

const OwnSeries* own_series(const Job& job, const std::string& id) {
  for (const OwnSeries& own : job.units.own_series)
    if (own.id == id) return &own;
  return nullptr;
}

bool agrees(const std::optional<Length>& asked, Length got) { return !asked || *asked == got; }

/// A series of the user's own has the sizes that the user measured.
bool is_own(const OwnSeries& own, const Series& s) {
  return s.full == own.full && s.half == own.half && s.thickness == own.thickness && s.height == own.height &&
         s.joint == own.joint && agrees(own.half_high, s.half_high) && agrees(own.joint_tolerance, s.joint_tolerance) &&
         agrees(own.least_piece, s.least_piece) && agrees(own.short_lap_margin, s.short_lap_margin) &&
         agrees(own.cut_step, s.cut_step) && agrees(own.face_shell, s.face_shell) && s.full_cells == own.full_cells &&
         s.half_cells == own.half_cells && (own.made.empty() || s.made == own.made) &&
         (!own.corner_leg || (s.corner_set && s.corner_set->short_leg == *own.corner_leg)) &&
         (own.corner_leg || !s.corner_set);
}

bool is_known_series(const Job& job, const Series& s) {
  if (const OwnSeries* own = own_series(job, s.id)) return is_own(*own, s);
  const Series* published = find_series(s.id);
  return published && *published == s;
}

Violations claim_series(const Job& job, const Building& b, const Names& names) {
  Violations found;
  if (b.series[0].id != job.units.series) found.push_back(differs("units", "the first series is not the job's"));
  for (const Series& s : b.series)
    if (!is_known_series(job, s))
      found.push_back(differs("units", "series " + s.id + " has other sizes than its source"));
  const auto check = [&](int wall, const std::optional<std::string>& asked) {
    const Wall& w = b.walls[static_cast<std::size_t>(wall)];
    if (b.series_of(w).id != asked.value_or(job.units.series))
      found.push_back(differs(name_of(b, wall), "built of another series"));
  };
  for (std::size_t i = 0; i < names.side_walls.size(); ++i) check(names.side_walls[i], job.outline.sides[i].series);
  for (std::size_t i = 0; i < names.interior_walls.size(); ++i)
    check(names.interior_walls[i], job.interior_walls[i].series);
  return found;
}

bool contains(const std::vector<UnitKind>& kinds, UnitKind kind) {
  return std::ranges::find(kinds, kind) != kinds.end();
}

/// The yard stocks what the job says; said nothing, every kind that a series in use is made in.
Violations claim_stock(const Job& job, const Building& b) {
  for (int k = 0; k < kKindCount; ++k) {
    const UnitKind kind = static_cast<UnitKind>(k);
    const bool made = std::ranges::any_of(b.series, [&](const Series& s) { return contains(s.made, kind); });
    const bool made_here = contains(b.series[0].made, kind);
    const bool said = job.units.stocked && contains(*job.units.stocked, kind);
    const bool lawful = job.units.stocked ? said : made;
    const bool needed = job.units.stocked ? said && made : made_here;
    const bool listed = contains(b.stocked, kind);
    if ((listed && !lawful) || (needed && !listed))
      return {differs("units", "the stock is not what the job says: " + std::string(kind_name(kind)))};
  }
  const bool any_set = std::ranges::any_of(b.series, [](const Series& s) { return s.corner_set.has_value(); });
  const bool made =
      std::ranges::any_of(b.series, [](const Series& s) { return contains(s.made, UnitKind::CornerSet); });
  const bool stocked = job.units.stocked ? contains(*job.units.stocked, UnitKind::CornerSet) : made;
  if (any_set && b.corner_sets_stocked != stocked)
    return {differs("units", "corner sets are stocked, or not, against the job")};
  return {};
}

/// Default saw list: three quarters and a quarter of U + j, less j, down to the saw's marks, none below the least
/// piece. A yard without halves has them sawn. Order does not matter here.
std::vector<Length> saw_list(const Job& job, const Series& s, Length least) {
  std::vector<Length> cuts;
  if (job.units.cuts) cuts = *job.units.cuts;
  else
    for (const std::int64_t quarters : {3, 1}) {
      const Length laid = Length::nanometres((s.full + s.joint).in_nanometres() * quarters / 4);
      const Length cut = s.cut_step * (laid - s.joint).whole_multiples(s.cut_step);
      if (least <= cut) cuts.push_back(cut);
    }
  const bool halves =
      job.units.stocked ? contains(*job.units.stocked, UnitKind::Half) : contains(s.made, UnitKind::Half);
  if (!halves) cuts.push_back(s.half);
  std::ranges::sort(cuts);
  const auto doubled = std::ranges::unique(cuts);
  cuts.erase(doubled.begin(), doubled.end());
  return cuts;
}

Violations claim_limits(const Job& job, const Building& b) {
  Violations found;
  const Series& s = b.series[0];
  if (b.joint != s.joint) found.push_back(differs("units", "another joint"));
  if (b.joint_least != job.units.joint_least.value_or(s.joint - s.joint_tolerance) ||
      b.joint_most != job.units.joint_most.value_or(s.joint + s.joint_tolerance))
    found.push_back(differs("units", "another joint range"));
  if (b.least_piece != job.units.least_piece.value_or(s.least_piece))
    found.push_back(differs("units", "another least piece"));
  std::vector<Length> cuts = b.cuts;
  std::ranges::sort(cuts);
  if (cuts != saw_list(job, s, b.least_piece)) found.push_back(differs("units", "another list of saw cuts"));
  if (b.bond != job.units.bond.value_or(BondWish::Half)) found.push_back(differs("units", "another bond"));
  if (b.tape != job.tape) found.push_back(differs("units", "another tape"));
  return found;
}

bool listed(const std::vector<int>& list, int number) { return std::ranges::find(list, number) != list.end(); }

/// Units of the right height, one joint between courses, the top of course 1 on the datum.
Violations claim_course(const Job& job, const Building& b, std::size_t k) {
  Violations found;
  const Series& s = b.series[0];
  const Course& course = b.courses[k];
  const std::string where = "course " + std::to_string(k + 1);
  const Length top = k == 0 ? Length() : b.courses[k - 1].top + s.joint + course.unit_height;
  if (course.number != static_cast<int>(k + 1) || course.unit_height != (course.half_high ? s.half_high : s.height) ||
      course.top != top)
    found.push_back(differs(where, "number, height or top is not what the units make it"));
  if (course.bond_beam != listed(job.steel.bond_beams, course.number))
    found.push_back(differs(where, "a bond beam too many or missing"));
  const int every = job.steel.wire_every.value_or(0);
  const bool last = k + 1 == b.courses.size();  // no bed lies on top of it
  if (course.wire != (every > 0 && course.number % every == 0 && !last))
    found.push_back(differs(where, "wire too many or missing"));
  const bool said = listed(job.heights.half_high_courses, course.number);
  if (course.half_high != said && !(course.half_high && job.heights.height))
    found.push_back(differs(where, "half-high against the job"));
  return found;
}

}  // namespace

Violations claim_units(const Job& job, const Building& building, const Names& names) {
  return joined(claim_series(job, building, names), joined(claim_stock(job, building), claim_limits(job, building)));
}

Violations claim_courses(const Job& job, const Building& building) {
  Violations found;
  const Series& s = building.series[0];
  Length height;
  for (std::size_t k = 0; k < building.courses.size(); ++k) {
    found = joined(std::move(found), claim_course(job, building, k));
    height += building.courses[k].unit_height + s.joint;
  }
  if (job.heights.courses && *job.heights.courses != static_cast<int>(building.courses.size()))
    found.push_back(differs("heights", "another number of courses"));
  if (job.heights.height) {
    // A bare height is nominal: units and beds together. No course more or less comes nearer to it.
    const Length off = height - job.heights.height->length, course = s.height + s.joint;
    if (course < off * 2 || course < -(off * 2))
      found.push_back(differs("heights", "the courses miss the height asked"));
  }
  return found;
}

}  // namespace stringcourse::proof
