// Buildings resolved from the example jobs are what the jobs ask for: the checker derives the same walls, openings,
// courses, joints and bars from the job with its own arithmetic.
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <sstream>

#include "job/read.hpp"
#include "proof/claim.hpp"
#include "told.hpp"
#include "walls/resolve.hpp"

namespace stringcourse {
namespace {

std::string text_of(const std::filesystem::path& path) {
  std::ostringstream text;
  text << std::ifstream(path).rdbuf();
  return text.str();
}

TEST(ResolvedExample, IsWhatItsJobAsks) {
  int count = 0;
  for (const auto& entry : std::filesystem::directory_iterator(std::filesystem::path(STRINGCOURSE_ROOT) / "examples")) {
    if (entry.path().extension() != ".json") continue;
    const auto job = read_job(text_of(entry.path()));
    ASSERT_TRUE(job.has_value()) << entry.path();
    const auto building = resolve(*job);
    ASSERT_TRUE(building.has_value()) << entry.path() << test::told(building.error().shown.front().reason);
    for (const proof::Violation& v : proof::check_claim(*job, *building))
      ADD_FAILURE() << entry.path() << ": " << v.where << " " << v.text;
    ++count;
  }
  EXPECT_GE(count, 6);
}

}  // namespace
}  // namespace stringcourse
