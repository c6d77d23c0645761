#pragma once
// Every kind of sheet, in the order of the set: hold point by hold point. A new one is a file of its own that defines
// its descriptor (kind.hpp), and one line here.
#include <span>

#include "sheet/kind.hpp"

#define STRINGCOURSE_SHEETS(sheet)                                                                                   \
  sheet(Summary) sheet(Names) sheet(Sides) sheet(Findings) sheet(Elevations) sheet(SawList) sheet(OrderList)         \
      sheet(Reckoning) sheet(BarsToBuy) sheet(Drops) sheet(Pallets) sheet(PalletPlan) sheet(Days) sheet(Forecast)    \
          sheet(DaysChart) sheet(Standards) sheet(Weather) sheet(AccessZone) sheet(SettingOut) sheet(Dowels)         \
              sheet(FormBoards) sheet(Templates) sheet(ReadingForm) sheet(Pegs) sheet(Readings) sheet(BedProfiles)   \
                  sheet(Courses) sheet(Strips) sheet(Corners) sheet(GaugeRod) sheet(Changes) sheet(Marks)            \
                      sheet(LaidLog) sheet(Openings) sheet(Shores) sheet(LintelBars) sheet(Heads) sheet(UpperStrips) \
                          sheet(PourCard) sheet(PourOrder) sheet(Inspection) sheet(BarSchedule) sheet(JointWire)     \
                              sheet(HiddenMap) sheet(TopCard) sheet(Bolts) sheet(PlatePlan) sheet(TopRead)

namespace stringcourse::sheet {

#define STRINGCOURSE_DECLARED(name) extern const SheetKind k##name##Sheet;
STRINGCOURSE_SHEETS(STRINGCOURSE_DECLARED)
#undef STRINGCOURSE_DECLARED

[[nodiscard]] std::span<const SheetKind* const> sheet_kinds();

}  // namespace stringcourse::sheet
