#pragma once
// What a page shows beside the answer document: the hold points and what each still lacks, one
// unit's card, boxes for a view in space. Each writes one JSON value.
#include <optional>
#include <string>
#include <string_view>

#include "answer/answer.hpp"
#include "document/json_out.hpp"

namespace stringcourse {

/// The six hold points, as the answer document has them.
void write_hold_points(JsonOut& out, const Answer& answer);

/// What a tapped unit is: {"name", "side", "course", "number", "kind", ..., "above", "below"}. False, and nothing is
/// written, if no unit has this name.
bool write_piece_card(JsonOut& out, const Answer& answer, std::string_view name);

/// One course at the wall: a reading may be tried that is not in the log.
struct CourseAsked {
  std::string side;
  int course = 1;
  std::optional<laying::Trial> trial;
  bool odds = false;  // 500 courses are played: some 20 ms
};
/// {"course": marks, runs, next joints, "rules", "joints", ..., "odds"}. False, and nothing is written, if there is no
/// such.
bool write_course(JsonOut& out, const Answer& answer, const CourseAsked& asked);

/// {"names", "courses", "kinds", "cut", "marks", "fills", "boxes", "bars"}: every unit as a box [x, y, z, dx, dy, dz]
/// in micrometres, x to the east, y to the north, z up from the datum; every bar as [x, y, z from, z to, diameter].
void write_solids(JsonOut& out, const Answer& answer);

}  // namespace stringcourse
