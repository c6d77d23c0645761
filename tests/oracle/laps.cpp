#include "oracle/laps.hpp"

#include <algorithm>
#include <map>

namespace stringcourse::oracle {
namespace {

Joints between(const Joints& joints, Exact from, Exact to) {
  Joints found;
  for (const JointColumn& joint : joints)
    if (joint.joint.centre >= from && joint.joint.centre <= to) found.push_back(joint);
  return found;
}

enum class Hand { Left, Right };  // left: at p or before it

/// Joints of `upper` at a distance in [from, below) of p on the given hand, not exempt.
Joints at_distance(const JointColumn& p, const Joints& upper, std::int64_t from, std::int64_t below, Hand hand) {
  Joints found;
  for (const JointColumn& q : upper) {
    const Hand side = q.joint.centre > p.joint.centre ? Hand::Right : Hand::Left;
    if (side == hand && !exempt(p.joint, q.joint) && !nearer_than(p.joint.centre, q.joint.centre, from) &&
        nearer_than(p.joint.centre, q.joint.centre, below))
      found.push_back(q);
  }
  return found;
}

}  // namespace

bool exempt(const ArcJoint& a, const ArcJoint& b) { return a.lintel >= 0 && a.lintel == b.lintel && a.side == b.side; }

std::int64_t joint_spacing(const bond::Panel& panel) {
  std::int64_t least = INT64_MAX;
  for (const bond::Row& row : panel.rows) {
    for (const bond::PieceChoice& choice : row.choices) least = std::min(least, choice.length);
    if (row.make_up_from > 0) least = std::min(least, panel.least_piece);
  }
  return least + panel.joint_least;
}

std::vector<Joints> stretches(const Joints& joints, std::int64_t span) {
  std::vector<Joints> cut;
  for (const JointColumn& joint : joints) {
    if (cut.empty() || !nearer_than(cut.back().front().joint.centre, joint.joint.centre, span)) cut.emplace_back();
    cut.back().push_back(joint);
  }
  return cut;
}

void add_terms(std::vector<Term>& terms, const Joints& joints, double factor) {
  for (const JointColumn& joint : joints) terms.push_back({joint.column, factor});
}

void LapConstraints::require_laps(const Joints& lower, const Joints& upper, LinearModel& model) const {
  const bool some_exempt = std::any_of(lower.begin(), lower.end(), [&](const JointColumn& p) {
    return std::any_of(upper.begin(), upper.end(), [&](const JointColumn& q) { return exempt(p.joint, q.joint); });
  });
  if (some_exempt) return require_gap(lower, upper, 0, model);
  const std::int64_t window = std::min(spacing_, least_lap_);
  require_cliques(lower, upper, window, model);
  if (window < least_lap_) require_gap(lower, upper, window, model);
}

/// Inside a window not wider than lap and spacing each run has at most one joint, and a joint of either run excludes
/// all of the other's.
void LapConstraints::require_cliques(const Joints& lower, const Joints& upper, std::int64_t window,
                                     LinearModel& model) const {
  std::vector<Exact> places;
  for (const Joints* side : {&lower, &upper})
    for (const JointColumn& joint : *side) places.push_back(joint.joint.centre);
  std::sort(places.begin(), places.end());
  std::size_t held = 0;  // a window that ends where the last one ended is part of it
  for (std::size_t i = 0; i < places.size(); ++i) {
    std::size_t past = i;
    while (past < places.size() && nearer_than(places[i], places[past], window)) ++past;
    if (past <= held) continue;
    held = past;
    const Joints low = between(lower, places[i], places[past - 1]), high = between(upper, places[i], places[past - 1]);
    if (low.empty() || high.empty()) continue;
    std::vector<Term> clique;
    add_terms(clique, low, 1);
    add_terms(clique, high, 1);
    model.require(clique, -kNoLimit, 1);
  }
}

/// Joint by joint: p excludes what stands at a distance in [from, least lap) of it.
void LapConstraints::require_gap(const Joints& lower, const Joints& upper, std::int64_t from,
                                 LinearModel& model) const {
  for (const JointColumn& p : lower)
    for (const Hand hand : {Hand::Left, Hand::Right})
      for (const Joints& few : stretches(at_distance(p, upper, from, least_lap_, hand), spacing_)) {
        std::vector<Term> terms{{p.column, 1}};
        add_terms(terms, few, 1);
        model.require(terms, -kNoLimit, 1);
      }
}

/// y >= z + z' - 1 for each pair that is a short lap. Joints of one run with the same partners share one y, because at
/// most one of them, and at most one of the partners, stands.
std::vector<int> LapConstraints::count_short_laps(const Joints& lower, const Joints& upper, LinearModel& model) const {
  std::vector<int> columns;
  for (const Hand hand : {Hand::Left, Hand::Right}) {
    std::map<std::vector<int>, Joints> by_partners;
    for (const JointColumn& p : lower)
      for (const Joints& few : stretches(at_distance(p, upper, least_lap_, short_below_, hand), spacing_)) {
        std::vector<int> partners;
        for (const JointColumn& q : few) partners.push_back(q.column);
        by_partners[partners].push_back(p);
      }
    for (const auto& [partners, all] : by_partners)
      for (const Joints& few : stretches(all, spacing_)) {
        columns.push_back(model.add_binary());
        std::vector<Term> terms{{columns.back(), -1}};
        add_terms(terms, few, 1);
        for (const int column : partners) terms.push_back({column, 1});
        model.require(terms, -kNoLimit, 1);
      }
  }
  return columns;
}

}  // namespace stringcourse::oracle
