// The command line: words in, one verb done, a code out. See verbs.cpp for the verbs and exit_code.hpp for the codes.
#include <algorithm>
#include <vector>

#include "cli/arguments.hpp"
#include "cli/files.hpp"
#include "cli/help.hpp"
#include "cli/signals.hpp"
#include "cli/solved.hpp"
#include "cli/verb_actions.hpp"
#include "job/words.hpp"

namespace stringcourse::cli {

namespace {

constexpr std::string_view kVersion = "stringcourse 0.1.0\n";

ExitCode print(std::string_view text) { return write_stdout(text) ? kDone : file_trouble("cannot write to stdout"); }

ExitCode help(const Command& command) {
  if (command.operands.empty()) return print(general_help());
  const auto verb = std::ranges::find(verbs(), command.operands[0], &VerbSpec::name);
  if (verb == verbs().end()) {
    std::vector<std::string_view> names;
    for (const VerbSpec& each : verbs()) names.push_back(each.name);
    const std::string& word = command.operands[0];
    return usage_trouble(with_nearest("There is no verb " + quoted(word) + ".", word, names), nullptr);
  }
  return print(verb_help(*verb));
}

ExitCode act(const Command& command) {
  const std::string_view name = command.verb->name;
  if (command.wants_help) return print(verb_help(*command.verb));
  if (name == "plan") return plan(command);
  if (name == "begin") return begin(command);
  if (name == "add") return add(command);
  if (name == "enter") return enter(command);
  if (name == "look") return look(command);
  if (name == "marks") return marks(command);
  if (name == "order") return order(command);
  if (name == "days") return days(command);
  if (name == "merge") return merge(command);
  if (name == "schema") return schema(command);
  if (name == "version") return print(kVersion);
  return help(command);
}

}  // namespace

}  // namespace stringcourse::cli

int main(int count, char** words) {
  using namespace stringcourse::cli;
  catch_faults();
  const std::vector<std::string_view> typed(words + (count > 0 ? 1 : 0), words + count);
  const auto command = read_arguments(typed);
  return command ? act(*command) : usage_trouble(command.error().text, nullptr);
}
