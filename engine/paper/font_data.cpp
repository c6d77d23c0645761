// The font files, byte for byte as they stand in fonts/ (licence: fonts/OFL.txt).
#include <array>
#include <cstdint>

#include "paper/font.hpp"

#pragma clang diagnostic ignored "-Wc23-extensions"  // #embed is C23; clang takes it in C++ too

namespace stringcourse::paper {
namespace {

#ifdef __wasm__
// Without outlines: the page hands the whole files over with each request for a PDF.
constexpr std::uint8_t kRegular[] = {
#embed "fonts/B612-Regular.metrics.otf"
};
constexpr std::uint8_t kBold[] = {
#embed "fonts/B612-Bold.metrics.otf"
};
static_assert(sizeof(kRegular) == 2'612 && sizeof(kBold) == 2'604);
#else
constexpr std::uint8_t kRegular[] = {
#embed "fonts/B612-Regular.otf"
};
constexpr std::uint8_t kBold[] = {
#embed "fonts/B612-Bold.otf"
};
// The sizes stand here so that a change of the files is a change of this one: compiler caches do not look behind
// #embed.
static_assert(sizeof(kRegular) == 32'812 && sizeof(kBold) == 38'192);
#endif

}  // namespace

Bytes font_file(Weight weight) {
  return weight == Weight::Bold ? Bytes(kBold) : Bytes(kRegular);
}

}  // namespace stringcourse::paper
