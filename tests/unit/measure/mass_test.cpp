#include "measure/mass.hpp"

#include <gtest/gtest.h>

namespace stringcourse {
namespace {

TEST(MassAsWritten, IsExact) {
  EXPECT_EQ(read_mass("1 lb"), kPound);
  EXPECT_EQ(read_mass("1 kg"), kKilogram);
  EXPECT_EQ(read_mass("80 lb")->units, 80LL * 45'359'237);  // 0.45359237 kg
  EXPECT_EQ(read_mass("16.5kg")->units, 1'650'000'000);
  EXPECT_EQ(read_mass("35.25 lb")->units, (3'525LL * 45'359'237 + 50) / 100);
  EXPECT_EQ(read_mass("1000000 kg")->units, 100'000'000'000'000);
  for (const char* text :
       {"", "lb", "35", "35 st", "-3 lb", "0 lb", "3,5 kg", "1.234 kg", "1000001 lb", "3 lb 2", "three lb"})
    EXPECT_FALSE(read_mass(text)) << text;
}

TEST(MassAsShown, IsRoundedUpToWholePoundsOrKilograms) {
  EXPECT_EQ(mass_text(*read_mass("80 lb"), Tape::Inches), "80 lb");
  EXPECT_EQ(mass_text(*read_mass("80 lb"), Tape::Millimetres), "37 kg");  // 36.287 kg
  EXPECT_EQ(mass_text(*read_mass("36.01 lb"), Tape::Inches), "37 lb");
  EXPECT_EQ(mass_text(Mass(), Tape::Inches), "0 lb");
}

}  // namespace
}  // namespace stringcourse
