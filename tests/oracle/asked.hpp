#pragma once
// The words that the long comparisons understand: --long, --each, --seed N.
#include <gtest/gtest.h>

#include <cstdint>
#include <cstdlib>
#include <cstring>

namespace stringcourse::oracle {

/// What a comparison is asked for.
struct Asked {
  bool long_run = false, each = false;
  std::uint64_t first_seed = 1;
};
inline Asked asked;

inline int run_as_asked(int count, char** arguments) {
  testing::InitGoogleTest(&count, arguments);
  for (int i = 1; i < count; ++i) {
    if (std::strcmp(arguments[i], "--long") == 0) asked.long_run = true;
    if (std::strcmp(arguments[i], "--each") == 0) asked.each = true;
    if (std::strcmp(arguments[i], "--seed") == 0 && i + 1 < count) {
      asked.first_seed = std::strtoull(arguments[++i], nullptr, 10);
    }
  }
  return RUN_ALL_TESTS();
}

}  // namespace stringcourse::oracle
