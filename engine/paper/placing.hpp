#pragma once
// Finding free places for texts on a drawing.
#include <optional>
#include <span>
#include <vector>

#include "paper/legibility.hpp"
#include "paper/pad.hpp"

namespace stringcourse::paper {

/// What is lettered so far. A text takes the first of its places where it meets none of it.
class Placer {
 public:
  explicit Placer(const Group& drawn) { add(drawn); }
  Placer(const Group& drawn, const Area& within) : within_(within) { add(drawn); }
  /// The first free place; none where all are taken.
  [[nodiscard]] std::optional<Point> free_place(const std::string& text, const Lettering& lettering,
                                                std::span<const Point> places) const;
  /// Writes it there, so that later texts keep clear of it.
  void write(Pad& pad, const std::string& text, const Lettering& lettering, Point place);
  /// The same for a text that someone else writes.
  void take(const std::string& text, const Lettering& lettering, Point place);
  /// Paper that no text may enter.
  void keep_clear(const Area& area);

 private:
  void add(const Group& group);
  std::optional<Area> within_;
  std::vector<Box> boxes_;
};

}  // namespace stringcourse::paper
