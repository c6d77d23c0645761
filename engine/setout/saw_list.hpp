#pragma once
// The saw list: what is cut, from what, how often, where each piece goes and which end keeps the factory face.
#include <cstdint>
#include <string>
#include <vector>

#include "bond/layout.hpp"
#include "walls/building.hpp"

namespace stringcourse::setout {

/// Width that the blade takes away: 1/8 in or 3 mm (common practice for a masonry blade; measure your own).
[[nodiscard]] Length saw_kerf(Tape tape);

/// Where one cut piece goes. The factory face is at the end that the saw did not make.
struct SawPlace {
  std::int32_t run = 0;     // index into Layout::runs
  std::uint32_t piece = 0;  // index into Layout::pieces
  CutEnd cut = CutEnd::End;
};

/// All pieces of one length cut from one kind of one series.
struct SawGroup {
  std::int32_t series = 0;
  UnitKind from = UnitKind::Full;
  Length from_length;  // of the unit before the saw
  Length length;       // of the piece
  Length offcut;       // from_length - length - kerf; never negative
  std::vector<SawPlace> places;
  std::int64_t paired = 0;    // pieces of this group whose unit yields another listed piece too
  std::int32_t partner = -1;  // the group that most of those share a unit with (may be this one), or -1
};

/// Two listed pieces that one unit yields: both keep a factory end, their lengths and one kerf fit into the unit.
struct SawPair {
  std::int32_t first = 0, second = 0;  // groups; equal: two of the same length
  std::int64_t units = 0;
};

struct SawList {
  std::vector<SawGroup> groups;  // by series, kind, longest first
  std::vector<SawPair> pairs;
  /// Units that go to the saw: pieces less pairs.
  [[nodiscard]] std::int64_t units(std::int32_t series, UnitKind from) const;
};

/// Pairs the longest piece with the longest that still fits beside it: the most pairs when a unit yields two at most.
[[nodiscard]] SawList saw_list(const Building& building, const Layout& layout);

}  // namespace stringcourse::setout
