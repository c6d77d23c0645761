#pragma once
// A small open-addressing map from a 128-bit key to an index. Its order of storage never shows in an answer.
#include <cstdint>
#include <vector>

namespace stringcourse::bond {

/// 64 bits of two words, well mixed.
[[nodiscard]] constexpr std::uint64_t mixed_words(std::uint64_t high, std::uint64_t low) {
  std::uint64_t h = (high * 0x9e3779b97f4a7c15ULL) ^ (low + 0x7f4a7c15ULL + (high << 6) + (high >> 2));
  h ^= h >> 32;
  h *= 0xd6e8feb86659fd93ULL;
  h ^= h >> 29;
  return h;
}

/// Keys to indices without the keys: who asks compares them with what it keeps by index. A third of the memory.
class IndexTable {
 public:
  static constexpr std::int32_t kAbsent = -1;

  /// The index of the key with this hash for which `is_it(index)` holds.
  template <typename IsIt>
  [[nodiscard]] std::int32_t find(std::uint64_t hash, IsIt&& is_it) const {
    if (slots_.empty()) return kAbsent;
    const std::size_t mask = slots_.size() - 1;
    const auto tag = static_cast<std::uint32_t>(hash);
    for (std::size_t slot = tag & mask; slots_[slot].value != kAbsent; slot = (slot + 1) & mask) {
      if (slots_[slot].tag == tag && is_it(slots_[slot].value)) return slots_[slot].value;
    }
    return kAbsent;
  }

  /// Puts the index of a key that is not in the table.
  void insert(std::uint64_t hash, std::int32_t value) {
    if ((count_ + 1) * 2 > slots_.size()) grow();
    put({static_cast<std::uint32_t>(hash), value});
    ++count_;
  }

  void clear() {
    slots_.assign(slots_.size(), {});
    count_ = 0;
  }

 private:
  struct Slot {
    std::uint32_t tag = 0;
    std::int32_t value = kAbsent;
  };

  void put(Slot filled) {
    const std::size_t mask = slots_.size() - 1;
    std::size_t slot = filled.tag & mask;
    while (slots_[slot].value != kAbsent) slot = (slot + 1) & mask;
    slots_[slot] = filled;
  }

  void grow() {
    std::vector<Slot> old(slots_.empty() ? 64 : slots_.size() * 4);
    old.swap(slots_);
    for (const Slot& slot : old) {
      if (slot.value != kAbsent) put(slot);
    }
  }

  std::vector<Slot> slots_;
  std::size_t count_ = 0;
};

class IndexMap {
 public:
  static constexpr std::int32_t kAbsent = -1;

  [[nodiscard]] std::int32_t find(std::uint64_t high, std::uint64_t low) const {
    if (slots_.empty()) return kAbsent;
    const Slot& slot = slots_[slot_of(high, low)];
    return slot.round == round_ ? slot.value : kAbsent;
  }

  /// Puts `value` (>= 0) at a key that is not in the map.
  void insert(std::uint64_t high, std::uint64_t low, std::int32_t value) {
    if (slots_.empty() || (count_ + 1) * 2 > slots_.size()) grow();
    slots_[slot_of(high, low)] = Slot{high, low, value, round_};
    ++count_;
  }

  /// Forgets all keys and keeps the room.
  void clear() {
    ++round_;
    count_ = 0;
  }

  [[nodiscard]] std::size_t size() const { return count_; }

 private:
  struct Slot {
    std::uint64_t high = 0, low = 0;
    std::int32_t value = kAbsent;
    std::uint32_t round = 0;
  };

  [[nodiscard]] std::size_t slot_of(std::uint64_t high, std::uint64_t low) const {
    const std::size_t mask = slots_.size() - 1;
    std::size_t slot = static_cast<std::size_t>(mixed_words(high, low)) & mask;
    while (slots_[slot].round == round_ && (slots_[slot].high != high || slots_[slot].low != low)) {
      slot = (slot + 1) & mask;
    }
    return slot;
  }

  void grow() {
    std::vector<Slot> old(slots_.empty() ? 64 : slots_.size() * 4);
    old.swap(slots_);
    for (const Slot& slot : old) {
      if (slot.round == round_) slots_[slot_of(slot.high, slot.low)] = slot;
    }
  }

  std::vector<Slot> slots_;
  std::size_t count_ = 0;
  std::uint32_t round_ = 1;  // slots of earlier rounds are free
};

}  // namespace stringcourse::bond
