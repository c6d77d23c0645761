#pragma once
// Every kind of sheet, in the order of the set. A new one is a file of its own that defines its descriptor (kind.hpp),
// and one line here.
#include <span>

#include "sheet/kind.hpp"

#define STRINGCOURSE_SHEETS(sheet) \
  sheet(Summary)                   \
  sheet(Names)                     \
  sheet(Sides)                     \
  sheet(Notes)                     \
  sheet(SettingOut)                \
  sheet(Dowels)                    \
  sheet(Corners)                   \
  sheet(FormBoards)                \
  sheet(Templates)                 \
  sheet(Pegs)                      \
  sheet(Readings)                  \
  sheet(BedProfiles)               \
  sheet(Courses)                   \
  sheet(Elevations)                \
  sheet(Openings)                  \
  sheet(LintelBars)                \
  sheet(SawList)                   \
  sheet(GaugeRod)                  \
  sheet(Leads)                     \
  sheet(Changes)                   \
  sheet(Marks)                     \
  sheet(LaidLog)

namespace stringcourse::sheet {

#define STRINGCOURSE_DECLARED(name) extern const SheetKind k##name##Sheet;
STRINGCOURSE_SHEETS(STRINGCOURSE_DECLARED)
#undef STRINGCOURSE_DECLARED

[[nodiscard]] std::span<const SheetKind* const> sheet_kinds();

}  // namespace stringcourse::sheet
