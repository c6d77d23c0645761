// The corner law, by counting every layout: plans on the half-unit grid without openings, two courses that repeat,
// whole and half units only, every joint exactly j, half bond (no two head joints of the two courses nearer than h + j
// less the short-lap margin; at quarter lap: a quarter of a unit). The joint at a butt end is a head joint. No solver
// here.
//
// Range of the proof: rectangles of 2 to 57 half units a side (3,136 plans), L-plans of 4 to 15 by 4 to 15 half units
// with every notch from 1 half unit that leaves arms of at least 2 (8,100 plans); plain units: rectangles of 4 to 40
// half units a side (with 4 in units a side of 3 does not close: its through course would end in a half at a corner).
#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cstdint>
#include <map>
#include <optional>
#include <tuple>
#include <vector>

#include "oracle/brute.hpp"

namespace stringcourse::oracle {
namespace {

/// Sixteenths of an inch.
constexpr std::int64_t kWhole = 250, kHalf = 122, kJoint = 6, kPitch = kHalf + kJoint;
constexpr std::int64_t kHalfBond = kPitch - 8;    // less the margin of 1/2 in
constexpr std::int64_t kQuarterLap = kWhole / 4;  // 62.5: joints lie on whole sixteenths, so 62 and 63 mean the same

/// What the corners of a plan are built of: wall thickness t, short leg b of the corner unit or set.
struct Masonry {
  std::int64_t thickness = kHalf;
  std::int64_t short_leg = kHalf;
  std::int64_t least_lap = kHalfBond;
};

/// Layouts of two courses: all of them, and those of whole units only. Counts stop at kMany: here only 0, 2 and "more"
/// are told apart, and the counts of a long side at quarter lap would not fit.
constexpr std::int64_t kMany = 1'000'000;
struct Count {
  std::int64_t all = 0, whole_only = 0;
  friend bool operator==(const Count&, const Count&) = default;
};

/// One course of one side.
struct Course {
  std::int64_t start = 0, end = 0;
  bool joint_at_start = false, joint_at_end = false;  // butt ends
};

/// A side: its length in half units, which of its corners are convex, and which of its ends run through in the first
/// course (in the second the other way round).
struct Side {
  int length = 0;
  bool convex_start = true, convex_end = true;
  bool through_start = true, through_end = true;
  friend auto operator<=>(const Side&, const Side&) = default;
};

/// Nominal to actual: less j between convex corners, plus j between re-entrant ones. Through and butt add what the
/// table of ends says: 0 and -b at a convex corner, +t and t - b at a re-entrant one.
Course course_of(const Side& side, const Masonry& masonry, bool first) {
  const std::int64_t corners = (side.convex_start ? 1 : 0) + (side.convex_end ? 1 : 0);
  const std::int64_t actual = side.length * kPitch + (1 - corners) * kJoint;
  const auto adds = [&](bool convex, bool through) {
    return (convex ? 0 : masonry.thickness) - (through ? 0 : masonry.short_leg);
  };
  const bool start = side.through_start == first, end = side.through_end == first;
  return {-adds(side.convex_start, start), actual + adds(side.convex_end, end), !start, !end};
}

/// Counts the pairs of rows of one side, from left to right: the course that lags lays its next piece. A new joint is
/// compared with the other course's last one; those before it are a pitch farther away.
class PairCounter {
 public:
  PairCounter(const std::array<Course, 2>& courses, std::int64_t least_lap)
      : courses_(courses), least_lap_(least_lap) {}

  Count count() {
    Front fronts[2];
    for (std::size_t c = 0; c < 2; ++c) {
      const Course& course = courses_[c];
      fronts[c] = {course.start + (course.joint_at_start ? kJoint : 0), course.joint_at_start};
      const std::int64_t room = course.end - course.start;
      if (course.joint_at_start && course.joint_at_end && room == kJoint) fronts[c].done = true;  // one joint, no piece
      else if (fronts[c].place >= course.end) return {};
    }
    if (fronts[0].joint && fronts[1].joint && too_near(fronts[0].place, fronts[1].place)) return {};
    return from(fronts[0], fronts[1]);
  }

 private:
  struct Front {
    std::int64_t place = 0;  // start face of the next piece, or past the last joint
    bool joint = false;      // a head joint stands just before it
    bool done = false;
    friend auto operator<=>(const Front&, const Front&) = default;
  };

  bool too_near(std::int64_t a, std::int64_t b) const { return (a < b ? b - a : a - b) < least_lap_; }

