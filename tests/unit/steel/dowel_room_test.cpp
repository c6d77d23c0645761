// How far a dowel may be out: against cells taken straight from the placed pieces in plan, by brute force.
#include <gtest/gtest.h>

#include <fstream>
#include <sstream>

#include "bond/assemble.hpp"
#include "bond/panel_memo.hpp"
#include "job/read.hpp"
#include "steel/dowels.hpp"
#include "told.hpp"
#include "unit/kiln_house_site.hpp"
#include "walls/resolve.hpp"

namespace stringcourse::steel {
namespace {

struct Box {
  Length west, east, south, north;
};

Box box_in_plan(const Wall& wall, Length from, Length to, Length near, Length far) {
  const PlanPoint a = plan_point(wall, from, near), b = plan_point(wall, to, far);
  return {std::min(a.x, b.x), std::max(a.x, b.x), std::min(a.y, b.y), std::max(a.y, b.y)};
}

/// The cells of a course in plan. The long unit of a corner set is half a unit thick and lies at the outer faces of an
/// outside corner (all corners of these jobs are).
std::vector<Box> cells_of_course(const Building& building, const Layout& layout, int course) {
  std::vector<Box> cells;
  for (const Run& run : layout.runs) {
    if (run.course != course) continue;
    const Wall& wall = building.walls[static_cast<std::size_t>(run.wall)];
    const Series& series = building.series_of(wall);
    for (std::uint32_t p = 0; p < run.piece_count; ++p) {
      const Piece& piece = layout.pieces[run.first_piece + p];
      if (piece.cut != CutEnd::None || piece.kind == UnitKind::Solid)
        continue;  // these jobs' dowels stand in whole units
      const Length thick = piece.kind == UnitKind::CornerSet ? series.half : series.thickness,
                   start = piece.start.nearest_nanometre();
      for (const CellSpan& cell : piece.length == series.half ? series.half_cells : series.full_cells) {
        cells.push_back(
            box_in_plan(wall, start + cell.from, start + cell.to, series.face_shell, thick - series.face_shell));
      }
    }
  }
  return cells;
}

bool clear_in(const std::vector<Box>& cells, PlanPoint at, Length off) {
  return std::ranges::any_of(cells, [&](const Box& cell) {
    return at.x - cell.west >= off && cell.east - at.x >= off && at.y - cell.south >= off && cell.north - at.y >= off;
  });
}

void expect_room_by_brute_force(const test::Site& site) {
  const Length step = Length::sixty_fourths(1),
               off = site.building.bars->diameter.half_down() + site.building.bars->clearance;
  const auto first = cells_of_course(site.building, site.layout, 1),
             second = cells_of_course(site.building, site.layout, 2);
  const std::vector<Dowel> dowels = dowels_of(site.building, site.layout);
  ASSERT_FALSE(dowels.empty());
  for (const Dowel& dowel : dowels) {
    ASSERT_TRUE(dowel.room.has_value()) << dowel.number;
    const Wall& wall = site.building.walls[static_cast<std::size_t>(dowel.wall)];
    const auto clear = [&](Length along, Length in) {
      const PlanPoint at = plan_point(wall, dowel.along + along, dowel.off_face + in);
      return clear_in(first, at, off) && clear_in(second, at, off);
    };
    const struct {
      Length room;
      int along, in;
    } ways[] = {{dowel.room->to_start, -1, 0},
                {dowel.room->to_end, 1, 0},
                {dowel.room->to_outer, 0, -1},
                {dowel.room->to_inner, 0, 1}};
    for (const auto& way : ways) {
      std::int64_t steps = 0;
      while (clear((steps + 1) * way.along * step, (steps + 1) * way.in * step)) ++steps;
      // The last step that fits, and not the next: the exact room lies between them.
      EXPECT_GE(way.room, step * steps) << site.building.walls[static_cast<std::size_t>(dowel.wall)].name
                                        << dowel.number;
      EXPECT_LT(way.room, step * (steps + 1))
          << site.building.walls[static_cast<std::size_t>(dowel.wall)].name << dowel.number;
    }
  }
}

test::Site site_of(const std::string& json) {
  Job job = *read_job(json);
  Building building = *resolve(job);
  bond::PanelMemo memo(400'000);
  Layout layout = bond::lay_out(building, memo);
  return {std::move(job), std::move(building), std::move(layout)};
}

std::string box_job(const std::string& series, const std::string& bars) {
  return R"({"stringcourse":1,"name":"t","tape":"inches","units":{"series":")" + series +
         R"("},"outline":{"closed":true,"sides":[
    {"from":"A","to":"B","length":"24'-0\"","turn":"right"},{"from":"B","to":"C","length":"16'-0\"","turn":"right"},
    {"from":"C","to":"D","length":"24'-0\"","turn":"right"},{"from":"D","to":"A","length":"16'-0\"","turn":"right"}]},
    "heights":{"courses":12},"openings":[],"interior_walls":[],"steel":{"bars":)" +
         bars + "}}";
}

TEST(DowelRoom, IsWhatTheCellsInPlanLeave) {
  expect_room_by_brute_force(test::kiln_house_site());
  expect_room_by_brute_force(site_of(box_job("us-12", R"({"size":"#4","corners":true,"spacing":"4'-0\""})")));
  expect_room_by_brute_force(site_of(box_job("us-10", R"({"size":"#5","corners":true})")));
}

// A 12 in wall's corner is made by an 8 in unit: its cell lies 1 1/8 to 7 1/4 in along (webs 1 1/8 in) and 1 1/4 to 6
// 3/8 in across (shells 1 1/4 in); in the next course the other way round. A #4 bar in coarse grout takes 1/4 + 1/2 in.
// Its middle is 3 13/16 in from both outer faces: 3 13/16 - 1 1/4 - 3/4 = 6 3/8 - 3 13/16 - 3/4 = 1 13/16 in each way.
TEST(DowelRoom, OfATwelveInchCornerByHand) {
  const test::Site site = site_of(box_job("us-12", R"({"size":"#4","corners":true,"grout":"coarse"})"));
  const auto dowels = dowels_of(site.building, site.layout);
  ASSERT_EQ(dowels.size(), 4u);
  for (const Dowel& dowel : dowels) {
    const Length each = Length::sixteenths(29);
    EXPECT_EQ(dowel.room, (DowelRoom{each, each, each, each}));
    EXPECT_EQ(dowel.off_face, Length::sixteenths(61));
    EXPECT_EQ(site.building.walls[static_cast<std::size_t>(dowel.wall)].actual - dowel.along, Length::sixteenths(61));
    // One course's cell is this wall's, the other's its neighbour's.
    ASSERT_TRUE(dowel.first && dowel.second);
    EXPECT_NE(dowel.first->wall, dowel.second->wall);
    EXPECT_EQ(test::told(little_room_said(site.building, dowel, little_room())), "");
  }
}

TEST(DowelRoom, IsRoundedInwards) {
  EXPECT_EQ(usable(Length::sixteenths(5) - Length::nanometres(1), Tape::Inches), Length::sixteenths(4));
  EXPECT_EQ(usable(Length::sixteenths(5), Tape::Inches), Length::sixteenths(5));
  EXPECT_EQ(usable(Length::millimetres(12) - Length::nanometres(1), Tape::Millimetres), Length::millimetres(11));
  EXPECT_LT(usable(-Length::nanometres(1), Tape::Inches), Length());
}

TEST(DowelRoom, LittleRoomIsTold) {
  const test::Site site = test::kiln_house_site();
  Dowel dowel = dowels_of(site.building, site.layout)[0];
  dowel.room = DowelRoom{Length::sixteenths(3), Length::inches(3), Length::inches(1), Length::inches(1)};
  EXPECT_EQ(test::told(little_room_said(site.building, dowel, little_room())), "3/16\" toward A");
  dowel.room->to_start = little_room();
  EXPECT_EQ(test::told(little_room_said(site.building, dowel, little_room())), "");
}

}  // namespace
}  // namespace stringcourse::steel
