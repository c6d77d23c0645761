#include "cli/summary.hpp"
#include "cli/text_block.hpp"
#include "job/words.hpp"
#include "solve/json_out.hpp"

namespace stringcourse::cli {

std::string refusals_text(const Refusals& refusals) {
  std::string text;
  for (const Refusal& refusal : refusals.shown) {
    text += "refused: " + printable(refusal.place) + "\n" + wrapped("  ", printable(refusal.reason));
    if (!refusal.remedy.empty()) text += wrapped("  ", printable(refusal.remedy));
  }
  if (refusals.beyond > 0) text += "and " + number_text(refusals.beyond) + " more\n";
  return text;
}

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

}  // namespace stringcourse::cli
