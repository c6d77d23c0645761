#pragma once
// Brief answers: where every unit lies, with plans and elevations. The page's first module says nothing else; the whole
// one says the same in the same bytes.
//
// Sections: reply.json, answer.json (document/brief_json.hpp) or refusals.json, job.json, NAME.svg, as in border.hpp.
#include <string>
#include <string_view>

#include "wasm/quick.hpp"
#include "wasm/request.hpp"

namespace stringcourse::border {

/// The reply to a request with `brief`.
[[nodiscard]] std::string brief_reply(const Request& request, Quick& quick);

class BriefBorder {
 public:
  /// A reply block, as Border gives it to the same request. Never empty. Requests that are neither brief nor for
  /// lengths alone are bad ones here.
  [[nodiscard]] std::string answer(std::string_view request);

 private:
  Quick quick_;
};

}  // namespace stringcourse::border
