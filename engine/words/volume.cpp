#include "words/volume.hpp"

#include "measure/digits.hpp"

namespace stringcourse::words {
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

std::string volume_text(std::int64_t cubic_centimetres, const Reader& reader) {
  const bool inches = reader.tape == Tape::Inches;
  const std::int64_t tenths = tenths_of(cubic_centimetres, inches ? kGallon : kLitre);
  const std::string number = number_text(tenths / 10) + "." + number_text(tenths % 10);
  return told(fact(inches ? "volume-gallons" : "volume-litres", {number}), reader);
}

std::string volume_by_foot_text(std::int64_t cubic_centimetres, const Reader& reader) {
  const std::string volume = volume_text(cubic_centimetres, reader);
  if (reader.tape != Tape::Inches) return volume;
  const std::int64_t tenths = tenths_of(cubic_centimetres, kCubicFoot);
  return told(fact("volume-feet", {volume, number_text(tenths / 10) + "." + number_text(tenths % 10)}), reader);
}

std::int64_t bags_of(std::int64_t cubic_centimetres, Bagged what) {
  const std::int64_t tenths_of_a_foot = what == Bagged::Mortar ? 7 : 6;
  const std::int64_t bag = kCubicFoot / 10 * tenths_of_a_foot;
  return (cubic_centimetres * kMillionths + bag - 1) / bag;
}

std::string bagged_text(std::int64_t cubic_centimetres, Bagged what, const Reader& reader) {
  const std::string volume = volume_text(cubic_centimetres, reader);
  if (reader.tape != Tape::Inches) return volume;
  return told(fact("volume-bags", {volume, bags_of(cubic_centimetres, what)}), reader);
}

}  // namespace stringcourse::words
