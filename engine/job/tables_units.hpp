#pragma once
// Field tables of what the walls are built with: units, own series, steel.
#include <array>
#include <string_view>
#include <tuple>

#include "job/field_table.hpp"
#include "job/job.hpp"

namespace stringcourse {

inline constexpr int kMostCourses = 200;
inline constexpr Bounds kCourseNumber{.least = 1, .most = kMostCourses};
inline constexpr Bounds kCourseList{
    .least = 1, .most = kMostCourses, .most_entries = kMostCourses, .order = ListOrder::Distinct};
inline constexpr Bounds kNameText{.text = TextRule::Name};
inline constexpr Bounds kZeroOrMore{.lengths = LengthRange::ZeroOrMore};
inline constexpr Bounds kAnySign{.lengths = LengthRange::AnySign};
inline constexpr Bounds kKindList{.most_entries = kKindCount, .order = ListOrder::Distinct};
inline constexpr Bounds kCellList{.most_entries = 8};

template <>
struct Table<CellSpan> {
  static constexpr std::string_view name = "cell";
  static constexpr std::string_view description = "One cell of a unit: the clear interval between two webs.";
  static constexpr auto fields = std::tuple{
      field("from", &CellSpan::from, Need::Required, "Length from the unit's left end to the cell's near web face.",
            kZeroOrMore),
      field("to", &CellSpan::to, Need::Required, "Length from the unit's left end to the cell's far web face."),
  };
};

template <>
struct Table<OwnSeries> {
  static constexpr std::string_view name = "own_series";
  static constexpr std::string_view description =
      "A series of units of your own, as measured on one unit. All lengths are actual.";
  static constexpr auto fields = std::tuple{
      field("id", &OwnSeries::id, Need::Required, "Short name by which the job calls this series.", kNameText),
      field("title", &OwnSeries::title, Need::Optional, "Title for the sheets."),
      field("full", &OwnSeries::full, Need::Required, "Face length of a whole unit, a length."),
      field("half", &OwnSeries::half, Need::Required,
            "Face length of a half unit, a length: full + joint must be 2 (half + joint)."),
      field("thickness", &OwnSeries::thickness, Need::Required, "Thickness through the wall, a length."),
      field("height", &OwnSeries::height, Need::Required, "Height of a unit, a length."),
      field("half_high", &OwnSeries::half_high, Need::Optional, "Height of a half-high unit, a length."),
      field("joint", &OwnSeries::joint, Need::Required, "Width of the mortar joint, a length."),
      field("joint_tolerance", &OwnSeries::joint_tolerance, Need::Optional,
            "How far a joint may differ from its width, a length.", kZeroOrMore),
      field("least_piece", &OwnSeries::least_piece, Need::Optional, "Least length of a cut piece, a length."),
      field("short_lap_margin", &OwnSeries::short_lap_margin, Need::Optional,
            "How much less than half a unit and a joint a lap may be before it counts as short, a length.",
            kZeroOrMore),
      field("cut_step", &OwnSeries::cut_step, Need::Optional, "Step to which a make-up piece is cut, a length."),
      field("face_shell", &OwnSeries::face_shell, Need::Optional, "Thickness of a face shell, a length."),
      field("full_cells", &OwnSeries::full_cells, Need::Optional,
            "Cells of a whole unit, from its left end; none: no bars stand in it.", kCellList),
      field("half_cells", &OwnSeries::half_cells, Need::Optional,
            "Cells of a half unit, from its left end; none: no bars stand in it.", kCellList),
      field("corner_leg", &OwnSeries::corner_leg, Need::Optional,
            "Short leg of a corner set, a length; absent: plain units make the corner."),
      field("made", &OwnSeries::made, Need::Optional, "Kinds that this series is made in; none: full, half, corner.",
            kKindList),
  };
};

template <>
struct Table<Units> {
  static constexpr std::string_view name = "units";
  static constexpr std::string_view description = "The units: series, what the yard stocks, joints and cuts.";
  static constexpr auto fields = std::tuple{
      field("series", &Units::series, Need::Required, "The job's series: an id of the catalogue or of own_series.",
            kNameText),
      field("own_series", &Units::own_series, Need::Optional, "Series of your own.", {.most_entries = 50}),
      field("stocked", &Units::stocked, Need::Optional,
            "Kinds of units that the yard stocks; absent: every kind that the series is made in.", kKindList),
      field("joint_least", &Units::joint_least, Need::Optional, "Least width of a head joint, a length."),
      field("joint_most", &Units::joint_most, Need::Optional, "Greatest width of a head joint, a length."),
      field("least_piece", &Units::least_piece, Need::Optional, "Least length of a cut piece, a length."),
      field("cuts", &Units::cuts, Need::Optional,
            "Lengths that the saw cuts, actual; absent: a quarter and three quarters of a unit.",
            {.most_entries = 100, .order = ListOrder::Distinct}),
      field("bond", &Units::bond, Need::Optional, "Bond wished for; absent: half."),
      field("breakage", &Units::breakage, Need::Optional,
            "Units to order for breakage, in hundredths of what is laid and sawn; absent: 5.",
            {.least = 0, .most = 50}),
  };
};

template <>
struct Table<DimensionedBar> {
  static constexpr std::string_view name = "dimensioned_bar";
  static constexpr std::string_view description = "An upright bar with a place of its own.";
  static constexpr auto fields = std::tuple{
      field("on", &DimensionedBar::on, Need::Required, "The wall that it stands in.", kNameText),
      field("place", &DimensionedBar::place, Need::Required, "Where on that wall, to the bar's centre."),
  };
};

template <>
struct Table<Bars> {
  static constexpr std::string_view name = "bars";
  static constexpr std::string_view description = "Upright bars, as asked for by the drawings.";
  static constexpr auto fields = std::tuple{
      field("size", &Bars::size, Need::Required, "Size of the bars as the catalogue names it, such as #5 or N12.",
            kNameText),
      field("grout", &Bars::grout, Need::Optional, "Grout of the cells; absent: coarse."),
      field("corners", &Bars::corners, Need::Optional, "A bar in every corner; absent: false."),
      field("jambs", &Bars::jambs, Need::Optional, "A bar at every jamb; absent: false."),
      field("control_joints", &Bars::control_joints, Need::Optional,
            "A bar at each side of every control joint; absent: false."),
      field("spacing", &Bars::spacing, Need::Optional,
            "Greatest spacing of the bars along masonry, across control joints too, a length; absent: no more bars."),
      field("dimensioned", &Bars::dimensioned, Need::Optional, "Bars with places of their own.",
            {.most_entries = 20'000}),
  };
};

template <>
struct Table<Lap> {
  static constexpr std::string_view name = "lap";
  static constexpr std::string_view description =
      "How far bars lap, by the rule that your drawings name. The program chooses none.";
  static constexpr auto fields = std::tuple{
      field("rule", &Lap::rule, Need::Required, "The rule that gives the length."),
      field("masonry", &Lap::masonry, Need::Optional,
            "Compressive strength of the masonry, f'm, such as 1500 psi or 10.3 MPa; for the TMS 402 and Florida "
            "rules."),
      field("steel", &Lap::steel, Need::Optional,
            "Yield strength of the bars, such as 60000 psi or 500 MPa; with the IBC rule the stress that the bars are "
            "used at."),
      field("length", &Lap::length, Need::Optional, "With the rule as-drawn: what your drawings say, a length."),
  };
};

template <>
struct Table<BeamBars> {
  static constexpr std::string_view name = "beam_bars";
  static constexpr std::string_view description = "Bars along each bond-beam course, as asked for by the drawings.";
  static constexpr auto fields = std::tuple{
      field("size", &BeamBars::size, Need::Required, "Size of the bars as the catalogue names it, such as #4 or N12.",
            kNameText),
      field("count", &BeamBars::count, Need::Required, "How many lie side by side.", {.least = 1, .most = 4}),
      field("at_control_joints", &BeamBars::at_control_joints, Need::Optional,
            "Whether they stop at control joints or pass through; absent: not said."),
  };
};

template <>
struct Table<LintelBars> {
  static constexpr std::string_view name = "lintel_bars";
  static constexpr std::string_view description =
      "Bars along the lowest course of each lintel built of units, as asked for by the drawings.";
  static constexpr auto fields = std::tuple{
      field("size", &LintelBars::size, Need::Required, "Size of the bars as the catalogue names it, such as #5 or N16.",
            kNameText),
      field("count", &LintelBars::count, Need::Required, "How many lie side by side.", {.least = 1, .most = 4}),
  };
};

template <>
struct Table<Steel> {
  static constexpr std::string_view name = "steel";
  static constexpr std::string_view description = "Steel asked for by the drawings, and where grout pours stop.";
  static constexpr auto fields = std::tuple{
      field("bars", &Steel::bars, Need::Optional, "Upright bars; absent: none."),
      field("bond_beams", &Steel::bond_beams, Need::Optional, "Courses that are bond beams.", kCourseList),
      field("wire_every", &Steel::wire_every, Need::Optional,
            "Joint reinforcement in the bed on top of every so many courses, not on the last; absent: none.",
            kCourseNumber),
      field("wire_stock", &Steel::wire_stock, Need::Optional,
            "Length that joint reinforcement is sold in, a length; absent: 10 ft, or 3 m."),
      field("wire_lap", &Steel::wire_lap, Need::Optional,
            "How far joint reinforcement laps, as your drawings ask, a length; absent: 6 in, or 150 mm."),
      field("wire_leg", &Steel::wire_leg, Need::Optional,
            "Leg of a corner of joint reinforcement, along the outer face, a length; absent: 24 in, or 600 mm."),
      field("wire_corners", &Steel::wire_corners, Need::Optional,
            "Whether corners of joint reinforcement are bought as such or bent from straight stock; absent: pieces."),
      field("wire_tees", &Steel::wire_tees, Need::Optional,
            "Whether joint reinforcement is tied to that of inner walls, tied or lapped, by pieces bought as tees, or "
            "stops; absent: tees."),
      field("tie_every", &Steel::tie_every, Need::Optional,
            "Ties where an inner wall is butted and tied, in the bed on top of every so many courses as your drawings "
            "ask, not on the last; absent: not said.",
            kCourseNumber),
      field("beam_steel_in_joints", &Steel::beam_steel_in_joints, Need::Optional,
            "Horizontal steel of at least 0.002 of the net area runs through, so that no control joints are needed."),
      field("pour_tops", &Steel::pour_tops, Need::Optional,
            "Courses at whose top a grout pour stops, rising; none: not said.",
            {.least = 1, .most = kMostCourses, .most_entries = kMostCourses, .order = ListOrder::Rising}),
      field("dowel_lap", &Steel::dowel_lap, Need::Optional,
            "How far dowels stand up over the footing or slab, as your drawings ask, a length."),
      field("kept_dowels", &Steel::kept_dowels, Need::Optional,
            "Ids of dowel readings whose bars stand where the dowels were found, whatever that costs the bond.",
            {.text = TextRule::Name, .most_entries = 2000, .order = ListOrder::Distinct}),
      field("lap", &Steel::lap, Need::Optional, "How far bars lap; absent: no rule is picked."),
      field("bar_stock", &Steel::bar_stock, Need::Optional,
            "Length of the longest bars that your yard sells, a length; absent: 20 ft, or 6 m."),
      field("bar_kerf", &Steel::bar_kerf, Need::Optional,
            "What a saw's or shear's cut takes of a bar, a length; absent: 1/8 in, or 3 mm.", kZeroOrMore),
      field("end_cover", &Steel::end_cover, Need::Optional,
            "How far bars end from the end or the top of the masonry, a length; absent: 1 1/2 in, or 40 mm.",
            kZeroOrMore),
      field("beam_bars", &Steel::beam_bars, Need::Optional, "Bars along bond beams; absent: as your drawings say."),
      field("lintel_bars", &Steel::lintel_bars, Need::Optional,
            "Bars along lintels built of units; absent: as your drawings say."),
  };
};

}  // namespace stringcourse
