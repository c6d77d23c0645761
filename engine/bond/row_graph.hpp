#pragma once
// One row as a graph that is grown where it is walked: nodes are head joints (or run ends), arcs are pieces.
//
// A run's pieces decide its joint: with module sum M = sum of (piece + j) and T = run + (1 - joint ends) j, the joints
// of a run of m are j + (T - M) / m wide. So a run is walked within a FAMILY:
//   even    M = T: every joint is j; any number of pieces; at most one make-up piece among them;
//   shared  M != T: the difference D is shared by m joints, so the number of pieces is part of the family;
//   odd     a make-up piece whose length was rounded to the saw's step: D is what rounding left, pieces counted too;
//   bare    nothing at all, where no pieces fill the run (conceding panels).
#include <algorithm>
#include <cstdint>
#include <vector>

#include "bond/exact.hpp"
#include "bond/flat_map.hpp"
#include "bond/key.hpp"
#include "bond/panel.hpp"
#include "bond/reach.hpp"
#include "bond/room.hpp"
#include "bond/saw_steps.hpp"

namespace stringcourse::bond {

/// A whole cell that a bar goes through, as the last piece offers it.
struct HeldCell {
  std::int32_t bar = 0;
  Exact from, to;
};

struct Arc {
  std::int32_t target = 0;
  std::int32_t choice =
      -2;  // index into the row's own choices; -1 make-up; -2: no piece (entering a run, leaving the row)
  std::int64_t length = 0;
  CutEnd cut = CutEnd::None;
  Key cost;  // times the number of courses
};

struct Node {
  Exact place;                     // centre of the head joint after the last piece, or the run's end
  std::int64_t low = 0, high = 0;  // the whole nanometres on either side of the place
  std::int64_t next = 0;           // no joint comes before this place from here on; known once the arcs are
  std::int32_t run = -1;           // -1: before the first run
  std::int32_t family = -1;
  std::int64_t sum = 0;     // module sum so far
  std::int32_t count = 0;   // pieces so far (0 in even families)
  bool made_up = false;     // the make-up piece is behind
  bool head_joint = false;  // a joint that laps are counted from
  bool run_done = false;
  bool finished = false;                        // the row is complete: beyond everything
  std::int32_t lintel = -1;                     // this joint is the end joint of that lintel
  std::int32_t first_held = 0, held_count = 0;  // into RowGraph::held
  std::int32_t first_arc = -1, arc_count = 0;   // -1: not yet grown
};

struct Family {
  enum class Kind { Even, Shared, Odd, Bare } kind = Kind::Even;
  std::int32_t run = 0;
  std::int64_t target = 0;    // module sum to reach (Odd: with the make-up's own module)
  std::int32_t pieces = 0;    // Even: any number
  std::int64_t leftover = 0;  // D
  std::int64_t joints = 0;    // m, where the number of pieces is fixed
  std::int64_t make_up = 0;   // Odd: the make-up's length
};

class RowGraph {
 public:
  RowGraph(const Panel& panel, const Row& row, const Menu& menu, const Reach& reach);

  /// The node before the first run.
  [[nodiscard]] std::int32_t root() const { return 0; }
  [[nodiscard]] const Node& node(std::int32_t index) const { return nodes_[static_cast<std::size_t>(index)]; }
  /// The arcs from a node, grown at the first asking: longer pieces first. The references die at the next growth.
  [[nodiscard]] std::int32_t grow_arcs(std::int32_t index);
  [[nodiscard]] const Arc& arc(std::int32_t index) const { return arcs_[static_cast<std::size_t>(index)]; }
  [[nodiscard]] const HeldCell& held(std::int32_t index) const { return held_[static_cast<std::size_t>(index)]; }
  [[nodiscard]] const Row& row() const { return *row_; }
  /// Families that no layout within the allowance can use are closed; entering them is skipped by who walks.
  [[nodiscard]] bool is_open(std::int32_t family) const {
    return family < 0 || open_[static_cast<std::size_t>(family)];
  }
  /// By family: whether it is open.
  [[nodiscard]] const std::vector<char>& open_families() const { return open_; }
  void open_all_families() { open_.assign(families_.size(), 1); }
  /// Closes every family that is not `alive`.
  void close_others(const std::vector<char>& alive);
  /// Of each run only the `most` families of each kind whose joints differ least from j stay open.
  void open_likeliest(std::size_t most);
  /// What is grown from now on is charged to `room`; growth itself is never refused.
  void charge_to(Room* room) { room_ = room; }
  [[nodiscard]] std::size_t node_count() const { return nodes_.size(); }
  [[nodiscard]] std::size_t arc_count() const { return arcs_.size(); }
  /// Whether some sums or families were left out for being too many: who proves must look at no such graph.
  [[nodiscard]] bool is_cut_short() const { return cut_short_; }
  /// The first run that nothing fills, or -1.
  [[nodiscard]] std::int32_t run_without_family() const;
  [[nodiscard]] std::size_t family_count() const { return families_.size(); }
  /// How many pieces shorter than twice the short-lap limit the walk must still lay before its run is done, at least.
  [[nodiscard]] std::int32_t least_short_to_come(const Node& node) const;
  /// Least deviation that the runs of this row need by themselves, over all its courses, in nanometres.
  [[nodiscard]] std::uint64_t least_deviation() const;

 private:
  struct Faces {  // of the piece about to be laid
    Exact previous_end, start, end;
  };

