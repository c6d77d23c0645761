// Readings and writings whose values are worked by hand beside them.
#include <gtest/gtest.h>

#include "measure/notation.hpp"
#include "told.hpp"

namespace stringcourse {
namespace {

struct Form {
  const char* text;
  Length length;
};

void expect_all(const std::vector<Form>& forms, Tape tape) {
  for (const Form& form : forms) {
    const auto read = read_length(form.text, tape);
    ASSERT_TRUE(read) << form.text << ": " << test::told(read.error().reason);
    EXPECT_EQ(*read, form.length) << form.text;
  }
}

// 14 x 12 + 7 = 175; 175 5/16 in = 175 x 16 + 5 = 2805 sixteenths.
const Length kDoor = Length::sixteenths(2805);

TEST(ReadLength, every_trade_form_of_one_length_is_the_same_length) {
  for (const Tape tape : {Tape::Inches, Tape::Millimetres}) {
    expect_all({{"14'-7 5/16\"", kDoor},
                {"14' 7 5/16\"", kDoor},
                {"14'7-5/16\"", kDoor},
                {"14'-7-5/16\"", kDoor},
                {"14 ft 7 5/16 in", kDoor},
                {"14ft7 5/16in", kDoor},
                {"14 FT - 7 5/16 Inches", kDoor},
                {"14′-7 5/16″", kDoor},
                {"14’ 7 5/16”", kDoor},
                {"14'–7 5/16\"", kDoor},
                {"175 5/16\"", kDoor},
                {"175-5/16 in", kDoor},
                {"  175\u00A05/16\"  ", kDoor},
                {"175.3125\"", kDoor},
                {"14' 7.3125\"", kDoor},
                {"14'-7 5/16", kDoor}},
               tape);
  }
}

TEST(ReadLength, short_forms_have_their_hand_worked_values) {
  expect_all({{"14'-0\"", Length::feet(14)},
              {"14ft", Length::feet(14)},
              {"14'", Length::feet(14)},
              {"14.5'", Length::inches(174)},
              {"14.5 ft", Length::inches(174)},
              {"7/8\"", Length::sixteenths(14)},
              {"0\"", Length()},
              {"-0\"", Length()},
              {"7.625\"", Length::sixteenths(122)},
              {".625\"", Length::sixteenths(10)},
              {"7½\"", Length::sixteenths(120)},
              {"7 ½ in", Length::sixteenths(120)},
              {"7-½\"", Length::sixteenths(120)},
              {"-7 5/16\"", Length::sixteenths(-117)},
              {"−7 5/16\"", Length::sixteenths(-117)},
              {"1/64\"", Length::nanometres(396'875)},
              {"63/64 in", Length::nanometres(25'003'125)},
              {"-14'-0 3/8\"", Length::sixteenths(-2694)}},
             Tape::Millimetres);
}

TEST(ReadLength, each_vulgar_fraction_is_its_number_of_eighths) {
  const std::vector<Form> forms{{"⅛\"", Length::sixteenths(2)},  {"¼\"", Length::sixteenths(4)},
                                {"⅜\"", Length::sixteenths(6)},  {"½\"", Length::sixteenths(8)},
                                {"⅝\"", Length::sixteenths(10)}, {"¾\"", Length::sixteenths(12)},
                                {"⅞\"", Length::sixteenths(14)}};
  expect_all(forms, Tape::Inches);
}

TEST(ReadLength, metric_forms_have_their_hand_worked_values) {
  const Length wall = Length::millimetres(4451);
  for (const Tape tape : {Tape::Inches, Tape::Millimetres}) {
    expect_all({{"4451 mm", wall},
                {"4451mm", wall},
                {"445.1 cm", wall},
                {"4.451 m", wall},
                {"4.451000000000 m", wall},
                {"102.5 mm", Length::nanometres(102'500'000)},
                {"0.000001 mm", Length::nanometres(1)},
                {"-390 mm", Length::millimetres(-390)}},
               tape);
  }
}

TEST(ReadLength, a_bare_number_is_read_by_the_tape) {
  expect_all({{"175 5/16", kDoor}, {"175", Length::inches(175)}, {"7.625", Length::sixteenths(122)}}, Tape::Inches);
  expect_all({{"4451", Length::millimetres(4451)}, {"102.5", Length::nanometres(102'500'000)}}, Tape::Millimetres);
}

TEST(ReadLength, ten_kilometres_is_the_longest_and_one_nanometre_more_is_refused) {
  expect_all({{"10000 m", kLongest}, {"-10000 m", -kLongest}, {"10000000 mm", kLongest}}, Tape::Inches);
  for (const char* text :
       {"10000.000000001 m", "-10000.000000001 m", "10000000.000001", "32809'", "99999999999999999999"}) {
    const auto read = read_length(text, Tape::Millimetres);
    ASSERT_FALSE(read) << text;
    EXPECT_NE(test::told(read.error().reason).find("10 km"), std::string::npos) << test::told(read.error().reason);
  }
}

TEST(ReadLength, texts_that_are_no_length_are_refused_with_reason_and_remedy) {
  for (const char* text : {"",
                           "   ",
                           "-",
                           "'",
                           "\"",
                           "14' 7' 3\"",
                           "7\" 14'",
                           "14'-",
                           "14'-7\" x",
                           "14'-12\"",
                           "14' 11 64/64\"",
                           "7 16/16\"",
                           "7 17/16\"",
                           "7 5/12\"",
                           "7 5/0\"",
                           "7 5/128\"",
                           "5 /16\"",
                           "5/ 16\"",
                           "5/16/2\"",
                           "1/2/4",
                           "7.5 1/2\"",
                           "7.\"",
                           ".\"",
                           "1.2.3\"",
                           "14.5' 3\"",
                           "14 1/2'",
                           "4 1/2 mm",
                           "½ m",
                           "4,451 mm",
                           "1e3 mm",
                           "0x10",
                           "+7\"",
                           "- 7\"",
                           "--7\"",
                           "-14'--7\"",
                           "14'-7 -5/16\"",
                           "7 - 5/16\"",
                           "7-5\"",
                           "7 5\"",
                           "7 5 5/16\"",
                           "½½\"",
                           "14 ft 7 mm",
                           "7 inn",
                           "7 in.",
                           "7''",
                           "7\" 5/16",
                           "4 m 451 mm",
                           "٧\"",
                           "7\n\"",
                           "\t7\"",
                           "nan",
                           "inf"}) {
    for (const Tape tape : {Tape::Inches, Tape::Millimetres}) {
      const auto read = read_length(text, tape);
      ASSERT_FALSE(read) << text;
      EXPECT_FALSE(read.error().reason.empty()) << text;
      EXPECT_FALSE(read.error().remedy.empty()) << text;
    }
  }
  EXPECT_FALSE(read_length("175 5/16", Tape::Millimetres));
}

TEST(ReadLength, a_decimal_that_is_no_whole_number_of_nanometres_says_so) {
  // 0.3333333 in = 8,466,665.82 nm; 1/128 in = 198,437.5 nm; a tenth of a nanometre.
  for (const char* text :
       {"0.3333333\"", "0.0078125\"", "0.0000001 mm", "0.0000000001 m", "1.00000000000000000001 m"}) {
    const auto read = read_length(text, Tape::Inches);
    ASSERT_FALSE(read) << text;
    EXPECT_NE(test::told(read.error().reason).find("nanometres"), std::string::npos) << test::told(read.error().reason);
  }
}

TEST(ReadLength, an_error_names_the_text_clipped_to_forty_characters_without_control_characters) {
  const std::string reason = test::told(read_length("7\x01\x1B[31m in \xFF\u202E", Tape::Inches).error().reason);
  EXPECT_NE(reason.find("“7\\u0001\\u001B[31m in ?\\u202E”"), std::string::npos) << reason;
  const std::string clipped = test::told(read_length(std::string(60, 'x'), Tape::Inches).error().reason);
  EXPECT_NE(clipped.find("“" + std::string(40, 'x') + "...”"), std::string::npos) << clipped;
  const std::string whole = test::told(read_length(std::string(40, 'x'), Tape::Inches).error().reason);
  EXPECT_NE(whole.find("“" + std::string(40, 'x') + "”"), std::string::npos) << whole;
}

TEST(ReadLength, a_very_long_text_is_refused) {
  EXPECT_TRUE(read_length(std::string(98, '0') + "7\"", Tape::Inches));
  EXPECT_FALSE(read_length(std::string(99, '0') + "7\"", Tape::Inches));
}

TEST(WriteLength, feet_and_inches_follow_the_printed_forms) {
  EXPECT_EQ(feet_and_inches(kDoor), "14'-7 5/16\"");
  EXPECT_EQ(feet_and_inches(Length::feet(14)), "14'-0\"");
  EXPECT_EQ(feet_and_inches(Length::feet(14) + Length::sixteenths(6)), "14'-0 3/8\"");
  EXPECT_EQ(feet_and_inches(Length::sixteenths(117)), "7 5/16\"");
  EXPECT_EQ(feet_and_inches(Length::sixteenths(6)), "3/8\"");
  EXPECT_EQ(feet_and_inches(Length()), "0\"");
  EXPECT_EQ(feet_and_inches(Length::sixteenths(-117)), "-7 5/16\"");
  EXPECT_EQ(feet_and_inches(-kDoor), "-14'-7 5/16\"");
  EXPECT_EQ(total_inches(kDoor), "175 5/16\"");
  EXPECT_EQ(total_inches(-kDoor), "-175 5/16\"");
}

TEST(WriteLength, rounding_is_done_once_and_carries_into_the_foot) {
  // 11 31/32 in is half way between 11 15/16 and 12: the tie goes up.
  EXPECT_EQ(feet_and_inches(Length::sixty_fourths(766)), "1'-0\"");
  EXPECT_EQ(total_inches(Length::sixty_fourths(766)), "12\"");
  EXPECT_EQ(feet_and_inches(Length::sixty_fourths(766) - Length::nanometres(1)), "11 15/16\"");
  // Up is towards plus infinity: -1/32 in goes to 0, without a sign; -3/32 to -1/16.
  EXPECT_EQ(feet_and_inches(Length::sixty_fourths(-2)), "0\"");
  EXPECT_EQ(feet_and_inches(Length::sixty_fourths(-6)), "-1/16\"");
  EXPECT_EQ(millimetres_text(Length::nanometres(4'450'500'000)), "4451 mm");
  EXPECT_EQ(millimetres_text(Length::nanometres(4'450'499'999)), "4450 mm");
  EXPECT_EQ(millimetres_text(Length::nanometres(-500'000)), "0 mm");
}

TEST(WriteLength, a_sheet_shows_both_forms_where_they_differ) {
  EXPECT_EQ(both_forms(kDoor, Tape::Inches), "14'-7 5/16\" = 175 5/16\"");
  EXPECT_EQ(both_forms(Length::sixteenths(117), Tape::Inches), "7 5/16\"");
  EXPECT_EQ(both_forms(Length::millimetres(4451), Tape::Millimetres), "4451 mm");
  EXPECT_EQ(tape_text(kDoor, Tape::Inches), "14'-7 5/16\"");
  EXPECT_EQ(tape_text(Length::millimetres(390), Tape::Millimetres), "390 mm");
}

TEST(WriteLength, exact_text_is_sixty_fourths_or_decimal_millimetres) {
  EXPECT_EQ(exact_text(Length::sixty_fourths(11221), Tape::Inches), "14'-7 21/64\"");
  EXPECT_EQ(exact_text(Length::nanometres(1), Tape::Inches), "0.000001 mm");
  EXPECT_EQ(exact_text(Length::nanometres(-102'500'000), Tape::Millimetres), "-102.5 mm");
  // 7 5/8 in = 7.625 x 25.4 = 193.675 mm.
  EXPECT_EQ(exact_text(Length::sixteenths(122), Tape::Millimetres), "193.675 mm");
}

}  // namespace
}  // namespace stringcourse
