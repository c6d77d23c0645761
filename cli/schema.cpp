#include <string_view>

#include "cli/files.hpp"
#include "cli/solved.hpp"
#include "cli/verb_actions.hpp"
#include "document/answer_json.hpp"
#include "job/words.hpp"
#include "job/write.hpp"

namespace stringcourse::cli {

namespace {

constexpr std::string_view kNames[] = {"job", "answer", "refusals"};

}  // namespace

ExitCode schema(const Command& command) {
  const std::string name = command.operands.empty() ? "job" : command.operands[0];
  std::string text;
  if (name == "job") {
    text = job_schema();
  } else if (name == "answer") {
    text = answer_schema();
  } else if (name == "refusals") {
    text = refusals_schema();
  } else {
    return usage_trouble("There is no schema " + quoted(name) + ": " + one_of_words(kNames) + ".", command.verb);
  }
  return write_stdout(text) ? kDone : file_trouble("cannot write to stdout");
}

}  // namespace stringcourse::cli
