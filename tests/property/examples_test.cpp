// The example jobs, read from their files as the command line reads them, are laid and certified.
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <sstream>

#include "certify.hpp"
#include "job/read.hpp"

namespace stringcourse::property {
namespace {

TEST(Certified, EveryExampleJob) {
  int count = 0;
  for (const auto& entry : std::filesystem::directory_iterator(std::filesystem::path(STRINGCOURSE_ROOT) / "examples")) {
    if (entry.path().extension() != ".json") continue;
    std::ostringstream text;
    text << std::ifstream(entry.path()).rdbuf();
    const auto job = read_job(text.str());
    ASSERT_TRUE(job.has_value()) << entry.path();
    const Verdict verdict = certify(*job);
    EXPECT_EQ(verdict.outcome, Outcome::Solved) << entry.path();
    // What is solved again from places as found keeps its corners as printed, which proves nothing of others.
    const bool from_here = std::ranges::any_of(job->laid, [](const LaidEntry& laid) { return laid.found.has_value(); });
    EXPECT_NE(verdict.proven, from_here) << entry.path();
    EXPECT_EQ(verdict.faults, "") << entry.path();
    ++count;
  }
  EXPECT_GE(count, 6);
}

}  // namespace
}  // namespace stringcourse::property
