// The module that says everything.
#include "wasm/border.hpp"
#include "wasm/entry.hpp"

namespace stringcourse::border {

std::string answered(std::string_view request) {
  static Border border;  // kept for as long as the program runs: its panels serve the next request
  return border.answer(request);
}

}  // namespace stringcourse::border
