#include "measure/force.hpp"

#include <gtest/gtest.h>

namespace stringcourse {
namespace {

TEST(Force, ForcesAreReadInThreeUnitsAndNothingElse) {
  EXPECT_NEAR(*read_force("20 lb"), 88.964432, 0.5e-6);  // 20 x 4.4482216 N
  EXPECT_DOUBLE_EQ(*read_force("90 N"), 90);
  EXPECT_NEAR(*read_force("9kg"), 88.25985, 1e-9);
  EXPECT_NEAR(*read_line_weight("1.5 g/m"), 0.01470998, 0.5e-8);
  for (const char* text : {"", "20", "lb", "0 lb", "-3 lb", "1.2.3 N", "1e9 N", "20 stone", "20 lb x"})
    EXPECT_FALSE(read_force(text)) << text;
  for (const char* text : {"", "0.001", "0.001 lb", "0 g/m"}) EXPECT_FALSE(read_line_weight(text)) << text;
}

}  // namespace
}  // namespace stringcourse
