// What is to be said of bars as pieces: what the job leaves open, and where a rule is not kept.
#include <algorithm>
#include <array>

#include "steel/bar_room.hpp"

namespace stringcourse::steel {
namespace {

bool has_beams(const BarRoom& room) { return std::ranges::any_of(room.building.courses, &Course::bond_beam); }

bool has_built_lintels(const BarRoom& room) {
  return std::ranges::any_of(room.layout.lintels, [&](const PlacedLintel& lintel) {
    const auto& resolved = opening_of(room.building, lintel.opening).lintel;
    return resolved && resolved->make == LintelMake::BuiltUp;
  });
}

void find_unsaid(BarPieces& bars, const BarRoom& room) {
  const Steel& steel = room.job.steel;
  const auto say = [&](std::string_view says, std::string place) {
    bars.unsaid.push_back({fact(says), std::move(place)});
  };
  if (!bars.laps.empty() && !steel.lap) say("lap-not-picked", "/steel/lap");
  if (const std::string_view lacks = steel.lap ? lap_lacks(lap_by(*steel.lap)) : ""; !lacks.empty())
    say(lacks, "/steel/lap");
  if (has_beams(room) && !steel.beam_bars) say("beam-bars-not-said", "/steel/beam_bars");
  if (has_beams(room) && steel.beam_bars && !steel.beam_bars->at_control_joints &&
      !room.building.control_joints.empty())
    say("beam-bars-at-joints", "/steel/beam_bars");
  if (has_built_lintels(room) && !steel.lintel_bars) say("lintel-bars-not-said", "/steel/lintel_bars");
}

/// Where the lap that is used is shorter than the equation gives for the same bar and wall.
void find_short_laps(BarPieces& bars, const BarRoom& room) {
  if (!room.by || room.by->rule == LapRule::Tms402To2008 || room.by->rule == LapRule::Tms402From2011) return;
  const Tape tape = room.building.tape;
  for (const LapTable& table : bars.laps) {
    const LapChoice& equation = table.choices.front();
    const std::optional<Length> used = lap_length(*room.by, {*find_bar(table.size), table.clear}, tape);
    if (!used || *used >= equation.length) continue;
    const Fact where =
        table.wall < 0 ? fact("lap-of-beams") : fact("lap-of-wall", {wall_of(room.building, table.wall).name});
    bars.findings.push_back({"lap-below-equation", "/steel/lap",
                             fact("lap-below-equation", {table.size, *used, where, table.clear, equation.length}),
                             "lap-tms-402-to-2008", HoldPoint::Grout});
  }
}

/// Dowels that stand up less than the equation gives.
void find_short_dowels(BarPieces& bars, const BarRoom& room) {
  const std::optional<Length>& lap = room.job.steel.dowel_lap;
  if (!lap || bars.laps.empty() || bars.laps.front().use != BarUse::Upright) return;
  const LapTable& table = bars.laps.front();
  const LapChoice& equation = table.choices.front();
  if (*lap >= equation.length) return;
  bars.findings.push_back({"lap-below-equation", "/steel/dowel_lap",
                           fact("dowel-lap-below-equation",
                                {table.size, *lap, fact("lap-of-wall", {wall_of(room.building, table.wall).name}),
                                 table.clear, equation.length}),
                           "lap-tms-402-to-2008", HoldPoint::Pour});
}

void find_long_pieces(BarPieces& bars, const BarRoom& room) {
  const BarPiece* longest = nullptr;
  int count = 0;
  for (const BarPiece& piece : bars.pieces) {
    if (piece.length() <= room.stock) continue;
    ++count;
    if (longest == nullptr || piece.length() > longest->length()) longest = &piece;
  }
  if (longest == nullptr) return;
  bars.findings.push_back({"bar-longer-than-stock", "/steel/bar_stock",
                           fact("bar-longer-than-stock",
                                {count, room.stock, wall_of(room.building, longest->wall).name, longest->length()}),
                           "bar-stock", HoldPoint::Grout});
}

/// The least clear width of the cells of a series, or across the trough of its beams alone.
enum class In { Cell, Trough };
Length least_clear(const Series& series, In in) {
  Length least = series.thickness - series.face_shell * 2;
  if (in == In::Trough) return least;
  for (const CellSpan& cell : series.full_cells) least = std::min(least, cell.to - cell.from);
  return least;
}

/// The thickest bar of the catalogue's same family that keeps the rule; null: none does.
const Bar* thickest_for(const Bar& bar, Length clear) {
  const Bar* best = nullptr;
  for (const Bar& one : catalogue_bars()) {
    if (one.name.front() != bar.name.front() || one.diameter * 2 > clear) continue;
    if (best == nullptr || one.diameter > best->diameter) best = &one;
  }
  return best;
}

void find_thick(BarPieces& bars, const BarRoom& room, const std::string& size, In in, std::string place) {
  const Bar* bar = find_bar(size);
  if (bar == nullptr) return;
  for (const Series& series : room.building.series) {
    const Length clear = least_clear(series, in);
    if (!series.grouts || bar->diameter * 2 <= clear) continue;
    const Bar* other = thickest_for(*bar, clear);
    bars.findings.push_back({"bar-too-thick", place,
                             other == nullptr ? fact("bar-too-thick-none", {size, clear, series.title})
                                              : fact("bar-too-thick", {size, clear, series.title, other->name}),
                             "bar-half-cell", HoldPoint::Pour});
  }
}

/// More bars than lie side by side in a trough.
template <class Asked>
void find_abreast(BarPieces& bars, const BarRoom& room, const Asked& asked, std::string place) {
  const Bar* bar = find_bar(asked.size);
  if (bar == nullptr) return;
  const int most = most_abreast(room.building, *bar);
  if (asked.count <= most) return;
  const Fact way = most == 0 ? fact("bars-abreast-none") : fact("bars-abreast-most", {most});
  bars.findings.push_back({"bar-clearance-across", std::move(place),
                           fact("bars-abreast", {asked.count, asked.size, way}), "bar-apart", HoldPoint::Lintels});
}

}  // namespace

void find_bar_troubles(BarPieces& bars, const BarRoom& room) {
  const Steel& steel = room.job.steel;
  find_unsaid(bars, room);
  find_short_dowels(bars, room);
  find_short_laps(bars, room);
  find_long_pieces(bars, room);
  if (room.building.bars) find_thick(bars, room, room.building.bars->size, In::Cell, "/steel/bars/size");
  if (steel.beam_bars && has_beams(room)) find_abreast(bars, room, *steel.beam_bars, "/steel/beam_bars/count");
  if (steel.lintel_bars && has_built_lintels(room))
    find_abreast(bars, room, *steel.lintel_bars, "/steel/lintel_bars/count");
  if (steel.beam_bars) find_thick(bars, room, steel.beam_bars->size, In::Trough, "/steel/beam_bars/size");
  if (steel.lintel_bars) find_thick(bars, room, steel.lintel_bars->size, In::Trough, "/steel/lintel_bars/size");
}

}  // namespace stringcourse::steel