  Count from(const Front& a, const Front& b) {
    if (a.done && b.done) return {1, 1};
    const auto known = known_.find({a, b});
    if (known != known_.end()) return known->second;
    const std::size_t moving = a.done ? 1 : b.done ? 0 : a.place <= b.place ? 0 : 1;
    Count sum;
    for (const std::int64_t piece : {kWhole, kHalf}) {
      const std::optional<Front> next = lay(moving, moving == 0 ? a : b, moving == 0 ? b : a, piece);
      if (!next) continue;
      const Count rest = moving == 0 ? from(*next, b) : from(a, *next);
      sum.all = std::min(kMany, sum.all + rest.all);
      if (piece == kWhole) sum.whole_only = std::min(kMany, sum.whole_only + rest.whole_only);
    }
    known_[{a, b}] = sum;
    return sum;
  }

  std::optional<Front> lay(std::size_t index, const Front& front, const Front& other, std::int64_t piece) const {
    const Course& course = courses_[index];
    const std::int64_t far = front.place + piece;
    const bool first = front.place == course.start + (course.joint_at_start ? kJoint : 0);
    const bool last = far + (course.joint_at_end ? kJoint : 0) == course.end;
    // At a through end stands a corner unit: a whole, or a half that is all of its run.
    if (piece == kHalf && ((first && !course.joint_at_start) || (last && !course.joint_at_end)) && !(first && last))
      return {};
    if (far > course.end || (!last && far + kJoint >= course.end)) return {};
    Front next{far + kJoint, !last || course.joint_at_end, last};
    if (next.joint && other.joint && too_near(next.place, other.place)) return {};
    return next;
  }

  std::array<Course, 2> courses_;
  std::int64_t least_lap_;
  std::map<std::pair<Front, Front>, Count> known_;
};

/// The sides of one masonry, each counted once.
class SideTable {
 public:
  explicit SideTable(Masonry masonry) : masonry_(masonry) {}
  Count count(const Side& side) {
    const auto known = known_.find(side);
    if (known != known_.end()) return known->second;
    PairCounter counter({course_of(side, masonry_, true), course_of(side, masonry_, false)}, masonry_.least_lap);
    return known_[side] = counter.count();
  }

