// Names of kinds and of knowledge, and the look-ups over the data files.
#include "catalogue/series.hpp"

#include <algorithm>
#include <array>

#include "catalogue/data.hpp"

namespace stringcourse {
namespace {

/// In the order of UnitKind.
constexpr std::array<std::string_view, kKindCount> kKindNames{
    "full",      "half",           "corner",    "corner-set",     "open-end", "open-both",
    "bond-beam", "bond-beam-half", "lintel",    "lintel-half",    "sash",     "sash-half",
    "cleanout",  "cleanout-half",  "half-high", "half-high-half", "solid"};

/// In the order of Knowledge.
constexpr std::array<std::string_view, 8> kKnowledgeNames{"seen",     "second-hand",     "reproduced", "derived",
                                                          "computed", "common practice", "memory",     "measured"};

std::vector<Series> all_series() {
  std::vector<Series> all = data::us_series();
  for (Series& series : data::metric_series()) all.push_back(std::move(series));
  return all;
}

}  // namespace

std::string_view kind_name(UnitKind kind) { return kKindNames[static_cast<std::size_t>(kind)]; }

std::string_view knowledge_name(Knowledge knowledge) { return kKnowledgeNames[static_cast<std::size_t>(knowledge)]; }

std::span<const Series> catalogue_series() {
  static const std::vector<Series> kAll = all_series();
  return kAll;
}

const Series* find_series(std::string_view id) {
  const auto found = std::ranges::find(catalogue_series(), id, &Series::id);
  return found == catalogue_series().end() ? nullptr : &*found;
}

}  // namespace stringcourse
