#include "setout/saw_list.hpp"

#include <algorithm>
#include <tuple>

#include "bond/layout_parts.hpp"

namespace stringcourse::setout {
namespace {

auto group_key(const SawGroup& group) { return std::tuple(group.series, group.from, -group.length); }

SawGroup new_group(const Building& building, int series, const Piece& piece) {
  SawGroup group;
  group.series = series;
  group.from = piece.kind;
  group.from_length = bond::bought_length(building.series[static_cast<std::size_t>(series)], piece.kind);
  group.length = piece.length;
  group.offcut = std::max(Length(), group.from_length - group.length - saw_kerf(building.tape));
  return group;
}

void add_piece(std::vector<SawGroup>& groups, const SawGroup& wanted, SawPlace place) {
  const auto at = std::lower_bound(groups.begin(), groups.end(), wanted,
                                   [](const SawGroup& a, const SawGroup& b) { return group_key(a) < group_key(b); });
  if (at != groups.end() && group_key(*at) == group_key(wanted)) {
    at->places.push_back(place);
    return;
  }
  groups.insert(at, wanted)->places.push_back(place);
}

std::vector<SawGroup> grouped_cuts(const Building& building, const Layout& layout) {
  std::vector<SawGroup> groups;
  for (std::size_t run_index = 0; run_index < layout.runs.size(); ++run_index) {
    const Run& run = layout.runs[run_index];
    const int series = building.walls[static_cast<std::size_t>(run.wall)].series;
    for (std::uint32_t index = run.first_piece; index < run.first_piece + run.piece_count; ++index) {
      const Piece& piece = layout.pieces[index];
      if (!bond::is_saw_cut(piece)) continue;
      add_piece(groups, new_group(building, series, piece), {static_cast<std::int32_t>(run_index), index, piece.cut});
    }
  }
  return groups;
}

bool share_a_unit(const SawGroup& a, const SawGroup& b, Length kerf) {
  return a.series == b.series && a.from == b.from && a.length + b.length + kerf <= a.from_length;
}

void pair_groups(SawList& list, std::vector<std::int64_t>& left, std::size_t first, std::size_t second) {
  const std::int64_t units = first == second ? left[first] / 2 : std::min(left[first], left[second]);
  if (units == 0) return;
  list.pairs.push_back({static_cast<std::int32_t>(first), static_cast<std::int32_t>(second), units});
  left[first] -= units;
  left[second] -= units;
  for (const auto [self, other] : {std::pair(first, second), std::pair(second, first)}) {
    list.groups[self].paired += units;
    if (list.groups[self].partner < 0) list.groups[self].partner = static_cast<std::int32_t>(other);
  }
}

}  // namespace

Length saw_kerf(Tape tape) { return tape == Tape::Inches ? Length::sixteenths(2) : Length::millimetres(3); }

std::int64_t SawList::units(std::int32_t series, UnitKind from) const {
  std::int64_t units = 0;
  for (const SawGroup& group : groups) {
    if (group.series == series && group.from == from) units += static_cast<std::int64_t>(group.places.size());
  }
  for (const SawPair& pair : pairs) {
    const SawGroup& group = groups[static_cast<std::size_t>(pair.first)];
    if (group.series == series && group.from == from) units -= pair.units;
  }
  return units;
}

SawList saw_list(const Building& building, const Layout& layout) {
  SawList list{grouped_cuts(building, layout), {}};
  std::vector<std::int64_t> left;
  for (const SawGroup& group : list.groups) left.push_back(static_cast<std::int64_t>(group.places.size()));
  const Length kerf = saw_kerf(building.tape);
  // Groups of one kind stand longest first, so the first partner that fits is the longest that fits.
  for (std::size_t first = 0; first < list.groups.size(); ++first) {
    for (std::size_t second = first; second < list.groups.size() && left[first] > 0; ++second) {
      if (share_a_unit(list.groups[first], list.groups[second], kerf)) pair_groups(list, left, first, second);
    }
  }
  return list;
}

}  // namespace stringcourse::setout
