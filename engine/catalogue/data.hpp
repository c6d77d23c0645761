#pragma once
// How the catalogue's figures are known, and the data files behind series.hpp. Private to catalogue/.
//
// The words of knowledge, as they are printed beside a figure:
//   seen             read in the document itself or in a reprint of it
//   second-hand      read in someone else's statement of what the document says
//   reproduced       a printed number came out only with this value
//   derived          follows from stated geometry
//   computed         worked out by this program
//   common practice  the trade does it so; no document is claimed
//   memory           nobody opened the document: printed as "unverified: check your code"
//   measured         the user's own measuring of one unit
#include <vector>

#include "catalogue/series.hpp"

namespace stringcourse::data {

/// US modular block: inches (series_us_data.cpp).
[[nodiscard]] std::vector<Series> us_series();
/// 390 x 190 mm block of Australia and ISO modules, and 440 x 215 mm block of the UK (series_metric_data.cpp).
[[nodiscard]] std::vector<Series> metric_series();

}  // namespace stringcourse::data
