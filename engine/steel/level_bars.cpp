// Bars along the wall: in lintels built of units, in bond beams, and round the beams' corners.
#include <algorithm>

#include "bond/layout_parts.hpp"
#include "catalogue/rules.hpp"
#include "steel/bar_room.hpp"

namespace stringcourse::steel {
namespace {

/// Masonry of a beam without a break for its bars, less the cover at both ends.
struct Stretch {
  Length from, to;
  bool at_start_corner = false, at_end_corner = false;  // it reaches round the wall's corner
};

bool at_corner(RunEnd end) { return end == RunEnd::ThroughCorner || end == RunEnd::ButtCorner; }

/// Whether bars run on from one run into the next.
bool runs_on(RunEnd end, RunEnd start, AtControlJoint at_joints) {
  if (end == RunEnd::SlotSide && start == RunEnd::SlotSide) return true;
  return end == RunEnd::ControlJoint && start == RunEnd::ControlJoint && at_joints == AtControlJoint::Pass;
}

std::vector<Stretch> stretches_of(const BarRoom& room, int wall, int course, AtControlJoint at_joints) {
  const auto runs = bond::runs_in(room.layout, wall, course);
  const bond::WallReach reach = bond::reach_of_wall(room.building, room.layout, wall);
  std::vector<Stretch> stretches;
  RunEnd end = RunEnd::Jamb;
  for (const Run& run : runs) {
    const Length to = at_corner(run.at_end) ? reach.to : run.end;
    if (stretches.empty() || !runs_on(end, run.at_start, at_joints))
      stretches.push_back({at_corner(run.at_start) ? reach.from : run.start, to, at_corner(run.at_start)});
    stretches.back().to = to, stretches.back().at_end_corner = at_corner(run.at_end);
    end = run.at_end;
  }
  for (Stretch& stretch : stretches) {
    stretch.from += room.cover;
    stretch.to = stretch.from + down_to_step(stretch.to - room.cover - stretch.from, room.step);
  }
  std::erase_if(stretches, [](const Stretch& stretch) { return stretch.to <= stretch.from; });
  return stretches;
}

bool crosses_joint(const BarRoom& room, int wall) {
  return std::ranges::contains(room.building.control_joints, wall, &ControlJoint::wall);
}

/// Shorter bars are not lapped along a beam: somebody's slip of a unit.
constexpr Length kLeastStock = Length::inches(12);

/// What pieces of one beam have in common.
struct BeamOf {
  const BarRoom& room;
  const BeamBars& bars;
  int wall, course;
  Length lap;

  [[nodiscard]] BarPiece piece(BarUse use, int beside, Length from, Length to) const {
    BarPiece made;
    made.use = use;
    made.wall = wall, made.beside = beside;
    made.first_course = made.last_course = course;
    made.from = from, made.to = to;
    return made;
  }
  /// From lap to lap; the first piece is at most `first` long, the others as long as the stock. None is shorter than
  /// two laps where the stock has room for four.
  [[nodiscard]] std::vector<BarPiece> cut(const Stretch& stretch, int beside, Length first) const {
    std::vector<BarPiece> pieces;
    Length from = stretch.from, most = first;
    const bool splices = room.stock >= lap * 2 && room.stock >= kLeastStock;
    while (splices && stretch.to - from > room.stock) {
      Length to = from + most;
      const Length rest = stretch.to - to + lap;
      if (roomy() && rest < lap * 2) to -= lap * 2 - rest;
      pieces.push_back(piece(BarUse::Beam, beside, from, to));
      pieces.back().lap = lap;
      from = to - lap;
      most = room.stock;
    }
    pieces.push_back(piece(BarUse::Beam, beside, from, stretch.to));
    return pieces;
  }
  [[nodiscard]] bool roomy() const { return room.stock >= lap * 4; }

