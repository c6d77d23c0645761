#include "setout/marks.hpp"

#include <algorithm>

#include "bond/layout_parts.hpp"
#include "measure/sorting.hpp"

namespace stringcourse::setout {
namespace {

constexpr int kUnitsToAMark = 3;

struct Collector {
  Length step;
  std::vector<Mark> marks;

  Mark& add(MarkKind kind, ExactPosition exact) {
    marks.push_back({.kind = kind, .at = rounded_to(exact.nearest_nanometre(), step), .exact = exact});
    return marks.back();
  }
  Mark& add(MarkKind kind, Length place) { return add(kind, ExactPosition{place.in_nanometres(), 1}); }
};

void collect_blocks(Collector& collector, const Layout& layout, int wall, int course) {
  for (const Run& run : bond::runs_in(layout, wall, course)) {
    int laid = 0;
    for (const Piece& piece : bond::pieces_of(layout, run)) {
      Mark& mark = collector.add(MarkKind::BlockEnd, bond::far_end(piece));
      mark.piece = piece.number;
      mark.third_unit = ++laid % kUnitsToAMark == 0;
    }
  }
}

void collect_openings(Collector& collector, const Building& building, int wall, int course) {
  for (std::size_t index = 0; index < building.openings.size(); ++index) {
    const ResolvedOpening& opening = building.openings[index];
    if (opening.wall != wall || course < opening.first_course || course > opening.last_course) continue;
    collector.add(MarkKind::NearJamb, opening.from_in(course).distance_from_start()).opening = static_cast<int>(index);
    collector.add(MarkKind::FarJamb, opening.to_in(course).distance_from_start()).opening = static_cast<int>(index);
  }
}

void collect_joints_and_bars(Collector& collector, const Building& building, const Layout& layout, int wall,
                             int course) {
  for (const ControlJoint& joint : building.control_joints) {
    if (joint.wall != wall) continue;
    collector.add(MarkKind::JointNearEdge, joint.from.distance_from_start());
    collector.add(MarkKind::JointFarEdge, joint.to.distance_from_start());
  }
  for (const bond::WallBar& bar : bond::bars_on_wall(building, layout, wall)) {
    if (course >= bar.first_course && course <= bar.last_course && bar.centre >= Length())
      collector.add(MarkKind::BarCentre, bar.centre);
  }
}

}  // namespace

std::vector<Mark> running_marks(const Building& building, const Layout& layout, int wall, int course) {
  Collector collector{tape_step(building.tape), {}};
  collect_blocks(collector, layout, wall, course);
  collect_openings(collector, building, wall, course);
  collect_joints_and_bars(collector, building, layout, wall, course);
  sort_stably(collector.marks,
              [](const Mark& a, const Mark& b) { return a.exact != b.exact ? a.exact < b.exact : a.kind < b.kind; });
  return std::move(collector.marks);
}

}  // namespace stringcourse::setout
