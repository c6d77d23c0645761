#pragma once
// Least cost to go of one row, and of two rows that lie on one another: the bounds that guide the sweep.
// Both walk the (loose) row graphs; both are exact for that relaxation, so they never exceed the true cost to go.
#include <cstdint>
#include <vector>

#include "bond/flat_map.hpp"
#include "bond/key.hpp"
#include "bond/row_graph.hpp"

namespace stringcourse::bond {

/// Cost to go of one row by itself.
class RowBound {
 public:
  explicit RowBound(RowGraph& graph) : graph_(&graph) {}
  /// Least cost from this node to the row's end; impossible() where no walk ends.
  [[nodiscard]] Key from(std::int32_t node);

 private:
  RowGraph* graph_;
  std::vector<Key> known_;
  std::vector<char> settled_;
};

/// Cost to go of two neighbouring rows laid together, short laps between them included. The row that lags is always
/// taken further first (a tie: the first row); joints are compared with the other row's last joint.
class PairBound {
 public:
  /// `interfaces`: how many times a course of one row lies on a course of the other.
  PairBound(const Panel& panel, RowGraph& first, RowGraph& second, std::uint32_t interfaces);
  /// Least cost from this pair of nodes; impossible() where no pair of walks ends; a pair that the two rows by
  /// themselves never meet in that order is worked out just the same.
  [[nodiscard]] Key from(std::int32_t first, std::int32_t second);

 private:
  struct Entry {
    std::int32_t first, second;
    Key cost;
    bool settled;
  };
  struct Frame {
    std::int32_t entry;
    std::int32_t next_arc, end_arc;
    bool of_first;
  };

  [[nodiscard]] std::int32_t entry_of(std::int32_t first, std::int32_t second);
  void open(std::int32_t entry);
  /// Cost of the arc with its short laps, or impossible() where rule 3 is surely broken.
  [[nodiscard]] Key step(const Arc& arc, const Node& target, const Node& other) const;

  const Panel* panel_;
  RowGraph* first_;
  RowGraph* second_;
  std::uint32_t interfaces_;
  Order order_;
  IndexMap index_;
  std::vector<Entry> entries_;
  std::vector<Frame> stack_;
};

}  // namespace stringcourse::bond
