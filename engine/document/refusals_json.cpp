#include "document/refusals_json.hpp"

#include "document/put.hpp"
#include "document/shown_refusals.hpp"

namespace stringcourse {

std::string refusals_json(const Refusals& refusals) {
  std::string text;
  JsonOut out([&](std::string_view bytes) {
    text += bytes;
    return true;
  });
  Answer nothing;
  nothing.building.tape = refusals.tape;
  document::put(out, document::View{nothing}, refusals);
  out.end_line();
  return out.finish() ? text : std::string();
}

}  // namespace stringcourse
