#include "walls/pointer.hpp"

#include "measure/digits.hpp"

namespace stringcourse::walls {

std::string pointer(std::string_view list, std::size_t index, std::string_view field) {
  std::string text(list);
  text.append("/").append(number_text(index));
  if (!field.empty()) text.append("/").append(field);
  return text;
}

}  // namespace stringcourse::walls
