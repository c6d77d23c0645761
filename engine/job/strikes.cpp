#include "job/strikes.hpp"

#include <map>

namespace stringcourse {
namespace {

using Places = std::map<std::string_view, std::vector<std::size_t>>;

enum class Fate { Open, Stands, Struck };

}  // namespace

std::vector<bool> entries_standing(const std::vector<Striking>& log) {
  Places places;  // of each id
  for (std::size_t k = 0; k < log.size(); ++k) places[log[k].id].push_back(k);
  const std::vector<std::size_t> nothing;
  const auto struck_by = [&](std::size_t k) -> const std::vector<std::size_t>& {
    const auto found = log[k].strikes.empty() ? places.end() : places.find(log[k].strikes);
    return found == places.end() ? nothing : found->second;
  };
  std::vector<std::size_t> open_strikes(log.size());  // against each entry, not decided yet
  for (std::size_t k = 0; k < log.size(); ++k) {
    for (const std::size_t target : struck_by(k)) ++open_strikes[target];
  }
  std::vector<Fate> fates(log.size(), Fate::Open);
  std::vector<std::size_t> decided;
  const auto decide = [&](std::size_t k, Fate fate) {
    if (fates[k] == Fate::Open) fates[k] = fate, decided.push_back(k);
  };
  for (std::size_t k = 0; k < log.size(); ++k) {
    if (open_strikes[k] == 0) decide(k, Fate::Stands);
  }
  while (!decided.empty()) {
    const std::size_t k = decided.back();
    decided.pop_back();
    for (const std::size_t target : struck_by(k)) {
      --open_strikes[target];
      if (fates[k] == Fate::Stands) decide(target, Fate::Struck);
      else if (open_strikes[target] == 0) decide(target, Fate::Stands);
    }
  }
  std::vector<bool> stands;
  stands.reserve(log.size());
  for (const Fate fate : fates) stands.push_back(fate == Fate::Stands);
  return stands;
}

}  // namespace stringcourse
