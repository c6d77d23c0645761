#pragma once
// The building while it is being resolved. Each step of resolve() takes the draft, adds its part and its troubles.
#include <array>
#include <functional>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "job/job.hpp"
#include "measure/quoted.hpp"
#include "walls/building.hpp"
#include "walls/words.hpp"

namespace stringcourse::walls {

using NameIndex = std::map<std::string, int, std::less<>>;

struct Draft {
  const Job& job;
  Building building = {};
  Refusals refusals = {};
  NameIndex wall_by_name = {};             // walls that stand in `building`
  std::set<std::string, std::less<>> refused_walls = {};  // named in the job, refused: what hangs on them is left alone
  bool series_stand = false;          // unit, joint and thickness are known
  bool plan_stands = false;           // corners and plan points are sound: interior walls can be placed
  std::vector<std::set<std::string, std::less<>>> start_names = {}, end_names = {};  // by wall: what a place may call its ends
};

/// Adds a refusal.
void refuse(Draft& draft, std::string code, std::string place, std::string reason, std::string remedy);
/// Adds a finding at the hold point Order, or where `point` says.
void find(Draft& draft, std::string code, std::string place, std::string text, std::string rule = {},
          HoldPoint point = HoldPoint::Order);
/// A length in the job's own tape, rounded to what it can mark; exact where that would make nothing of it.
[[nodiscard]] std::string say(const Draft& draft, Length length);
/// A length as the job states it: exact, whatever the tape can mark.
[[nodiscard]] std::string say_asked(const Draft& draft, Length length);
/// Two lengths that a sentence compares: where rounding would make them alike, exact.
[[nodiscard]] std::array<std::string, 2> say_apart(const Draft& draft, Length one, Length other);
/// A length rounded up to what the job's tape can mark (1/16 in, 1 mm): a move "at least" this long mends.
[[nodiscard]] std::string say_at_least(const Draft& draft, Length length);

[[nodiscard]] inline Wall& wall_at(Draft& draft, int index) {
  return draft.building.walls[static_cast<std::size_t>(index)];
}
[[nodiscard]] inline const Wall& wall_at(const Draft& draft, int index) {
  return draft.building.walls[static_cast<std::size_t>(index)];
}
[[nodiscard]] inline Length thickness_of(const Draft& draft, int wall) {
  return draft.building.series_of(wall_at(draft, wall)).thickness;
}
[[nodiscard]] inline bool is_stocked(const Building& building, Kind kind) {
  for (const Kind stocked : building.stocked) if (stocked == kind) return true;
  return false;
}
/// The wall of this name, or a refusal at `place` (silent when that wall was itself refused).
[[nodiscard]] std::optional<int> named_wall(Draft& draft, std::string_view name, const std::string& place);
/// Refuses a name that no wall has, and names those that are there, `besides` (an index of the building's walls) left out.
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

/// The series index of a wall: the job's own, or one more added to the building. Refusals at `place`.
[[nodiscard]] std::optional<int> series_index(Draft& draft, const std::optional<std::string>& id,
                                              const std::string& place);
/// The index of a series that series_index() has found before; 0 where it was refused.
[[nodiscard]] int series_in_use(const Draft& draft, const std::optional<std::string>& id);

}  // namespace stringcourse::walls
