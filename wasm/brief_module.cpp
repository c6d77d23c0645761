// The module that says brief answers alone, of what they take.
#include "wasm/brief.hpp"
#include "wasm/entry.hpp"

namespace stringcourse::border {

std::string answered(std::string_view request) {
  static BriefBorder border;  // kept for as long as the program runs: its panels serve the next request
  return border.answer(request);
}

}  // namespace stringcourse::border
