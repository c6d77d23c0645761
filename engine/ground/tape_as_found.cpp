#include <algorithm>
#include <cmath>

#include "ground/as_found.hpp"
#include "ground/peg_moves.hpp"
#include "ground/tape_doubt.hpp"
#include "measure/metres.hpp"
#include "measure/sorting.hpp"

namespace stringcourse::ground {
namespace {

/// Farther from the plan than this a taping is looked at for a slip: 2 % of it, at least 4 in.
Length near_enough(Length expected) { return std::max(Length::inches(4), Length::nanometres(expected.in_nanometres() / 50)); }

int corner_named(const Building& building, const std::string& name) {
  for (std::size_t k = 0; k < building.corners.size(); ++k) {
    if (building.corners[k].name == name) return static_cast<int>(k);
  }
  return -1;
}

Spot spot_of(const Building& building, int corner) {
  const PlanPoint& point = building.corners[static_cast<std::size_t>(corner)].point;
  return {metres(point.x), metres(point.y)};
}

double distance(const Spot& a, const Spot& b) {
  const double dx = b.x - a.x, dy = b.y - a.y;
  return std::sqrt(dx * dx + dy * dy);
}

/// A line that was taped before: whether both tapings agree.
void compare_with_first(const Job& job, const std::vector<TapedLine>& lines, TapedLine& line) {
  for (const TapedLine& first : lines) {
    const bool same = (first.from == line.from && first.to == line.to) || (first.from == line.to && first.to == line.from);
    if (!same || first.slip || line.slip) continue;
    line.again = line.read - first.read;
    const double sigma = standard_doubt(tape_reading_error(job));
    line.agrees = tapings_agree({0, 1, metres(first.read), sigma}, {0, 1, metres(line.read), sigma});
    return;
  }
}

std::vector<TapedLine> lines_of(const Job& job, const Building& building, const std::vector<bool>& counts) {
  std::vector<TapedLine> lines;
  for (std::size_t k = 0; k < job.readings.size(); ++k) {
    if (!counts[k] || !job.readings[k].tape) continue;
    const TapeReading& tape = *job.readings[k].tape;
    TapedLine line{.entry = k, .from = corner_named(building, tape.from), .to = corner_named(building, tape.to), .read = tape.length, .expected = {}, .slip = {}, .again = {}, .residual = {}};
    line.expected = length_of(distance(spot_of(building, line.from), spot_of(building, line.to)));
    line.slip = likely_slip(line.read, line.expected, near_enough(line.expected));
    compare_with_first(job, lines, line);
    lines.push_back(std::move(line));
  }
  return lines;
}

/// The net of those corners that have readings, hung on the held corner and the side that leaves it.
struct Net {
  std::vector<int> corners;  // the held one first
  std::vector<NetPoint> points;
  std::vector<NetReading> readings;
  std::vector<std::size_t> lines;  // of each reading
};

Net net_of(const Job& job, const Building& building, const std::vector<TapedLine>& lines) {
  Net net;
  const auto add = [&](int corner) {
    if (!std::ranges::contains(net.corners, corner)) net.corners.push_back(corner);
  };
  std::vector<int> used;
  for (const TapedLine& line : lines) {
    if (!line.slip) used.push_back(line.from), used.push_back(line.to);
  }
  const int wished = job.ground && job.ground->hold ? corner_named(building, *job.ground->hold) : -1;
  if (std::ranges::contains(used, wished)) add(wished);
  sort_stably(used);
  for (const int corner : used) add(corner);
  if (net.corners.empty()) return net;
  // The second point gives the direction: the far end of the side that leaves the held corner, where it was taped.
  const int wall = building.corners[static_cast<std::size_t>(net.corners[0])].leaving;
  for (std::size_t k = 1; wall >= 0 && k < net.corners.size(); ++k) {
    if (building.corners[static_cast<std::size_t>(net.corners[k])].arriving == wall) std::swap(net.corners[1], net.corners[k]);
  }
  for (const int corner : net.corners) net.points.push_back({spot_of(building, corner), false});
  const double sigma = standard_doubt(tape_reading_error(job));
  for (std::size_t k = 0; k < lines.size(); ++k) {
    if (lines[k].slip) continue;
    const auto place = [&](int corner) { return static_cast<int>(std::ranges::find(net.corners, corner) - net.corners.begin()); };
    net.readings.push_back({place(lines[k].from), place(lines[k].to), metres(lines[k].read), sigma});
    net.lines.push_back(k);
  }
  return net;
}

void put_moves(TapeAsFound& found, const Net& net, const Adjusted& adjusted, TapeClass tape) {
  std::vector<Spot> design;
  for (const NetPoint& point : net.points) design.push_back(point.about);
  const std::vector<Spot> ways = moves(overlay_from(design, adjusted.places, 0, 1), design, adjusted.places);
  for (std::size_t k = 0; k < net.corners.size(); ++k) {
    // The tape's own error makes all lines longer or shorter alike: it moves a peg along its line to the held corner.
    const double off = standard_doubt(permitted_error(tape, length_of(distance(design[k], design[0]))));
    const Ellipse ellipse = ellipse_of(adjusted.clouds[k]);
    const double doubt = 2 * together({ellipse.longer, k == 0 ? 0 : off});
    PegMove move{net.corners[k], length_of(ways[k].x), length_of(ways[k].y), length_of(doubt), false, length_of(2 * ellipse.longer), length_of(2 * ellipse.shorter), ellipse.direction};
    move.within_doubt = ways[k].x * ways[k].x + ways[k].y * ways[k].y <= doubt * doubt;
    found.moves.push_back(move);
  }
  sort_stably(found.moves, {}, &PegMove::corner);
}

void put_trouble(TapeAsFound& found, const Net& net, const NetTrouble& trouble) {
  found.state = trouble.kind == NetTrouble::Kind::NotDeterminate ? TapeAsFound::State::NotDeterminate : TapeAsFound::State::Impossible;
  for (const auto& [from, to] : trouble.pairs) {
    found.missing.push_back({net.corners[static_cast<std::size_t>(from)], net.corners[static_cast<std::size_t>(to)]});
  }
  for (const int reading : trouble.readings) found.impossible.push_back(net.lines[static_cast<std::size_t>(reading)]);
}

}  // namespace

Length tape_reading_error(const Job& job) {
  if (job.ground && job.ground->tape_reading) return *job.ground->tape_reading;
  return tape_step(job.tape);
}

TapeAsFound tape_as_found(const Job& job, const Building& building, const std::vector<bool>& counts) {
  TapeAsFound found;
  found.lines = lines_of(job, building, counts);
  const Net net = net_of(job, building, found.lines);
  if (net.readings.empty()) return found;
  found.held = net.corners[0];
  const auto suspects = suspects_of(net.points, net.readings, Datum::CornerAndSide);
  if (!suspects) {
    put_trouble(found, net, suspects.error());
    return found;
  }
  const Adjusted& adjusted = suspects->adjusted;
  found.state = TapeAsFound::State::Adjusted;
  found.suspicion = suspects->suspicion;
  found.freedom = adjusted.freedom, found.agreement = adjusted.agreement;
  found.s0 = adjusted.s0, found.s0_least = adjusted.s0_least, found.s0_most = adjusted.s0_most;
  for (std::size_t k = 0; k < net.lines.size(); ++k) {
    found.lines[net.lines[k]].residual = adjusted.residuals[k];
    found.lines[net.lines[k]].wrong = std::ranges::contains(suspects->wrong, static_cast<int>(k));
  }
  for (const int number : suspects->tape_again) found.tape_again.push_back(net.lines[static_cast<std::size_t>(number)]);
  put_moves(found, net, adjusted, job.ground && job.ground->tape == TapeMake::ClassTwo ? TapeClass::ClassTwo : TapeClass::Steel);
  return found;
}

}  // namespace stringcourse::ground
