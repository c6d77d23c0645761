#include "answer/as_built.hpp"

#include "job/words.hpp"
#include "measure/notation.hpp"

namespace stringcourse {

std::string change_text(const Building& building, const CourseChange& change) {
  const Wall& wall = building.walls[static_cast<std::size_t>(change.wall)];
  std::string text = wall.name + (change.courses.size() == 1 ? ", course " : ", courses ");
  for (std::size_t k = 0; k < change.courses.size(); ++k) text += (k == 0 ? "" : ", ") + number_text(change.courses[k]);
  const std::size_t units = change.units.size();
  text += ": " + (units == 0 ? std::string("the same units")
                             : number_text(units) + (units == 1 ? " unit differs" : " units differ"));
  if (change.marks_moved == 0) return text;
  return text + "; " + number_text(change.marks_moved) +
         (change.marks_moved == 1 ? " mark moves, " : " marks move, up to ") +
         tape_text(magnitude(change.farthest), building.tape) + " toward " +
         (change.farthest < Length() ? wall.start_name : wall.end_name);
}

}  // namespace stringcourse