  /// Every second bar lies the other way round, so that laps are staggered; where laps would still meet, it begins with
  /// half a bar.
  void add_bar(std::vector<BarPiece>& pieces, const Stretch& stretch, int beside) const {
    std::vector<BarPiece> cuts = cut(stretch, beside, room.stock);
    if (beside % 2 == 0 && cuts.size() > 1) {
      const std::vector<BarPiece> round = turned_round(stretch, cuts);
      if (!laps_meet(cuts, round)) cuts = round;
      else if (roomy()) cuts = cut(stretch, beside, down_to_step(room.stock.half_down(), room.step));
    }
    pieces.insert(pieces.end(), cuts.begin(), cuts.end());
  }
  static std::vector<BarPiece> turned_round(const Stretch& stretch, const std::vector<BarPiece>& cuts) {
    std::vector<BarPiece> round;
    for (std::size_t k = cuts.size(); k-- > 0;) {
      BarPiece turned = cuts[k];
      turned.from = stretch.from + (stretch.to - cuts[k].to), turned.to = stretch.from + (stretch.to - cuts[k].from);
      turned.lap = k > 0 ? cuts[k - 1].lap : Length();
      round.push_back(turned);
    }
    return round;
  }
  static bool laps_meet(const std::vector<BarPiece>& one, const std::vector<BarPiece>& other) {
    for (std::size_t i = 0; i + 1 < one.size(); ++i) {
      for (std::size_t k = 0; k + 1 < other.size(); ++k) {
        if (one[i].to > other[k].to - other[k].lap && other[k].to > one[i].to - one[i].lap) return true;
      }
    }
    return false;
  }
};

/// Stretches of all walls in one course; those that the job does not say enough for are left empty.
using CourseStretches = std::vector<std::vector<Stretch>>;

void no_room_at(BarPieces& bars, const Corner& corner, int course, Length lap) {
  bars.findings.push_back(
      {"lap-no-room", "/steel/lap", fact("lap-no-room", {corner.name, course, lap}), "", HoldPoint::Grout});
}

void add_corners(BarPieces& bars, const BeamOf& beam, const CourseStretches& stretches) {
  const BarRoom& room = beam.room;
  for (std::size_t k = 0; k < room.building.corners.size(); ++k) {
    const Corner& corner = room.building.corners[k];
    if (corner.arriving < 0 || corner.leaving < 0) continue;
    const auto& arriving = stretches[static_cast<std::size_t>(corner.arriving)];
    const auto& leaving = stretches[static_cast<std::size_t>(corner.leaving)];
    if (arriving.empty() || !arriving.back().at_end_corner || leaving.empty() || !leaving.front().at_start_corner)
      continue;
    const Stretch &in = arriving.back(), &out = leaving.front();
    if (std::min(in.to - in.from, out.to - out.from) < beam.lap) {
      no_room_at(bars, corner, beam.course, beam.lap);
      continue;
    }
    for (int beside = 1; beside <= beam.bars.count; ++beside) {
      BarPiece made = beam.piece(BarUse::Corner, beside, in.to - beam.lap, in.to);
      made.wall = corner.arriving, made.corner = static_cast<std::int32_t>(k), made.lap = beam.lap;
      bars.pieces.push_back(made);
    }
  }
}

void add_beam(BarPieces& bars, const BarRoom& room, const BeamBars& asked, int course, Length lap) {
  CourseStretches stretches;
  for (int wall = 0; wall < static_cast<int>(room.building.walls.size()); ++wall) {
    const bool known = asked.at_control_joints || !crosses_joint(room, wall);
    stretches.push_back(known ? stretches_of(room, wall, course, asked.at_control_joints.value_or(AtControlJoint::Stop))
                              : std::vector<Stretch>());
    const BeamOf beam{room, asked, wall, course, lap};
    for (const Stretch& stretch : stretches.back()) {
      for (int beside = 1; beside <= asked.count; ++beside) beam.add_bar(bars.pieces, stretch, beside);
    }
  }
  add_corners(bars, {room, asked, 0, course, lap}, stretches);
}

void add_beams(BarPieces& bars, const BarRoom& room) {
  const std::optional<BeamBars>& asked = room.job.steel.beam_bars;
  if (!asked || !room.by) return;
  const Bar* bar = find_bar(asked->size);
  if (bar == nullptr) return;
  const auto lap = lap_length(*room.by, {*bar, clear_in_trough(room.building, *bar, asked->count)}, room.building.tape);
  if (!lap) return;
  for (const Course& course : room.building.courses) {
    if (course.bond_beam) add_beam(bars, room, *asked, course.number, *lap);
  }
}

void add_lintel(BarPieces& bars, const BarRoom& room, const LintelBars& asked, const PlacedLintel& lintel) {
  const ResolvedOpening& opening = opening_of(room.building, lintel.opening);
  if (!opening.lintel || opening.lintel->make != LintelMake::BuiltUp) return;
  BarPiece made;
  made.use = BarUse::Lintel;
  made.wall = opening.wall, made.opening = lintel.opening;
  made.first_course = made.last_course = opening.lintel->first_course;
  made.from = opening.from.distance_from_start() - lintel.start_bearing + room.cover;
  const Length end = opening.to.distance_from_start() + lintel.end_bearing - room.cover;
  made.to = made.from + down_to_step(end - made.from, room.step);
  if (made.to <= made.from) return;
  for (made.beside = 1; made.beside <= asked.count; ++made.beside) bars.pieces.push_back(made);
}

}  // namespace

int most_abreast(const Building& building, const Bar& bar) {
  const Length clearance = building.bars ? building.bars->clearance : bar_clearance(Grout::Coarse);
  const Length apart = std::max(bar.diameter, limit_of("bar-apart", building.tape));
  std::int64_t most = 100;
  for (const Series& series : building.series) {
    const Length inside = series.thickness - series.face_shell * 2 - clearance * 2;
    if (!series.grouts) continue;
    // n diameters and n - 1 gaps take as much as n of both less one gap.
    most = std::min(most, inside < bar.diameter ? 0 : (inside + apart).whole_multiples(bar.diameter + apart));
  }
  return static_cast<int>(most);
}

Length clear_in_trough(const Building& building, const Bar& bar, int count) {
  const Length clearance = building.bars ? building.bars->clearance : bar_clearance(Grout::Coarse);
  Length least = bar.diameter * 100;
  for (const Series& series : building.series) {
    if (!series.grouts) continue;
    const Length inside = series.thickness - series.face_shell * 2;
    const Length alone = (series.thickness - bar.diameter).half_down();
    const Length between =
        count < 2 ? least
                  : Length::nanometres((inside - clearance * 2 - bar.diameter * count).in_nanometres() / (count - 1));
    least = std::min({least, count < 2 ? alone : series.face_shell + clearance, between});
  }
  return std::max(least, Length::nanometres(1));
}

void add_level_bars(BarPieces& bars, const BarRoom& room) {
  if (const std::optional<LintelBars>& asked = room.job.steel.lintel_bars; asked && find_bar(asked->size)) {
    for (const PlacedLintel& lintel : room.layout.lintels) add_lintel(bars, room, *asked, lintel);
  }
  add_beams(bars, room);
}

}  // namespace stringcourse::steel
