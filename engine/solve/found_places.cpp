#include "solve/found_places.hpp"

#include <algorithm>
#include <map>
#include <optional>
#include <tuple>

#include "catalogue/rules.hpp"
#include "edits/edit.hpp"
#include "job/words.hpp"
#include "laying/as_laid.hpp"
#include "measure/sorting.hpp"

namespace stringcourse {
namespace {

/// What this entry is about in the building; none for one that names what is not there.
std::optional<FoundHere> found_in(const Building& building, const LaidEntry& entry, std::size_t index) {
  const FoundPlace& found = *entry.found;
  FoundHere here{index, laying::wall_named(building, found.on), -1, found.what, found.at, {}};
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

FactValue both(Length length) { return {length, LengthForm::Both}; }

Finding questioned(const Building& building, const FoundHere& here) {
  return {"found-place-doubtful", "/laid/" + number_text(here.entry),
          fact("found-place-doubtful", {found_said(building, here), both(here.at), both(here.planned),
                                        limit_of("found-far"), wall_of(building, here.wall).start_name}),
          "found-far", HoldPoint::FirstCourse};
}

/// What is laid already, beside a jamb or a corner found elsewhere.
Fact laid_said(const Building& planned, const FoundHere& here, int laid) {
  const std::string& wall = wall_of(planned, here.wall).name;
  if (here.opening < 0) return laid > 0 ? fact("laid-ends-at-corner", {wall}) : Fact();
  if (laid < opening_of(planned, here.opening).first_course) return {};
  return laid == 1 ? fact("laid-stays-course", {wall}) : fact("laid-stays-courses", {wall, laid});
}

}  // namespace

Fact found_said(const Building& building, const FoundHere& here) {
  if (here.what == FoundWhat::WallEnd) return fact("far-corner-of", {wall_of(building, here.wall).name});
  return fact(here.what == FoundWhat::NearJamb ? "near-jamb-of" : "far-jamb-of",
              {opening_of(building, here.opening).name});
}

std::vector<FoundHere> found_places(const Job& job, const Building& planned, std::vector<Finding>& findings) {
  const std::vector<bool> counts = laying::entries_that_count(job);
  std::map<FoundKey, std::vector<FoundHere>> read;  // each place's, in the log's order
  for (std::size_t k = 0; k < job.laid.size(); ++k) {
    if (!counts[k] || !job.laid[k].found) continue;
    if (const auto here = found_in(planned, job.laid[k], k)) read[place_of(*here)].push_back(*here);
  }
  const Length far = limit_of("found-far"), near = limit_of("found-far", Tape::Inches, 1);
  std::vector<FoundHere> last;
  for (const auto& [place, all] : read) {
    const FoundHere& here = all.back();
    const auto alike =
        std::ranges::count_if(all, [&](const FoundHere& one) { return magnitude(one.at - here.at) <= near; });
    if (magnitude(here.at - here.planned) > far && alike < 2) findings.push_back(questioned(planned, here));
    else last.push_back(here);
  }
  sort_stably(last, {}, &FoundHere::entry);
  return last;
}

std::expected<Job, Fact> with_found(const Job& job, const Building& building, const FoundHere& here) {
  if (here.what == FoundWhat::WallEnd) {
    const Length change = here.at - wall_of(building, here.wall).actual;
    if (change == Length()) return job;
    auto longer = with_longer_side(job, static_cast<std::size_t>(here.wall), change);
    if (!longer) return std::unexpected(fact("no-side-follows"));
    return *std::move(longer);
  }
  // The hole itself is stated: leaf and frame are what has to fit it now.
  const ResolvedOpening& stood = opening_of(building, here.opening);
  const Length from = here.what == FoundWhat::NearJamb ? here.at : stood.from.distance_from_start();
  const Length to = here.what == FoundWhat::FarJamb ? here.at : stood.to.distance_from_start();
  if (from >= to) return std::unexpected(fact("jambs-meet"));
  const Wall& wall = wall_of(building, stood.wall);
  Job changed = job;
  Opening& opening = changed.openings[static_cast<std::size_t>(here.opening)];
  opening.place = {wall.interior ? "start" : wall.start_name, {from, Basis::Actual}, Face::Near};
  opening.door.reset(), opening.overhead.reset(), opening.window.reset();
  opening.masonry = MasonrySize{{to - from, Basis::Actual}, {stood.height(), Basis::Actual}};
  return changed;
}

Finding place_finding(const Building& planned, const Building& found, const std::vector<int>& laid_to,
                      const FoundHere& here) {
  const Wall& wall = wall_of(planned, here.wall);
  const Length off = here.at - here.planned;
  const int laid = laid_to.empty() ? 0 : laid_to[static_cast<std::size_t>(here.wall)];
  std::vector<Fact> all{fact("found-place", {found_said(planned, here), both(here.at), magnitude(off),
                                             off < Length() ? wall.start_name : wall.end_name})};
  if (here.opening >= 0) {
    const ResolvedOpening &was = opening_of(planned, here.opening), &is = opening_of(found, here.opening);
    all.push_back(fact("found-hole", {both(is.width()), both(was.width())}));
  }
  all.push_back(laid_said(planned, here, laid));
  return {"found-place", "/laid/" + number_text(here.entry), sentences(std::move(all)), std::string(kFoundRule),
          HoldPoint::FirstCourse};
}

}  // namespace stringcourse
