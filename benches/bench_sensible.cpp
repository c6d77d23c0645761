// Buildings that somebody would build, on the module and off it: how many are laid, how many proven, how long it takes.
// bench_sensible [COUNT [FIRST_SEED [GRAIN [BUDGET]]]]; with a grain (module, inch, sixteenth) its buildings alone,
// each told.
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <string>
#include <string_view>
#include <vector>

#include "figure.hpp"
#include "property/sensible_jobs.hpp"
#include "solve/solve.hpp"
#include "words/language.hpp"

namespace {

using namespace stringcourse;

struct Tally {
  std::vector<double> times;  // milliseconds
  std::uint64_t laid = 0, proven = 0, conceding = 0;

  [[nodiscard]] double at(double share) {
    std::ranges::sort(times);
    return times.empty() ? 0 : times[static_cast<std::size_t>(share * static_cast<double>(times.size() - 1))];
  }
  [[nodiscard]] double share(std::uint64_t count) const {
    return times.empty() ? 0 : 100.0 * static_cast<double>(count) / static_cast<double>(times.size());
  }
};

struct Wanted {
  std::string_view name;
  property::Grain grain;
  double proven, median, slowest;  // percent, milliseconds
};

void tell(const Wanted& wanted, std::uint64_t seed, const Job& job, const std::expected<Answer, Refusals>& answer,
          double time) {
  std::printf("%s %llu %s %.0f ms: ", wanted.name.data(), static_cast<unsigned long long>(seed),
              job.units.series.c_str(), time);
  if (!answer) {
    std::printf("refused, %s\n", words::told(answer.error().shown.front().reason, {Tape::Inches}).c_str());
    return;
  }
  const Layout& layout = answer->layout;
  std::printf("%s, conceded %lld in %zu, laps %lld (%lld), cuts %lld (%lld)", layout.proven ? "proven" : "not proven",
              static_cast<long long>(layout.cost.conceded), layout.conceded.size(),
              static_cast<long long>(layout.cost.short_laps), static_cast<long long>(layout.least_possible.short_laps),
              static_cast<long long>(layout.cost.cuts), static_cast<long long>(layout.least_possible.cuts));
  for (const Stopped& stop : layout.stopped)
    std::printf("; stopped, %s", words::told(stop.rule, {Tape::Inches}).c_str());
  std::printf("\n");
}

void measure(const Wanted& wanted, std::uint64_t first, std::uint64_t count, bool each, const Wishes& wishes) {
  Tally tally;
  for (std::uint64_t seed = first; seed < first + count; ++seed) {
    const Job job = property::sensible_job(seed, wanted.grain);
    const auto start = std::chrono::steady_clock::now();
    const auto answer = solve(job, wishes);
    tally.times.push_back(std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count());
    if (each) tell(wanted, seed, job, answer, tally.times.back());
    if (!answer || !answer->layout.stopped.empty()) continue;
    ++tally.laid;
    tally.proven += answer->layout.proven ? 1 : 0;
    tally.conceding += answer->layout.cost.conceded > 0 ? 1 : 0;
  }
  const std::string name = "sensible_" + std::string(wanted.name);
  benches::print_at_least(name + "_laid", tally.share(tally.laid), "%", 100);
  benches::print_at_least(name + "_proven", tally.share(tally.proven), "%", wanted.proven);
  benches::print_at_most(name + "_rules_given_up", tally.share(tally.conceding), "%", 100);
  benches::print_at_most(name + "_median", tally.at(0.5), "ms", wanted.median);
  benches::print_at_most(name + "_99th", tally.at(0.99), "ms", wanted.slowest);
}

}  // namespace

int main(int count_of_words, char** words) {
  const std::uint64_t count = count_of_words > 1 ? std::strtoull(words[1], nullptr, 10) : 12;
  const std::uint64_t first = count_of_words > 2 ? std::strtoull(words[2], nullptr, 10) : 1;
  const std::string_view only = count_of_words > 3 ? words[3] : "";
  Wishes wishes;
  if (count_of_words > 4) wishes.search_budget = std::strtoll(words[4], nullptr, 10);
  for (const Wanted& wanted :
       {Wanted{"module", property::Grain::Module, 99, 10, 300}, Wanted{"inch", property::Grain::Inch, 80, 150, 1500},
        Wanted{"sixteenth", property::Grain::Sixteenth, 80, 150, 1500}}) {
    if (only.empty() || only == wanted.name) measure(wanted, first, count, !only.empty(), wishes);
  }
}
