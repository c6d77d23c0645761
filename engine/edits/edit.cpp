#include "edits/edit.hpp"

#include <charconv>
#include <set>
#include <vector>

namespace stringcourse {
namespace {

using Edited = std::expected<Job, Fact>;

bool is_kept(Length length) {
  return length.is_multiple_of(Length::sixty_fourths(1)) || length.is_multiple_of(Length::nanometres(100'000));
}

/// The stated length as the tape shows it, unless it stands on the tape already.
void add_rounded(Length& stated, Length change, Tape tape) {
  stated += change;
  if (!is_kept(stated)) stated = rounded_to(stated, tape_step(tape));
}

/// The field that says how wide an opening is.
Length* stated_width(Opening& opening) {
  if (opening.masonry) return &opening.masonry->width.length;
  if (opening.door) return &opening.door->leaf_width;
  if (opening.overhead) return &opening.overhead->leaf_width;
  if (opening.window) return &opening.window->width;
  return nullptr;
}

bool has_opening(const Job& job, const Building& building, std::size_t opening) {
  return opening < job.openings.size() && opening < building.openings.size();
}

std::unexpected<Fact> not_made(std::string_view why) { return std::unexpected(fact(why)); }
Edited no_opening() { return not_made("edit-no-opening"); }
Edited no_side() { return not_made("edit-no-side"); }

Edited made(const Job& job, const Building& building, const MoveOpening& move) {
  if (!has_opening(job, building, move.opening)) return no_opening();
  const ResolvedOpening& opening = building.openings[move.opening];
  Job changed = job;
  Place& place = changed.openings[move.opening].place;
  const Length change = move.to - opening.from.distance_from_start();
  add_rounded(place.at.length, stated_from_end(building, opening, place) ? -change : change, building.tape);
  return changed;
}

Edited made(const Job& job, const Building& building, const ResizeOpening& resize) {
  if (!has_opening(job, building, resize.opening)) return no_opening();
  const ResolvedOpening& opening = building.openings[resize.opening];
  Job changed = job;
  Opening& stated = changed.openings[resize.opening];
  Length* const width = stated_width(stated);
  if (width == nullptr) return not_made("edit-no-width");
  const bool near_start = resize.jamb == Jamb::From;
  const Length change = resize.to - (near_start ? opening.from : opening.to).distance_from_start();
  const Length before = *width;
  add_rounded(*width, near_start ? -change : change, building.tape);
  if (*width <= Length()) return not_made("edit-width-of-nothing");
  // The place states one jamb. If that is the one that moved, the place follows.
  const bool from_end = stated_from_end(building, opening, stated.place);
  const bool states_start_jamb = from_end == (stated.place.to == Face::Far);
  if (states_start_jamb != near_start) return changed;
  const Length wider = *width - before, along = near_start ? -wider : wider;
  stated.place.at.length += from_end ? -along : along;
  return changed;
}

Edited made(const Job& job, const Building& building, const MoveHead& move) {
  if (!has_opening(job, building, move.opening)) return no_opening();
  const ResolvedOpening& opening = building.openings[move.opening];
  Job changed = job;
  auto& hole = changed.openings[move.opening].masonry;
  if (!hole) return not_made("edit-no-height");
  add_rounded(hole->height.length, move.to - opening.underside - opening.asked_height, building.tape);
  if (hole->height.length <= Length()) return not_made("edit-height-of-nothing");
  return changed;
}

/// +1 where a side that moves outward lengthens its neighbour at this corner, -1 where it shortens it.
int lengthens(const Outline& outline, std::size_t corner_after) {
  const bool right = outline.sides[corner_after].turn.value_or(Turn::Right) == Turn::Right;
  const bool building_right = outline.building_on.value_or(Hand::Right) == Hand::Right;
  return right == building_right ? 1 : -1;
}

Edited made(const Job& job, const Building& building, const MoveSide& move) {
  const std::size_t sides = job.outline.sides.size();
  if (move.side >= sides) return no_side();
  const bool closed = job.outline.closed;
  const bool has_before = closed || move.side > 0, has_after = closed || move.side + 1 < sides;
  if (!has_before && !has_after) return not_made("edit-single-wall");
  Job changed = job;
  Outline& outline = changed.outline;
  const std::size_t before = (move.side + sides - 1) % sides, after = (move.side + 1) % sides;
  const std::size_t leader = has_before ? before : after;
  const int sign = has_before ? lengthens(outline, before) : lengthens(outline, move.side);
  const Length was = outline.sides[leader].length.length;
  add_rounded(outline.sides[leader].length.length, move.by * sign, building.tape);
  const Length by = (outline.sides[leader].length.length - was) * sign;
  if (has_before && has_after) outline.sides[after].length.length += by * lengthens(outline, move.side);
  return changed;
}

std::optional<std::size_t> index_behind(std::string_view place, std::string_view prefix) {
  if (!place.starts_with(prefix)) return std::nullopt;
  std::size_t index = 0;
  const char* const end = place.data() + place.size();
  const auto read = std::from_chars(place.data() + prefix.size(), end, index);
  if (read.ec != std::errc() || read.ptr != end) return std::nullopt;
  return index;
}

Edited taken(const Job& job, const Building& building, const TakeOffer& offer, std::size_t index) {
  if (!has_opening(job, building, index)) return no_opening();
  const ResolvedOpening& opening = building.openings[index];
  const Length from = opening.from.distance_from_start(), to = opening.to.distance_from_start();
  switch (offer.what) {
    case OfferWhat::MoveOpening: return made(job, building, MoveOpening{index, from + offer.change});
    case OfferWhat::MoveNearJamb: return made(job, building, ResizeOpening{index, Jamb::From, from + offer.change});
    case OfferWhat::MoveFarJamb: return made(job, building, ResizeOpening{index, Jamb::To, to + offer.change});
    case OfferWhat::MoveHead:
      return made(job, building, MoveHead{index, opening.underside + opening.asked_height + offer.change});
    case OfferWhat::ChangeWidth: {
      const Edited near = made(job, building, ResizeOpening{index, Jamb::From, from + offer.shift});
      return near ? made(*near, building, ResizeOpening{index, Jamb::To, to + offer.shift + offer.change}) : near;
    }
    case OfferWhat::ChangeSide: break;
  }
  return no_side();
}

Edited made(const Job& job, const Building& building, const TakeOffer& offer) {
  if (const auto opening = index_behind(offer.place, "/openings/")) { return taken(job, building, offer, *opening); }
  if (const auto side = index_behind(offer.place, "/outline/sides/"); side && *side < job.outline.sides.size()) {
    if (const auto changed = with_longer_side(job, *side, offer.change)) return *changed;
  }
  return no_side();
}

Edited made(const Job& job, const Building& building, const PutIn& put) { return with_new_part(job, building, put); }
Edited made(const Job& job, const Building&, const StepCorner& step) { return with_step(job, step); }
Edited made(const Job& job, const Building&, const FillCorner& fill) { return without_step(job, fill); }

Edited made(const Job& job, const Building& building, const PutBeams& put) {
  std::set<int> courses;
  for (const ResolvedOpening& opening : building.openings) {
    if (put.over_openings && opening.lintel) courses.insert(opening.lintel->first_course);
  }
  if (put.on_top) courses.insert(static_cast<int>(building.courses.size()));
  Job changed = job;
  changed.steel.bond_beams.assign(courses.begin(), courses.end());
  return changed;
}

}  // namespace

bool stated_from_end(const Building& building, const ResolvedOpening& opening, const Place& place) {
  const Wall& wall = wall_of(building, opening.wall);
  return place.from == wall.end_name || (wall.interior && place.from == "end");
}

std::optional<std::size_t> side_that_follows(const Outline& outline, std::size_t side) {
  if (!outline.closed) return std::nullopt;
  std::vector<int> heading(outline.sides.size(), 0);
  for (std::size_t i = 1; i < heading.size(); ++i) {
    const bool right = outline.sides[i - 1].turn.value_or(Turn::Right) == Turn::Right;
    heading[i] = (heading[i - 1] + (right ? 1 : 3)) % 4;
  }
  for (std::size_t i = 1; i < heading.size(); ++i) {
    const std::size_t other = (side + i) % heading.size();
    if (heading[other] != (heading[side] + 2) % 4) continue;
    return other < side ? std::nullopt : std::optional(other);  // it comes with the side that is listed first
  }
  return std::nullopt;
}

std::optional<Job> with_longer_side(const Job& job, std::size_t side, Length change) {
  Job changed = job;
  changed.outline.sides[side].length.length += change;
  if (!job.outline.closed) return changed;
  const auto other = side_that_follows(job.outline, side);
  if (!other) return std::nullopt;
  changed.outline.sides[*other].length.length += change;
  return changed;
}

Edited edited(const Job& job, const Building& building, const Edit& edit) {
  return std::visit([&](const auto& change) { return made(job, building, change); }, edit);
}

}  // namespace stringcourse
