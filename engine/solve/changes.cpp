#include "solve/changes.hpp"

#include <algorithm>
#include <array>
#include <map>
#include <span>
#include <utility>

#include "bond/layout_parts.hpp"
#include "laying/as_laid.hpp"
#include "measure/sorting.hpp"
#include "setout/marks.hpp"
#include "solve/found_places.hpp"

namespace stringcourse {
namespace {

using CourseOfWall = std::pair<int, int>;  // wall, course

/// The sentence of each kind's name, as job files have it.
constexpr std::array<std::string_view, kKindCount> kKindNames{
    "kind-full",      "kind-half",           "kind-corner",    "kind-corner-set",     "kind-open-end", "kind-open-both",
    "kind-bond-beam", "kind-bond-beam-half", "kind-lintel",    "kind-lintel-half",    "kind-sash",     "kind-sash-half",
    "kind-cleanout",  "kind-cleanout-half",  "kind-half-high", "kind-half-high-half", "kind-solid"};

Fact piece_said(const Piece& piece) {
  if (piece.cut != CutEnd::None) return fact("a-cut-of", {piece.length});
  return fact(kKindNames[static_cast<std::size_t>(piece.kind)]);
}

bool same_piece(const Piece& a, const Piece& b) { return a.kind == b.kind && a.length == b.length && a.cut == b.cut; }

/// The pieces of one course of one wall, over all its runs.
std::vector<const Piece*> pieces_in(const Layout& layout, const CourseOfWall& course) {
  std::vector<const Piece*> all;
  for (const Run& run : bond::runs_in(layout, course.first, course.second)) {
    for (const Piece& piece : bond::pieces_of(layout, run)) all.push_back(&piece);
  }
  return all;
}

/// Numbers of the units that stand in courses still being laid: in each run up to the farthest mark that was read.
class StandingUnits {
 public:
  StandingUnits(const Job& job, const Rebuilt& found) {
    const std::vector<bool> counts = laying::entries_that_count(job);
    for (std::size_t k = 0; k < job.laid.size(); ++k) {
      const auto& read = job.laid[k].mark;
      if (!counts[k] || !read || !laying::unknown_in(job.laid[k], found.planned).empty()) continue;
      read_[{laying::wall_named(found.planned, read->on), read->course}].push_back(read->at);
    }
    for (const auto& [course, marks] : read_) take(found, course, marks);
  }

  [[nodiscard]] bool holds(const CourseOfWall& course, int unit) const {
    const auto runs = up_to_.find(course);
    if (runs == up_to_.end()) return false;
    return std::ranges::any_of(runs->second, [&](const auto& run) { return run.first <= unit && unit <= run.second; });
  }

 private:
  void take(const Rebuilt& found, const CourseOfWall& course, const std::vector<Length>& marks) {
    std::map<Length, int> units;  // that end at each mark
    for (const setout::Mark& mark : setout::running_marks(found.planned, found.printed, course.first, course.second)) {
      if (mark.kind == setout::MarkKind::BlockEnd) units[mark.at] = mark.piece;
    }
    int first = 1;
    for (const Run& run : bond::runs_in(found.printed, course.first, course.second)) {
      const int last = first + static_cast<int>(run.piece_count) - 1;
      int farthest = 0;
      for (const Length at : marks) {
        const auto unit = units.find(at);
        if (unit != units.end() && first <= unit->second && unit->second <= last)
          farthest = std::max(farthest, unit->second);
      }
      if (farthest > 0) up_to_[course].emplace_back(first, farthest);
      first = last + 1;
    }
  }

  std::map<CourseOfWall, std::vector<Length>> read_;
  std::map<CourseOfWall, std::vector<std::pair<int, int>>> up_to_;
};

/// One course of one wall, old and new, without the units that stand and stay.
class Comparison {
 public:
  Comparison(Rebuilt& found, const StandingUnits& standing) : found_(found), standing_(standing) {}

  [[nodiscard]] CourseChange change_of(const CourseOfWall& course) {
    CourseChange change;
    change.wall = course.first, change.courses = {course.second};
    const std::vector<const Piece*> old = pieces_in(found_.printed, course), now = pieces_in(found_.layout, course);
    for (std::size_t k = 0; k < now.size(); ++k) {
      const Piece* before = k < old.size() ? old[k] : nullptr;
      const bool same = before && same_piece(*before, *now[k]);
      if (before && standing_.holds(course, before->number)) {
        if (!same) come_up_.emplace_back(course, before->number);
        if (same) continue;
      }
      if (before) add_mark(change, *before, *now[k]);
      if (same) continue;
      found_.pieces.push_back(static_cast<std::uint32_t>(now[k] - found_.layout.pieces.data()));
      const Fact is = piece_said(*now[k]);
      change.units.push_back(before ? fact("unit-was-and-is", {now[k]->number, piece_said(*before), is})
                                    : fact("unit-is-new", {now[k]->number, is}));
    }
    for (std::size_t k = now.size(); k < old.size(); ++k) {
      change.units.push_back(fact("unit-is-gone", {old[k]->number, piece_said(*old[k])}));
    }
    return change;
  }

  /// Units that stand and could not stay, in the order of walls and courses.
  [[nodiscard]] const std::vector<std::pair<CourseOfWall, int>>& come_up() const { return come_up_; }

 private:
  void add_mark(CourseChange& change, const Piece& before, const Piece& now) const {
    const Length step = tape_step(found_.building.tape);
    const auto mark = [&](const Piece& piece) { return rounded_to(bond::far_end(piece).nearest_nanometre(), step); };
    const Length moved = mark(now) - mark(before);
    if (moved != Length()) ++change.marks_moved;
    if (magnitude(moved) > magnitude(change.farthest)) change.farthest = moved;
  }

  Rebuilt& found_;
  const StandingUnits& standing_;
  std::vector<std::pair<CourseOfWall, int>> come_up_;
};

bool alike(const CourseChange& a, const CourseChange& b) {
  return a.wall == b.wall && a.units == b.units && a.marks_moved == b.marks_moved && a.farthest == b.farthest;
}

}  // namespace

void find_changes(const Job& job, Rebuilt& found, std::vector<Finding>& findings) {
  const StandingUnits standing(job, found);
  Comparison comparison(found, standing);
  for (int wall = 0; wall < static_cast<int>(found.building.walls.size()); ++wall) {
    const int laid = found.building.laid_to.empty() ? 0 : found.building.laid_to[static_cast<std::size_t>(wall)];
    const std::size_t first = found.changes.size();
    for (int course = laid + 1; course <= static_cast<int>(found.building.courses.size()); ++course) {
      CourseChange change = comparison.change_of({wall, course});
      if (change.units.empty() && change.marks_moved == 0) continue;
      const auto same = std::find_if(found.changes.begin() + static_cast<std::ptrdiff_t>(first), found.changes.end(),
                                     [&](const CourseChange& one) { return alike(one, change); });
      if (same != found.changes.end()) same->courses.push_back(course);
      else found.changes.push_back(std::move(change));
    }
  }
  sort_stably(found.pieces);
  for (const auto& [course, unit] : comparison.come_up()) {
    findings.push_back(
        {"laid-unit-comes-up", "/laid",
         fact("laid-unit-comes-up", {unit, laying::course_name(found.building, course.first, course.second)}),
         std::string(kFoundRule), HoldPoint::FirstCourse});
  }
}

}  // namespace stringcourse
