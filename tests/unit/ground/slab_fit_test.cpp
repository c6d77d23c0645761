#include "ground/slab_fit.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

namespace stringcourse::ground {
namespace {

constexpr double kMm = 1e-3;

/// Edge distances of a rectangle a x b (metres): two places on each side, outward directions, millimetres of room.
std::vector<Clearance> edges(double a, double b, const std::vector<int>& rooms) {
  const Spot places[8] = {{1, 0}, {a - 1, 0}, {a, 1}, {a, b - 1}, {a - 1, b}, {1, b}, {0, b - 1}, {0, 1}};
  const Spot outward[4] = {{0, -1}, {1, 0}, {0, 1}, {-1, 0}};
  std::vector<Clearance> all;
  for (std::size_t k = 0; k < 8; ++k) all.push_back({places[k], outward[k / 2], Length::millimetres(rooms[k])});
  return all;
}

TEST(SlabFit, ASlabTooLargeAllRoundLeavesTheBuildingInItsMiddle) {
  const SlabFit fit = best_fit(edges(8, 6, {20, 20, 20, 20, 20, 20, 20, 20}), Length::millimetres(200));
  EXPECT_NEAR(static_cast<double>(fit.room.in_nanometres()), 20e6, 5);
  EXPECT_NEAR(static_cast<double>(fit.east.in_nanometres()), 0, 5);
}

TEST(SlabFit, RoomOnOneSideIsSharedByShiftingHalfOfIt) {
  // 40 mm too much to the east, none to the west: 20 mm east, 20 mm left on both. North and south alike 30.
  const SlabFit fit = best_fit(edges(8, 6, {30, 30, 40, 40, 30, 30, 0, 0}), Length::millimetres(200));
  EXPECT_NEAR(static_cast<double>(fit.east.in_nanometres()), 20e6, 5);
  EXPECT_NEAR(static_cast<double>(fit.room.in_nanometres()), 20e6, 5);
  EXPECT_EQ(fit.room_before, Length());
}

TEST(SlabFit, ASlabThatIsTooSmallSaysByHowMuch) {
  const SlabFit fit = best_fit(edges(8, 6, {-6, -6, 10, 10, -2, -2, 10, 10}), Length::millimetres(200));
  EXPECT_NEAR(static_cast<double>(fit.room.in_nanometres()), -4e6,
              5);  // 8 mm short in one direction, half on each side
  EXPECT_LT(fit.room, Length());
}

TEST(SlabFit, ATurnedSlabTurnsTheBuildingWithIt) {
  // The slab is the building and 20 mm all round, turned by 1 mm in 1 m about the middle: the fit finds that turn.
  const double turn = 1e-3;
  std::vector<Clearance> clearances = edges(8, 6, {20, 20, 20, 20, 20, 20, 20, 20});
  for (Clearance& one : clearances) {
    const double x = one.at.x - 4, y = one.at.y - 3;
    const double moved = -turn * y * one.direction.x + turn * x * one.direction.y;
    one.room = one.room + Length::nanometres(std::llround(moved * 1e9));
  }
  const SlabFit fit = best_fit(clearances, Length::millimetres(200));
  EXPECT_NEAR(fit.turn, turn, 1e-8);
  EXPECT_NEAR(static_cast<double>(fit.room.in_nanometres()), 20e6, 50);
}

TEST(SlabFit, NoOtherPlaceNearbyHasMoreRoomWhereNothingIsLinearised) {
  // Real turning with cosines: what linearising leaves out is below 1/64 in by the bound on the turn.
  std::minstd_rand dice(9);
  for (int round = 0; round < 100; ++round) {
    std::vector<int> rooms;
    for (int k = 0; k < 8; ++k) rooms.push_back(static_cast<int>(dice() % 60) - 10);
    const std::vector<Clearance> clearances = edges(9, 7, rooms);
    const SlabFit fit = best_fit(clearances, Length::millimetres(200));
    const auto room_at = [&](double east, double north, double turn) {
      double least = 1e9;
      for (const Clearance& one : clearances) {
        const double x = one.at.x - 4.5, y = one.at.y - 3.5;
        const double mx = east + std::cos(turn) * x - std::sin(turn) * y - x,
                     my = north + std::sin(turn) * x + std::cos(turn) * y - y;
        least = std::min(
            least, static_cast<double>(one.room.in_nanometres()) * 1e-9 - mx * one.direction.x - my * one.direction.y);
      }
      return least;
    };
    const double east = static_cast<double>(fit.east.in_nanometres()) * 1e-9,
                 north = static_cast<double>(fit.north.in_nanometres()) * 1e-9;
    const double bound = 25.4 / 64 * kMm, room = static_cast<double>(fit.room.in_nanometres()) * 1e-9;
    EXPECT_NEAR(room_at(east, north, fit.turn), room, bound);
    const double most = greatest_turn(std::sqrt(3.5 * 3.5 + 4.5 * 4.5));
    for (const double de : {-2.0, 0.0, 2.0}) {
      for (const double dn : {-2.0, 0.0, 2.0}) {
        for (const double dt : {-3e-4, 0.0, 3e-4}) {
          if (std::abs(fit.turn + dt) > most) continue;
          EXPECT_LE(room_at(east + de * kMm, north + dn * kMm, fit.turn + dt), room + bound);
        }
      }
    }
  }
}

}  // namespace
}  // namespace stringcourse::ground
