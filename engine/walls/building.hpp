#pragma once
// The building as it is to stand: actual faces, courses, openings on course lines, control joints, junctions.
// Made once from a job (walls/resolve.hpp); nothing here knows placed units.
//
// Coordinates. Every wall has its own line x, measured along its outer face from its start corner (x = 0 at the
// actual outer-face corner). Walls are walked with the building on the right hand. Plan points are actual outer-face
// points; the first wall runs west along the bottom of the plan (its start corner at the right), so that a wall seen
// from outside has its start corner at the right.
#include <optional>
#include <string>
#include <vector>

#include "catalogue/series.hpp"
#include "job/job.hpp"
#include "job/trouble.hpp"
#include "measure/length.hpp"
#include "walls/top.hpp"

namespace stringcourse {

enum class Heading { West, North, East, South };  // turning right goes to the next

struct PlanPoint {
  Length x, y;  // x to the east, y to the north
  friend bool operator==(const PlanPoint&, const PlanPoint&) = default;
};

/// One course. Courses are numbered from 1 at the bearing. Heights are from the datum: the design top of course 1 is 0.
struct Course {
  int number = 1;
  bool half_high = false;
  bool bond_beam = false;
  bool wire = false;  // joint reinforcement in the bed on top of this course
  Length unit_height;
  Length top;  // of the units
  Length underside() const { return top - unit_height; }
};

struct Corner {
  std::string name;
  bool convex = true;
  int arriving = -1;  // wall that ends here
  int leaving = -1;   // wall that starts here
  PlanPoint point;    // where the two actual outer faces meet
};

enum class EndKind { Corner, Free, Junction };

/// One end of a wall.
struct WallEnd {
  EndKind kind = EndKind::Free;
  int corner = -1;    // kind Corner: index into Building::corners
  int junction = -1;  // kind Junction: index into Building::junctions
};

struct Wall {
  std::string name;
  std::string start_name, end_name;  // corner names, or the name of the wall met, or "free end"
  bool interior = false;
  int series = 0;         // index into Building::series
  Length nominal;         // as planned on the nominal outline
  Length actual;          // outer face, corner to corner; interior walls: clear between the walls met
  PlanPoint start_point;  // outer face at x = 0 (interior walls: the face on the walker's left)
  Heading heading = Heading::West;
  WallEnd start, end;
  std::string place;  // JSON pointer of its source in the job
};

/// From a place along a wall, and a depth into it from its outer face, to the plan. The building is on the walker's
/// right.
[[nodiscard]] constexpr PlanPoint plan_point(const Wall& wall, Length along, Length depth) {
  const Length x = wall.start_point.x, y = wall.start_point.y;
  switch (wall.heading) {
    case Heading::West: return {x - along, y + depth};
    case Heading::North: return {x + depth, y + along};
    case Heading::East: return {x + along, y - depth};
    case Heading::South: return {x - depth, y - along};
  }
  return wall.start_point;
}

/// A T: `abutting` ends square on `main`. from..to is where its two faces stand on the main wall's line.
struct Junction {
  int main = -1;
  int abutting = -1;
  bool at_abutting_start = true;
  JunctionKind kind = JunctionKind::Tied;
  Position from, to;  // on the main wall; to - from = thickness of the abutting wall
};

struct ResolvedLintel {
  LintelMake make = LintelMake::BuiltUp;
  int first_course = 0;  // the course just above the opening
  int courses = 1;
  Length least_bearing;                      // actual
  std::optional<Length> shore_spacing = {};  // greatest, as the job says
  std::optional<LintelPiece> piece = {};     // of one piece, where the job says
  std::string mark = {}, weight = {};        // in the job's words; empty: not said
};

/// An opening on module and course lines.
struct ResolvedOpening {
  std::string name;
  OpeningUse use = OpeningUse::Plain;
  int wall = -1;
  Position from, to;                       // jambs, actual
  Length underside;                        // floor or sill, from the datum
  Length soffit;                           // underside of the lintel, from the datum: top of a course + j
  int first_course = 1;                    // courses it takes out ...
  int last_course = 1;                     // ... both included
  std::optional<ResolvedLintel> lintel;    // none where nothing stands above
  Length asked_width, asked_height;        // what leaf, frame and buck need; the rest is packed
  Length packing_each_side, packing_head;  // what remains to be packed
  std::string note;
  std::string place;  // JSON pointer
  /// Where a jamb was found elsewhere: its courses laid before, 1 to laid_courses, and where the jambs stand in them,
  /// as planned. Else 0, and both places at the wall's start.
  int laid_courses = 0;
  Position laid_from, laid_to;
  Length width() const { return to - from; }
  Length height() const { return soffit - underside; }
  Position from_in(int course) const { return course <= laid_courses ? laid_from : from; }
  Position to_in(int course) const { return course <= laid_courses ? laid_to : to; }
};

/// A straight joint through all courses. No head joint: both ends show factory faces.
struct ControlJoint {
  int wall = -1;
  Position from, to;  // its two edges
  bool by_rule = false;
};

/// Cast: a dowel stands there already and is kept.
enum class BarReason { Corner, Jamb, BesideControlJoint, Dimensioned, Cast, Spaced };

/// A bar with a place of its own.
struct FixedBar {
  int wall = -1;
  Position centre;
  BarReason reason = BarReason::Jamb;
  int corner = -1;   // stands in the cell that both walls' corner units share there
  int opening = -1;  // reason Jamb
  std::string place;
  Length off_face = {};  // centre, in from the outer face of its wall
};

struct BarRules {
  std::string size;
  Length diameter;
  Grout grout = Grout::Coarse;
  Length clearance;                    // bar to unit
  Length common_across, common_along;  // least clear opening from cell to cell (grout-space table)
  std::optional<Length> spacing;       // greatest, centre to centre
};

/// Units ordered beyond those laid and sawn, each kind rounded up. SOURCE of the 5: rule "breakage".
struct Breakage {
  int percent = 5;
  bool stated = false;  // by the job
};

/// Everything that rules and sheets need, nothing that the solver decides.
struct Building {
  Tape tape = Tape::Inches;
  std::vector<Series> series;  // those in use; index 0 is the job's own
  std::vector<UnitKind> stocked;
  Length joint_least, joint_most, joint;
  Length least_piece;
  std::vector<Length> cuts;  // the saw's list, actual lengths, longest first
  BondWish bond = BondWish::Half;
  bool corner_sets_stocked = true;
  Breakage breakage;
  std::vector<Course> courses;  // courses[k] is course k + 1
  std::vector<Corner> corners;
  std::vector<Wall> walls;  // sides in order, then interior walls
  std::vector<Junction> junctions;
  std::vector<ResolvedOpening> openings;
  std::vector<ControlJoint> control_joints;
  std::optional<BarRules> bars;
  std::vector<FixedBar> fixed_bars;
  std::optional<ResolvedTop> top;  // only where bolts are asked for
  std::vector<int> pour_tops;
  std::vector<int> laid_to;           // by wall: courses laid already, from the bottom; empty: nothing is fixed
  std::vector<int> cleanout_courses;  // the lowest course of each pour that is high enough to ask for cleanouts
  std::vector<Finding> findings;      // found while resolving

