#pragma once
// The reply to one request until it becomes a block: what both modules say in the same way.
#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "document/json_out.hpp"
#include "job/trouble.hpp"
#include "sheet/drawing.hpp"
#include "walls/building.hpp"
#include "wasm/block.hpp"
#include "wasm/request.hpp"

namespace stringcourse::border {

struct Reply {
  std::string_view state = "solved";
  std::string message = {};
  std::vector<Section> sections = {};  // without reply.json
  std::vector<sheet::Drawing> drawings = {};
  const Building* building = nullptr;       // the one that is solved
  std::function<void(JsonOut&)> more = {};  // members of reply.json behind the drawings
};

/// The block, reply.json first.
[[nodiscard]] std::string finished(Reply reply);
[[nodiscard]] std::string bad_request(std::string message);
/// With the document of a changed job, if there is one, so that the page can go on from it.
[[nodiscard]] std::string refused(const Refusals& refusals, const std::string& document);
/// Lengths alone: nothing is solved.
[[nodiscard]] std::string told(const LengthsAsked& asked);

/// A drawing with its picture.
void add_drawing(Reply& reply, const Request& request, sheet::Drawing drawing);

}  // namespace stringcourse::border
