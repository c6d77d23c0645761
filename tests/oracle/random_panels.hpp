#pragma once
// Small random walls as panels, for comparing the bond solver with its oracles. The same seed gives the same panel.
#include <cstdint>
#include <string>

#include "bond/panel.hpp"

namespace stringcourse::oracle {

enum class PanelSize {
  Tiny,   // 16 to 40 in (400 to 1000 mm): brute force writes down every row
  Small,  // 40 to 100 in (1000 to 2500 mm)
};

/// One wall of 2 to 4 courses: US 8, 6 and 12 in, 190 mm and 440 x 215 mm units; corners through and butting by turns,
/// re-entrant ones, free ends, control joints, tied and lapped junctions, slots; an opening with a one-piece or
/// built-up lintel; fixed bars; zones without cuts; lengths on the half-unit grid, on half of it, and off it. One in
/// seven asks for quarter bond, one in twenty is a weighted panel.
bond::Panel random_panel(std::uint64_t seed, PanelSize size);

/// For messages: runs, ends and bars in one line.
std::string say(const bond::Panel& panel);

}  // namespace stringcourse::oracle
