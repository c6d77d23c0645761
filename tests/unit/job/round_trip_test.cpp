// write_job and read_job undo each other.
#include <cstring>

#include "gtest/gtest.h"
#include "job/read.hpp"
#include "job/write.hpp"
#include "told.hpp"
#include "unit/job/random_job.hpp"
#include "unit/job/support.hpp"

// Fields that are not named have their defaults: that is what is wanted here.
#pragma clang diagnostic ignored "-Wmissing-designated-field-initializers"

namespace stringcourse::test {
namespace {

std::string first_refusal(const std::expected<Job, Refusals>& job) {
  if (job || job.error().shown.empty()) return "";
  const Refusal& first = job.error().shown.front();
  return std::string(first.code) + " " + first.place + ": " + test::told(first.reason);
}

TEST(RoundTrip, AJobWithEveryFieldComesBackEqual) {
  const auto back = read_job(write_job(full_job()));
  ASSERT_TRUE(back.has_value()) << first_refusal(back);
  EXPECT_EQ(*back, full_job());
}

TEST(RoundTrip, TwoThousandRandomJobsComeBackEqual) {
  for (std::uint64_t seed = 1; seed <= 2'000; ++seed) {
    const Job job = random_job(seed);
    const auto back = read_job(write_job(job));
    ASSERT_TRUE(back.has_value()) << "seed " << seed << ": " << first_refusal(back);
    ASSERT_EQ(*back, job) << "seed " << seed;
  }
}

TEST(RoundTrip, WritingWhatWasReadGivesTheSameBytes) {
  for (std::uint64_t seed = 5'001; seed <= 5'200; ++seed) {
    const std::string written = write_job(random_job(seed));
    ASSERT_EQ(write_job(read_job(written).value()), written) << "seed " << seed;
  }
}

TEST(RoundTrip, TheDocumentHasAFixedForm) {
  Job job;
  job.name = "Shed";
  job.units.series = "us-8";
  job.outline.sides = {
      {.from = "A", .to = "B", .length = {Length::inches(287) + Length::sixteenths(10), Basis::Actual}}};
  job.heights.courses = 12;
  // 287 5/8 in = 23 ft 11 5/8 in.
  EXPECT_EQ(write_job(job), R"({
  "stringcourse": 1,
  "name": "Shed",
  "tape": "inches",
  "units": {
    "series": "us-8"
  },
  "outline": {
    "closed": true,
    "sides": [
      {
        "from": "A",
        "to": "B",
        "length": "23'-11 5/8\" actual"
      }
    ]
  },
  "interior_walls": [],
  "heights": {
    "courses": 12
  },
  "openings": []
}
)");
}

TEST(RoundTrip, HostileNamesComeBackByteForByte) {
  for (const char* name : {"<script>alert('x')</script>", "\"];--\\", "left\u202Eright", "\U0001F9F1\U0001F3E0",
                           "e\u0301\u00E9", "a/b~c", "{{7*7}}", "%s%n", "=1+1", "\u2028\u2029\uFEFF"}) {
    Job job = full_job();
    job.name = job.openings[0].name = job.outline.sides[0].from = job.units.series = name;
    const auto back = read_job(write_job(job));
    ASSERT_TRUE(back.has_value()) << name << first_refusal(back);
    EXPECT_EQ(std::memcmp(back->name.data(), name, std::strlen(name) + 1), 0);
    EXPECT_EQ(*back, job);
  }
}

TEST(RoundTrip, EscapesOfJsonAreTheCharactersThatTheyMean) {
  const auto job = read_job(replaced(kSmallJob, "Shed", R"(\u0041\u00e9\ud83e\uddf1\/\"\\)"));
  ASSERT_TRUE(job.has_value());
  EXPECT_EQ(job->name, "A\u00E9\U0001F9F1/\"\\");
}

TEST(RoundTrip, AbsentFieldsHaveTheDefaultsOfTheJob) {
  const auto job = read_job(kSmallJob);
  ASSERT_TRUE(job.has_value()) << first_refusal(job);
  EXPECT_EQ(job->notes, "");
  EXPECT_FALSE(job->units.stocked.has_value());
  EXPECT_FALSE(job->openings[0].place.to.has_value());
  EXPECT_EQ(job->steel, Steel{});
  EXPECT_EQ(job->outline.sides[0].length, (StatedLength{Length::feet(28), Basis::Nominal}));
}

TEST(RoundTrip, ASchoolSizedJobIsRead) {
  Job job = full_job();
  const Opening door = job.openings[0];
  job.openings.clear();
  for (int k = 0; k < 3'000; ++k) {
    job.openings.push_back(door);
    job.openings.back().name = "D" + std::to_string(k);
  }
  const auto back = read_job(write_job(job));
  ASSERT_TRUE(back.has_value()) << first_refusal(back);
  EXPECT_EQ(*back, job);
}

}  // namespace
}  // namespace stringcourse::test
