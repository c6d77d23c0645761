#pragma once
// What a search may still do. It is counted in LOOKS, never in seconds, so that it ends at the same place on every
// machine: a piece that is tried where a row stands so far is one look, and what is kept of it at most four. All that
// searches keep is counted, so that room bounds the memory too: kBytesOfLook for each look.
#include <cstdint>

namespace stringcourse::bond {

/// The most that is kept for one look, in bytes: a node, an arc, a place of two rows or a state of the sweep (their
/// sizes and their share of a table that doubles, over the looks that they are charged).
inline constexpr std::int64_t kBytesOfLook = 128;
/// What an arc of a row's graph and the node it leads to are charged where they are made.
inline constexpr std::int64_t kLooksOfArc = 4;

/// The looks that each expansion of a budget comes to. What a look takes is about a tenth of a microsecond.
inline constexpr std::int64_t kLooksOfBudget = 30;
/// What to do when the room for a proof runs out: lay roughly, or say that no layout was found.
enum class OutOfRoom { LayRoughly, Stop };

class Room {
 public:
  explicit constexpr Room(std::int64_t looks) : left_(looks) {}
  /// Charges that many looks; whether there was room for them.
  constexpr bool take(std::int64_t looks) {
    left_ -= looks;
    return left_ >= 0;
  }
  [[nodiscard]] constexpr bool is_out() const { return left_ < 0; }
  /// Negative by what was taken beyond it.
  [[nodiscard]] constexpr std::int64_t left() const { return left_; }

 private:
  std::int64_t left_;
};

}  // namespace stringcourse::bond
