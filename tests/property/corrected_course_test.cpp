// Every correction that the examples' courses can ask for, laid out as it says and held before the certificate checker:
// bars in whole cells with their clearance, laps of a quarter unit, joints inside the tolerance, and the course back
// where it should be. Cells and laps are read by proof/, which shares no code with what made the correction.
#include <gtest/gtest.h>

#include <algorithm>
#include <cstdio>
#include <fstream>
#include <sstream>

#include "bond/layout_parts.hpp"
#include "job/read.hpp"
#include "laying/as_laid.hpp"
#include "proof/cells.hpp"
#include "proof/laps.hpp"
#include "solve/solve.hpp"

namespace stringcourse::property {
namespace {

using namespace laying;

Answer planned(const std::string& name) {
  std::ostringstream text;
  text << std::ifstream(std::string(STRINGCOURSE_ROOT) + "/examples/" + name + ".json").rdbuf();
  return *solve(*read_job(text.str()), Wishes{});
}

struct Counted {
  int joints = 0, cuts = 0, again = 0, none = 0, bars = 0, laps = 0;
};

class Held {
 public:
  Held(const Answer& plan, Counted& counted)
      : plan_(plan), facts_(proof::gather(plan.building, plan.layout)), counted_(counted) {}

  void look(const CourseAsLaid& course, std::size_t index, Length past) {
    const RunAsLaid& state = course.runs[index];
    const Correction& next = state.next;
    switch (next.what) {
      case Correction::What::SawCut: ++counted_.cuts; return;
      case Correction::What::LayAgain: ++counted_.again; break;
      case Correction::What::CannotBe: ++counted_.none; return;
      case Correction::What::Joints: ++counted_.joints; break;
    }
    // Laid again from a unit that stands as if the one reading had come about evenly; nothing was learned before it.
    const int from = state.laid - next.again;
    const Length past_there = next.again == 0 ? past : Length::nanometres(past.in_nanometres() * from / state.laid);
    const Run& run = bond::runs_in(plan_.layout, course.wall, course.course)[index];
    const auto pieces = bond::pieces_of(plan_.layout, run);
    proof::Facts facts = facts_;
    std::vector<proof::HeadJoint>& joints =
        facts.walls[static_cast<std::size_t>(course.wall)].courses[static_cast<std::size_t>(course.course - 1)].joints;
    Length place = from == 0
                       ? run.start
                       : bond::far_end(pieces[static_cast<std::size_t>(from - 1)]).nearest_nanometre() + past_there;
    std::size_t unit = static_cast<std::size_t>(from);
    if (unit == 0 && !has_joint(run.at_start)) place = place + pieces[unit++].length;
    for (const Length joint : next.joints) {
      EXPECT_GE(joint, plan_.laid->how.joints.least);
      EXPECT_LE(joint, plan_.laid->how.joints.most);
      if (unit < pieces.size()) move_joint(joints, pieces[unit], place + joint.half_down());
      place = place + joint;
      if (unit == pieces.size()) break;  // the joint at the run's end
      if (state.lost.empty()) hold_bars(course, run, pieces[unit], place);
      place = place + pieces[unit++].length;
    }
    const Length target = unit == pieces.size() && has_joint(run.at_end) &&
                                  static_cast<int>(next.joints.size()) ==
                                      run.joints - (from == 0 ? 0 : from - 1 + (has_joint(run.at_start) ? 1 : 0))
                              ? run.end
                              : bond::far_end(pieces[unit - 1]).nearest_nanometre();
    // What the units are expected to add is taken off ahead. Rounding to the tape's step leaves less than half of one,
    // the mark's own rounding another half.
    const Length taken =
        next.again > 0 ? Length()
                       : corrected_ahead(state.bias, static_cast<int>(unit) - state.laid, plan_.laid->how.joints.step);
    EXPECT_LE(magnitude(place + taken - target), plan_.laid->how.joints.step)
        << course.course << " past " << past.in_nanometres();
    const proof::LapCount laps = proof::check_laps(plan_.building, facts);
    counted_.laps += !laps.violations.empty();
    EXPECT_EQ(laps.violations.empty(), !std::ranges::contains(state.lost, laying::Lost::What::Lap, &laying::Lost::what))
        << (laps.violations.empty() ? "" : laps.violations.front().text);
  }

