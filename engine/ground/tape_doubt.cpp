#include "ground/tape_doubt.hpp"

#include <cmath>

namespace stringcourse::ground {
namespace {

struct Band {
  Length up_to, error;
};
constexpr Band kSteel[] = {{Length::feet(6), Length::sixteenths(1).half_down()},
                           {Length::feet(30), Length::sixteenths(1)},
                           {Length::feet(55), Length::sixteenths(2)},
                           {Length::feet(80), Length::sixteenths(3)},
                           {Length::feet(100), Length::sixteenths(4)}};

Length begun(Length length, Length step) {
  return Length::nanometres((length + step - Length::nanometres(1)).whole_multiples(step));
}

}  // namespace

TapeMake tape_of(const Job& job) { return job.ground ? job.ground->tape.value_or(TapeMake::Steel) : TapeMake::Steel; }

Length permitted_error(TapeMake tape, Length length) {
  if (length < Length()) length = -length;
  if (tape == TapeMake::ClassTwo) {
    const std::int64_t metres = begun(length, Length::millimetres(1000)).in_nanometres();
    return Length::nanometres(300'000 + 200'000 * metres);
  }
  for (const Band& band : kSteel) {
    if (length <= band.up_to) return band.error;
  }
  return Length::sixteenths(4) * begun(length, Length::feet(100)).in_nanometres();
}

double standard_doubt(Length half_width) {
  return static_cast<double>(half_width.in_nanometres()) * 1e-9 / std::sqrt(3.0);
}

double together(std::initializer_list<double> doubts) {
  double sum = 0;
  for (const double one : doubts) sum += one * one;
  return std::sqrt(sum);
}

}  // namespace stringcourse::ground
