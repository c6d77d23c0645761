#include "document/answer_json.hpp"

#include "job/write.hpp"
#include "document/answer_parts.hpp"

namespace stringcourse {

bool write_answer(const Answer& answer, const ByteSink& sink, Placed placed) {
  JsonOut out(sink);
  out.object([&] {
    out.field("stringcourse_answer", kAnswerVersion);
    out.field("state", answer.layout.stopped.empty() ? "whole" : "stopped");
    std::string job = write_job(answer.job);
    while (!job.empty() && job.back() == '\n') job.pop_back();
    out.name("job");
    out.raw(job);
    answer_parts::write_building(out, answer.building, answer.layout);
    answer_parts::write_verdict(out, answer);
    if (!answer.job.readings.empty()) answer_parts::write_ground(out, answer);
    if (answer.laid) answer_parts::write_laying(out, answer);
    answer_parts::write_dowels(out, answer, placed);
    answer_parts::write_lists(out, answer.building, answer.layout);
    answer_parts::write_layout(out, answer.building, answer.layout, placed);
  });
  out.end_line();
  return out.finish();
}

std::string answer_text(const Answer& answer, Placed placed) {
  std::string text;
  const bool whole = write_answer(answer, [&](std::string_view bytes) {
    text += bytes;
    return true;
  }, placed);
  return whole ? text : std::string();
}

}  // namespace stringcourse
