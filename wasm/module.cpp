// What only the WebAssembly module needs: words of a fault go out before it stops, and stack protection has its
// symbols.
#include <__verbose_abort>
#include <cstdint>
#include <cstring>

#include "measure/fault.hpp"

extern "C" {

// WASI preview 1, the one call that this module makes itself: bytes to a stream (2: what went wrong).
struct WasiBytes {
  const char* start;
  std::uint32_t size;
};
std::uint16_t stringcourse_write_words(std::int32_t stream, const WasiBytes* lists, std::uint32_t count,
                                       std::uint32_t* written)
    __attribute__((__import_module__("wasi_snapshot_preview1"), __import_name__("fd_write")));

// compiler-rt's 128-bit division asks for these.
extern std::uintptr_t __stack_chk_guard;
std::uintptr_t __stack_chk_guard = 0x595e9fbd;
void __stack_chk_fail(void);
void __stack_chk_fail(void) { __builtin_trap(); }
}

namespace {

void say_fault(const char* what) {
  const WasiBytes words{what, static_cast<std::uint32_t>(std::strlen(what))};
  std::uint32_t written = 0;
  (void)stringcourse_write_words(2, &words, 1, &written);
}

[[gnu::constructor]] void hear_faults() { stringcourse::on_fault(say_fault); }

}  // namespace

// What the libraries say when they end the program, without the formatted printing that would come with their own: the
// words alone, not what stands for a % in them.
_LIBCPP_BEGIN_NAMESPACE_STD
void __libcpp_verbose_abort(const char* says, ...) noexcept {
  say_fault(says);
  __builtin_trap();
}
_LIBCPP_END_NAMESPACE_STD

extern "C" {
[[noreturn]] void __abort_message(const char* says, ...);
void __abort_message(const char* says, ...) {
  say_fault(says);
  __builtin_trap();
}
}
