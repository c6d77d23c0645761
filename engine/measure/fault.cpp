#include "measure/fault.hpp"

namespace stringcourse {
namespace {
FaultHandler handler_now = nullptr;
}

void on_fault(FaultHandler handler) { handler_now = handler; }

void fault(const char* what) {
  if (handler_now != nullptr) handler_now(what);
  __builtin_trap();
}

}  // namespace stringcourse