  const Series& series_of(const Wall& wall) const { return series[static_cast<std::size_t>(wall.series)]; }

  // Made, copied and ended in one file: compiled once, not in each that holds one.
  Building();
  Building(const Building&);
  Building(Building&&) noexcept;
  Building& operator=(const Building&);
  Building& operator=(Building&&) noexcept;
  ~Building();
};

/// Of a course's units; of course 0 what course 1's bed lies on: the bearing.
[[nodiscard]] inline Length top_of_course(const Building& building, int course) {
  if (course < 1) return building.courses.front().underside() - building.joint;
  return building.courses[static_cast<std::size_t>(course - 1)].top;
}
/// What a course's bed lies on: the top of the one below, or the bearing.
[[nodiscard]] inline Length foot_of_course(const Building& building, int course) {
  return top_of_course(building, course - 1);
}

[[nodiscard]] inline const Wall& wall_of(const Building& building, int wall) {
  return building.walls[static_cast<std::size_t>(wall)];
}
[[nodiscard]] inline const ResolvedOpening& opening_of(const Building& building, int opening) {
  return building.openings[static_cast<std::size_t>(opening)];
}

/// Short leg b of the corner made by a through wall of series `s`: half a unit with a stocked corner set, else
/// thickness.
[[nodiscard]] inline Length corner_leg(const Series& s, bool sets_stocked) {
  return s.corner_set && sets_stocked ? s.corner_set->short_leg : s.thickness;
}

/// Words as Americans say and spell them: the job is taped in inches, and its block is made by the inch.
[[nodiscard]] inline bool is_american(const Building& building) {
  return building.tape == Tape::Inches && (building.series.empty() || building.series.front().tape == Tape::Inches);
}

}  // namespace stringcourse
