#pragma once
// The words that the answer document uses for the engine's own choices. Those of the job's are in job/enum_names.hpp.
#include <optional>
#include <string_view>

#include "bond/layout.hpp"
#include "setout/gauge_rod.hpp"
#include "solve/solve.hpp"
#include "supply/lintels.hpp"

namespace stringcourse {

/// "through-corner", "butt-corner", "jamb", "free-end", "control-joint", "tied-junction", "lapped-butt",
/// "entering-junction", "slot-side", "lintel-end".
[[nodiscard]] std::string_view run_end_name(RunEnd end);
/// "none", "start", "end".
[[nodiscard]] std::string_view cut_end_name(CutEnd end);
/// "corner", "jamb", "beside-control-joint", "dimensioned", "cast", "spaced".
[[nodiscard]] std::string_view bar_reason_name(BarReason reason);
/// "door", "overhead", "window", "plain".
[[nodiscard]] std::string_view opening_use_name(OpeningUse use);
/// "west", "north", "east", "south".
[[nodiscard]] std::string_view heading_name(Heading heading);
/// "floor", "sill", "course-top", "wire", "head", "lintel-course", "bond-beam", "pour-stop", "top".
[[nodiscard]] std::string_view rod_event_name(setout::RodEvent event);
/// "one-piece", "floor", "form", "nothing-spans".
[[nodiscard]] std::string_view soffit_name(supply::Soffit soffit);
/// "move-opening", "move-near-jamb", "move-far-jamb", "move-head", "change-side", "change-width".
[[nodiscard]] std::string_view offer_name(OfferWhat what);
[[nodiscard]] std::optional<OfferWhat> offer_named(std::string_view name);

}  // namespace stringcourse