  void measure_modules();
  void make_families();
  void add_bare(std::int32_t run);
  void add_even(std::int32_t run, std::int64_t target);
  void add_shared(std::int32_t run, std::int64_t target);
  void add_odd(std::int32_t run, std::int64_t target);
  /// The one family of a run that is laid.
  void add_printed(std::int32_t run, std::int64_t target);
  void sum_printed();
  /// Whether this piece, laid at this sum, is the one that was printed there.
  [[nodiscard]] bool as_printed(std::int32_t run, std::int64_t sum, std::int64_t length, CutEnd cut) const;
  [[nodiscard]] const Reach& reach_of(Family::Kind kind) const;
  [[nodiscard]] bool may_lay(Family::Kind kind, const PieceChoice& choice) const {
    return row_->fixed || menu_->stage != Stage::Few || kind != Family::Kind::Shared || !choice.is_cut;
  }
  void add_counted(Family family, std::int32_t least, std::int32_t most);
  /// Whether joints that share this leftover are within the job's range.
  [[nodiscard]] bool in_joint_range(std::int64_t leftover, std::int64_t joints) const;
  /// The same, or within what a conceding panel allows.
  [[nodiscard]] bool may_have_joints(std::int64_t leftover, std::int64_t joints) const;
  void enter_run(std::int32_t run);
  std::int32_t finished_node();
  void grow_pieces(std::int32_t from);
  void try_piece(std::int32_t from, const PieceChoice& choice, std::int32_t original);
  void try_make_ups(std::int32_t from);
  /// `conceded`: weight, in each course.
  void lay(std::int32_t from, const PieceChoice& choice, std::int32_t original, CutEnd cut, std::uint32_t conceded);
  [[nodiscard]] bool can_finish(const Family& family, std::int64_t sum, std::int32_t count, bool made_up) const;
  [[nodiscard]] bool can_make_up(std::int64_t rest, std::int32_t count_left) const;
  [[nodiscard]] bool lawful_make_up(std::int64_t length) const;
  [[nodiscard]] Faces faces_of(const Node& from, std::int64_t length) const;
  [[nodiscard]] bool covers_bar(const Faces& faces) const;
  /// Puts the cells that hold bars into holding_; how many bars of this piece, or of the joints beside it, none holds.
  [[nodiscard]] std::uint32_t hold_bars(const RowRun& run, const PieceChoice& choice, CutEnd cut, const Faces& faces,
                                        bool last);
  [[nodiscard]] bool holds(const PanelBar& bar, std::size_t index, const PieceChoice& choice, CutEnd cut,
                           const Faces& faces);
  /// How many bearings this cut would stand under.
  [[nodiscard]] std::uint32_t barring_zones(const PieceChoice& cut, const Faces& faces) const;
  [[nodiscard]] Exact joint_place(const Family& family, std::int64_t sum, std::int32_t count) const;
  [[nodiscard]] std::uint32_t mark_of(const PieceChoice& choice, std::int32_t original, CutEnd cut);
  /// `mark` tells apart nodes whose last piece holds a bar in different cells; 0 where no bar is held.
  std::int32_t node_at(std::int32_t family, std::int64_t sum, std::int32_t count, bool made_up, std::uint32_t mark);
  void place_node(Node& node, const Family& family) const;
  /// `conceded`: weight, in all courses together.
  [[nodiscard]] Key charge(const PieceChoice& choice, bool changed, std::uint32_t conceded) const;
  [[nodiscard]] std::int32_t joint_ends(const RowRun& run) const {
    return (has_joint(run.at_start) ? 1 : 0) + (has_joint(run.at_end) ? 1 : 0);
  }

  const Panel* panel_;
  const Row* row_;
  const Menu* menu_;
  const Reach* reach_;
  SawSteps saw_steps_;
  Reach uncut_;  // stage Few
  Order order_;
  std::int32_t finished_ = -1;
  Room* room_ = nullptr;
  bool cut_short_ = false;
  std::int64_t longest_module_ = 0, least_module_ = 0, long_deficit_ = 0;  // see least_short_to_come
  std::vector<Family> families_;
  std::vector<char> open_;
  std::vector<std::int32_t> first_family_;  // by run, one more at the end
  std::vector<Node> nodes_;
  std::vector<Arc> arcs_, fresh_;
  std::vector<HeldCell> held_, holding_;
  std::vector<std::vector<std::int64_t>> printed_sums_;  // by run: module sums at which printed pieces begin, rising
  std::vector<std::int64_t> make_ups_;                   // lengths of make-up pieces that hold bars
  IndexMap index_;
};

[[nodiscard]] Order order_of(const Panel& panel);
/// The first term of a cost: the weight of what is conceded where a panel may concede, else short laps or cuts. The
/// search looks for layouts within a growing allowance of it.
[[nodiscard]] inline std::uint64_t first_term(const Key& cost, const Panel& panel) {
  return panel.concedes ? cost.words[0] >> 32 : cost.words[0];
}
/// The least cost with this first term.
[[nodiscard]] inline Key first_term_key(std::uint64_t term, const Panel& panel) {
  return Key{{panel.concedes ? term << 32 : term, 0, 0, 0}};
}
/// The narrowest joint that a row of this panel may have.
[[nodiscard]] inline std::int64_t least_joint(const Panel& panel) {
  return panel.concedes ? std::min(panel.far_joint_least, panel.joint_least) : panel.joint_least;
}
/// The longest module sum that a run of this panel may ask for: tight joints let it hold more than its length.
[[nodiscard]] std::int64_t longest_target(const Panel& panel);
/// What a row may be laid with at one stage.
[[nodiscard]] Menu menu_of(const Row& row, Stage stage);
/// How many families each row of this panel may have, where so many looks are left: they take at most a quarter of
/// them.
[[nodiscard]] std::size_t most_families(const Panel& panel, const Room& room);

}  // namespace stringcourse::bond
