#pragma once
// What differs when a person watches: bold headings, a progress bar. Off a terminal neither appears.
#include <string>
#include <string_view>

namespace stringcourse::cli {

enum class Emphasis { Plain, Bold };
/// Bold if stdout is a terminal that is not dumb and NO_COLOR is not set.
[[nodiscard]] Emphasis stdout_emphasis();
/// The text, bold or as it is.
[[nodiscard]] std::string heading(std::string_view text, Emphasis emphasis);

/// The text with characters that could hide or turn what stands round them spelled as \u202E, so that no name in a job
/// can move the cursor or turn the line round.
[[nodiscard]] std::string printable(std::string_view text);
/// The same of several lines: their ends stay.
[[nodiscard]] std::string printable_lines(std::string_view text);

/// One line on stderr that says how far the work is, only on a terminal: what is told, and from the second second on a
/// bar. Wipes itself away at the end.
class ProgressBar {
 public:
  enum class Wish { Shown, Quiet };
  explicit ProgressBar(Wish wish);
  ProgressBar(const ProgressBar&) = delete;
  ProgressBar& operator=(const ProgressBar&) = delete;
  ~ProgressBar();
  /// Whether anybody sees it.
  [[nodiscard]] bool has_watcher() const { return watched_; }
  /// Stands in the line from now on.
  void tell(std::string text);
  /// `share` of `what` is done, 0 to 1.
  void show(std::string_view what, double share);
  /// Takes the bar away; it does not come back.
  void wipe();

 private:
  bool watched_ = false;
  bool drawn_ = false;
  std::string told_;
  double started_ = 0, last_drawn_ = 0;  // seconds
};

}  // namespace stringcourse::cli
