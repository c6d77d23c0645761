#pragma once
// Joints of two rows that touch, as constraints of the mixed-integer model.
#include <cstdint>
#include <vector>

#include "oracle/arcs.hpp"
#include "oracle/linear.hpp"

namespace stringcourse::oracle {

/// A joint that a run may have, and the column that is 1 if it has it.
struct JointColumn {
  ArcJoint joint;
  int column = 0;
};
using Joints = std::vector<JointColumn>;  // of one run, from left to right

/// Joints at the same end of the same one-piece lintel are not compared.
bool exempt(const ArcJoint& a, const ArcJoint& b);
/// Two joints of one run are at least this far apart: the least piece and the least joint.
std::int64_t joint_spacing(const bond::Panel& panel);
/// A run's joints cut into stretches shorter than `span`.
std::vector<Joints> stretches(const Joints& joints, std::int64_t span);
void add_terms(std::vector<Term>& terms, const Joints& joints, double factor);

/// Rule 3 and short laps between one run of a row and one run of a row that it touches.
class LapConstraints {
 public:
  explicit LapConstraints(const bond::Panel& panel)
      : spacing_(joint_spacing(panel)), least_lap_(panel.least_lap), short_below_(panel.short_lap_below) {}

  /// Joints nearer than the least lap exclude one another.
  void require_laps(const Joints& lower, const Joints& upper, LinearModel& model) const;
  /// New columns, each 1 if its pair of joints stands and is a short lap; every such pair is counted by exactly one.
  std::vector<int> count_short_laps(const Joints& lower, const Joints& upper, LinearModel& model) const;

 private:
  void require_cliques(const Joints& lower, const Joints& upper, std::int64_t window, LinearModel& model) const;
  void require_gap(const Joints& lower, const Joints& upper, std::int64_t from, LinearModel& model) const;

  std::int64_t spacing_, least_lap_, short_below_;
};

}  // namespace stringcourse::oracle
