#pragma once
// What was typed: a verb, its operands and its options. One table (verbs()) feeds the reading, the help and the tests.
#include <expected>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace stringcourse::cli {

/// One option of a verb. `value` names what follows it in the help; empty: a plain switch.
struct OptionSpec {
  std::string_view name;  // "--out"
  std::string_view value;
  std::string_view says;
  bool repeats = false;  // may be given more than once
};

/// One verb with everything that its help shows.
struct VerbSpec {
  std::string_view name;
  std::string_view operands;  // "JOB"; "" for none
  int least_operands = 0, most_operands = 0;
  std::string_view summary;
  std::string_view more;  // a paragraph or two
  std::span<const OptionSpec> options;
  std::string_view examples;  // whole lines, each a command
};
[[nodiscard]] std::span<const VerbSpec> verbs();

/// A command that was understood.
struct Command {
  const VerbSpec* verb = nullptr;
  std::vector<std::string> operands;
  std::vector<std::pair<std::string, std::string>> options;  // as typed, in order
  bool wants_help = false;

  [[nodiscard]] bool has(std::string_view option) const;
  [[nodiscard]] std::optional<std::string> value(std::string_view option) const;
  /// Of an option that may be given more than once.
  [[nodiscard]] std::vector<std::string> values(std::string_view option) const;
};

/// What was not understood, a line for each thing, with the nearest word where one is near.
struct UsageError {
  std::string text;
};

/// "a, b or c".
[[nodiscard]] std::string one_of_words(std::span<const std::string_view> names);

/// The sentence, and "Did you mean ...?" where one of the words is near to what was typed.
[[nodiscard]] std::string with_nearest(std::string text, std::string_view word,
                                       std::span<const std::string_view> known);

/// Reads the words after the program's name. "--option value" and "--option=value" are the same; "--" ends options.
/// All that is wrong comes at once.
[[nodiscard]] std::expected<Command, UsageError> read_arguments(std::span<const std::string_view> words);

}  // namespace stringcourse::cli
