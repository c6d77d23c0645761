#include "cli/arguments.hpp"

#include <algorithm>

namespace stringcourse::cli {

namespace {

// Letters to change to make `a` from `b`: left out, put in, wrong, or swapped with the neighbour.
std::size_t edit_distance(std::string_view a, std::string_view b) {
  std::vector<std::vector<std::size_t>> rows(a.size() + 1, std::vector<std::size_t>(b.size() + 1));
  for (std::size_t i = 0; i <= a.size(); ++i) rows[i][0] = i;
  for (std::size_t j = 0; j <= b.size(); ++j) rows[0][j] = j;
  for (std::size_t i = 1; i <= a.size(); ++i) {
    for (std::size_t j = 1; j <= b.size(); ++j) {
      const std::size_t wrong = rows[i - 1][j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
      rows[i][j] = std::min({rows[i - 1][j] + 1, rows[i][j - 1] + 1, wrong});
      const bool swapped = i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1];
      if (swapped) rows[i][j] = std::min(rows[i][j], rows[i - 2][j - 2] + 1);
    }
  }
  return rows[a.size()][b.size()];
}

std::string quoted(std::string_view word) { return "'" + std::string(word.substr(0, 60)) + "'"; }

UsageError with_nearest(std::string text, std::string_view word, std::span<const std::string_view> candidates) {
  if (const auto nearest = nearest_word(word, candidates)) text += " Did you mean " + quoted(*nearest) + "?";
  return {std::move(text)};
}

UsageError unknown_verb(std::string_view word) {
  std::vector<std::string_view> names;
  for (const VerbSpec& verb : verbs()) names.push_back(verb.name);
  return with_nearest("There is no verb " + quoted(word) + ".", word, names);
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

std::optional<std::string_view> nearest_word(std::string_view word, std::span<const std::string_view> candidates) {
  if (word.size() > 40) return std::nullopt;
  std::optional<std::string_view> best;
  std::size_t least = 0;
  for (const std::string_view candidate : candidates) {
    const std::size_t distance = edit_distance(word, candidate);
    if (distance > 1 + std::min(word.size(), candidate.size()) / 4) continue;
    if (!best || distance < least) best = candidate, least = distance;
  }
  return best;
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
