#pragma once
// Dowels: where each must stand before the pour so that it comes up inside a cell, and what is to be done with each as
// it was found after it.
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "bond/layout.hpp"
#include "job/enum_names.hpp"
#include "job/job.hpp"
#include "setout/over.hpp"
#include "walls/building.hpp"

namespace stringcourse::steel {

/// A cell, seen along the wall asked about; its unit may be another wall's, at a corner or in a slot.
using InCell = setout::SeenCell;

/// The cell of a course over a place on a wall's line; none in webs, joints, openings and saw-cut ends.
[[nodiscard]] std::optional<InCell> cell_at(const Building& building, const Layout& layout, int wall, int course,
                                            bond::SeenFrom place);
/// False where no unit stands over the place in that course: an opening.
[[nodiscard]] bool unit_at(const Building& building, const Layout& layout, int wall, int course, bond::SeenFrom place);

/// How far a dowel may stand out of its place, each way, and still keep the grout's clearance in the cells of courses 1
/// and
/// 2. Exact; below zero: it lacks so much where it is planned.
struct DowelRoom {
  Length to_start, to_end;    // along the wall
  Length to_outer, to_inner;  // across it
  [[nodiscard]] Length least() const;
  friend bool operator==(const DowelRoom&, const DowelRoom&) = default;
};

/// One dowel to be set. Every bar that starts at the bearing has one; a corner's is listed on the wall that owns the
/// bar.
struct Dowel {
  std::int32_t wall = 0, number = 0;  // 1, 2 ... along the wall
  Length along;                       // centre, from where the wall's numbers begin (setout/hook.hpp)
  Length off_face;  // centre, in from the outer face; an inner wall's: from the face on the walker's left
  BarReason reason = BarReason::Spaced;
  int corner = -1;                      // reason Corner: into Building::corners
  std::optional<InCell> first, second;  // cells of courses 1 and 2; none where a course has none there
  std::optional<DowelRoom> room;        // none without a cell
};

/// All dowels, by wall, then along it.
[[nodiscard]] std::vector<Dowel> dowels_of(const Building& building, const Layout& layout);

/// Less room than this is hard to keep in wet concrete: the tolerance across a thin wall, rule "dowel-little-room".
[[nodiscard]] Length little_room();
/// Room as it may be used: whole steps of the tape, rounded inwards (down).
[[nodiscard]] Length usable(Length room, Tape tape);
/// "1/4\" toward A": where a dowel has less room than `most`, each way; empty: it has more everywhere.
[[nodiscard]] Fact little_room_said(const Building& building, const Dowel& dowel, Length most);

enum class Action {
  Stands,         // in a cell of both courses with its clearance, near enough to its bar
  CannotTell,     // so near a limit that the reading cannot tell
  LapApart,       // in a cell, but away from its bar: a non-contact lap
  Bend,           // not in a cell: bent at no more than 1 : 6
  CutAndReplace,  // none of these: cut it off and set another, with approval
};

/// How far a bar may stand from its place.
struct DowelRules {
  Length clearance;           // bar to web or shell: 1/4 in in fine grout, 1/2 in in coarse
  Length along;               // off its place along the wall: rule "bar-place"
  Length apart_most;          // bars of a non-contact lap: at most a fifth of the lap, and rule "lap-apart"
  std::optional<Length> lap;  // as asked for; its fifth then limits too
  Length bend_high_most;      // height in which a bend must be over: the first course
  int bend_slope = 6;         // 1 across in so many up
};
[[nodiscard]] DowelRules dowel_rules(const Job& job, const Building& building);

/// A dowel as found, and what follows.
struct FoundDowel {
  std::size_t entry = 0;  // of Job::readings
  std::int32_t wall = 0;
  Length along, off_face;
  bool has_bar = false;     // a bar of the layout starts on this wall, and the nearest is the one it is taken for
  std::int32_t number = 0;  // that one's number in the list; 0: a corner's, listed on the other wall
  Length off_place;         // from that bar, towards the wall's end above zero
  Length room;              // least clear distance to web or shell beyond the clearance; below zero: too near
  Length doubt;             // of the reading, expanded (k = 2)
  Action action = Action::Stands;
  Length shift;   // Bend: how far sideways
  Length height;  // Bend: 6 x shift
  Length apart;   // from its bar's place, after a bend: above the tolerance a non-contact lap
};

/// Each dowel reading that counts (`counts` by entry) against the layout. `doubt` is a reading's, expanded.
[[nodiscard]] std::vector<FoundDowel> dowels_found(const Job& job, const Building& building, const Layout& layout,
                                                   const std::vector<bool>& counts, Length doubt);

/// "bend 1/2 in sideways within 3 in of height (1 in 6)".
[[nodiscard]] Fact action_said(const FoundDowel& dowel);

}  // namespace stringcourse::steel

namespace stringcourse {
template <>
inline constexpr std::array<std::string_view, 5> kEnumNames<steel::Action>{"stands", "cannot-tell", "lap-apart", "bend",
                                                                           "cut-and-replace"};
}
