#include "solve/as_built.hpp"

#include <algorithm>
#include <expected>
#include <optional>
#include <utility>

#include "bond/assemble.hpp"
#include "job/words.hpp"
#include "measure/sorting.hpp"
#include "setout/places.hpp"
#include "solve/edit.hpp"
#include "walls/resolve.hpp"

namespace stringcourse {
namespace {

constexpr std::string_view kRule = "least change: what is found is fixed, the rest is solved anew";

struct FoundHere {
  std::size_t entry;
  int wall = -1, opening = -1;
  FoundWhat what = FoundWhat::NearJamb;
  Length at, planned;
};

/// What this entry is about in the building; none for one that names what is not there.
std::optional<FoundHere> found_in(const Building& building, const LaidEntry& entry, std::size_t index) {
  const FoundPlace& found = *entry.found;
  FoundHere here{index, laying::wall_of(building, found.on), -1, found.what, found.at, {}};
  if (here.wall < 0 || !laying::unknown_in(entry, building).empty()) return std::nullopt;
  if (found.what == FoundWhat::WallEnd) {
    const Wall& wall = building.walls[static_cast<std::size_t>(here.wall)];
    if (wall.interior) return std::nullopt;
    here.planned = wall.actual;
    return here;
  }
  for (std::size_t k = 0; k < building.openings.size(); ++k) {
    if (building.openings[k].name == found.opening) here.opening = static_cast<int>(k);
  }
  if (here.opening < 0) return std::nullopt;
  const ResolvedOpening& opening = building.openings[static_cast<std::size_t>(here.opening)];
  here.planned = (found.what == FoundWhat::NearJamb ? opening.from : opening.to).distance_from_start();
  return here;
}

bool same_place(const FoundHere& a, const FoundHere& b) { return a.wall == b.wall && a.opening == b.opening && a.what == b.what; }

std::string place_text(const Building& building, const FoundHere& here) {
  const std::string& wall = building.walls[static_cast<std::size_t>(here.wall)].name;
  if (here.what == FoundWhat::WallEnd) return "The far corner of " + wall;
  return std::string(here.what == FoundWhat::NearJamb ? "The near" : "The far") + " jamb of " + building.openings[static_cast<std::size_t>(here.opening)].name;
}

/// The last entry of each place; what lies far from its plan only where it was read twice alike.
std::vector<FoundHere> found_places(const Job& job, const Building& building, std::vector<Finding>& findings) {
  const std::vector<bool> counts = laying::entries_that_count(job);
  std::vector<FoundHere> all, last;
  for (std::size_t k = 0; k < job.laid.size(); ++k) {
    if (!counts[k] || !job.laid[k].found) continue;
    if (const auto here = found_in(building, job.laid[k], k)) all.push_back(*here);
  }
  for (std::size_t k = 0; k < all.size(); ++k) {
    const bool later = std::any_of(all.begin() + static_cast<std::ptrdiff_t>(k) + 1, all.end(), [&](const FoundHere& one) { return same_place(one, all[k]); });
    if (later) continue;
    const bool far = magnitude(all[k].at - all[k].planned) > kFoundFar;
    const auto alike = std::ranges::count_if(all, [&](const FoundHere& one) { return same_place(one, all[k]) && magnitude(one.at - all[k].at) <= Length::sixteenths(2); });
    if (far && alike < 2) {
      findings.push_back({"found-place-doubtful", "/laid/" + number_text(all[k].entry),
                          place_text(building, all[k]) + " was found at " + both_forms(all[k].at, building.tape) + ", planned at " + both_forms(all[k].planned, building.tape) + ": farther off than " + tape_text(kFoundFar, building.tape) + ". Read it again: read twice alike it counts. Is it measured from " + building.walls[static_cast<std::size_t>(all[k].wall)].start_name + "?",
                          std::string(kRule), HoldPoint::FirstCourse});
      continue;
    }
    last.push_back(all[k]);
  }
  return last;
}

/// The job with one place as it was found.
std::expected<Job, std::string> with_found(const Job& job, const Building& building, const FoundHere& here) {
  if (here.what == FoundWhat::WallEnd) {
    const Length change = here.at - building.walls[static_cast<std::size_t>(here.wall)].actual;
    if (change == Length()) return job;
    auto longer = with_longer_side(job, static_cast<std::size_t>(here.wall), change);
    if (!longer) return std::unexpected(std::string("no other side changes with it"));
    return *std::move(longer);
  }
  // The hole itself is stated: leaf and frame are what has to fit it now.
  const ResolvedOpening& stood = building.openings[static_cast<std::size_t>(here.opening)];
  const Length from = here.what == FoundWhat::NearJamb ? here.at : stood.from.distance_from_start();
  const Length to = here.what == FoundWhat::FarJamb ? here.at : stood.to.distance_from_start();
  if (from >= to) return std::unexpected(std::string("its jambs would meet"));
  const Wall& wall = building.walls[static_cast<std::size_t>(stood.wall)];
  Job changed = job;
  Opening& opening = changed.openings[static_cast<std::size_t>(here.opening)];
  opening.place = {wall.interior ? "start" : wall.start_name, {from, Basis::Actual}, Face::Near};
  opening.door.reset(), opening.overhead.reset(), opening.window.reset();
  opening.masonry = MasonrySize{{to - from, Basis::Actual}, {stood.height(), Basis::Actual}};
  return changed;
}

/// What leaf, frame and buck ask for is still what was planned: the hole as found is to be packed to it, or is too small.
void keep_asked_sizes(Building& building, const Building& planned) {
  for (std::size_t k = 0; k < building.openings.size() && k < planned.openings.size(); ++k) {
    ResolvedOpening& opening = building.openings[k];
    opening.use = planned.openings[k].use;
    opening.asked_width = planned.openings[k].asked_width;
    opening.asked_height = planned.openings[k].asked_height;
    opening.filler_each_side = (opening.width() - opening.asked_width).half_down();
    opening.filler_head = opening.height() - opening.asked_height;
  }
}

/// Openings that what goes into them no longer fits.
void find_too_narrow(const Building& building, std::vector<Finding>& findings) {
  for (const ResolvedOpening& opening : building.openings) {
    const Length lacks = opening.asked_width - opening.width();
    if (lacks <= Length()) continue;
    const std::string lack = tape_text(lacks, building.tape);
    findings.push_back({"opening-too-narrow", opening.place,
                        opening.name + " as found is " + tape_text(opening.width(), building.tape) + " wide, " + lack +
                            " less than what goes into it asks for. Take the " + lack +
                            " off its packing, set a jamb anew, or order to the hole.",
                        std::string(kRule), HoldPoint::FirstCourse});
  }
}

/// Spaced bars have their dowels: they stand where they were printed.
void keep_bars(Job& job, const Building& planned, const Layout& printed) {
  if (!job.steel.bars) return;
  for (const PlacedBar& bar : printed.bars) {
    if (bar.reason != BarReason::Spaced) continue;
    const Wall& wall = planned.walls[static_cast<std::size_t>(bar.wall)];
    job.steel.bars->dimensioned.push_back({wall.name, {wall.interior ? "start" : wall.start_name, {bar.centre, Basis::Actual}, std::nullopt}});
  }
}

/// Courses laid from the bottom up without a gap, by wall.
std::vector<int> laid_courses(const Job& job, const Building& building) {
  const std::vector<bool> counts = laying::entries_that_count(job);
  std::vector<int> to(building.walls.size(), 0);
  for (std::size_t wall = 0; wall < to.size(); ++wall) {
    const auto is_laid = [&](int course) {
      for (std::size_t k = 0; k < job.laid.size(); ++k) {
        if (counts[k] && job.laid[k].laid && job.laid[k].laid->course == course && job.laid[k].laid->on == building.walls[wall].name) return true;
      }
      return false;
    };
    while (to[wall] < static_cast<int>(building.courses.size()) && is_laid(to[wall] + 1)) ++to[wall];
  }
  return to;
}

std::string piece_text(const Building& building, const Piece& piece) {
  if (piece.cut != CutEnd::None) return "a cut of " + tape_text(piece.length, building.tape);
  return std::string(kind_name(piece.kind));
}

bool same_piece(const Piece& a, const Piece& b) { return a.kind == b.kind && a.length == b.length && a.cut == b.cut; }

/// One course of one wall, old and new.
CourseChange change_of(const AsBuilt& found, int wall, int course, std::vector<std::uint32_t>& pieces) {
  CourseChange change;
  change.wall = wall, change.courses = {course};
  const auto before = setout::runs_in(found.printed, wall, course), after = setout::runs_in(found.layout, wall, course);
  std::vector<const Piece*> old, now;
  for (const Run& run : before) {
    for (const Piece& piece : setout::pieces_of(found.printed, run)) old.push_back(&piece);
  }
  for (const Run& run : after) {
    for (const Piece& piece : setout::pieces_of(found.layout, run)) now.push_back(&piece);
  }
  const Length step = tape_step(found.building.tape);
  for (std::size_t k = 0; k < now.size(); ++k) {
    if (k < old.size()) {
      const Length moved = rounded_to(setout::far_end(*now[k]).nearest_nanometre(), step) - rounded_to(setout::far_end(*old[k]).nearest_nanometre(), step);
      if (moved != Length()) ++change.marks_moved;
      if (magnitude(moved) > magnitude(change.farthest)) change.farthest = moved;
    }
    if (k < old.size() && same_piece(*old[k], *now[k])) continue;
    pieces.push_back(static_cast<std::uint32_t>(now[k] - found.layout.pieces.data()));
    change.units.push_back("unit " + number_text(now[k]->number) + ": " + (k < old.size() ? piece_text(found.building, *old[k]) + ", now " : "new, ") + piece_text(found.building, *now[k]));
  }
  for (std::size_t k = now.size(); k < old.size(); ++k) change.units.push_back("unit " + number_text(old[k]->number) + ": " + piece_text(found.building, *old[k]) + ", now none");
  return change;
}

bool alike(const CourseChange& a, const CourseChange& b) {
  return a.wall == b.wall && a.units == b.units && a.marks_moved == b.marks_moved && a.farthest == b.farthest;
}

void compare(AsBuilt& found) {
  for (int wall = 0; wall < static_cast<int>(found.building.walls.size()); ++wall) {
    for (int course = 1; course <= static_cast<int>(found.building.courses.size()); ++course) {
      CourseChange change = change_of(found, wall, course, found.pieces);
      if (change.units.empty() && change.marks_moved == 0) continue;
      const auto same = std::ranges::find_if(found.changes, [&](const CourseChange& one) { return alike(one, change); });
      if (same != found.changes.end()) same->courses.push_back(course);
      else found.changes.push_back(std::move(change));
    }
  }
  sort_stably(found.pieces);
}

}  // namespace

std::string change_text(const Building& building, const CourseChange& change) {
  const Wall& wall = building.walls[static_cast<std::size_t>(change.wall)];
  std::string text = wall.name + (change.courses.size() == 1 ? ", course " : ", courses ");
  for (std::size_t k = 0; k < change.courses.size(); ++k) text += (k == 0 ? "" : ", ") + number_text(change.courses[k]);
  text += ": " + (change.units.empty() ? std::string("the same units") : number_text(change.units.size()) + (change.units.size() == 1 ? " unit differs" : " units differ"));
  if (change.marks_moved > 0) text += "; " + number_text(change.marks_moved) + (change.marks_moved == 1 ? " mark moves, " : " marks move, up to ") + tape_text(magnitude(change.farthest), building.tape) + (change.farthest < Length() ? " toward " + wall.start_name : " toward " + wall.end_name);
  return text;
}

Resolved solve_from_here(const Job& job, const Building& planned, const Layout& printed, bond::PanelMemo& memo) {
  Resolved resolved;
  const std::vector<FoundHere> places = found_places(job, planned, resolved.findings);
  if (places.empty() || !printed.stopped.empty()) return resolved;
  const auto say = [&](const FoundHere& here, const std::string& why) {
    resolved.findings.push_back({"found-place-not-built", "/laid/" + number_text(here.entry), place_text(planned, here) + " as found cannot be built on: " + why, std::string(kRule), HoldPoint::FirstCourse});
  };
  AsBuilt found;
  found.job = job, found.building = planned, found.printed = printed;
  bool any = false;
  for (const FoundHere& here : places) {
    auto changed = with_found(found.job, found.building, here);
    if (!changed) {
      say(here, changed.error());
      continue;
    }
    auto building = resolve(*changed);
    if (!building) {
      say(here, building.error().shown.front().reason);
      continue;
    }
    found.job = *std::move(changed), found.building = *std::move(building), any = true;
    keep_asked_sizes(found.building, planned);
  }
  if (!any) return resolved;
  // Bars where they stand, courses as they are laid; then without the one, then without the other.
  Job with_bars = found.job;
  keep_bars(with_bars, planned, printed);
  auto barred = resolve(with_bars);
  if (barred) keep_asked_sizes(*barred, planned);
  find_too_narrow(found.building, resolved.findings);
  const std::vector<int> laid = laid_courses(job, planned);
  for (const bool keeps_bars : {true, false}) {
    if (keeps_bars && !barred) continue;
    Building building = keeps_bars ? *barred : found.building;
    for (const bool keeps_laid : {true, false}) {
      building.laid_to = keeps_laid ? laid : std::vector<int>{};
      Layout layout = bond::lay_out_from(printed, building, memo);
      if (!layout.stopped.empty() && (keeps_bars || keeps_laid)) continue;
      found.layout = std::move(layout), found.building = std::move(building), found.laid_kept = keeps_laid;
      if (keeps_bars) found.job = std::move(with_bars);
      if (!keeps_laid && std::ranges::any_of(laid, [](int to) { return to > 0; })) {
        resolved.findings.push_back({"laid-courses-do-not-fit", "/laid/" + number_text(places.front().entry), "The courses laid do not close with lawful joints between what was found: the new layout changes them too. Compare it before you lay on.", std::string(kRule), HoldPoint::FirstCourse});
      }
      if (!keeps_bars) {
        resolved.findings.push_back({"bars-do-not-fit", "/laid/" + number_text(places.front().entry), "The spaced bars as printed do not all stand in cells of the new layout: others are chosen. Check their dowels.", std::string(kRule), HoldPoint::FirstCourse});
      }
      compare(found);
      resolved.as_built = std::move(found);
      return resolved;
    }
  }
  return resolved;
}

}  // namespace stringcourse
