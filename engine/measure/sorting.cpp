#include "measure/sorting.hpp"

#include <algorithm>

namespace stringcourse {

std::vector<std::uint32_t> stable_order(std::size_t count, bool (*before)(const void*, std::size_t, std::size_t),
                                        const void* context) {
  std::vector<std::uint32_t> order(count), merged(count);
  for (std::size_t k = 0; k < count; ++k) order[k] = static_cast<std::uint32_t>(k);
  // Neighbouring sorted stretches, each twice as long as in the round before, are merged.
  for (std::size_t width = 1; width < count; width *= 2) {
    for (std::size_t start = 0; start < count; start += 2 * width) {
      const std::size_t middle = std::min(start + width, count), end = std::min(start + 2 * width, count);
      std::size_t left = start, right = middle;
      for (std::size_t at = start; at < end; ++at) {
        const bool from_right = left == middle || (right < end && before(context, order[right], order[left]));
        merged[at] = from_right ? order[right++] : order[left++];
      }
    }
    order.swap(merged);
  }
  return order;
}

}  // namespace stringcourse
