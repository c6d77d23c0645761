// The font files that the page's module carries are those of the sheets without their outlines, table by table.
#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <iterator>
#include <vector>

#include "paper/font.hpp"

namespace stringcourse::paper {
namespace {

std::vector<std::uint8_t> file_of(const std::string& name) {
  std::ifstream file(std::string(STRINGCOURSE_ROOT) + "/engine/paper/fonts/" + name, std::ios::binary);
  return {std::istreambuf_iterator<char>(file), {}};
}

TEST(FontFiles, WithoutOutlinesAreAlikeInEveryOtherTable) {
  for (const char* face : {"Regular", "Bold"}) {
    const auto whole = file_of("B612-" + std::string(face) + ".otf"),
               metrics = file_of("B612-" + std::string(face) + ".metrics.otf");
    const auto one = Font::read(whole), other = Font::read(metrics);
    ASSERT_TRUE(one && other) << face;
    EXPECT_TRUE(other->table("CFF ").empty());
    EXPECT_FALSE(one->table("CFF ").empty());
    int tables = 0;
    for (const char* tag : {"OS/2", "cmap", "head", "hhea", "hmtx", "maxp", "name", "post"}) {
      const Bytes a = one->table(tag), b = other->table(tag);
      EXPECT_TRUE(std::ranges::equal(a, b)) << face << " " << tag;
      tables += !a.empty();
    }
    EXPECT_GE(tables, 7);
    EXPECT_EQ(read_u16(whole, 4), read_u16(metrics, 4) + 1);  // one table fewer
  }
}

TEST(FontFiles, WithoutOutlinesAreNotWhole) {
  EXPECT_TRUE(embedded_fonts().whole());
  const auto regular = file_of("B612-Regular.metrics.otf"), bold = file_of("B612-Bold.otf");
  EXPECT_FALSE((FontFiles{regular, bold}.whole()));
  EXPECT_FALSE((FontFiles{{}, {}}.whole()));
}

}  // namespace
}  // namespace stringcourse::paper
