#pragma once
// Jobs that ask much of the sheets: random buildings whose every name is long, measured and set out.
#include <cstdint>
#include <optional>

#include "print/solved_examples.hpp"

namespace stringcourse::print_test {

/// How the names of a hard job look.
enum class Names { OneLetter, Words, OneLongWord, Longest };

/// The random job of this seed with such names, with setting out, rod readings of its corners and tapings; none where
/// the building is refused.
[[nodiscard]] std::optional<Solved> hard_job(std::uint64_t seed, Names names);
/// All names that it gives to something.
[[nodiscard]] std::vector<std::string> names_in(const Job& job);

}  // namespace stringcourse::print_test
