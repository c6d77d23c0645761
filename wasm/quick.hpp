#pragma once
// What saves time between answers without a search: panels that were laid, for the next frame of a drag, and the layout
// of the job that is being dragged, as it was before. It changes the time of an answer, never its bytes.
#include <expected>
#include <memory>
#include <optional>

#include "bond/panel_memo.hpp"
#include "solve/brief.hpp"

namespace stringcourse::border {

class Quick {
 public:
  [[nodiscard]] bond::PanelMemo& memo();
  /// What a hand moves keeps the corners of what was before, if that lays: a fourth of the work. Null where nothing was
  /// before. Lives until the next call.
  [[nodiscard]] const Layout* like(const std::optional<Job>& before);
  [[nodiscard]] std::expected<Answer, Refusals> brief_answer_of(const Job& job, const std::optional<Job>& before);

 private:
  struct Before {
    Job job;
    Layout layout;
  };
  std::unique_ptr<bond::PanelMemo> memo_;
  std::optional<Before> before_;
};

}  // namespace stringcourse::border
