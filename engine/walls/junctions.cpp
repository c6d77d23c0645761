// Interior walls: each starts square off a wall and runs to the first wall that it meets, or as long as it is stated.
#include <algorithm>

#include "walls/draft.hpp"
#include "walls/line_of_sight.hpp"
#include "walls/places.hpp"

namespace stringcourse::walls {
namespace {

constexpr std::string_view kInner = "/interior_walls";

enum class Progress { Waiting, Started, Ended, Refused };

/// The interior walls on their way: job index i stands (or will) at wall first + i.
struct Works {
  int first = 0;
  std::vector<Progress> progress;
};

const InteriorWall& asked(const Draft& draft, std::size_t index) { return draft.job.interior_walls[index]; }
int wall_number(const Works& works, std::size_t index) { return works.first + static_cast<int>(index); }

/// Ends of the stated length: as laid between two walls, and as laid to a free end.
struct StatedEnds {
  Length to_wall, free;
};
StatedEnds stated_ends(const Draft& draft, const StatedLength& stated) {
  if (stated.basis == Basis::Actual) return {stated.length, stated.length};
  return {stated.length + draft.building.joint, stated.length};
}

bool check_name(Draft& draft, std::size_t index) {
  const std::string& name = asked(draft, index).name;
  const auto& inner = draft.job.interior_walls;
  const bool twice = std::any_of(inner.begin(), inner.begin() + static_cast<std::ptrdiff_t>(index),
                                 [&](const InteriorWall& other) { return other.name == name; });
  if (!name.empty() && !twice && !draft.wall_by_name.contains(name)) return true;
  refuse(draft, "name-twice", pointer(kInner, index, "name"),
         name.empty() ? fact("interior-wall-without-name") : fact("walls-with-one-name", {FactValue::typed(name)}),
         fact("name-it"));
  return false;
}

/// The wall that `index` starts from, in `building.walls`; -1: no such wall.
int off_wall(const Draft& draft, const Works& works, std::size_t index) {
  const std::string& off = asked(draft, index).off;
  const auto side = draft.wall_by_name.find(off);
  if (side != draft.wall_by_name.end()) return side->second;
  for (std::size_t i = 0; i < draft.job.interior_walls.size(); ++i) {
    if (i != index && asked(draft, i).name == off) return wall_number(works, i);
  }
  return -1;
}

Progress progress_of(const Works& works, int wall) {
  return wall < works.first ? Progress::Ended : works.progress[static_cast<std::size_t>(wall - works.first)];
}

bool check_start(Draft& draft, std::size_t index, int off, const Stretch& stretch) {
  const Stretch ground = meeting_stretch(draft, off);
  const Length before = ground.from - stretch.from, beyond = stretch.to - ground.to;
  if (before <= Length() && beyond <= Length()) return true;
  const Wall& main = wall_at(draft, off);
  const bool at_start = before > Length();
  const Length past = at_start ? before : beyond;
  refuse(draft, "junction-off-wall", pointer(kInner, index, "place"),
         fact("junction-off-wall",
              {asked(draft, index).name, marked(past), at_start ? main.start_name : main.end_name, main.name}),
         fact("move-it-toward", {at_least(past), at_start ? main.end_name : main.start_name}));
  return false;
}

/// Two interior walls off one face of a wall stand side by side, or the later one is refused.
bool check_beside(Draft& draft, std::size_t index, int off, const Stretch& stretch) {
  for (const Junction& other : draft.building.junctions) {
    if (!other.at_abutting_start || other.main != off || stretch.from >= other.to || stretch.to <= other.from) continue;
    const Wall& main = wall_at(draft, off);
    refuse(draft, "junctions-overlap", pointer(kInner, index, "place"),
           fact("junctions-overlap", {asked(draft, index).name, wall_at(draft, other.abutting).name, main.name}),
           fact("move-toward", {asked(draft, index).name, at_least(other.to - stretch.from), main.end_name}));
    return false;
  }
  return true;
}

/// Sets the wall's start on its main wall's inner face. The walker's left face is the far one along the main wall.
void set_start(Draft& draft, std::size_t index, int self, int off, const Stretch& stretch) {
  const Wall main = wall_at(draft, off);
  Wall& wall = wall_at(draft, self);
  wall.heading = right_of(main.heading);
  const PlanPoint outer = moved(main.start_point, main.heading, stretch.to.distance_from_start());
  wall.start_point = moved(outer, wall.heading, thickness_of(draft, off));
  wall.start_name = main.name;
  wall.start = {EndKind::Junction, -1, static_cast<int>(draft.building.junctions.size())};
  draft.start_names[static_cast<std::size_t>(self)] = {"start", main.name};
  if (asked(draft, index).length) wall.actual = stated_ends(draft, *asked(draft, index).length).to_wall;
  draft.building.junctions.push_back(
      {off, self, true, asked(draft, index).start_junction.value_or(JunctionKind::Tied), stretch.from, stretch.to});
}

/// Starts one waiting wall if what it starts from is known. Returns its new progress.
Progress try_start(Draft& draft, const Works& works, std::size_t index) {
  const int off = off_wall(draft, works, index), self = wall_number(works, index);
  if (off < 0 && asked(draft, index).off == asked(draft, index).name) {
    refuse(draft, "junction-loop", pointer(kInner, index, "off"),
           fact("junction-with-itself", {asked(draft, index).name}), fact("start-from-another-wall"));
    return Progress::Refused;
  }
  if (off < 0) {
    refuse_unknown_wall(draft, asked(draft, index).off, pointer(kInner, index, "off"), self);
    return Progress::Refused;
  }
  const Progress base = progress_of(works, off);
  if (base == Progress::Refused) return Progress::Refused;
  const Place& place = asked(draft, index).place;
  const bool from_start = draft.start_names[static_cast<std::size_t>(off)].contains(place.from);
  if (base == Progress::Waiting || (base == Progress::Started && !from_start)) return Progress::Waiting;
  const auto stretch =
      placed_stretch(draft, off, place, thickness_of(draft, self), Placed::Masonry, pointer(kInner, index, "place"));
  if (!stretch) return Progress::Refused;
  const bool final_faces = base == Progress::Ended;
  if (final_faces && !check_start(draft, index, off, *stretch)) return Progress::Refused;
  if (!check_beside(draft, index, off, *stretch)) return Progress::Refused;
  set_start(draft, index, self, off, *stretch);
  return Progress::Started;
}

void end_free(Draft& draft, int self, Length length) {
  Wall& wall = wall_at(draft, self);
  wall.actual = length;
  wall.nominal = length;  // junction in, free end out: nominal is actual
  wall.end_name = "free end";
  draft.end_names[static_cast<std::size_t>(self)] = {"end", "free end"};
}

void end_at_wall(Draft& draft, std::size_t index, int self, const Meeting& met) {
  Wall& wall = wall_at(draft, self);
  wall.actual = met.clear;
  wall.nominal = met.clear - draft.building.joint;
  wall.end_name = wall_at(draft, met.wall).name;
  wall.end = {EndKind::Junction, -1, static_cast<int>(draft.building.junctions.size())};
  draft.end_names[static_cast<std::size_t>(self)] = {"end", wall.end_name};
  draft.building.junctions.push_back(
      {met.wall, self, false, asked(draft, index).end_junction.value_or(JunctionKind::Tied), met.from, met.to});
}

Progress refuse_length(Draft& draft, std::size_t index, const Meeting& met, const StatedEnds& ends) {
  const std::string& name = asked(draft, index).name;
  refuse(draft, "interior-wall-length", pointer(kInner, index, "length"),
         fact("interior-wall-misses", {name, as_asked(ends.to_wall), wall_at(draft, met.wall).name, marked(met.clear)}),
         fact("state-clear-length",
              {marked(met.clear - draft.building.joint), marked(draft.building.series.front().pitch())}));
  return Progress::Refused;
}

Progress end_as_stated(Draft& draft, std::size_t index, int self, const std::optional<Meeting>& met) {
  const StatedEnds ends = stated_ends(draft, *asked(draft, index).length);
  if (ends.free <= Length()) {
    refuse(draft, "interior-wall-length", pointer(kInner, index, "length"),
           fact("interior-wall-length", {asked(draft, index).name, marked(ends.free)}),
           fact("state-length-above-nothing"));
    return Progress::Refused;
  }
  if (!met || ends.free + draft.building.series.front().pitch() <= met->clear) {
    end_free(draft, self, ends.free);
    return Progress::Ended;
  }
  // A length read off a tape may miss the plan by a trifle: an eighth of a joint.
  const Length miss = ends.to_wall < met->clear ? met->clear - ends.to_wall : ends.to_wall - met->clear;
  if (miss * 8 > draft.building.joint) return refuse_length(draft, index, *met, ends);
  end_at_wall(draft, index, self, *met);
  return Progress::Ended;
}

Progress refuse_meeting(Draft& draft, std::size_t index, const std::optional<Meeting>& met) {
  const std::string& name = asked(draft, index).name;
  if (!met) {
    refuse(draft, "interior-wall-endless", pointer(kInner, index), fact("interior-wall-endless", {name}),
           fact("state-length-or-meet"));
    return Progress::Refused;
  }
  refuse(draft, "junction-partial", pointer(kInner, index, "place"),
         fact("junction-partial", {name, wall_at(draft, met->wall).name}), fact("move-onto-face", {name}));
  return Progress::Refused;
}

/// Ends a wall that has started: at the first wall that it meets, or free.
Progress end_wall(Draft& draft, const Works& works, std::size_t index) {
  const int self = wall_number(works, index);
  std::vector<int> standing;
  for (int i = 0; i < static_cast<int>(draft.building.walls.size()); ++i) {
    const Progress progress = progress_of(works, i);
    const bool has_length =
        progress == Progress::Ended ||
        (progress == Progress::Started && asked(draft, static_cast<std::size_t>(i - works.first)).length);
    if (i != self && has_length) standing.push_back(i);
  }
  const std::optional<Meeting> met = first_met(draft, self, standing);
  const bool partial = met && !met->full_face;
  if (asked(draft, index).length && !partial) return end_as_stated(draft, index, self, met);
  if (partial && asked(draft, index).length) {
    const Length free = stated_ends(draft, *asked(draft, index).length).free;
    if (free + draft.building.series.front().pitch() <= met->clear)
      return end_as_stated(draft, index, self, std::nullopt);
  }
  if (!met || partial || met->clear <= Length()) return refuse_meeting(draft, index, met);
  end_at_wall(draft, index, self, *met);
  return Progress::Ended;
}

/// One step: start a wall if one can start, else end one (those without a length first, in the order of the job).
/// Returns false when nothing is left to do.
bool advance(Draft& draft, Works& works) {
  for (std::size_t i = 0; i < works.progress.size(); ++i) {
    if (works.progress[i] != Progress::Waiting) continue;
    works.progress[i] = try_start(draft, works, i);
    if (works.progress[i] != Progress::Waiting) return true;
  }
  for (const bool with_length : {false, true}) {
    for (std::size_t i = 0; i < works.progress.size(); ++i) {
      if (works.progress[i] != Progress::Started || asked(draft, i).length.has_value() != with_length) continue;
      works.progress[i] = end_wall(draft, works, i);
      return true;
    }
  }
  return false;
}

Works placeholders(Draft& draft) {
  Works works;
  works.first = static_cast<int>(draft.building.walls.size());
  for (std::size_t i = 0; i < draft.job.interior_walls.size(); ++i) {
    Wall wall;
    wall.name = asked(draft, i).name;
    wall.interior = true;
    wall.place = pointer(kInner, i);
    wall.series = series_in_use(draft, asked(draft, i).series);
    works.progress.push_back(check_name(draft, i) ? Progress::Waiting : Progress::Refused);
    draft.building.walls.push_back(wall);
    draft.start_names.push_back({"start"});
    draft.end_names.push_back({"end"});
  }
  return works;
}

/// A lapped wall needs a slot in its main wall: the square of a re-entrant corner is no place for one.
void check_slot(Draft& draft, const Works& works, const Junction& junction) {
  const Wall& main = wall_at(draft, junction.main);
  const Length before = Position() - junction.from, beyond = junction.to - Position::from_start(main.actual);
  if (junction.kind != JunctionKind::Lapped || (before <= Length() && beyond <= Length())) return;
  const bool at_start = before > Length();
  const Length inside = at_start ? before : beyond;
  const auto index = static_cast<std::size_t>(junction.abutting - works.first);
  refuse(draft, "junction-in-corner",
         pointer(kInner, index, junction.at_abutting_start ? "start_junction" : "end_junction"),
         fact("junction-in-corner",
              {asked(draft, index).name, main.name, marked(inside), at_start ? main.start_name : main.end_name}),
         fact("butt-or-move", {at_least(inside), at_start ? main.end_name : main.start_name}));
}

/// Once all walls stand: names for what comes after, and starts from interior walls against their final faces.
void settle(Draft& draft, const Works& works) {
  for (std::size_t i = 0; i < works.progress.size(); ++i) {
    const int self = wall_number(works, i);
    const std::string& name = asked(draft, i).name;
    if (works.progress[i] == Progress::Waiting) {
      refuse(draft, "junction-loop", pointer(kInner, i, "off"), fact("junction-loop", {name}),
             fact("start-one-from-side"));
    }
    if (works.progress[i] == Progress::Ended) {
      draft.wall_by_name.emplace(name, self);
    } else {
      draft.refused_walls.insert(name);
    }
  }
  const std::vector<Junction> junctions = draft.building.junctions;
  for (const Junction& junction : junctions) {
    if (progress_of(works, junction.main) == Progress::Ended) check_slot(draft, works, junction);
    if (!junction.at_abutting_start || !wall_at(draft, junction.main).interior) continue;
    if (progress_of(works, junction.main) != Progress::Ended) continue;
    (void)check_start(draft, static_cast<std::size_t>(junction.abutting - works.first), junction.main,
                      {junction.from, junction.to});
  }
}

}  // namespace

void resolve_interior_walls(Draft& draft) {
  if (!draft.plan_stands) {
    for (const InteriorWall& wall : draft.job.interior_walls) draft.refused_walls.insert(wall.name);
    return;
  }
  Works works = placeholders(draft);
  while (advance(draft, works)) {}
  settle(draft, works);
  if (std::ranges::any_of(works.progress, [](Progress p) { return p != Progress::Ended; })) draft.plan_stands = false;
}

}  // namespace stringcourse::walls
