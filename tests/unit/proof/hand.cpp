#include "hand.hpp"

#include <algorithm>
#include <set>

namespace stringcourse::hand {
namespace {

Piece piece_of_letter(char letter, Length make_up) {
  Piece piece;
  switch (letter) {
    case 'F': piece.length = in(15, 5); break;
    case 'C':
      piece.length = in(15, 5);
      piece.kind = UnitKind::CornerSet;
      break;
    case 'L':
      piece.length = in(15, 5);
      piece.kind = UnitKind::Lintel;
      break;
    case 'H':
      piece.length = in(7, 5);
      piece.kind = UnitKind::Half;
      break;
    case 'T':
      piece.length = in(11, 5);
      piece.cut = CutEnd::End;
      break;
    case 't':
      piece.length = in(11, 5);
      piece.cut = CutEnd::Start;
      break;
    case 'Q':
      piece.length = in(3, 5);
      piece.cut = CutEnd::End;
      break;
    case 'q':
      piece.length = in(3, 5);
      piece.cut = CutEnd::Start;
      break;
    default:
      piece.length = make_up;
      piece.cut = CutEnd::End;
      piece.make_up = true;
      break;
  }
  return piece;
}

void add_wall(Plan& plan, Length actual, WallEnd start, WallEnd end, PlanPoint point, Heading heading) {
  Wall wall;
  wall.name =
      plan.job.outline.sides[plan.building.walls.size()].from + plan.job.outline.sides[plan.building.walls.size()].to;
  wall.actual = actual;
  wall.start = start;
  wall.end = end;
  wall.start_point = point;
  wall.heading = heading;
  wall.place = "/outline/sides/" + std::to_string(plan.building.walls.size());
  plan.building.walls.push_back(wall);
}

PlanPoint stepped(PlanPoint point, Heading heading, Length length) {
  if (heading == Heading::West) point.x -= length;
  if (heading == Heading::East) point.x += length;
  if (heading == Heading::North) point.y += length;
  if (heading == Heading::South) point.y -= length;
  return point;
}

}  // namespace

Plan begin(int courses, const std::string& series) {
  Plan plan;
  Job& job = plan.job;
  job.units.series = series;
  job.units.stocked = std::vector<UnitKind>{UnitKind::Full, UnitKind::Half};
  job.heights.courses = courses;
  Building& b = plan.building;
  b.series = {*find_series(series)};
  b.stocked = {UnitKind::Full, UnitKind::Half};
  b.joint = in(0, 3);
  b.joint_least = in(0, 2);
  b.joint_most = in(0, 4);
  b.least_piece = in(3, 5);
  b.cuts = {in(11, 5), in(3, 5)};
  b.corner_sets_stocked = false;
  for (int k = 1; k <= courses; ++k) {  // tops stand 8 in apart, the first on the datum
    Course course;
    course.number = k;
    course.unit_height = in(7, 5);
    course.top = in(8 * (k - 1));
    b.courses.push_back(course);
  }
  return plan;
}

void add_free_wall(Plan& plan, Length nominal) {
  plan.job.outline.closed = false;
  Side side;
  side.from = "A";
  side.to = "B";
  side.length = {nominal, Basis::Nominal};
  plan.job.outline.sides.push_back(side);
  add_wall(plan, nominal - in(0, 3), {}, {}, {}, Heading::West);
}

void add_outline(Plan& plan, const std::vector<int>& nominal_inches, std::string_view turns) {
  const std::size_t count = nominal_inches.size();
  PlanPoint point;
  Heading heading = Heading::West;
  for (std::size_t i = 0; i < count; ++i) {
    Side side;
    side.from = std::string(1, static_cast<char>('A' + i));
    side.to = std::string(1, static_cast<char>('A' + (i + 1) % count));
    side.length = {in(nominal_inches[i]), Basis::Nominal};
    side.turn = turns[i] == 'R' ? Turn::Right : Turn::Left;
    plan.job.outline.sides.push_back(side);
    const char before = turns[(i + count - 1) % count];
    // 3/8 less between two convex corners, as planned between a convex and a re-entrant one, 3/8 more between two of
    // those.
    const int eighths = (before == 'L' ? 3 : 0) + (turns[i] == 'L' ? 3 : 0) - 3;
    const Length actual = Length::sixteenths(16 * nominal_inches[i] + 2 * eighths);
    const int start_corner = static_cast<int>((i + count - 1) % count), end_corner = static_cast<int>(i);
    add_wall(plan, actual, {EndKind::Corner, start_corner, -1}, {EndKind::Corner, end_corner, -1}, point, heading);
    point = stepped(point, heading, actual);
    Corner corner;
    corner.name = side.to;
    corner.convex = turns[i] == 'R';
    corner.arriving = static_cast<int>(i);
    corner.leaving = static_cast<int>((i + 1) % count);
    corner.point = point;
    plan.building.corners.push_back(corner);
    heading = static_cast<Heading>((static_cast<int>(heading) + (turns[i] == 'R' ? 1 : 3)) % 4);
  }
}

void lay(Plan& plan, int wall, int course, Length from, Length to, RunEnd at_start, RunEnd at_end, std::string_view row,
         Length make_up) {
  Run run;
  run.wall = wall;
  run.course = course;
  run.start = from;
  run.end = to;
  run.at_start = at_start;
  run.at_end = at_end;
  run.piece_count = static_cast<std::uint32_t>(row.size());
  plan.layout.runs.push_back(run);
  for (char letter : row) plan.layout.pieces.push_back(piece_of_letter(letter, make_up));
}

void close(Layout& layout) {
  std::uint32_t first = 0;
  std::int32_t number = 0;
  for (std::size_t r = 0; r < layout.runs.size(); ++r) {
    Run& run = layout.runs[r];
    if (r == 0 || layout.runs[r - 1].wall != run.wall || layout.runs[r - 1].course != run.course) number = 0;
    run.first_piece = first;
    run.joints = static_cast<std::int32_t>(run.piece_count) - 1 + (has_joint(run.at_start) ? 1 : 0) +
                 (has_joint(run.at_end) ? 1 : 0);
    run.slack = run.end - run.start;
    for (std::uint32_t i = 0; i < run.piece_count; ++i) run.slack -= layout.pieces[first + i].length;
    const std::int64_t m = run.joints > 0 ? run.joints : 1;
    std::int64_t place = run.start.in_nanometres() * m + (has_joint(run.at_start) ? run.slack.in_nanometres() : 0);
    for (std::uint32_t i = 0; i < run.piece_count; ++i) {
      Piece& piece = layout.pieces[first + i];
      piece.start = {place, m};
      piece.number = ++number;
      place += piece.length.in_nanometres() * m + run.slack.in_nanometres();
    }
    first += run.piece_count;
  }
}

void settle(Plan& plan) {
  const proof::Certificate certificate = proof::check(plan.job, plan.building, plan.layout);
  plan.layout.cost = certificate.cost;
  plan.layout.cut_lengths = certificate.cut_lengths;
}

std::string broken(const Plan& plan) {
  std::set<std::string> rules;
  for (const proof::Violation& v : proof::check(plan.job, plan.building, plan.layout).violations) rules.insert(v.rule);
  std::string text;
  for (const std::string& rule : rules) text += (text.empty() ? "" : ", ") + rule;
  return text;
}

std::string told(const Plan& plan) {
  std::string text;
  for (const proof::Violation& v : proof::check(plan.job, plan.building, plan.layout).violations)
    text += v.rule + " | " + v.where + " | " + v.text + "\n";
  return text;
}

Run& run_of(Plan& plan, int wall, int course, int index) {
  const auto run =
      std::ranges::find_if(plan.layout.runs, [&](const Run& r) { return r.wall == wall && r.course == course; });
  return *(run + index);
}

Piece& piece_of(Plan& plan, int wall, int course, int run, int piece) {
  return plan.layout.pieces[run_of(plan, wall, course, run).first_piece + static_cast<std::uint32_t>(piece)];
}

void relay(Plan& plan, int wall, int course, int run, std::string_view row, Length make_up) {
  Run& target = run_of(plan, wall, course, run);
  const auto first = plan.layout.pieces.begin() + target.first_piece;
  const auto place = plan.layout.pieces.erase(first, first + target.piece_count);
  std::vector<Piece> pieces;
  for (char letter : row) pieces.push_back(piece_of_letter(letter, make_up));
  plan.layout.pieces.insert(place, pieces.begin(), pieces.end());
  target.piece_count = static_cast<std::uint32_t>(row.size());
  close(plan.layout);
}

}  // namespace stringcourse::hand
