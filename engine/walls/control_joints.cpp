// Control joints: placed ones on the half-unit grid, and those that a rule asks for where there is room for them.
#include <algorithm>

#include "catalogue/rules.hpp"
#include "measure/sorting.hpp"
#include "walls/control_joint_search.hpp"
#include "walls/draft.hpp"
#include "walls/opening_checks.hpp"
#include "walls/places.hpp"
#include "walls/resolve.hpp"

namespace stringcourse::walls {
namespace {

constexpr std::string_view kPlaced = "/control_joints/placed";

/// Where grid line k's joint starts: its centre is j/2 before the line as counted from the start corner.
Position joint_at_line(const Draft& draft, int wall, std::int64_t line) {
  const Length before =
      pushed_end(draft, wall_at(draft, wall).start) == PushedEnd::Out ? draft.building.joint : Length();
  return Position::from_start(draft.building.series.front().pitch() * line - before);
}

/// The grid line nearest to a joint that starts at `from` (a tie: the farther).
std::int64_t nearest_line(const Draft& draft, int wall, Position from) {
  const Length pitch = draft.building.series.front().pitch();
  return (from - joint_at_line(draft, wall, 0) + pitch.half_down()).whole_multiples(pitch);
}

/// A control joint's start edge as the job states it.
std::optional<Position> stated_start(Draft& draft, int wall, const Place& place, const std::string& at) {
  const Length joint = draft.building.joint;
  if (place.at.basis == Basis::Actual && !place.to) {
    const auto line = placed_line(draft, wall, place, at);
    return line ? std::optional(*line - joint.half_down()) : std::nullopt;
  }
  const auto stretch = placed_stretch(draft, wall, place, joint, Placed::Hole, at);
  return stretch ? std::optional(stretch->from) : std::nullopt;
}

/// On the grid, or snapped to it, or left as it is where its place is actual; each with a finding.
Position on_grid(Draft& draft, int wall, const Place& place, Position start, const std::string& at) {
  const Position line = joint_at_line(draft, wall, nearest_line(draft, wall, start));
  if (line == start) return start;
  const bool keeps = place.at.basis == Basis::Actual;
  const FactValue off = marked(start < line ? line - start : start - line);
  find(draft, "control-joint-off-grid", at + "/at",
       keeps ? fact("control-joint-kept-off-grid", {off})
             : fact("control-joint-moved-to-grid",
                    {off, marked(line.distance_from_start()), wall_at(draft, wall).start_name}));
  return keeps ? start : line;
}

struct Blocked {
  Fact reason, remedy;
};

Fact move_it(Length by, const std::string& toward) { return fact("move-it-toward", {at_least(by), toward}); }

std::optional<Blocked> blocked_by_opening(const Draft& draft, int wall, Position from) {
  const Position to = from + draft.building.joint;
  for (const ResolvedOpening& opening : draft.building.openings) {
    if (opening.wall != wall) continue;
    const LintelReach reach = lintel_reach(opening);
    if (to <= reach.from || from >= reach.to) continue;
    const bool in_hole = to > opening.from && from < opening.to;
    const Length back = to - reach.from, on = reach.to - from;
    const bool toward_end = on <= back;
    const Wall& line = wall_at(draft, wall);
    return Blocked{fact(in_hole ? "control-joint-in-opening" : "control-joint-in-bearing", {opening.name}),
                   move_it((toward_end ? on : back) + draft.building.series.front().half,
                           toward_end ? line.end_name : line.start_name)};
  }
  return std::nullopt;
}

std::optional<Blocked> blocked_by_wall(const Draft& draft, int wall, Position from) {
  const Position to = from + draft.building.joint;
  const Length least = draft.building.least_piece;
  const Length before = from - first_face(draft, wall), after = last_face(draft, wall) - to;
  const Wall& line = wall_at(draft, wall);
  if (before < least || after < least) {
    const bool at_start = before < least;
    const Length left = at_start ? before : after;
    return Blocked{
        fact("control-joint-near-end", {line.name, FactValue::apart(left, least),
                                        at_start ? line.start_name : line.end_name, FactValue::apart(least, left)}),
        move_it(least - left, at_start ? line.end_name : line.start_name)};
  }
  for (const Junction& junction : draft.building.junctions) {
    if (junction.main != wall || to <= junction.from || from >= junction.to) continue;
    return Blocked{fact("control-joint-on-junction", {wall_at(draft, junction.abutting).name, line.name}),
                   fact("move-beside-wall")};
  }
  for (const ControlJoint& other : draft.building.control_joints) {
    if (other.wall != wall || to + least <= other.from || other.to + least <= from) continue;
    return Blocked{fact("control-joints-too-near", {line.name, marked(least)}), fact("leave-one-out")};
  }
  return std::nullopt;
}

void find_near_opening(Draft& draft, int wall, Position from, const std::string& at) {
  const Position to = from + draft.building.joint;
  const Length half = draft.building.series.front().half, least = draft.building.least_piece;
  for (const ResolvedOpening& opening : draft.building.openings) {
    if (opening.wall != wall) continue;
    const LintelReach reach = lintel_reach(opening);
    const Length clear = to <= reach.from ? reach.from - to : from - reach.to;
    if (!opening.lintel && clear > Length() && clear < least) {
      refuse(
          draft, "pier-short", at + "/at",
          fact("pier-short-at-joint", {opening.name, FactValue::apart(clear, least), FactValue::apart(least, clear)}),
          fact("move-off-jamb", {at_least(least - clear)}));
    }
    if (!opening.lintel || clear >= half) continue;
    find(draft, "control-joint-near-lintel", at + "/at",
         fact("control-joint-near-lintel", {marked(clear), opening.name, marked(half)}), "control-joint-bearing",
         HoldPoint::Lintels);
  }
}

void add_placed(Draft& draft, std::size_t index) {
  const PlacedControlJoint& asked = draft.job.control_joints.placed[index];
  const std::string at = pointer(kPlaced, index), place = at + "/place";
  const auto wall = named_wall(draft, asked.on, at + "/on");
  if (!wall) return;
  const auto stated = stated_start(draft, *wall, asked.place, place);
  if (!stated) return;
  const Position from = on_grid(draft, *wall, asked.place, *stated, place);
  auto blocked = blocked_by_wall(draft, *wall, from);
  if (!blocked) blocked = blocked_by_opening(draft, *wall, from);
  if (blocked) {
    refuse(draft, "control-joint-blocked", place + "/at", blocked->reason, blocked->remedy);
    return;
  }
  find_near_opening(draft, *wall, from, place);
  draft.building.control_joints.push_back({*wall, from, from + draft.building.joint, false});
}

/// Where the near edge of a joint by rule may not stand on one wall: open intervals, by their start; `reach` is the
/// farthest end of any so far, so that one look back is enough.
struct Barred {
  Position from, to, reach;
};

/// Half a unit clear of bearings, a further half unit where a one-piece lintel may bear that much longer, and half a
/// unit clear of junctions.
std::vector<Barred> barred_on(const Draft& draft, const std::vector<int>& openings, const std::vector<int>& junctions) {
  const Series& own = draft.building.series.front();
  const Length joint = draft.building.joint;
  std::vector<Barred> barred;
  for (const int index : openings) {
    const ResolvedOpening& opening = draft.building.openings[static_cast<std::size_t>(index)];
    const LintelReach reach = lintel_reach(opening);
    const bool longer = opening.lintel && opening.lintel->make == LintelMake::OnePiece;
    const Length clear = longer ? own.half + own.pitch() : own.half;
    barred.push_back({reach.from - clear - joint, reach.to + clear, {}});
  }
  for (const int index : junctions) {
    const Junction& junction = draft.building.junctions[static_cast<std::size_t>(index)];
    barred.push_back({junction.from - own.half - joint, junction.to + own.half, {}});
  }
  sort_stably(barred, {}, &Barred::from);
  for (std::size_t i = 0; i < barred.size(); ++i)
    barred[i].reach = i == 0 ? barred[i].to : std::max(barred[i - 1].reach, barred[i].to);
  return barred;
}

/// May a joint by rule stand on this line? Clear of what is barred, and half a unit from the wall's ends.
bool has_room(const Draft& draft, int wall, const std::vector<Barred>& barred, Position from) {
  const Position to = from + draft.building.joint;
  const Length half = draft.building.series.front().half;
  if (from - first_face(draft, wall) < half || last_face(draft, wall) - to < half) return false;
  const auto after = std::ranges::lower_bound(barred, from, {}, &Barred::from);
  return after == barred.begin() || std::prev(after)->reach <= from;
}

PanelEnd panel_end(const Draft& draft, const WallEnd& end) {
  if (end.kind == EndKind::Free) return PanelEnd::Open;
  if (end.kind == EndKind::Corner) return PanelEnd::Held;
  return draft.building.junctions[static_cast<std::size_t>(end.junction)].kind == JunctionKind::ControlJoint
             ? PanelEnd::Open
             : PanelEnd::Held;
}

/// What the rule asks of one wall: greatest panel in nominal lengths, a whole number of half units.
struct Asked {
  Length panel;
  std::string_view rule;
};

void find_no_place(Draft& draft, int wall, const Asked& asked, Length longest) {
  const Wall& line = wall_at(draft, wall);
  find(draft, "control-joint-no-place", line.place,
       fact("control-joint-no-place", {line.name, marked(asked.panel), marked(longest)}), asked.rule);
}

/// Fills one stretch of a wall, between ends or placed joints, with joints by rule. Places are nominal from the wall's
/// start.
Length fill_stretch(Draft& draft, int wall, const Asked& asked, PanelSearch search, const std::vector<Barred>& barred) {
  const Length pitch = draft.building.series.front().pitch();
  for (std::int64_t line = search.start.whole_multiples(pitch) + 1; pitch * line < search.end; ++line) {
    if (has_room(draft, wall, barred, joint_at_line(draft, wall, line))) search.lines.push_back(pitch * line);
  }
  search.greatest = asked.panel;
  const PanelAnswer answer = best_joint_lines(search);
  for (const Length line : answer.lines) {
    const Position from = joint_at_line(draft, wall, line.whole_multiples(pitch));
    draft.building.control_joints.push_back({wall, from, from + draft.building.joint, true});
  }
  return answer.too_long > Length() ? answer.longest : Length();
}

void add_by_rule(Draft& draft, int wall, const Asked& asked, const std::vector<Barred>& barred,
                 const std::vector<Position>& placed) {
  const Wall line = wall_at(draft, wall);
  if (line.nominal <= asked.panel) return;
  const Position grid = joint_at_line(draft, wall, 0);
  std::vector<Length> bounds{Length()};
  for (const Position joint : placed) bounds.push_back(joint - grid);
  sort_stably(bounds);
  bounds.push_back(line.nominal);
  Length longest;
  for (std::size_t i = 0; i + 1 < bounds.size(); ++i) {
    PanelSearch search;
    search.start = bounds[i];
    search.end = bounds[i + 1];
    search.at_start = i == 0 ? panel_end(draft, line.start) : PanelEnd::Open;
    search.at_end = i + 2 == bounds.size() ? panel_end(draft, line.end) : PanelEnd::Open;
    longest = std::max(longest, fill_stretch(draft, wall, asked, search, barred));
  }
  if (longest > Length()) find_no_place(draft, wall, asked, longest);
}

void find_rule(Draft& draft, const Asked& asked, Length height) {
  find(draft, "control-joint-rule", "/control_joints/rule",
       fact("control-joint-rule", {marked(height), marked(asked.panel)}), asked.rule);
}

void add_all_by_rule(Draft& draft, JointRule rule) {
  const int courses = static_cast<int>(draft.building.courses.size());
  const Length height = laid_height(draft.building, 1, courses), pitch = draft.building.series.front().pitch();
  const Length limit = greatest_panel(rule, height);
  const Asked asked{std::max(pitch * limit.whole_multiples(pitch), pitch),
                    rule == JointRule::Us ? "control-joint-us" : "control-joint-uk"};
  find_rule(draft, asked, height);
  const auto openings = openings_by_wall(draft.building);
  std::vector<std::vector<int>> junctions(draft.building.walls.size());
  for (std::size_t i = 0; i < draft.building.junctions.size(); ++i) {
    junctions[static_cast<std::size_t>(draft.building.junctions[i].main)].push_back(static_cast<int>(i));
  }
  std::vector<std::vector<Position>> placed(draft.building.walls.size());
  for (const ControlJoint& joint : draft.building.control_joints)
    placed[static_cast<std::size_t>(joint.wall)].push_back(joint.from);
  for (std::size_t i = 0; i < draft.building.walls.size(); ++i) {
    add_by_rule(draft, static_cast<int>(i), asked, barred_on(draft, openings[i], junctions[i]), placed[i]);
  }
}

}  // namespace

void resolve_control_joints(Draft& draft) {
  if (draft.building.courses.empty()) return;
  for (std::size_t i = 0; i < draft.job.control_joints.placed.size(); ++i) add_placed(draft, i);
  const JointRule rule = draft.job.control_joints.rule.value_or(JointRule::None);
  if (rule != JointRule::None && draft.job.steel.beam_steel_in_joints.value_or(false)) {
    find(draft, "control-joint-rule", "/control_joints/rule", fact("control-joint-rule-off"),
         "control-joint-horizontal-steel");
  } else if (rule != JointRule::None && draft.refusals.empty()) {
    add_all_by_rule(draft, rule);
  }
  sort_stably(draft.building.control_joints, [](const ControlJoint& a, const ControlJoint& b) {
    return a.wall != b.wall ? a.wall < b.wall : a.from < b.from;
  });
}

}  // namespace stringcourse::walls

namespace stringcourse {

Length greatest_panel(JointRule rule, Length height) {
  if (rule == JointRule::Uk) return limit_of("control-joint-uk");
  return std::min((height * 3).half_down(), limit_of("control-joint-us"));
}

}  // namespace stringcourse
