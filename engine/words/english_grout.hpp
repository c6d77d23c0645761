#pragma once
// English words of the pour card's amounts.
#include "words/grout_words.hpp"

namespace stringcourse::words {

inline constexpr GroutWords kEnglishGrout{
    .amount = "Grout",
    .lifts = "Lifts stop at the top of course {0}.",
    .one_lift = "In one lift.",
    .beams = "Bond beams",
    .lintels = "Lintels of units",
    .in_pour = "Goes into this pour",
    .to_order = "To order: {0} in 100 more",
    .note =
        "Cells are taken as straight from bed to bed and troughs as clear from shell to shell: it is the most that the "
        "block as listed holds. Measure a block of your yard. More is ordered for what is spilt and left over.",
    .unlike_note = "* A cell is partly in a corner set: the cell of a whole unit is taken there.",
};

}  // namespace stringcourse::words
