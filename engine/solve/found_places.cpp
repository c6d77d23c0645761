#include "solve/found_places.hpp"

#include <algorithm>
#include <map>
#include <optional>
#include <tuple>

#include "job/words.hpp"
#include "laying/as_laid.hpp"
#include "measure/sorting.hpp"
#include "edits/edit.hpp"

namespace stringcourse {
namespace {

const Wall& wall_of(const Building& building, int wall) { return building.walls[static_cast<std::size_t>(wall)]; }
const ResolvedOpening& opening_of(const Building& building, int opening) {
  return building.openings[static_cast<std::size_t>(opening)];
}

/// What this entry is about in the building; none for one that names what is not there.
std::optional<FoundHere> found_in(const Building& building, const LaidEntry& entry, std::size_t index) {
  const FoundPlace& found = *entry.found;
  FoundHere here{index, laying::wall_of(building, found.on), -1, found.what, found.at, {}};
  if (here.wall < 0 || !laying::unknown_in(entry, building).empty()) return std::nullopt;
  if (found.what == FoundWhat::WallEnd) {
    if (wall_of(building, here.wall).interior) return std::nullopt;
    here.planned = wall_of(building, here.wall).actual;
    return here;
  }
  for (std::size_t k = 0; k < building.openings.size(); ++k) {
    if (building.openings[k].name == found.opening) here.opening = static_cast<int>(k);
  }
  if (here.opening < 0) return std::nullopt;
  const ResolvedOpening& opening = opening_of(building, here.opening);
  here.planned = (found.what == FoundWhat::NearJamb ? opening.from : opening.to).distance_from_start();
  return here;
}

using FoundKey = std::tuple<int, int, FoundWhat>;
FoundKey place_of(const FoundHere& here) { return {here.wall, here.opening, here.what}; }

Finding questioned(const Building& building, const FoundHere& here) {
  const Tape tape = building.tape;
  const std::string off = found_name(building, here) + " was found at " + both_forms(here.at, tape) + ", planned at " +
                          both_forms(here.planned, tape) + ": farther off than " + tape_text(kFoundFar, tape) + ".";
  return {"found-place-doubtful", "/laid/" + number_text(here.entry),
          off + " Read it again: read twice alike it counts. Is it measured from " +
              wall_of(building, here.wall).start_name + "?",
          std::string(kFoundRule), HoldPoint::FirstCourse};
}

}  // namespace

std::string found_name(const Building& building, const FoundHere& here) {
  if (here.what == FoundWhat::WallEnd) return "The far corner of " + wall_of(building, here.wall).name;
  const std::string jamb = here.what == FoundWhat::NearJamb ? "The near" : "The far";
  return jamb + " jamb of " + opening_of(building, here.opening).name;
}

std::vector<FoundHere> found_places(const Job& job, const Building& planned, std::vector<Finding>& findings) {
  const std::vector<bool> counts = laying::entries_that_count(job);
  std::map<FoundKey, std::vector<FoundHere>> read;  // each place's, in the log's order
  for (std::size_t k = 0; k < job.laid.size(); ++k) {
    if (!counts[k] || !job.laid[k].found) continue;
    if (const auto here = found_in(planned, job.laid[k], k)) read[place_of(*here)].push_back(*here);
  }
  std::vector<FoundHere> last;
  for (const auto& [place, all] : read) {
    const FoundHere& here = all.back();
    const auto alike = std::ranges::count_if(
        all, [&](const FoundHere& one) { return magnitude(one.at - here.at) <= Length::sixteenths(2); });
    if (magnitude(here.at - here.planned) > kFoundFar && alike < 2) findings.push_back(questioned(planned, here));
    else last.push_back(here);
  }
  sort_stably(last, {}, &FoundHere::entry);
  return last;
}

std::expected<Job, std::string> with_found(const Job& job, const Building& building, const FoundHere& here) {
  if (here.what == FoundWhat::WallEnd) {
    const Length change = here.at - wall_of(building, here.wall).actual;
    if (change == Length()) return job;
    auto longer = with_longer_side(job, static_cast<std::size_t>(here.wall), change);
    if (!longer) return std::unexpected(std::string("no other side changes with it"));
    return *std::move(longer);
  }
  // The hole itself is stated: leaf and frame are what has to fit it now.
  const ResolvedOpening& stood = opening_of(building, here.opening);
  const Length from = here.what == FoundWhat::NearJamb ? here.at : stood.from.distance_from_start();
  const Length to = here.what == FoundWhat::FarJamb ? here.at : stood.to.distance_from_start();
  if (from >= to) return std::unexpected(std::string("its jambs would meet"));
  const Wall& wall = wall_of(building, stood.wall);
  Job changed = job;
  Opening& opening = changed.openings[static_cast<std::size_t>(here.opening)];
  opening.place = {wall.interior ? "start" : wall.start_name, {from, Basis::Actual}, Face::Near};
  opening.door.reset(), opening.overhead.reset(), opening.window.reset();
  opening.masonry = MasonrySize{{to - from, Basis::Actual}, {stood.height(), Basis::Actual}};
  return changed;
}

Finding told(const Building& planned, const Building& found, const std::vector<int>& laid_to, const FoundHere& here) {
  const Tape tape = planned.tape;
  const Wall& wall = wall_of(planned, here.wall);
  const Length off = here.at - here.planned;
  const std::string way = off < Length() ? wall.start_name : wall.end_name;
  std::string text = found_name(planned, here) + " stands at " + both_forms(here.at, tape) + ", " +
                     tape_text(magnitude(off), tape) + " toward " + way + " from its plan.";
  const int laid = laid_to.empty() ? 0 : laid_to[static_cast<std::size_t>(here.wall)];
  if (here.opening >= 0) {
    const ResolvedOpening &was = opening_of(planned, here.opening), &is = opening_of(found, here.opening);
    text += " The hole is " + both_forms(is.width(), tape) + " wide; " + both_forms(was.width(), tape) +
            " was planned. Measure frame and lintel by it.";
    if (laid >= was.first_course) {
      text += " What is laid of " + wall.name +
              (laid == 1 ? " (course 1)" : " (courses 1 to " + number_text(laid) + ")") + " stays at the old jamb.";
    }
  } else if (laid > 0) {
    text += " What is laid of " + wall.name + " is taken to end at it.";
  }
  return {"found-place", "/laid/" + number_text(here.entry), std::move(text), std::string(kFoundRule),
          HoldPoint::FirstCourse};
}

}  // namespace stringcourse
