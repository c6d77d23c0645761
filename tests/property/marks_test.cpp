// Running marks of random jobs: a tape that is hooked where the wall's numbers begin reads each of them.
#include <gtest/gtest.h>

#include "bond/layout_parts.hpp"
#include "laying/course_as_laid.hpp"
#include "property/random_jobs.hpp"
#include "setout/marks.hpp"
#include "solve/solve.hpp"

namespace stringcourse::property {
namespace {

TEST(Marks, NoneOfARandomJobLiesBehindZeroOrBeyondTheMasonry) {
  int marks = 0;
  for (std::uint64_t seed = 0; seed < 120; ++seed) {
    const auto answer = solve(random_job(seed), {});
    if (!answer || !answer->layout.stopped.empty()) continue;
    const Building& building = answer->building;
    for (std::size_t wall = 0; wall < building.walls.size(); ++wall) {
      const Length end = bond::reach_of_wall(building, answer->layout, static_cast<int>(wall)).to;
      for (std::size_t course = 1; course <= building.courses.size(); ++course) {
        for (const setout::Mark& mark :
             setout::running_marks(building, answer->layout, static_cast<int>(wall), static_cast<int>(course))) {
          ++marks;
          // Only a unit that lies wholly in the wall that this one enters ends behind zero.
          if (mark.kind != setout::MarkKind::BlockEnd)
            EXPECT_GE(mark.at, Length()) << seed << " " << building.walls[wall].name << " " << course;
          // A mark is rounded to the tape once.
          EXPECT_LE(mark.at, end + tape_step(building.tape))
              << seed << " " << building.walls[wall].name << " " << course;
        }
        const auto read = laying::course_as_laid(
            answer->job, building, {answer->layout}, laying::how_laid(answer->job, building),
            std::vector<bool>(answer->job.laid.size(), false), static_cast<int>(wall), static_cast<int>(course));
        for (const laying::WallMark& mark : read.marks) {
          if (mark.to_read)
            EXPECT_GE(mark.mark.at, Length()) << seed << " " << building.walls[wall].name << " " << course;
        }
      }
    }
  }
  EXPECT_GT(marks, 10'000);
}

}  // namespace
}  // namespace stringcourse::property
