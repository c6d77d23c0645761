#include "proof/corners.hpp"

#include <algorithm>
#include <optional>

#include "proof/conceded.hpp"
#include "proof/runs.hpp"

namespace stringcourse::proof {
namespace {

template <typename List>
const auto& at(const List& list, int index) {
  return list[static_cast<std::size_t>(index)];
}

enum class Owner { Through, Butting };

/// In plan, from the corner's outermost point: u along the wall that runs through, v along the one that butts, each in
/// nanometres times its own denominator.
struct Patch {
  std::int64_t u0, u1, v0, v1;
  Owner owner;
};

/// One corner in one course.
struct Case {
  const Building& b;
  const Corner& corner;
  int through, butting;  // walls
  const RunFacts* run;   // of the wall that runs through, at the corner
  const RunFacts* butt;  // of the other, or null where nothing stands between the corner and an opening
  std::int64_t du, dv;   // denominators
  // A jog's other corner, where it butts: the run of the wall round it, which stands behind what butts here.
  const Corner* next = nullptr;
  const RunFacts* round = nullptr;
  Length round_from = {};                    // from this corner, along the jog
  Length joint_least = {}, joint_most = {};  // farther apart where a wall gives up the width of its joints here
  const Series& own() const { return b.series_of(at(b.walls, through)); }
  Length thick_through() const { return own().thickness; }
  Length thick_butting() const { return b.series_of(at(b.walls, butting)).thickness; }
  std::int64_t u(Length length) const { return length.in_nanometres() * du; }
  std::int64_t v(Length length) const { return length.in_nanometres() * dv; }
};

const RunFacts* run_at(const Facts& facts, const Corner& corner, int wall, int course, RunEnd wanted) {
  const auto& runs = at(at(facts.walls, wall).courses, course - 1).runs;
  if (runs.empty()) return nullptr;
  const RunFacts& run = corner.arriving == wall ? runs.back() : runs.front();
  return (corner.arriving == wall ? run.run->at_end : run.run->at_start) == wanted ? &run : nullptr;
}

/// How far a place of a wall lies from the outer point of the corner, times the denominator: along this wall, inwards.
std::int64_t inwards(const Case& c, int wall, std::int64_t numerator, std::int64_t denominator) {
  const int other = wall == c.through ? c.butting : c.through;
  const Length beyond = c.corner.convex ? Length() : c.b.series_of(at(c.b.walls, other)).thickness;
  if (c.corner.arriving == wall) return (at(c.b.walls, wall).actual + beyond).in_nanometres() * denominator - numerator;
  return numerator + beyond.in_nanometres() * denominator;
}

struct Span {
  std::int64_t from, to;
};
/// A piece along its wall, from the corner inwards.
Span span_of(const Case& c, int wall, const Piece& piece, std::int64_t denominator) {
  const std::int64_t start = piece.start.numerator * (denominator / piece.start.denominator);
  const std::int64_t end = start + piece.length.in_nanometres() * denominator;
  const std::int64_t a = inwards(c, wall, start, denominator), b = inwards(c, wall, end, denominator);
  return {std::min(a, b), std::max(a, b)};
}

/// The piece at the corner comes first.
std::vector<const Piece*> from_corner(const Case& c, int wall, const RunFacts& run) {
  std::vector<const Piece*> pieces(run.pieces.begin(), run.pieces.end());
  if (c.corner.arriving == wall) std::ranges::reverse(pieces);
  return pieces;
}

bool makes_both_corners(const RunFacts& run) {
  return run.pieces.size() == 1 && run.run->at_start == RunEnd::ThroughCorner &&
         run.run->at_end == RunEnd::ThroughCorner;
}

/// What the corner piece is, in plan.
void add_corner_piece(const Case& c, const Piece& piece, const Span& along, std::vector<Patch>& patches) {
  const Series& s = c.own();
  const Length t = s.thickness, j = s.joint, other = c.thick_butting();
  const bool sets = s.corner_set && c.b.corner_sets_stocked, set = piece.kind == UnitKind::CornerSet && sets;
  const Length leg = sets ? s.corner_set->short_leg : t;
  const bool in_one = sets && s.corner_set->parts.size() < 2;
  const auto add = [&](std::int64_t u0, std::int64_t u1, Length v0, Length v1) {
    if (u0 < u1 && v0 < v1) patches.push_back({u0, u1, c.v(v0), c.v(v1), Owner::Through});
  };
  if (set && leg < t) {
    add(along.from, along.to, Length(), leg);
    add(c.u(other + j), along.to, in_one ? leg : leg + j, t);
    return;
  }
  add(along.from, along.to, Length(), t);
  const bool half = piece.cut == CutEnd::None && piece.length == s.half;
  if (!(set || (sets && half)) || leg <= t) return;
  if (set && in_one && other == t && !makes_both_corners(*c.run)) add(Span{}.from, c.u(t), t, leg);
  else add(Span{}.from, c.u(other), t + j, leg);
}

/// The wall round the other corner of a jog ends on the line of the jog's far face, seen from here.
void add_round_corner(const Case& c, std::vector<Patch>& patches) {
  if (!c.round) return;
  const int wall = c.round->run->wall;
  const Case there{c.b, *c.next, wall, c.through, c.round, nullptr, c.dv, c.dv};
  const std::int64_t face = c.v(c.thick_through()), near = c.u(c.round_from);
  for (const Piece* piece : from_corner(there, wall, *c.round)) {
    const Span along = span_of(there, wall, *piece, c.dv);
    const std::int64_t from = std::max<std::int64_t>(face - along.to, 0);
    patches.push_back({near, near + c.u(there.thick_through()), from, face - along.from, Owner::Through});
    if (face < along.to) break;
  }
}

std::vector<Patch> patches_of(const Case& c) {
  std::vector<Patch> patches;
  add_round_corner(c, patches);
  const std::int64_t near = std::max(c.u(c.thick_butting() + c.joint_most), c.u(c.own().full));
  bool first = true;
  for (const Piece* piece : from_corner(c, c.through, *c.run)) {
    const Span along = span_of(c, c.through, *piece, c.du);
    if (first) add_corner_piece(c, *piece, along, patches);
    else patches.push_back({along.from, along.to, 0, c.v(c.thick_through()), Owner::Through});
    first = false;
    if (near < along.to) break;
  }
  if (!c.butt) return patches;
  const std::int64_t wide = c.u(c.thick_butting());
  for (const Piece* piece : from_corner(c, c.butting, *c.butt)) {
    const Span along = span_of(c, c.butting, *piece, c.dv);
    patches.push_back({0, wide, along.from, along.to, Owner::Butting});
    if (c.v(c.thick_through() + c.own().full) < along.to) break;
  }
  const Run& run = *c.butt->run;
  const bool arriving = c.corner.arriving == c.butting;
  if ((arriving ? run.at_start : run.at_end) == RunEnd::LintelEnd) {  // a lintel is masonry too
    const std::int64_t from = inwards(c, c.butting, (arriving ? run.start : run.end).in_nanometres() * c.dv, c.dv);
    patches.push_back({0, wide, from, from + c.v(c.own().full), Owner::Butting});
  }
  return patches;
}

bool overlap(const Patch& a, const Patch& b) { return a.u0 < b.u1 && b.u0 < a.u1 && a.v0 < b.v1 && b.v0 < a.v1; }

/// Pieces of the two walls that face each other are a joint apart at least.
bool too_near(const Case& c, const Patch& a, const Patch& b) {
  if (a.owner == b.owner) return false;
  const std::int64_t apart_u = std::max(a.u0, b.u0) - std::min(a.u1, b.u1),
                     apart_v = std::max(a.v0, b.v0) - std::min(a.v1, b.v1);
  if (apart_v < 0) return apart_u < c.u(c.joint_least);
  return apart_u < 0 && apart_v < c.v(c.joint_least);
}

std::vector<std::int64_t> lines(std::vector<std::int64_t> places) {
  std::ranges::sort(places);
  const auto doubled = std::ranges::unique(places);
  places.erase(doubled.begin(), doubled.end());
  return places;
}

/// The ground that masonry must cover here: the thickness of the wall that runs through as far as its corner piece and
/// the other wall reach, and the other wall's thickness as far as its first piece.
struct Ground {
  std::int64_t u_through, v_through;  // 0 .. u by 0 .. v
  std::int64_t u_butting, v_butting;
  bool holds(std::int64_t u, std::int64_t v) const {
    return (u < u_through && v < v_through) || (u < u_butting && v < v_butting);
  }
};

Ground ground_of(const Case& c) {
  const std::int64_t run_ends = c.u(c.run->run->end - c.run->run->start);
  const std::int64_t piece = c.u(from_corner(c, c.through, *c.run).front()->length);
  Ground ground{std::min(run_ends, std::max(piece, c.u(c.thick_butting()))), c.v(c.thick_through()),
                c.u(c.thick_butting()), 0};
  if (c.butt && !c.butt->pieces.empty())
    ground.v_butting = span_of(c, c.butting, *from_corner(c, c.butting, *c.butt).front(), c.dv).to;
  return ground;
}

/// The first line farther than `apart` beyond line i, or the number of lines.
std::size_t line_beyond(const std::vector<std::int64_t>& places, std::size_t i, std::int64_t apart) {
  return static_cast<std::size_t>(
      std::ranges::find_if(places, [&](std::int64_t place) { return apart < place - places[i]; }) - places.begin());
}

/// Whether every hole in the masonry is a joint or a crossing of joints: no square wider than a joint fits into it.
bool only_joints_are_left(const Case& c, const std::vector<Patch>& patches) {
  const Ground ground = ground_of(c);
  std::vector<std::int64_t> us{0, ground.u_through, ground.u_butting}, vs{0, ground.v_through, ground.v_butting};
  for (const Patch& patch : patches)
    us.insert(us.end(), {patch.u0, patch.u1}), vs.insert(vs.end(), {patch.v0, patch.v1});
  us = lines(us), vs = lines(vs);
  const auto open = [&](std::size_t i, std::size_t k) {
    return ground.holds(us[i], vs[k]) && std::ranges::none_of(patches, [&](const Patch& p) {
             return p.u0 <= us[i] && us[i] < p.u1 && p.v0 <= vs[k] && vs[k] < p.v1;
           });
  };
  const auto all_open = [&](std::size_t i, std::size_t i_end, std::size_t k, std::size_t k_end) {
    for (std::size_t a = i; a < i_end; ++a)
      for (std::size_t b = k; b < k_end; ++b)
        if (!open(a, b)) return false;
    return true;
  };
  for (std::size_t i = 0; i < us.size(); ++i)
    for (std::size_t k = 0; k < vs.size(); ++k) {
      const std::size_t i_end = line_beyond(us, i, c.u(c.joint_most)), k_end = line_beyond(vs, k, c.v(c.joint_most));
      if (i_end < us.size() && k_end < vs.size() && all_open(i, i_end, k, k_end)) return false;
    }
  return true;
}

/// A unit thinner than its wall stands at the outer face where it makes a convex corner and at the inner one where it
/// makes a re-entrant one: not at both at once.
bool turns_both_ways(const Case& c) {
  if (!makes_both_corners(*c.run) || !c.own().corner_set || !c.b.corner_sets_stocked) return false;
  const Wall& wall = at(c.b.walls, c.through);
  return c.own().corner_set->short_leg < c.own().thickness &&
         at(c.b.corners, wall.start.corner).convex != at(c.b.corners, wall.end.corner).convex;
}

std::string fault_of(const Case& c) {
  if (turns_both_ways(c)) return "one unit would have to stand at the outer and at the inner face";
  const std::vector<Patch> patches = patches_of(c);
  for (std::size_t i = 0; i < patches.size(); ++i)
    for (std::size_t k = i + 1; k < patches.size(); ++k) {
      if (overlap(patches[i], patches[k])) return "units of the two walls overlap in plan";
      if (too_near(c, patches[i], patches[k])) return "units of the two walls stand nearer than the least joint";
    }
  const std::int64_t run_ends = c.u(c.run->run->end - c.run->run->start);
  for (const Patch& patch : patches)
    if (patch.owner == Owner::Butting && patch.v0 < c.v(c.thick_through()) && run_ends < patch.u1)
      return "the wall that butts reaches past the end of the run that it butts";
  return only_joints_are_left(c, patches) ? "" : "a gap wider than a joint is left in plan";
}

/// One uncut half that is all of its run: whether it makes the corner shows in plan alone.
bool is_lone_half(const Building& b, const RunFacts& run) {
  const Series& series = b.series_of(at(b.walls, run.run->wall));
  return run.pieces.size() == 1 && run.pieces.front()->cut == CutEnd::None && run.pieces.front()->length == series.half;
}

/// The corner at the other end of a jog of plain units, where it butts in this course.
const Corner* butts_at(const Building& b, const Corner& corner, const RunFacts& run) {
  const Wall& wall = at(b.walls, run.run->wall);
  const bool here_is_end = corner.arriving == run.run->wall;
  const WallEnd& end = here_is_end ? wall.start : wall.end;
  if (end.kind != EndKind::Corner || (here_is_end ? run.run->at_start : run.run->at_end) != RunEnd::ButtCorner)
    return nullptr;
  const Corner& other = at(b.corners, end.corner);
  const bool sets = b.corner_sets_stocked && b.series_of(wall).corner_set;
  return other.convex == corner.convex || sets ? nullptr : &other;
}

std::optional<Case> case_of(const Building& b, const Layout& layout, const Facts& facts, int corner, int course) {
  const Corner& c = at(b.corners, corner);
  const bool arriving = runs_through(b, layout, corner, c.arriving, course);
  const int through = arriving ? c.arriving : c.leaving, butting = arriving ? c.leaving : c.arriving;
  if (at(facts.walls, through).stopped || at(facts.walls, butting).stopped) return std::nullopt;
  const RunFacts* run = run_at(facts, c, through, course, RunEnd::ThroughCorner);
  if (!run || run->pieces.empty()) return std::nullopt;  // said elsewhere
  const bool given_up = gives_up_an_end(layout, through, course) || gives_up_an_end(layout, butting, course);
  if (given_up && !is_lone_half(b, *run)) return std::nullopt;  // that it is, is said elsewhere
  const RunFacts* butt = run_at(facts, c, butting, course, RunEnd::ButtCorner);
  const auto joints = [](const RunFacts* facts_of) {
    return facts_of ? std::max<std::int64_t>(facts_of->joints, 1) : 1;
  };
  const Corner* next = butts_at(b, c, *run);
  const int round = !next ? -1 : next->arriving == through ? next->leaving : next->arriving;
  const RunFacts* beyond = next ? run_at(facts, *next, round, course, RunEnd::ThroughCorner) : nullptr;
  const bool readable = beyond && !at(facts.walls, round).stopped;
  Case found{b, c, through, butting, run, butt, joints(run), joints(butt) * (readable ? joints(beyond) : 1)};
  if (readable) found.next = next, found.round = beyond, found.round_from = run->run->end - run->run->start;
  const Series& series = found.own();
  found.joint_least = given_up ? std::min(b.joint_least, narrowest_on_site(series)) : b.joint_least;
  found.joint_most = given_up ? std::max(b.joint_most, widest_on_site(series)) : b.joint_most;
  return found;
}

/// Pieces stand on fractions of their own run: only then can they be compared here; other places are said elsewhere.
bool is_readable(const Case& c) {
  const auto sound = [](const RunFacts* run, std::int64_t denominator) {
    return !run || std::ranges::all_of(run->pieces,
                                       [&](const Piece* piece) { return denominator % piece->start.denominator == 0; });
  };
  return sound(c.run, c.du) && sound(c.butt, c.dv) && sound(c.round, c.dv);
}

bool has_opening(const Building& b, int wall) {
  return std::ranges::any_of(b.openings, [&](const ResolvedOpening& opening) { return opening.wall == wall; });
}

/// Whether a course has nothing at all of the wall that runs through at the corner: no unit, no opening and no lintel.
bool nothing_runs_through(const Building& b, const Layout& layout, const Facts& facts, int corner, int course) {
  const Corner& c = at(b.corners, corner);
  const int through = runs_through(b, layout, corner, c.arriving, course) ? c.arriving : c.leaving;
  const auto& wall = at(facts.walls, through);
  return !wall.stopped && at(wall.courses, course - 1).runs.empty() && !has_opening(b, through);
}

/// Beside a half in a wall that its corner set is thicker than, a filler and its joint must find room.
bool wants_a_sliver(const Case& c) {
  const Series& s = c.own();
  if (!s.corner_set || !c.b.corner_sets_stocked) return false;
  const Length more = s.corner_set->short_leg - s.thickness;
  return Length() < more && more <= s.joint;
}

/// In a wall thicker than its set's leg the set alone makes corners: behind a half nothing would fill the rest.
bool wants_its_set(const Case& c) {
  const Series& s = c.own();
  return s.corner_set && c.b.corner_sets_stocked && s.corner_set->short_leg < s.thickness;
}

/// Whether a half alone would leave a fault at some corner of this wall: then halves make none of its corners.
bool halves_fail(const Building& b, const Layout& layout, const Facts& facts, int wall) {
  for (int corner = 0; corner < static_cast<int>(b.corners.size()); ++corner) {
    for (int course = 1; course <= static_cast<int>(b.courses.size()); ++course) {
      std::optional<Case> c = case_of(b, layout, facts, corner, course);
      if (!c || c->through != wall || !is_readable(*c)) continue;
      Run run = *c->run->run;
      const bool at_end = c->corner.arriving == wall;
      (at_end ? run.start : run.end) = at_end ? run.end - c->own().half : run.start + c->own().half;
      (at_end ? run.at_start : run.at_end) = RunEnd::FreeEnd;
      Piece half;
      half.start = {run.start.in_nanometres(), 1};
      half.length = c->own().half;
      RunFacts alone;
      alone.run = &run;
      alone.pieces = {&half};
      c->run = &alone;
      c->du = 1;
      if (!fault_of(*c).empty()) return true;
    }
  }
  return false;
}

}  // namespace

Violations check_corners(const Building& building, const Layout& layout, const Facts& facts) {
  Violations found;
  for (int corner = 0; corner < static_cast<int>(building.corners.size()); ++corner)
    for (int course = 1; course <= static_cast<int>(building.courses.size()); ++course) {
      const std::string where = "corner " + at(building.corners, corner).name + " course " + std::to_string(course);
      if (nothing_runs_through(building, layout, facts, corner, course))
        found.push_back(violation(kCorners, where, "nothing stands where a wall runs through"));
      const std::optional<Case> c = case_of(building, layout, facts, corner, course);
      if (!c || !is_readable(*c)) continue;
      std::string fault = fault_of(*c);
      if (fault.empty() && is_lone_half(building, *c->run) && halves_fail(building, layout, facts, c->through))
        fault = "a half does not make every corner of this wall";
      if (fault.empty() && is_lone_half(building, *c->run) && wants_a_sliver(*c))
        fault = "no filler fits beside the half";
      if (fault.empty() && is_lone_half(building, *c->run) && wants_its_set(*c))
        fault = "a half makes no corner of a wall thicker than its corner set";
      if (fault.empty()) continue;
      found.push_back(violation(kCorners, where, fault));
      if (is_lone_half(building, *c->run))
        found.back().may_be = piece_given_up(Concession::What::Corner, *c->run->run, *c->run->pieces.front());
    }
  return found;
}

}  // namespace stringcourse::proof