 private:
  Masonry masonry_;
  std::map<Side, Count> known_;
};

/// A closed plan: lengths of its sides, and for each corner (side k ends at corner k + 1) whether it is convex.
struct Plan {
  std::vector<int> sides;
  std::vector<bool> convex;  // convex[k]: the corner at the start of side k
};

struct Layouts {
  Count count;
  std::vector<unsigned> bits;  // corner bits of each choice with a layout; bit k: side k runs through at its start
};

/// Every choice of corner bits; for each the product of what its sides allow.
Layouts layouts(const Plan& plan, SideTable& table) {
  const auto corners = static_cast<unsigned>(plan.sides.size());
  Layouts found;
  for (unsigned bits = 0; bits < (1U << corners); ++bits) {
    Count product{1, 1};
    for (unsigned k = 0; k < corners && product.all > 0; ++k) {
      const unsigned next = (k + 1) % corners;
      const bool through_start = ((bits >> k) & 1U) != 0, through_end = ((bits >> next) & 1U) == 0;
      const Count side = table.count({plan.sides[k], plan.convex[k], plan.convex[next], through_start, through_end});
      product.all = std::min(kMany, product.all * side.all);
      product.whole_only = std::min(kMany, product.whole_only * side.whole_only);
    }
    if (product.all == 0) continue;
    found.count.all = std::min(kMany, found.count.all + product.all);
    found.count.whole_only = std::min(kMany, found.count.whole_only + product.whole_only);
    found.bits.push_back(bits);
  }
  return found;
}

Plan rectangle(int a, int b) { return {{a, b, a, b}, {true, true, true, true}}; }

/// a by b less a notch c by d at one corner; side 3 ends at the re-entrant corner and side 4 starts there.
Plan l_plan(int a, int b, int c, int d) { return {{a, b - d, c, d, a - c, b}, {true, true, true, false, true, true}}; }

bool two_complements_of_whole_units(const Layouts& found, unsigned corners) {
  return found.count == Count{2, 2} && found.bits.size() == 2 && (found.bits[0] ^ found.bits[1]) == (1U << corners) - 1;
}

constexpr int kLongestSide = 57;

/// Calls `each` for every L-plan of the range; how many there are.
template <class Each>
int for_each_l_plan(Each each) {
  int plans = 0;
  for (int a = 4; a <= 15; ++a)
    for (int b = 4; b <= 15; ++b)
      for (int c = 1; c <= a - 2; ++c)
        for (int d = 1; d <= b - 2; ++d, ++plans) each(a, b, c, d);
  return plans;
}

TEST(CornerLaw, EveryRectangleOfThicknessHalfAUnitHasTwoLayoutsEachTheOthersComplement) {
  SideTable table({});
  int plans = 0;
  for (int a = 2; a <= kLongestSide; ++a)
    for (int b = 2; b <= kLongestSide; ++b, ++plans)
      ASSERT_TRUE(two_complements_of_whole_units(layouts(rectangle(a, b), table), 4)) << a << " by " << b;
  EXPECT_EQ(plans, 56 * 56);
}

TEST(CornerLaw, EveryLPlanOfThicknessHalfAUnitHasTwoLayoutsEachTheOthersComplement) {
  SideTable table({});
  const int plans = for_each_l_plan([&](int a, int b, int c, int d) {
    EXPECT_TRUE(two_complements_of_whole_units(layouts(l_plan(a, b, c, d), table), 6))
        << a << " " << b << " " << c << " " << d;
  });
  EXPECT_EQ(plans, 90 * 90);  // 90: the sum of 2 to 13, ways to choose a side and its notch
}

/// 4, 6, 10 and 12 in walls with corner sets: b is half a unit whatever the thickness.
constexpr std::array<std::int64_t, 4> kOtherThicknesses{58, 90, 154, 186};

TEST(CornerLaw, RectanglesWithCornerSetsHaveTwoLayoutsAtAnyThickness) {
  for (const std::int64_t thickness : kOtherThicknesses) {
    SideTable table({thickness, kHalf, kHalfBond});
    for (int a = 2; a <= kLongestSide; ++a)
      for (int b = 2; b <= kLongestSide; ++b)
        ASSERT_TRUE(two_complements_of_whole_units(layouts(rectangle(a, b), table), 4))
            << thickness << ": " << a << " by " << b;
  }
}

TEST(CornerLaw, NoLPlanClosesAtHalfBondUnlessTheWallIsHalfAUnitThick) {
  for (const std::int64_t thickness : kOtherThicknesses) {
    SideTable table({thickness, kHalf, kHalfBond});
    for_each_l_plan([&](int a, int b, int c, int d) {
      ASSERT_EQ(layouts(l_plan(a, b, c, d), table).count.all, 0)
          << thickness << ": " << a << " " << b << " " << c << " " << d;
    });
  }
}

TEST(CornerLaw, PlainUnitsOfFourAndTwelveInchesCloseRectanglesWithHalvesAtQuarterLapOnly) {
  for (const std::int64_t thickness : {58, 186}) {
    SideTable quarter({thickness, thickness, kQuarterLap}), half({thickness, thickness, kHalfBond});
    for (int a = 4; a <= 40; ++a)
      for (int b = 4; b <= 40; ++b) {
        EXPECT_GT(layouts(rectangle(a, b), quarter).count.all, 0) << thickness << ": " << a << " by " << b;
        EXPECT_EQ(layouts(rectangle(a, b), half).count.all, 0) << thickness << ": " << a << " by " << b;
      }
  }
}

// ---- the counter itself, against the row writer of the brute force ----

bond::RowRun run_of(const Course& course) {
  return {course.start,
          course.end,
          course.joint_at_start ? RunEnd::ButtCorner : RunEnd::ThroughCorner,
          course.joint_at_end ? RunEnd::ButtCorner : RunEnd::ThroughCorner,
          -1,
          -1};
}

bond::Panel panel_of(const Side& side, const Masonry& masonry) {
  bond::Panel panel;
  panel.joint = panel.joint_least = panel.joint_most = kJoint;
  panel.least_piece = kHalf;
  panel.least_lap = masonry.least_lap;
  panel.half_length = kHalf;
  for (const bool first : {true, false}) {
    bond::Row row;
    row.runs = {run_of(course_of(side, masonry, first))};
    row.choices = {{kWhole, false, true, false, {}, 0}, {kHalf, false, false, true, {}, 0}};
    panel.rows.push_back(row);
    panel.course_rows.push_back(first ? 0 : 1);
  }
  return panel;
}

std::int64_t pairs_written_down(const bond::Panel& panel) {
  std::int64_t pairs = 0;
  const auto odd = all_rows(panel, panel.rows[0], 100'000).value(),
             even = all_rows(panel, panel.rows[1], 100'000).value();
  for (const FilledRow& a : odd)
    for (const FilledRow& b : even) pairs += short_laps_between(panel, a, b) ? 1 : 0;
  return pairs;
}

TEST(CornerLaw, CountingAgreesWithWritingDownEveryPairOfRowsOfAShortSide) {
  for (const Masonry& masonry :
       {Masonry{}, Masonry{58, 58, kQuarterLap}, Masonry{186, 186, kQuarterLap}, Masonry{90, kHalf, kHalfBond}})
    for (int length = 2; length <= 9; ++length)
      for (unsigned code = 0; code < 16; ++code) {
        const Side side{length, (code & 1U) != 0, (code & 2U) != 0, (code & 4U) != 0, (code & 8U) != 0};
        EXPECT_EQ(SideTable(masonry).count(side).all, pairs_written_down(panel_of(side, masonry)))
            << "length " << length << ", code " << code << ", thickness " << masonry.thickness;
      }
}

// Whole buildings: solve() on a sample of these plans is in corner_law_buildings_test.cpp.

}  // namespace
}  // namespace stringcourse::oracle
