#include "paper/placing.hpp"

#include <algorithm>

namespace stringcourse::paper {
namespace {

Box box_of(const std::string& text, const Lettering& lettering, Point place) {
  return text_box(
      {place, text, lettering.height, lettering.weight, lettering.anchor, lettering.ink, lettering.quarter_turns});
}

bool overlap(const Box& a, const Box& b) {
  return a.left < b.right && b.left < a.right && a.low < b.high && b.low < a.high;
}

}  // namespace

std::optional<Point> Placer::free_place(const std::string& text, const Lettering& lettering,
                                        std::span<const Point> places) const {
  const auto is_free = [&](const Point& place) {
    const Box box = box_of(text, lettering, place);
    if (within_ && (box.left < within_->left || box.right > within_->right || box.low < within_->bottom ||
                    box.high > within_->top))
      return false;
    return std::ranges::none_of(boxes_, [&](const Box& one) { return overlap(one, box); });
  };
  const auto found = std::ranges::find_if(places, is_free);
  return found == places.end() ? std::nullopt : std::optional(*found);
}

void Placer::write(Pad& pad, const std::string& text, const Lettering& lettering, Point place) {
  take(text, lettering, place);
  pad.write(place, text, lettering);
}

void Placer::take(const std::string& text, const Lettering& lettering, Point place) {
  boxes_.push_back(box_of(text, lettering, place));
}

void Placer::keep_clear(const Area& area) { boxes_.push_back({area.left, area.bottom, area.right, area.top}); }

void Placer::add(const Group& group) {
  for (const Text& text : group.texts) boxes_.push_back(text_box(text));
  for (const Group& inner : group.groups) add(inner);
}

}  // namespace stringcourse::paper
