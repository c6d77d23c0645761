#include "wasm/brief.hpp"

#include <utility>

#include "document/brief_json.hpp"
#include "wasm/reply.hpp"
#include "wasm/source.hpp"

namespace stringcourse::border {

std::string brief_reply(const Request& request, Quick& quick) {
  auto source = source_of(request);
  if (!source) return std::move(source.error());
  const auto answer = quick.brief_answer_of(source->job, source->before);
  if (!answer) return refused(answer.error(), source->document);
  Reply reply{.building = &answer->building};
  reply.sections.push_back({"answer.json", brief_text(*answer)});
  if (!source->document.empty()) reply.sections.push_back({"job.json", std::move(source->document)});
  for (const std::string& name : request.drawings) {
    if (auto drawing = sheet::make_building_drawing(*answer, name)) add_drawing(reply, request, *std::move(drawing));
  }
  return finished(std::move(reply));
}

std::string BriefBorder::answer(std::string_view text) {
  const auto request = read_request(text);
  if (!request) return bad_request(request.error());
  if (request->lengths) return told(*request->lengths);
  if (!request->brief) return bad_request("/brief: this module answers in brief.");
  return brief_reply(*request, quick_);
}

}  // namespace stringcourse::border
