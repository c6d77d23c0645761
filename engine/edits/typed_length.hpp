#pragma once
// A length as it is typed on the command line, where a number alone may be meant in either of two units.
#include <string>
#include <string_view>

#include "job/job.hpp"
#include "job/trouble.hpp"

namespace stringcourse {

/// Up to which length a number alone may have been meant in the tape's larger unit (feet, metres); beyond, it can only
/// be what the tape says.
struct TypedMeasure {
  Length inches, millimetres;
};

/// "3-0", the trade's short form of 3 ft 0 in on an inch tape, as a length is written: 3'-0"; any other text as it is.
[[nodiscard]] std::string written_out(std::string_view text, Tape tape);

/// The length, "3-0" read too, nominal unless the text ends with "actual". What is wrong is added at `place`:
/// "not-a-length", and "unit-unsaid" of a number alone that may be feet as well as inches (metres or centimetres as
/// well as millimetres).
[[nodiscard]] StatedLength read_typed_length(std::string_view text, Tape tape, const TypedMeasure& measure,
                                             const std::string& place, Refusals& refusals);

}  // namespace stringcourse
