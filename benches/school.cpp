#include "benches/school.hpp"

#include <algorithm>
#include <string>

namespace stringcourse::benches {

namespace {

// One bay, in feet: two classrooms of 32 x 24 with an 8 ft corridor between them, 14 courses high.
constexpr std::int64_t kBay = 32, kRoom = 24, kCorridor = 8;
constexpr int kCourses = 14;
// Units of one bay, near enough: four walls of 32 ft and two of 24 ft make 132 units of 16 in a course, less openings.
constexpr std::int64_t kUnitsOfBay = 1'640;

StatedLength feet(std::int64_t count) { return {Length::feet(count), Basis::Nominal}; }
StatedLength inches(std::int64_t count) { return {Length::inches(count), Basis::Nominal}; }

std::string numbered(std::string_view prefix, std::int64_t number) {
  return std::string(prefix) + std::to_string(number);
}

Opening window(std::string name, std::string on, std::string from, std::int64_t at_inches) {
  Opening opening;
  opening.name = std::move(name);
  opening.on = std::move(on);
  opening.place = {std::move(from), inches(at_inches), std::nullopt};
  opening.masonry = MasonrySize{inches(72), inches(48)};
  opening.sill_course = 5;
  return opening;
}

Opening door(std::string name, std::string on, std::int64_t at_inches) {
  Opening opening;
  opening.name = std::move(name);
  opening.on = std::move(on);
  opening.place = {"start", inches(at_inches), std::nullopt};
  opening.masonry = MasonrySize{inches(40), inches(88)};
  return opening;
}

InteriorWall partition(std::string name, std::string off, std::string from, std::int64_t at_feet) {
  InteriorWall wall;
  wall.name = std::move(name);
  wall.off = std::move(off);
  wall.place = {std::move(from), feet(at_feet), std::nullopt};
  return wall;
}

void add_bay(Job& job, std::int64_t bay, std::int64_t bays) {
  const std::int64_t start = bay * kBay * 12;
  for (const std::int64_t at : {48, 192}) {
    job.openings.push_back(window(numbered("S", bay) + "-" + std::to_string(at), "AB", "A", start + at));
    job.openings.push_back(window(numbered("N", bay) + "-" + std::to_string(at), "CD", "C", start + at));
  }
  job.openings.push_back(door(numbered("DS", bay), "south corridor", start + 96));
  job.openings.push_back(door(numbered("DN", bay), "north corridor", start + 96));
  if (bay + 1 == bays) return;
  job.interior_walls.push_back(partition(numbered("PS", bay), "AB", "A", (bay + 1) * kBay));
  job.interior_walls.push_back(partition(numbered("PN", bay), "CD", "C", (bay + 1) * kBay));
}

}  // namespace

Job school(std::int64_t units) {
  const std::int64_t bays = std::max<std::int64_t>(1, units / kUnitsOfBay);
  const StatedLength length = feet(bays * kBay), depth = feet(2 * kRoom + kCorridor);
  Job job;
  job.name = "School of " + std::to_string(units) + " units";
  job.units.series = "us-8";
  job.heights.courses = kCourses;
  job.control_joints.rule = JointRule::Us;
  job.outline.sides = {{"", "A", "B", length, Turn::Right, std::nullopt},
                       {"", "B", "C", depth, Turn::Right, std::nullopt},
                       {"", "C", "D", length, Turn::Right, std::nullopt},
                       {"", "D", "A", depth, Turn::Right, std::nullopt}};
  // Listed first, so the partitions end at them.
  job.interior_walls.push_back(partition("south corridor", "DA", "A", kRoom));
  job.interior_walls.push_back(partition("north corridor", "DA", "A", kRoom + kCorridor));
  for (std::int64_t bay = 0; bay < bays; ++bay) add_bay(job, bay, bays);
  return job;
}

}  // namespace stringcourse::benches
