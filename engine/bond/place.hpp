#pragma once
// Pieces into their places: exact starts, kinds as bought, numbers along the wall. And bars into cells.
#include "bond/layout.hpp"
#include "bond/panel.hpp"
#include "bond/panel_site.hpp"
#include "walls/building.hpp"

namespace stringcourse::bond {

/// One solved panel in its place.
struct PlacedPanel {
  const PanelSite* site = nullptr;
  Panel panel;
  const PanelAnswer* answer = nullptr;  // null: stopped
};

/// Runs and pieces by wall, course and start, with the kinds that the yard is asked for. Cleanout and open-end units
/// come later, when the bars stand (name_bar_units).
void place_pieces(const Building& building, const std::vector<PlacedPanel>& panels, Layout& layout);

/// Fixed bars where they belong, and spaced bars: of the whole marks of the tape at which every course has a cell, the
/// farthest within the spacing, again and again; where none lies within it the next beyond, which is a concession.
/// Returns how many more there are than the spacing alone would need.
[[nodiscard]] std::int64_t place_bars(const Building& building, Layout& layout);

/// A cleanout for every bar at the foot of each pour that asks for them: a plain unit there becomes a cleanout unit, if
/// stocked; into any other (a corner's, a beam's) the hole is cut. Where a course has nothing at a bar (an opening),
/// none.
void place_cleanouts(const Building& building, Layout& layout);

/// Whole units at bars, with units on both sides, become open-end units, if stocked.
void name_bar_units(const Building& building, Layout& layout);

}  // namespace stringcourse::bond
