#pragma once
// The job document: what the user wants built, in the user's words. Plain data, no geometry.
// The JSON names are these field names; one field table per struct (job/fields.hpp) makes reader, writer and schema.
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "catalogue/series.hpp"
#include "job/laid.hpp"
#include "job/ordering.hpp"
#include "job/place.hpp"
#include "job/readings.hpp"
#include "job/setting_out.hpp"
#include "job/top.hpp"
#include "measure/length.hpp"
#include "measure/notation.hpp"

namespace stringcourse {

inline constexpr int kJobVersion = 1;

/// A series of the user's own: sizes measured on one unit. Cells empty: no bars in it.
struct OwnSeries {
  std::string id;
  std::string title;
  Length full, half, thickness, height;
  std::optional<Length> half_high;
  Length joint;
  std::optional<Length> joint_tolerance, least_piece, short_lap_margin, cut_step, face_shell;
  std::vector<CellSpan> full_cells, half_cells;  // {"from": "1\"", "to": "7 5/16\""}
  std::optional<Length> corner_leg;              // short leg of a corner set; absent: plain corners
  std::vector<UnitKind> made;                    // empty: full, half, corner
  friend bool operator==(const OwnSeries&, const OwnSeries&) = default;
};

enum class BondWish { Half, Quarter };

/// Units: the job's series, what the yard stocks, joints and cuts.
struct Units {
  std::string series;  // catalogue id or an id of own_series
  std::vector<OwnSeries> own_series;
  std::optional<std::vector<UnitKind>> stocked;   // absent: every kind the series is made in
  std::optional<Length> joint_least, joint_most;  // joint range
  std::optional<Length> least_piece;
  std::optional<std::vector<Length>> cuts;  // the saw's list of lengths (actual); absent: quarter and three quarters
  std::optional<BondWish> bond;             // absent: half
  std::optional<int> breakage;              // units ordered beyond those laid and sawn, in hundredths; absent: 5
  friend bool operator==(const Units&, const Units&) = default;
};

enum class Turn { Right, Left };
enum class Hand { Right, Left };

struct Side {
  std::string name;      // may be empty: then "AB" from its corners
  std::string from, to;  // corner names
  StatedLength length;
  std::optional<Turn> turn;           // at its far corner; absent on the last side of an open outline
  std::optional<std::string> series;  // absent: the job's
  friend bool operator==(const Side&, const Side&) = default;
};

struct Outline {
  bool closed = true;
  std::optional<Hand> building_on;  // open outlines: which hand the building lies on; default right
  std::vector<Side> sides;
  friend bool operator==(const Outline&, const Outline&) = default;
};

enum class JunctionKind { Tied, ControlJoint, Lapped };

/// An interior wall, starting square off one wall and ending at the first wall that it meets, or after `length`.
struct InteriorWall {
  std::string name;
  std::string off;                     // the wall it starts from: a side's name or an interior wall's
  Place place;                         // where on that wall
  std::optional<StatedLength> length;  // absent: to the wall that it meets
  std::optional<JunctionKind> start_junction, end_junction;  // absent: tied
  std::optional<std::string> series;
  friend bool operator==(const InteriorWall&, const InteriorWall&) = default;
};

/// Where a half-high course stands, when a height asks for one.
enum class HalfHighPlace { First, UnderHead, Top };

struct Heights {
  std::optional<int> courses;              // either courses ...
  std::optional<StatedLength> height;      // ... or a height, from the underside of course 1's bed joint
  std::optional<HalfHighPlace> half_high;  // where the half-high course goes, if the height asks for one
  std::vector<int> half_high_courses;      // or said outright
  friend bool operator==(const Heights&, const Heights&) = default;
};

enum class OpeningUse { Door, Overhead, Window, Plain };

/// The hole in the masonry, as such.
struct MasonrySize {
  StatedLength width, height;
  friend bool operator==(const MasonrySize&, const MasonrySize&) = default;
};
/// A door leaf with its frame, buck and shim; every size actual. Opening width = leaf + 2 (frame + buck + shim).
struct DoorSize {
  Length leaf_width, leaf_height;
  std::optional<Length> frame_jamb, frame_head, buck, shim;  // absent: 0
  friend bool operator==(const DoorSize&, const DoorSize&) = default;
};
/// An overhead door: leaf, bucks on jambs and head, and the room it needs inside.
struct OverheadSize {
  Length leaf_width, leaf_height;
  std::optional<Length> jamb_buck, head_buck, side_room, head_room;
  friend bool operator==(const OverheadSize&, const OverheadSize&) = default;
};
/// A window unit and what is allowed round it.
struct WindowSize {
  Length width, height;
  std::optional<Length> each_side, above, below;
  friend bool operator==(const WindowSize&, const WindowSize&) = default;
};

enum class LintelMake { OnePiece, BuiltUp };

/// What a lintel in one piece is. Steel: a section as high as its courses; an angle has no height in courses
/// (docs/decisions/0020).
enum class LintelPiece { Precast, Steel };

struct Lintel {
  LintelMake make = LintelMake::BuiltUp;
  std::optional<int> courses;             // deep; absent: 1
  std::optional<Length> bearing;          // least at each end, actual; absent: one half unit
  std::optional<Length> shore_spacing;    // greatest, of the shores under one built of units; absent: not said
  std::optional<LintelPiece> piece = {};  // of one piece; absent: not said
  std::string mark = {};                  // as the drawings call it: "L1"
  std::string weight = {};                // of one piece, as its maker says it, in the user's words: "640 lb"
  friend bool operator==(const Lintel&, const Lintel&) = default;
};

struct Opening {
  std::string name;
  std::string on;                      // side or interior wall
  Place place;                         // to which edge of the masonry opening
  std::optional<MasonrySize> masonry;  // exactly one of these four
  std::optional<DoorSize> door;
  std::optional<OverheadSize> overhead;
  std::optional<WindowSize> window;
  std::optional<StatedLength>
      floor;  // doors: floor height from the datum (top of course 1); absent: one joint under course 1
  std::optional<StatedLength> sill;  // windows: sill height from the datum ...
  std::optional<int> sill_course;    // ... or the course whose top is the sill
  std::optional<Lintel> lintel;
  std::string note;
  friend bool operator==(const Opening&, const Opening&) = default;
};

enum class JointRule { None, Us, Uk };

struct PlacedControlJoint {
  std::string on;
  Place place;  // to the joint's near or far edge; snapped to the half-unit grid only if `exact` is false there
  friend bool operator==(const PlacedControlJoint&, const PlacedControlJoint&) = default;
};

struct ControlJoints {
  std::optional<JointRule> rule;  // absent: none
  std::vector<PlacedControlJoint> placed;
  friend bool operator==(const ControlJoints&, const ControlJoints&) = default;
};

struct DimensionedBar {
  std::string on;
  Place place;  // to the bar's centre; `to` is not used
  friend bool operator==(const DimensionedBar&, const DimensionedBar&) = default;
};

struct Bars {
  std::string size;            // "#5"
  std::optional<Grout> grout;  // absent: coarse
  bool corners = false, jambs = false, control_joints = false;
  std::optional<Length> spacing;  // greatest spacing, centre to centre, of the others
  std::vector<DimensionedBar> dimensioned;
  friend bool operator==(const Bars&, const Bars&) = default;
};

/// Rules for the length of a lap; what each needs beside the bar: steel/laps.hpp.
enum class LapRule { Tms402To2008, Tms402From2011, Ibc, Florida2017, FortyBars, FortyEightBars, AsDrawn };

/// How far bars lap, by the rule that the drawings name. The program chooses none.
struct Lap {
  LapRule rule = LapRule::AsDrawn;
  std::optional<std::string> masonry;  // f'm: "1500 psi", "10.3 MPa" (measure/stress.hpp)
  std::optional<std::string> steel;    // yield strength; of rule Ibc the stress that the steel is used at
  std::optional<Length> length;        // rule AsDrawn: what the drawings say
  friend bool operator==(const Lap&, const Lap&) = default;
};

enum class AtControlJoint { Stop, Pass };

/// Bars along a bond-beam course.
struct BeamBars {
  std::string size;
  int count = 1;                                    // side by side
  std::optional<AtControlJoint> at_control_joints;  // absent: not said
  friend bool operator==(const BeamBars&, const BeamBars&) = default;
};

/// Bars along a lintel built of units, in its lowest course.
struct LintelBars {
  std::string size;
  int count = 1;  // side by side
  friend bool operator==(const LintelBars&, const LintelBars&) = default;
};

/// Round corners joint reinforcement goes in pieces bought as corners, or is bent from straight stock.
enum class WireCorners { Pieces, Bent };

/// Where an inner wall meets another that it is tied or lapped to.
enum class WireTees { Pieces, None };

struct Steel {
  std::optional<Bars> bars;
  std::vector<int> bond_beams;                           // courses
  std::optional<int> wire_every;                         // joint reinforcement every n courses
  std::optional<Length> wire_stock, wire_lap, wire_leg;  // its stock length, lap, leg of a corner; absent: assumed
  std::optional<WireCorners> wire_corners;               // absent: pieces bought as corners
  std::optional<WireTees> wire_tees;                     // absent: pieces bought as tees
  std::optional<int> tie_every;                          // ties of inner walls every n courses; absent: not said
  std::optional<bool>
      beam_steel_in_joints;              // horizontal steel of at least 0.002 An runs through: no control joints needed
  std::vector<int> pour_tops;            // courses at which grout pours stop, rising; empty: not said
  std::optional<Length> dowel_lap;       // how far dowels stand up over the bearing, as the drawings ask
  std::vector<std::string> kept_dowels;  // ids of dowel readings: their bars stand where the dowels were found
  std::optional<Lap> lap;                // absent: no rule is picked, and bars are not cut to length
  std::optional<Length> bar_stock;       // the longest bar that the yard sells; absent: assumed
  std::optional<Length> bar_kerf;        // what a cut takes of a bar; absent: assumed
  std::optional<Length> end_cover;       // from a bar's end to the masonry's; absent: assumed
  std::optional<BeamBars> beam_bars;     // absent: as the drawings say
  std::optional<LintelBars> lintel_bars;
  friend bool operator==(const Steel&, const Steel&) = default;
};

struct Job {
  int stringcourse = kJobVersion;  // the document's version, first field
  std::string name;
  std::string notes;
  std::string drawn_by;
  std::string issued;  // the user's own text for the sheets; the engine has no clock
  Tape tape = Tape::Inches;
  Units units;
  Outline outline;
  std::vector<InteriorWall> interior_walls;
  Heights heights;
  std::vector<Opening> openings;
  ControlJoints control_joints;
  Steel steel;
  std::optional<Top> top;
  std::optional<Ordering> order;
  std::optional<Days> days;
  std::optional<SettingOut> setting_out;
  std::optional<Ground> ground;
  std::vector<Reading> readings;  // in the order in which they were taken; only ever added to
  std::optional<Laying> laying;
  std::vector<LaidEntry> laid;  // the laid log; only ever added to
  friend bool operator==(const Job&, const Job&);

  // Made, copied and ended in one file: compiled once, not in each that holds one.
  Job();
  Job(const Job&);
  Job(Job&&) noexcept;
  Job& operator=(const Job&);
  Job& operator=(Job&&) noexcept;
  ~Job();
};

}  // namespace stringcourse
