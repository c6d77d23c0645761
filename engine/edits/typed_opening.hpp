#pragma once
// An opening in short, as it is typed: "BC:4'-0\":3-0x6-8".
#include <expected>
#include <string>
#include <string_view>
#include <vector>

#include "edits/edit.hpp"
#include "job/job.hpp"
#include "job/trouble.hpp"

namespace stringcourse {

/// What may be typed in short.
enum class NewOpening { Door, Window, Overhead };

/// Side, distance of the near jamb from the corner that the side starts from, and width x height; of a window the
/// sill's height over the floor may follow. "3-0" is 3 ft 0 in. A door's and an overhead door's size is the leaf's; a
/// window's that of the hole.
struct TypedOpening {
  NewOpening what = NewOpening::Door;
  std::string text;
};

/// The job with that opening, the last of them, named "D1", "W1" ... Round a leaf stands what is usual: a frame of 2 in
/// (50 mm) and 3/16 in (5 mm) of room each side and 4 in (100 mm) of head; at an overhead door a buck of 1 1/2 in (38
/// mm), common practice. A window whose sill is not said stands on course 5. Refused with all that is wrong, each at
/// `place`: "not-a-length" of a text of another form or of a length that is none, "unit-unsaid", "unknown-wall".
/// Whether it can be built there is not asked here.
[[nodiscard]] std::expected<Job, Refusals> with_typed_opening(const Job& job, const TypedOpening& typed,
                                                              const std::string& place);

/// The job with an inner wall, as "AB:12'-0\"" or "AB:12'-0\":8'-0\"": off the inner face of that wall, its near face
/// so far from the corner that it starts from, to the wall that it meets or so long. Named "N1", "N2" ... Refused
/// likewise.
[[nodiscard]] std::expected<Job, Refusals> with_typed_wall(const Job& job, const std::string& text,
                                                           const std::string& place);

/// The name of every side (its corners' where it has none) and inner wall, in order.
[[nodiscard]] std::vector<std::string> wall_names(const Job& job);

/// "D1", or the first number that no opening of the job has.
[[nodiscard]] std::string free_opening_name(const Job& job, std::string_view letter);

}  // namespace stringcourse
