#pragma once
// Which sums of modules (piece + joint) a row's choices can make, and with how few and how many pieces.
#include <cstdint>
#include <memory>
#include <vector>

#include "bond/panel.hpp"

namespace stringcourse::bond {

/// Whole: uncut pieces, and joints of exactly j wherever a run closes with them. Everything: all that is lawful.
/// For layouts that are not proven: Rough, all pieces, but where joints share a leftover only the fewest pieces that
/// do; Bare, the same, without bounds from pairs of rows; Few, where joints share a leftover whole pieces alone, and a
/// make-up cut off the saw's step only where nothing closes without; Fewest, as Few, but one make-up in a run
/// is all that is cut.
enum class Stage { Whole, Everything, Rough, Bare, Few, Fewest };
[[nodiscard]] constexpr bool is_rough(Stage stage) { return stage != Stage::Whole && stage != Stage::Everything; }

/// The choices of one row, as the search may use them at one stage.
struct Menu {
  Stage stage = Stage::Everything;
  std::vector<PieceChoice> choices;    // longest first
  std::vector<std::int32_t> original;  // index in Row::choices
  std::int64_t make_up_from = 0;       // 0: no make-up at this stage
  std::size_t most_families = 50'000;  // that a row may have: only lists of odd cuts on long walls make more
};

/// Sums up to `longest`; every answer beyond is "no".
class Reach {
 public:
  Reach() = default;
  Reach(const Menu& menu, std::int64_t joint, std::int64_t longest);

  /// Whether some pieces (none for 0) have exactly this module sum.
  [[nodiscard]] bool can_fill(std::int64_t sum) const { return least_count(sum) >= 0; }
  /// Fewest and most pieces that make this sum; -1 where none do.
  [[nodiscard]] std::int32_t least_count(std::int64_t sum) const { return count_at(least_, sum); }
  [[nodiscard]] std::int32_t most_count(std::int64_t sum) const { return count_at(most_, sum); }
  /// Every sum is a multiple of this.
  [[nodiscard]] std::int64_t grain() const { return grain_; }
  /// Whether the table was too large to make (a wall of kilometres with a cut list of odd sixteenths).
  [[nodiscard]] bool too_large() const { return too_large_; }

 private:
  [[nodiscard]] std::int32_t count_at(const std::vector<std::int32_t>& table, std::int64_t sum) const {
    if (sum < 0 || sum % grain_ != 0) return -1;
    const std::int64_t index = sum / grain_;
    return index < static_cast<std::int64_t>(table.size()) ? table[static_cast<std::size_t>(index)] : -1;
  }

  std::int64_t grain_ = 1;
  bool too_large_ = false;
  std::vector<std::int32_t> least_, most_;
};

/// The reach of each menu; menus of the same lengths share one.
[[nodiscard]] std::vector<std::shared_ptr<const Reach>> reaches_of(const std::vector<Menu>& menus, std::int64_t joint,
                                                                   std::int64_t longest);

}  // namespace stringcourse::bond
