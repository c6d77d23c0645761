#pragma once
// Two phones' logs of one job become one, by union: the same whatever the order. Nothing is lost; what disagrees is
// kept twice and said.
#include <algorithm>
#include <compare>
#include <string>
#include <vector>

#include "measure/sorting.hpp"

namespace stringcourse::laying {

/// One entry: `id` is its own, made once where it was entered; `when` orders entries for reading; `content` is all it
/// says.
struct LogEntry {
  std::string id, when, content;
  friend auto operator<=>(const LogEntry&, const LogEntry&) = default;
};

struct MergedLog {
  std::vector<LogEntry> entries;       // by when, then id, then content; none twice
  std::vector<std::string> conflicts;  // ids that stand with more than one content, rising
};

/// The union. Idempotent, commutative, associative; a log is a set, its order is only for reading.
[[nodiscard]] inline MergedLog merged(std::vector<LogEntry> one, const std::vector<LogEntry>& other) {
  MergedLog merged;
  one.insert(one.end(), other.begin(), other.end());
  sort_stably(one, [](const LogEntry& a, const LogEntry& b) {
    return a.when != b.when ? a.when < b.when : a.id != b.id ? a.id < b.id : a.content < b.content;
  });
  one.erase(std::unique(one.begin(), one.end()), one.end());
  std::vector<LogEntry> by_id = one;
  sort_stably(by_id, [](const LogEntry& a, const LogEntry& b) { return a.id < b.id; });
  for (std::size_t k = 1; k < by_id.size(); ++k) {
    if (by_id[k].id != by_id[k - 1].id) continue;
    if (merged.conflicts.empty() || merged.conflicts.back() != by_id[k].id) merged.conflicts.push_back(by_id[k].id);
  }
  merged.entries = std::move(one);
  return merged;
}

}  // namespace stringcourse::laying
