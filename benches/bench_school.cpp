// How the whole answer grows with the building: a school of 100,000 and of 1,000,000 units.
#include <cstdio>
#include <cstdlib>

#include "benches/figure.hpp"
#include "benches/school.hpp"
#include "solve/answer_json.hpp"
#include "solve/solve.hpp"

namespace {

using namespace stringcourse;

Answer solved(const Job& job) {
  auto answer = solve(job, {});
  if (answer && answer->layout.stopped.empty()) return *std::move(answer);
  if (!answer) std::fprintf(stderr, "refused: %s: %s\n", answer.error().shown[0].place.c_str(), answer.error().shown[0].reason.c_str());
  if (answer) std::fprintf(stderr, "stopped: %s\n", answer->layout.stopped[0].rule.c_str());
  std::exit(1);
}

double written_bytes(const Answer& answer) {
  std::size_t bytes = 0;
  const bool whole = write_answer(answer, [&](std::string_view part) { return bytes += part.size(), true; });
  return whole ? static_cast<double>(bytes) : 0;
}

// Seconds for each thousand units.
double measure(const char* name, std::int64_t units, double most_seconds, int times) {
  const Job job = benches::school(units);
  const Answer answer = solved(job);
  const double solving = benches::seconds_of(times, [&] { (void)solved(job); });
  double bytes = 0;
  const double writing = benches::seconds_of(times, [&] { bytes = written_bytes(answer); });
  const double thousands = static_cast<double>(answer.layout.pieces.size()) / 1000;
  const std::string prefix(name);
  benches::print_figure(prefix + "_units", thousands * 1000, "units", static_cast<double>(units) * 1.1);
  benches::print_figure(prefix + "_solve", solving, "s", most_seconds);
  benches::print_figure(prefix + "_answer_json", writing, "s", most_seconds);
  benches::print_figure(prefix + "_answer_json_size", bytes / thousands / 1000, "bytes/unit", 100);
  return solving / thousands;
}

}  // namespace

int main() {
  // Targets: well under a second for a hundred thousand units; cost in proportion to the number of units, with half as
  // much again allowed for caches.
  const double small = measure("school_100k", 100'000, 0.5, 3);
  const double large = measure("school_1m", 1'000'000, 5.0, 1);
  benches::print_figure("school_growth_per_unit", large / small, "ratio", 1.5);
  benches::print_figure("school_peak_memory", benches::peak_megabytes(), "MB", 1000);
}
