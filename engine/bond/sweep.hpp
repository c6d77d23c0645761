#pragma once
// The sweep: all distinct rows of a panel laid at once from start to end, the row that lags furthest behind always
// next, best first by cost so far plus a bound on the cost to go. The first complete layout reached is the best.
//
// State: of each row its front (a node of its graph) and the head joints behind it that a joint yet to come may still
// be compared with (within the lap, or within the matching distance of a course two up). Two ways that lead to the same
// state are one; the cheaper is kept.
#include <cstdint>
#include <memory>
#include <optional>
#include <vector>

#include "bond/pair_bound.hpp"
#include "bond/panel.hpp"
#include "bond/row_graph.hpp"

namespace stringcourse::bond {

struct SweepResult {
  enum class Outcome { Best, NoneBetter, OutOfBudget, Unfinished } outcome = Outcome::NoneBetter;
  Key cost = Key::impossible();   // of `rows`, when a layout was found
  Key bound = Key::impossible();  // no lawful layout of this stage that beats the cutoff costs less
  std::vector<std::vector<std::vector<Chosen>>> rows;
  std::int64_t expansions = 0;
};

class Sweep {
 public:
  /// `places` bounds the places that its pair bounds may keep; everything is charged to `room`, which must outlive it.
  Sweep(const Panel& panel, Stage stage, std::int64_t places, Room& room);
  /// Least cost of any layout at this stage, from bounds alone; impossible() if some pair of rows has none.
  [[nodiscard]] Key root_bound();
  /// The best layout that costs less than `cutoff`, within `budget` expansions. Layouts are looked for within a growing
  /// allowance of the first term, so that rows whose joints would lie badly are never followed far.
  [[nodiscard]] SweepResult run(const Key& cutoff, std::int64_t budget);
  /// The same in steps: Unfinished says that `bound` is sure so far, and that there is more to look through. Asked
  /// again with a cutoff that is no greater, it goes on.
  [[nodiscard]] SweepResult advance(const Key& cutoff, std::int64_t budget);
  /// The allowance of the first term with which advance() goes on; a fresh sweep of the same panel may begin there.
  [[nodiscard]] std::uint64_t next_first_term() const { return least_allowance_; }
  void begin_at(std::uint64_t first_term) { least_allowance_ = first_term; }
  /// A good layout, not proven: only the `width` most promising states of each step are followed. For jobs whose
  /// proof runs out of budget.
  [[nodiscard]] SweepResult run_beam(const Key& cutoff, std::size_t width);
  /// Whether the pair bounds ran out of room: nothing is proven then, and only run_beam of a Rough sweep helps.
  [[nodiscard]] bool ran_out() const;
  [[nodiscard]] std::int64_t room_left() const { return places_; }
  /// A bound from the first term alone; it stands even where the pair bounds ran out of room.
  [[nodiscard]] Key sure_bound() const { return first_term_key(sure_first_term_, *panel_); }
  /// A row that no walk completes by itself, or -1.
  [[nodiscard]] std::int32_t impossible_row();
  /// Least total deviation that the runs need by themselves.
  [[nodiscard]] std::uint64_t least_deviation();

 private:
  struct Neighbour {
    std::int32_t row;
    std::uint32_t weight;  // how many pairs of courses
  };
  struct Edge {
    std::int32_t first, second;
    PairTerms terms;
  };
  struct Pair {
    Edge edge;
    std::shared_ptr<PairBound> bound;
    std::size_t same = 0;  // the first pair that has this bound
  };
  /// A way to share out all that rows cost: each row's pieces are counted once, with one pair or by itself; what rows
  /// cost one another is counted in `pairs`, each at most once. The parts' least costs add up to a bound.
  struct Sharing {
    std::vector<std::int32_t> pairs;  // into pairs_
    std::vector<std::int32_t> alone;  // rows counted by themselves
  };
  struct State {
    Key cost, to_go;
    std::int32_t parent, row, arc, depth;
  };
  struct Waiting {
    Key total;
    std::int32_t depth, state;
    bool operator<(const Waiting& other) const {  // for a max-heap: the best on top
      if (total != other.total) return total > other.total;
      if (depth != other.depth) return depth < other.depth;
      return state > other.state;
    }
  };

