#include "document/brief_json.hpp"

#include "document/put.hpp"
#include "document/shown_answer.hpp"

namespace stringcourse {

std::string brief_text(const Answer& answer) {
  return json_text([&](JsonOut& out) {
    const document::View view{answer, document::Placed::Omit};
    out.object([&] { document::put_fields<document::Fields::Brief>(out, view, answer); });
  });
}

}  // namespace stringcourse
