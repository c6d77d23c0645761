#include "bond/place.hpp"

#include <algorithm>

#include "bond/lintel_units.hpp"

namespace stringcourse::bond {
namespace {

template <typename List>
const auto& at(const List& list, std::int32_t index) {
  return list[static_cast<std::size_t>(index)];
}

/// What the yard has of one series.
struct Stock {
  const Building* building;
  const Series* series;

  [[nodiscard]] bool has(UnitKind kind) const {
    return std::ranges::find(building->stocked, kind) != building->stocked.end() &&
           std::ranges::find(series->made, kind) != series->made.end();
  }
  /// `whole` or `half` by the piece's length, if the yard has it; else `otherwise`.
  [[nodiscard]] UnitKind of_pair(UnitKind whole, UnitKind half, bool is_half, UnitKind otherwise) const {
    const UnitKind wanted = is_half ? half : whole;
    return has(wanted) ? wanted : otherwise;
  }
};

/// The openings of one panel: only they can have a lintel over its pieces.
using Openings = std::vector<std::int32_t>;

struct Standing {
  const Openings* openings;
  const Run* run;
  const Piece* piece;
  bool first, last;
};

/// What a piece is in a lintel built of units. The lowest course spans, and is closed underneath where the yard has
/// such units; the courses over it are open, so that the grout of all of them is one.
enum class LintelPart { None, Upper, Lowest };

LintelPart lintel_part(const Building& building, const Standing& here) {
  LintelPart part = LintelPart::None;
  for (const std::int32_t index : *here.openings) {
    const ResolvedOpening& opening = at(building.openings, index);
    if (!in_lintel(opening, *here.run, *here.piece)) continue;
    if (here.run->course == opening.lintel->first_course) return LintelPart::Lowest;
    part = LintelPart::Upper;
  }
  return part;
}

UnitKind kind_of(const Building& building, const Standing& here) {
  const Series& series = building.series_of(at(building.walls, here.run->wall));
  const Course& course = at(building.courses, here.run->course - 1);
  const Stock stock{&building, &series};
  const bool is_half = here.piece->cut == CutEnd::None && here.piece->length == series.half;
  const UnitKind plain = is_half ? UnitKind::Half : UnitKind::Full;
  const bool through = (here.first && here.run->at_start == RunEnd::ThroughCorner) ||
                       (here.last && here.run->at_end == RunEnd::ThroughCorner);
  // In every course: where the other wall begins follows from the set's leg.
  if (through && !is_half && series.corner_set && building.corner_sets_stocked) return UnitKind::CornerSet;
  if (course.half_high) return stock.of_pair(UnitKind::HalfHigh, UnitKind::HalfHighHalf, is_half, plain);
  const UnitKind beam = is_half ? UnitKind::BondBeamHalf : UnitKind::BondBeam,
                 trough = is_half ? UnitKind::LintelHalf : UnitKind::Lintel;
  const LintelPart part = lintel_part(building, here);
  const bool at_corner = through && !is_half;
  if (part == LintelPart::Lowest && !at_corner && stock.has(trough)) return trough;
  if (course.bond_beam && stock.has(beam)) return beam;
  if (at_corner) {
    if (part != LintelPart::None && stock.has(beam)) return beam;  // the lintel's bars and grout end in it
    return stock.has(UnitKind::Corner) ? UnitKind::Corner : plain;
  }
  if (part != LintelPart::None) return stock.has(beam) ? beam : stock.has(trough) ? trough : plain;
  const bool beside_joint = (here.first && here.run->at_start == RunEnd::ControlJoint) ||
                            (here.last && here.run->at_end == RunEnd::ControlJoint);
  if (beside_joint) return stock.of_pair(UnitKind::Sash, UnitKind::SashHalf, is_half, plain);
  return plain;
}

/// One run of one course, its pieces placed.
void place_run(const Building& building, const PlacedPanel& placed, const Row& row, const RowRun& from,
               const std::vector<Chosen>& chosen, std::int32_t course, Layout& layout) {
  const Length origin = Length::nanometres(placed.site->from);
  Run run;
  run.wall = placed.site->wall;
  run.course = course;
  run.start = Length::nanometres(from.start) + origin;
  run.end = Length::nanometres(from.end) + origin;
  run.at_start = from.at_start;
  run.at_end = from.at_end;
  run.first_piece = static_cast<std::uint32_t>(layout.pieces.size());
  run.piece_count = static_cast<std::uint32_t>(chosen.size());
  const std::int64_t starts = has_joint(from.at_start) ? 1 : 0;
  run.joints = static_cast<std::int32_t>(std::max<std::int64_t>(
      static_cast<std::int64_t>(chosen.size()) - 1 + starts + (has_joint(from.at_end) ? 1 : 0), 0));
  run.slack = run.end - run.start;
  for (const Chosen& piece : chosen) run.slack -= Length::nanometres(piece.length);
  const std::int64_t m = std::max<std::int64_t>(run.joints, 1);
  std::int64_t before = 0;
  for (std::size_t k = 0; k < chosen.size(); ++k) {
    Piece piece;
    piece.length = Length::nanometres(chosen[k].length);
    piece.cut = chosen[k].cut;
    piece.make_up = chosen[k].choice < 0 || row.choices[static_cast<std::size_t>(chosen[k].choice)].make_up;
    const std::int64_t joints_before = starts + static_cast<std::int64_t>(k);
    piece.start =
        ExactPosition{(run.start.in_nanometres() + before) * m + joints_before * run.slack.in_nanometres(), m};
    before += chosen[k].length;
    piece.kind = kind_of(building, Standing{&placed.site->openings, &run, &piece, k == 0, k + 1 == chosen.size()});
    layout.pieces.push_back(piece);
  }
  layout.runs.push_back(run);
}

std::size_t piece_count(const std::vector<PlacedPanel>& panels) {
  std::size_t count = 0;
  for (const PlacedPanel& placed : panels) {
    if (placed.answer == nullptr) continue;
    for (const std::int32_t row : placed.panel.course_rows) {
      for (const auto& run : placed.answer->rows[static_cast<std::size_t>(row)]) count += run.size();
    }
  }
  return count;
}

}  // namespace

void place_pieces(const Building& building, const std::vector<PlacedPanel>& panels, Layout& layout) {
  std::vector<std::vector<const PlacedPanel*>> by_wall(building.walls.size());
  for (const PlacedPanel& panel : panels) by_wall[static_cast<std::size_t>(panel.site->wall)].push_back(&panel);
  layout.pieces.reserve(piece_count(panels));
  for (const auto& on_wall : by_wall) {
    for (std::size_t c = 0; c < building.courses.size(); ++c) {
      std::int32_t number = 0;
      for (const PlacedPanel* placed : on_wall) {
        if (placed->answer == nullptr) continue;
        const auto row = static_cast<std::size_t>(placed->panel.course_rows[c]);
        const std::vector<RowRun>& runs = placed->panel.rows[row].runs;
        for (std::size_t r = 0; r < runs.size(); ++r) {
          const std::size_t first = layout.pieces.size();
          place_run(building, *placed, placed->panel.rows[row], runs[r], placed->answer->rows[row][r],
                    static_cast<std::int32_t>(c) + 1, layout);
          for (std::size_t p = first; p < layout.pieces.size(); ++p) layout.pieces[p].number = ++number;
        }
      }
    }
  }
}

}  // namespace stringcourse::bond
