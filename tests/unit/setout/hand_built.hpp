#pragma once
// A rectangle laid by hand: whole units on the half-unit grid, corners swapped course by course, a door if asked for.
// No solver: the plan of a 24'-0" x 16'-0" building closes with full units alone (corner law of the bond model).
#include <algorithm>
#include <string>
#include <vector>

#include "bond/layout.hpp"
#include "catalogue/series.hpp"
#include "walls/building.hpp"

namespace stringcourse::testing {

struct Plan {
  int long_halves = 36;   // AB and CD, in half-unit pitches: 24'-0"
  int short_halves = 24;  // BC and DA: 16'-0"
  int courses = 12;
  bool door = false;  // 3'-4" in AB from 8'-0", seven courses high, lintel of units over it
  bool cut = false;   // AB and CD 4 in longer: one 11 5/8 in cut and a half in each of their courses
  bool bars = false;  // at corners and jambs
  bool beam = false;  // bond beam in the top course
  std::string first_corner = "A";
};

class HandBuilt {
 public:
  explicit HandBuilt(Plan plan) : plan_(std::move(plan)) {
    build();
    lay();
  }
  Building building;
  Layout layout;

 private:
  static Length pitches(int count) { return Length::inches(8) * count; }
  static constexpr std::int64_t kDoorFrom = 12, kDoorTo = 17, kDoorCourses = 7;  // in pitches from A; 3'-4" nominal

  void build() {
    const Series& series = *find_series("us-8");
    building.series = {series};
    building.joint = series.joint;
    building.joint_least = series.joint - series.joint_tolerance;
    building.joint_most = series.joint + series.joint_tolerance;
    building.least_piece = series.least_piece;
    for (int number = 1; number <= plan_.courses; ++number) {
      Course course{.number = number, .unit_height = series.height, .top = Length::inches(8) * (number - 1)};
      course.bond_beam = plan_.beam && number == plan_.courses;
      course.wire = number % 2 == 0;
      building.courses.push_back(course);
    }
    const Length extra = plan_.cut ? Length::inches(4) : Length();
    const Length lengths[] = {pitches(plan_.long_halves) + extra, pitches(plan_.short_halves),
                              pitches(plan_.long_halves) + extra, pitches(plan_.short_halves)};
    const std::string names[] = {plan_.first_corner, "B", "C", "D"};
    const Length joint = series.joint;
    const PlanPoint points[] = {{lengths[0] - joint, Length()},
                                {Length(), Length()},
                                {Length(), lengths[1] - joint},
                                {lengths[0] - joint, lengths[1] - joint}};
    for (int side = 0; side < 4; ++side) {
      Wall wall;
      wall.start_name = names[side];
      wall.end_name = names[(side + 1) % 4];
      wall.name = wall.start_name + wall.end_name;
      wall.nominal = lengths[side];
      wall.actual = lengths[side] - joint;
      wall.start_point = points[side];
      wall.heading = static_cast<Heading>(side);
      wall.start = {EndKind::Corner, side, -1};
      wall.end = {EndKind::Corner, (side + 1) % 4, -1};
      building.walls.push_back(wall);
      building.corners.push_back({names[side], true, (side + 3) % 4, side, points[side]});
    }
    if (plan_.door) add_door();
    if (plan_.bars) add_bars();
  }

  void add_door() {
    ResolvedOpening door;
    door.name = "D1";
    door.use = OpeningUse::Door;
    door.wall = 0;
    door.from = Position::from_start(pitches(kDoorFrom) - building.joint);
    door.to = Position::from_start(pitches(kDoorTo));
    door.underside = -Length::inches(8);
    door.soffit = building.courses[kDoorCourses - 1].top + building.joint;
    door.first_course = 1;
    door.last_course = kDoorCourses;
    door.lintel = ResolvedLintel{LintelMake::BuiltUp, static_cast<int>(kDoorCourses) + 1, 1, Length::inches(8)};
    door.asked_width = Length::inches(36);
    door.asked_height = Length::inches(80);
    building.openings.push_back(door);
    layout.lintels.push_back({0, Length::sixteenths(122), Length::sixteenths(122)});
  }

  void add_bars() {
    BarRules rules;
    rules.size = "#5";
    rules.diameter = Length::sixteenths(10);
    building.bars = rules;
    const Length inset = Length::sixteenths(61);  // 3 13/16 in: half of 7 5/8
    for (int side = 0; side < 4; ++side) {
      layout.bars.push_back({side, inset, BarReason::Corner, side, -1, 1, plan_.courses, inset});
    }
    if (!plan_.door) return;
    layout.bars.push_back(
        {0, pitches(kDoorFrom) - building.joint - inset, BarReason::Jamb, -1, 0, 1, plan_.courses, inset});
    layout.bars.push_back({0, pitches(kDoorTo) + inset, BarReason::Jamb, -1, 0, 1, plan_.courses, inset});
    std::ranges::stable_sort(layout.bars, {}, &PlacedBar::wall);  // as the engine lists them
  }

