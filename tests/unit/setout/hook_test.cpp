// Where a wall's numbers begin, by kind of its start, and where its form board begins from there.
#include "setout/hook.hpp"

#include <gtest/gtest.h>

#include "unit/walls/made_jobs.hpp"

namespace stringcourse::setout {
namespace {

using namespace stringcourse::tests;

/// An L, 32 x 24 ft with an 8 ft jog: E is re-entrant. An inner wall off AB, another off that one.
Building ell() {
  Job job = job_with(outline_of({{384}, {288}, {192}, {96, Turn::Left}, {192}, {192}}));
  InteriorWall inner;
  inner.name = "inner";
  inner.off = "AB";
  inner.place = at("A", in(264));
  job.interior_walls.push_back(inner);
  InteriorWall stub;
  stub.name = "stub";
  stub.off = "inner";
  stub.place = at("start", in(64));
  stub.length = nominal(in(48));
  job.interior_walls.push_back(stub);
  return *resolve(job);
}

int wall_called(const Building& building, const std::string& name) {
  for (std::size_t wall = 0; wall < building.walls.size(); ++wall) {
    if (building.walls[wall].name == name) return static_cast<int>(wall);
  }
  return -1;
}

TEST(Hook, IsTheCornerTheFaceMetOrTheFreeEnd) {
  const Building building = ell();
  const Hook outer = hook_of(building, wall_called(building, "AB"));
  EXPECT_EQ(outer.kind, HookKind::OuterCorner);
  EXPECT_EQ(outer.name, "A");
  const Hook inside = hook_of(building, wall_called(building, "EF"));
  EXPECT_EQ(inside.kind, HookKind::InnerCorner);
  EXPECT_EQ(inside.name, "E");
  EXPECT_EQ(inside.other, wall_called(building, "DE"));
  const Hook face = hook_of(building, wall_called(building, "inner"));
  EXPECT_EQ(face.kind, HookKind::MetFace);
  EXPECT_EQ(face.name, "AB");
  EXPECT_FALSE(face.other_is_inner);
  // AB runs west along y = 0, its inner face lies 7 5/8 in north of it.
  EXPECT_EQ(face.at.y, in16(7, 10));
  const Hook stub = hook_of(building, wall_called(building, "stub"));
  EXPECT_EQ(stub.kind, HookKind::MetFace);
  EXPECT_TRUE(stub.other_is_inner);
  const Building open = *resolve(job_with(outline_of({{384}, {288}}, false)));
  EXPECT_EQ(hook_of(open, 0).kind, HookKind::FreeEnd);
}

TEST(FormEdge, BeginsBeforeAnOuterCornerAndAfterAReEntrantOneByWhatTheFootingProjects) {
  const Building building = ell();
  SettingOut asked;
  asked.footing_outside = in(4), asked.footing_inside = in(6);
  const auto edge = [&](const std::string& name) { return form_edge(building, &asked, wall_called(building, name)); };
  EXPECT_EQ(edge("AB").beyond_face, in(4));
  EXPECT_EQ(edge("AB").before_start, in(4));
  EXPECT_EQ(edge("AB").past_end, in(4));
  // DE ends, and EF begins, in the re-entrant corner: the other wall's form stands 4 in outside its face there.
  EXPECT_EQ(edge("DE").past_end, -in(4));
  EXPECT_EQ(edge("EF").before_start, -in(4));
  // An inner wall's own footing is not said; at AB it meets that footing's inner form, 6 in inside the face met.
  EXPECT_FALSE(edge("inner").beyond_face.has_value());
  EXPECT_EQ(edge("inner").before_start, -in(6));
  EXPECT_FALSE(edge("stub").before_start.has_value());
  EXPECT_FALSE(edge("stub").past_end.has_value());
  EXPECT_FALSE(form_edge(building, nullptr, 0).beyond_face.has_value());
}

// By drawing the forms: the outline pushed out by 4 in all round. A board reaches from one corner of it to the next.
TEST(FormEdge, BoardsAreTheSidesOfTheOutlinePushedOut) {
  const Building building = ell();
  SettingOut asked;
  asked.footing_outside = in(4);
  const auto side_of_forms = [&](int wall) {
    const Wall& here = building.walls[static_cast<std::size_t>(wall)];
    const auto turned = [&](const WallEnd& end) {
      return building.corners[static_cast<std::size_t>(end.corner)].convex ? in(4) : -in(4);
    };
    return here.actual + turned(here.start) + turned(here.end);
  };
  Length east, north;  // a walk round the forms comes back to where it began
  for (int wall = 0; wall < 6; ++wall) {
    const FormEdge edge = form_edge(building, &asked, wall);
    const Length long_ = building.walls[static_cast<std::size_t>(wall)].actual + *edge.before_start + *edge.past_end;
    EXPECT_EQ(long_, side_of_forms(wall));
    switch (building.walls[static_cast<std::size_t>(wall)].heading) {
      case Heading::West: east = east - long_; break;
      case Heading::East: east = east + long_; break;
      case Heading::North: north = north + long_; break;
      case Heading::South: north = north - long_; break;
    }
  }
  EXPECT_EQ(east, Length());
  EXPECT_EQ(north, Length());
}

}  // namespace
}  // namespace stringcourse::setout