 private:
  /// The joint before this piece now has its middle here.
  static void move_joint(std::vector<proof::HeadJoint>& joints, const Piece& piece, Length middle) {
    proof::HeadJoint* nearest = nullptr;
    for (proof::HeadJoint& joint : joints) {
      const Length off = piece.start.nearest_nanometre() - joint.middle.nearest_nanometre();
      if (off >= Length() && off <= Length::inches(1)) nearest = &joint;
    }
    if (nearest != nullptr) nearest->middle = ExactPosition{middle.in_nanometres(), 1};
  }

  void hold_bars(const CourseAsLaid& course, const Run& run, const Piece& piece, Length start) {
    if (!plan_.building.bars) return;
    const Length half = plan_.building.bars->diameter.half_down() + plan_.building.bars->clearance;
    for (const bond::WallBar& bar : bond::bars_on_wall(plan_.building, plan_.layout, run.wall)) {
      const Length in = bar.centre - piece.start.nearest_nanometre();
      if (course.course < bar.first_course || course.course > bar.last_course || in <= Length() || in >= piece.length)
        continue;
      const auto cells =
          proof::whole_cells(plan_.building.series_of(plan_.building.walls[static_cast<std::size_t>(run.wall)]), piece);
      const Length at = bar.centre - start;
      EXPECT_TRUE(std::ranges::any_of(
          cells, [&](const CellSpan& cell) { return at - half >= cell.from && at + half <= cell.to; }))
          << "bar at " << bar.centre.in_nanometres() << " course " << course.course;
      ++counted_.bars;
    }
  }

  const Answer& plan_;
  proof::Facts facts_;
  Counted& counted_;
};

TEST(Corrections, AreHeldByTheCertificateAtEveryMarkOfEveryExample) {
  Counted all;
  for (const char* name : {"kiln-house", "clay-store", "hillside-shed"}) {
    const Answer plan = planned(name);
    if (!plan.layout.stopped.empty()) continue;
    Held held(plan, all);
    const Length step = plan.laid->how.joints.step;
    const int courses = std::min<int>(4, static_cast<int>(plan.building.courses.size()));
    for (int wall = 0; wall < static_cast<int>(plan.building.walls.size()); ++wall) {
      for (int course = 1; course <= courses; ++course) {
        const CourseAsLaid plain =
            course_as_laid(plan.job, plan.building, {plan.layout}, plan.laid->how, {}, wall, course);
        for (const WallMark& mark : plain.marks) {
          if (!mark.to_read) continue;
          for (int steps = -14; steps <= 12; ++steps) {
            const Trial trial{mark.mark.at, step * steps};
            const CourseAsLaid tried =
                course_as_laid(plan.job, plan.building, {plan.layout}, plan.laid->how, {}, wall, course, trial);
            const RunAsLaid& run = tried.runs[static_cast<std::size_t>(mark.run)];
            if (run.laid == mark.units && !run.finished)
              held.look(tried, static_cast<std::size_t>(mark.run), step * steps);
          }
        }
      }
    }
  }
  std::printf(
      "corrections: %d by joints, %d by a cut, %d by laying again, %d not at all; %d bars looked at, %d laps lost and "
      "said\n",
      all.joints, all.cuts, all.again, all.none, all.bars, all.laps);
  EXPECT_GT(all.joints, 1'000);
  EXPECT_GT(all.bars, 500);
  EXPECT_GT(all.cuts + all.again, 20);
}

}  // namespace
}  // namespace stringcourse::property
