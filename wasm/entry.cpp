#include "wasm/entry.hpp"

#include <cstdlib>
#include <cstring>

extern "C" {

std::uint8_t* stringcourse_allocate(std::uint32_t size) {
  return static_cast<std::uint8_t*>(std::malloc(size > 0 ? size : 1));
}

std::uint8_t* stringcourse_solve(const std::uint8_t* request, std::uint32_t size) {
  const std::string block = stringcourse::border::answered({reinterpret_cast<const char*>(request), size});
  auto* const reply = stringcourse_allocate(static_cast<std::uint32_t>(block.size()));
  if (reply != nullptr) std::memcpy(reply, block.data(), block.size());
  return reply;
}

void stringcourse_free(std::uint8_t* block) { std::free(block); }
}
