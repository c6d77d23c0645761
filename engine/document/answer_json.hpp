#pragma once
// The answer as a JSON document (docs/schema/answer.schema.json): what the command line prints and the page reads.
#include <string>

#include "document/json_out.hpp"
#include "answer/answer.hpp"

namespace stringcourse {

inline constexpr int kAnswerVersion = 1;

/// Whether the lists of what is placed (runs with their pieces, bars) are filled; Omit leaves them empty, for a page whose
/// user is moving something and looks at drawings and tallies.
enum class Placed { Write, Omit };

/// Writes the whole answer, piece by piece; memory does not grow with the building. Lengths are whole nanometres
/// ("nm"), beside them the exact text in the job's tape where a person looks. A piece's start is `start` nanometres and
/// start_numerator / start_denominator of one more, exactly. False if the sink ended the writing.
[[nodiscard]] bool write_answer(const Answer& answer, const ByteSink& sink, Placed placed = Placed::Write);

/// The same as one text.
[[nodiscard]] std::string answer_text(const Answer& answer, Placed placed = Placed::Write);

}  // namespace stringcourse
