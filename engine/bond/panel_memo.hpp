#pragma once
// Panels already solved. Equal panels, anywhere in a building or in the next state of a job that is being dragged, are
// solved once.
#include <cstdint>
#include <expected>
#include <map>
#include <string>

#include "bond/panel.hpp"

namespace stringcourse::bond {

class PanelMemo {
 public:
  using Result = std::expected<PanelAnswer, PanelStop>;
  /// `budget` bounds the search of each panel (see solve_panel).
  explicit PanelMemo(std::int64_t budget) : budget_(budget) {}
  /// The answer of this panel, solved now or before. The reference lives as long as the memo.
  const Result& solve(const Panel& panel);
  [[nodiscard]] std::size_t size() const { return known_.size(); }

 private:
  std::int64_t budget_;
  std::map<std::string, Result> known_;
};

}  // namespace stringcourse::bond
