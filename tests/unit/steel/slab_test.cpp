#include "steel/slab.hpp"

#include <gtest/gtest.h>

#include "unit/kiln_house_site.hpp"

namespace stringcourse::steel {
namespace {

using test::Site;

Site kiln_house() { return test::kiln_house_site(); }

void add_edge(Site& site, std::string on, Length at, Length beyond) {
  Reading reading;
  reading.id = std::to_string(site.job.readings.size());
  reading.edge = EdgeReading{std::move(on), {}, at, beyond};
  site.job.readings.push_back(reading);
}

void add_dowel(Site& site, const Dowel& planned, Length along_off, Length deeper) {
  Reading reading;
  reading.id = std::to_string(site.job.readings.size());
  reading.dowel = DowelReading{site.building.walls[static_cast<std::size_t>(planned.wall)].name,
                               {},
                               planned.along + along_off,
                               planned.off_face + deeper};
  site.job.readings.push_back(reading);
}

SlabRoom room_of(const Site& site) {
  return slab_room(site.job, site.building, site.layout, std::vector<bool>(site.job.readings.size(), true));
}

TEST(SlabRoom, EdgesAlonePutTheBuildingInTheMiddleOfTheSlab) {
  // AB lies to the south and runs west: 4 in beyond it and none beyond CD: 2 in south. BC (west) 1 in, DA (east) 3 in:
  // 1 in east.
  Site site = kiln_house();
  for (const int feet : {1, 18}) {
    add_edge(site, "AB", Length::feet(feet), Length::inches(4)), add_edge(site, "CD", Length::feet(feet), Length());
    add_edge(site, "BC", Length::feet(feet), Length::inches(1)),
        add_edge(site, "DA", Length::feet(feet), Length::inches(3));
  }
  const SlabRoom room = room_of(site);
  ASSERT_TRUE(room.fit);
  const auto inches = [](Length length) { return static_cast<double>(length.in_nanometres()) / 25.4e6; };
  EXPECT_NEAR(inches(room.fit->room), 2, 1e-6);  // north and south bind
  EXPECT_NEAR(inches(room.fit->north), -2, 1e-6);
  EXPECT_NEAR(inches(room.fit->room_before), 0, 1e-9);
  EXPECT_NEAR(inches(room.fit->east), 1, 1e-6);  // 2 in must be left on both sides: 1 in neither more nor less
}

TEST(SlabRoom, DowelsThatAllStandOffByTheSameAreFollowed) {
  // The slab is large; every dowel of AB and CD was set 3/4 in too far east. The building moves east until they are as
  // well placed as can be: by so much, as far as the rooms on both sides of the cells are alike.
  Site site = kiln_house();
  for (const char* side : {"AB", "BC", "CD", "DA"}) {
    for (const int feet : {1, 18}) add_edge(site, side, Length::feet(feet), Length::inches(10));
  }
  int count = 0;
  for (const Dowel& dowel : dowels_of(site.building, site.layout)) {
    if (dowel.wall != 0 && dowel.wall != 2) continue;
    add_dowel(site, dowel, dowel.wall == 0 ? -Length::sixteenths(12) : Length::sixteenths(12),
              Length());  // AB runs west, CD east
    ++count;
  }
  const SlabRoom room = room_of(site);
  ASSERT_TRUE(room.fit);
  EXPECT_EQ(room.dowels, count);
  EXPECT_GT(room.fit->east, Length());
  EXPECT_GT(room.fit->room, room.fit->room_before);
}

TEST(SlabRoom, ADowelFarOutDoesNotDragTheBuildingAlong) {
  Site site = kiln_house();
  for (const char* side : {"AB", "BC", "CD", "DA"}) {
    for (const int feet : {1, 18}) add_edge(site, side, Length::feet(feet), Length::inches(1));
  }
  const SlabRoom without = room_of(site);
  add_dowel(site, dowels_of(site.building, site.layout)[1], Length(), Length::inches(9));  // inside the building
  const SlabRoom with = room_of(site);
  EXPECT_EQ(with.dowels, 0);
  EXPECT_EQ(with.fit->room, without.fit->room);
}

TEST(SlabRoom, WithoutEdgesNothingIsFitted) {
  Site site = kiln_house();
  add_dowel(site, dowels_of(site.building, site.layout)[1], Length(), Length());
  EXPECT_FALSE(room_of(site).fit);
}

}  // namespace
}  // namespace stringcourse::steel
