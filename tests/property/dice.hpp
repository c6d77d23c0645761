#pragma once
// A seeded generator of our own (splitmix64, a public-domain mixing function): the same throws on every machine.
#include <cstdint>
#include <span>
#include <vector>

namespace stringcourse::property {

class Dice {
 public:
  explicit Dice(std::uint64_t seed) : state_(seed) {}

  std::uint64_t next() {
    state_ += 0x9e3779b97f4a7c15u;
    std::uint64_t mixed = state_;
    mixed = (mixed ^ (mixed >> 30)) * 0xbf58476d1ce4e5b9u;
    mixed = (mixed ^ (mixed >> 27)) * 0x94d049bb133111ebu;
    return mixed ^ (mixed >> 31);
  }
  /// 0 .. count - 1.
  std::int64_t below(std::int64_t count) {
    return static_cast<std::int64_t>(next() % static_cast<std::uint64_t>(count));
  }
  /// least .. most, both included.
  std::int64_t between(std::int64_t least, std::int64_t most) { return least + below(most - least + 1); }
  /// True once in `times` throws, on average.
  bool one_in(std::int64_t times) { return below(times) == 0; }

  template <typename T>
  const T& pick(const std::vector<T>& list) {
    return list[static_cast<std::size_t>(below(static_cast<std::int64_t>(list.size())))];
  }

 private:
  std::uint64_t state_;
};

}  // namespace stringcourse::property
