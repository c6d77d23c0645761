#include "solve/offer_changes.hpp"

#include <algorithm>
#include <charconv>
#include <set>

#include "job/checks.hpp"
#include "job/words.hpp"

namespace stringcourse {
namespace {

/// Distances from `at` to the lines `origin` + k steps, at most one unit (two steps) away, without 0.
std::set<Length> to_lines(Length at, Length origin, Length step) {
  std::set<Length> moves;
  const std::int64_t line = (at - origin).whole_multiples(step);
  for (std::int64_t k = -2; k <= 3; ++k) {
    const Length move = origin + step * (line + k) - at;
    if (move != Length() && magnitude(move) <= step * 2) moves.insert(move);
  }
  return moves;
}

/// Where whole half units end along a wall: near jambs stand there. Far jambs stand one joint farther. From a corner or
/// free end the first unit begins at once; where the wall starts from another wall, after a joint.
Length first_line(const Building& building, const Wall& wall) {
  return wall.start.kind == EndKind::Junction ? Length() : -building.joint;
}

Length half_pitch(const Building& building, const Wall& wall) { return building.series_of(wall).pitch(); }

/// Where the wall of a side of the job stands in the building: an outline walked the other way has them in another
/// order.
const Wall* wall_of_side(const Building& building, std::size_t side) {
  const auto found = std::ranges::find(building.walls, "/outline/sides/" + number_text(side), &Wall::place);
  return found == building.walls.end() ? nullptr : &*found;
}

std::vector<Wanted> wanted_by(OfferWhat what, std::size_t index, const std::set<Length>& moves) {
  std::vector<Wanted> wanted;
  for (const Length move : moves) wanted.push_back({what, index, move});
  return wanted;
}

void append(std::vector<Wanted>& all, const std::vector<Wanted>& more) {
  all.insert(all.end(), more.begin(), more.end());
}

std::optional<std::size_t> index_in_job(const std::string& place) {
  std::size_t index = 0;
  const std::size_t slash = place.find_last_of('/');
  const char* const end = place.data() + place.size();
  if (slash == std::string::npos || std::from_chars(place.data() + slash + 1, end, index).ptr != end)
    return std::nullopt;
  return index;
}

/// A bare hole of the job, if the opening is one.
const MasonrySize* hole_of(const Job& job, const ResolvedOpening& opening) {
  const auto index = index_in_job(opening.place);
  if (!index || *index >= job.openings.size() || !job.openings[*index].masonry) return nullptr;
  return &*job.openings[*index].masonry;
}

/// The nearest of these moves in each direction.
std::vector<Length> nearest_ways(const std::set<Length>& moves) {
  std::vector<Length> ways;
  const auto after = moves.upper_bound(Length());
  if (after != moves.begin()) ways.push_back(*std::prev(after));
  if (after != moves.end()) ways.push_back(*after);
  return ways;
}

/// Both jambs at once, each to the line beside it: what one jamb alone does not bring onto the lines.
std::vector<Wanted> widths_of(std::size_t index, const std::set<Length>& near, const std::set<Length>& far,
                              Length step) {
  std::vector<Wanted> wanted;
  const auto on_line = [&](const std::set<Length>& moves) { return moves.contains(step); };
  if (on_line(near) || on_line(far) || near == far) return wanted;  // near == far: a move brings both onto them
  for (const Length from : nearest_ways(near)) {
    for (const Length to : nearest_ways(far)) { wanted.push_back({OfferWhat::ChangeWidth, index, to - from, from}); }
  }
  return wanted;
}

std::set<Length> head_moves(const Building& building, const ResolvedOpening& opening) {
  const Length asked = opening.underside + opening.asked_height;  // from the datum
  if (opening.packing_head <= Length()) return {};
  std::set<Length> moves{opening.soffit - asked};
  if (opening.last_course > opening.first_course) {
    moves.insert(building.courses[static_cast<std::size_t>(opening.last_course) - 2].top + building.joint - asked);
  }
  return moves;
}

FactValue spoken(Length length) { return {magnitude(length), LengthForm::Spoken}; }

/// "W1 3 in narrower, 1 in at the A end and 2 in at the B end"; "W1 2 in wider, its A end 1 in toward B".
Fact width_said(const std::string& name, const Wall& wall, const Wanted& wanted) {
  const bool wider = wanted.by > Length();
  const Length near = wanted.shift, far = wanted.shift + wanted.by;
  const bool apart = (near < Length()) != (far < Length());
  if (apart) {
    return fact(wider ? "offer-wider-at-both" : "offer-narrower-at-both",
                {name, spoken(wanted.by), spoken(near), wall.start_name, spoken(far), wall.end_name});
  }
  const std::string& toward = near < Length() ? wall.start_name : wall.end_name;
  return fact(wider ? "offer-wider-shifted" : "offer-narrower-shifted",
              {name, spoken(wanted.by), wall.start_name, spoken(near), toward});
}

/// "D1 4 in toward B", "W1 4 in wider at the B end", "D1 2 in lower".
Fact opening_said(const std::string& name, const Wall& wall, const Wanted& wanted) {
  const FactValue size = spoken(wanted.by);
  const bool toward_start = wanted.by < Length();
  switch (wanted.what) {
    case OfferWhat::MoveOpening:
      return fact("offer-move", {name, size, toward_start ? wall.start_name : wall.end_name});
    case OfferWhat::MoveNearJamb:
      return fact(toward_start ? "offer-wider-at" : "offer-narrower-at", {name, size, wall.start_name});
    case OfferWhat::MoveFarJamb:
      return fact(toward_start ? "offer-narrower-at" : "offer-wider-at", {name, size, wall.end_name});
    case OfferWhat::MoveHead: return fact(toward_start ? "offer-lower" : "offer-higher", {name, size});
    case OfferWhat::ChangeWidth: return width_said(name, wall, wanted);
    case OfferWhat::ChangeSide: break;
  }
  return {};
}

}  // namespace

std::vector<Wanted> moves_of(const Building& building, std::size_t index) {
  const ResolvedOpening& opening = building.openings[index];
  const Wall& wall = wall_of(building, opening.wall);
  const Length step = half_pitch(building, wall);
  std::set<Length> moves = to_lines(opening.from.distance_from_start(), first_line(building, wall), step);
  for (const std::int64_t k : {-2, -1, 1, 2}) moves.insert(step * k);
  return wanted_by(OfferWhat::MoveOpening, index, moves);
}

std::vector<Wanted> sizes_of(const Job& job, const Building& building, std::size_t index) {
  const ResolvedOpening& opening = building.openings[index];
  if (hole_of(job, opening) == nullptr) return {};
  const Wall& wall = wall_of(building, opening.wall);
  const Length step = half_pitch(building, wall), near = first_line(building, wall);
  const std::set<Length> near_moves = to_lines(opening.from.distance_from_start(), near, step);
  const std::set<Length> far_moves = to_lines(opening.to.distance_from_start(), near + building.joint, step);
  std::vector<Wanted> all = wanted_by(OfferWhat::MoveNearJamb, index, near_moves);
  append(all, wanted_by(OfferWhat::MoveFarJamb, index, far_moves));
  append(all, widths_of(index, near_moves, far_moves, step));
  append(all, wanted_by(OfferWhat::MoveHead, index, head_moves(building, opening)));
  return all;
}

std::vector<Wanted> lengths_of(const Building& building, std::size_t side) {
  const Wall* const wall = wall_of_side(building, side);
  if (wall == nullptr) return {};
  const Length step = half_pitch(building, *wall);
  std::set<Length> changes = to_lines(wall->nominal, Length(), step);
  for (const std::int64_t k : {-2, -1, 1, 2}) changes.insert(step * k);
  return wanted_by(OfferWhat::ChangeSide, side, changes);
}

std::size_t wall_changed(const Building& building, const Wanted& wanted) {
  if (wanted.what != OfferWhat::ChangeSide) return static_cast<std::size_t>(building.openings[wanted.index].wall);
  const Wall* const wall = wall_of_side(building, wanted.index);
  return wall == nullptr ? 0 : static_cast<std::size_t>(wall - building.walls.data());
}

std::optional<Job> changed_job(const Job& job, const Building& building, const Wanted& wanted) {
  const std::string place = unpriced_offer(job, building, wanted).place;
  auto changed = edited(job, building, TakeOffer{wanted.what, place, wanted.by, wanted.shift});
  if (!changed) return std::nullopt;
  return *std::move(changed);
}

Offer unpriced_offer(const Job& job, const Building& building, const Wanted& wanted) {
  Offer offer;
  offer.what = wanted.what;
  offer.change = wanted.by;
  offer.shift = wanted.shift;
  if (wanted.what == OfferWhat::ChangeSide) {
    const auto opposite = side_that_follows(job.outline, wanted.index);
    offer.place = "/outline/sides/" + number_text(wanted.index);
    offer.name = side_name(job.outline.sides[wanted.index]);
    std::vector<std::string> sides{offer.name};
    if (opposite) sides.push_back(side_name(job.outline.sides[*opposite]));
    offer.text = fact(wanted.by < Length() ? "offer-shorter" : "offer-longer",
                      {listed(FactValue::Kind::And, sides), spoken(wanted.by)});
    return offer;
  }
  const ResolvedOpening& opening = building.openings[wanted.index];
  offer.place = opening.place;
  offer.name = opening.name;
  offer.text = opening_said(opening.name, wall_of(building, opening.wall), wanted);
  return offer;
}

}  // namespace stringcourse
