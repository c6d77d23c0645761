#pragma once
// A reading or an entry of the laid log in short, as it is typed: "A:B:27'-11 1/2\"".
#include <expected>
#include <string>

#include "job/job.hpp"
#include "job/trouble.hpp"

namespace stringcourse {

/// What is entered. Tape: two corners, length. Rod: set-up, point (or wall and place), reading. Dowel: wall, place, in
/// from the face. Edge: wall, place, beyond the face. Mark: wall, course, mark, past or short. Course: wall, course,
/// laid from end to end. Gauge: wall, course, high or low. Jamb: opening, near or far, where it was found. Strike: an
/// entry's id. Parts stand between colons; places are from the start of their wall.
enum class EntryWhat { Tape, Rod, Dowel, Edge, Mark, Course, Gauge, Jamb, Strike };

struct TypedEntry {
  EntryWhat what = EntryWhat::Tape;
  std::string text;
  std::string when, by, note;  // as the job document has them; may be empty
};

/// The job with that entry, the last of its log; its id is the first whole number that no entry has. Refused with all
/// that is wrong, each at `place`: "not-a-length" of a text of another form or of a length that is none, "unit-unsaid",
/// "unknown-wall", "unknown-corner", "unknown-name", "course-range".
[[nodiscard]] std::expected<Job, Refusals> with_typed_entry(const Job& job, const TypedEntry& typed,
                                                            const std::string& place);

}  // namespace stringcourse
