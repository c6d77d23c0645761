#include "setout/boards.hpp"

#include <algorithm>
#include <cmath>

#include "setout/marks.hpp"

namespace stringcourse::setout {
namespace {}  // namespace

std::vector<SideBoards> boards_of(const Job& job, const Building& building) {
  std::vector<SideBoards> boards;
  if (!job.setting_out) return boards;
  const SettingOut& asked = *job.setting_out;
  const bool inches = building.tape == Tape::Inches;
  const Length beyond = asked.boards_off.value_or(inches ? Length::feet(4) : Length::millimetres(1200));
  const Length start = asked.first_kerf.value_or(inches ? Length::feet(2) : Length::millimetres(600));
  for (std::size_t k = 0; k < building.walls.size(); ++k) {
    const Wall& wall = building.walls[k];
    if (wall.interior) continue;
    const Length thick = building.series_of(wall).thickness;
    SideBoards side{static_cast<std::int32_t>(k), beyond, {}};
    if (asked.footing_outside) side.kerfs.push_back({KerfKind::FootingOutside, start - *asked.footing_outside});
    side.kerfs.push_back({KerfKind::OuterFace, start});
    side.kerfs.push_back({KerfKind::DowelLine, start + thick.half_down()});
    side.kerfs.push_back({KerfKind::InnerFace, start + thick});
    if (asked.footing_inside) side.kerfs.push_back({KerfKind::FootingInside, start + thick + *asked.footing_inside});
    boards.push_back(std::move(side));
  }
  return boards;
}

Length straight_between(PlanPoint a, PlanPoint b) {
  const int128 x = (b.x - a.x).in_nanometres(), y = (b.y - a.y).in_nanometres();
  const int128 square = x * x + y * y;
  // The double's root is within a few nanometres; whole steps mend it.
  int128 root = static_cast<int128>(std::sqrt(static_cast<double>(square)));
  while (root * root > square) --root;
  while ((root + 1) * (root + 1) <= square) ++root;
  if (square - root * root > root) ++root;  // past the middle between two: (root + 1/2)^2 = root^2 + root + 1/4
  return Length::nanometres(static_cast<std::int64_t>(root));
}

std::vector<ExpectedTape> expected_tapes(const Building& building) {
  std::vector<ExpectedTape> tapes;
  const int count = static_cast<int>(building.corners.size());
  const auto is_side = [&](int a, int b) {
    return std::ranges::any_of(building.walls, [&](const Wall& wall) {
      return !wall.interior && wall.start.kind == EndKind::Corner && wall.end.kind == EndKind::Corner &&
             ((wall.start.corner == a && wall.end.corner == b) || (wall.start.corner == b && wall.end.corner == a));
    });
  };
  for (int from = 0; from < count; ++from) {
    for (int to = from + 1; to < count; ++to) {
      const bool side = is_side(from, to);
      if (count > 8 && !side && to - from != 2) continue;
      tapes.push_back({from, to,
                       straight_between(building.corners[static_cast<std::size_t>(from)].point,
                                        building.corners[static_cast<std::size_t>(to)].point),
                       side});
    }
  }
  return tapes;
}

std::vector<SquareCheck> square_checks(const Building& building, std::optional<Length> room) {
  std::vector<SquareCheck> checks;
  const Length unit = building.tape == Tape::Inches ? Length::feet(1) : Length::millimetres(100);
  for (std::size_t k = 0; k < building.corners.size(); ++k) {
    const Corner& corner = building.corners[k];
    if (corner.leaving < 0 || corner.arriving < 0) continue;
    const Length a = wall_of(building, corner.leaving).actual, b = wall_of(building, corner.arriving).actual;
    const Length most = room.value_or(std::max(a, b));
    const auto multiples = [&](int along_a, int along_b) {
      return std::min(std::min(a, most).whole_multiples(unit * along_a),
                      std::min(b, most).whole_multiples(unit * along_b));
    };
    const std::int64_t four_a = multiples(4, 3), three_a = multiples(3, 4);
    const std::int64_t times = std::max(four_a, three_a);
    if (times < 1) continue;
    const bool long_a = four_a >= three_a;
    SquareCheck check{static_cast<std::int32_t>(k),
                      unit * (times * (long_a ? 4 : 3)),
                      unit * (times * (long_a ? 3 : 4)),
                      unit * (times * 5),
                      {}};
    // L c dc / (a b), rounded up to a nanometre.
    const int128 above =
        static_cast<int128>(std::max(a, b).in_nanometres()) * 5 * tape_step(building.tape).in_nanometres();
    const int128 below = static_cast<int128>(times) * 12 * unit.in_nanometres();
    check.slip_costs = Length::nanometres(static_cast<std::int64_t>((above + below - 1) / below));
    checks.push_back(check);
  }
  return checks;
}

}  // namespace stringcourse::setout
