#pragma once
// A layout: every piece of every course with its exact place. Plain data; the certificate checker (proof/) reads it
// and re-derives rules and cost without the solver's code.
#include <cstdint>
#include <vector>

#include "catalogue/series.hpp"
#include "measure/fact.hpp"
#include "measure/length.hpp"
#include "walls/building.hpp"

namespace stringcourse {

/// What a run ends at. "joint" ends carry a head joint between the run's last piece and what it meets.
enum class RunEnd : std::uint8_t {
  ThroughCorner,     // the corner unit of this wall: no joint
  ButtCorner,        // joint; meets the other wall's corner unit
  Jamb,              // factory face
  FreeEnd,           // factory face
  ControlJoint,      // factory face
  TiedJunction,      // joint; butts the main wall in every course (tied or control joint); exempt from laps
  LappedButt,        // joint; butts the main wall in this course, enters it in the next
  EnteringJunction,  // runs into the main wall's slot; its end is a factory face on the far side
  SlotSide,          // joint; the unit of a lapped abutting wall fills the slot
  LintelEnd,         // joint; a one-piece lintel
};
[[nodiscard]] constexpr bool has_joint(RunEnd end) {
  return end == RunEnd::ButtCorner || end == RunEnd::TiedJunction || end == RunEnd::LappedButt ||
         end == RunEnd::SlotSide || end == RunEnd::LintelEnd;
}
/// Factory faces only: no cut end may show here.
[[nodiscard]] constexpr bool shows_face(RunEnd end) { return !has_joint(end); }

enum class CutEnd : std::uint8_t { None, Start, End };  // which end of the piece the saw made

/// One piece of one course, laid flat along its wall.
struct Piece {
  ExactPosition start;             // its start face, along the wall
  Length length;                   // actual
  UnitKind kind = UnitKind::Full;  // what is bought (a cut: what it is cut from)
  CutEnd cut = CutEnd::None;
  bool make_up = false;     // the run's one free cut
  std::int32_t number = 0;  // 1, 2, ... along its wall in its course, from the wall's start
};

/// A stretch of one course of one wall with no break in it. All its joints are slack / joints wide, exactly.
struct Run {
  std::int32_t wall = 0;
  std::int32_t course = 1;
  Length start, end;  // along the wall, whole nanometres
  RunEnd at_start = RunEnd::FreeEnd, at_end = RunEnd::FreeEnd;
  std::int32_t joints = 0;                         // m = pieces - 1 + ends with a joint
  Length slack;                                    // S = (end - start) - sum of pieces
  std::uint32_t first_piece = 0, piece_count = 0;  // into Layout::pieces
};

/// One for every opening with a lintel, of either make, in a panel that has a layout. What it bears as laid, from the
/// jamb to its end: of a lintel built of units, to the far end of the last unit that is part of it
/// (bond/lintel_units.hpp).
struct PlacedLintel {
  std::int32_t opening = 0;
  Length start_bearing, end_bearing;  // towards the wall's start, towards its end
};

struct PlacedBar {
  std::int32_t wall = 0;
  Length centre;  // whole sixteenths (inch jobs) or millimetres for spaced bars; as resolved for fixed ones
  BarReason reason = BarReason::Spaced;
  std::int32_t corner = -1, opening = -1;
  std::int32_t first_course = 1, last_course = 1;
  Length off_face = {};  // centre, in from the outer face of its wall
};

/// A hole at the foot of a pour, through which one bar's cell is cleaned and looked into.
struct PlacedCleanout {
  std::uint32_t bar = 0;    // into Layout::bars
  std::int32_t course = 1;  // the pour's lowest
  std::uint32_t piece = 0;  // into Layout::pieces: in whose cell the bar stands, at a corner the unit that turns it
};

/// What is best, compared in this order (docs/bond-model.md); with quarter bond asked for, cuts and short pieces come
/// first.
struct Cost {
  std::int64_t short_laps = 0;
  std::int64_t cuts = 0;
  std::int64_t short_pieces = 0;    // shorter than a half
  std::int64_t shifted_joints = 0;  // from band to band
  std::int64_t extra_bars = 0;
  std::int64_t joint_deviation = 0;  // nanometres, sum over runs of |run - pieces - m j|
  std::int64_t units = 0;
  std::int64_t conceded = 0;  // weight of the rules given up; compared before all others; 0: every rule is kept
  friend bool operator==(const Cost&, const Cost&) = default;
};

/// A run (or a whole panel) that no lawful layout fills.
struct Stopped {
  std::int32_t wall = 0;
  std::int32_t first_course = 1, last_course = 1;
  Length start, end;
  Fact rule;    // the rule that stops it, with the values
  Fact remedy;  // the smallest changes that mend it
};

/// A rule given up at one place, because no layout was found that keeps them all (docs/bond-model.md).
struct Concession {
  enum class What : std::uint8_t {
    Joints,           // of a run, out of the job's range: from..to the run, amount the joint's width
    Bar,              // a bar of its own place that no whole cell of this course holds: from = to = its middle
    BarCells,         // ... whose cells in this course and the one below share too little
    BarSpacing,       // spaced bars farther apart than asked: from..to between them, amount the distance
    CutUnderBearing,  // a saw cut without a whole cell under a lintel's end: from..to the piece, amount its length
    ShortLap,         // head joints of this course and the one below nearer than a quarter: from..to, amount the lap
    CutFace,          // a saw cut that shows: from..to the piece, amount its length
    StackedLap,       // as ShortLap, nearer than 2 in (50 mm)
    Corner,           // not an uncut unit at a corner that runs through: from..to the piece, amount its length
    Bare,             // a run that no pieces fill: from..to, amount its length
  } what = What::Joints;
  std::int32_t wall = 0;
  std::int32_t course = 1;
  Length from, to;  // along the wall, to the nearest nanometre
  Length amount;
  friend bool operator==(const Concession&, const Concession&) = default;
};

struct Layout {
  std::vector<std::uint8_t> arriving_through;  // per corner: the arriving wall runs through in course 1 (odd courses)
  std::vector<std::uint8_t> entering_first;    // per junction (lapped): the abutting wall enters in course 1
  std::vector<Run> runs;                       // by wall, course, start
  std::vector<Piece> pieces;                   // in the order of runs
  std::vector<PlacedLintel> lintels;
  std::vector<PlacedBar> bars;
  std::vector<PlacedCleanout> cleanouts;  // by course, then bar
  Cost cost;
  std::int64_t cut_lengths = 0;           // different lengths among saw cuts (term 8)
  std::int64_t cut_lengths_at_least = 0;  // proven bound for term 8 among layouts equal so far
  bool proven = false;                    // cost is proven least
  Cost least_possible;                    // proven bound; equals cost when proven
  bool relaxed_piece = false;             // rule 2 was relaxed to the series' relaxed_piece
  bool relaxed_bearing = false;           // a cut with a whole filled cell stands under a bearing
  std::vector<Stopped> stopped;           // empty: the layout is whole
  std::vector<Concession> conceded;       // rules given up; Cost::conceded is what they weigh together

  const Piece* begin_of(const Run& run) const { return pieces.data() + run.first_piece; }

  // Made, copied and ended in one file: compiled once, not in each that holds one.
  Layout();
  Layout(const Layout&);
  Layout(Layout&&) noexcept;
  Layout& operator=(const Layout&);
  Layout& operator=(Layout&&) noexcept;
  ~Layout();
};

}  // namespace stringcourse
