#pragma once
// The parts of the answer document. Each writes its own fields into the open top object.
#include <string>
#include <string_view>

#include "document/answer_json.hpp"
#include "document/json_out.hpp"
#include "answer/answer.hpp"

namespace stringcourse::answer_parts {

[[nodiscard]] inline const std::string& wall_name(const Building& building, int wall) {
  return building.walls[static_cast<std::size_t>(wall)].name;
}

/// {"text": exact text in the job's tape, "nm": whole nanometres}.
void write_length(JsonOut& out, std::string_view key, Length length, Tape tape);

/// A value that was worked out of readings: its text is rounded to the tape, its nanometres are not.
void write_found(JsonOut& out, std::string_view key, Length length, Tape tape);
/// "fits", "does-not-fit", "cannot-tell".
[[nodiscard]] std::string_view verdict_name(ground::Verdict verdict);

/// series, corners, sides, junctions, courses, openings, control_joints.
void write_building(JsonOut& out, const Building& building, const Layout& layout);
/// runs with their pieces, lintels, bars.
void write_layout(JsonOut& out, const Building& building, const Layout& layout, Placed placed);
/// counts, saw_list, gauge_rod.
void write_lists(JsonOut& out, const Building& building, const Layout& layout);
/// ground: what the readings say. Left out where nothing was read.
void write_ground(JsonOut& out, const Answer& answer);
/// laying: what the laid log says. Only where answer.laid is.
void write_laying(JsonOut& out, const Answer& answer);
/// The dowels to be set.
void write_dowels(JsonOut& out, const Answer& answer, Placed placed);
/// findings, offers, free_places, cost, proof, stopped.
void write_verdict(JsonOut& out, const Answer& answer);

}  // namespace stringcourse::answer_parts
