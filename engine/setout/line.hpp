#pragma once
// A stretched mason's line: how far it hangs, where it must be held up, and what pull does without.
namespace stringcourse::setout {

/// What is known of a line. Newtons and metres.
struct LineFacts {
  double weight = 0;    // newtons for each metre
  double pull = 0;      // newtons
  double strength = 0;  // newtons at which it breaks; 0: not known
};

/// Sag in the middle of a span, metres, ends level: a (cosh(L / 2a) - 1), a = T / w, the pull being that at the lowest
/// point. Relative error at most 1e-12. SOURCE: catenary (statics).
[[nodiscard]] double catenary_sag(double span, double weight, double pull);

/// What a span asks for.
struct LineSpan {
  double sag = 0;           // metres, unsupported
  int supports = 0;         // trigs, at equal distances, so that no part hangs lower than the limit
  double part = 0;          // metres between supports
  double pull_without = 0;  // newtons that need no support
  enum class Bears { NotKnown, Yes, No } bears = Bears::NotKnown;  // whether the line bears that pull
};
/// Half of the breaking strength less 15 % for a wet line may be used (ours; the loss: a handbook's note, second-hand).
inline constexpr double kLineShare = 0.5 * 0.85;
[[nodiscard]] LineSpan line_over(double span, const LineFacts& line, double most_sag);

}  // namespace stringcourse::setout
