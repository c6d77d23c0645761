#include "cli/help.hpp"

namespace stringcourse::cli {

namespace {

void append_row(std::string& text, std::string_view left, std::string_view right, std::size_t width) {
  text.append("  ").append(left).append(left.size() < width ? width - left.size() : 1, ' ').append(right).append("\n");
}

}  // namespace

std::string general_help() {
  std::string text =
      "Stringcourse plans the block walls of a small building: every unit, joint, bar and mark.\n\n"
      "usage: stringcourse VERB ...\n\n";
  for (const VerbSpec& verb : verbs()) append_row(text, verb.name, verb.summary, 10);
  text +=
      "\n'stringcourse help VERB' says more. Results come on stdout, everything else on stderr.\n\n"
      "exit codes:\n"
      "  0   done\n"
      "  1   done, but there are findings and --strict asked that they fail\n"
      "  2   the command was not understood\n"
      "  3   the job is refused: it cannot be planned, and nothing was written\n"
      "  4   something could not be read or written\n"
      "  70  our fault: a check inside the program failed\n";
  return text;
}

std::string verb_help(const VerbSpec& verb) {
  std::string text(verb.name);
  text.append(": ").append(verb.summary).append("\n\nusage: stringcourse ").append(verb.name);
  if (!verb.operands.empty()) text.append(" ").append(verb.operands);
  if (!verb.options.empty()) text.append(" [options]");
  text += "\n";
  if (!verb.more.empty()) text.append("\n").append(verb.more).append("\n");
  if (!verb.options.empty()) text += "\noptions:\n";
  for (const OptionSpec& option : verb.options) {
    std::string left(option.name);
    if (!option.value.empty()) left.append(" ").append(option.value);
    append_row(text, left, option.says, 24);
  }
  std::string examples(verb.examples);
  for (std::size_t at = 0; (at = examples.find("stringcourse ", at)) != std::string::npos; at += 15)
    examples.insert(at, "  ");
  text.append("\nexamples:\n").append(examples);
  return text;
}

}  // namespace stringcourse::cli
