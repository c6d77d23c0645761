#include "paper/stack.hpp"

#include <algorithm>
#include <utility>

namespace stringcourse::paper {

Stack::Stack(Pad& pad, Area box, std::string more, std::string last)
    : pad_(pad), box_(box), more_(std::move(more)), last_(std::move(last)) {
  floor_ = box_.bottom + height_of(more_) + (last_.empty() ? 0 : height_of(last_));
}

void Stack::hang(const Table& table) {
  const std::size_t fit = lines_that_fit(table, box_.top - floor_ - table.pitch());
  const std::size_t shown = std::min(fit, table.lines.size());
  left_out_ = left_out_ || shown < table.lines.size();
  if (shown == 0) return;
  pad_.add(draw_table(table, {box_.left, box_.top}, 0, shown));
  box_.top -= table_height(table, shown) + 3'000;
}

bool Stack::has_room(const std::vector<std::string>& texts) const {
  Micrometres high = 0;
  for (const std::string& text : texts) high += height_of(text);
  return high <= box_.top - floor_;
}

bool Stack::has_room(const Table& table) const {
  return table.lines.size() <= lines_that_fit(table, box_.top - floor_ - table.pitch());
}

void Stack::write(const std::string& text, Weight weight, Ink ink) {
  if (has_room(std::vector{text})) write_here(text, weight, ink);
  else left_out_ = true;
}

void Stack::finish() {
  if (left_out_) write_here(more_, Weight::Regular, Ink::Black);
  if (!last_.empty()) write_here(last_, Weight::Regular, Ink::Black);
}

// Bold is the wider of the two weights.
Micrometres Stack::height_of(const std::string& text) const {
  const Lettering bold{kSmallText, Weight::Bold, Anchor::Start, Ink::Black, 0};
  return paragraph_height(text, box_.width() - 2'000, bold) + 1'500;
}

void Stack::write_here(const std::string& text, Weight weight, Ink ink) {
  const Lettering lettering{kSmallText, weight, Anchor::Start, ink, 0};
  box_.top = write_paragraph(pad_, {box_.left + 1'000, box_.top}, box_.width() - 2'000, text, lettering) - 1'500;
}

}  // namespace stringcourse::paper
