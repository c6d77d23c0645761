#include "supply/counts.hpp"

#include <algorithm>
#include <span>
#include <tuple>

#include "bond/layout_parts.hpp"
#include "measure/sorting.hpp"
#include "setout/cleanouts.hpp"
#include "setout/saw_list.hpp"
#include "walls/corner_plan.hpp"

namespace stringcourse::supply {
namespace {

UnitCount& unit_entry(std::vector<UnitCount>& units, int series, UnitKind kind) {
  const std::tuple key(series, kind);
  auto at = std::find_if(units.begin(), units.end(),
                         [&](const UnitCount& unit) { return std::tuple(unit.series, unit.kind) >= key; });
  if (at == units.end() || std::tuple(at->series, at->kind) != key) at = units.insert(at, {series, kind, 0, 0});
  return *at;
}

void count_cut(std::vector<CutCount>& cuts, int series, const Piece& piece) {
  const std::tuple key(series, piece.kind, -piece.length);
  const auto key_of = [](const CutCount& cut) { return std::tuple(cut.series, cut.from, -cut.length); };
  auto at = std::lower_bound(cuts.begin(), cuts.end(), key,
                             [&](const CutCount& cut, const auto& wanted) { return key_of(cut) < wanted; });
  if (at == cuts.end() || key_of(*at) != key) at = cuts.insert(at, {series, piece.kind, piece.length, 0});
  ++at->pieces;
}

Counts count_runs(const Building& building, const Layout& layout, std::span<const Run> runs) {
  Counts counts;
  for (const Run& run : runs) {
    const int series = building.walls[static_cast<std::size_t>(run.wall)].series;
    for (const Piece& piece : bond::pieces_of(layout, run)) {
      UnitCount& unit = unit_entry(counts.units, series, piece.kind);
      ++counts.pieces;
      if (bond::is_saw_cut(piece)) {
        ++unit.pieces;
        count_cut(counts.cuts, series, piece);
      } else {
        ++unit.whole;
      }
    }
  }
  return counts;
}

// Height of the courses from..to, from the bed joint under the lowest to the top of the highest.
Length height_of_courses(const Building& building, int from, int to) {
  Length height;
  for (const Course& course : building.courses) {
    if (course.number >= from && course.number <= to) height += course.unit_height + building.joint;
  }
  return height;
}

bool corner_listed_before(const std::vector<PlacedBar>& bars, std::size_t index) {
  const PlacedBar& bar = bars[index];
  if (bar.reason != BarReason::Corner || bar.corner < 0) return false;
  return std::any_of(bars.begin(), bars.begin() + static_cast<std::ptrdiff_t>(index), [&](const PlacedBar& other) {
    return other.reason == BarReason::Corner && other.corner == bar.corner;
  });
}

PartCount& part_entry(std::vector<PartCount>& parts, int series, const Fact& part, PartWork work) {
  const auto at = std::find_if(parts.begin(), parts.end(), [&](const PartCount& entry) {
    return entry.series == series && entry.part == part && entry.work == work;
  });
  if (at != parts.end()) return *at;
  return parts.emplace_back(PartCount{series, part, work});
}

/// Only a unit is cut for a beam: a filler stays.
PartWork work_on(const Course& course, const walls::CornerPart& part) {
  if (course.half_high) return PartWork::SawnHalfHigh;
  return course.bond_beam && part.from == Length() && part.near == Length() ? PartWork::WebsCutDown
                                                                            : PartWork::AsBought;
}

void count_corner(std::vector<PartCount>& counts, const Building& building, const Run& run, const WallEnd& end,
                  const Piece& piece, walls::Makes makes, std::size_t from_part) {
  const auto parts = walls::corner_parts(building, building.corners[static_cast<std::size_t>(end.corner)], run.wall,
                                         piece.length, makes);
  if (!parts) return;
  const int series = building.walls[static_cast<std::size_t>(run.wall)].series;
  const Course& course = building.courses[static_cast<std::size_t>(run.course - 1)];
  for (std::size_t i = from_part; i < parts->size(); ++i) {
    const walls::CornerPart& part = (*parts)[i];
    if (part.name.empty()) continue;
    ++part_entry(counts, series, part.name, work_on(course, part)).count;
  }
}

}  // namespace

Counts count_units(const Building& building, const Layout& layout) { return count_runs(building, layout, layout.runs); }

Counts count_units_of_wall(const Building& building, const Layout& layout, int wall) {
  return count_runs(building, layout, bond::runs_of_wall(layout, wall));
}

std::vector<Purchase> units_to_buy(const Building& building, const Layout& layout) {
  const setout::SawList saw = setout::saw_list(building, layout);
  std::vector<Purchase> purchases;
  for (const UnitCount& unit : count_units(building, layout).units) {
    const std::int64_t for_saw = saw.units(unit.series, unit.kind);
    purchases.push_back(
        {unit.series, unit.kind, unit.whole, for_saw, spare_units(unit.whole + for_saw, building.breakage.percent)});
  }
  return purchases;
}

namespace {

/// Spares are for all of one part together: they stand with the first of its lines.
void add_spares(std::vector<PartCount>& parts, int percent) {
  for (std::size_t i = 0; i < parts.size(); ++i) {
    const auto same = [&](const PartCount& other) {
      return other.series == parts[i].series && other.part == parts[i].part;
    };
    if (std::find_if(parts.begin(), parts.end(), same) != parts.begin() + static_cast<std::ptrdiff_t>(i)) continue;
    std::int64_t all = 0;
    for (const PartCount& other : parts) all += same(other) ? other.count : 0;
    parts[i].spare = spare_units(all, percent);
  }
}

}  // namespace

std::vector<PartCount> corner_set_parts(const Building& building, const Layout& layout) {
  std::vector<PartCount> parts;
  for (const Run& run : layout.runs) {
    const Wall& wall = building.walls[static_cast<std::size_t>(run.wall)];
    const std::span<const Piece> pieces = bond::pieces_of(layout, run);
    if (pieces.empty()) continue;
    const bool at_start = run.at_start == RunEnd::ThroughCorner, at_end = run.at_end == RunEnd::ThroughCorner;
    const bool one_makes_both = at_start && at_end && pieces.size() == 1;
    const walls::Makes makes = one_makes_both ? walls::Makes::TwoCorners : walls::Makes::OneCorner;
    if (at_start) count_corner(parts, building, run, wall.start, pieces.front(), makes, 0);
    if (at_end) count_corner(parts, building, run, wall.end, pieces.back(), makes, one_makes_both ? 1 : 0);  // one unit
  }
  sort_stably(parts, [](const PartCount& a, const PartCount& b) {
    return std::tuple(a.series, a.work) < std::tuple(b.series, b.work);
  });
  add_spares(parts, building.breakage.percent);
  return parts;
}

std::vector<LintelCount> one_piece_lintels(const Building& building, const Layout& layout) {
  std::vector<LintelCount> lintels;
  for (const PlacedLintel& placed : layout.lintels) {
    const ResolvedOpening& opening = building.openings[static_cast<std::size_t>(placed.opening)];
    if (!opening.lintel || opening.lintel->make != LintelMake::OnePiece) continue;
    const Length length = opening.width() + placed.start_bearing + placed.end_bearing;
    const int courses = opening.lintel->courses;
    const auto at = std::find_if(lintels.begin(), lintels.end(), [&](const LintelCount& entry) {
      return entry.length == length && entry.courses == courses;
    });
    if (at == lintels.end()) lintels.push_back({length, courses, 1});
    else ++at->count;
  }
  sort_stably(lintels, [](const LintelCount& a, const LintelCount& b) {
    return std::tuple(-a.length, a.courses) < std::tuple(-b.length, b.courses);
  });
  return lintels;
}

CleanoutCount count_cleanouts(const Building& building, const Layout& layout) {
  CleanoutCount count;
  for (const setout::WallCleanout& cleanout : setout::cleanouts_of(building, layout))
    ++(cleanout.bought ? count.bought : count.cut);
  return count;
}

BarCount count_bars(const Building& building, const Layout& layout) {
  BarCount count{building.bars ? building.bars->size : "", 0, Length()};
  for (std::size_t index = 0; index < layout.bars.size(); ++index) {
    if (corner_listed_before(layout.bars, index)) continue;
    ++count.bars;
    count.total += height_of_courses(building, layout.bars[index].first_course, layout.bars[index].last_course);
  }
  return count;
}

}  // namespace stringcourse::supply
