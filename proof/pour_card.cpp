#include "proof/pour_card.hpp"

#include <algorithm>
#include <map>
#include <set>

namespace stringcourse::proof {
namespace {

template <typename List>
const auto& at(const List& list, std::int64_t index) {
  return list[static_cast<std::size_t>(index)];
}

Length apart(PlanPoint a, PlanPoint b) { return magnitude(a.x - b.x) + magnitude(a.y - b.y); }

/// The round along the outer faces: how far each side's start is round, by the corners' points, and its whole length.
struct Round {
  std::map<int, Length> start;
  Length length;
  bool closed = true;
};

Round round_of(const Building& b) {
  Round round;
  for (int wall = 0; wall < static_cast<int>(b.walls.size()); ++wall) {
    const Wall& side = at(b.walls, wall);
    if (side.interior) continue;
    round.start[wall] = round.length;
    const PlanPoint end = plan_point(side, side.actual, Length());
    round.length = round.length + apart(side.start_point, end);
  }
  const Wall& last = at(b.walls, round.start.rbegin()->first);
  round.closed = plan_point(last, last.actual, Length()) == b.walls.front().start_point;
  return round;
}

/// Where a place is passed on the round: on a side itself, else where the walls from it lead to a side.
Length passed_at(const Building& b, const Round& round, int wall, Length along) {
  while (at(b.walls, wall).interior) {
    const Wall& inner = at(b.walls, wall);
    const bool by_start = inner.start.kind == EndKind::Junction;
    const Junction& foot = at(b.junctions, by_start ? inner.start.junction : inner.end.junction);
    wall = foot.main, along = foot.from.distance_from_start();
  }
  Length place = round.start.at(wall) + along;
  if (!round.closed) return std::max(place, Length());
  while (place < Length()) place += round.length;
  while (place >= round.length) place -= round.length;
  return place;
}

Length between(const Round& round, Length a, Length b) {
  const Length straight = magnitude(a - b);
  return round.closed ? std::min(straight, round.length - straight) : straight;
}

/// The shortest walk from the first corner that passes all places: what has been passed is always a stretch round that
/// corner, and the walker stands at one of its ends.
Length shortest(const Round& round, const std::vector<Length>& places) {
  const std::size_t n = places.size();
  if (n == 0) return {};
  if (!round.closed) return places.back();
  const Length never = round.length * 1'000;
  // [forth][back]: so many passed each way, standing at the forward or the backward end.
  std::vector<std::vector<Length>> forward(n + 1, std::vector<Length>(n + 1, never)), backward = forward;
  forward[0][0] = backward[0][0] = Length();
  const auto ahead = [&](std::size_t count) { return count == 0 ? Length() : places[count - 1]; };
  const auto behind = [&](std::size_t count) { return count == 0 ? Length() : round.length - places[n - count]; };
  Length best = never;
  for (std::size_t f = 0; f <= n; ++f) {
    for (std::size_t k = 0; f + k <= n; ++k) {
      if (f > 0)
        forward[f][k] =
            std::min(forward[f - 1][k] + ahead(f) - ahead(f - 1), backward[f - 1][k] + behind(k) + ahead(f));
      if (k > 0)
        backward[f][k] =
            std::min(backward[f][k - 1] + behind(k) - behind(k - 1), forward[f][k - 1] + ahead(f) + behind(k));
      if (f + k == n) best = std::min({best, forward[f][k], backward[f][k]});
    }
  }
  return best;
}

std::string name_of(const LiftCard& card) { return "lift to course " + std::to_string(card.last_course); }

Violations check_walk(const Building& b, const Round& round, const LiftCard& card) {
  Length walked, here;
  std::set<Length> places;
  for (const GroutStep& step : card.steps) {
    if (step.into != GroutInto::Cell) break;
    const Length there = passed_at(b, round, step.wall, step.at);
    walked = walked + between(round, here, there), here = there;
    places.insert(there);
  }
  Violations found;
  if (walked != card.walk) found.push_back(violation(kBars, name_of(card), "the walk is of another length"));
  const Length least = shortest(round, {places.begin(), places.end()});
  if (card.walk != least)
    found.push_back(
        violation(kBars, name_of(card),
                  "walked in " + in_millimetres(card.walk) + ", another order in " + in_millimetres(least)));
  return found;
}

/// What one lift holds: by kind, wall and place, its amount.
using Holds = std::multimap<std::tuple<GroutInto, int, Length>, int128>;

Holds asked_of(const Layout& layout, const supply::GroutPour& pour, std::size_t lift, int first, int last) {
  Holds holds;
  for (const supply::GroutColumn& column : pour.columns) {
    const PlacedBar& bar = layout.bars[column.bar];
    if (column.by_lift[lift].cubic_nanometres > 0)
      holds.emplace(std::tuple(GroutInto::Cell, bar.wall, bar.centre), column.by_lift[lift].cubic_nanometres);
  }
  for (const supply::GroutTrough& trough : pour.troughs) {
    if (first <= trough.course && trough.course <= last)
      holds.emplace(std::tuple(trough.opening < 0 ? GroutInto::Beam : GroutInto::Lintel, trough.wall, trough.from),
                    trough.volume.cubic_nanometres);
  }
  return holds;
}

Violations check_steps(const Holds& asked, const LiftCard& card) {
  Holds holds;
  int128 total = 0;
  bool troughs = false, in_order = true;
  for (const GroutStep& step : card.steps) {
    holds.emplace(std::tuple(step.into, step.wall, step.at), step.volume.cubic_nanometres);
    total += step.volume.cubic_nanometres;
    troughs |= step.into != GroutInto::Cell;
    in_order &= total == step.total.cubic_nanometres && (!troughs || step.into != GroutInto::Cell);
  }
  Violations found;
  if (!std::ranges::is_permutation(asked, holds))
    found.push_back(violation(kBars, name_of(card), "cells or troughs are missing, twice, or of another amount"));
  if (!in_order)
    found.push_back(violation(kBars, name_of(card), "totals do not add up, or a cell comes after a trough"));
  return found;
}

}  // namespace

Violations check_pour_cards(const Building& building, const Layout& layout, const std::vector<supply::GroutPour>& pours,
                            const std::vector<LiftCard>& cards) {
  const Round round = round_of(building);
  Violations found;
  std::size_t next = 0;
  for (const supply::GroutPour& pour : pours) {
    int first = pour.first_course;
    for (std::size_t lift = 0; lift < pour.lift_tops.size(); ++lift) {
      const int last = pour.lift_tops[lift];
      const Holds asked = asked_of(layout, pour, lift, first, last);
      const bool listed = next < cards.size() && cards[next].first_course == first && cards[next].last_course == last;
      if (!listed && !asked.empty()) found.push_back(violation(kBars, "pour card", "a lift has no card"));
      if (listed) {
        const LiftCard& card = cards[next++];
        for (const Violations& more : {check_steps(asked, card), check_walk(building, round, card)})
          found.insert(found.end(), more.begin(), more.end());
      }
      first = last + 1;
    }
  }
  if (next != cards.size()) found.push_back(violation(kBars, "pour card", "a card of no lift"));
  return found;
}

}  // namespace stringcourse::proof
