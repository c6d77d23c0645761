// A cleanout for every bar of a high pour, corner units included, and a certificate that misses none.
#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <sstream>

#include "job/read.hpp"
#include "proof/check.hpp"
#include "property/certify.hpp"
#include "setout/cleanouts.hpp"
#include "supply/counts.hpp"

namespace stringcourse::property {
namespace {

Answer solved(const std::string& json) {
  const auto job = read_job(json);
  EXPECT_TRUE(job.has_value());
  return *solve(*job, {});
}

Answer example(const std::string& name) {
  std::ifstream file(std::string(STRINGCOURSE_ROOT) + "/examples/" + name + ".json");
  std::stringstream text;
  text << file.rdbuf();
  return solved(text.str());
}

/// 24 x 16 ft, twelve courses in one pour (8 ft: over 5'-4"), bars as said.
std::string box(const std::string& series, const std::string& steel) {
  return R"({"stringcourse":1,"name":"t","tape":"inches","units":{"series":")" + series +
         R"("},"outline":{"closed":true,"sides":[
    {"from":"A","to":"B","length":"24'-0\"","turn":"right"},{"from":"B","to":"C","length":"16'-0\"","turn":"right"},
    {"from":"C","to":"D","length":"24'-0\"","turn":"right"},{"from":"D","to":"A","length":"16'-0\"","turn":"right"}]},
    "heights":{"courses":12},"openings":[],"interior_walls":[],"steel":)" +
         steel + "}";
}

// By hand: 35, 16 and 28 bars stand in these, none of them under a window only; one pour of 12 or more courses.
TEST(Cleanouts, EveryBarOfTheExamplesHasOne) {
  for (const auto& [name, bars] :
       {std::pair("glaze-store", 35), std::pair("drying-shed", 16), std::pair("clay-store", 28)}) {
    SCOPED_TRACE(name);
    const Answer answer = example(name);
    EXPECT_EQ(static_cast<int>(answer.layout.bars.size()), bars);
    EXPECT_EQ(supply::count_cleanouts(answer.building, answer.layout).all(), bars);
    EXPECT_EQ(faults_of(answer), "");
  }
}

TEST(Cleanouts, OfCornerUnitsAreCutAndOpenOutward) {
  for (const char* series : {"us-8", "us-12", "us-10", "us-6"}) {
    SCOPED_TRACE(series);
    const Answer answer = solved(box(series, R"({"bars":{"size":"#5","corners":true}})"));
    EXPECT_EQ(supply::count_cleanouts(answer.building, answer.layout), (supply::CleanoutCount{0, 4}));
    for (const setout::WallCleanout& cleanout : setout::cleanouts_of(answer.building, answer.layout)) {
      EXPECT_TRUE(cleanout.outward);  // behind the cell stands the other wall
      EXPECT_EQ(cleanout.course, 1);
    }
    EXPECT_EQ(faults_of(answer), "");
  }
}

TEST(Cleanouts, StandAtTheFootOfEachHighPourAndOfNoOther) {
  const auto courses = [](const std::string& tops) {
    const Answer answer =
        solved(box("us-8", R"({"bars":{"size":"#5","corners":true,"spacing":"4'-0\""},"pour_tops":[)" + tops + "]}"));
    EXPECT_EQ(faults_of(answer), "");
    std::vector<int> found;
    for (const PlacedCleanout& one : answer.layout.cleanouts) {
      if (!std::ranges::contains(found, one.course)) found.push_back(one.course);
    }
    if (!found.empty()) EXPECT_EQ(answer.layout.cleanouts.size(), found.size() * answer.layout.bars.size());
    return found;
  };
  EXPECT_EQ(courses("6"), std::vector<int>{});   // 4 ft and 4 ft
  EXPECT_EQ(courses("3"), std::vector<int>{4});  // 2 ft and 6 ft
  EXPECT_EQ(courses("9"), std::vector<int>{1});  // 6 ft and 2 ft
  EXPECT_EQ(courses("8"), std::vector<int>{});   // 5'-4" just
}

TEST(Cleanouts, TheCertificateFindsOneLeftOutTwiceElsewhereOrInAPlainUnit) {
  const Answer answer = solved(box("us-8", R"({"bars":{"size":"#5","corners":true,"spacing":"4'-0\""}})"));
  const auto faults = [&](const Layout& layout) {
    return proof::check(answer.job, answer.building, layout).violations.size();
  };
  ASSERT_EQ(faults(answer.layout), 0u);
  for (std::size_t k = 0; k < answer.layout.cleanouts.size(); ++k) {
    Layout less = answer.layout;
    less.cleanouts.erase(less.cleanouts.begin() + static_cast<std::ptrdiff_t>(k));
    EXPECT_GT(faults(less), 0u) << k;
    Layout twice = answer.layout;
    twice.cleanouts.push_back(twice.cleanouts[k]);
    EXPECT_GT(faults(twice), 0u) << k;
    Layout moved = answer.layout;
    moved.cleanouts[k].piece += moved.cleanouts[k].piece > 0 ? -1 : 1;
    EXPECT_GT(faults(moved), 0u) << k;
    Layout plain = answer.layout;
    Piece& piece = plain.pieces[plain.cleanouts[k].piece];
    if (piece.kind != UnitKind::Cleanout) continue;
    piece.kind = UnitKind::Full;
    EXPECT_GT(faults(plain), 0u) << k;
  }
  Building none = answer.building;
  none.cleanout_courses.clear();
  EXPECT_FALSE(proof::check(answer.job, none, answer.layout).violations.empty());
}

TEST(Cleanouts, WithoutCleanoutUnitsInTheYardAllAreCut) {
  std::string json = box("us-8", R"({"bars":{"size":"#5","corners":true,"spacing":"4'-0\""}})");
  json.replace(json.find(R"("series":"us-8")"), 15, R"("series":"us-8","stocked":["full","half","corner"])");
  const Answer answer = solved(json);
  const supply::CleanoutCount count = supply::count_cleanouts(answer.building, answer.layout);
  EXPECT_EQ(count.bought, 0);
  EXPECT_EQ(count.cut, static_cast<std::int64_t>(answer.layout.bars.size()));
  EXPECT_EQ(faults_of(answer), "");
}

}  // namespace
}  // namespace stringcourse::property
