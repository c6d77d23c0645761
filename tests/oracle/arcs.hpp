#pragma once
// The ways to fill one run as paths through a graph, for the mixed-integer model. All joints of a run are one width g,
// so runs are grouped by g (and by the make-up length, if there is one); inside a group a piece is an arc from its
// start face to the start face of the next piece. Nothing is written down row by row.
#include <compare>
#include <cstdint>
#include <vector>

#include "bond/panel.hpp"

namespace stringcourse::oracle {

/// An exact place: reduced fraction of nanometres.
struct Exact {
  std::int64_t over = 0;
  std::int64_t under = 1;  // > 0
  static Exact of(std::int64_t over, std::int64_t under);
  friend bool operator==(const Exact&, const Exact&) = default;
  friend std::strong_ordering operator<=>(const Exact& a, const Exact& b) {
    return static_cast<int128>(a.over) * b.under <=> static_cast<int128>(b.over) * a.under;
  }
};
Exact operator+(Exact a, std::int64_t b);
/// Whether b - a < limit, <= limit, exactly.
bool nearer_than(Exact a, Exact b, std::int64_t limit);
bool within(Exact a, Exact b, std::int64_t limit);

/// A head joint that counts for laps: its run, its centre, and which lintel end it closes (-1: none).
struct ArcJoint {
  std::int32_t run = 0;
  Exact centre;
  std::int32_t lintel = -1;
  std::int32_t side = 0;  // 0: before the lintel, 1: after it
  friend bool operator==(const ArcJoint&, const ArcJoint&) = default;
  friend auto operator<=>(const ArcJoint&, const ArcJoint&) = default;
};

struct ArcCell {
  std::int32_t bar = 0;
  Exact from, to;
};

inline constexpr int kSource = 0, kSink = 1;

/// One piece laid at one place. `empty`: the run has no piece at all.
struct Arc {
  int from = kSource, to = kSink;
  bond::Chosen piece;
  bool empty = false;
  Exact joint_width;
  std::int64_t all_joints = 0;   // joints that this arc brings, tied ones too
  std::vector<ArcJoint> joints;  // those that count for laps
  std::vector<ArcCell> cells;    // bars that stand well in this piece
};

struct RunGraph {
  std::vector<Arc> arcs;
  int nodes = 2;
};

RunGraph run_graph(const bond::Panel& panel, const bond::Row& row, std::int32_t run);

}  // namespace stringcourse::oracle
