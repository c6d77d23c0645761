#include "laying/merge_jobs.hpp"

#include <algorithm>
#include <cstdint>
#include <map>
#include <set>
#include <string>
#include <utility>

#include "job/tables.hpp"
#include "job/write.hpp"
#include "laying/merge.hpp"

namespace stringcourse::laying {
namespace {

/// FNV-1a, 32 bits, as eight digits. SOURCE: the published constants of that hash.
std::string mark_of(const std::string& text) {
  std::uint32_t hash = 2166136261U;
  for (const char byte : text) hash = (hash ^ static_cast<unsigned char>(byte)) * 16777619U;
  std::string mark(8, '0');
  for (std::size_t k = 8; k-- > 0; hash >>= 4U) mark[k] = "0123456789abcdef"[hash & 15U];
  return mark;
}

template <class Entry>
std::string content_of(Entry entry, Tape tape) {
  entry.id.clear();
  return write_entry(entry, tape);
}

template <class Entry>
std::vector<LogEntry> log_of(const std::vector<Entry>& entries, Tape tape,
                             std::map<std::pair<std::string, std::string>, Entry>& by_content) {
  std::vector<LogEntry> log;
  for (const Entry& entry : entries) {
    log.push_back({entry.id, entry.when, content_of(entry, tape)});
    by_content.emplace(std::pair(entry.id, log.back().content), entry);
  }
  return log;
}

template <class Entry>
std::vector<Entry> united(const std::vector<Entry>& first, const std::vector<Entry>& second, Tape tape,
                          MergedJobs& into) {
  std::map<std::pair<std::string, std::string>, Entry> by_content;
  const std::vector<LogEntry> one = log_of(first, tape, by_content), other = log_of(second, tape, by_content);
  MergedLog all = merged(one, other);
  // Of one id the first content keeps it.
  std::map<std::string, std::string> keeps;
  for (const LogEntry& entry : all.entries) {
    const auto [kept, fresh] = keeps.emplace(entry.id, entry.content);
    if (!fresh && entry.content < kept->second) kept->second = entry.content;
  }
  std::map<std::string, Entry> named;
  const auto keys = [](const std::vector<LogEntry>& log) {
    std::set<std::pair<std::string, std::string>> all_keys;
    for (const LogEntry& entry : log) all_keys.emplace(entry.id, entry.content);
    return all_keys;
  };
  const auto in_one = keys(one), in_other = keys(other);
  for (const LogEntry& entry : all.entries) {
    Entry found = by_content.at({entry.id, entry.content});
    const std::pair key{entry.id, entry.content};
    if (keeps.at(entry.id) != entry.content) found.id = entry.id + "~" + mark_of(entry.content);
    else if (in_one.contains(key) != in_other.contains(key))
      ++(in_one.contains(key) ? into.from_first : into.from_second);
    named.emplace(found.id, found);
  }
  std::vector<Entry> entries;
  for (auto& [id, entry] : named) entries.push_back(std::move(entry));
  sort_stably(entries, [](const Entry& a, const Entry& b) { return a.when != b.when ? a.when < b.when : a.id < b.id; });
  into.conflicts.insert(into.conflicts.end(), all.conflicts.begin(), all.conflicts.end());
  return entries;
}

std::vector<std::string> differences(const Job& first, const Job& second) {
  std::vector<std::string> found;
  for_each_field<Job>([&](const auto& field) {
    if (field.name == "readings" || field.name == "laid") return;
    if (!(first.*field.member == second.*field.member)) found.push_back("/" + std::string(field.name));
  });
  return found;
}

}  // namespace

std::expected<MergedJobs, std::vector<std::string>> merged_jobs(const Job& first, const Job& second) {
  if (std::vector<std::string> other = differences(first, second); !other.empty())
    return std::unexpected(std::move(other));
  MergedJobs merged;
  merged.job = first;
  merged.job.readings = united(first.readings, second.readings, first.tape, merged);
  merged.job.laid = united(first.laid, second.laid, first.tape, merged);
  return merged;
}

}  // namespace stringcourse::laying
