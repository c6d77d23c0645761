#pragma once
// What the order list is put together from. Internal to answer/.
#include <span>

#include "answer/answer.hpp"

namespace stringcourse::ordering {

/// What the job says of its order, or nothing.
[[nodiscard]] inline const Ordering& stated_in(const Answer& answer) {
  static const Ordering kNothing;
  return answer.job.order ? *answer.job.order : kNothing;
}

/// `value` with so many hundredths more, rounded up.
[[nodiscard]] constexpr std::int64_t with_more(std::int64_t value, std::int64_t hundredths) {
  return value + (value * hundredths + 99) / 100;
}

/// A figure of the order with its default; listed among what is assumed.
int hundredths(Order& order, std::string_view place, std::string_view says, const std::optional<int>& stated,
               int otherwise);

/// A length as part of an article's id: no blanks and no marks of feet and inches.
[[nodiscard]] std::string in_id(Length length, Tape tape);

/// The id of a kind's article.
[[nodiscard]] inline std::string unit_id(const std::string& series, UnitKind kind) {
  return "unit/" + series + "/" + std::string(kind_name(kind));
}

void add_units(Order& order, const Answer& answer);
/// By the figure that the job picks, or by this one.
void add_mortar(Order& order, const Answer& answer, std::optional<MortarBy> by = std::nullopt);
void add_grout(Order& order, const Answer& answer);
void add_steel(Order& order, const Answer& answer);
void add_top_and_openings(Order& order, const Answer& answer);
void add_tools(Order& order, const Answer& answer);
void add_prices(Order& order, const Answer& answer);
/// What was brought, and what things weigh.
void add_brought(Order& order, const Answer& answer);

/// A fraction of whole numbers, both above or at zero; `over` above zero.
struct Fraction {
  int128 of = 0, over = 1;
  [[nodiscard]] std::int64_t up() const { return static_cast<std::int64_t>((of + over - 1) / over); }
};
/// Volumes in thousandths of a cubic millimetre, in which both are whole.
inline constexpr int128 kCubicFoot = 28'316'846'592, kLitre = 1'000'000'000;
/// Rounded up.
[[nodiscard]] constexpr int128 thousandths(const Volume& volume) {
  constexpr int128 kThousandth = 1'000'000'000'000'000;
  return (volume.cubic_nanometres + kThousandth - 1) / kThousandth;
}

/// Mortar for `blocks` by one figure: least and most; `joints`: what the joints hold. As the order reckons it.
struct MortarFor {
  std::string_view rule;
  MortarBy by;
  Fraction least, most;  // bags of the binder: premix, masonry cement, portland cement
};
[[nodiscard]] std::vector<MortarFor> mortar_figures(const Answer& answer, const supply::MortarJoints& joints);

}  // namespace stringcourse::ordering
