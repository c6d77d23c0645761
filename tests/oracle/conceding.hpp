#pragma once
// The slow, obvious twin of a conceding panel: every filling of every row is written down with what it gives up, and
// every combination is weighed. Shares bond/panel.hpp with the solver and no code; weights from docs/bond-model.md.
#include <cstddef>
#include <cstdint>
#include <optional>

#include "bond/panel.hpp"

namespace stringcourse::oracle {

/// The least weight of rules given up by any layout. nullopt: a row has more than `limit` fillings; nothing is claimed.
std::optional<std::int64_t> least_given_up(const bond::Panel& panel, std::size_t limit);

}  // namespace stringcourse::oracle