  // AB and CD run through in odd courses, BC and DA in even ones.
  static bool runs_through(int side, int course) { return (side % 2 == 0) == (course % 2 == 1); }

  void lay() {
    layout.arriving_through = {0, 1, 0, 1};  // at A: DA arrives, AB runs through in course 1; at B: AB arrives ...
    for (int side = 0; side < 4; ++side) {
      for (int course = 1; course <= plan_.courses; ++course) lay_course(side, course);
    }
    layout.cost.units = static_cast<std::int64_t>(layout.pieces.size());
    for (const Piece& piece : layout.pieces) layout.cost.cuts += piece.cut != CutEnd::None ? 1 : 0;
    layout.cut_lengths = layout.cut_lengths_at_least = layout.cost.cuts > 0 ? 1 : 0;
    layout.least_possible = layout.cost;
    layout.proven = true;
  }

  void lay_course(int side, int course) {
    number_ = 0;
    const bool through = runs_through(side, course);
    const Wall& wall = building.walls[static_cast<std::size_t>(side)];
    const Length leg = building.series[0].thickness;
    const Length start = through ? Length() : leg, end = through ? wall.actual : wall.actual - leg;
    const RunEnd corner = through ? RunEnd::ThroughCorner : RunEnd::ButtCorner;
    if (plan_.door && side == 0 && course <= kDoorCourses) {
      lay_run(side, course, start, pitches(kDoorFrom) - building.joint, corner, RunEnd::Jamb);
      lay_run(side, course, pitches(kDoorTo), end, RunEnd::Jamb, corner);
    } else {
      lay_run(side, course, start, end, corner, corner);
    }
  }

  UnitKind kind_at(int side, int course, Length from, Length to) const {
    const bool half = to - from < Length::inches(10);
    if (building.courses[static_cast<std::size_t>(course - 1)].bond_beam)
      return half ? UnitKind::BondBeamHalf : UnitKind::BondBeam;
    const bool over_door = plan_.door && side == 0 && course == kDoorCourses + 1 && to > pitches(kDoorFrom - 1) &&
                           from < pitches(kDoorTo + 1) - building.joint;
    if (over_door) return half ? UnitKind::LintelHalf : UnitKind::Lintel;
    return half ? UnitKind::Half : UnitKind::Full;
  }

  void place(Run& run, Length at, Length length, UnitKind kind, CutEnd cut) {
    layout.pieces.push_back({ExactPosition{at.in_nanometres(), 1}, length, kind, cut, false, ++number_});
    ++run.piece_count;
    run.slack -= length;
  }

  // Fulls on the wall's own grid of this course; a half where the grid and the run's end disagree. Every joint is 3/8
  // in.
  void lay_run(int side, int course, Length start, Length end, RunEnd at_start, RunEnd at_end) {
    const Series& series = building.series[0];
    Run run{
        side, course, start, end, at_start, at_end, 0, end - start, static_cast<std::uint32_t>(layout.pieces.size()),
        0};
    const bool offset = !runs_through(side, course);  // this course's fulls start on odd pitches
    Length at = has_joint(at_start) ? start + series.joint : start;
    const Length last = has_joint(at_end) ? end - series.joint : end;
    while (at < last) {
      const std::int64_t pitch = (at + series.joint).whole_multiples(series.pitch());
      const bool cut_here =
          plan_.cut && side % 2 == 0 && (pitch == 20 || pitch == 21) && at.is_multiple_of(series.pitch());
      if (cut_here) {
        const Length cut = Length::sixteenths(186);  // 11 5/8 in
        place(run, at, cut, UnitKind::Full, CutEnd::End);
        place(run, at + cut + series.joint, series.half, kind_at(side, course, at, at + series.half), CutEnd::None);
        at += cut + series.half + series.joint * 2;
        continue;
      }
      const bool beyond_cut = plan_.cut && side % 2 == 0 && pitch > 21;
      const bool on_grid = beyond_cut || (pitch % 2 == 1) == offset;
      const bool full = on_grid && at + series.full <= last;
      const Length length = full ? series.full : series.half;
      place(run, at, length, kind_at(side, course, at, at + length), CutEnd::None);
      at += length + series.joint;
    }
    run.joints = static_cast<std::int32_t>(run.piece_count) - 1 + has_joint(at_start) + has_joint(at_end);
    layout.runs.push_back(run);
  }

  Plan plan_;
  std::int32_t number_ = 0;
};

}  // namespace stringcourse::testing
