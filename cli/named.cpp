#include "cli/named.hpp"

namespace stringcourse::cli {

namespace {

/// A list of the job and the place in it: "/openings/2/masonry" is ("openings", 2).
struct InList {
  std::string_view list;
  std::size_t index = 0;
  bool found = false;
};

InList in_list(std::string_view place) {
  if (!place.starts_with('/')) return {};
  place.remove_prefix(1);
  if (place.starts_with("outline/")) place.remove_prefix(8);
  const std::size_t slash = place.find('/');
  if (slash == std::string_view::npos) return {};
  InList at{place.substr(0, slash)};
  std::string_view number = place.substr(slash + 1);
  number = number.substr(0, number.find('/'));
  if (number.empty() || number.size() > 6) return {};
  for (const char digit : number) {
    if (digit < '0' || digit > '9') return {};
    at.index = at.index * 10 + static_cast<std::size_t>(digit - '0');
  }
  at.found = true;
  return at;
}

std::string_view kind_of(const Opening& opening) {
  if (opening.door) return "named-door";
  if (opening.overhead) return "named-overhead";
  return opening.window || opening.sill || opening.sill_course ? "named-window" : "named-opening";
}

std::string name_of(const Side& side) { return side.name.empty() ? side.from + side.to : side.name; }

}  // namespace

Fact named_place(const Job& job, std::string_view place) {
  const InList at = in_list(place);
  const auto has = [&](std::string_view list, std::size_t size) {
    return at.found && at.list == list && at.index < size;
  };
  if (has("openings", job.openings.size())) {
    const Opening& opening = job.openings[at.index];
    return fact(kind_of(opening), {opening.name, opening.on});
  }
  if (has("sides", job.outline.sides.size())) return fact("named-side", {name_of(job.outline.sides[at.index])});
  if (has("interior_walls", job.interior_walls.size())) return fact("named-wall", {job.interior_walls[at.index].name});
  if (has("readings", job.readings.size())) return fact("named-reading", {job.readings[at.index].id});
  if (has("laid", job.laid.size())) return fact("named-entry", {job.laid[at.index].id});
  return {};
}

}  // namespace stringcourse::cli
