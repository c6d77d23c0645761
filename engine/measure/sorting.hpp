#pragma once
// Sorting with little code. The library's sorts are made anew for every type, some 5 kB each in the page's module; here
// one sort of numbers serves all lists that are not in the innermost loops.
#include <cstddef>
#include <cstdint>
#include <functional>
#include <utility>
#include <vector>

namespace stringcourse {

/// 0 .. count-1 in the order of `before`, which tells of two numbers whether the first must come first. Equals keep
/// their order. At most 2^32 - 1 of them.
[[nodiscard]] std::vector<std::uint32_t> stable_order(std::size_t count,
                                                      bool (*before)(const void*, std::size_t, std::size_t),
                                                      const void* context);

/// Sorts `list` by less(projected(a), projected(b)); equals keep their order.
template <class Item, class Less = std::less<>, class Projected = std::identity>
void sort_stably(std::vector<Item>& list, Less less = {}, Projected projected = {}) {
  struct Context {
    const std::vector<Item>& list;
    Less& less;
    Projected& projected;
  } context{list, less, projected};
  const auto before = [](const void* given, std::size_t a, std::size_t b) {
    const Context& in = *static_cast<const Context*>(given);
    return static_cast<bool>(
        std::invoke(in.less, std::invoke(in.projected, in.list[a]), std::invoke(in.projected, in.list[b])));
  };
  std::vector<Item> sorted;
  sorted.reserve(list.size());
  for (const std::uint32_t at : stable_order(list.size(), before, &context)) sorted.push_back(std::move(list[at]));
  list = std::move(sorted);
}

}  // namespace stringcourse
