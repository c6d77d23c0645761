#pragma once
// What the layout came to once jambs, corners, dowels or courses were found otherwise than planned.
#include <cstdint>
#include <string>
#include <vector>

#include "bond/layout.hpp"
#include "job/job.hpp"
#include "walls/building.hpp"

namespace stringcourse {

/// Courses of one wall that change alike, as far as they are still to be laid.
struct CourseChange {
  std::int32_t wall = 0;
  std::vector<int> courses;  // rising
  std::vector<Fact> units;   // what each changed unit was and is: "unit 7: full, now a cut of 11 5/8\""
  int marks_moved = 0;       // block ends whose mark is another, by the tape's steps
  Length farthest;           // of them, towards the wall's end above zero
  friend bool operator==(const CourseChange&, const CourseChange&) = default;
};

/// What is otherwise than planned. Building and layout as they are now are the answer's own.
struct AsBuilt {
  Job job;           // the user's, with what was found in the place of what was wanted, its bars over their dowels
  Building planned;  // as it was before anything was found
  Layout printed;
  std::vector<CourseChange> changes;  // by wall, then course; nothing that is laid
  std::vector<std::uint32_t> pieces;  // changed, into layout.pieces, rising
  bool laid_kept = true;              // no course laid has to come up
};

/// "AB, courses 2, 4: 3 units differ; 9 marks move, up to 3/8\" toward B".
[[nodiscard]] Fact change_said(const Building& building, const CourseChange& change);

/// Building and layout as they were poured, where the job has changed the layout since: bars kept over dowels found.
struct AsPoured {
  Building building;
  Layout layout;
};

}  // namespace stringcourse
