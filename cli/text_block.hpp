#pragma once
// Plain text for a terminal: lines of at most 100 columns, and tables whose columns line up.
#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace stringcourse::cli {

inline constexpr std::size_t kColumns = 100;

/// The text in lines of at most kColumns characters, each ended. The first line follows `lead`, the others stand as far
/// in as `lead` is long. A number keeps its fraction and its unit ("7 5/8", "25 ft"); a word longer than a line stays
/// whole.
[[nodiscard]] std::string wrapped(std::string_view lead, std::string_view text);

/// Rows of cells. Each column is as wide as its widest cell.
class Table {
 public:
  enum class Align { Left, Right };
  explicit Table(std::vector<Align> columns) : columns_(std::move(columns)) {}
  /// As many cells as there are columns.
  void add(std::vector<std::string> cells) { rows_.push_back(std::move(cells)); }
  /// Every row on a line of its own, two characters in, two between columns, no blanks at its end.
  [[nodiscard]] std::string text() const;

 private:
  [[nodiscard]] std::vector<std::size_t> widths() const;
  std::vector<Align> columns_;
  std::vector<std::vector<std::string>> rows_;
};

}  // namespace stringcourse::cli
