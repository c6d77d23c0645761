#pragma once
// The bond problem of one panel: a stretch of one wall between corners, free ends and control joints, with its corner
// bits and lintel bearings already chosen. The solver (bond/search.hpp) solves panels; whole buildings are put
// together from them (bond/assemble.hpp); the oracles in tests/ model the same struct with general-purpose solvers.
//
// All lengths are whole nanometres along the wall. Rules are those of the bond model (docs/bond-model.md).
#include <cstdint>
#include <optional>
#include <vector>

#include "bond/layout.hpp"

namespace stringcourse::bond {

/// A clear interval between two webs, from the piece's start face.
struct Cell {
  std::int64_t from, to;
};

/// One length that a run may be filled with. Pieces of one row are listed longest first.
struct PieceChoice {
  std::int64_t length = 0;
  bool is_cut = false;      // a saw cut: one end is the saw's, and that end meets a joint
  bool corner = false;      // an uncut full: may stand at a through corner
  bool half = false;        // an uncut half that may stand at a through corner as the only piece of its run
  std::vector<Cell> cells;  // whole cells; of a cut: with the saw's end at the END of the piece
  std::int64_t weight = 0;  // weighted panels only
  bool make_up = false;     // of a row that is laid: was its run's make-up piece
};

struct RowRun {
  std::int64_t start = 0, end = 0;
  RunEnd at_start = RunEnd::FreeEnd, at_end = RunEnd::FreeEnd;
  std::int32_t start_lintel = -1,
               end_lintel = -1;  // LintelEnd: which lintel; joints of one lintel's end are not compared
};

/// What may stand under a lintel's bearing: uncut units; or, where nothing else lays, cuts that keep a whole cell.
enum class UnderBearing : std::uint8_t { Uncut, WholeCell };

/// A stretch under a lintel's bearing: the rule holds for pieces that overlap its inside.
struct UncutZone {
  std::int64_t from, to;
  UnderBearing rule = UnderBearing::Uncut;
  std::int32_t course = 0;  // the course under the bearing; the row's other courses are laid like it
};

/// One chosen piece.
struct Chosen {
  std::int64_t length = 0;
  std::int32_t choice = -1;  // index into Row::choices; -1: the run's make-up piece
  CutEnd cut = CutEnd::None;
  friend bool operator==(const Chosen&, const Chosen&) = default;
};

/// One distinct row: every course of one parity in one band.
struct Row {
  std::vector<RowRun> runs;          // left to right; never overlapping
  std::vector<PieceChoice> choices;  // longest first
  std::int64_t make_up_from = 0;     // a make-up piece is cut from this length; 0: none allowed
  std::vector<Cell> make_up_cells;   // cells of that unit; a cut keeps those it leaves whole (cell end < length)
  std::vector<UncutZone> uncut_zones;
  std::vector<std::int32_t> courses;  // courses laid to this row, ascending
  std::int32_t band = 0;
  std::vector<std::vector<Chosen>>
      printed;         // by run: the pieces that were printed before (choice unused); empty: none were
  bool fixed = false;  // laid: these very pieces, nothing else
};

struct PanelBar {
  std::int64_t centre = 0;
  std::int64_t half_width = 0;  // bar radius + clearance: centre +- this lies inside one whole cell in every course ...
  std::int64_t common_along = 0;  // ... and that cell and the cell below share at least this length
};

struct Panel {
  std::int64_t joint = 0, joint_least = 0, joint_most = 0;
  std::int64_t least_piece = 0;
  std::int64_t least_lap = 0;  // rule 3: two head joints of neighbouring courses are at least this far apart
  bool concedes = false;       // rules may be given up, at the weights of bond/concessions.hpp
  std::int64_t far_joint_least = 0, far_joint_most = 0;  // joints as narrow or wide as a conceding panel may have them
  std::int64_t stacked_lap = 0;                          // conceding: a lap below this is hardly one (2 in, 50 mm)
  std::int64_t short_lap_below = 0;                      // closer than this: one short lap; 0: not counted
  std::int64_t cut_step = 1;                             // make-up lengths are whole multiples of this
  std::int64_t half_length = 0;                          // a piece shorter than this is a short piece
  std::int64_t match_within = 0;  // term 4: a joint within this of another is the same joint two courses up
  bool cuts_before_laps = false;  // quarter bond asked for: order 2, 3, 1
  bool weighted = false;          // sum of weights instead of the ordered terms (reported as Cost::short_laps)
  std::vector<Row> rows;
  std::vector<std::int32_t> course_rows;  // row of each course, from the panel's lowest course up, no gap
  std::vector<PanelBar> bars;
};

/// Whether a lintel that bears on nothing, or ends that overlap, leave a row without units: no rule that is given up
/// helps.
[[nodiscard]] bool bears_on_nothing(const Panel& panel);

/// Two rows of a panel, and in how many pairs of courses they meet so.
struct RowPair {
  std::int32_t first = 0, second = 0;
  std::uint32_t weight = 0;
};
struct RowPairs {
  std::vector<RowPair> lying;     // neighbouring courses; first <= second
  std::vector<RowPair> shifting;  // two courses apart, in different bands; first is the lower
};
/// Which rows lie on which, from the order of the courses. Sorted by rows.
[[nodiscard]] RowPairs row_pairs(const Panel& panel);

struct PanelAnswer {
  std::vector<std::vector<std::vector<Chosen>>> rows;  // [row][run][piece]
  Cost cost;                                           // of all courses of the panel; extra_bars is 0 here
  bool proven = false;                                 // cost is least
  Cost least_possible;                                 // proven bound
  std::int64_t expansions = 0;
};

/// How a panel ends without a layout.
struct PanelStop {
  bool proven = false;    // no lawful layout exists (false: the budget ran out)
  std::int32_t row = -1;  // a row that cannot be filled by itself, or -1: each row can, together they cannot
  std::int32_t run = -1;
};

}  // namespace stringcourse::bond
