#pragma once
// What bars weigh, and the figures of the lap rules that hang on a bar's size. Data: steel_data.cpp.
#include <cstdint>

#include "catalogue/series.hpp"

namespace stringcourse {

/// Mass of a bar, in grams for each metre. SOURCE: ASTM A615's table; metric bars 7850 kg/m3 x nominal area.
[[nodiscard]] std::int64_t grams_per_metre(const Bar& bar);

/// Ten thousandths of TMS 402's 0.13 x gamma for a bar's size.
struct LapCoefficient {
  std::int64_t tms402 = 1'300, florida2017 = 1'300;
};
/// gamma of TMS 402: 1.0 to #5, 1.3 to #7, 1.5 beyond; of the Florida code: 1.0, 1.04, 1.2. A metric bar has that of
/// the inch bar whose diameter is nearest.
[[nodiscard]] LapCoefficient lap_coefficient(const Bar& bar);

}  // namespace stringcourse
