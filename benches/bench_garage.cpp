// A garage-sized job, as it is solved again and again while an opening is dragged: one frame of a phone, 1/60 s.
#include <cstdio>
#include <fstream>
#include <iterator>
#include <string>

#include "benches/figure.hpp"
#include "job/read.hpp"
#include "solve/answer_json.hpp"
#include "solve/solve.hpp"

int main() {
  using namespace stringcourse;
  std::ifstream file(STRINGCOURSE_ROOT "/examples/kiln-house.json");
  const std::string text{std::istreambuf_iterator<char>(file), {}};
  const auto job = read_job(text);
  if (!job) return std::fputs("kiln-house.json is refused\n", stderr), 1;
  std::string document;
  const double solving = benches::seconds_of(20, [&] { (void)solve(*job, {}); });
  Wishes wishes;
  wishes.offers = true;
  const double offering = benches::seconds_of(3, [&] { (void)solve(*job, wishes); });
  const double answering = benches::seconds_of(20, [&] {
    const auto read = read_job(text);
    document = answer_text(*solve(*read, {}));
  });
  benches::print_figure("garage_solve", solving * 1000, "ms", 1000.0 / 60);
  benches::print_figure("garage_json_to_json", answering * 1000, "ms", 1000.0 / 60);
  benches::print_figure("garage_offers", offering * 1000, "ms", 1000);
}
