#include "answer/next_readings.hpp"

#include <algorithm>
#include <set>
#include <utility>

#include "answer/answer.hpp"

namespace stringcourse {
namespace {

using What = NextReading::What;
using Line = std::array<int, 2>;  // corners

/// Where a corner stands on one of its walls.
NextReading::Spot spot_of(const Building& building, int corner) {
  const Corner& one = building.corners[static_cast<std::size_t>(corner)];
  if (one.leaving >= 0) return {one.leaving, Length()};
  return {one.arriving, wall_of(building, one.arriving).actual};
}

class Wanted {
 public:
  explicit Wanted(const Answer& answer) : answer_(answer), building_(answer.building) {}

  /// `poured`: lines that were taped before the pour are not counted.
  void add_lines(bool poured) {
    static const ground::TapeAsFound kNone;
    const ground::TapeAsFound& tape = poured && answer_.found.tape.of_lines ? kNone : answer_.found.tape;
    tape_ = &tape;
    for (const std::size_t again : tape.tape_again) add_line({tape.lines[again].from, tape.lines[again].to}, true);
    if (!tape.tape_again.empty()) return;  // which line is wrong comes first
    for (const Wall& wall : building_.walls) {
      if (wall.start.kind == EndKind::Corner && wall.end.kind == EndKind::Corner && !wall.interior)
        add_untaped({wall.start.corner, wall.end.corner});
    }
    if (building_.corners.size() == 4) add_untaped({0, 2}), add_untaped({1, 3});
    else if (all_.empty())
      for (const Line& line : tape.missing) add_line(line, is_taped(line));
    if (all_.empty() && !tape.missing.empty()) add_line(tape.missing.front(), true);
  }

  void add_rods() {
    const auto& levels = answer_.found.levels;
    for (int corner = 0; corner < static_cast<int>(building_.corners.size()); ++corner) {
      const std::string& name = building_.corners[static_cast<std::size_t>(corner)].name;
      if (levels && std::ranges::any_of(levels->stations, [&](const ground::Station& one) {
            return one.name == name && one.surface == Surface::Bearing && !one.far;
          }))
        continue;
      add_rod(name, {}, spot_of(building_, corner));
    }
    if (!levels || !levels->bed) return;
    for (std::size_t k = 0; k < levels->bed->lack_places.size(); ++k) {
      const ground::WallPlace& place = levels->bed->lack_places[k];
      const Wall& wall = wall_of(building_, place.wall);
      const bool start = place.along == Length();
      if ((start ? wall.start : wall.end).kind == EndKind::Corner) continue;  // listed as a corner
      add_rod(wall.name + (start ? "-1" : "-2"), wall.name, {place.wall, place.along});
    }
  }

  /// An edge each outer side, near its start; a second one at the far end of the longest, which tells the turn.
  void add_edges() {
    int longest = -1;
    for (int wall = 0; wall < static_cast<int>(building_.walls.size()); ++wall) {
      const Wall& one = wall_of(building_, wall);
      if (one.interior) continue;
      if (longest < 0 || one.actual > wall_of(building_, longest).actual) longest = wall;
      if (edges_of(one.name) == 0) add_edge(wall, inset(one));
    }
    if (longest < 0 || answer_.slab.fit) return;
    const Wall& one = wall_of(building_, longest);
    if (edges_of(one.name) < 2) add_edge(longest, one.actual - inset(one));
  }

  void add_dowels() {
    std::set<std::pair<std::int32_t, std::int32_t>> read;
    for (const steel::FoundDowel& found : answer_.found_dowels) read.insert({found.wall, found.number});
    for (const steel::Dowel& dowel : answer_.dowels) {
      if (read.contains({dowel.wall, dowel.number})) continue;
      const Wall& wall = wall_of(building_, dowel.wall);
      NextReading next{What::Dowel, fact("read-dowel", {dowel.number, wall.name, dowel.along})};
      next.on = wall.name, next.at = dowel.along, next.expected = dowel.off_face;
      next.spots = {{dowel.wall, dowel.along}};
      all_.push_back(std::move(next));
    }
  }

  std::vector<NextReading> take() { return std::move(all_); }

 private:
  [[nodiscard]] bool is_taped(const Line& line) const {
    return std::ranges::any_of(tape_->lines, [&](const ground::TapedLine& one) {
      return !one.slip && !one.wrong && std::minmax(one.from, one.to) == std::minmax(line[0], line[1]);
    });
  }
  void add_untaped(const Line& line) {
    if (!is_taped(line)) add_line(line, false);
  }
  void add_line(const Line& line, bool again) {
    const auto corner = [&](int number) { return building_.corners[static_cast<std::size_t>(number)]; };
    const Corner from = corner(line[0]), to = corner(line[1]);
    NextReading next{What::Tape, fact(again ? "read-line-again" : "read-line", {from.name, to.name}), again};
    next.from = from.name, next.to = to.name;
    next.expected = ground::distance_planned(building_, line[0], line[1]);
    next.spots = {spot_of(building_, line[0]), spot_of(building_, line[1])};
    all_.push_back(std::move(next));
  }
  void add_rod(const std::string& station, const std::string& on, NextReading::Spot spot) {
    NextReading next{What::Rod,
                     on.empty() ? fact("read-rod-corner", {station}) : fact("read-rod-place", {on, spot.along})};
    next.station = station, next.on = on, next.at = spot.along, next.spots = {spot};
    all_.push_back(std::move(next));
  }
  void add_edge(int wall, Length at) {
    const std::string& name = wall_of(building_, wall).name;
    NextReading next{What::Edge, fact("read-edge", {name, at})};
    next.on = name, next.at = at, next.spots = {{wall, at}};
    all_.push_back(std::move(next));
  }
  [[nodiscard]] std::size_t edges_of(const std::string& wall) const {
    const std::vector<bool> counts = ground::entries_that_count(answer_.job, building_);
    std::size_t count = 0;
    for (std::size_t k = 0; k < counts.size(); ++k) {
      const auto& edge = answer_.job.readings[k].edge;
      count += counts[k] && edge && edge->on == wall;
    }
    return count;
  }
  /// 2 ft or 600 mm in from the corner, so that a broken edge there is not read.
  [[nodiscard]] Length inset(const Wall& wall) const {
    const Length usual = building_.tape == Tape::Inches ? Length::feet(2) : Length::millimetres(600);
    return std::min(usual, wall.actual.half_down());
  }

  const Answer& answer_;
  const Building& building_;
  const ground::TapeAsFound* tape_ = nullptr;  // of add_lines()
  std::vector<NextReading> all_;
};

}  // namespace

std::vector<NextReading> readings_to_take(const Answer& answer, HoldPoint point) {
  if (point != HoldPoint::Pour && point != HoldPoint::FirstCourse) return {};
  Wanted wanted(answer);
  wanted.add_lines(point == HoldPoint::FirstCourse);
  if (point == HoldPoint::Pour) return wanted.take();
  wanted.add_rods();
  wanted.add_edges();
  wanted.add_dowels();
  return wanted.take();
}

}  // namespace stringcourse
