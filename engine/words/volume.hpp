#pragma once
// Volumes of mortar and concrete as their reader measures them.
#include <cstdint>
#include <string>

#include "words/language.hpp"

namespace stringcourse::words {

/// "46.5 litres"; with an inch tape "12.3 gal". One decimal, rounded once; a tie goes up. Not below zero.
[[nodiscard]] std::string volume_text(std::int64_t cubic_centimetres, const Reader& reader);

/// The same, with an inch tape also in cubic feet: "12.3 gal (1.6 cu ft)".
[[nodiscard]] std::string volume_by_foot_text(std::int64_t cubic_centimetres, const Reader& reader);

enum class Bagged { Mortar, Concrete };

/// Bags of 80 lb that make so much, begun ones counted. SOURCE: 0.7 cu ft of premixed mortar (second-hand, weak), 0.60
/// cu ft of premixed concrete (second-hand).
[[nodiscard]] std::int64_t bags_of(std::int64_t cubic_centimetres, Bagged what);

/// "12.3 gal (3 bags of 80 lb)"; with a metric tape "46.5 litres".
[[nodiscard]] std::string bagged_text(std::int64_t cubic_centimetres, Bagged what, const Reader& reader);

}  // namespace stringcourse::words