  /// What an allowance of the first term comes to: pairs are built, and families closed, for it.
  struct Allowed {
    bool possible = false;              // some layout may exist within it
    std::optional<std::uint64_t> next;  // the next allowance worth trying; nullopt: it would change nothing
  };
  [[nodiscard]] Allowed allow(std::uint64_t allowance);
  [[nodiscard]] static std::uint64_t stepped(std::uint64_t allowance) {
    return allowance + std::max<std::uint64_t>(1, allowance / 8);
  }
  [[nodiscard]] std::uint64_t next_after(std::uint64_t allowance, std::uint64_t wanted) const;
  void note_sure(std::uint64_t first_term);
  [[nodiscard]] bool laps_first() const { return order_ == Order::HalfBond && !panel_->concedes; }
  [[nodiscard]] bool find_least_of_edges(std::uint64_t allowance, Allowed& allowed);
  void note_least(const Pair& pair);
  [[nodiscard]] std::uint64_t least_of_all_edges() const;
  [[nodiscard]] Allowed build_all(std::uint64_t allowance);
  [[nodiscard]] bool build_sharing(const Sharing& sharing, std::uint64_t allowance, Allowed& allowed,
                                   std::vector<char>& built);
  [[nodiscard]] SweepResult run_within(const Key& cutoff, std::int64_t budget);
  [[nodiscard]] Key bound_at_root();
  [[nodiscard]] SweepResult run_beam_within(const Key& cutoff, std::size_t width);
  void restart();
  void find_alike();
  void find_neighbours();
  void make_sharings(Stage stage);
  void add_sharing(const std::vector<Edge>& edges, const std::vector<Edge>& rest);
  [[nodiscard]] std::int32_t pair_of(const Edge& edge);
  [[nodiscard]] RowGraph& graph(std::int32_t row) {
    return graphs_[static_cast<std::size_t>(alike_[static_cast<std::size_t>(row)])];
  }
  [[nodiscard]] PairPlace place_of(const std::int32_t* words, const Edge& edge);

  [[nodiscard]] std::int32_t* words_of(std::int32_t state) {
    return words_.data() + static_cast<std::size_t>(state) * stride_;
  }
  [[nodiscard]] const Node& front(const std::int32_t* words, std::int32_t row) {
    return graph(row).node(words[row_offset(row)]);
  }
  [[nodiscard]] std::size_t row_offset(std::int32_t row) const { return static_cast<std::size_t>(row) * (1 + memory_); }
  [[nodiscard]] std::int32_t lagging_row(const std::int32_t* words);
  [[nodiscard]] std::optional<Key> step_cost(const std::int32_t* words, std::int32_t row, const Arc& arc);
  [[nodiscard]] bool count_laps(const std::int32_t* words, std::int32_t row, const Node& target, Charge& charge);
  [[nodiscard]] bool count_cells(const std::int32_t* words, std::int32_t row, const Node& target, Charge& charge);
  void count_shifts(const std::int32_t* words, std::int32_t row, const Node& target, Charge& charge);
  [[nodiscard]] bool lies_in_masonry(std::int32_t row, const Exact& place) const;
  template <typename Visit>
  void each_joint(const std::int32_t* words, std::int32_t row, Visit visit);
  void move_front(std::int32_t* words, std::int32_t row, std::int32_t target);
  void forget(std::int32_t* words);
  [[nodiscard]] bool still_needed(const std::int32_t* words, std::int32_t row, const Node& joint);
  [[nodiscard]] Key bound_of(const std::int32_t* words);

  [[nodiscard]] std::int32_t find_state(const std::int32_t* words, std::uint64_t hash, std::size_t& slot);
  [[nodiscard]] std::int32_t keep_state(const std::int32_t* words, const State& state);
  std::int32_t expand(std::int32_t state, const Key& cutoff);
  void grow_slots();
  /// What keeping a state is charged: its words, and as much again as kBytesOfLook twice for itself and its place in
  /// the heap.
  [[nodiscard]] std::int64_t looks_of_state() const { return 2 + static_cast<std::int64_t>(stride_) / 16; }
  [[nodiscard]] std::vector<std::vector<std::vector<Chosen>>> rows_of(std::int32_t goal);

  const Panel* panel_;
  Order order_;
  std::vector<Menu> menus_;
  std::vector<std::shared_ptr<const Reach>> reaches_;
  std::vector<RowGraph> graphs_;
  std::vector<std::int32_t> alike_;  // by row: the first row whose graph serves it too (weighted panels; else itself)
  std::vector<RowBound> row_bounds_;
  std::vector<std::vector<Neighbour>> neighbours_, upper_, lower_;
  std::vector<Edge> lying_, shifting_;  // neighbouring courses; courses two apart in different bands
  std::vector<Pair> pairs_;
  std::vector<std::uint64_t> least_of_edge_;  // first term, by edge of lying_, within the families that are open
  std::vector<Sharing> sharings_;
  std::size_t memory_ = 1;  // joints remembered behind a row's front
  std::size_t stride_ = 0;
  std::vector<std::int32_t> words_;
  std::vector<State> states_;
  std::vector<std::int32_t> slots_;
  std::vector<std::int32_t> child_;
  std::vector<Waiting> heap_;
  std::int64_t places_ = 0;
  Room* room_;
  bool cut_short_ = false;  // some rows could not be made in full
  bool cut_off_ = false;    // something was dropped for costing no less than the cutoff
  std::uint64_t allowance_ = 0;
  bool all_open_ = false;                   // no family is closed yet: what pairs take at least is sure
  std::uint64_t sure_first_term_ = 0;       // no layout has less of the first term
  std::uint64_t least_allowance_ = 0;       // where to go on: less was tried, or is surely too little
  bool bounded_ = false;                    // what the root takes within it was told
  std::optional<std::uint64_t> built_for_;  // what the pairs stand built for
  Allowed built_;
};

}  // namespace stringcourse::bond
