#include "print/hard_jobs.hpp"

#include <map>

#include "property/dice.hpp"
#include "property/random_jobs.hpp"
#include "solve/printed_set.hpp"

namespace stringcourse::print_test {
namespace {

/// Everywhere that a name stands.
template <typename Visit>
void for_each_name(Job& job, const Visit& visit) {
  for (Side& side : job.outline.sides) visit(side.from), visit(side.to);
  for (InteriorWall& wall : job.interior_walls) visit(wall.name), visit(wall.off), visit(wall.place.from);
  for (Opening& opening : job.openings) visit(opening.name), visit(opening.on), visit(opening.place.from);
  for (PlacedControlJoint& joint : job.control_joints.placed) visit(joint.on), visit(joint.place.from);
  if (job.steel.bars) {
    for (DimensionedBar& bar : job.steel.bars->dimensioned) visit(bar.on), visit(bar.place.from);
  }
}

std::string long_name(const std::string& name, Names names) {
  switch (names) {
    case Names::OneLetter: return name;
    case Names::Words: return "North-east room " + name;
    case Names::OneLongWord: return "Wagenschuppen" + name;
    case Names::Longest:
      return name + " " + std::string(80, 'W') + " of the pottery, behind the drying racks and the clay cellar " +
             std::string(40, 'm');
  }
  return name;
}

/// Old names to new ones; a side's name is its corners', and follows them.
std::map<std::string, std::string> new_names(const Job& job, Names names) {
  std::map<std::string, std::string> renamed;
  for (const Side& side : job.outline.sides) {
    renamed[side.from] = long_name(side.from, names), renamed[side.to] = long_name(side.to, names);
    renamed[side.from + side.to] = long_name(side.from, names) + long_name(side.to, names);
  }
  for (const InteriorWall& wall : job.interior_walls) renamed[wall.name] = long_name(wall.name, names);
  for (const Opening& opening : job.openings) renamed[opening.name] = long_name(opening.name, names);
  for (const char* end : {"start", "end", "free end"}) renamed[end] = end;
  return renamed;
}

void add_readings(Job& job, property::Dice& dice) {
  const Length step = job.tape == Tape::Inches ? Length::sixteenths(1) : Length::millimetres(1);
  const auto add = [&](const std::string& station, Length rod) {
    Reading reading;
    reading.id = "r" + std::to_string(job.readings.size());
    reading.by = "M. L.";
    reading.rod = RodReading{"1", station, rod, {}, {}, {}, {}, {}};
    job.readings.push_back(reading);
  };
  add("datum", Length::inches(48));
  for (const Side& side : job.outline.sides) add(side.from, Length::inches(52) + step * dice.between(-20, 20));
  for (const Side& side : job.outline.sides) {
    Reading reading;
    reading.id = "t" + std::to_string(job.readings.size());
    reading.tape = TapeReading{side.from, side.to, side.length.length + step * dice.between(-6, 6)};
    job.readings.push_back(reading);
  }
}

}  // namespace

std::vector<std::string> names_in(const Job& job) {
  std::vector<std::string> names;
  for (const Side& side : job.outline.sides) names.push_back(side.from), names.push_back(side.to);
  for (const InteriorWall& wall : job.interior_walls) names.push_back(wall.name);
  for (const Opening& opening : job.openings) names.push_back(opening.name);
  return names;
}

std::optional<Solved> hard_job(std::uint64_t seed, Names names) {
  Job job = property::random_job(seed, seed % 3 == 0 ? property::Size::Large : property::Size::Small);
  property::Dice dice(seed + 1'000);
  const auto renamed = new_names(job, names);
  for_each_name(job, [&](std::string& name) {
    const auto found = renamed.find(name);
    if (found != renamed.end()) name = found->second;
  });
  job.name = long_name("Store", names), job.drawn_by = long_name("R. Ode", names),
  job.issued = long_name("Set A", names);
  job.setting_out.emplace();
  if (dice.one_in(2))
    job.setting_out->footing_outside = job.tape == Tape::Inches ? Length::inches(4) : Length::millimetres(100);
  if (dice.one_in(2)) job.setting_out->footing_inside = job.setting_out->footing_outside;
  add_readings(job, dice);
  auto answer = solve(job, {.offers = false, .save_dowels = false, .search_budget = 4'000});
  if (!answer) return std::nullopt;
  const auto kept = std::make_shared<const Answer>(std::move(*answer));
  return Solved{"seed " + std::to_string(seed), kept, *kept};
}

}  // namespace stringcourse::print_test
