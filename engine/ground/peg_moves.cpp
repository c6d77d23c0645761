#include "ground/peg_moves.hpp"

#include <cmath>

namespace stringcourse::ground {
namespace {

Spot middle_of(const std::vector<Spot>& spots) {
  Spot middle;
  for (const Spot& spot : spots) middle.x += spot.x, middle.y += spot.y;
  const double count = static_cast<double>(spots.size());
  return {middle.x / count, middle.y / count};
}

/// The turn whose direction is (cosine, sine) up to length.
Overlay turned(double cosine, double sine) {
  const double size = std::sqrt(cosine * cosine + sine * sine);
  return size > 0 ? Overlay{cosine / size, sine / size, {}} : Overlay{};
}

/// With the shift that brings `from` to `to`.
Overlay through(Overlay overlay, const Spot& from, const Spot& to) {
  const Spot turned_only = laid(overlay, from);
  overlay.shift = {to.x - turned_only.x, to.y - turned_only.y};
  return overlay;
}

}  // namespace

Overlay best_overlay(const std::vector<Spot>& design, const std::vector<Spot>& found) {
  const Spot from = middle_of(design), to = middle_of(found);
  double cosine = 0, sine = 0;
  for (std::size_t k = 0; k < design.size(); ++k) {
    const Spot a{design[k].x - from.x, design[k].y - from.y}, b{found[k].x - to.x, found[k].y - to.y};
    cosine += a.x * b.x + a.y * b.y;
    sine += a.x * b.y - a.y * b.x;
  }
  return through(turned(cosine, sine), from, to);
}

Overlay overlay_from(const std::vector<Spot>& design, const std::vector<Spot>& found, int held, int toward) {
  const std::size_t h = static_cast<std::size_t>(held), t = static_cast<std::size_t>(toward);
  const Spot a{design[t].x - design[h].x, design[t].y - design[h].y}, b{found[t].x - found[h].x, found[t].y - found[h].y};
  return through(turned(a.x * b.x + a.y * b.y, a.x * b.y - a.y * b.x), design[h], found[h]);
}

std::vector<Spot> moves(const Overlay& overlay, const std::vector<Spot>& design, const std::vector<Spot>& found) {
  std::vector<Spot> all;
  for (std::size_t k = 0; k < design.size(); ++k) {
    const Spot wanted = laid(overlay, design[k]);
    all.push_back({wanted.x - found[k].x, wanted.y - found[k].y});
  }
  return all;
}

}  // namespace stringcourse::ground
