#pragma once
// Wall W8 of the numbered cases (tests/oracle/cases_test.cpp), course by course, as its optimum was first computed.
#include "bond/panel.hpp"

namespace stringcourse::benches {

/// 384 in long; courses 1 to 10 with an opening from 160 to 200 in, courses 11 and 12 whole; bars at 4, 156, 204 and
/// 380 in. A weighted panel: units of 16 in cost 10, of 8 in 7, any cut of 5 to 15 in 25; joints at least 4 in apart.
[[nodiscard]] bond::Panel w8_panel();

}  // namespace stringcourse::benches
