#pragma once
// Figures of the measuring programs, one a line: name value unit target met|missed.
#include <functional>
#include <string_view>

namespace stringcourse::benches {

/// Seconds on the clock that `work` takes: the median of `times` runs (the lower one of an even number).
[[nodiscard]] double median_seconds(int times, const std::function<void()>& work);

/// Prints one figure that shall be no more than its target. A target of time ("s", "ms", "us") is multiplied by the
/// machine's factor first: how much longer a fixed piece of work takes than on the machine that it was set on.
void print_at_most(std::string_view name, double value, std::string_view unit, double target);
/// Prints one figure that shall be no less than its target.
void print_at_least(std::string_view name, double value, std::string_view unit, double target);

/// Most memory that this process has used so far, MB (millions of bytes).
[[nodiscard]] double peak_megabytes();

/// Says what went wrong and ends the program with 1: a figure of a wrong answer is worth nothing.
[[noreturn]] void give_up(std::string_view why);

}  // namespace stringcourse::benches
