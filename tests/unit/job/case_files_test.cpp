// The readable job files of tests/cases/jobs: good ones are accepted, bad ones refused as the file beside them says.
#include <algorithm>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

#include "gtest/gtest.h"
#include "job/read.hpp"
#include "job/write.hpp"
#include "unit/job/support.hpp"

namespace stringcourse::test {
namespace {

namespace fs = std::filesystem;

std::vector<fs::path> job_files(const std::string& folder) {
  std::vector<fs::path> files;
  for (const auto& entry : fs::directory_iterator(fs::path(STRINGCOURSE_ROOT "/tests/cases/jobs") / folder)) {
    if (entry.path().extension() == ".json") files.push_back(entry.path());
  }
  std::ranges::sort(files);
  return files;
}

std::string contents(const fs::path& path) {
  std::ifstream file(path, std::ios::binary);
  EXPECT_TRUE(file.is_open()) << path;
  std::ostringstream text;
  text << file.rdbuf();
  return text.str();
}

TEST(CaseFiles, EveryGoodJobIsAcceptedAndComesBackEqual) {
  int ran = 0;
  for (const fs::path& path : job_files("good")) {
    const auto job = read_job(contents(path));
    ASSERT_TRUE(job.has_value()) << path << "\n" << codes_and_places(job.error());
    EXPECT_EQ(read_job(write_job(*job)).value(), *job) << path;
    ++ran;
  }
  EXPECT_EQ(ran, 4);
}

TEST(CaseFiles, EveryBadJobIsRefusedAsTheFileBesideItSays) {
  int ran = 0;
  for (const fs::path& path : job_files("bad")) {
    const Refusals refusals = refusals_of(contents(path));
    EXPECT_TRUE(is_well_said(refusals)) << path;
    EXPECT_EQ(codes_and_places(refusals), contents(fs::path(path).replace_extension(".refusals"))) << path;
    ++ran;
  }
  EXPECT_EQ(ran, 6);
}

}  // namespace
}  // namespace stringcourse::test
