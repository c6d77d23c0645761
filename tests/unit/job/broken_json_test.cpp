// Texts that are no document at all: refused alone, at once, with the place in the text.
#include <chrono>
#include <string>

#include "gtest/gtest.h"
#include "job/read.hpp"
#include "told.hpp"
#include "unit/job/support.hpp"

namespace stringcourse::test {
namespace {

/// The only refusal of such a text.
Refusal only_refusal(std::string_view text) {
  const Refusals refusals = refusals_of(text);
  EXPECT_TRUE(is_well_said(refusals));
  EXPECT_EQ(refusals.shown.size(), 1U);
  EXPECT_EQ(refusals.beyond, 0U);
  return refusals.shown.empty() ? Refusal{"not-json", {}, {}, {}} : refusals.shown.front();
}

struct Broken {
  std::string text;
  std::string where;  // counted by hand
};

TEST(BrokenJson, TheLineAndColumnAreThoseOfTheCharacterThatCannotStandThere) {
  const Broken all[] = {
      {"{\"a\": 1,\n  \"b\" 25}", "line 2, column 7"},  // no colon before 25
      {"{\n\n\"a\": tru}", "line 3, column 9"},         // the } where an e belongs
      {"[1,]", "line 1, column 4"},                     // nothing after the comma
      {"{\"a\": 1 \"bcd\": 2}", "line 1, column 9"},    // no comma before "bcd"
      {"{} x", "line 1, column 4"},                     // something after the document
      {"{\"\u00E9\u00E9\": 01}", "line 1, column 9"},   // 0 is a number, 1 another; characters, not bytes
      {"{\"a\": 'x'}", "line 1, column 7"},             // the wrong quotation mark
      {"{\"a\": \"x\ty\"}", "line 1, column 9"},        // a bare tab in a text
      {"{\"a\": \"\\q\"}", "line 1, column 9"},         // no such escape
      {"{} // note", "line 1, column 4"},               // no comments in JSON
      {"{a: 1}", "line 1, column 2"},                   // a key without quotation marks
      {"\xEF\xBB\xBF{x", "line 1, column 2"},           // a byte order mark is no character of the text
      {std::string("{\"stringcourse\": 1}\0 more", 24), "line 1, column 20"},  // a zero byte ends nothing
  };
  for (const Broken& broken : all) {
    const Refusal refusal = only_refusal(broken.text);
    EXPECT_EQ(refusal.code, Code("not-json")) << broken.text;
    EXPECT_EQ(refusal.place, "/");
    EXPECT_NE(test::told(refusal.reason).find(" at " + broken.where + ", at "), std::string::npos)
        << broken.text << "\n"
        << test::told(refusal.reason);
  }
}

TEST(BrokenJson, ATextThatBreaksOffSaysWhere) {
  const Broken all[] = {
      {"", "line 1, column 1"},
      {"   ", "line 1, column 4"},
      {"{\"a\": 1", "line 1, column 8"},
      {"{\"a\":\n[1, 2", "line 2, column 6"},
      {"{\"a\": \"xyz", "line 1, column 11"},
  };
  for (const Broken& broken : all) {
    const Refusal refusal = only_refusal(broken.text);
    EXPECT_EQ(refusal.code, Code("not-json")) << broken.text;
    EXPECT_NE(test::told(refusal.reason).find("breaks off at " + broken.where + ":"), std::string::npos)
        << test::told(refusal.reason);
  }
}

TEST(BrokenJson, BytesThatAreNoUtf8AreRefusedWithTheirPlace) {
  // A lone lead byte, an overlong slash, a surrogate, a code point beyond U+10FFFF: all shut out by RFC 3629.
  for (const char* bytes : {"\xC3", "\xC0\xAF", "\xED\xA0\x80", "\xF4\x90\x80\x80", "\xFF"}) {
    const Refusal refusal = only_refusal("{\n \"" + std::string(bytes) + "\": 1}");
    EXPECT_EQ(refusal.code, Code("not-utf-8"));
    EXPECT_NE(test::told(refusal.reason).find("line 2, column 3"), std::string::npos) << test::told(refusal.reason);
  }
}

TEST(BrokenJson, ALoneSurrogateEscapeIsRefused) {
  EXPECT_EQ(only_refusal(replaced(kSmallJob, "Shed", "\\ud800")).code, Code("not-json"));
  EXPECT_EQ(only_refusal(replaced(kSmallJob, "Shed", "\\udc00")).code, Code("not-json"));
}

TEST(BrokenJson, ANumberBeyondAllNumbersIsOutOfRange) {
  EXPECT_EQ(only_refusal(replaced(kSmallJob, "12", "1e999")).code, Code("out-of-range"));
}

TEST(BrokenJson, NestingStopsAtItsLimit) {
  const auto nested = [](int depth) { return std::string(depth, '[') + std::string(depth, ']'); };
  EXPECT_EQ(only_refusal(nested(33)).code, Code("too-deep"));
  EXPECT_EQ(only_refusal(nested(32)).code, Code("wrong-type"));  // deep enough to be read, but a list is no job
  EXPECT_EQ(only_refusal(std::string(7'000'000, '[')).code, Code("too-deep"));
}

TEST(BrokenJson, ADocumentBeyondEightMillionBytesIsRefusedUnread) {
  const std::string job = kSmallJob;
  EXPECT_TRUE(read_job(job + std::string(8'000'000 - job.size(), ' ')).has_value());
  const Refusal refusal = only_refusal(job + std::string(8'000'001 - job.size(), ' '));
  EXPECT_EQ(refusal.code, Code("too-large"));
  EXPECT_NE(test::told(refusal.reason).find("8000001"), std::string::npos);
}

TEST(BrokenJson, ADocumentOfMoreThanAMillionValuesIsRefused) {
  std::string zeros = "[0";
  for (int k = 1; k < 1'000'000; ++k) zeros += ",0";
  EXPECT_EQ(only_refusal(zeros + "]").code, Code("too-large"));
}

/// Seconds that reading takes. The limit of the tests below is far above what is measured (under 1 s on one slow core)
/// and far below what a reader takes that compares every field with every other (minutes).
double seconds_to_refuse(const std::string& text) {
  const auto start = std::chrono::steady_clock::now();
  EXPECT_TRUE(is_well_said(refusals_of(text)));
  return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}
constexpr double kManySeconds = 15;

TEST(BrokenJson, HundredsOfThousandsOfUnknownFieldsAreRefusedQuickly) {
  std::string fields = "{\"x0\":0";
  for (int k = 1; k < 500'000; ++k) fields += ",\"x" + std::to_string(k) + "\":0";
  EXPECT_LT(seconds_to_refuse(fields + "}"), kManySeconds);
}

TEST(BrokenJson, AVeryLongNameIsRefusedQuicklyAndClipped) {
  const std::string text = replaced(kSmallJob, "\"name\"", "\"" + std::string(7'000'000, 'n') + "\"");
  EXPECT_LT(seconds_to_refuse(text), kManySeconds);
  EXPECT_LT(refusals_of(text).shown.front().place.size(), 100U);
}

}  // namespace
}  // namespace stringcourse::test
