#include "proof/facts.hpp"

#include <algorithm>

#include "proof/conceded.hpp"

namespace stringcourse::proof {
namespace {

// Bounds that keep every product below inside 64 bits: 2 x 10^4 joints x 10 km, and 2 x 10^4 x 10^4 x kWidestJoint.
constexpr std::uint32_t kMostPieces = 10'000;
constexpr Length kWidestJoint = Length::millimetres(1'000);
constexpr Length kLongestPiece = Length::millimetres(100'000);

/// Whether `index` points into a list of `size`, or is the "none" of -1 where that is allowed.
bool inside(int index, std::size_t size) { return index >= 0 && static_cast<std::size_t>(index) < size; }
bool inside_or_none(int index, std::size_t size) { return index == -1 || inside(index, size); }

bool end_is_sound(const Building& b, const WallEnd& end) {
  if (end.kind == EndKind::Corner) return inside(end.corner, b.corners.size());
  if (end.kind == EndKind::Junction) return inside(end.junction, b.junctions.size());
  return true;
}

bool series_is_sound(const Series& s) {
  const Length zero;
  return s.full > zero && s.half > zero && s.half < s.full && s.thickness > zero && s.joint >= zero &&
         s.cut_step > zero && s.pitch() > zero;
}

bool walls_are_sound(const Building& b) {
  return std::ranges::all_of(b.walls, [&](const Wall& wall) {
    return inside(wall.series, b.series.size()) && end_is_sound(b, wall.start) && end_is_sound(b, wall.end);
  });
}

bool links_are_sound(const Building& b) {
  const std::size_t walls = b.walls.size();
  return std::ranges::all_of(b.corners,
                             [&](const Corner& c) { return inside(c.arriving, walls) && inside(c.leaving, walls); }) &&
         std::ranges::all_of(b.junctions,
                             [&](const Junction& j) { return inside(j.main, walls) && inside(j.abutting, walls); }) &&
         std::ranges::all_of(b.openings, [&](const ResolvedOpening& o) { return inside(o.wall, walls); }) &&
         std::ranges::all_of(b.control_joints, [&](const ControlJoint& c) { return inside(c.wall, walls); }) &&
         std::ranges::all_of(b.fixed_bars, [&](const FixedBar& f) {
           return inside(f.wall, walls) && inside_or_none(f.corner, b.corners.size()) &&
                  inside_or_none(f.opening, b.openings.size());
         });
}

Violations check_building_shape(const Job& job, const Building& b) {
  Violations found;
  if (b.series.empty() || !std::ranges::all_of(b.series, series_is_sound))
    found.push_back(violation(kBuilding, "", "no series, or one with a size that is no size"));
  else if (!walls_are_sound(b) || !links_are_sound(b))
    found.push_back(violation(kBuilding, "", "a wall, corner, junction or opening points to nothing"));
  else if (b.bars && b.bars->spacing && *b.bars->spacing <= Length())
    found.push_back(violation(kBuilding, "", "a bar spacing that is no length"));
  else if (b.walls.size() != job.outline.sides.size() + job.interior_walls.size())
    found.push_back(violation(kBuilding, "", "not one wall for each side and interior wall of the job"));
  else if (b.openings.size() != job.openings.size())
    found.push_back(violation(kBuilding, "", "not one opening for each opening of the job"));
  return found;
}

bool run_is_sound(const Building& b, const Run& run) {
  return inside(run.wall, b.walls.size()) && run.course >= 1 &&
         static_cast<std::size_t>(run.course) <= b.courses.size() && run.start <= run.end && -kLongest <= run.start &&
         run.end <= kLongest && run.piece_count <= kMostPieces;
}

bool comes_before(const Run& a, const Run& b) {
  if (a.wall != b.wall) return a.wall < b.wall;
  if (a.course != b.course) return a.course < b.course;
  return a.start < b.start || (a.start == b.start && a.end < b.end);
}

Violations check_pieces_of_runs(const Layout& layout) {
  std::size_t next = 0;
  for (const Run& run : layout.runs) {
    if (run.first_piece != next) return {violation(kRuns, "", "pieces are not in the order of runs")};
    next += run.piece_count;
    if (next > layout.pieces.size()) return {violation(kRuns, "", "a run counts more pieces than there are")};
  }
  if (next != layout.pieces.size()) return {violation(kRuns, "", "pieces are left over that belong to no run")};
  return {};
}

Violations check_layout_shape(const Building& b, const Layout& layout) {
  if (layout.arriving_through.size() != b.corners.size() || layout.entering_first.size() != b.junctions.size())
    return {violation(kRuns, "", "not one bit for each corner and junction")};
  for (const Run& run : layout.runs)
    if (!run_is_sound(b, run))
      return {violation(kRuns, "", "a run stands in no wall or course, or ends before it starts")};
  for (std::size_t i = 1; i < layout.runs.size(); ++i)
    if (!comes_before(layout.runs[i - 1], layout.runs[i]))
      return {violation(kRuns, "", "runs are not in order, or doubled")};
  for (const Piece& piece : layout.pieces)
    if (piece.start.denominator <= 0 || piece.length <= Length() || kLongestPiece < piece.length)
      return {violation(kPieces, "", "a piece starts at no place or has no length")};
  for (const PlacedBar& bar : layout.bars)
    if (!inside(bar.wall, b.walls.size()) || !inside_or_none(bar.corner, b.corners.size()))
      return {violation(kBars, "", "a bar stands in no wall")};
  for (const PlacedLintel& lintel : layout.lintels)
    if (!inside(lintel.opening, b.openings.size())) return {violation(kLintels, "", "a lintel lies over no opening")};
  return check_pieces_of_runs(layout);
}

/// Number of control joints of the wall that stand before `at`.
int panel_at(const Building& b, int wall, Length at) {
  int count = 0;
  for (const ControlJoint& joint : b.control_joints)
    if (joint.wall == wall && joint.from.distance_from_start() < at) ++count;
  return count;
}

/// The opening whose one-piece lintel ends at `at` in this course, or -1.
int lintel_ending_at(const Building& b, const Layout& layout, const Run& run, Length at) {
  for (const PlacedLintel& placed : layout.lintels) {
    const ResolvedOpening& opening = b.openings[static_cast<std::size_t>(placed.opening)];
    if (opening.wall != run.wall || !opening.lintel || opening.lintel->make != LintelMake::OnePiece) continue;
    const bool in_course = run.course >= opening.lintel->first_course &&
                           run.course < opening.lintel->first_course + opening.lintel->courses;
    const Length from = opening.from.distance_from_start() - placed.start_bearing;
    const Length to = opening.to.distance_from_start() + placed.end_bearing;
    if (in_course && (at == from || at == to)) return placed.opening;
  }
  return -1;
}

RunFacts read_run(const Building& b, const Layout& layout, const Run& run) {
  RunFacts facts;
  facts.run = &run;
  facts.slack = run.end - run.start;
  for (std::uint32_t i = 0; i < run.piece_count; ++i) {
    facts.pieces.push_back(layout.begin_of(run) + i);
    facts.slack -= facts.pieces.back()->length;
  }
  const std::int64_t count = run.piece_count;
  facts.joints =
      std::max<std::int64_t>(0, count - 1 + (has_joint(run.at_start) ? 1 : 0) + (has_joint(run.at_end) ? 1 : 0));
  facts.panel = panel_at(b, run.wall, run.end);
  return facts;
}

/// The joint number k of a run: S/m wide, so its middle stands at start + pieces before it + (2k + 1) S / 2m.
HeadJoint joint_at(const RunFacts& facts, std::int64_t k, Length pieces_before) {
  const std::int64_t m = facts.joints;
  const std::int64_t numerator =
      2 * m * (facts.run->start + pieces_before).in_nanometres() + (2 * k + 1) * facts.slack.in_nanometres();
  HeadJoint joint;
  joint.middle = {numerator, 2 * m};
  joint.panel = facts.panel;
  return joint;
}

std::vector<HeadJoint> joints_of(const Building& b, const Layout& layout, const RunFacts& facts) {
  std::vector<HeadJoint> joints;
  const Run& run = *facts.run;
  const std::int64_t leading = has_joint(run.at_start) ? 1 : 0;
  if (facts.slack < Length() || kWidestJoint * facts.joints < facts.slack) return joints;  // broken: rule 1 says so
  if (is_bare(b.series_of(b.walls[static_cast<std::size_t>(run.wall)]), facts)) return joints;
  Length before;
  std::int64_t pieces_passed = 0;
  for (std::int64_t k = 0; k < facts.joints; ++k) {
    for (; pieces_passed < k + 1 - leading; ++pieces_passed)
      before += facts.pieces[static_cast<std::size_t>(pieces_passed)]->length;
    joints.push_back(joint_at(facts, k, before));
  }
  if (joints.empty()) return joints;
  if (has_joint(run.at_start)) {
    joints.front().tied = run.at_start == RunEnd::TiedJunction;
    if (run.at_start == RunEnd::LintelEnd) joints.front().lintel = lintel_ending_at(b, layout, run, run.start);
  }
  if (has_joint(run.at_end)) {
    joints.back().tied = joints.back().tied || run.at_end == RunEnd::TiedJunction;
    if (run.at_end == RunEnd::LintelEnd) joints.back().lintel = lintel_ending_at(b, layout, run, run.end);
  }
  return joints;
}

}  // namespace

Violations check_shape(const Job& job, const Building& building, const Layout& layout) {
  Violations found = check_building_shape(job, building);
  return found.empty() ? check_layout_shape(building, layout) : found;
}

Facts gather(const Building& building, const Layout& layout) {
  Facts facts;
  facts.walls.resize(building.walls.size());
  for (WallFacts& wall : facts.walls) wall.courses.resize(building.courses.size());
  for (const ControlJoint& joint : building.control_joints) ++facts.walls[static_cast<std::size_t>(joint.wall)].panels;
  for (const Stopped& stop : layout.stopped)
    if (inside(stop.wall, facts.walls.size())) facts.walls[static_cast<std::size_t>(stop.wall)].stopped = true;
  for (const Run& run : layout.runs) {
    // A corner that is all jamb: nothing stands there. Two ends that want a joint find none there.
    if (run.start == run.end && run.piece_count == 0 && !(has_joint(run.at_start) && has_joint(run.at_end))) continue;
    RunFacts read = read_run(building, layout, run);
    CourseFacts& course =
        facts.walls[static_cast<std::size_t>(run.wall)].courses[static_cast<std::size_t>(run.course - 1)];
    for (HeadJoint& joint : joints_of(building, layout, read)) course.joints.push_back(joint);
    course.runs.push_back(std::move(read));
  }
  return facts;
}

const PlacedLintel* placed_lintel(const Layout& layout, int opening) {
  for (const PlacedLintel& lintel : layout.lintels)
    if (lintel.opening == opening) return &lintel;
  return nullptr;
}

bool closer_than(const ExactPosition& a, const ExactPosition& b, Length apart) {
  const int128 left = static_cast<int128>(a.numerator) * b.denominator;
  const int128 right = static_cast<int128>(b.numerator) * a.denominator;
  const int128 distance = left < right ? right - left : left - right;
  return distance < static_cast<int128>(a.denominator) * b.denominator * apart.in_nanometres();
}

}  // namespace stringcourse::proof
