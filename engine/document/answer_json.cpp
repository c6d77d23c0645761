#include "document/answer_json.hpp"

#include "document/put.hpp"
#include "document/shown_answer.hpp"

namespace stringcourse {

bool write_answer(const Answer& answer, const ByteSink& sink, Placed placed) {
  JsonOut out(sink);
  document::put(out, document::View{answer, placed}, answer);
  out.end_line();
  return out.finish();
}

std::string answer_text(const Answer& answer, Placed placed) {
  std::string text;
  const bool whole = write_answer(
      answer,
      [&](std::string_view bytes) {
        text += bytes;
        return true;
      },
      placed);
  return whole ? text : std::string();
}

}  // namespace stringcourse
