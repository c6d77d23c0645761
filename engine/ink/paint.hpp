#pragma once
// What pens, dashes, inks and fills come to on paper: the one table that PDF and SVG share.
#include <array>
#include <cstdint>
#include <span>
#include <string>
#include <string_view>

#include "paper/display.hpp"

namespace stringcourse::ink {

using paper::Micrometres;

/// A colour in thousandths of full light, red, green, blue. Equal parts print as pure black ink.
struct Colour {
  int red = 0, green = 0, blue = 0;
  friend bool operator==(const Colour&, const Colour&) = default;
};

/// The line, text or solid colour of an ink. Contrast on white is 4.5:1 or more for all but White (WCAG 2.2, 1.4.3).
[[nodiscard]] Colour ink_colour(paper::Ink ink);

/// The ground that a fill lays down: its colour, or nothing (`laid` false) for None and hatches.
struct Ground {
  enum class Laid { No, Yes } laid = Laid::No;
  Colour colour;
};
[[nodiscard]] Ground fill_ground(paper::Fill fill);

/// Which of the two hatch directions a fill draws.
struct HatchLines {
  enum class Drawn { No, Yes } rising = Drawn::No, falling = Drawn::No;
  bool any() const { return rising == Drawn::Yes || falling == Drawn::Yes; }
};
[[nodiscard]] HatchLines fill_hatch(paper::Fill fill);

/// Distance of neighbouring hatch lines along a horizontal; across the lines it is 1/sqrt(2) of this, 1.2 mm.
inline constexpr Micrometres kHatchStep = 1'700;

/// Dash lengths in micrometres for a line `width` wide, on, off, on, off; empty for solid lines. In line
/// widths d: dashes 12, gaps 3, long dashes 24, dots 1 (common practice after ISO 128; figures from memory).
struct DashLengths {
  std::array<Micrometres, 4> lengths{};
  std::size_t count = 0;
  [[nodiscard]] std::span<const Micrometres> used() const { return std::span(lengths).first(count); }
};
[[nodiscard]] DashLengths dash_lengths(paper::Dash dash, Micrometres width);

/// Appends a whole number.
void append_whole(std::string& out, std::int64_t number);
/// Appends thousandths as a decimal number without needless zeros: 9449 gives 9.449, 500 gives 0.5.
void append_thousandths(std::string& out, std::int64_t thousandths);
/// Appends `number` in upper-case hexadecimal, `digits` long.
void append_hexadecimal(std::string& out, std::uint64_t number, int digits);

/// Nearest whole quotient, a tie going up; divisor > 0.
[[nodiscard]] constexpr std::int64_t nearest_quotient(std::int64_t number, std::int64_t divisor) {
  const std::int64_t shifted = 2 * number + divisor;
  const std::int64_t quotient = shifted / (2 * divisor);
  return quotient - (shifted < 0 && shifted % (2 * divisor) != 0 ? 1 : 0);
}

/// Font size (em) in micrometres at which capitals are `height` tall.
[[nodiscard]] Micrometres em_size(Micrometres height, paper::Weight weight);

}  // namespace stringcourse::ink
