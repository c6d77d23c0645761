#pragma once
// Field tables of the job itself: outline, walls, heights, openings, joints. Order here is order in the document.
#include <array>
#include <string_view>
#include <tuple>

#include "job/field_table.hpp"
#include "job/job.hpp"
#include "job/tables_laid.hpp"
#include "job/tables_order.hpp"
#include "job/tables_readings.hpp"
#include "job/tables_top.hpp"
#include "job/tables_units.hpp"

namespace stringcourse {

template <>
struct Table<Place> {
  static constexpr std::string_view name = "place";
  static constexpr std::string_view description = "A place on a wall: so far from that corner, to that face.";
  static constexpr auto fields = std::tuple{
      field("from", &Place::from, Need::Required, "The corner measured from; on an interior wall \"start\" or \"end\".",
            kNameText),
      field("at", &Place::at, Need::Required, "Distance from that corner, a length.", kZeroOrMore),
      field("to", &Place::to, Need::Optional,
            "The edge measured to: the one nearer to that corner or farther from it; absent: near."),
  };
};

template <>
struct Table<Side> {
  static constexpr std::string_view name = "side";
  static constexpr std::string_view description =
      "One straight side of the outline, from corner to corner along its outer face.";
  static constexpr auto fields = std::tuple{
      field("name", &Side::name, Need::Optional, "Name of the side; absent: its two corners' names in one, as AB."),
      field("from", &Side::from, Need::Required, "Corner that it starts at.", kNameText),
      field("to", &Side::to, Need::Required, "Corner that it ends at.", kNameText),
      field("length", &Side::length, Need::Required, "Length from corner to corner, a length."),
      field("turn", &Side::turn, Need::Optional, "Turn at its far corner; absent on the last side of an open outline."),
      field("series", &Side::series, Need::Optional, "Series of this wall; absent: the job's.", kNameText),
  };
};

template <>
struct Table<Outline> {
  static constexpr std::string_view name = "outline";
  static constexpr std::string_view description = "The outer walls, walked in order.";
  static constexpr auto fields = std::tuple{
      field("closed", &Outline::closed, Need::Shown, "True when the last side ends where the first starts."),
      field("building_on", &Outline::building_on, Need::Optional,
            "Open outlines: the hand that the building lies on; absent: right."),
      field("sides", &Outline::sides, Need::Required, "The sides, in the order in which they are walked.",
            {.most_entries = 2'000}),
  };
};

template <>
struct Table<InteriorWall> {
  static constexpr std::string_view name = "interior_wall";
  static constexpr std::string_view description = "An interior wall, square off one wall, to the next that it meets.";
  static constexpr auto fields = std::tuple{
      field("name", &InteriorWall::name, Need::Required, "Name of the wall.", kNameText),
      field("off", &InteriorWall::off, Need::Required, "The wall that it starts from.", kNameText),
      field("place", &InteriorWall::place, Need::Required, "Where on that wall it starts."),
      field("length", &InteriorWall::length, Need::Optional,
            "Clear length, a length; absent: to the first wall that it meets."),
      field("start_junction", &InteriorWall::start_junction, Need::Optional,
            "How its start joins the wall that it starts from; absent: tied."),
      field("end_junction", &InteriorWall::end_junction, Need::Optional,
            "How its end joins the wall that it meets; absent: tied."),
      field("series", &InteriorWall::series, Need::Optional, "Series of this wall; absent: the job's.", kNameText),
  };
};

template <>
struct Table<Heights> {
  static constexpr std::string_view name = "heights";
  static constexpr std::string_view description = "How high the walls are: courses or a height.";
  static constexpr std::array<std::string_view, 2> exactly_one{"courses", "height"};
  static constexpr auto fields = std::tuple{
      field("courses", &Heights::courses, Need::Optional, "Number of courses.", kCourseNumber),
      field("height", &Heights::height, Need::Optional,
            "Height from the underside of the first bed joint, a length; off the courses, the nearest whole one is "
            "built."),
      field("half_high", &Heights::half_high, Need::Optional,
            "Where a half-high course goes, if the height asks for one."),
      field("half_high_courses", &Heights::half_high_courses, Need::Optional, "Courses that are half-high.",
            kCourseList),
  };
};

template <>
struct Table<MasonrySize> {
  static constexpr std::string_view name = "masonry";
  static constexpr std::string_view description = "The hole in the masonry as such.";
  static constexpr auto fields = std::tuple{
      field("width", &MasonrySize::width, Need::Required, "Width of the hole, a length."),
      field("height", &MasonrySize::height, Need::Required, "Height of the hole, a length."),
  };
};

template <>
struct Table<DoorSize> {
  static constexpr std::string_view name = "door";
  static constexpr std::string_view description =
      "A door: leaf, frame, buck and shim, all actual. The hole is the leaf and twice frame, buck and shim wide.";
  static constexpr auto fields = std::tuple{
      field("leaf_width", &DoorSize::leaf_width, Need::Required, "Width of the leaf, a length."),
      field("leaf_height", &DoorSize::leaf_height, Need::Required, "Height of the leaf, a length."),
      field("frame_jamb", &DoorSize::frame_jamb, Need::Optional, "Face of the frame at a jamb, a length; absent: 0.",
            kZeroOrMore),
      field("frame_head", &DoorSize::frame_head, Need::Optional, "Face of the frame at the head, a length; absent: 0.",
            kZeroOrMore),
      field("buck", &DoorSize::buck, Need::Optional, "Thickness of the buck, a length; absent: 0.", kZeroOrMore),
      field("shim", &DoorSize::shim, Need::Optional, "Room for shims at each side, a length; absent: 0.", kZeroOrMore),
  };
};

template <>
struct Table<OverheadSize> {
  static constexpr std::string_view name = "overhead";
  static constexpr std::string_view description =
      "An overhead door: leaf, bucks, and the room that it needs inside, all actual.";
  static constexpr auto fields = std::tuple{
      field("leaf_width", &OverheadSize::leaf_width, Need::Required, "Width of the leaf, a length."),
      field("leaf_height", &OverheadSize::leaf_height, Need::Required, "Height of the leaf, a length."),
      field("jamb_buck", &OverheadSize::jamb_buck, Need::Optional,
            "Thickness of the buck at each jamb, a length; absent: 0.", kZeroOrMore),
      field("head_buck", &OverheadSize::head_buck, Need::Optional,
            "Thickness of the buck at the head, a length; absent: 0.", kZeroOrMore),
      field("side_room", &OverheadSize::side_room, Need::Optional,
            "Room needed beside the opening inside, a length; absent: not checked.", kZeroOrMore),
      field("head_room", &OverheadSize::head_room, Need::Optional,
            "Room needed above the opening inside, a length; absent: not checked.", kZeroOrMore),
  };
};

template <>
struct Table<WindowSize> {
  static constexpr std::string_view name = "window";
  static constexpr std::string_view description = "A window unit and what is allowed round it, all actual.";
  static constexpr auto fields = std::tuple{
      field("width", &WindowSize::width, Need::Required, "Width of the window unit, a length."),
      field("height", &WindowSize::height, Need::Required, "Height of the window unit, a length."),
      field("each_side", &WindowSize::each_side, Need::Optional, "Room at each side, a length; absent: 0.",
            kZeroOrMore),
      field("above", &WindowSize::above, Need::Optional, "Room above, a length; absent: 0.", kZeroOrMore),
      field("below", &WindowSize::below, Need::Optional, "Room below, for the sill, a length; absent: 0.", kZeroOrMore),
  };
};

template <>
struct Table<Lintel> {
  static constexpr std::string_view name = "lintel";
  static constexpr std::string_view description = "The lintel over an opening, as asked for by the drawings.";
  static constexpr auto fields = std::tuple{
      field("make", &Lintel::make, Need::Shown, "One piece, or built up of lintel or bond-beam units."),
      field("courses", &Lintel::courses, Need::Optional, "How many courses it is deep; absent: 1.", kCourseNumber),
      field("bearing", &Lintel::bearing, Need::Optional,
            "Least bearing at each end, actual, a length; absent: one half unit."),
      field("shore_spacing", &Lintel::shore_spacing, Need::Optional,
            "Built up: greatest distance from shore to shore under it, as your drawings or the shores' maker say, a "
            "length; absent: not said."),
      field("piece", &Lintel::piece, Need::Optional,
            "One piece: precast concrete, or a steel section as high as its courses; absent: not said."),
      field("mark", &Lintel::mark, Need::Optional, "What your drawings call it, such as L1."),
      field("weight", &Lintel::weight, Need::Optional,
            "One piece: its weight as its maker says it, in your own words."),
  };
};

template <>
struct Table<Opening> {
  static constexpr std::string_view name = "opening";
  static constexpr std::string_view description =
      "An opening in a wall: exactly one of masonry, door, overhead, window.";
  static constexpr std::array<std::string_view, 4> exactly_one{"masonry", "door", "overhead", "window"};
  static constexpr std::array<std::string_view, 2> at_most_one{"sill", "sill_course"};
  static constexpr auto fields = std::tuple{
      field("name", &Opening::name, Need::Required, "Name of the opening, such as D1.", kNameText),
      field("on", &Opening::on, Need::Required, "The wall that it is in.", kNameText),
      field("place", &Opening::place, Need::Required, "Where on that wall, to which edge of the masonry opening."),
      field("masonry", &Opening::masonry, Need::Optional, "The size of the hole in the masonry."),
      field("door", &Opening::door, Need::Optional, "A door."),
      field("overhead", &Opening::overhead, Need::Optional, "An overhead door."),
      field("window", &Opening::window, Need::Optional, "A window."),
      field("floor", &Opening::floor, Need::Optional,
            "Doors: height of the floor from the top of course 1, a length, minus below it; absent: one joint under "
            "course 1.",
            kAnySign),
      field("sill", &Opening::sill, Need::Optional,
            "Windows: height of the sill from the top of course 1, a length, minus below it.", kAnySign),
      field("sill_course", &Opening::sill_course, Need::Optional, "Windows: the course whose top is the sill.",
            kCourseNumber),
      field("lintel", &Opening::lintel, Need::Optional, "The lintel."),
      field("note", &Opening::note, Need::Optional, "A note for the sheets.",
            {.text = TextRule::Lines, .longest_text = 4'000}),
  };
};

template <>
struct Table<PlacedControlJoint> {
  static constexpr std::string_view name = "placed_control_joint";
  static constexpr std::string_view description = "A control joint with a place of its own.";
  static constexpr auto fields = std::tuple{
      field("on", &PlacedControlJoint::on, Need::Required, "The wall that it is in.", kNameText),
      field("place", &PlacedControlJoint::place, Need::Required, "Where on that wall, to which edge of the joint."),
  };
};

template <>
struct Table<ControlJoints> {
  static constexpr std::string_view name = "control_joints";
  static constexpr std::string_view description = "Control joints: by a rule, and placed ones.";
  static constexpr auto fields = std::tuple{
      field("rule", &ControlJoints::rule, Need::Optional, "The rule that places them; absent: none."),
      field("placed", &ControlJoints::placed, Need::Optional, "Control joints with places of their own.",
            {.most_entries = 10'000}),
  };
};

template <>
struct Table<Job> {
  static constexpr std::string_view name = "job";
  static constexpr std::string_view description =
      "A job: a small building of reinforced concrete block, as wanted. A length is a text such as 24'-0\", 7 5/8\" or "
      "4451 mm; a number without a unit is inches or millimetres as the tape says. Where both can be meant a length is "
      "nominal, unless the word actual follows it.";
  static constexpr auto fields = std::tuple{
      field("stringcourse", &Job::stringcourse, Need::Required, "Version of this form of document.",
            {.least = 1, .most = kJobVersion}),
      field("name", &Job::name, Need::Shown, "Name of the job."),
      field("notes", &Job::notes, Need::Optional, "Notes.", {.text = TextRule::Lines, .longest_text = 4'000}),
      field("drawn_by", &Job::drawn_by, Need::Optional, "Who made the job, for the sheets."),
      field("issued", &Job::issued, Need::Optional,
            "Date and revision for the sheets, in your own words: 2027-03-01, revision B."),
      field("tape", &Job::tape, Need::Required, "The tape that the job is worked with."),
      field("units", &Job::units, Need::Required, "The units."),
      field("outline", &Job::outline, Need::Required, "The outer walls."),
      field("interior_walls", &Job::interior_walls, Need::Shown, "Interior walls.", {.most_entries = 10'000}),
      field("heights", &Job::heights, Need::Required, "How high the walls are."),
      field("openings", &Job::openings, Need::Shown, "Doors, windows and other openings.", {.most_entries = 10'000}),
      field("control_joints", &Job::control_joints, Need::Optional, "Control joints."),
      field("steel", &Job::steel, Need::Optional, "Steel."),
      field("top", &Job::top, Need::Optional, "Plate, anchor bolts and trusses, as asked for by the drawings."),
      field("order", &Job::order, Need::Optional, "What is assumed of the order, and what things cost."),
      field("days", &Job::days, Need::Optional, "Who lays, how fast, on which days."),
      field("setting_out", &Job::setting_out, Need::Optional, "What the setting-out card needs."),
      field("ground", &Job::ground, Need::Optional, "How well things are measured, and what the first course may do."),
      field("readings", &Job::readings, Need::Optional,
            "What was measured on site, in order. Entries are never changed or taken out: a wrong one is struck by a "
            "later one.",
            {.most_entries = 100'000}),
      field("laying", &Job::laying, Need::Optional, "How the wall is laid and judged."),
      field("laid", &Job::laid, Need::Optional,
            "What happened at the wall: entries are never changed or taken out, a wrong one is struck by another one.",
            {.most_entries = 100'000}),
  };
};

/// Every struct that has a table, for the schema's definitions. Job, the document itself, first.
using JobStructs =
    std::tuple<Job, Units, OwnSeries, CellSpan, Outline, Side, InteriorWall, Place, Heights, Opening, MasonrySize,
               DoorSize, OverheadSize, WindowSize, Lintel, ControlJoints, PlacedControlJoint, Steel, Bars,
               DimensionedBar, Lap, BeamBars, LintelBars, Top, Bolts, Trusses, Ordering, KindOrder, ArticlePrice,
               Brought, ArticleWeight, Days, WorkDays, DayForecast, SettingOut, Ground, Chosen<BedRemedy>,
               Chosen<ShapeRemedy>, Reading, TapeReading, RodReading, TwoPegReading, DowelReading, EdgeReading, Laying,
               LaidEntry, MarkReading, UnitSample, CourseLaid, GaugeReading, UnitSetting, GapReading, WallCheck,
               FoundPlace, Remark, Grouted, LookedAt>;

}  // namespace stringcourse
