// The registry of sheets: what its descriptors must keep so that the set, its order and the drawings can be read from
// it.
#include "sheet/registry.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <set>
#include <string>

#include "unit/sheet/house_answer.hpp"

namespace stringcourse::sheet {
namespace {

using stringcourse::testing::HandBuilt;
using stringcourse::testing::Plan;

std::vector<std::string> names_of(const HandBuilt& house, Paper paper) {
  std::vector<std::string> names;
  for (const SheetName& one : sheet_names(answer_of(house), paper)) {
    names.push_back(one.name);
  }
  return names;
}

// The kind whose name stands behind the number: the longest, where one is the beginning of another.
std::ptrdiff_t kind_of(const std::string& sheet) {
  const std::string name = sheet.substr(sheet.find('-') + 1);
  std::ptrdiff_t found = -1;
  for (std::ptrdiff_t index = 0; index < std::ssize(sheet_kinds()); ++index) {
    const std::string_view kind = sheet_kinds()[static_cast<std::size_t>(index)]->name;
    const bool fits = name == kind || name.starts_with(std::string(kind) + "-");
    if (fits && (found < 0 || kind.size() > sheet_kinds()[static_cast<std::size_t>(found)]->name.size())) found = index;
  }
  return found;
}

TEST(Registry, EveryKindIsADrawingOrAListAndNamesAreItsOwn) {
  std::set<std::string_view> names;
  for (const SheetKind* kind : sheet_kinds()) {
    SCOPED_TRACE(kind->name);
    EXPECT_TRUE(names.insert(kind->name).second);
    EXPECT_EQ(kind->name.find_first_not_of("abcdefghijklmnopqrstuvwxyz-"), std::string_view::npos);
    EXPECT_NE(kind->table == nullptr, kind->draw == nullptr);
    EXPECT_EQ(kind->sheets == nullptr, kind->draw == nullptr);
    EXPECT_TRUE(kind->note == nullptr || kind->made_note == nullptr);
    EXPECT_TRUE(kind->table != nullptr || (kind->note == nullptr && kind->made_note == nullptr));
  }
}

// The upper list has its sheets before the lower one asks for room under it.
TEST(Registry, AListStandsUnderAListBeforeIt) {
  std::set<const SheetKind*> before;
  for (const SheetKind* kind : sheet_kinds()) {
    if (kind->under != nullptr) {
      EXPECT_TRUE(before.contains(kind->under)) << kind->name;
      EXPECT_NE(kind->under->table, nullptr) << kind->name;
    }
    before.insert(kind);
  }
}

// A sentence of the catalogue, wherever a rule is named: our own words are only for the days when it has none.
TEST(Registry, EveryCautionThatNamesARuleHasIt) {
  for (const SheetKind* kind : sheet_kinds()) {
    EXPECT_TRUE(kind->caution.rule.empty() || find_rule(kind->caution.rule) != nullptr) << kind->name;
  }
}

TEST(Sheets, StandInTheOrderOfTheRegistryUnderTheirKindsNames) {
  for (const Plan& plan :
       {Plan{}, Plan{.door = true, .cut = true, .bars = true}, Plan{.long_halves = 90, .courses = 20}}) {
    const HandBuilt house{plan};
    for (const Paper paper : {Paper::Letter, Paper::A4}) {
      std::ptrdiff_t last = 0;
      for (const std::string& name : names_of(house, paper)) {
        const std::ptrdiff_t kind = kind_of(name);
        EXPECT_GE(kind, last) << name;
        last = std::max(last, kind);
      }
      EXPECT_GT(last, 0);
    }
  }
}

// Leads of few corners under the gauge rod; where the rod is long they have a sheet of their own. Either way once.
TEST(Sheets, LeadsStandOnceUnderTheRodWhereBothFitOneSheet) {
  std::map<int, std::size_t> own_sheets;
  for (const int courses : {6, 60}) {
    const HandBuilt house{Plan{.courses = courses}};
    std::size_t told = 0;
    for (const Sheet& sheet : make_sheets(answer_of(house), Paper::Letter)) {
      const auto stands = [&](const Group& group) { return group.label == kEnglish.title_lead_table; };
      told += static_cast<std::size_t>(std::ranges::count_if(sheet.groups[1].groups, stands));
      own_sheets[courses] += sheet.name.ends_with("-leads");
    }
    EXPECT_EQ(told, 1u) << courses;
  }
  EXPECT_EQ(own_sheets[6], 0u);
  EXPECT_EQ(own_sheets[60], 1u);
}

TEST(Drawings, AreFoundByTheNamesThatTheSetGivesThem) {
  const HandBuilt house{Plan{.courses = 12, .door = true}};
  const Answer answer = answer_of(house);
  const auto names = drawing_names(house.building);
  for (std::size_t index = 0; index < names.size(); ++index) {
    const Sheet in_set = make_drawing(answer, index);
    const auto asked = make_named_drawing(answer, names[index].name);
    ASSERT_TRUE(asked.has_value()) << names[index].name;
    EXPECT_EQ((SheetName{asked->sheet.name, asked->sheet.title}), names[index]);
    EXPECT_EQ((SheetName{in_set.name, in_set.title}), names[index]);
    EXPECT_EQ(asked->sheet.width, in_set.width);
    EXPECT_EQ(asked->sheet.height, in_set.height);
  }
  // Any course has a plan when it is asked for.
  EXPECT_TRUE(make_named_drawing(answer, "plan-course-5").has_value());
}

TEST(Drawings, NamesOfNothingGiveNothing) {
  const Answer answer = answer_of(HandBuilt{Plan{.courses = 5}});
  for (const char* name : {"", "plan-course-", "plan-course-0", "plan-course-01", "plan-course-6", "plan-course-1x",
                           "plan-course-99999999999999999999", "plan-course-4294967297", "elevation-5", "elevation--1",
                           "pegs", "pegs-1", "bed-1", "summary"}) {
    EXPECT_FALSE(make_named_drawing(answer, name).has_value()) << name;
  }
}

}  // namespace
}  // namespace stringcourse::sheet
