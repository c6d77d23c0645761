#pragma once
// What a wall meets when it is carried on square from where it starts.
#include <optional>
#include <span>

#include "walls/draft.hpp"
#include "walls/places.hpp"

namespace stringcourse::walls {

struct Meeting {
  int wall = -1;
  Length clear;            // from the start to the face that is met
  bool full_face = false;  // the whole thickness comes against the side of that wall
  Position from, to;       // where, on that wall's line
};

/// The nearest of `standing` ahead of wall `self`, through the whole thickness of `self`; or nothing.
[[nodiscard]] std::optional<Meeting> first_met(const Draft& draft, int self, std::span<const int> standing);

/// The stretch of a wall's line against which another wall may stand: between the inner faces at its convex corners,
/// and on to the corner's square at re-entrant ones.
[[nodiscard]] Stretch meeting_stretch(const Draft& draft, int wall);

}  // namespace stringcourse::walls
