#include "room/bytes_held.hpp"

#include <algorithm>
#include <cstddef>
#include <cstdlib>
#include <new>

namespace {

// One thread runs these tests. In front of each block stands its size.
constexpr std::size_t kFront = alignof(std::max_align_t) > sizeof(std::size_t) ? alignof(std::max_align_t)
                                                                               : sizeof(std::size_t);
std::int64_t held = 0, most = 0;

void* take(std::size_t size) {
  void* block = std::malloc(size + kFront);
  if (block == nullptr) std::abort();
  *static_cast<std::size_t*>(block) = size;
  held += static_cast<std::int64_t>(size);
  most = std::max(most, held);
  return static_cast<char*>(block) + kFront;
}

void give_back(void* taken) {
  if (taken == nullptr) return;
  void* block = static_cast<char*>(taken) - kFront;
  held -= static_cast<std::int64_t>(*static_cast<std::size_t*>(block));
  std::free(block);
}

}  // namespace

void* operator new(std::size_t size) { return take(size); }
void* operator new[](std::size_t size) { return take(size); }
void operator delete(void* taken) noexcept { give_back(taken); }
void operator delete[](void* taken) noexcept { give_back(taken); }
void operator delete(void* taken, std::size_t) noexcept { give_back(taken); }
void operator delete[](void* taken, std::size_t) noexcept { give_back(taken); }

namespace stringcourse::room_test {

std::int64_t bytes_held() { return held; }
std::int64_t most_held() { return most; }
void count_from_now() { most = held; }

}  // namespace stringcourse::room_test
