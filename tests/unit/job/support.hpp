#pragma once
// Small documents to try the reader with, and what a refusal must be like.
#include <algorithm>
#include <expected>
#include <string>
#include <string_view>

#include "gtest/gtest.h"
#include "job/codes.hpp"
#include "job/read.hpp"
#include "job/words.hpp"
#include "told.hpp"

namespace stringcourse::test {

/// A document that is accepted as it stands.
inline const std::string kSmallJob = R"({
  "stringcourse": 1, "name": "Shed", "tape": "inches",
  "units": {"series": "us-8"},
  "outline": {"closed": false, "sides": [{"from": "A", "to": "B", "length": "28'-0\""}]},
  "heights": {"courses": 12},
  "openings": [{"name": "D1", "on": "AB", "place": {"from": "A", "at": "4'-0\""},
                "masonry": {"width": "3'-4\"", "height": "7'-4\""}}]
})";

/// The text with its first `from` replaced by `to`; a test whose `from` is not there must not pass.
inline std::string replaced(std::string text, std::string_view from, std::string_view to) {
  const std::size_t at = text.find(from);
  EXPECT_NE(at, std::string::npos) << from;
  return at == std::string::npos ? text : text.replace(at, from.size(), to);
}

inline Refusals refusals_of(std::string_view text) {
  auto job = read_job(text);
  EXPECT_FALSE(job.has_value()) << "accepted: " << text.substr(0, 400);
  return job ? Refusals{} : job.error();
}

/// "code place" of every refusal, a line each.
inline std::string codes_and_places(const Refusals& refusals) {
  std::string out;
  for (const Refusal& refusal : refusals.shown) out += std::string(refusal.code) + " " + refusal.place + "\n";
  return out;
}

/// Every refusal says where, what and how to mend it, in UTF-8.
inline testing::AssertionResult is_well_said(const Refusals& refusals) {
  if (refusals.empty()) return testing::AssertionFailure() << "nothing is refused";
  for (const Refusal& refusal : refusals.shown) {
    for (const std::string& text : {refusal.place, test::told(refusal.reason), test::told(refusal.remedy)}) {
      if (text.empty() || text.size() > 2'000 || valid_utf8_prefix(text) != text.size()) {
        return testing::AssertionFailure()
               << refusal.code.text() << " at " << refusal.place << " has a poor text: " << text;
      }
    }
    if (!refusal.place.starts_with('/')) return testing::AssertionFailure() << "no pointer: " << refusal.place;
  }
  return testing::AssertionSuccess();
}

}  // namespace stringcourse::test
