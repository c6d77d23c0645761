// At the wall: a correction, and courses played for the odds.
#include <fstream>
#include <sstream>

#include "benches/figure.hpp"
#include "job/read.hpp"
#include "laying/course_as_laid.hpp"
#include "solve/solve.hpp"

int main() {
  using namespace stringcourse;
  std::ostringstream text;
  text << std::ifstream("examples/kiln-house.json").rdbuf();
  const auto job = read_job(text.str());
  if (!job) benches::give_up("the example cannot be read");
  const auto plan = solve(*job, Wishes{});
  if (!plan) benches::give_up("the example cannot be planned");
  const Length mark = Length::sixteenths(55 * 16 + 10);
  const double correction = benches::median_seconds(101, [&] {
    const auto course = laying::course_as_laid(plan->job, plan->building, {plan->layout}, plan->laid->how,
                                               plan->laid->counts, 0, 1, laying::Trial{mark, Length::sixteenths(3)});
    if (course.runs.front().next.joints.size() != 3) benches::give_up("no correction");
  });
  benches::print_at_most("correction_native", correction * 1000, "ms", 10);
  laying::CourseAhead course;
  course.units = 24, course.unit = Length::inches(16);
  course.past_most = Length::sixteenths(4), course.short_most = Length::sixteenths(12);
  const double odds = benches::median_seconds(3, [&] {
    const auto rules = laying::joint_rules(Tape::Inches, Length::sixteenths(6));
    if (laying::simulate(course, {}, rules, laying::Marks::Used, 2'000, 1).courses != 2'000)
      benches::give_up("not played");
  });
  benches::print_at_most("courses_played_2000_of_24_units", odds, "s", 2);
}
