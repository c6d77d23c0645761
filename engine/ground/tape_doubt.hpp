#pragma once
// What a tape is worth: its permitted error and its reading.
#include <initializer_list>

#include "job/job.hpp"
#include "measure/length.hpp"

namespace stringcourse::ground {

/// The tape that the job names; steel where it names none.
[[nodiscard]] TapeMake tape_of(const Job& job);

/// The permitted error of a tape over so much of it. Steel: NIST Handbook 44, 5.52: 1/32 in to 6 ft, 1/16 to 30 ft, 1/8
/// to 55 ft, 3/16 to 80 ft, 1/4 to 100 ft; beyond it 1/4 in for each 100 ft begun (ours: the tape is laid again). EU
/// class II: 0.3 mm + 0.2 mm for each metre begun (second-hand).
[[nodiscard]] Length permitted_error(TapeMake tape, Length length);

/// Standard uncertainty, metres, of a value that lies within +-`half_width`, all places alike: half_width / sqrt 3.
/// SOURCE: JCGM 100:2008 (GUM), 4.3.7.
[[nodiscard]] double standard_doubt(Length half_width);

/// Independent doubts together, any unit: the root of the sum of their squares. SOURCE: GUM 5.1.2.
[[nodiscard]] double together(std::initializer_list<double> doubts);

}  // namespace stringcourse::ground
