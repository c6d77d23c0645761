#include "proof/laps.hpp"

#include <algorithm>

namespace stringcourse::proof {
namespace {

/// Joints of one panel that lap: not those at tied junctions.
std::vector<HeadJoint> lapping_joints(const CourseFacts& course, int panel) {
  std::vector<HeadJoint> joints;
  for (const HeadJoint& joint : course.joints)
    if (joint.panel == panel && !joint.tied) joints.push_back(joint);
  return joints;
}

bool same_lintel_end(const HeadJoint& a, const HeadJoint& b) { return a.lintel != -1 && a.lintel == b.lintel; }

/// Two neighbouring courses of one wall.
struct CoursePair {
  std::int32_t wall, upper_course;
  std::string where;
};

LapCount laps_between(const std::vector<HeadJoint>& lower, const std::vector<HeadJoint>& upper, const Series& series,
                      const CoursePair& pair) {
  LapCount count;
  const Length least = series.least_lap(), below = series.short_lap_below();
  const Length widest = std::max(least, below);
  std::size_t first = 0;  // joints of `upper` before this one lie too far left of every joint still to come
  for (const HeadJoint& joint : lower) {
    while (first < upper.size() && upper[first].middle < joint.middle &&
           !closer_than(upper[first].middle, joint.middle, widest))
      ++first;
    for (std::size_t i = first; i < upper.size(); ++i) {
      if (joint.middle < upper[i].middle && !closer_than(joint.middle, upper[i].middle, widest)) break;
      if (same_lintel_end(joint, upper[i])) continue;
      if (closer_than(joint.middle, upper[i].middle, below)) ++count.short_laps;
      if (!closer_than(joint.middle, upper[i].middle, least)) continue;
      const Length here = joint.middle.nearest_nanometre(), above = upper[i].middle.nearest_nanometre();
      const bool stacked = closer_than(joint.middle, upper[i].middle, std::min(series.relaxed_piece, least));
      Concession lap{stacked ? Concession::What::StackedLap : Concession::What::ShortLap,
                     pair.wall,
                     pair.upper_course,
                     std::min(here, above),
                     std::max(here, above),
                     std::max(here, above) - std::min(here, above)};
      count.violations.push_back(
          violation(kLap, pair.where,
                    "head joints at " + in_millimetres(here) + " and, a course up, at " + in_millimetres(above), lap));
    }
  }
  return count;
}

/// Runs of one course that belong to a panel.
std::vector<const RunFacts*> runs_of(const CourseFacts& course, int panel) {
  std::vector<const RunFacts*> runs;
  for (const RunFacts& run : course.runs)
    if (run.panel == panel) runs.push_back(&run);
  return runs;
}

bool same_breaks(const std::vector<const RunFacts*>& a, const std::vector<const RunFacts*>& b) {
  return std::ranges::equal(a, b, [](const RunFacts* x, const RunFacts* y) {
    return x->run->start == y->run->start && x->run->end == y->run->end && x->run->at_start == y->run->at_start &&
           x->run->at_end == y->run->at_end;
  });
}

bool same_class(const Course& a, const Course& b) { return a.bond_beam == b.bond_beam && a.half_high == b.half_high; }

bool same_row(const std::vector<const RunFacts*>& a, const std::vector<const RunFacts*>& b) {
  return std::ranges::equal(a, b, [](const RunFacts* x, const RunFacts* y) {
    return std::ranges::equal(x->pieces, y->pieces, [](const Piece* p, const Piece* q) {
      return p->length == q->length && p->cut == q->cut && p->make_up == q->make_up;
    });
  });
}

/// One panel, course by course.
using PanelRuns = std::vector<std::vector<const RunFacts*>>;

/// Number of the band of each course: a band goes on as long as each course repeats the breaks and the class of the
/// course two below it in the same band; courses laid already and those above them are not of one band.
std::vector<int> bands_of(const Building& b, const PanelRuns& courses, std::size_t laid) {
  std::vector<int> bands;
  std::size_t first = 0;
  for (std::size_t c = 0; c < courses.size(); ++c) {
    const bool repeats =
        (c == 0 || c != laid) &&
        (c < first + 2 || (same_class(b.courses[c], b.courses[c - 2]) && same_breaks(courses[c], courses[c - 2])));
    if (!repeats) first = c;
    bands.push_back(c == 0 ? 0 : bands.back() + (repeats ? 0 : 1));
  }
  return bands;
}

Length match_within(const Series& series) {
  return series.tape == Tape::Inches ? Length::sixteenths(4) : Length::millimetres(6);
}

bool stands_inside(const std::vector<const RunFacts*>& runs, const ExactPosition& at) {
  return std::ranges::any_of(runs, [&](const RunFacts* run) {
    return ExactPosition{run->run->start.in_nanometres(), 1} < at &&
           at < ExactPosition{run->run->end.in_nanometres(), 1};
  });
}

/// Whether a joint of `upper` (in order) stands within `near` of `at`.
bool has_match(const std::vector<HeadJoint>& upper, const ExactPosition& at, Length near) {
  const Length reach = near + Length::nanometres(1);  // some way past `near`, to find where to start looking
  auto joint = std::ranges::partition_point(
      upper, [&](const HeadJoint& j) { return j.middle < at && !closer_than(j.middle, at, reach); });
  for (; joint != upper.end() && closer_than(joint->middle, at, reach); ++joint) {
    const int128 left = static_cast<int128>(joint->middle.numerator) * at.denominator;
    const int128 right = static_cast<int128>(at.numerator) * joint->middle.denominator;
    const int128 apart = left < right ? right - left : left - right;
    if (apart <= static_cast<int128>(joint->middle.denominator) * at.denominator * near.in_nanometres()) return true;
  }
  return false;
}

std::int64_t shifted_between(const CourseFacts& lower, const CourseFacts& upper, int panel, Length near) {
  const std::vector<HeadJoint> above = lapping_joints(upper, panel);
  const std::vector<const RunFacts*> masonry = runs_of(upper, panel);
  return std::ranges::count_if(lapping_joints(lower, panel), [&](const HeadJoint& joint) {
    return stands_inside(masonry, joint.middle) && !has_match(above, joint.middle, near);
  });
}

BandCount check_panel(const Building& b, const WallFacts& wall, int index, int panel) {
  BandCount count;
  PanelRuns courses;
  for (const CourseFacts& course : wall.courses) courses.push_back(runs_of(course, panel));
  const std::vector<int> bands = bands_of(
      b, courses, b.laid_to.empty() ? 0 : static_cast<std::size_t>(b.laid_to[static_cast<std::size_t>(index)]));
  const Length near = match_within(b.series_of(b.walls[static_cast<std::size_t>(index)]));
  for (std::size_t c = 2; c < courses.size(); ++c) {
    if (bands[c] != bands[c - 2])
      count.shifted_joints += shifted_between(wall.courses[c - 2], wall.courses[c], panel, near);
    else if (!same_row(courses[c], courses[c - 2]))
      count.violations.push_back(violation(kBands, place_of(b, index, static_cast<std::int32_t>(c + 1)),
                                           "not laid like the course two below it in the same band"));
  }
  return count;
}

}  // namespace

LapCount check_laps(const Building& building, const Facts& facts) {
  LapCount total;
  for (std::size_t w = 0; w < facts.walls.size(); ++w) {
    const WallFacts& wall = facts.walls[w];
    if (wall.stopped) continue;
    for (int panel = 0; panel < wall.panels; ++panel)
      for (std::size_t c = 0; c + 1 < wall.courses.size(); ++c) {
        LapCount more =
            laps_between(lapping_joints(wall.courses[c], panel), lapping_joints(wall.courses[c + 1], panel),
                         building.series_of(building.walls[w]),
                         {static_cast<std::int32_t>(w), static_cast<std::int32_t>(c + 2),
                          place_of(building, static_cast<std::int32_t>(w), static_cast<std::int32_t>(c + 1))});
        total.short_laps += more.short_laps;
        total.violations = joined(std::move(total.violations), std::move(more.violations));
      }
  }
  return total;
}

BandCount check_bands(const Building& building, const Facts& facts) {
  BandCount total;
  for (std::size_t w = 0; w < facts.walls.size(); ++w) {
    if (facts.walls[w].stopped) continue;
    for (int panel = 0; panel < facts.walls[w].panels; ++panel) {
      BandCount more = check_panel(building, facts.walls[w], static_cast<int>(w), panel);
      total.shifted_joints += more.shifted_joints;
      total.violations = joined(std::move(total.violations), std::move(more.violations));
    }
  }
  return total;
}

}  // namespace stringcourse::proof
