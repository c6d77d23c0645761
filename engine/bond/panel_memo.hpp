#pragma once
// Panels and what is known of their cost so far. Equal panels, anywhere in a building or in the next state of a job
// that is being dragged, are one case and are solved once. A case is made exact in steps, each dearer than the one
// before, and only as far as the choice of the whole building needs it.
#include <cstdint>
#include <expected>
#include <map>
#include <memory>
#include <optional>
#include <string>

#include "bond/key.hpp"
#include "bond/panel.hpp"
#include "bond/room.hpp"

namespace stringcourse::bond {

class PanelSolver;

/// What is known of one panel.
struct PanelCase {
  enum class Known {
    Nothing,   // bound is 0
    NotWhole,  // no layout of whole pieces is surely best: bound says the little that follows
    Bounded,   // the search has begun; bound says how far it came
    Final,     // answer or stop stands; nothing more can be found within the budget
  } known = Known::Nothing;
  Panel panel;
  Key bound;  // no lawful layout costs less; impossible() when none exists
  std::optional<PanelAnswer> answer;
  std::optional<PanelStop> stop;           // Final without an answer
  std::unique_ptr<PanelSolver> solver;     // between Bounded and Final
  std::int64_t looks = 0, most_looks = 0;  // that it took, and that one step of it took
  std::int64_t held = 0;                   // looks whose tables the solver may hold
  bool was_short = false;                  // a step of it ran out of room
  std::uint32_t job = 0;                   // the last that asked for it

  PanelCase();
  ~PanelCase();

  /// What to choose by: the cost once it is final, else the bound. A stop is no choice, proven or not.
  [[nodiscard]] Key value(Order order) const {
    if (answer) return key_of(answer->cost, order);
    return stop ? Key::impossible() : bound;
  }
};

/// Less than this is no search at all: panels are laid as they are easily found, for what is being dragged.
inline constexpr std::int64_t kLeastSearch = 1'000;

class PanelMemo {
 public:
  /// `budget` bounds the search of each panel (see solve_panel, kLeastSearch).
  explicit PanelMemo(std::int64_t budget) {
    set_budget(budget, OutOfRoom::LayRoughly);
    begin_job(budget);
  }
  /// A job's panels share the looks of this budget (kLooksOfBudget), over all that is asked until the next begin_job: a
  /// panel may take a share of what is left at each step, so that it is never quite used up.
  void begin_job(std::int64_t budget);
  /// A panel's first layout takes so many looks that those of `cases` panels together take no more than kQuickLooks:
  /// whatever the budget, so that more of it never makes that layout worse. Before the first case_of: what was laid
  /// with other looks is another case. (Halved in steps, so that jobs nearly as large know one another's panels.)
  void share_quick_looks(std::size_t cases);
  /// The same job goes on with so many looks.
  void refill(std::int64_t looks) { room_ = Room(looks); }
  /// A changed job is looked at with so many looks. Not was_short() then: begin_job would find the very same.
  void begin_change(std::int64_t looks);
  [[nodiscard]] const Room& room() const { return room_; }
  /// Whether some panel of this job might have been laid better, or proven, with more room; and whether what was known
  /// before this job counts: then only an empty memory tells what this job comes to by itself.
  [[nodiscard]] bool was_short() const { return was_short_; }
  /// Looks of this job beyond the room: of panels that looked once more before or where they give up rules.
  [[nodiscard]] std::int64_t looks_again() const { return looks_again_; }
  [[nodiscard]] bool was_used_before() const { return used_before_; }
  /// The case of this panel. The reference lives as long as the memo.
  PanelCase& case_of(Panel panel);
  /// One step: Nothing -> Final where whole pieces are surely best, else NotWhole, then Bounded as often as it takes.
  void refine(PanelCase& which);
  /// From now on: cases already final stay as they are.
  void set_budget(std::int64_t budget, OutOfRoom out_of_room) {
    budget_ = budget;
    out_of_room_ = is_quick() ? OutOfRoom::Stop : out_of_room;
  }
  [[nodiscard]] bool is_quick() const { return budget_ < kLeastSearch; }
  [[nodiscard]] OutOfRoom when_out_of_room() const { return out_of_room_; }
  [[nodiscard]] std::size_t size() const { return known_.size(); }

 private:
  [[nodiscard]] std::expected<PanelAnswer, PanelStop> concede(const Panel& panel, PanelSolver& solver);
  [[nodiscard]] static std::expected<PanelAnswer, PanelStop> told(const PanelCase& kept,
                                                                  std::expected<PanelAnswer, PanelStop> conceded);
  [[nodiscard]] bool may_look_again() const;
  [[nodiscard]] bool look_again(PanelCase& kept, Room own);
  void note_asked(PanelCase& which);
  void take_step(PanelCase& which, PanelSolver& solver);
  [[nodiscard]] static bool search(PanelCase& which, PanelSolver& solver);
  [[nodiscard]] std::int64_t step_room() const;

  std::int64_t budget_ = 0;
  OutOfRoom out_of_room_ = OutOfRoom::LayRoughly;
  Room room_{0};
  std::int64_t held_ = 0;
  std::uint32_t job_ = 0;
  std::int64_t quick_looks_ = 0;
  int looked_again_ = 0;
  std::int64_t looks_again_ = 0;
  bool was_short_ = false, used_before_ = false;
  std::map<std::string, std::unique_ptr<PanelCase>> known_;
};

}  // namespace stringcourse::bond
