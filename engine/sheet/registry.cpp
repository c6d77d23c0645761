#include "sheet/registry.hpp"

namespace stringcourse::sheet {

std::span<const SheetKind* const> sheet_kinds() {
#define STRINGCOURSE_LISTED(name) &k##name##Sheet,
  static constexpr const SheetKind* kKinds[] = {STRINGCOURSE_SHEETS(STRINGCOURSE_LISTED)};
#undef STRINGCOURSE_LISTED
  return kKinds;
}

}  // namespace stringcourse::sheet
