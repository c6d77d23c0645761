#include "cli/arguments.hpp"

#include <algorithm>

#include "job/words.hpp"

namespace stringcourse::cli {

namespace {

// Plain marks for our own words; what was typed is quoted safely.
std::string marked(std::string_view word) { return "'" + std::string(word) + "'"; }

UsageError with_nearest(std::string text, std::string_view word, std::span<const std::string_view> candidates) {
  const std::string_view nearest = nearest_name(word, candidates);
  if (!nearest.empty()) text += " Did you mean " + marked(nearest) + "?";
  return {std::move(text)};
}

UsageError unknown_verb(std::string_view word) {
  std::vector<std::string_view> names;
  for (const VerbSpec& verb : verbs()) names.push_back(verb.name);
  return with_nearest("There is no verb " + quoted(word) + " (verbs: " + one_of_words(names) + ").", word, names);
}

UsageError unknown_option(const VerbSpec& verb, std::string_view word) {
  std::vector<std::string_view> names;
  for (const OptionSpec& option : verb.options) names.push_back(option.name);
  return with_nearest("'" + std::string(verb.name) + "' has no option " + quoted(word) + ".", word, names);
}

const VerbSpec* find_verb(std::string_view name) {
  const auto found = std::ranges::find(verbs(), name, &VerbSpec::name);
  return found == verbs().end() ? nullptr : &*found;
}

// Takes one option and, where it wants one, its value; gives how many words it took.
std::expected<std::size_t, UsageError> take_option(Command& command, std::span<const std::string_view> rest) {
  const std::string_view word = rest[0];
  const std::size_t equals = word.find('=');
  const std::string_view name = word.substr(0, equals);
  if (name == "--help" || name == "-h") return command.wants_help = true, 1;
  const auto spec = std::ranges::find(command.verb->options, name, &OptionSpec::name);
  if (spec == command.verb->options.end()) return std::unexpected(unknown_option(*command.verb, name));
  if (command.has(name)) return std::unexpected(UsageError{std::string(name) + " is given twice."});
  const bool inline_value = equals != std::string_view::npos;
  if (spec->value.empty()) {
    if (inline_value) return std::unexpected(UsageError{std::string(name) + " takes no value."});
    command.options.emplace_back(name, "");
    return 1;
  }
  if (!inline_value && rest.size() < 2) {
    return std::unexpected(UsageError{std::string(name) + " wants a value: " + std::string(spec->value) + "."});
  }
  command.options.emplace_back(name, inline_value ? word.substr(equals + 1) : rest[1]);
  return inline_value ? 1 : 2;
}

std::expected<void, UsageError> check_operands(const Command& command) {
  const auto count = static_cast<int>(command.operands.size());
  const std::string name = "'" + std::string(command.verb->name) + "'";
  if (count < command.verb->least_operands) {
    return std::unexpected(UsageError{name + " wants " + std::string(command.verb->operands) + "."});
  }
  if (count > command.verb->most_operands) {
    return std::unexpected(UsageError{name + " does not know what to do with " +
                                      quoted(command.operands[static_cast<std::size_t>(command.verb->most_operands)]) + "."});
  }
  return {};
}

}  // namespace

bool Command::has(std::string_view option) const { return value(option).has_value(); }

std::optional<std::string> Command::value(std::string_view option) const {
  const auto found = std::ranges::find(options, option, &std::pair<std::string, std::string>::first);
  if (found == options.end()) return std::nullopt;
  return found->second;
}

std::expected<Command, UsageError> read_arguments(std::span<const std::string_view> words) {
  Command command;
  if (words.empty()) return std::unexpected(UsageError{"A verb is wanted, such as 'plan' or 'look'."});
  const std::string_view first = words[0];
  const bool asks_help = first == "--help" || first == "-h";
  command.verb = find_verb(asks_help ? "help" : first == "--version" ? "version" : first);
  if (command.verb == nullptr) return std::unexpected(unknown_verb(first));
  bool options_over = false;
  for (std::size_t at = 1; at < words.size();) {
    const std::string_view word = words[at];
    if (!options_over && word == "--") {
      options_over = true, ++at;
    } else if (!options_over && word.size() > 1 && word[0] == '-') {
      const auto taken = take_option(command, words.subspan(at));
      if (!taken) return std::unexpected(taken.error());
      at += *taken;
    } else {
      command.operands.emplace_back(word), ++at;
    }
  }
  if (command.wants_help) return command;
  if (const auto checked = check_operands(command); !checked) return std::unexpected(checked.error());
  return command;
}

}  // namespace stringcourse::cli
