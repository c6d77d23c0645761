#include "edits/typed_opening.hpp"

#include <algorithm>
#include <array>
#include <vector>

#include "edits/typed_length.hpp"
#include "job/words.hpp"

namespace stringcourse {
namespace {

// An opening of 20 in is a hatch, one of 20 ft a hall's gate; a jamb stands 10 ft from the corner as well as 120 in.
constexpr TypedMeasure kSize{Length::inches(20), Length::millimetres(599)},
    kAlong{Length::inches(10), Length::millimetres(99)};
constexpr int kSillCourse = 5;

/// What usually stands round a leaf (common practice).
struct Frame {
  Length jamb, head, shim, buck;
};
constexpr Frame kInches{Length::inches(2), Length::inches(4), Length::sixteenths(3), Length::sixteenths(24)};
constexpr Frame kMillimetres{Length::millimetres(50), Length::millimetres(100), Length::millimetres(5),
                             Length::millimetres(38)};

std::vector<std::string> split(std::string_view text, char by) {
  std::vector<std::string> parts{""};
  for (const char byte : text) {
    if (byte == by) parts.emplace_back();
    else parts.back() += byte;
  }
  return parts;
}

/// A wall by its name, and what a place along it is measured from.
struct NamedWall {
  std::string name, from;
};

/// Sides by their names, or by their corners' where they have none; inner walls, measured from their start.
std::vector<NamedWall> walls_of(const Job& job) {
  std::vector<NamedWall> walls;
  for (const Side& side : job.outline.sides)
    walls.push_back({side.name.empty() ? side.from + side.to : side.name, side.from});
  for (const InteriorWall& wall : job.interior_walls) walls.push_back({wall.name, "start"});
  return walls;
}

Refusal unknown_wall(const std::vector<NamedWall>& walls, const std::string& typed, const std::string& place) {
  std::vector<std::string_view> names;
  for (const NamedWall& wall : walls) names.push_back(wall.name);
  const std::string_view nearest = nearest_name(typed, names);
  return {"unknown-wall", place, fact("typed-no-wall", {FactValue::typed(typed), listed(FactValue::Kind::Or, names)}),
          nearest.empty() ? Fact() : fact("meant-series", {nearest})};
}

void put_size(Opening& opening, NewOpening what, Length width, Length height, Tape tape) {
  const Frame& frame = tape == Tape::Inches ? kInches : kMillimetres;
  switch (what) {
    case NewOpening::Window: opening.masonry = MasonrySize{{width}, {height}}; break;
    case NewOpening::Door:
      opening.door = DoorSize{width, height, frame.jamb, frame.head, std::nullopt, frame.shim};
      break;
    case NewOpening::Overhead:
      opening.overhead = OverheadSize{width, height, frame.buck, frame.buck, std::nullopt, std::nullopt};
      break;
  }
}

/// "N1", or the first number that no inner wall has.
std::string free_wall_name(const Job& job) {
  for (int number = 1;; ++number) {
    std::string name = "N" + number_text(number);
    if (!std::ranges::contains(job.interior_walls, name, &InteriorWall::name)) return name;
  }
}

}  // namespace

std::vector<std::string> wall_names(const Job& job) {
  std::vector<std::string> names;
  for (NamedWall& wall : walls_of(job)) names.push_back(std::move(wall.name));
  return names;
}

std::expected<Job, Refusals> with_typed_wall(const Job& job, const std::string& text, const std::string& place) {
  Refusals refusals;
  refusals.tape = job.tape;
  const std::vector<std::string> parts = split(text, ':');
  if (parts.size() < 2 || parts.size() > 3) {
    refusals.add({"not-a-length", place, fact("typed-wall-form", {FactValue::typed(text)}), fact("write-typed-wall")});
    return std::unexpected(std::move(refusals));
  }
  const std::vector<NamedWall> walls = walls_of(job);
  const auto wall = std::ranges::find(walls, parts[0], &NamedWall::name);
  if (wall == walls.end()) refusals.add(unknown_wall(walls, parts[0], place));
  const auto read = [&](const std::string& typed) {
    return read_typed_length(typed, job.tape, kAlong, place, refusals);
  };
  InteriorWall inner;
  inner.name = free_wall_name(job);
  inner.off = parts[0];
  inner.place.at = read(parts[1]);
  if (parts.size() == 3) inner.length = read(parts[2]);
  if (!refusals.empty()) return std::unexpected(std::move(refusals));
  inner.place.from = wall->from;
  Job with = job;
  with.interior_walls.push_back(std::move(inner));
  return with;
}

std::string free_opening_name(const Job& job, std::string_view letter) {
  for (int number = 1;; ++number) {
    std::string name = std::string(letter) + number_text(number);
    if (std::ranges::none_of(job.openings, [&](const Opening& opening) { return opening.name == name; })) return name;
  }
}

std::expected<Job, Refusals> with_typed_opening(const Job& job, const TypedOpening& typed, const std::string& place) {
  Refusals refusals;
  refusals.tape = job.tape;
  const std::vector<std::string> parts = split(typed.text, ':');
  const bool window = typed.what == NewOpening::Window;
  const std::vector<std::string> size = split(parts.size() > 2 ? parts[2] : "", 'x');
  if (parts.size() < 3 || parts.size() > (window ? 4u : 3u) || size.size() != 2) {
    refusals.add({"not-a-length", place, fact("typed-opening-form", {FactValue::typed(typed.text)}),
                  fact(window ? "write-typed-window" : "write-typed-door")});
    return std::unexpected(std::move(refusals));
  }
  const std::vector<NamedWall> walls = walls_of(job);
  const auto wall = std::ranges::find(walls, parts[0], &NamedWall::name);
  if (wall == walls.end()) refusals.add(unknown_wall(walls, parts[0], place));
  const auto read = [&](const std::string& text, const TypedMeasure& measure) {
    return read_typed_length(text, job.tape, measure, place, refusals);
  };
  const StatedLength at = read(parts[1], kAlong), width = read(size[0], kSize), height = read(size[1], kSize);
  Opening opening;
  if (parts.size() == 4) opening.sill = read(parts[3], kAlong);
  else if (window) opening.sill_course = kSillCourse;
  if (!refusals.empty()) return std::unexpected(std::move(refusals));
  opening.name = free_opening_name(job, window ? "W" : "D");
  opening.on = wall->name;
  opening.place = {wall->from, at, {}};
  put_size(opening, typed.what, width.length, height.length, job.tape);
  Job with = job;
  with.openings.push_back(std::move(opening));
  return with;
}

}  // namespace stringcourse
