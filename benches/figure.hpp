#pragma once
// Figures of the measuring programs, one a line: name value unit target met|missed. Every target is a most, not a least.
#include <functional>
#include <string_view>

namespace stringcourse::benches {

/// Seconds that `work` takes; the least of `times` runs, which is the one least disturbed.
[[nodiscard]] double seconds_of(int times, const std::function<void()>& work);

/// Prints one figure against its target.
void print_figure(std::string_view name, double value, std::string_view unit, double target);

/// Most memory that this process has used so far, MB.
[[nodiscard]] double peak_megabytes();

}  // namespace stringcourse::benches
