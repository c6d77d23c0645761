#pragma once
// The sheets are drawn with the hand of paper/: its names are theirs.
#include "paper/display.hpp"

namespace stringcourse::sheet {

using namespace paper;

}  // namespace stringcourse::sheet
