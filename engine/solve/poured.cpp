#include "solve/poured.hpp"

#include <algorithm>

#include "bond/assemble.hpp"
#include "ground/as_found.hpp"
#include "ground/shape_choices.hpp"
#include "laying/log.hpp"
#include "walls/resolve.hpp"

namespace stringcourse {

bool is_poured(const Job& job, const Building& building) {
  const std::vector<bool> read = ground::entries_that_count(job, building), laid = laying::entries_that_count(job);
  if (ground::concrete_is_read(job, building, read)) return true;
  for (std::size_t k = 0; k < job.laid.size(); ++k) {
    if (laid[k] && laying::stands_on_concrete(job.laid[k]) && laying::unknown_in(job.laid[k], building).empty())
      return true;
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
  std::vector<Fact> bare, without;
  const auto place = [&](const steel::Dowel& one) {
    return fact("at-on-wall", {building.walls[static_cast<std::size_t>(one.wall)].name, one.along});
  };
  for (const steel::DowelNow& one : now.dowels) {
    if (!one.bar && !one.found) bare.push_back(place(poured[one.dowel]));
  }
  for (const steel::Dowel& one : now.without) without.push_back(place(one));
  std::vector<Finding> findings;
  const auto say = [&](Code code, const std::vector<Fact>& places) {
    if (places.empty()) return;
    // Bars are said at the pour, dowels are read at the first course: both are told.
    for (const HoldPoint point : {HoldPoint::Pour, HoldPoint::FirstCourse})
      findings.push_back({code, "/steel", fact(code, {listed(FactValue::Kind::Commas, places)}), "dowels-stay", point});
  };
  say("dowel-without-bar", bare), say("bar-without-dowel", without);
  return findings;
}

}  // namespace stringcourse
