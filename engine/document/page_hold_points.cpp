#include "document/page_parts.hpp"
#include "document/put.hpp"
#include "document/shown_points.hpp"

namespace stringcourse {

void write_hold_points(JsonOut& out, const Answer& answer) {
  document::put(out, document::View{answer}, answer.points);
}

}  // namespace stringcourse
