// The registry of sheets: what its descriptors must keep so that the set, its order and the drawings can be read from
// it.
#include "sheet/registry.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <functional>
#include <set>
#include <string>

#include "unit/sheet/house_answer.hpp"

namespace stringcourse::sheet {
namespace {

using stringcourse::testing::HandBuilt;
using stringcourse::testing::Plan;

std::vector<std::string> names_of(const HandBuilt& house, Paper paper) {
  std::vector<std::string> names;
  for (const SheetName& one : sheet_names(answer_of(house), paper)) { names.push_back(one.name); }
  return names;
}

void visit_groups(const std::vector<Group>& groups, const std::function<void(const Group&)>& take) {
  for (const Group& group : groups) take(group), visit_groups(group.groups, take);
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
    EXPECT_NE(kind->purpose, nullptr);
    EXPECT_EQ(kind->sheets == nullptr, kind->draw == nullptr);
    EXPECT_TRUE(kind->note == nullptr || kind->made_note == nullptr);
    EXPECT_TRUE(kind->table != nullptr || (kind->note == nullptr && kind->made_note == nullptr));
  }
}

// The sheets of one hold point are one run of the set.
TEST(Registry, KindsStandInTheOrderOfTheHoldPoints) {
  HoldPoint last = HoldPoint::Order;
  for (const SheetKind* kind : sheet_kinds()) {
    EXPECT_GE(kind->hold_point, last) << kind->name;
    last = kind->hold_point;
  }
  EXPECT_EQ(last, HoldPoint::Top);
}

TEST(Registry, AListStandsUnderAListBeforeIt) {
  std::set<const SheetKind*> before;
  for (const SheetKind* kind : sheet_kinds()) {
    for (const SheetKind* above : kind->under) {
      if (above == nullptr) continue;
      EXPECT_TRUE(before.contains(above)) << kind->name;
      EXPECT_NE(above->table, nullptr) << kind->name;
    }
    EXPECT_TRUE(kind->small_table == nullptr || kind->table != nullptr) << kind->name;
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

// A lead of each corner beside the rod, whatever its length; its units are drawn as its words count them.
TEST(Sheets, EachLeadIsDrawnOnceWithAsManyUnitsAsItsWordsSay) {
  for (const int courses : {6, 60}) {
    const HandBuilt house{Plan{.courses = courses}};
    std::size_t told = 0;
    for (const Sheet& sheet : make_sheets(answer_of(house), Paper::Letter)) {
      visit_groups(sheet.groups, [&](const Group& group) {
        if (group.label != words::kEnglish.title_lead_table) return;
        std::size_t units = 0, boxes = 0, leads = 0;  // none on a sheet where the rod alone goes on
        const auto count = [&](const Group& part, const auto& again) -> void {
          for (const Text& text : part.texts) {
            if (!text.text.starts_with("Lead at ")) continue;
            ++leads;
            for (std::size_t at = text.text.find(": ") + 2; at < text.text.size(); ++at) {
              if (text.text[at] >= '0' && text.text[at] <= '9') units += static_cast<std::size_t>(text.text[at] - '0');
            }
          }
          for (const Shape& shape : part.shapes) boxes += shape.closed && shape.points.size() == 4;
          for (const Group& inner : part.groups) again(inner, again);
        };
        count(group, count);
        // In each course of each lead one side butts: there the end of the other side's unit is drawn too.
        EXPECT_EQ(boxes, units + leads * 5) << courses;
        told += leads;
      });
    }
    EXPECT_EQ(told, 4u) << courses;
  }
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
