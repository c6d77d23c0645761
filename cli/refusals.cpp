#include "cli/summary.hpp"
#include "cli/text_block.hpp"
#include "job/words.hpp"

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

}  // namespace stringcourse::cli
