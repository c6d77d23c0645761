#pragma once
// Words of the pour card's amounts.
#include <string_view>

namespace stringcourse::words {

struct GroutWords {
  std::string_view amount, lifts, one_lift, beams, lintels, in_pour, to_order, note, unlike_note;
};

}  // namespace stringcourse::words
