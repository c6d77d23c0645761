#pragma once
// What the laid log and the readings tell of the work, read again.
#include <map>
#include <set>
#include <utility>

#include "answer/pour_card.hpp"
#include "answer/programme.hpp"
#include "proof/rules.hpp"
#include "supply/grout.hpp"

namespace stringcourse::proof {

/// Whether an entry of the laid log strikes this one and is itself not struck. Strikes are followed back from each
/// entry; a chain of them never goes round, as an entry strikes one that is there before it or none.
bool is_struck(const Job& job, const std::string& id, std::size_t deep = 0);

struct Behind {
  std::map<std::pair<int, int>, std::optional<Date>> courses;  // laid, by wall and course; the newest day said of it
  std::map<int, std::optional<Date>> begun_pours;              // with something filled; likewise
  std::set<std::pair<int, int>> lifts;                         // of which every cell and trough is filled, from 0 and 1
  std::optional<Date> evening;                                 // up to which they tell
  bool poured = false, begun = false;                          // the footing or slab, or something on it
  std::optional<Date> poured_by = {};                          // the first day on which a reading has it
};
Behind behind_by_log(const Job& job, const Building& building, const std::vector<LiftCard>& cards);

bool is_worked(const Days& stated, Date date);
/// Working days after one day up to another.
std::int64_t worked_between(const Days& stated, std::optional<Date> after, std::optional<Date> to);
/// Of a wait, as far as the log says since when it lasts.
std::int64_t waited(const Days& stated, const Behind& behind, const Layout& layout,
                    const std::vector<supply::GroutPour>& pours, const Task& wait);

/// Nothing is both done and ahead; what is done is what the log tells, with all pieces of the courses laid and no
/// other.
Violations check_behind(const Job& job, const Layout& layout, const std::vector<supply::GroutPour>& pours,
                        const Behind& behind, const Programme& programme);

}  // namespace stringcourse::proof
