#pragma once
// Buildings and layouts written down by hand, number by number, for the certificate checker. Nothing here comes from
// the engine's own folders: lengths are literal inches, rows are literal letters.
#include <string>
#include <string_view>
#include <vector>

#include "proof/check.hpp"

namespace stringcourse::hand {

inline Length in(std::int64_t whole, std::int64_t eighths = 0) { return Length::sixteenths(16 * whole + 2 * eighths); }

struct Plan {
  Job job;
  Building building;
  Layout layout;
};

/// An empty job in 8 in block with `courses` courses, stocked with full and half units.
Plan begin(int courses, const std::string& series = "us-8");

/// One straight wall "AB" with free ends.
void add_free_wall(Plan& plan, Length nominal);

/// Walls round an outline. Letters of `turns`: R right (convex), L left (re-entrant); lengths nominal, inches.
void add_outline(Plan& plan, const std::vector<int>& nominal_inches, std::string_view turns);

/// Lays one run. Letters: F full 15 5/8, H half 7 5/8, T cut 11 5/8 and Q cut 3 5/8 with the saw's end at the end,
/// t and q the same with the saw's end at the start, C a corner set, L a lintel unit, M a make-up piece of `make_up`.
void lay(Plan& plan, int wall, int course, Length from, Length to, RunEnd at_start, RunEnd at_end, std::string_view row,
         Length make_up = Length());

/// Fills in what follows from lengths: joints, slack, places, numbers, first pieces.
void close(Layout& layout);

/// Takes the counted cost as the stated one, so that only other rules can speak.
void settle(Plan& plan);

/// Names of the rules that the checker finds broken, each once, in order of name, joined by ", ".
std::string broken(const Plan& plan);
/// All violations as text, for messages.
std::string told(const Plan& plan);

Run& run_of(Plan& plan, int wall, int course, int index = 0);
Piece& piece_of(Plan& plan, int wall, int course, int run, int piece);
/// Puts other pieces into a run and closes it again.
void relay(Plan& plan, int wall, int course, int run, std::string_view row, Length make_up = Length());

// The fixtures. Each passes; their numbers are derived where they are written.
Plan rectangle(const std::string& series = "us-8");  // 48 x 32 in, 2 courses
Plan notched();                                      // an L, 48 x 48 in less 16 x 16, 2 courses
Plan garden_wall();                                  // 104 in, a 16 in opening, a one-piece lintel, 4 courses
Plan built_up_wall();                                // the same with a lintel of units
Plan barred_wall();                                  // the same as garden_wall with #5 bars
Plan lapped_tee();                                   // 64 in with a lapped interior wall, 2 courses
Plan jointed_wall();                                 // 64 in with a control joint in the middle, 2 courses
Plan banded_wall();                                  // 64 in, 4 courses, one band
Plan make_up_wall();                                 // 62 in actual, one course, a make-up piece

}  // namespace stringcourse::hand
