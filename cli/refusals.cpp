#include "cli/named.hpp"
#include "cli/summary.hpp"
#include "cli/text_block.hpp"
#include "job/words.hpp"
#include "words/language.hpp"

namespace stringcourse::cli {

std::string refusals_text(const Refusals& refusals, const Job* job) {
  const auto told = [&](const Fact& fact) { return words::told(fact, {refusals.tape}); };
  std::string text;
  for (const Refusal& refusal : refusals.shown) {
    const Fact named = job == nullptr ? Fact() : named_place(*job, refusal.place);
    const std::string place = named.empty() ? refusal.place : told(named) + " [" + refusal.place + "]";
    text += "refused: " + printable(place) + "\n" + wrapped("  ", printable(told(refusal.reason)));
    if (!refusal.remedy.empty()) text += wrapped("  ", printable(told(refusal.remedy)));
  }
  if (refusals.beyond > 0) text += "and " + number_text(refusals.beyond) + " more\n";
  return text;
}

}  // namespace stringcourse::cli
