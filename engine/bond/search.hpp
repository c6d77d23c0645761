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

/// Where a proven stop lies: the row that nothing fills by itself and by all rules, and which of its runs. Not cheap:
/// asked for only where it is told. Where `room` runs out no row is named.
[[nodiscard]] PanelStop located(const Panel& panel, PanelStop stop, Room& room);
/// Looks that naming the stops of one layout may take, all together.
inline constexpr std::int64_t kLooksOfStops = 1'000'000;

/// A proven bound on the cost of a panel, from pairs of rows alone: cheap. Empty: no lawful layout exists.
[[nodiscard]] std::optional<Cost> bound_panel(const Panel& panel);

/// What the first layout of a panel by itself may take.
inline constexpr std::int64_t kQuickLooksOfPanel = 200'000;

/// The same in steps, for who may not need the whole answer. The panel must outlive it.
class PanelSolver {
 public:
  /// `quick_looks`: what the first layout may take, rather more than the room than less.
  PanelSolver(const Panel& panel, std::int64_t budget, OutOfRoom out_of_room, Room room,
              std::int64_t quick_looks = kQuickLooksOfPanel);
  /// What the steps from now on may take.
  void give(Room room) { room_ = room; }
  [[nodiscard]] const Room& room_left() const { return room_; }
  /// Whether whole pieces alone lay it so well that nothing else can be better: then solve() is at hand. Cheap.
  [[nodiscard]] bool try_whole();
  /// What follows from try_whole() having said no: no layout is without short laps, cuts, shifts and deviation.
  [[nodiscard]] Key bound_without_whole() const;
  /// A step towards the best layout. True: it is done, and found() says what came of it. No layout costs less than
  /// bound().
  [[nodiscard]] bool advance();
  [[nodiscard]] const Key& bound() const { return bound_; }
  [[nodiscard]] std::expected<PanelAnswer, PanelStop> found();
  /// All steps.
  [[nodiscard]] std::expected<PanelAnswer, PanelStop> solve();
  /// A layout that is easily found, not proven unless whole pieces are surely best; a stop here proves nothing.
  [[nodiscard]] std::expected<PanelAnswer, PanelStop> solve_quickly();
  /// A conceding panel's layout: as few and as mild rules given up as can be; Quick: as rows laid one beside the other
  /// need.
  enum class Effort { Quick, Search };
  [[nodiscard]] std::expected<PanelAnswer, PanelStop> concede(Effort effort);
  /// Lets go of the tables between steps: the next makes them again, from where the last one ended.
  void let_go_of_tables() { everything_.reset(); }

 private:
  Sweep& everything();
  [[nodiscard]] SweepResult lay_roughly();
  void lay_quickly(std::size_t most_starts);
  void lay_rows(std::size_t most_starts, std::int64_t looks);
  /// Places that pair bounds may look at: in proportion to the budget.
  [[nodiscard]] std::int64_t places() const { return budget_ / 2; }
  [[nodiscard]] bool begin();
  [[nodiscard]] bool end_without_room(SweepResult all);
  void raise_bound(const Key& sure) { bound_ = std::max(bound_, std::min(sure, best_.cost)); }

  const Panel* panel_;
  std::int64_t budget_;
  OutOfRoom out_of_room_;
  std::int64_t quick_looks_;
  Order order_;
  Room room_;
  bool whole_tried_ = false, whole_ran_out_ = false, whole_is_best_ = false, quickly_tried_ = false;
  std::uint64_t least_deviation_ = 0;
  SweepResult best_;
  Key bound_;  // no layout costs less
  bool begun_ = false;
  std::optional<PanelStop> stop_;
  std::int64_t searched_ = 0;     // expansions
  std::uint64_t first_term_ = 0;  // the allowance of it within which is looked next
  std::unique_ptr<Sweep> everything_;
};

}  // namespace stringcourse::bond
