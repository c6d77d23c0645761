// The kiln house, as it is solved again and again while an opening is dragged, and as it is written.
#include <fstream>
#include <iterator>
#include <string>

#include "benches/figure.hpp"
#include "benches/whole_set.hpp"
#include "job/read.hpp"

int main() {
  using namespace stringcourse;
  std::ifstream file(STRINGCOURSE_ROOT "/examples/kiln-house.json");
  const std::string text{std::istreambuf_iterator<char>(file), {}};
  const auto job = read_job(text);
  if (!job) benches::give_up("examples/kiln-house.json is refused");
  const double solving = benches::median_seconds(21, [&] { (void)benches::solved(*job); });
  const double all_files = benches::median_seconds(21, [&] { (void)benches::seconds_to_write(benches::solved(*job)); });
  Wishes wishes;
  wishes.offers = true;
  const double offering = benches::median_seconds(3, [&] { (void)solve(*job, wishes); });
  benches::print_at_most("kiln_house_solve", solving * 1000, "ms", 5);
  benches::print_at_most("kiln_house_all_files", all_files * 1000, "ms", 15);
  benches::print_at_most("kiln_house_offers", offering * 1000, "ms", 300);
}
