#include "solve/poured.hpp"

#include <algorithm>

#include "bond/assemble.hpp"
#include "ground/as_found.hpp"
#include "laying/log.hpp"
#include "walls/resolve.hpp"

namespace stringcourse {
namespace {

bool is_corner(const Building& building, const std::string& name) {
  return std::ranges::any_of(building.corners, [&](const Corner& corner) { return corner.name == name; });
}

/// The rod on what the walls will stand on, at a place of theirs.
bool on_bearing(const RodReading& rod, const Building& building) {
  return rod.surface.value_or(Surface::Bearing) == Surface::Bearing && (rod.on || is_corner(building, rod.station));
}

/// Units measured on their pallet say nothing of a wall.
bool stands_on_concrete(const LaidEntry& entry) { return !entry.units && !entry.strike; }

}  // namespace

bool is_poured(const Job& job, const Building& building) {
  const std::vector<bool> read = ground::entries_that_count(job, building), laid = laying::entries_that_count(job);
  for (std::size_t k = 0; k < job.readings.size(); ++k) {
    const Reading& entry = job.readings[k];
    if (read[k] && (entry.dowel || entry.edge || (entry.rod && on_bearing(*entry.rod, building)))) return true;
  }
  for (std::size_t k = 0; k < job.laid.size(); ++k) {
    if (laid[k] && stands_on_concrete(job.laid[k]) && laying::unknown_in(job.laid[k], building).empty()) return true;
  }
  return false;
}

std::optional<AsPoured> without_kept_dowels(const Job& job, bond::PanelMemo& memo) {
  if (job.steel.kept_dowels.empty()) return std::nullopt;
  Job plain = job;
  plain.steel.kept_dowels.clear();
  auto building = resolve(plain);
  if (!building) return std::nullopt;
  Layout layout = bond::lay_out(*building, memo);
  return AsPoured{*std::move(building), std::move(layout)};
}

void number_as_poured(const std::vector<steel::Dowel>& poured, const steel::DowelsNow& now,
                      std::vector<steel::FoundDowel>& found) {
  for (std::size_t k = 0; k < found.size(); ++k) {
    if (now.read[k]) found[k].number = poured[*now.read[k]].number;
  }
}

std::vector<Finding> dowel_findings(const Building& building, const std::vector<steel::Dowel>& poured,
                                    const steel::DowelsNow& now) {
  std::string bare, without;
  const auto add = [&](std::string& text, const steel::Dowel& one) {
    text += (text.empty() ? "" : ", ") + building.walls[static_cast<std::size_t>(one.wall)].name + " at " +
            tape_text(one.along, building.tape);
  };
  for (const steel::DowelNow& one : now.dowels) {
    if (!one.bar && !one.found) add(bare, poured[one.dowel]);
  }
  for (const steel::Dowel& one : now.without) add(without, one);
  std::vector<Finding> findings;
  const auto say = [&](std::string code, std::string text) {
    findings.push_back(
        {std::move(code), "/steel", std::move(text), "dowels stay where they were poured", HoldPoint::FirstCourse});
  };
  if (!bare.empty())
    say("dowel-without-bar",
        "No bar comes down to these dowels now: " + bare + ". Ask your engineer before one is cut off.");
  if (!without.empty())
    say("bar-without-dowel", "These bars have no dowel: " + without + ". Ask your engineer how one is set.");
  return findings;
}

}  // namespace stringcourse
