#include "ink/paint.hpp"

#include <charconv>

#include "paper/font.hpp"

namespace stringcourse::ink {

using paper::Dash;
using paper::Fill;
using paper::Ink;

Colour ink_colour(Ink ink) {
  switch (ink) {
    case Ink::Black: return {0, 0, 0};
    case Ink::Grey: return {400, 400, 400};  // 5.7:1 on white
    case Ink::Blue: return {90, 340, 680};   // 7:1
    case Ink::Red: return {740, 130, 90};    // 6.2:1
    case Ink::White: return {1000, 1000, 1000};
  }
  return {};
}

Ground fill_ground(Fill fill) {
  switch (fill) {
    case Fill::White: return {Ground::Laid::Yes, {1000, 1000, 1000}};
    case Fill::Tint: return {Ground::Laid::Yes, {920, 920, 920}};
    case Fill::Grey: return {Ground::Laid::Yes, {700, 700, 700}};
    case Fill::Black: return {Ground::Laid::Yes, {0, 0, 0}};
    case Fill::None:
    case Fill::Hatch45:
    case Fill::Hatch135:
    case Fill::CrossHatch: break;
  }
  return {};
}

HatchLines fill_hatch(Fill fill) {
  using enum HatchLines::Drawn;
  if (fill == Fill::Hatch45) return {Yes, No};
  if (fill == Fill::Hatch135) return {No, Yes};
  if (fill == Fill::CrossHatch) return {Yes, Yes};
  return {};
}

DashLengths dash_lengths(Dash dash, Micrometres width) {
  if (dash == Dash::Dashed) return {{12 * width, 3 * width}, 2};
  if (dash == Dash::DashDot) return {{24 * width, 3 * width, width, 3 * width}, 4};
  return {};
}

void append_whole(std::string& out, std::int64_t number) {
  char digits[24];
  const auto end = std::to_chars(digits, digits + sizeof digits, number).ptr;
  out.append(digits, end);
}

void append_thousandths(std::string& out, std::int64_t thousandths) {
  if (thousandths < 0) out += '-';
  const std::uint64_t size =
      thousandths < 0 ? 0 - static_cast<std::uint64_t>(thousandths) : static_cast<std::uint64_t>(thousandths);
  append_whole(out, static_cast<std::int64_t>(size / 1000));
  int rest = static_cast<int>(size % 1000);
  if (rest == 0) return;
  out += '.';
  for (int place = 100; rest != 0; place /= 10) {
    out += static_cast<char>('0' + rest / place);
    rest %= place;
  }
}

void append_hexadecimal(std::string& out, std::uint64_t number, int digits) {
  for (int shift = 4 * (digits - 1); shift >= 0; shift -= 4) out += "0123456789ABCDEF"[(number >> shift) & 15];
}

Micrometres em_size(Micrometres height, paper::Weight weight) {
  const paper::Font& face = paper::font(weight);
  const std::int64_t scaled = std::int64_t{height} * face.units_per_em();
  return static_cast<Micrometres>(nearest_quotient(scaled, face.capital_height()));
}

}  // namespace stringcourse::ink
