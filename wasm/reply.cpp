#include "wasm/reply.hpp"

#include <utility>

#include "document/refusals_json.hpp"
#include "ink/svg.hpp"
#include "wasm/drawing_head.hpp"

namespace stringcourse::border {
namespace {

void write_sections(JsonOut& out, const Reply& reply) {
  out.list("sections", [&] {
    out.text("reply.json");
    for (const Section& section : reply.sections) out.text(section.name);
  });
}

void write_drawings(JsonOut& out, const Reply& reply) {
  out.list("drawings", [&] {
    for (const sheet::Drawing& drawing : reply.drawings) write_drawing_head(out, *reply.building, drawing);
  });
}

}  // namespace

std::string finished(Reply reply) {
  std::string head = json_text([&](JsonOut& out) {
    out.object([&] {
      out.field("border", kBorderVersion);
      out.field("state", reply.state);
      if (!reply.message.empty()) out.field("message", reply.message);
      write_sections(out, reply);
      if (reply.building != nullptr) write_drawings(out, reply);
      if (reply.more) reply.more(out);
    });
  });
  reply.sections.insert(reply.sections.begin(), {"reply.json", std::move(head)});
  return block_of(reply.sections);
}

std::string bad_request(std::string message) {
  return finished({.state = "bad-request", .message = std::move(message)});
}

std::string refused(const Refusals& refusals, const std::string& document) {
  Reply reply{.state = "refused"};
  reply.sections.push_back({"refusals.json", refusals_json(refusals)});
  if (!document.empty()) reply.sections.push_back({"job.json", document});
  return finished(std::move(reply));
}

std::string told(const LengthsAsked& asked) {
  const Refusals wrong = unread(asked);
  if (!wrong.empty()) return refused(wrong, "");
  return finished({.more = [&](JsonOut& out) { out.name("lengths"), write_lengths(out, asked); }});
}

void add_drawing(Reply& reply, const Request& request, sheet::Drawing drawing) {
  reply.sections.push_back({drawing.sheet.name + ".svg", request.moving
                                                             ? ink::moving_svg_text(drawing.sheet)
                                                             : ink::svg_text(drawing.sheet, ink::Classes::Write)});
  reply.drawings.push_back(std::move(drawing));
}

}  // namespace stringcourse::border
