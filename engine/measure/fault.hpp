#pragma once
// A fault is our own bug. Checks are on in every build; a front end may say what happens before the program stops.

namespace stringcourse {

using FaultHandler = void (*)(const char* what);

/// Called once before the program stops on a fault: the command line prints and exits with its own code, the page
/// keeps the user's data. Null by default.
void on_fault(FaultHandler handler);

/// Stops: something that cannot be, is.
[[noreturn]] void fault(const char* what);

/// Stops unless `holds`.
inline void ensure(const bool holds, const char* what) {
  if (!holds) fault(what);
}

}  // namespace stringcourse
