#include "answer/inspection.hpp"

#include <algorithm>
#include <map>
#include <string_view>

#include "answer/answer.hpp"
#include "bond/layout_parts.hpp"
#include "laying/log.hpp"
#include "measure/digits.hpp"

namespace stringcourse {
namespace {

bool is_plain(char one) {
  return ('a' <= one && one <= 'z') || ('A' <= one && one <= 'Z') || ('0' <= one && one <= '9');
}

/// Letters and digits of ASCII; all else, once, a hyphen.
std::string plain(std::string_view name) {
  std::string text;
  for (const char one : name) {
    if (is_plain(one)) text += one;
    else if (!text.empty() && text.back() != '-') text += '-';
  }
  while (!text.empty() && text.back() == '-') text.pop_back();
  return text;
}

/// What the photos of each side are called: its name, or its place in the order where that is no name of its own.
std::vector<std::string> photo_sides(const Building& building) {
  std::map<std::string, int> used;
  for (const Wall& wall : building.walls) ++used[plain(wall.name)];
  std::vector<std::string> names;
  for (std::size_t k = 0; k < building.walls.size(); ++k) {
    const std::string name = plain(building.walls[k].name);
    names.push_back(name.empty() || used[name] > 1 ? "side" + number_text(k + 1) + "-" + name : name);
  }
  return names;
}

std::string padded(std::int64_t number) { return number < 10 ? "0" + number_text(number) : number_text(number); }

/// Whether what a bar has to pass, listed on some wall, is this bar's.
bool passes(const Building& building, const PlacedBar& bar, const supply::BarThrough& through) {
  const Wall& wall = wall_of(building, through.wall);
  const PlanPoint point = plan_point(wall_of(building, bar.wall), bar.centre, bar.off_face);
  const bond::SeenFrom seen = bond::seen_from(wall, point);
  return seen.along == through.centre && seen.depth >= Length() && seen.depth <= building.series_of(wall).thickness;
}

/// Units with floors over bars, and lintels in one piece.
std::vector<supply::BarThrough> all_through(const Answer& answer) {
  std::vector<supply::BarThrough> all = supply::floors_to_break_out(answer.building, answer.layout);
  for (const supply::LintelAsLaid& lintel : answer.lintels) {
    if (lintel.soffit == supply::Soffit::OnePiece) all.insert(all.end(), lintel.bars.begin(), lintel.bars.end());
  }
  return all;
}

std::int32_t cleanout_of(const Answer& answer, std::uint32_t bar, std::int32_t course) {
  const auto& placed = answer.layout.cleanouts;
  const auto found =
      std::ranges::find_if(placed, [&](const PlacedCleanout& one) { return one.bar == bar && one.course == course; });
  return found == placed.end() ? -1 : static_cast<std::int32_t>(found - placed.begin());
}

/// Numbers bars that have no dowel, side by side.
class Photos {
 public:
  explicit Photos(const Answer& answer) : job_(plain(answer.job.name)), sides_(photo_sides(answer.building)) {}

  [[nodiscard]] std::string name_of(std::size_t pour, int wall, std::int32_t dowel) {
    const std::string number = dowel > 0 ? padded(dowel) : "x" + number_text(++others_[{pour, wall}]);
    return (job_.empty() ? "" : job_ + "-") + "p" + number_text(pour) + "-" + sides_[static_cast<std::size_t>(wall)] +
           "-" + number;
  }

