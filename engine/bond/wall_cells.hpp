#pragma once
// The cells of a wall's courses as laid, and the marks of the tape at which a bar may stand in them.
#include <cstdint>
#include <vector>

#include "bond/exact.hpp"
#include "bond/layout.hpp"
#include "walls/building.hpp"

namespace stringcourse::bond {

/// Whole marks of the tape: a closed interval of mark numbers. Lists of them are sorted and apart.
struct Marks {
  std::int64_t from, to;
};
/// What of `marks` lies outside `taken`.
[[nodiscard]] std::vector<Marks> without(const std::vector<Marks>& marks, const Marks& taken);

class WallCells {
 public:
  /// Only for a building with bars.
  WallCells(const Building& building, const Layout& layout, std::int32_t wall);

  /// Marks between two places at which a bar stands in a whole cell of every course with its clearance, and the cells
  /// of neighbouring courses share the grout-space table's length.
  [[nodiscard]] std::vector<Marks> marks_between(Length from, Length to) const;
  /// Marks that share a cell with a bar at this place, in one course or another. Empty (from > to) where no cell holds
  /// it.
  [[nodiscard]] Marks marks_beside(Length bar) const;
  /// Length of one mark, in nanometres.
  [[nodiscard]] std::int64_t mark() const { return mark_; }

 private:
  struct Held {
    Exact from, to;
  };
  [[nodiscard]] Marks marks_in(const Held& cell) const;
  [[nodiscard]] std::vector<Marks> own_marks(const std::vector<Held>& cells) const;
  [[nodiscard]] std::vector<Marks> shared_marks(const std::vector<Held>& above, const std::vector<Held>& below) const;
  [[nodiscard]] std::vector<Held> cells_in(std::int32_t course, Length from, Length to) const;

  const Building* building_;
  const Layout* layout_;
  const Series* series_;
  std::int64_t mark_ = 1, radius_ = 0;
  std::vector<Run> runs_;
};

}  // namespace stringcourse::bond
