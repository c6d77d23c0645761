// Damaged documents: never a crash, every refusal well said, and what is accepted comes back equal.
#include <string>
#include <vector>

#include "gtest/gtest.h"
#include "job/read.hpp"
#include "job/write.hpp"
#include "unit/job/random_job.hpp"
#include "unit/job/support.hpp"

namespace stringcourse::test {
namespace {

/// Start and size of a string or a plain word or number of the document.
struct Token {
  std::size_t start, size;
};

std::vector<Token> tokens_of(const std::string& text) {
  std::vector<Token> tokens;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t start = at;
    if (text[at] == '"') {
      for (++at; text[at] != '"'; ++at) at += text[at] == '\\' ? 1 : 0;
      tokens.push_back({start, ++at - start});
    } else if (std::isalnum(static_cast<unsigned char>(text[at])) || text[at] == '-') {
      while (std::isalnum(static_cast<unsigned char>(text[at])) || text[at] == '-') ++at;
      tokens.push_back({start, at - start});
    } else {
      ++at;
    }
  }
  return tokens;
}

const std::vector<std::string> kIntruders = {"null",
                                             "true",
                                             "-1",
                                             "0",
                                             "1",
                                             "201",
                                             "1.0",
                                             "1e400",
                                             "9223372036854775808",
                                             "[]",
                                             "{}",
                                             "[[[]]]",
                                             "\"\"",
                                             "\"near\"",
                                             "\"name\"",
                                             "\"naem\"",
                                             "\"24'-0\\\"\"",
                                             "\"-3\\\"\"",
                                             "\"20 km\"",
                                             "\"7 5/8\\\" actual\"",
                                             "\"\\u0000\"",
                                             "\"\\u202e\"",
                                             "\"\\ud800\"",
                                             "\"\xC3\"",
                                             "\"a/b~c\"",
                                             "\"us-8\"",
                                             "{\"from\": \"A\", \"at\": \"1\\\"\"}",
                                             "stringcourse",
                                             ""};

/// Puts another value, or another of the document's own, in the place of one value or key.
std::string with_token_exchanged(std::string text, Dice& dice) {
  const std::vector<Token> tokens = tokens_of(text);
  const Token out = tokens[dice.below(tokens.size())];
  const Token in = tokens[dice.below(tokens.size())];
  const std::string own = text.substr(in.start, in.size);
  return text.replace(out.start, out.size, dice.heads() ? own : kIntruders[dice.below(kIntruders.size())]);
}

/// Takes out, doubles or overwrites a few bytes.
std::string with_bytes_damaged(std::string text, Dice& dice) {
  const std::size_t at = dice.below(text.size());
  const std::size_t count = 1 + dice.below(1 + dice.below(60));
  switch (dice.below(4)) {
    case 0: return text.erase(at, count);
    case 1: return text.insert(at, text.substr(at, count));
    case 2: return text.substr(0, at);
    default: text[at] = static_cast<char>(dice.below(256)); return text;
  }
}

TEST(Mutation, FiveThousandDamagedDocumentsAreRefusedWellOrComeBackEqual) {
  int accepted = 0, refused = 0;
  for (std::uint64_t seed = 1; seed <= 5'000; ++seed) {
    Dice dice(seed);
    std::string text = write_job(random_job(seed));
    for (auto times = 1 + dice.below(4); times > 0; --times) {
      text = dice.below(3) == 0 ? with_bytes_damaged(text, dice) : with_token_exchanged(text, dice);
      if (!read_job(text).has_value()) break;
    }
    const auto job = read_job(text);
    if (job) {
      ++accepted;
      ASSERT_EQ(read_job(write_job(*job)).value(), *job) << "seed " << seed;
    } else {
      ++refused;
      ASSERT_TRUE(is_well_said(job.error())) << "seed " << seed;
    }
  }
  EXPECT_GT(accepted, 100);  // both ways must have been walked
  EXPECT_GT(refused, 1'000);
}

}  // namespace
}  // namespace stringcourse::test
