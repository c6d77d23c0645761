#include "benches/figure.hpp"

#include <sys/resource.h>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <vector>

extern "C" unsigned workload(unsigned rounds);  // workload.c

namespace stringcourse::benches {

namespace {

constexpr unsigned kRounds = 4;
constexpr double kQuietSeconds = 0.041;  // two quiet cores, the machine that the targets were set on

/// How slow this machine is just now, against that one. Told once.
double machine_factor() {
  static const double kFactor = [] {
    volatile unsigned kept = workload(1);
    const double taken = median_seconds(5, [&] { kept = workload(kRounds); });
    std::printf("machine_factor %.3g times (workload %.1f ms)\n", taken / kQuietSeconds, taken * 1e3);
    return taken / kQuietSeconds;
  }();
  return kFactor;
}

/// Targets of time grow with the machine's slowness; others stay.
double fair(double target, std::string_view unit) {
  return unit == "s" || unit == "ms" || unit == "us" ? target * machine_factor() : target;
}

enum class Verdict { Met, Missed };

void print_figure(std::string_view name, double value, std::string_view unit, double target, Verdict verdict) {
  std::printf("%.*s %.4g %.*s %.4g %s\n", static_cast<int>(name.size()), name.data(), value,
              static_cast<int>(unit.size()), unit.data(), target, verdict == Verdict::Met ? "met" : "missed");
  std::fflush(stdout);
}

}  // namespace

double median_seconds(int times, const std::function<void()>& work) {
  std::vector<double> taken;
  for (int run = 0; run < times; ++run) {
    const auto start = std::chrono::steady_clock::now();
    work();
    taken.push_back(std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count());
  }
  std::ranges::sort(taken);
  return taken[(taken.size() - 1) / 2];
}

void print_at_most(std::string_view name, double value, std::string_view unit, double target) {
  const double most = fair(target, unit);
  print_figure(name, value, unit, most, value <= most ? Verdict::Met : Verdict::Missed);
}

void print_at_least(std::string_view name, double value, std::string_view unit, double target) {
  print_figure(name, value, unit, target, value >= target ? Verdict::Met : Verdict::Missed);
}

double peak_megabytes() {
  rusage usage = {};
  getrusage(RUSAGE_SELF, &usage);
  return static_cast<double>(usage.ru_maxrss) * 1024 / 1e6;  // Linux counts in KiB
}

void give_up(std::string_view why) {
  std::fprintf(stderr, "%.*s\n", static_cast<int>(why.size()), why.data());
  std::exit(1);
}

}  // namespace stringcourse::benches
