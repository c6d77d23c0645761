// A convex corner of the outline stepped in, which makes an L of a rectangle; and filled again.
#include <algorithm>
#include <utility>

#include "edits/edit.hpp"
#include "job/words.hpp"

namespace stringcourse {
namespace {

using Edited = std::expected<Job, Fact>;

Turn outward_turn(const Outline& outline) {
  return outline.building_on.value_or(Hand::Right) == Hand::Right ? Turn::Right : Turn::Left;
}
Turn other_turn(Turn turn) { return turn == Turn::Right ? Turn::Left : Turn::Right; }

/// The first letter, then letter and number, that no corner has.
std::string free_corner(const Outline& outline) {
  const auto taken = [&](const std::string& name) {
    return std::ranges::any_of(outline.sides, [&](const Side& side) { return side.from == name || side.to == name; });
  };
  for (int round = 0;; ++round) {
    for (char letter = 'A'; letter <= 'Z'; ++letter) {
      std::string name(1, letter);
      if (round > 0) name += number_text(round);
      if (!taken(name)) return name;
    }
  }
}

std::string name_of(const Side& side) { return side.name.empty() ? side.from + side.to : side.name; }

/// What one side is called, and which of its corners places are measured from; by how much that corner moves along it.
struct Renamed {
  std::string side, corner;
};

void follow(std::string& on, Place& place, const Renamed& was, const Renamed& now, Length nearer) {
  if (on != was.side) return;
  on = now.side;
  if (place.from != was.corner) return;
  place.from = now.corner, place.at.length -= nearer;
}

/// Plates and trusses; of a row whose first truss would stand before the corner, the next one behind it is the first.
void follow(Top& top, const Renamed& was, const Renamed& now, Length nearer) {
  std::ranges::replace(top.plate_on, was.side, now.side);
  for (Trusses& row : top.trusses) {
    follow(row.on, row.place, was, now, nearer);
    while (row.place.at.length < Length() && row.spacing > Length()) row.place.at.length += row.spacing;
  }
}

/// All that stands in a side goes with its name, and stays where it is though the corner that it is measured from
/// moves.
void follow(Job& job, const Renamed& was, const Renamed& now, Length nearer) {
  for (Opening& one : job.openings) follow(one.on, one.place, was, now, nearer);
  for (InteriorWall& one : job.interior_walls) follow(one.off, one.place, was, now, nearer);
  for (PlacedControlJoint& one : job.control_joints.placed) follow(one.on, one.place, was, now, nearer);
  if (job.top) follow(*job.top, was, now, nearer);
  if (!job.steel.bars) return;
  for (DimensionedBar& one : job.steel.bars->dimensioned) follow(one.on, one.place, was, now, nearer);
}

bool has_next(const Outline& outline, std::size_t side) {
  return side < outline.sides.size() && (outline.closed || side + 1 < outline.sides.size());
}

}  // namespace

Edited with_step(const Job& job, const StepCorner& step) {
  if (!has_next(job.outline, step.side)) return std::unexpected(fact("edit-no-side"));
  Job changed = job;
  std::vector<Side>& sides = changed.outline.sides;
  const std::size_t next = (step.side + 1) % sides.size();
  const Turn out = outward_turn(job.outline);
  if (sides[step.side].turn != out) return std::unexpected(fact("edit-corner-turns-in", {sides[step.side].to}));
  const bool fits = step.along > Length() && step.across > Length() && step.along < sides[step.side].length.length &&
                    step.across < sides[next].length.length;
  if (!fits) return std::unexpected(fact("edit-step-too-large", {sides[step.side].to}));
  const Renamed before{name_of(sides[step.side]), sides[step.side].to}, after{name_of(sides[next]), before.corner};
  const std::string first = free_corner(changed.outline);
  sides[step.side].to = first, sides[step.side].length.length -= step.along;
  const std::string second = free_corner(changed.outline);
  sides[next].from = second, sides[next].length.length -= step.across;
  follow(changed, before, {name_of(sides[step.side]), first}, step.along);
  follow(changed, after, {name_of(sides[next]), second}, step.across);
  const Side in{"", first, before.corner, {step.across}, other_turn(out), sides[step.side].series};
  const Side on{"", before.corner, second, {step.along}, out, sides[next].series};
  const auto place = sides.begin() + static_cast<std::ptrdiff_t>(step.side) + 1;
  sides.insert(place, {in, on});
  return changed;
}

Edited without_step(const Job& job, const FillCorner& fill) {
  const std::size_t count = job.outline.sides.size();
  const Turn out = outward_turn(job.outline);
  const auto side = [&](std::size_t at) -> const Side& { return job.outline.sides[(fill.side + at) % count]; };
  if (fill.side >= count || count < 6 || (!job.outline.closed && fill.side + 3 >= count))
    return std::unexpected(fact("edit-no-side"));
  if (side(0).turn != out || side(1).turn != other_turn(out) || side(2).turn != out)
    return std::unexpected(fact("edit-no-step", {side(0).to}));
  Job changed = job;
  std::vector<Side>& sides = changed.outline.sides;
  Side &before = sides[fill.side], &after = sides[(fill.side + 3) % count];
  const Renamed was{name_of(before), before.to}, next{name_of(after), after.from};
  before.length.length += side(2).length.length, after.length.length += side(1).length.length;
  before.to = after.from = side(1).to;
  follow(changed, was, {name_of(before), before.to}, -side(2).length.length);
  follow(changed, next, {name_of(after), after.from}, -side(1).length.length);
  const auto goes = [&](const Side& one) { return one.from == was.corner || one.to == next.corner; };
  for (const Side& one : sides) {
    if (changed.top && goes(one)) std::erase(changed.top->plate_on, name_of(one));
  }
  std::erase_if(sides, goes);
  return changed;
}

}  // namespace stringcourse
