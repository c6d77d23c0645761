#include "job/reader.hpp"

#include "measure/notation.hpp"
#include "measure/sorting.hpp"

namespace stringcourse {
namespace {

std::string_view trimmed_end(std::string_view text) {
  while (!text.empty() && (text.back() == ' ' || text.back() == '\t')) text.remove_suffix(1);
  return text;
}

/// First character that may not stand in such a text, or the text's size.
std::size_t forbidden_character(std::string_view text, TextRule rule) {
  for (std::size_t offset = 0; offset < text.size(); offset += character_at(text, offset).size()) {
    const char c = text[offset];
    const bool line_mark = rule == TextRule::Lines && (c == '\n' || c == '\r' || c == '\t');
    if (!line_mark && is_control(code_point(character_at(text, offset)))) return offset;
  }
  return text.size();
}

bool within(Length length, LengthRange range) {
  return range == LengthRange::AnySign || length > Length{} ||
         (range == LengthRange::ZeroOrMore && length == Length{});
}

}  // namespace

[[gnu::noinline]] JobReader::Step::Step(std::string& path, std::string_view key) : path_(path), size_(path.size()) {
  path_ += '/';
  path_ += pointer_token(key);
}

[[gnu::noinline]] JobReader::Step::~Step() { path_.resize(size_); }

[[gnu::noinline]] void JobReader::read_field(Node node, const AnyField& field, ReadInto read, void* into) {
  const Node child = tree_.member(node, field.name);
  if (child == JsonTree::kNoNode) {
    if (field.need == Need::Required) refuse_missing(field.name, field.description);
    return;
  }
  const Step step(path_, field.name);
  read(*this, child, field.bounds, into);
}

void JobReader::refuse_here(std::string_view code, std::string reason, std::string remedy) {
  refusals_.add({std::string(code), here(), std::move(reason), std::move(remedy)});
}

bool JobReader::read(Type<bool>, Node node, const Bounds&) {
  return expect(node, JsonKind::Truth, "true or false") && tree_.at(node).whole != 0;
}

int JobReader::read(Type<int>, Node node, const Bounds& bounds) {
  if (!expect(node, JsonKind::Whole, "a whole number")) return 0;
  const std::int64_t value = tree_.at(node).whole;
  if (value >= bounds.least && value <= bounds.most) return static_cast<int>(value);
  const std::string range = number_text(bounds.least) + " to " + number_text(bounds.most);
  refuse_here(code::kOutOfRange, "The number " + number_text(value) + " is outside " + range + ".",
              "Write a whole number from " + range + ".");
  return 0;
}

std::string JobReader::read(Type<std::string>, Node node, const Bounds& bounds) {
  if (!expect(node, JsonKind::Text, "a text")) return {};
  const std::string_view text = tree_.text(node);
  if (const std::size_t count = count_characters(text); count > bounds.longest_text) {
    refuse_here(code::kTooLong, "The text " + quoted(text) + " has " + number_text(count) + " characters.",
                "Shorten it to at most " + number_text(bounds.longest_text) + " characters.");
    return {};
  }
  if (const std::size_t at = forbidden_character(text, bounds.text); at < text.size()) {
    refuse_here(code::kControlCharacter,
                "The text " + quoted(text) + " holds the control character " + quoted(character_at(text, at)) + ".",
                bounds.text == TextRule::Lines ? "Take it out; line breaks and tabs may stand here, no others."
                                               : "Take it out; a name stands on one line.");
    return {};
  }
  if (text.empty() && bounds.text == TextRule::Name) {
    refuse_here(code::kEmptyText, "The text \"\" is empty, where a name must stand.", "Write at least one character.");
  }
  return std::string(text);
}

Length JobReader::length_from(std::string_view text, const Bounds& bounds) {
  const auto length = read_length(text, tape_);
  if (!length) {
    refuse_here(code::kNotALength, length.error().reason, length.error().remedy);
    return {};
  }
  if (within(*length, bounds.lengths)) return *length;
  const bool zero_is_lawful = bounds.lengths == LengthRange::ZeroOrMore;
  refuse_here(code::kOutOfRange,
              "The length " + quoted(text) + (zero_is_lawful ? " is below zero." : " is not above zero."),
              zero_is_lawful ? "Write a length of zero or more." : "Write a length greater than zero.");
  return {};
}

Length JobReader::read(Type<Length>, Node node, const Bounds& bounds) {
  return expect_length(node) ? length_from(tree_.text(node), bounds) : Length{};
}

StatedLength JobReader::read(Type<StatedLength>, Node node, const Bounds& bounds) {
  if (!expect_length(node)) return {};
  constexpr std::string_view kActual = "actual";
  std::string_view text = trimmed_end(tree_.text(node));
  const bool says_actual = text.size() > kActual.size() && text.ends_with(kActual);
  if (says_actual) text.remove_suffix(kActual.size());
  if (!says_actual || trimmed_end(text).size() == text.size()) return {length_from(tree_.text(node), bounds)};
  return {length_from(trimmed_end(text), bounds), Basis::Actual};
}

bool JobReader::expect(Node node, JsonKind kind, std::string_view wanted) {
  if (tree_.kind(node) == kind) return true;
  refuse_type(node, wanted);
  return false;
}

void JobReader::refuse_type(Node node, std::string_view wanted) {
  const bool absent = tree_.kind(node) == JsonKind::Null;
  refuse_here(code::kWrongType, "Here stands " + described(node) + "; what belongs here is " + std::string(wanted) + ".",
              absent ? "Write it, or leave the field out if it may be absent." : "Write " + std::string(wanted) + ".");
}

bool JobReader::expect_length(Node node) {
  const JsonKind kind = tree_.kind(node);
  if (kind != JsonKind::Text) {
    const bool number = kind == JsonKind::Whole || kind == JsonKind::OtherNumber;
    refuse_here(code::kWrongType, "Here stands " + described(node) + "; what belongs here is a length.",
                (number ? "Write a length as a text: " : "Write a length, a text: ") + length_example() + ".");
    return false;
  }
  const std::size_t count = count_characters(tree_.text(node));
  if (count <= static_cast<std::size_t>(kLongestLengthText)) return true;
  refuse_here(code::kTooLong,
              "The length " + quoted(tree_.text(node)) + " has " + number_text(count) + " characters.",
              "Write it in at most " + number_text(kLongestLengthText) + ", as " + length_example() + ".");
  return false;
}

std::string JobReader::length_example() const {
  return tape_ == Tape::Inches ? R"("24'-0\"")" : R"("7315 mm")";
}

bool JobReader::count_fits(Node node, const Bounds& bounds) {
  const std::size_t count = tree_.at(node).count;
  if (count <= bounds.most_entries) return true;
  refuse_here(code::kTooMany,
              "The list has " + number_text(count) + " entries; at most " + number_text(bounds.most_entries) +
                  " are read.",
              "Shorten the list, or split the job into smaller ones.");
  return false;
}

std::string JobReader::described(Node node) const {
  const JsonNode& value = tree_.at(node);
  switch (value.kind) {
    case JsonKind::Null: return "null";
    case JsonKind::Truth: return value.whole != 0 ? "true" : "false";
    case JsonKind::Whole: return "the number " + number_text(value.whole);
    case JsonKind::OtherNumber: return "the number " + quoted(tree_.text(node));
    case JsonKind::Text: return "the text " + quoted(tree_.text(node));
    case JsonKind::List: return "a list with " + number_text(value.count) + (value.count == 1 ? " entry" : " entries");
    case JsonKind::Object: return "an object with " + number_text(value.count) + " fields";
  }
  return "nothing";
}

void JobReader::refuse_strangers(Node node, std::span<const std::string_view> known) {
  std::vector<std::string_view> keys;
  for (Node child = tree_.first_child(node); child != JsonTree::kNoNode; child = tree_.next(child)) {
    const std::string_view key = tree_.key(child);
    keys.push_back(key);
    if (std::ranges::find(known, key) == known.end()) refuse_stranger(key, known);
  }
  refuse_duplicates(std::move(keys));
}

void JobReader::refuse_stranger(std::string_view key, std::span<const std::string_view> known) {
  if (full()) return refusals_.add({});  // only counted; a guess for each of a million strangers would take minutes
  const Step step(path_, key);
  const std::string_view near = nearest_name(key, known);
  refuse_here(code::kUnknownField, "There is no field " + quoted(key) + " here.",
              near.empty() ? "Take it out; the fields here are " + one_of_words(known) + "."
                           : "Did you mean \"" + std::string(near) + "\"? Otherwise take it out.");
}

void JobReader::refuse_duplicates(std::vector<std::string_view> keys) {
  sort_stably(keys);
  for (std::size_t k = 1; k < keys.size(); ++k) {
    const bool first_repeat = keys[k] == keys[k - 1] && (k == 1 || keys[k] != keys[k - 2]);
    if (!first_repeat) continue;
    const Step step(path_, keys[k]);
    refuse_here(code::kDuplicateField, "The field " + quoted(keys[k]) + " stands here more than once.",
                "Keep one of them and take the others out.");
  }
}

void JobReader::refuse_missing(std::string_view name, std::string_view description) {
  const Step step(path_, name);
  refuse_here(code::kMissingField, "The field " + quoted(name) + " is missing.",
              "Add it: " + std::string(description));
}

void JobReader::refuse_name(Node node, std::span<const std::string_view> known) {
  const std::string_view near = nearest_name(tree_.text(node), known);
  refuse_here(code::kUnknownName, "The name " + quoted(tree_.text(node)) + " is none of those that can stand here.",
              near.empty() ? "Write " + one_of_words(known) + "." : "Did you mean \"" + std::string(near) + "\"?");
}

void JobReader::refuse_choice(std::size_t present, std::span<const std::string_view> names) {
  refuse_here(code::kChooseOne,
              (present == 0 ? "None" : number_text(present)) + " of the fields " + one_of_words(names) +
                  " stand here.",
              "Write one of " + one_of_words(names) + ", and only one.");
}

void JobReader::refuse_order(ListOrder order) {
  const bool rising = order == ListOrder::Rising;
  refuse_here(code::kListOrder, rising ? "The entries of this list do not rise." : "An entry of this list stands twice.",
              rising ? "Put them in rising order, each once." : "Write every entry once.");
}

void JobReader::refuse_misfits(const Misfits& misfits) {
  for (const Refusal& misfit : misfits) {
    refusals_.add({misfit.code, path_ + misfit.place, misfit.reason, misfit.remedy});
  }
}

std::size_t JobReader::count_present(Node node, std::span<const std::string_view> names) const {
  return static_cast<std::size_t>(std::ranges::count_if(
      names, [&](std::string_view name) { return tree_.member(node, name) != JsonTree::kNoNode; }));
}

}  // namespace stringcourse