 private:
  std::string job_;
  std::vector<std::string> sides_;
  std::map<std::pair<std::size_t, int>, int> others_;
};

bool is_in(const PourToInspect& pour, std::int32_t course) {
  return pour.first_course <= course && course <= pour.last_course;
}

/// The last entry that counts and ticks this line; -1: none does.
std::int32_t ticked_by(const Answer& answer, const std::vector<std::size_t>& ticks, const LineToTick& line) {
  for (auto k = ticks.rbegin(); k != ticks.rend(); ++k) {
    const LookedAt& tick = *answer.job.laid[*k].looked_at;
    if (tick.what == line.what && tick.course == line.course && tick.on == wall_of(answer.building, line.wall).name &&
        is_place_shown(tick.at, line.at, answer.building.tape))
      return static_cast<std::int32_t>(*k);
  }
  return -1;
}

/// Entries that count and tick something, in the log's order.
std::vector<std::size_t> ticks_of(const Answer& answer) {
  const auto& log = answer.job.laid;
  std::vector<std::size_t> ticks;
  if (std::ranges::none_of(log, [](const LaidEntry& entry) { return entry.looked_at.has_value(); })) return ticks;
  const std::vector<bool> counts = laying::entries_that_count(answer.job);
  for (std::size_t k = 0; k < log.size(); ++k) {
    if (counts[k] && log[k].looked_at) ticks.push_back(k);
  }
  return ticks;
}

void add_lines_of(PourToInspect& pour, const Answer& answer, std::size_t at) {
  const BarToInspect& bar = pour.bars[at];
  const PlacedBar& placed = answer.layout.bars[bar.bar];
  const auto of = static_cast<std::int32_t>(at);
  pour.lines.push_back({LookedAtWhat::Bar, placed.wall, pour.first_course, placed.centre, of});
  if (bar.cleanout >= 0)
    pour.lines.push_back({LookedAtWhat::Cleanout, placed.wall, pour.first_course, placed.centre, of});
  for (std::size_t k = 0; k < bar.through.size(); ++k) {
    const supply::BarThrough& unit = bar.through[k];
    pour.lines.push_back({LookedAtWhat::Floor, unit.wall, unit.course, unit.centre, of, static_cast<std::int32_t>(k)});
  }
}

/// Walls with a run in this course.
std::vector<std::int32_t> walls_in(const Answer& answer, std::int32_t course) {
  std::vector<std::int32_t> walls;
  for (const Run& run : answer.layout.runs) {
    if (run.course == course && (walls.empty() || walls.back() != run.wall)) walls.push_back(run.wall);
  }
  return walls;
}

void add_lines(PourToInspect& pour, const Answer& answer, const std::vector<std::size_t>& ticks) {
  for (std::size_t at = 0; at < pour.bars.size(); ++at) add_lines_of(pour, answer, at);
  for (const std::int32_t course : pour.beams) {
    for (const std::int32_t wall : walls_in(answer, course))
      pour.lines.push_back({LookedAtWhat::Beam, wall, course, Length(), -1});
  }
  for (const std::int32_t index : pour.lintels) {
    const ResolvedOpening& opening = opening_of(answer.building, index);
    pour.lines.push_back(
        {LookedAtWhat::Lintel, opening.wall, opening.lintel->first_course, opening.from.distance_from_start(), index});
  }
  for (LineToTick& line : pour.lines) line.ticked_by = ticked_by(answer, ticks, line);
}

void add_lintels(PourToInspect& pour, const Answer& answer) {
  for (const supply::LintelAsLaid& lintel : answer.lintels) {
    const ResolvedOpening& opening = opening_of(answer.building, lintel.opening);
    if (lintel.soffit != supply::Soffit::OnePiece && opening.lintel && is_in(pour, opening.lintel->first_course))
      pour.lintels.push_back(lintel.opening);
  }
}

}  // namespace

bool is_place_shown(Length shown, Length place, Tape tape) { return magnitude(shown - place) * 2 <= tape_step(tape); }

std::vector<PourToInspect> to_inspect(const Answer& answer) {
  std::vector<PourToInspect> pours;
  const std::vector<supply::BarThrough> through = all_through(answer);
  Photos photos(answer);
  const std::vector<std::size_t> ticks = ticks_of(answer);
  for (const supply::GroutPour& grout : answer.tallies.grout) {
    PourToInspect pour{grout.first_course, grout.last_course};
    for (const supply::GroutColumn& column : grout.columns) {
      const PlacedBar& bar = answer.layout.bars[column.bar];
      BarToInspect one{column.bar, dowel_number(answer, bar), cleanout_of(answer, column.bar, grout.first_course)};
      for (const supply::BarThrough& unit : through) {
        if (is_in(pour, unit.course) && passes(answer.building, bar, unit)) one.through.push_back(unit);
      }
      one.photo = photos.name_of(pours.size() + 1, bar.wall, one.number);
      one.short_name = one.number > 0 ? number_text(one.number) : one.photo.substr(one.photo.rfind('-') + 1);
      pour.bars.push_back(std::move(one));
    }
    for (const Course& course : answer.building.courses) {
      if (course.bond_beam && is_in(pour, course.number)) pour.beams.push_back(course.number);
    }
    add_lintels(pour, answer);
    add_lines(pour, answer, ticks);
    pours.push_back(std::move(pour));
  }
  return pours;
}

}  // namespace stringcourse
