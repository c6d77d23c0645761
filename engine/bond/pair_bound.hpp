#pragma once
// Least cost to go of one row, and of two rows together: the bounds that guide the sweep.
// Both are exact for the rows that they look at, so they never exceed the true cost to go.
#include <cstdint>
#include <map>
#include <optional>
#include <vector>

#include "bond/flat_map.hpp"
#include "bond/key.hpp"
#include "bond/row_graph.hpp"

namespace stringcourse::bond {

/// Cost to go of one row by itself.
class RowBound {
 public:
  RowBound(RowGraph& graph, const Room& room) : graph_(&graph), room_(&room) {}
  /// Least cost from this node to the row's end; impossible() where no walk ends. Nothing where the room is out.
  [[nodiscard]] Key from(std::int32_t node);

 private:
  void reserve_for(std::int32_t node);

  RowGraph* graph_;
  const Room* room_;
  std::vector<Key> known_;
  std::vector<char> settled_;
};

/// What two rows cost each other, and whether their own pieces are counted with it.
struct PairTerms {
  enum class Pieces { Counted, Free } pieces = Pieces::Counted;
  std::uint32_t laps = 0;    // how many times a course of one lies on a course of the other
  std::uint32_t shifts = 0;  // how many times the second is two courses above the first, in another band
};

/// The two rows' fronts, and the last head joint behind each front that the other row may still be compared with.
struct PairPlace {
  std::int32_t first = 0, second = 0;
  std::int32_t behind_first = -1, behind_second = -1;
  friend bool operator==(const PairPlace&, const PairPlace&) = default;
};

/// Cost to go of two rows laid together. The row that lags is always taken further first (a tie: the first row).
/// Only pairs of walks whose FIRST term (short laps; cuts for quarter bond) stays within an allowance are looked at:
/// places beyond it answer impossible(), which is what they are to a layout within the allowance.
class PairBound {
 public:
  PairBound(const Panel& panel, RowGraph& first, RowGraph& second, PairTerms terms);
  /// Looks through the families that are open, no farther than the least first term of any complete pair of walks, or
  /// than `allowance`; goes on from where it stopped where the same families were open before. False: none within it.
  [[nodiscard]] bool find_least(std::uint64_t allowance);
  /// Goes on where find_least stopped.
  [[nodiscard]] bool find_further(std::uint64_t allowance);
  /// Bounds the places kept, over all pairs that share the counter, and the looks; beyond either the pair is no use
  /// (ran_out).
  void share_room(std::int64_t* places, Room* room) { places_ = places, room_ = room; }
  [[nodiscard]] bool ran_out() const { return ran_out_; }
  /// Looks at all walks within this allowance.
  void extend(std::uint64_t allowance);
  /// The least first term of a pair of complete walks; after find_least found one.
  [[nodiscard]] std::uint64_t least_first_term() const { return goal_term_; }
  /// The next allowance at which there would be more to look at; nullopt: nothing was left out for its first term.
  [[nodiscard]] std::optional<std::uint64_t> next_allowance() const;
  /// No pair of complete walks through open families has a lesser first term; known even after the room ran out.
  [[nodiscard]] std::uint64_t surely_at_least() const;
  /// Closes the families of both rows that no walk within the allowance completes.
  void close_unused();
  /// Least cost from this place; impossible() where no pair of walks within the allowance ends.
  [[nodiscard]] Key from(PairPlace place);

 private:
  // Kept small: a wall off the module makes tens of thousands of them.
  struct Entry {
    PairPlace place;
    std::uint32_t first_term = 0;  // least, from the rows' starts to here
    std::int32_t first_way = 0;    // into ways_
    std::int16_t way_count = 0;
    bool opened = false, finished = false;
  };
  struct Way {
    std::int32_t entry, arc;
  };
  struct CostToGo {
    Key cost = Key::impossible();
    bool settled = false;
  };
  struct Frame {
    std::int32_t entry, next_way;
  };

  [[nodiscard]] std::int32_t find(PairPlace place);
  [[nodiscard]] std::int32_t find_at(const PairPlace& place, std::uint64_t hash) const;
  std::int32_t reach(PairPlace place, std::uint32_t first_term);
  [[nodiscard]] std::uint64_t laps_to_come(const PairPlace& place) const;
  [[nodiscard]] std::vector<std::int32_t> spared_pieces(const Row& row, const Row& beside) const;
  void spread_again(std::int32_t entry);
  [[nodiscard]] Key cost_of_way(const PairPlace& place, const Way& way) const;
  void spread_level();
  void spread(std::int32_t entry);
  void forget(PairPlace& place);
  void take(std::int64_t looks);
  [[nodiscard]] std::uint32_t first_term_of(const Key& cost) const {
    return order_ == Order::Weighted ? 0 : static_cast<std::uint32_t>(first_term(cost, *panel_));
  }
  [[nodiscard]] bool first_lags(const PairPlace& place) const;
  [[nodiscard]] PairPlace moved(const PairPlace& place, std::int32_t target, bool first_moves) const;
  /// Cost of the arc with what it costs the pair, or impossible() where rule 3 is broken.
  [[nodiscard]] Key step(const PairPlace& place, const Arc& arc, bool first_moves) const;
  [[nodiscard]] bool count_lap(const Node& target, const Node& joint, Charge& charge) const;
  void count_shifts(const PairPlace& place, const Node& target, bool first_moves, Charge& charge) const;

  const Panel* panel_;
  RowGraph* first_;
  RowGraph* second_;
  PairTerms terms_;
  Order order_;
  bool goal_reached_ = false, ran_out_ = false;
  std::int64_t* places_ = nullptr;
  Room* room_ = nullptr;
  std::uint64_t goal_term_ = 0, level_ = 0;
  std::vector<char> through_first_, through_second_;        // families that were open when the table was begun
  std::vector<std::int32_t> spared_first_, spared_second_;  // by run: short pieces that may cost no short lap
  IndexTable index_;                                        // of entries_, by place
  std::vector<Entry> entries_;
  std::vector<Way> ways_;
  std::vector<CostToGo> costs_;                                 // by entry, once asked for
  std::map<std::uint64_t, std::vector<std::int32_t>> waiting_;  // entries to spread from, by first term
  std::vector<Frame> stack_;
};

}  // namespace stringcourse::bond
