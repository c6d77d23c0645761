// How a length is typed: the word "actual" stands behind it, parted by a blank, or it is nominal.
#include "job/stated.hpp"

#include <gtest/gtest.h>

namespace stringcourse {
namespace {

TEST(TypedLength, IsActualOnlyWhereTheWordFollowsABlank) {
  struct Case {
    std::string_view typed, text;
    Basis basis;
  };
  for (const auto& [typed, text, basis] : {Case{"24'", "24'", Basis::Nominal},
                                           {"23'-11 5/8\" actual", "23'-11 5/8\"", Basis::Actual},
                                           {"2390 mm\t actual  ", "2390 mm", Basis::Actual},
                                           {"24'actual", "24'actual", Basis::Nominal},
                                           {"actual", "actual", Basis::Nominal},
                                           {" actual", "", Basis::Actual},
                                           {"24' Actual", "24' Actual", Basis::Nominal},
                                           {"", "", Basis::Nominal}}) {
    EXPECT_EQ(typed_length(typed).text, text) << typed;
    EXPECT_EQ(typed_length(typed).basis, basis) << typed;
  }
}

}  // namespace
}  // namespace stringcourse
