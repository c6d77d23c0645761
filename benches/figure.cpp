#include "benches/figure.hpp"

#include <sys/resource.h>

#include <algorithm>
#include <chrono>
#include <cstdio>

namespace stringcourse::benches {

double seconds_of(int times, const std::function<void()>& work) {
  double least = 1e9;
  for (int run = 0; run < times; ++run) {
    const auto start = std::chrono::steady_clock::now();
    work();
    const std::chrono::duration<double> taken = std::chrono::steady_clock::now() - start;
    least = std::min(least, taken.count());
  }
  return least;
}

void print_figure(std::string_view name, double value, std::string_view unit, double target) {
  std::printf("%.*s %.4g %.*s %.4g %s\n", static_cast<int>(name.size()), name.data(), value, static_cast<int>(unit.size()),
              unit.data(), target, value <= target ? "met" : "missed");
  std::fflush(stdout);
}

double peak_megabytes() {
  rusage usage = {};
  getrusage(RUSAGE_SELF, &usage);
  return static_cast<double>(usage.ru_maxrss) / 1024.0;  // Linux counts in KiB
}

}  // namespace stringcourse::benches
