#include "sheet/mark_words.hpp"

namespace stringcourse::sheet {

using laying::WallMark;

std::string past_text(const Context& context, Length past) {
  if (rounded_to(past, tape_step(context.tape())) == Length()) return std::string(context.words.mark_on);
  return words::fill_in(past < Length() ? context.words.mark_short : context.words.mark_past,
                        {tape_text(magnitude(past), context.tape())});
}

std::string found_text(const Context& context, const WallMark& mark) {
  if (!mark.past) return "";
  const std::string past = past_text(context, *mark.past);
  if (mark.state == WallMark::State::Doubtful) return words::fill_in(context.words.mark_doubtful, {past});
  if (mark.state == WallMark::State::Disputed) return words::fill_in(context.words.mark_disputed, {past});
  return past;
}

}  // namespace stringcourse::sheet
