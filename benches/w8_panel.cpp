#include "benches/w8_panel.hpp"

#include <utility>
#include <vector>

namespace stringcourse::benches {

namespace {

constexpr std::int64_t kInch = 25'400'000;

// A cell between two webs, in half inches from the left face: webs of 1 1/2 in, so a cut keeps the cells before its
// end.
bond::Cell cell(std::int64_t from, std::int64_t to) { return {from * kInch / 2, to * kInch / 2}; }

std::vector<bond::Cell> cells_of(std::int64_t inches) {
  if (inches == 16) return {cell(3, 14), cell(18, 29)};
  if (inches == 8) return {cell(3, 13)};
  if (inches <= 9) return {cell(3, 2 * inches - 3)};
  if (inches < 13) return {cell(3, 14)};
  return {cell(3, 14), cell(18, 2 * inches - 3)};
}

std::vector<bond::PieceChoice> choices() {
  std::vector<bond::PieceChoice> all;
  for (std::int64_t inches = 16; inches >= 5; --inches) {
    all.push_back({inches * kInch, false, true, true, cells_of(inches), inches == 16 ? 10 : inches == 8 ? 7 : 25});
  }
  return all;
}

using Stretches = std::vector<std::pair<std::int64_t, std::int64_t>>;  // inches

void add_course(bond::Panel& panel, const Stretches& stretches) {
  const auto number = static_cast<std::int32_t>(panel.rows.size());
  bond::Row row;
  row.choices = choices();
  row.band = number;
  row.courses = {number + 1};
  for (const auto& [start, end] : stretches) row.runs.push_back({start * kInch, end * kInch});
  panel.rows.push_back(std::move(row));
  panel.course_rows.push_back(number);
}

}  // namespace

bond::Panel w8_panel() {
  bond::Panel panel;
  panel.weighted = true;
  panel.least_piece = 5 * kInch;
  panel.least_lap = 4 * kInch;
  panel.half_length = 8 * kInch;
  panel.cut_step = kInch;
  for (int course = 1; course <= 10; ++course) add_course(panel, {{0, 160}, {200, 384}});
  for (int course = 11; course <= 12; ++course) add_course(panel, {{0, 384}});
  for (const std::int64_t bar : {4, 156, 204, 380}) panel.bars.push_back({bar * kInch, 0, 0});
  return panel;
}

}  // namespace stringcourse::benches
