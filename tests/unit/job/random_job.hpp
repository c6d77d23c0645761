#pragma once
// Seeded random jobs that the reader must accept: every field, hostile texts, lengths of both tapes down to a
// nanometre. They make no sense as buildings; nothing but the document is tried with them.
#include <cstdint>
#include <string>

#include "job/job.hpp"

namespace stringcourse::test {

/// A small generator of our own (splitmix64), so that a seed gives the same job on every machine.
class Dice {
 public:
  explicit Dice(std::uint64_t seed) : state_(seed) {}
  std::uint64_t next() {
    std::uint64_t z = (state_ += 0x9E3779B97F4A7C15);
    z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
    z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
    return z ^ (z >> 31);
  }
  /// 0 .. count - 1.
  std::uint64_t below(std::uint64_t count) { return next() % count; }
  bool heads() { return below(2) == 0; }

 private:
  std::uint64_t state_;
};

Job random_job(std::uint64_t seed);

/// The job with every field of every struct set to something other than its default.
Job full_job();

}  // namespace stringcourse::test
