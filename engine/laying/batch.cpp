#include "laying/batch.hpp"

#include <algorithm>
#include <cmath>

#include "catalogue/rules.hpp"
#include "measure/metres.hpp"

namespace stringcourse::laying {
namespace {

double square(double value) { return value * value; }

std::optional<double> spread_of(const std::vector<Length>& singles) {
  if (singles.size() < 2) return std::nullopt;
  double sum = 0, squares = 0;
  for (const Length one : singles) sum += metres(one);
  const double mean = sum / static_cast<double>(singles.size());
  for (const Length one : singles) squares += square(metres(one) - mean);
  return std::sqrt(squares / static_cast<double>(singles.size() - 1));
}

/// The worst of all verdicts.
Verdict worst(Verdict a, Verdict b) {
  if (a == Verdict::DoesNotFit || b == Verdict::DoesNotFit) return Verdict::DoesNotFit;
  return a == Verdict::CannotTell ? a : b;
}

}  // namespace

std::optional<Batch> batch_of(const Sample& sample, Length specified, Length reading_error) {
  Batch batch;
  batch.units = static_cast<int>(sample.singles.size()) + sample.together;
  if (batch.units <= 0) return std::nullopt;
  Length all = sample.together > 0 ? sample.row : Length();
  for (const Length one : sample.singles) all = all + one;
  batch.mean = length_of(metres(all) / batch.units);
  batch.spread = spread_of(sample.singles);
  const double reading = ground::standard_doubt(reading_error), count = batch.units;
  // Each single is read once, the row once: their reading errors add up in the sum.
  const double readings = static_cast<double>(sample.singles.size()) + (sample.together > 0 ? 1 : 0);
  batch.doubt = together({reading * std::sqrt(readings) / count, batch.spread.value_or(0) / std::sqrt(count)});
  const double tolerance = metres(limit_of("unit-size")), size = metres(specified);
  const Limits limits{size - tolerance, size + tolerance};
  batch.within = Verdict::Fits;
  for (const Length one : sample.singles) batch.within = worst(batch.within, judged(metres(one), limits, 2 * reading));
  if (sample.together > 0)
    batch.within =
        worst(batch.within, judged(metres(sample.row) / sample.together, limits, 2 * reading / sample.together));
  return batch;
}

std::optional<ClosingJoint> closing_joint(Length run, int units, Length mean, int joints, Length step, Length least,
                                          Length most) {
  if (joints <= 0) return std::nullopt;
  const Length slack = run - mean * units;
  const std::int64_t doubled = 2 * joints;
  // Nearest multiple of the step to slack / joints; a tie goes up.
  const std::int64_t steps = (2 * slack + step * joints).whole_multiples(step * doubled);
  const ClosingJoint closing{step * steps, slack - step * (steps * joints)};
  if (closing.joint < least || closing.joint > most) return std::nullopt;
  return closing;
}

Bias unknown_bias() { return {0, square(metres(Length::sixty_fourths(2)))}; }

Bias learned(const Bias& before, int units, double error_change, const Noise& noise) {
  const double variance = units * square(noise.unit_and_joint) + 2 * square(noise.mark);
  const double gain = before.variance * units / (square(units) * before.variance + variance);
  return {before.mean + gain * (error_change - units * before.mean), (1 - gain * units) * before.variance};
}

Length corrected_ahead(const Bias& bias, int units, Length step) {
  const double sure = 1.96 * std::sqrt(bias.variance);
  if (bias.mean < sure && -bias.mean < sure) return {};
  return rounded_to(length_of(bias.mean * units), step);
}

}  // namespace stringcourse::laying
