// What is written is read back, and nothing is read that a second grammar would not read.
#include <gtest/gtest.h>

#include <random>
#include <string>
#include <vector>

#include "measure/notation.hpp"
#include "unit/measure/slow_grammar.hpp"

namespace stringcourse {
namespace {

constexpr Tape kTapes[] = {Tape::Inches, Tape::Millimetres};

void expect_exact_round_trip(Length length) {
  for (const Tape tape : kTapes) {
    const std::string text = exact_text(length, tape);
    const auto read = read_length(text, tape);
    ASSERT_TRUE(read) << text;
    ASSERT_EQ(*read, length) << text;
  }
}

TEST(RoundTrip, every_sixty_fourth_of_thirty_feet_reads_back_from_its_exact_text) {
  for (std::int64_t count = -64; count <= 30 * 12 * 64; ++count) expect_exact_round_trip(Length::sixty_fourths(count));
}

TEST(RoundTrip, every_sixteenth_of_thirty_feet_reads_back_from_both_printed_forms) {
  for (std::int64_t count = -64; count <= 30 * 12 * 16; ++count) {
    const Length length = Length::sixteenths(count);
    ASSERT_EQ(read_length(feet_and_inches(length), Tape::Millimetres), length);
    ASSERT_EQ(read_length(total_inches(length), Tape::Millimetres), length);
  }
}

TEST(RoundTrip, every_millimetre_of_ten_metres_reads_back) {
  for (std::int64_t count = 0; count <= 10'000; ++count) {
    ASSERT_EQ(read_length(millimetres_text(Length::millimetres(count)), Tape::Inches), Length::millimetres(count));
    expect_exact_round_trip(Length::millimetres(count));
  }
}

TEST(RoundTrip, seeded_nanometre_values_over_the_whole_range_read_back) {
  std::mt19937_64 random(20240611);
  const std::int64_t limit = kLongest.in_nanometres();
  for (int i = 0; i < 50'000; ++i) {
    // Every size of value: a random count of bits first.
    const std::int64_t value = static_cast<std::int64_t>(random() >> (20 + random() % 44)) % (limit + 1);
    expect_exact_round_trip(Length::nanometres(random() % 2 == 0 ? value : -value));
  }
  for (const std::int64_t value :
       {limit, limit - 1, -limit, 1 - limit, std::int64_t{1}, std::int64_t{-1}, std::int64_t{0}}) {
    expect_exact_round_trip(Length::nanometres(value));
  }
}

TEST(RoundTrip, printed_text_is_never_further_off_than_half_its_step) {
  std::mt19937_64 random(7);
  for (int i = 0; i < 20'000; ++i) {
    const Length length = Length::nanometres(static_cast<std::int64_t>(random() % 20'000'000'000) - 10'000'000'000);
    // Half a sixteenth is 793,750 nm; half a millimetre 500,000. The tie goes up: -half < printed - length <= half.
    const Length inch_error = read_length(feet_and_inches(length), Tape::Inches).value() - length;
    ASSERT_TRUE(inch_error > Length::nanometres(-793'750) && inch_error <= Length::nanometres(793'750));
    const Length metric_error = read_length(millimetres_text(length), Tape::Inches).value() - length;
    ASSERT_TRUE(metric_error > Length::nanometres(-500'000) && metric_error <= Length::nanometres(500'000));
  }
}

const std::vector<std::string> kGood{"14'-7 5/16\"", "14' 7 5/16\"",    "14'7-5/16\"", "14'-0\"",  "14 ft 7 5/16 in",
                                     "14ft",         "175 5/16\"",      "175-5/16 in", "7/8\"",    "0\"",
                                     "7.625\"",      "14.5'",           "14′-7½″",     "14’ 7 ⅜”", "4451 mm",
                                     "445.1 cm",     "4.451 m",         "175 5/16",    "4451",     "-7 5/16\"",
                                     "63/64\"",      "11 31/32 inches", "3 feet",      "10000 m"};
const std::vector<std::string> kScraps{"'",    "\"", "/",  "-",  " ",      ".",    "0",     "1",  "2",  "4", "5",
                                       "7",    "8",  "12", "16", "32",     "64",   "½",     "⅞",  "¼",  "′", "″",
                                       "’",    "”",  "–",  "−",  "\u00A0", "ft",   "in",    "mm", "cm", "m", "feet",
                                       "inch", "M",  "e",  ",",  "+",      "5/16", " 5/16", "00"};

std::string random_bytes(std::mt19937_64& random) {
  std::string text(random() % 13, ' ');
  for (char& c : text) c = static_cast<char>(random());
  return text;
}

std::string random_scraps(std::mt19937_64& random) {
  std::string text;
  for (std::uint64_t left = 1 + random() % 6; left > 0; --left) text += kScraps[random() % kScraps.size()];
  return text;
}

std::string mutated(std::mt19937_64& random) {
  std::string text = kGood[random() % kGood.size()];
  for (std::uint64_t left = random() % 3; left > 0; --left) {
    const std::size_t at = random() % (text.size() + 1);
    switch (random() % 4) {
      case 0: text.insert(at, kScraps[random() % kScraps.size()]); break;
      case 1: text.erase(at, 1 + random() % 2); break;
      case 2: text.insert(at, 1, static_cast<char>(random())); break;
      default: text = text.substr(0, at) + kGood[random() % kGood.size()]; break;
    }
  }
  return text;
}

std::string random_text(std::mt19937_64& random) {
  switch (random() % 5) {
    case 0: return random_bytes(random);
    case 1:
    case 2: return random_scraps(random);
    default: return mutated(random);
  }
}

TEST(RoundTrip, two_hundred_thousand_seeded_texts_are_read_as_the_slow_grammar_reads_them) {
  std::mt19937_64 random(48'151'623);
  int accepted = 0, refused = 0;
  for (int i = 0; i < 200'000; ++i) {
    const std::string text = random_text(random);
    const Tape tape = kTapes[random() % 2];
    const auto read = read_length(text, tape);
    const auto slow = slow_grammar::nanometres(text, tape == Tape::Inches);
    ASSERT_EQ(read.has_value(), slow.has_value()) << text;
    if (!read) {
      ++refused;
      ASSERT_FALSE(read.error().reason.empty() || read.error().remedy.empty()) << text;
      continue;
    }
    ++accepted;
    ASSERT_EQ(read->in_nanometres(), *slow) << text;
    expect_exact_round_trip(*read);
  }
  // Both outcomes are met often, so that neither side agrees by refusing (or taking) everything.
  EXPECT_GT(accepted, 40'000);
  EXPECT_GT(refused, 40'000);
}

}  // namespace
}  // namespace stringcourse
