#include "said_otherwise.hpp"

#include <algorithm>
#include <utility>

namespace stringcourse::property {
namespace {

/// Every side keeps its name when it is walked the other way or comes at another place of the list.
Job with_named_sides(Job job) {
  for (Side& side : job.outline.sides) {
    if (side.name.empty()) side.name = side.from + side.to;
  }
  return job;
}

/// A name that sorts the other way.
std::string other_name(const std::string& corner) {
  return "K" + std::string(1, static_cast<char>('A' + 'Z' - corner.front())) + corner.substr(1);
}

}  // namespace

Job mirrored(const Job& job) {
  Job other = with_named_sides(job);
  const std::vector<Side> sides = other.outline.sides;
  const std::size_t count = sides.size();
  for (std::size_t i = 0; i < count; ++i) {
    Side side = sides[count - 1 - i];
    std::swap(side.from, side.to);
    const std::size_t before = (2 * count - 2 - i) % count;  // its turn stands at this side's old start
    side.turn = i + 1 == count && !job.outline.closed ? std::nullopt : sides[before].turn;
    other.outline.sides[i] = std::move(side);
  }
  return other;
}

Job with_other_first_corner(const Job& job) {
  Job other = with_named_sides(job);
  std::ranges::rotate(other.outline.sides, other.outline.sides.begin() + 1);
  return other;
}

Job renamed(const Job& job) {
  Job other = job;
  for (Side& side : other.outline.sides) {
    side.from = other_name(side.from);
    side.to = other_name(side.to);
  }
  const auto side_of = [&](const std::string& name) {
    const auto is_it = [&](const Side& side) { return side.name == name || side.from + side.to == name; };
    const auto at = std::ranges::find_if(job.outline.sides, is_it) - job.outline.sides.begin();
    const Side& side = other.outline.sides[static_cast<std::size_t>(at)];
    return side.name.empty() ? side.from + side.to : side.name;
  };
  for (Opening& opening : other.openings) {
    opening.name = "hole " + opening.name;
    opening.on = side_of(opening.on);
    opening.place.from = other_name(opening.place.from);
  }
  return other;
}

}  // namespace stringcourse::property
