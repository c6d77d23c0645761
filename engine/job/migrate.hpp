#pragma once
// Older documents are lifted to today's form one version at a time, by pure functions, before they are read.
#include <span>

#include "job/json_tree.hpp"

namespace stringcourse {

/// Lifts a document of version `from` to version from + 1.
struct Migration {
  int from;
  JsonTree (*lift)(const JsonTree&);
};

/// Every migration, rising without gaps up to kJobVersion - 1. Empty: version 1 is the first.
[[nodiscard]] std::span<const Migration> migrations();

}  // namespace stringcourse
