#pragma once
// Solving one panel: the least cost of any lawful layout, or that there is none.
#include <cstdint>
#include <expected>
#include <memory>
#include <optional>

#include "bond/key.hpp"
#include "bond/panel.hpp"
#include "bond/room.hpp"
#include "bond/sweep.hpp"

namespace stringcourse::bond {

/// The best layout of a panel. `budget` bounds the sweep's expansions and, by half of it, the
/// places that its bounds look at: when it runs out the answer is the best layout
/// found and `least_possible` a proven bound (proven = false). Errors: PanelStop, proven when no lawful layout exists.
[[nodiscard]] std::expected<PanelAnswer, PanelStop> solve_panel(const Panel& panel, std::int64_t budget);

/// A proven bound on the cost of a panel, from pairs of rows alone: cheap. Empty: no lawful layout exists.
[[nodiscard]] std::optional<Cost> bound_panel(const Panel& panel);

/// The same in steps, for who may not need the whole answer. The panel must outlive it.
class PanelSolver {
 public:
  PanelSolver(const Panel& panel, std::int64_t budget, OutOfRoom out_of_room, Room room);
  /// What the steps from now on may take.
  void give(Room room) { room_ = room; }
  [[nodiscard]] const Room& room_left() const { return room_; }
  /// Whether whole pieces alone lay it so well that nothing else can be better: then solve() is at hand. Cheap.
  [[nodiscard]] bool try_whole();
  /// What follows from try_whole() having said no: no layout is without short laps, cuts, shifts and deviation.
  [[nodiscard]] Key bound_without_whole() const;
  /// The bound from pairs of rows; impossible() where no lawful layout exists.
  [[nodiscard]] Key pair_bound();
  [[nodiscard]] std::expected<PanelAnswer, PanelStop> solve();
  /// A layout that is easily found, not proven unless whole pieces are surely best; a stop here proves nothing.
  [[nodiscard]] std::expected<PanelAnswer, PanelStop> solve_quickly();
  /// A conceding panel's layout: as few and as mild rules given up as can be; Quick: as rows laid one beside the other need.
  enum class Effort { Quick, Search };
  [[nodiscard]] std::expected<PanelAnswer, PanelStop> concede(Effort effort);
  /// Lets go of large tables between pair_bound() and solve(), which makes them again if it is ever asked for.
  void let_go_of_large_tables();
  void let_go_of_tables() { everything_.reset(); }

 private:
  Sweep& everything();
  [[nodiscard]] SweepResult lay_roughly();
  void lay_quickly(std::size_t most_starts);
  /// Places that pair bounds may look at: in proportion to the budget.
  [[nodiscard]] std::int64_t places() const { return budget_ / 2; }
  [[nodiscard]] PanelStop stop();

  const Panel* panel_;
  std::int64_t budget_;
  OutOfRoom out_of_room_;
  Order order_;
  Room room_;
  bool whole_tried_ = false, whole_ran_out_ = false, whole_is_best_ = false, quickly_tried_ = false;
  std::uint64_t least_deviation_ = 0;
  SweepResult best_;
  Key bound_;                 // what pair_bound() said
  bool ran_out_ = false;      // and that it had no room for more
  std::unique_ptr<Sweep> everything_;
};

}  // namespace stringcourse::bond
