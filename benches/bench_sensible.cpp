// Buildings that somebody would build, on the module and off it: how many are laid, how many proven, how long it takes.
// bench_sensible [COUNT [FIRST_SEED [stopped]]]: with "stopped", every building without a whole layout is told with its rule.
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <map>
#include <string>
#include <vector>

#include "property/sensible_jobs.hpp"
#include "solve/solve.hpp"

namespace {

using namespace stringcourse;

double at(std::vector<double> sorted, double share) {
  std::ranges::sort(sorted);
  return sorted.empty() ? 0 : sorted[static_cast<std::size_t>(share * static_cast<double>(sorted.size() - 1))];
}

void measure(const char* name, property::Grain grain, std::uint64_t first, std::uint64_t count, bool tell) {
  std::vector<double> times;
  std::map<std::string, int> rules;
  int refused = 0, laid = 0, proven = 0;
  long long gap = 0, laps = 0;
  for (std::uint64_t seed = first; seed < first + count; ++seed) {
    const Job job = property::sensible_job(seed, grain);
    const auto start = std::chrono::steady_clock::now();
    const auto answer = solve(job, Wishes{});
    times.push_back(std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count());
    if (!answer) {
      ++refused;
      ++rules["refused: " + answer.error().shown.front().code];
      if (tell) std::printf("%s %llu refused %s %s\n", name, static_cast<unsigned long long>(seed), answer.error().shown.front().place.c_str(), answer.error().shown.front().reason.c_str());
      continue;
    }
    const Layout& layout = answer->layout;
    if (!layout.stopped.empty()) {
      ++rules[layout.stopped.front().rule.substr(0, 60)];
      if (tell) std::printf("%s %llu %s stopped %s (%s)\n", name, static_cast<unsigned long long>(seed), job.units.series.c_str(), layout.stopped.front().rule.c_str(), layout.stopped.front().remedy.c_str());
      continue;
    }
    ++laid;
    laps += layout.cost.short_laps;
    if (layout.proven) ++proven; else gap += layout.cost.short_laps - layout.least_possible.short_laps;
    if (tell) std::printf("%s %llu %s laid %s laps %lld cuts %lld bound %lld %lld in %.0f ms\n", name, static_cast<unsigned long long>(seed), job.units.series.c_str(), layout.proven ? "proven" : "not-proven", static_cast<long long>(layout.cost.short_laps), static_cast<long long>(layout.cost.cuts), static_cast<long long>(layout.least_possible.short_laps), static_cast<long long>(layout.least_possible.cuts), times.back());
  }
  std::printf("%s: %llu buildings, %d refused, %d laid, %d proven; short laps %lld, gap %lld; median %.1f ms, 90th %.0f, 99th %.0f, most %.0f\n", name, static_cast<unsigned long long>(count), refused, laid, proven, laps, gap,
              at(times, 0.5), at(times, 0.9), at(times, 0.99), at(times, 1));
  for (const auto& [rule, times_met] : rules) std::printf("  %3d %s\n", times_met, rule.c_str());
}

}  // namespace

int main(int count_of_words, char** words) {
  const std::uint64_t count = count_of_words > 1 ? std::strtoull(words[1], nullptr, 10) : 100;
  const std::uint64_t first = count_of_words > 2 ? std::strtoull(words[2], nullptr, 10) : 1;
  const bool tell = count_of_words > 3 && std::strcmp(words[3], "stopped") == 0;
  measure("module", property::Grain::Module, first, count, tell);
  measure("inch", property::Grain::Inch, first, count, tell);
  measure("sixteenth", property::Grain::Sixteenth, first, count, tell);
}
