#pragma once
// Why a panel has no layout, with the smallest changes that mend it.
#include "bond/layout.hpp"
#include "bond/panel.hpp"
#include "bond/panel_site.hpp"

namespace stringcourse::bond {

[[nodiscard]] Stopped stop_of(const Building& building, const PanelSite& site, const Panel& panel,
                              const PanelStop& stop);

}  // namespace stringcourse::bond
