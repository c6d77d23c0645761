#pragma once
// What a levelling rod must read at each height of the building, from one set-up that saw the datum.
#include <optional>
#include <vector>

#include "job/job.hpp"
#include "setout/gauge_rod.hpp"
#include "walls/building.hpp"

namespace stringcourse::setout {

enum class RodPlace { Boards, Bearing, CourseOne, Event };

struct RodReadingWanted {
  RodPlace place = RodPlace::Event;
  std::optional<RodMark> mark;  // Event: floors, sills, heads and the top of the wall
  Length height;                // over the top of course 1
  Length reading;               // below zero: over the instrument, the rod is held upside down
};

/// The instrument stands `backsight` over the datum mark, which is `datum_over` over the top of course 1: it reads
/// backsight + datum_over - height. The bearing lies one unit and one joint under the top of course 1. Highest last.
/// None where the job gives no backsight.
[[nodiscard]] std::vector<RodReadingWanted> rod_readings(const Job& job, const Building& building);

}  // namespace stringcourse::setout
