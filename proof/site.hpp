#pragma once
// Loads and places of pallets, checked as a stranger would.
#include "answer/answer.hpp"
#include "proof/rules.hpp"

namespace stringcourse::proof {

/// What lacks is what is wanted less what came, and of units the place is where one more would be taken than came:
/// right before it there is enough. Every article on the list is in one drop; loads carry all that is weighed, none
/// more than the truck does. No pallet stands within the zone of a wall, two never on one place; each block is served
/// by one pallet; distances are those of the plan; and the prices show that no other placing on these places has
/// less to carry.
Violations check_site(const Answer& answer);

}  // namespace stringcourse::proof
