#include <algorithm>
#include <cmath>
#include <map>
#include <optional>
#include <set>
#include <utility>

#include "catalogue/rules.hpp"
#include "ground/as_found.hpp"
#include "ground/peg_moves.hpp"
#include "ground/tape_doubt.hpp"
#include "measure/metres.hpp"
#include "measure/sorting.hpp"

namespace stringcourse::ground {
namespace {

/// Farther from the plan than this a taping is looked at for a slip: 2 % of it, at least 4 in.
Length near_enough(Length expected) {
  return std::max(Length::inches(4), Length::nanometres(expected.in_nanometres() / 50));
}

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

/// Lines that were taped before, by their corners.
using FirstTapings = std::map<std::pair<int, int>, std::size_t>;

/// A line that was taped before: whether both tapings agree.
void compare_with_first(const Job& job, const std::vector<TapedLine>& lines, FirstTapings& firsts, TapedLine& line) {
  if (line.slip) return;
  const auto pair = std::minmax(line.from, line.to);
  const auto [known, fresh] = firsts.try_emplace({pair.first, pair.second}, lines.size());
  if (fresh) return;
  const TapedLine& first = lines[known->second];
  line.again = line.read - first.read;
  const double sigma = standard_doubt(tape_reading_error(job));
  line.agrees = tapings_agree({0, 1, metres(first.read), sigma}, {0, 1, metres(line.read), sigma});
}

/// Whether some taping that counts is of this.
bool any_of(const Job& job, const std::vector<bool>& counts, std::optional<Taped> of) {
  for (std::size_t k = 0; k < job.readings.size(); ++k) {
    if (counts[k] && job.readings[k].tape && job.readings[k].tape->of == of) return true;
  }
  return false;
}

std::vector<TapedLine> lines_of(const Job& job, const Building& building, const std::vector<bool>& counts) {
  std::vector<TapedLine> lines;
  FirstTapings firsts;
  const bool poured = any_of(job, counts, Taped::Poured);  // beside it the lines before the pour no longer count
  for (std::size_t k = 0; k < job.readings.size(); ++k) {
    if (!counts[k] || !job.readings[k].tape) continue;
    const TapeReading& tape = *job.readings[k].tape;
    if (poured && tape.of == Taped::Lines) continue;
    TapedLine line;
    line.entry = k, line.from = corner_named(building, tape.from), line.to = corner_named(building, tape.to);
    line.read = tape.length;
    line.expected = length_of(distance(spot_of(building, line.from), spot_of(building, line.to)));
    line.slip = likely_slip(line.read, line.expected, near_enough(line.expected));
    compare_with_first(job, lines, firsts, line);
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
  std::set<int> used;
  for (const TapedLine& line : lines) {
    if (!line.slip) used.insert(line.from), used.insert(line.to);
  }
  const int wished = job.ground && job.ground->hold ? corner_named(building, *job.ground->hold) : -1;
  if (used.erase(wished) > 0) net.corners.push_back(wished);
  net.corners.insert(net.corners.end(), used.begin(), used.end());
  if (net.corners.empty()) return net;
  // The second point gives the direction: the far end of the side that leaves the held corner, where it was taped.
  const int wall = building.corners[static_cast<std::size_t>(net.corners[0])].leaving;
  for (std::size_t k = 1; wall >= 0 && k < net.corners.size(); ++k) {
    if (building.corners[static_cast<std::size_t>(net.corners[k])].arriving == wall)
      std::swap(net.corners[1], net.corners[k]);
  }
  for (const int corner : net.corners) net.points.push_back({spot_of(building, corner), false});
  const double sigma = standard_doubt(tape_reading_error(job));
  std::vector<int> place(building.corners.size(), -1);
  for (std::size_t k = 0; k < net.corners.size(); ++k)
    place[static_cast<std::size_t>(net.corners[k])] = static_cast<int>(k);
  for (std::size_t k = 0; k < lines.size(); ++k) {
    if (lines[k].slip) continue;
    const int from = place[static_cast<std::size_t>(lines[k].from)], to = place[static_cast<std::size_t>(lines[k].to)];
    net.readings.push_back({from, to, metres(lines[k].read), sigma});
    net.lines.push_back(k);
  }
  return net;
}

void put_moves(TapeAsFound& found, const Net& net, const Adjusted& adjusted, TapeMake tape) {
  std::vector<Spot> design;
  for (const NetPoint& point : net.points) design.push_back(point.about);
  const std::vector<Spot> ways = moves(overlay_from(design, adjusted.places, 0, 1), design, adjusted.places);
  for (std::size_t k = 0; k < net.corners.size(); ++k) {
    // The tape's own error makes all lines longer or shorter alike: it moves a peg along its line to the held corner.
    const double tapes = standard_doubt(permitted_error(tape, length_of(distance(design[k], design[0]))));
    const Ellipse ellipse = ellipse_of(adjusted.clouds[k]);
    const double doubt = 2 * together({ellipse.longer, k == 0 ? 0 : tapes});
    PegMove move{net.corners[k],
                 length_of(ways[k].x),
                 length_of(ways[k].y),
                 length_of(doubt),
                 false,
                 length_of(2 * ellipse.longer),
                 length_of(2 * ellipse.shorter),
                 ellipse.direction,
                 {},
                 {},
                 Verdict::NotRead};
    const double off = std::sqrt(ways[k].x * ways[k].x + ways[k].y * ways[k].y);
    move.within_doubt = off <= doubt;
    move.off = length_of(off), move.allowed = corner_allowed(length_of(distance(design[k], design[0])));
    move.verdict = judged(move.allowed - move.off, move.doubt);
    found.moves.push_back(move);
  }
  sort_stably(found.moves, {}, &PegMove::corner);
}

void put_trouble(TapeAsFound& found, const Net& net, const NetTrouble& trouble) {
  found.state = trouble.kind == NetTrouble::Kind::NotDeterminate ? TapeAsFound::State::NotDeterminate
                                                                 : TapeAsFound::State::Impossible;
  for (const int reading : trouble.readings) found.impossible.push_back(net.lines[static_cast<std::size_t>(reading)]);
}

/// Of the net of all corners: the lines that would hold its shape.
std::vector<std::array<int, 2>> lines_missing(const Building& building, const std::vector<TapedLine>& lines) {
  std::vector<NetPoint> points;
  for (std::size_t k = 0; k < building.corners.size(); ++k)
    points.push_back({spot_of(building, static_cast<int>(k)), false});
  std::vector<NetReading> readings;
  for (const TapedLine& line : lines) {
    if (!line.slip && !line.wrong) readings.push_back({line.from, line.to, 1, 1});
  }
  if (points.size() < 2) return {};
  if (points.size() <= kMostTapedCorners) return missing_pairs(points, readings, Datum::CornerAndSide);
  std::set<int> taped;
  for (const NetReading& reading : readings) taped.insert(reading.from), taped.insert(reading.to);
  for (int corner = 0; corner < static_cast<int>(points.size()); ++corner) {
    if (!taped.contains(corner)) return {{corner == 0 ? 1 : 0, corner}};
  }
  return {};
}

/// The longest line that was not taped, or where all were the longest of them again: it checks a shape that just holds.
std::vector<std::array<int, 2>> line_that_checks(const Building& building, const std::vector<TapedLine>& lines) {
  std::set<std::pair<int, int>> taped;
  for (const TapedLine& line : lines) taped.insert(std::minmax(line.from, line.to));
  std::array<int, 2> best{};
  std::pair<bool, double> best_rank;  // not taped, length
  for (int a = 0; a < static_cast<int>(building.corners.size()); ++a) {
    for (int b = a + 1; b < static_cast<int>(building.corners.size()); ++b) {
      const std::pair rank{!taped.contains({a, b}), distance(spot_of(building, a), spot_of(building, b))};
      if (rank > best_rank) best = {a, b}, best_rank = rank;
    }
  }
  return {best};
}

/// All readings of one line that count, added up.
struct Mean {
  std::array<int, 2> corners{};
  Length sum;
  int count = 0;
  Length length() const { return Length::nanometres(sum.in_nanometres() / count); }
};

std::vector<Mean> means_of(const std::vector<TapedLine>& lines) {
  std::map<std::pair<int, int>, Mean> by_line;
  for (const TapedLine& line : lines) {
    if (line.slip || line.wrong) continue;
    Mean& mean = by_line[std::minmax(line.from, line.to)];
    mean.corners = {std::min(line.from, line.to), std::max(line.from, line.to)};
    mean.sum += line.read, ++mean.count;
  }
  std::vector<Mean> means;
  for (const auto& [corners, mean] : by_line) means.push_back(mean);
  return means;
}

/// Twice the middle of two corners, and the square of their distance: both are alike for the diagonals of a rectangle.
struct Middle {
  Length x, y;
  int128 square;
  friend bool operator==(const Middle&, const Middle&) = default;
};
Middle middle_of(const Building& building, const std::array<int, 2>& corners) {
  const PlanPoint &a = building.corners[static_cast<std::size_t>(corners[0])].point,
                  &b = building.corners[static_cast<std::size_t>(corners[1])].point;
  const int128 dx = (b.x - a.x).in_nanometres(), dy = (b.y - a.y).in_nanometres();
  return {a.x + b.x, a.y + b.y, dx * dx + dy * dy};
}

std::vector<Diagonals> diagonals_of(const Job& job, const Building& building, const std::vector<TapedLine>& lines) {
  const std::vector<Mean> means = means_of(lines);
  const Length allowed = limit_of("diagonals-alike", job.tape);
  std::vector<Diagonals> all;
  for (std::size_t i = 0; i < means.size(); ++i) {
    for (std::size_t k = i + 1; k < means.size(); ++k) {
      if (!(middle_of(building, means[i].corners) == middle_of(building, means[k].corners))) continue;
      const bool swap = means[i].length() < means[k].length();
      const Mean &one = means[swap ? k : i], &other = means[swap ? i : k];
      Diagonals found{one.corners, other.corners, one.length() - other.length(), allowed, {}, {}};
      const double sigma = standard_doubt(tape_reading_error(job));
      found.doubt = length_of(2 * sigma * std::sqrt(1.0 / one.count + 1.0 / other.count));
      found.verdict = judged(found.allowed - found.difference, found.doubt);
      all.push_back(found);
    }
  }
  return all;
}

Verdict worst(Verdict a, Verdict b) {
  if (a == Verdict::DoesNotFit || b == Verdict::DoesNotFit) return Verdict::DoesNotFit;
  return a == Verdict::CannotTell ? a : b;
}

void judge(TapeAsFound& found, const Job& job, const Building& building) {
  found.missing = lines_missing(building, found.lines);
  if (found.state != TapeAsFound::State::Adjusted) return;
  if (found.suspicion == Suspicion::NotLocatable) {
    found.verdict = Verdict::CannotTell;
    return;
  }
  found.diagonals = diagonals_of(job, building, found.lines);
  if (found.missing.empty() && found.freedom <= 0) found.missing = line_that_checks(building, found.lines);
  if (!found.missing.empty()) return;
  found.verdict = Verdict::Fits;
  for (const PegMove& move : found.moves) {
    if (move.corner != found.held) found.verdict = worst(found.verdict, move.verdict);
  }
  for (const Diagonals& pair : found.diagonals) found.verdict = worst(found.verdict, pair.verdict);
}

}  // namespace

Length distance_planned(const Building& building, int from, int to) {
  return length_of(distance(spot_of(building, from), spot_of(building, to)));
}

Length corner_allowed(Length from_held) {
  const auto [within, over, most] = tolerance_of("place-in-plan");
  if (from_held <= over) return within;
  const int128 grown = static_cast<int128>(within.in_nanometres()) * from_held.in_nanometres() / over.in_nanometres();
  return std::min(most, Length::nanometres(static_cast<std::int64_t>(grown)));
}

Length tape_reading_error(const Job& job) {
  if (job.ground && job.ground->tape_reading) return *job.ground->tape_reading;
  return tape_step(job.tape);
}

namespace {

void adjust_net(TapeAsFound& found, const Job& job, const Net& net) {
  found.held = net.corners[0];
  if (net.corners.size() > kMostTapedCorners) {
    found.state = TapeAsFound::State::TooLarge;
    return;
  }
  const auto suspects = suspects_of(net.points, net.readings, Datum::CornerAndSide);
  if (!suspects) return put_trouble(found, net, suspects.error());
  const Adjusted& adjusted = suspects->adjusted;
  found.state = TapeAsFound::State::Adjusted;
  found.suspicion = suspects->suspicion;
  found.freedom = adjusted.freedom, found.agreement = adjusted.agreement;
  found.s0 = adjusted.s0, found.s0_least = adjusted.s0_least, found.s0_most = adjusted.s0_most;
  const std::set<int> wrong(suspects->wrong.begin(), suspects->wrong.end());
  const bool told = found.suspicion == Suspicion::Located;
  for (std::size_t k = 0; k < net.lines.size(); ++k) {
    found.lines[net.lines[k]].residual = adjusted.residuals[k];
    found.lines[net.lines[k]].wrong = told && wrong.contains(static_cast<int>(k));
  }
  for (const int number : suspects->tape_again) found.tape_again.push_back(net.lines[static_cast<std::size_t>(number)]);
  // Nothing is moved on the word of tapings of which one is wrong.
  if (found.suspicion == Suspicion::NotLocatable) return;
  put_moves(found, net, adjusted, tape_of(job));
}

}  // namespace

TapeAsFound tape_as_found(const Job& job, const Building& building, const std::vector<bool>& counts) {
  TapeAsFound found;
  found.lines = lines_of(job, building, counts);
  found.of_lines =
      any_of(job, counts, Taped::Lines) && !any_of(job, counts, Taped::Poured) && !any_of(job, counts, std::nullopt);
  const Net net = net_of(job, building, found.lines);
  if (net.readings.empty()) return found;
  adjust_net(found, job, net);
  judge(found, job, building);
  return found;
}

}  // namespace stringcourse::ground
