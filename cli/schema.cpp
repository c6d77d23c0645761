#include <string_view>

#include "cli/files.hpp"
#include "cli/solved.hpp"
#include "cli/verb_actions.hpp"
#include "job/words.hpp"
#include "job/write.hpp"

namespace stringcourse::cli {

namespace {

#pragma clang diagnostic push
#pragma clang diagnostic ignored "-Wc23-extensions"
constexpr char kAnswerSchema[] = {
#embed "../docs/schema/answer.schema.json"
};
constexpr char kRefusalsSchema[] = {
#embed "../docs/schema/refusals.schema.json"
};
#pragma clang diagnostic pop

constexpr std::string_view kNames[] = {"job", "answer", "refusals"};

}  // namespace

ExitCode schema(const Command& command) {
  const std::string name = command.operands.empty() ? "job" : command.operands[0];
  std::string text;
  if (name == "job") {
    text = job_schema();
  } else if (name == "answer") {
    text.assign(kAnswerSchema, sizeof kAnswerSchema);
  } else if (name == "refusals") {
    text.assign(kRefusalsSchema, sizeof kRefusalsSchema);
  } else {
    return usage_trouble("There is no schema " + quoted(name) + ": " + one_of_words(kNames) + ".", command.verb);
  }
  return write_stdout(text) ? kDone : file_trouble("cannot write to stdout");
}

}  // namespace stringcourse::cli
