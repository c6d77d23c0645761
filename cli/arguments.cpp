#include "cli/arguments.hpp"

#include <algorithm>

#include "job/words.hpp"

namespace stringcourse::cli {

namespace {

// Plain marks for our own words; what was typed is quoted safely.
std::string marked(std::string_view word) { return "'" + std::string(word) + "'"; }

std::string unknown_verb(std::string_view word) {
  std::vector<std::string_view> names;
  for (const VerbSpec& verb : verbs()) names.push_back(verb.name);
  return with_nearest("There is no verb " + quoted(word) + " (verbs: " + one_of_words(names) + ").", word, names);
}

std::string unknown_option(const VerbSpec& verb, std::string_view word) {
  std::vector<std::string_view> names;
  for (const OptionSpec& option : verb.options) {
    if (!option.name.empty()) names.push_back(option.name);
  }
  return with_nearest("'" + std::string(verb.name) + "' has no option " + quoted(word) + ".", word, names);
}

const VerbSpec* find_verb(std::string_view name) {
  const auto found = std::ranges::find(verbs(), name, &VerbSpec::name);
  return found == verbs().end() ? nullptr : &*found;
}

/// A command that is being read, and what was wrong so far.
struct Reading {
  Command command;
  std::vector<std::string> wrong;
};

// Takes one option and, where it wants one, its value; gives how many words it took.
std::size_t take_option(Reading& reading, std::span<const std::string_view> rest) {
  Command& command = reading.command;
  const std::string_view word = rest[0];
  const std::size_t equals = word.find('=');
  const std::string_view name = word.substr(0, equals);
  if (name == "--help" || name == "-h") return command.wants_help = true, 1;
  const auto spec = std::ranges::find(command.verb->options, name, &OptionSpec::name);
  if (spec == command.verb->options.end()) return reading.wrong.push_back(unknown_option(*command.verb, name)), 1;
  const bool inline_value = equals != std::string_view::npos;
  if (spec->value.empty()) {
    if (inline_value) reading.wrong.push_back(std::string(name) + " takes no value.");
  } else if (!inline_value && rest.size() < 2) {
    reading.wrong.push_back(std::string(name) + " wants a value: " + std::string(spec->value) + ".");
    return 1;
  }
  if (!spec->repeats && command.has(name)) reading.wrong.push_back(std::string(name) + " is given twice.");
  const bool takes_next = !spec->value.empty() && !inline_value;
  command.options.emplace_back(name, spec->value.empty() ? "" : inline_value ? word.substr(equals + 1) : rest[1]);
  return takes_next ? 2 : 1;
}

void check_operands(Reading& reading) {
  const Command& command = reading.command;
  const auto count = static_cast<int>(command.operands.size());
  const std::string name = "'" + std::string(command.verb->name) + "'";
  if (count < command.verb->least_operands)
    reading.wrong.push_back(name + " wants " + std::string(command.verb->operands) + ".");
  for (int index = command.verb->most_operands; index < count; ++index)
    reading.wrong.push_back(name + " does not know what to do with " +
                            quoted(command.operands[static_cast<std::size_t>(index)]) + ".");
}

}  // namespace

std::string one_of_words(std::span<const std::string_view> names) {
  std::string out;
  for (std::size_t k = 0; k < names.size(); ++k) {
    if (k > 0) out += k + 1 == names.size() ? " or " : ", ";
    out += names[k];
  }
  return out;
}

bool Command::has(std::string_view option) const { return value(option).has_value(); }

std::optional<std::string> Command::value(std::string_view option) const {
  const auto found = std::ranges::find(options, option, &std::pair<std::string, std::string>::first);
  if (found == options.end()) return std::nullopt;
  return found->second;
}

std::vector<std::string> Command::values(std::string_view option) const {
  std::vector<std::string> all;
  for (const auto& [name, value] : options) {
    if (name == option) all.push_back(value);
  }
  return all;
}

std::string with_nearest(std::string text, std::string_view word, std::span<const std::string_view> known) {
  const std::string_view nearest = nearest_name(word, known);
  if (!nearest.empty()) text += " Did you mean " + marked(nearest) + "?";
  return text;
}

std::expected<Command, UsageError> read_arguments(std::span<const std::string_view> words) {
  if (words.empty()) return std::unexpected(UsageError{"A verb is wanted, such as 'plan' or 'look'."});
  const std::string_view first = words[0];
  const bool asks_help = first == "--help" || first == "-h";
  Reading reading;
  Command& command = reading.command;
  command.verb = find_verb(asks_help ? "help" : first == "--version" ? "version" : first);
  if (command.verb == nullptr) return std::unexpected(UsageError{unknown_verb(first)});
  bool options_over = false;
  for (std::size_t at = 1; at < words.size();) {
    const std::string_view word = words[at];
    if (!options_over && word == "--") {
      options_over = true, ++at;
    } else if (!options_over && word.size() > 1 && word[0] == '-') {
      at += take_option(reading, words.subspan(at));
    } else {
      command.operands.emplace_back(word), ++at;
    }
  }
  if (!command.wants_help) check_operands(reading);
  if (command.wants_help || reading.wrong.empty()) return std::move(command);
  std::string text;
  for (const std::string& line : reading.wrong) text += (text.empty() ? "" : "\n") + line;
  return std::unexpected(UsageError{std::move(text)});
}

}  // namespace stringcourse::cli
