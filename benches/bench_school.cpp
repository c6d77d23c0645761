// How the cost grows with the building: schools of 12,500 to 1,000,000 units, and all files of one of 100,000.
#include <cmath>
#include <cstdint>
#include <string>
#include <vector>

#include "benches/figure.hpp"
#include "benches/school.hpp"
#include "benches/whole_set.hpp"

namespace {

using namespace stringcourse;

struct Measured {
  double units = 0, seconds = 0;
};

Measured measure(std::int64_t units, int times) {
  const Job job = benches::school(units);
  double pieces = 0;
  const double seconds =
      benches::median_seconds(times, [&] { pieces = static_cast<double>(benches::solved(job).layout.pieces.size()); });
  return {pieces, seconds};
}

// The slope of the line of least squares through (log units, log seconds): 1 where the cost grows as the units do.
double exponent(const std::vector<Measured>& all) {
  double x = 0, y = 0, xx = 0, xy = 0;
  for (const Measured& one : all) {
    const double u = std::log(one.units), s = std::log(one.seconds);
    x += u, y += s, xx += u * u, xy += u * s;
  }
  const double n = static_cast<double>(all.size());
  return (n * xy - x * y) / (n * xx - x * x);
}

}  // namespace

int main() {
  std::vector<Measured> all;
  for (const std::int64_t units : {12'500, 25'000, 50'000}) all.push_back(measure(units, 5));
  all.push_back(measure(100'000, 5));
  benches::print_at_most("school_100k_solve", all.back().seconds, "s", 0.5);
  // Nothing larger has been solved and nothing written so far.
  benches::print_at_most("school_100k_memory", benches::peak_megabytes(), "MB", 300);
  const Job job = benches::school(100'000);
  const double all_files = benches::median_seconds(1, [&] { (void)benches::seconds_to_write(benches::solved(job)); });
  benches::print_at_most("school_100k_all_files", all_files, "s", 5);
  for (const std::int64_t units : {200'000, 400'000, 1'000'000}) all.push_back(measure(units, 3));
  benches::print_at_most("school_1m_solve", all.back().seconds, "s", 6);
  benches::print_at_most("school_cost_exponent", exponent(all), "exponent", 1.1);
}
