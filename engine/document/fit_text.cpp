#include "document/shown_ground.hpp"

namespace stringcourse::document {

std::string fit_text(const ground::SlabFit& fit, Tape tape) {
  std::string text;
  const auto add = [&](Length way, std::string_view positive, std::string_view negative) {
    const Length size = magnitude(way);
    if (rounded_to(size, tape_step(tape)) == Length()) return;
    text +=
        (text.empty() ? "" : ", ") + tape_text(size, tape) + " " + std::string(way < Length() ? negative : positive);
  };
  add(fit.east, "east", "west"), add(fit.north, "north", "south");
  return text.empty() ? "stays" : text;
}

}  // namespace stringcourse::document
