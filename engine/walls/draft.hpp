#pragma once
// The building while it is being resolved. Each step of resolve() takes the draft, adds its part and its troubles.
#include <functional>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "job/job.hpp"
#include "measure/fact.hpp"
#include "walls/building.hpp"
#include "walls/pointer.hpp"

namespace stringcourse::walls {

using NameIndex = std::map<std::string, int, std::less<>>;

struct Draft {
  const Job& job;
  Building building = {};
  Refusals refusals = {};
  NameIndex wall_by_name = {};                            // walls that stand in `building`
  std::set<std::string, std::less<>> refused_walls = {};  // named in the job, refused: what hangs on them is left alone
  bool series_stand = false;                              // unit, joint and thickness are known
  bool plan_stands = false;  // corners and plan points are sound: interior walls can be placed
  std::vector<std::set<std::string, std::less<>>> start_names = {},
                                                  end_names = {};  // by wall: what a place may call its ends
};

/// Adds a refusal.
void refuse(Draft& draft, Code code, std::string place, Fact reason, Fact remedy);
/// Adds a finding at the hold point Order, or where `point` says. `rule`: its name in the catalogue.
void find(Draft& draft, Code code, std::string place, Fact says, std::string_view rule = {},
          HoldPoint point = HoldPoint::Order);
/// A length of a fact, rounded to what the tape can mark; exact where that would make nothing of it.
[[nodiscard]] inline FactValue marked(Length length) { return {length, LengthForm::Marked}; }
/// A length of a fact as the job states it.
[[nodiscard]] inline FactValue as_asked(Length length) { return {length, LengthForm::Asked}; }
/// A length of a fact, rounded up to what the tape can mark: a move "at least" this long mends.
[[nodiscard]] inline FactValue at_least(Length length) { return {length, LengthForm::AtLeast}; }

[[nodiscard]] inline Wall& wall_at(Draft& draft, int index) {
  return draft.building.walls[static_cast<std::size_t>(index)];
}
[[nodiscard]] inline const Wall& wall_at(const Draft& draft, int index) {
  return draft.building.walls[static_cast<std::size_t>(index)];
}
[[nodiscard]] inline Length thickness_of(const Draft& draft, int wall) {
  return draft.building.series_of(wall_at(draft, wall)).thickness;
}
[[nodiscard]] inline bool is_stocked(const Building& building, UnitKind kind) {
  for (const UnitKind stocked : building.stocked)
    if (stocked == kind) return true;
  return false;
}
/// The wall of this name, or a refusal at `place` (silent when that wall was itself refused).
[[nodiscard]] std::optional<int> named_wall(Draft& draft, std::string_view name, const std::string& place);
/// Refuses a name that no wall has, and names those that are there, `besides` (an index of the building's walls) left
/// out.
void refuse_unknown_wall(Draft& draft, std::string_view name, const std::string& place, int besides);
/// Nominal height of courses first..last: their units and as many joints.
[[nodiscard]] Length laid_height(const Building& building, int first, int last);

// The steps, in this order. Each adds its part to the draft.
void resolve_units(Draft& draft);           // units.cpp
void resolve_outline(Draft& draft);         // outline.cpp
void check_overlaps(Draft& draft);          // overlaps.cpp
void check_jogs(Draft& draft);              // jogs.cpp
void resolve_courses(Draft& draft);         // courses.cpp
void look_for_implausible(Draft& draft);    // plausible.cpp
void resolve_interior_walls(Draft& draft);  // junctions.cpp
void resolve_openings(Draft& draft);        // openings.cpp
void check_openings(Draft& draft);          // opening_checks.cpp
void resolve_control_joints(Draft& draft);  // control_joints.cpp
void resolve_steel(Draft& draft);           // steel.cpp: beams, wire, pours, bar rules
void resolve_corners(Draft& draft);         // corners.cpp: after courses and beams
void resolve_fixed_bars(Draft& draft);      // fixed_bars.cpp
void check_bar_room(Draft& draft);          // corners.cpp
void check_bars_apart(Draft& draft);        // bars_apart.cpp
void resolve_top(Draft& draft);             // top.cpp

/// The series index of a wall: the job's own, or one more added to the building. Refusals at `place`.
[[nodiscard]] std::optional<int> series_index(Draft& draft, const std::optional<std::string>& id,
                                              const std::string& place);
/// The index of a series that series_index() has found before; 0 where it was refused.
[[nodiscard]] int series_in_use(const Draft& draft, const std::optional<std::string>& id);

}  // namespace stringcourse::walls
