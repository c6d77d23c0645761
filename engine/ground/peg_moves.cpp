#include "ground/peg_moves.hpp"

#include <cmath>

namespace stringcourse::ground {
namespace {

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

Overlay overlay_from(const std::vector<Spot>& design, const std::vector<Spot>& found, int held, int toward) {
  const std::size_t h = static_cast<std::size_t>(held), t = static_cast<std::size_t>(toward);
  const Spot a{design[t].x - design[h].x, design[t].y - design[h].y},
      b{found[t].x - found[h].x, found[t].y - found[h].y};
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
