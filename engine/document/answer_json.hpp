#pragma once
// The answer as a JSON document (docs/schema/answer.schema.json): what the command line prints and the page reads.
#include <string>

#include "answer/answer.hpp"
#include "document/json_out.hpp"
#include "document/shown.hpp"

namespace stringcourse {

using document::Placed;

/// Writes the whole answer, piece by piece; memory does not grow with the building. Lengths are whole nanometres
/// ("nm"), beside them the exact text in the job's tape where a person looks. A piece's start is `start` nanometres and
/// start_numerator / start_denominator of one more, exactly. False if the sink ended the writing.
[[nodiscard]] bool write_answer(const Answer& answer, const ByteSink& sink, Placed placed = Placed::Write);

/// The same as one text.
[[nodiscard]] std::string answer_text(const Answer& answer, Placed placed = Placed::Write);

/// JSON Schema 2020-12 of the answer, as docs/schema/answer.schema.json stands, and of refusals.
[[nodiscard]] std::string answer_schema();
[[nodiscard]] std::string refusals_schema();

}  // namespace stringcourse
