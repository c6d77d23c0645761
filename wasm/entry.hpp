#pragma once
// The three functions of the border, as the WebAssembly module exports them. Not for two threads at once.
#include <cstdint>
#include <string>
#include <string_view>

extern "C" {
/// `size` bytes for a request, to be given back by stringcourse_free. Null if there is no room.
std::uint8_t* stringcourse_allocate(std::uint32_t size);
/// Answers a request of `size` bytes (wasm/border.hpp). The reply block belongs to the caller: stringcourse_free ends
/// it.
std::uint8_t* stringcourse_solve(const std::uint8_t* request, std::uint32_t size);
/// Null is allowed.
void stringcourse_free(std::uint8_t* block);
}

namespace stringcourse::border {

/// What this module answers: defined in whole_module.cpp or brief_module.cpp.
[[nodiscard]] std::string answered(std::string_view request);

}  // namespace stringcourse::border
