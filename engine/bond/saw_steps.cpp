#include "bond/saw_steps.hpp"

#include <numeric>

#include "measure/length.hpp"

namespace stringcourse::bond {
namespace {

/// x with value * x = 1 modulo `modulus`, in 0 .. modulus - 1; the two have no common factor (extended Euclid).
std::int64_t inverse(std::int64_t value, std::int64_t modulus) {
  std::int64_t old_r = value % modulus, r = modulus, old_x = 1, x = 0;
  while (r != 0) {
    const std::int64_t quotient = old_r / r;
    const std::int64_t next_r = old_r - quotient * r, next_x = old_x - quotient * x;
    old_r = r, r = next_r;
    old_x = x, x = next_x;
  }
  return ((old_x % modulus) + modulus) % modulus;
}

}  // namespace

SawSteps::SawSteps(std::int64_t grain, std::int64_t step)
    : grain_(grain),
      common_(std::gcd(grain, step)),
      period_(step / common_),
      inverse_(inverse(grain / common_, period_)) {}

Meetings SawSteps::meetings(std::int64_t least, std::int64_t rest) const {
  const std::int64_t off = rest - least;
  if (off % common_ != 0) return {};
  const std::int64_t wanted = ((off / common_) % period_ + period_) % period_;
  const auto grains = static_cast<std::int64_t>(static_cast<int128>(wanted) * inverse_ % period_);
  return {least + grains * grain_, period_ * grain_};
}

}  // namespace stringcourse::bond
