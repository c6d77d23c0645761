#pragma once
// What must fit together inside one part of the job, beyond each field alone. Not geometry: that is asked in walls/.
#include <string>
#include <string_view>
#include <vector>

#include "job/job.hpp"
#include "job/trouble.hpp"

namespace stringcourse {

/// Something that does not fit. `place` is a JSON pointer from the checked part on, such as "/half".
using Misfits = std::vector<Refusal>;

/// Half shorter than full; full + joint = 2 (half + joint) exactly; cells inside their unit, rising, with a web
/// between; half-high lower than a unit; two face shells thinner than the unit; tolerance less than the joint; corner
/// leg and least piece no longer than a unit. `tape` says how the sizes are quoted.
[[nodiscard]] Misfits misfits_of(const OwnSeries& series, Tape tape);

/// Least joint no wider than the greatest.
[[nodiscard]] Misfits misfits_of(const Units& units, Tape tape);

/// Forces and the line's weight can be read; no kerf lies beyond a board's outer end.
[[nodiscard]] Misfits misfits_of(const SettingOut& setting_out, Tape tape);

/// Stresses can be read.
[[nodiscard]] Misfits misfits_of(const Lap& lap, Tape tape);

/// Narrowest joint no wider than the widest.
[[nodiscard]] Misfits misfits_of(const Laying& laying, Tape tape);
/// A row with its number, or single units.
[[nodiscard]] Misfits misfits_of(const UnitSample& sample, Tape tape);
/// A jamb with its opening; a wall's end without.
[[nodiscard]] Misfits misfits_of(const FoundPlace& found, Tape tape);
/// A remark without a note or a photo.
[[nodiscard]] Misfits misfits_of(const LaidEntry& entry, Tape tape);

/// No kind and no article twice; money, hundredths and currencies that can be read, all of one currency.
[[nodiscard]] Misfits misfits_of(const Ordering& order, Tape tape);
/// No work and no forecast day twice; dates that are there.
[[nodiscard]] Misfits misfits_of(const Days& days, Tape tape);

/// Parts without any such rule.
template <class Part>
[[nodiscard]] Misfits misfits_of(const Part&, Tape) {
  return {};
}

/// Names that two things share: corners left or reached twice, walls (sides and interior walls in one), openings, own
/// series (the catalogue's ids included). Empty names are passed over. Order: that of the document.
[[nodiscard]] std::vector<Refusal> shared_names(const Job& job);

/// A side's name: its own, or its two corners' in one.
[[nodiscard]] std::string side_name(const Side& side);

}  // namespace stringcourse
