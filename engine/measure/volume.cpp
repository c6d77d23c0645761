#include "measure/volume.hpp"

namespace stringcourse {
namespace {

// All exact: one US gallon is 231 cubic inches, one cubic inch 16.387064 cubic centimetres. In millionths of one.
constexpr std::int64_t kGallon = 231 * std::int64_t{16'387'064};
constexpr std::int64_t kCubicFoot = 1728 * std::int64_t{16'387'064};
constexpr std::int64_t kLitre = 1'000 * std::int64_t{1'000'000};
constexpr std::int64_t kMillionths = 1'000'000;

std::int64_t tenths_of(std::int64_t cubic_centimetres, std::int64_t unit) {
  return (cubic_centimetres * kMillionths * 10 + unit / 2) / unit;
}

}  // namespace

std::string volume_text(std::int64_t cubic_centimetres, Tape tape) {
  const bool inches = tape == Tape::Inches;
  const std::int64_t tenths = tenths_of(cubic_centimetres, inches ? kGallon : kLitre);
  return std::to_string(tenths / 10) + "." + std::to_string(tenths % 10) + (inches ? " gal" : " litres");
}

std::int64_t bags_of(std::int64_t cubic_centimetres, Bagged what) {
  const std::int64_t tenths_of_a_foot = what == Bagged::Mortar ? 7 : 6;
  const std::int64_t bag = kCubicFoot / 10 * tenths_of_a_foot;
  return (cubic_centimetres * kMillionths + bag - 1) / bag;
}

std::string bagged_text(std::int64_t cubic_centimetres, Bagged what, Tape tape) {
  const std::string volume = volume_text(cubic_centimetres, tape);
  if (tape != Tape::Inches) return volume;
  const std::int64_t bags = bags_of(cubic_centimetres, what);
  return volume + " (" + std::to_string(bags) + (bags == 1 ? " bag" : " bags") + " of 80 lb)";
}

}  // namespace stringcourse
