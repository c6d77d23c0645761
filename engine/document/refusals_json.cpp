#include "document/refusals_json.hpp"

#include "document/json_out.hpp"

namespace stringcourse {

std::string refusals_json(const Refusals& refusals) {
  std::string text;
  JsonOut out([&](std::string_view bytes) {
    text += bytes;
    return true;
  });
  out.object([&] {
    out.field("stringcourse_refusals", 1);
    out.list("refusals", [&] {
      for (const Refusal& refusal : refusals.shown) {
        out.object([&] {
          out.field("code", refusal.code);
          out.field("place", refusal.place);
          out.field("reason", refusal.reason);
          out.field("remedy", refusal.remedy);
        });
      }
    });
    out.field("beyond", static_cast<std::int64_t>(refusals.beyond));
  });
  out.end_line();
  return out.finish() ? text : std::string();
}

}  // namespace stringcourse
