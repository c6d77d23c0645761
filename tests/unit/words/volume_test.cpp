#include "words/volume.hpp"

#include <gtest/gtest.h>

namespace stringcourse::words {
namespace {

TEST(Volume, IsInLitresOrInUsGallonsRoundedOnce) {
  EXPECT_EQ(volume_text(46'549, {Tape::Millimetres}), "46.5 litres");
  EXPECT_EQ(volume_text(46'550, {Tape::Millimetres}), "46.6 litres");
  EXPECT_EQ(volume_text(0, {Tape::Millimetres}), "0.0 litres");
  // One US gallon is 231 cubic inches of 2.54 cm: 3785.411784 cubic centimetres.
  EXPECT_EQ(volume_text(3'785, {Tape::Inches}), "1.0 gal");
  EXPECT_EQ(volume_text(378'541, {Tape::Inches}), "100.0 gal");
  EXPECT_EQ(volume_text(3'974, {Tape::Inches}), "1.0 gal");  // 1.0498
  EXPECT_EQ(volume_text(3'975, {Tape::Inches}), "1.1 gal");  // 1.05008
}

TEST(Volume, ABegunBagIsABag) {
  // A cubic foot is 28,316.846592 cubic centimetres; 0.7 of it 19,821.79, 0.6 of it 16,990.11.
  EXPECT_EQ(bags_of(0, Bagged::Mortar), 0);
  EXPECT_EQ(bags_of(1, Bagged::Mortar), 1);
  EXPECT_EQ(bags_of(19'821, Bagged::Mortar), 1);
  EXPECT_EQ(bags_of(19'822, Bagged::Mortar), 2);
  EXPECT_EQ(bags_of(16'990, Bagged::Concrete), 1);
  EXPECT_EQ(bags_of(16'991, Bagged::Concrete), 2);
  EXPECT_EQ(bagged_text(19'822, Bagged::Mortar, {Tape::Inches}), "5.2 gal (2 bags of 80 lb)");
  EXPECT_EQ(bagged_text(19'822, Bagged::Mortar, {Tape::Millimetres}), "19.8 litres");
}

}  // namespace
}  // namespace stringcourse::words
