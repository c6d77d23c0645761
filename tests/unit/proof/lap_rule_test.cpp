// Laps held before the checker's own arithmetic: none is too short, none a step longer than it must be.
#include "proof/lap_rule.hpp"

#include <gtest/gtest.h>

#include "steel/laps.hpp"

namespace stringcourse::proof {
namespace {

TEST(LapRule, RoundUpAndNoFurther) {
  // The checker squares and multiplies with code of its own: one step less must fail, for every bar, rule and wall.
  for (const Bar& bar : catalogue_bars()) {
    for (const LapRule rule : {LapRule::Tms402To2008, LapRule::Tms402From2011, LapRule::Ibc, LapRule::Florida2017,
                               LapRule::FortyBars, LapRule::FortyEightBars}) {
      for (const char* masonry : {"1500 psi", "2.25 ksi", "10.3 MPa", "17 N/mm2"}) {
        for (const char* yield : {"40000 psi", "60 ksi", "500 MPa", "414.7 MPa"}) {
          const Lap lap{rule, masonry, yield, std::nullopt};
          for (const Length clear : {Length::millimetres(30), Length::sixteenths(61), Length::nanometres(87'654'321)}) {
            const Tape tape = bar.name.front() == '#' ? Tape::Inches : Tape::Millimetres;
            const Length length = *steel::lap_length(steel::lap_by(lap), {bar, clear}, tape);
            const LapAsked asked{bar.name, bar.diameter, clear};
            EXPECT_TRUE(is_long_enough(lap, asked, length)) << bar.name << masonry << yield;
            EXPECT_EQ(length.in_nanometres() % tape_step(tape).in_nanometres(), 0);
            if (rule == LapRule::Florida2017 && length >= bar.diameter * 72) continue;  // need not be longer
            EXPECT_FALSE(is_long_enough(lap, asked, length - tape_step(tape))) << bar.name << masonry << yield;
          }
        }
      }
    }
  }
}

}  // namespace
}  // namespace stringcourse::proof
