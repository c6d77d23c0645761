#include "bond/panel.hpp"

#include <algorithm>
#include <map>
#include <utility>

namespace stringcourse::bond {
namespace {

using Counted = std::map<std::pair<std::int32_t, std::int32_t>, std::uint32_t>;

std::vector<RowPair> listed(const Counted& counted) {
  std::vector<RowPair> pairs;
  for (const auto& [rows, weight] : counted) pairs.push_back({rows.first, rows.second, weight});
  return pairs;
}

}  // namespace

bool bears_on_nothing(const Panel& panel) {
  return std::ranges::any_of(panel.rows, [](const Row& row) {
    const auto overlap = [](const RowRun& run) { return run.end < run.start; };
    return (row.choices.empty() && !row.fixed) || std::ranges::any_of(row.runs, overlap);
  });
}

RowPairs row_pairs(const Panel& panel) {
  Counted lying, shifting;
  const auto& courses = panel.course_rows;
  const auto band = [&](std::int32_t row) { return panel.rows[static_cast<std::size_t>(row)].band; };
  for (std::size_t c = 0; c + 1 < courses.size(); ++c) {
    ++lying[std::minmax(courses[c], courses[c + 1])];
    if (c + 2 < courses.size() && band(courses[c]) != band(courses[c + 2])) ++shifting[{courses[c], courses[c + 2]}];
  }
  return {listed(lying), listed(shifting)};
}

}  // namespace stringcourse::bond
