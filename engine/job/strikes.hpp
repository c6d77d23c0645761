#pragma once
// Entries of a log that are struck: by another entry, which may be struck itself.
#include <string_view>
#include <vector>

namespace stringcourse {

/// What one entry of a log has to do with strikes.
struct Striking {
  std::string_view id;       // the entry's own
  std::string_view strikes;  // the id that it strikes, or empty: no strike
};

/// For each entry whether it stands: no standing entry strikes it. A strike that is struck strikes nothing, so that
/// what it struck stands again. The order of the entries says nothing. Strikes that strike one another in a ring do not
/// stand; they strike nothing else, for each strikes one entry. Takes n log n where no id stands twice.
[[nodiscard]] std::vector<bool> entries_standing(const std::vector<Striking>& log);

/// The same of a job's own log, of readings or of what was laid.
template <class Entry>
[[nodiscard]] std::vector<bool> entries_standing(const std::vector<Entry>& log) {
  std::vector<Striking> strikings;
  strikings.reserve(log.size());
  for (const Entry& entry : log)
    strikings.push_back({entry.id, entry.strike ? std::string_view(*entry.strike) : std::string_view()});
  return entries_standing(strikings);
}

}  // namespace stringcourse
