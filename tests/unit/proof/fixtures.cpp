// Layouts laid by hand. All in 8 in block: full 15 5/8, half 7 5/8, thickness 7 5/8, joint 3/8 in.
#include "hand.hpp"

namespace stringcourse::hand {
namespace {

constexpr RunEnd Through = RunEnd::ThroughCorner, Butt = RunEnd::ButtCorner, Jamb = RunEnd::Jamb,
                 Free = RunEnd::FreeEnd, Control = RunEnd::ControlJoint, Lapped = RunEnd::LappedButt,
                 Entering = RunEnd::EnteringJunction, Slot = RunEnd::SlotSide, LintelSide = RunEnd::LintelEnd;

void finish(Plan& plan, const Cost& cost, std::int64_t cut_lengths = 0) {
  close(plan.layout);
  plan.layout.cost = cost;
  plan.layout.cut_lengths = cut_lengths;
}

Cost units_only(std::int64_t units) {
  Cost cost;
  cost.units = units;
  return cost;
}

/// An opening from nominal 40 to 56, so 39 5/8 to 56 actual, through courses 1 and 2.
void add_opening(Plan& plan, LintelMake make) {
  Opening asked;
  asked.name = "D1";
  asked.on = "AB";
  asked.place = {"A", {in(40), Basis::Nominal}, std::nullopt};
  asked.masonry = MasonrySize{{in(16), Basis::Nominal}, {in(16), Basis::Nominal}};
  asked.lintel = Lintel{make, std::nullopt, std::nullopt, {}};
  plan.job.openings.push_back(asked);
  ResolvedOpening o;
  o.name = "D1";
  o.wall = 0;
  o.from = Position::from_start(in(39, 5));
  o.to = Position::from_start(in(56));
  o.underside = in(-8);  // a joint under course 1, whose units reach from -7 5/8 to 0
  o.soffit = in(8, 3);   // top of course 2 at 8, and a joint
  o.first_course = 1;
  o.last_course = 2;
  o.lintel = ResolvedLintel{make, 3, 1, in(7, 5)};
  plan.building.openings.push_back(o);
}

/// Courses 1, 2 and 4 of the wall with the opening: head joints at 15 13/16, 31 13/16 | 63, 79, 95 13/16 in course 1,
/// 7, 23 | 71, 87 13/16 in course 2, and 7 13/16 + 16 k in course 4.
void lay_piers(Plan& plan) {
  lay(plan, 0, 1, in(0), in(39, 5), Free, Jamb, "FFH");     // 2 x 15 5/8 + 7 5/8 + 2 x 3/8 = 39 5/8
  lay(plan, 0, 1, in(56), in(103, 5), Jamb, Free, "HFFH");  // 2 x 7 5/8 + 2 x 15 5/8 + 3 x 3/8 = 47 5/8
  lay(plan, 0, 2, in(0), in(39, 5), Free, Jamb, "HFF");
  lay(plan, 0, 2, in(56), in(103, 5), Jamb, Free, "FFF");  // 3 x 15 5/8 + 2 x 3/8 = 47 5/8
}

Plan wall_with_opening(LintelMake make) {
  Plan plan = begin(4);
  add_free_wall(plan, in(104));
  add_opening(plan, make);
  lay_piers(plan);
  return plan;
}

void add_bar(Plan& plan, Length centre, BarReason reason, int opening = -1) {
  PlacedBar bar;
  bar.centre = centre;
  bar.reason = reason;
  bar.opening = opening;
  bar.last_course = 4;
  bar.off_face = Length::sixteenths(61);  // the middle of 7 5/8 in
  plan.layout.bars.push_back(bar);
}

void ask_bars(Plan& plan) {
  Bars asked;
  asked.size = "#5";
  asked.jambs = true;
  asked.spacing = in(24);
  plan.job.steel.bars = asked;
  BarRules rules;
  rules.size = "#5";
  rules.diameter = in(0, 5);
  rules.clearance = in(0, 4);      // coarse grout
  rules.common_across = in(2, 4);  // pours to 5 ft: 2 1/2 x 3 in
  rules.common_along = in(3);
  rules.spacing = in(24);
  plan.building.bars = rules;
}

void fix_jamb_bar(Plan& plan, Length centre) {
  FixedBar bar;
  bar.wall = 0;
  bar.centre = Position::from_start(centre);
  bar.opening = 0;
  bar.off_face = Length::sixteenths(61);
  plan.building.fixed_bars.push_back(bar);
}

}  // namespace

// AB and CD run through in course 1, BC and DA in course 2. Head joints of AB: 15 13/16, 31 13/16 over 7, 23, 39 13/16.
Plan rectangle(const std::string& series) {
  Plan plan = begin(2, series);
  const bool sets = find_series(series)->corner_set.has_value();
  if (sets) {
    plan.job.units.stocked->push_back(UnitKind::CornerSet);
    plan.building.stocked.push_back(UnitKind::CornerSet);
    plan.building.corner_sets_stocked = true;
  }
  add_outline(plan, {48, 32, 48, 32}, "RRRR");
  plan.layout.arriving_through = {1, 0, 1, 0};
  for (int wall : {0, 1, 2, 3}) {
    const bool long_side = wall % 2 == 0;
    const Length length = long_side ? in(47, 5) : in(31, 5);
    const auto through = [&](int course) {  // 3 or 2 full units with 3/8 between: 47 5/8, 31 5/8
      lay(plan, wall, course, in(0), length, Through, Through,
          long_side ? (sets ? "CFC" : "FFF") : (sets ? "CC" : "FF"));
    };
    const auto butt = [&](int course) {  // 2 or 1 full units and a joint at either end: 32 3/8, 16 3/8
      lay(plan, wall, course, in(7, 5), length - in(7, 5), Butt, Butt, long_side ? "FF" : "F");
    };
    if (long_side) through(1), butt(2);
    else butt(1), through(2);
  }
  finish(plan, units_only(16));  // (3 + 2) x 2 + (1 + 2) x 2
  return plan;
}

// Corner E is re-entrant. There the wall that runs through reaches 7 5/8 past the corner point, the one that butts
// stops at it (7 5/8 - 7 5/8 = 0). DE: 16 3/8 - 3/8 = 16 in, EF the same.
Plan notched() {
  Plan plan = begin(2);
  add_outline(plan, {48, 48, 32, 16, 16, 32}, "RRRLRR");
  plan.layout.arriving_through = {1, 0, 1, 1, 1, 0};
  const Length b = in(7, 5);
  lay(plan, 0, 1, in(0), in(47, 5), Through, Through, "FFF");
  lay(plan, 0, 2, b, in(40), Butt, Butt, "FF");
  lay(plan, 1, 1, b, in(40), Butt, Butt, "FF");
  lay(plan, 1, 2, in(0), in(47, 5), Through, Through, "FFF");
  lay(plan, 2, 1, in(0), in(31, 5), Through, Through, "FF");
  lay(plan, 2, 2, b, in(24), Butt, Butt, "F");
  lay(plan, 3, 1, b, in(23, 5), Butt, Through, "F");  // 16 + 7 5/8; 16 = 3/8 + 15 5/8
  lay(plan, 3, 2, in(0), in(16), Through, Butt, "F");
  lay(plan, 4, 1, in(0), in(16), Butt, Through, "F");
  lay(plan, 4, 2, -b, in(8, 3), Through, Butt, "F");  // -7 5/8 to 16 - 7 5/8
  lay(plan, 5, 1, b, in(24), Butt, Butt, "F");
  lay(plan, 5, 2, in(0), in(31, 5), Through, Through, "FF");
  finish(plan, units_only(20));
  return plan;
}

// The lintel bears 7 5/8 at either end: 32 to 63 5/8, four half units less a joint.
Plan garden_wall() {
  Plan plan = wall_with_opening(LintelMake::OnePiece);
  plan.layout.lintels.push_back({0, in(7, 5), in(7, 5)});
  lay(plan, 0, 3, in(0), in(32), Free, LintelSide, "FF");           // 2 x 15 5/8 + 2 x 3/8 = 32
  lay(plan, 0, 3, in(63, 5), in(103, 5), LintelSide, Free, "FFH");  // 2 x 15 5/8 + 7 5/8 + 3 x 3/8 = 40
  lay(plan, 0, 4, in(0), in(103, 5), Free, Free, "HFFFFFF");        // 7 5/8 + 6 x 16 = 103 5/8
  finish(plan, units_only(25));
  return plan;
}

// The third and fourth units of course 3 (32 to 47 5/8, 48 to 63 5/8) stand over the opening and its bearings.
Plan built_up_wall() {
  Plan plan = wall_with_opening(LintelMake::BuiltUp);
  plan.layout.lintels.push_back({0, in(7, 5), in(7, 5)});
  for (UnitKind kind : {UnitKind::Lintel, UnitKind::LintelHalf}) {
    plan.job.units.stocked->push_back(kind);
    plan.building.stocked.push_back(kind);
  }
  lay(plan, 0, 3, in(0), in(103, 5), Free, Free, "FFLLFFH");
  lay(plan, 0, 4, in(0), in(103, 5), Free, Free, "HFFFFFF");
  finish(plan, units_only(27));
  return plan;
}

// Bars on the cell lines 3 13/16 + 8 k from the wall's end: at both jambs (35 13/16, 59 13/16), one between each of
// them and the wall's end (gaps 35 13/16 and 43 13/16, at most 24 asked: one each).
Plan barred_wall() {
  Plan plan = garden_wall();
  ask_bars(plan);
  fix_jamb_bar(plan, Length::sixteenths(573));
  fix_jamb_bar(plan, Length::sixteenths(957));
  add_bar(plan, Length::sixteenths(317), BarReason::Spaced);   // 19 13/16
  add_bar(plan, Length::sixteenths(573), BarReason::Jamb, 0);  // 35 13/16
  add_bar(plan, Length::sixteenths(957), BarReason::Jamb, 0);  // 59 13/16
  add_bar(plan, Length::sixteenths(1341), BarReason::Spaced);  // 83 13/16
  return plan;
}

// The slot of the interior wall goes from 28 to 35 5/8. Course 1 leaves 28 in on either side: 15 5/8 + 11 5/8 + 2 x
// 3/8. Course 2 has joints at 23 13/16 and 39 13/16, 4 in from those of the slot: two short laps and two cuts.
Plan lapped_tee() {
  Plan plan = begin(2);
  add_free_wall(plan, in(64));
  InteriorWall asked;
  asked.name = "I1";
  asked.off = "AB";
  asked.place = {"A", {in(28), Basis::Nominal}, std::nullopt};
  asked.length = StatedLength{in(24), Basis::Nominal};
  asked.start_junction = JunctionKind::Lapped;
  plan.job.interior_walls.push_back(asked);
  Wall wall;
  wall.name = "I1";
  wall.interior = true;
  wall.actual = in(24);
  wall.start = {EndKind::Junction, -1, 0};
  wall.start_point = {-in(35, 5), in(7, 5)};  // its left face, on the inner face of AB
  wall.heading = Heading::North;
  wall.place = "/interior_walls/0";
  plan.building.walls.push_back(wall);
  plan.building.junctions.push_back(
      {0, 1, true, JunctionKind::Lapped, Position::from_start(in(28)), Position::from_start(in(35, 5))});
  plan.layout.entering_first = {1};
  lay(plan, 0, 1, in(0), in(28), Free, Slot, "FT");
  lay(plan, 0, 1, in(35, 5), in(63, 5), Slot, Free, "tF");
  lay(plan, 0, 2, in(0), in(63, 5), Free, Free, "HFFFH");
  lay(plan, 1, 1, -in(7, 5), in(24), Entering, Free, "FF");  // 7 5/8 + 24 = 31 5/8
  lay(plan, 1, 2, in(0), in(24), Lapped, Free, "FH");        // 3/8 + 15 5/8 + 3/8 + 7 5/8 = 24
  Cost cost = units_only(13);
  cost.cuts = 2;
  cost.short_laps = 2;
  finish(plan, cost, 1);
  return plan;
}

// A control joint from 31 5/8 to 32, its middle on the nominal line 32 (31 13/16 from the end of the wall).
Plan jointed_wall() {
  Plan plan = begin(2);
  add_free_wall(plan, in(64));
  plan.job.control_joints.rule = JointRule::Us;
  plan.building.control_joints.push_back({0, Position::from_start(in(31, 5)), Position::from_start(in(32)), true});
  for (int course : {1, 2}) {
    const std::string_view row = course == 1 ? "FF" : "HFH";
    lay(plan, 0, course, in(0), in(31, 5), Free, Control, row);
    lay(plan, 0, course, in(32), in(63, 5), Control, Free, row);
  }
  finish(plan, units_only(10));
  return plan;
}

Plan banded_wall() {
  Plan plan = begin(4);
  add_free_wall(plan, in(64));
  for (int course : {1, 2, 3, 4})
    lay(plan, 0, course, in(0), in(63, 5), Free, Free, course % 2 == 1 ? "FFFF" : "HFFFH");
  finish(plan, units_only(18));
  return plan;
}

// 62 in and 1/64: F M F F with M = 14 in leaves three joints 3/8 and 1/64 over, less than half a sixteenth.
Plan make_up_wall() {
  Plan plan = begin(1);
  add_free_wall(plan, in(62, 3) + Length::sixty_fourths(1));
  lay(plan, 0, 1, in(0), in(62) + Length::sixty_fourths(1), Free, Free, "FMFF", in(14));
  Cost cost = units_only(4);
  cost.cuts = 1;
  cost.joint_deviation = 396'875;  // 1/64 in
  finish(plan, cost, 1);
  return plan;
}

}  // namespace stringcourse::hand
