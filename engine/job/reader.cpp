#include "job/reader.hpp"

#include "job/stated.hpp"
#include "measure/notation.hpp"
#include "measure/sorting.hpp"

namespace stringcourse {
namespace {

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
  return range == LengthRange::AnySign || length > Length{} || (range == LengthRange::ZeroOrMore && length == Length{});
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

void JobReader::refuse_here(Code code, Fact reason, Fact remedy) {
  refusals_.add({code, here(), std::move(reason), std::move(remedy)});
}

bool JobReader::read(Type<bool>, Node node, const Bounds&) {
  return expect(node, JsonKind::Truth, fact("type-true-or-false")) && tree_.at(node).whole != 0;
}

int JobReader::read(Type<int>, Node node, const Bounds& bounds) {
  if (!expect(node, JsonKind::Whole, fact("type-whole-number"))) return 0;
  const std::int64_t value = tree_.at(node).whole;
  if (value >= bounds.least && value <= bounds.most) return static_cast<int>(value);
  refuse_here("out-of-range", fact("number-outside", {value, bounds.least, bounds.most}),
              fact("number-from-to", {bounds.least, bounds.most}));
  return 0;
}

std::string JobReader::read(Type<std::string>, Node node, const Bounds& bounds) {
  if (!expect(node, JsonKind::Text, fact("type-a-text"))) return {};
  const std::string_view text = tree_.text(node);
  if (const std::size_t count = count_characters(text); count > bounds.longest_text) {
    refuse_here("too-long", fact("text-long", {FactValue::typed(text), count}),
                fact("text-shorten", {bounds.longest_text}));
    return {};
  }
  if (const std::size_t at = forbidden_character(text, bounds.text); at < text.size()) {
    refuse_here("control-character",
                fact("text-control", {FactValue::typed(text), FactValue::typed(character_at(text, at))}),
                fact(bounds.text == TextRule::Lines ? "text-control-lines" : "text-control-name"));
    return {};
  }
  if (text.empty() && bounds.text == TextRule::Name) {
    refuse_here("empty-text", fact("text-empty"), fact("text-write-one"));
  }
  return std::string(text);
}

Length JobReader::length_from(std::string_view text, const Bounds& bounds) {
  const auto length = read_length(text, tape_);
  if (!length) {
    refuse_here("not-a-length", length.error().reason, length.error().remedy);
    return {};
  }
  if (within(*length, bounds.lengths)) return *length;
  const bool zero_is_lawful = bounds.lengths == LengthRange::ZeroOrMore;
  refuse_here("out-of-range",
              fact(zero_is_lawful ? "length-below-zero" : "length-not-above-zero", {FactValue::typed(text)}),
              fact(zero_is_lawful ? "length-zero-or-more" : "length-above-zero"));
  return {};
}

Length JobReader::read(Type<Length>, Node node, const Bounds& bounds) {
  return expect_length(node) ? length_from(tree_.text(node), bounds) : Length{};
}

StatedLength JobReader::read(Type<StatedLength>, Node node, const Bounds& bounds) {
  if (!expect_length(node)) return {};
  const TypedLength typed = typed_length(tree_.text(node));
  return {length_from(typed.text, bounds), typed.basis};
}

bool JobReader::expect(Node node, JsonKind kind, Fact wanted) {
  if (tree_.kind(node) == kind) return true;
  refuse_type(node, std::move(wanted));
  return false;
}

void JobReader::refuse_type(Node node, Fact wanted) {
  const bool absent = tree_.kind(node) == JsonKind::Null;
  refuse_here("wrong-type", fact("type-wrong", {described(node), wanted}),
              absent ? fact("type-write-or-leave") : fact("type-write", {wanted}));
}

bool JobReader::expect_length(Node node) {
  const JsonKind kind = tree_.kind(node);
  if (kind != JsonKind::Text) {
    const bool number = kind == JsonKind::Whole || kind == JsonKind::OtherNumber;
    refuse_here("wrong-type", fact("type-wrong", {described(node), fact("type-a-length")}),
                fact(number ? "type-length-as-text" : "type-length-a-text", {length_example()}));
    return false;
  }
  const std::size_t count = count_characters(tree_.text(node));
  if (count <= static_cast<std::size_t>(kLongestLengthText)) return true;
  refuse_here("too-long", fact("length-text-long", {FactValue::typed(tree_.text(node)), count}),
              fact("length-text-shorten", {kLongestLengthText, length_example()}));
  return false;
}

std::string JobReader::length_example() const { return tape_ == Tape::Inches ? R"("24'-0\"")" : R"("7315 mm")"; }

bool JobReader::count_fits(Node node, const Bounds& bounds) {
  const std::size_t count = tree_.at(node).count;
  if (count <= bounds.most_entries) return true;
  refuse_here("too-many", fact("list-long", {count, bounds.most_entries}), fact("list-shorten"));
  return false;
}

Fact JobReader::described(Node node) const {
  const JsonNode& value = tree_.at(node);
  switch (value.kind) {
    case JsonKind::Null: return fact("type-word", {"null"});
    case JsonKind::Truth: return fact("type-word", {value.whole != 0 ? "true" : "false"});
    case JsonKind::Whole: return fact("type-the-number", {value.whole});
    case JsonKind::OtherNumber: return fact("type-the-number", {FactValue::typed(tree_.text(node))});
    case JsonKind::Text: return fact("type-the-text", {FactValue::typed(tree_.text(node))});
    case JsonKind::List: return fact("type-list", {value.count});
    case JsonKind::Object: return fact("type-object", {value.count});
  }
  return {};
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
  if (full()) return refusals_.count_unshown();  // a guess for each of a million strangers would take minutes
  const Step step(path_, key);
  const std::string_view near = nearest_name(key, known);
  refuse_here(
      "unknown-field", fact("field-unknown", {FactValue::typed(key)}),
      near.empty() ? fact("field-take-out", {listed(FactValue::Kind::Or, known)}) : fact("field-meant", {near}));
}

void JobReader::refuse_duplicates(std::vector<std::string_view> keys) {
  sort_stably(keys);
  for (std::size_t k = 1; k < keys.size(); ++k) {
    const bool first_repeat = keys[k] == keys[k - 1] && (k == 1 || keys[k] != keys[k - 2]);
    if (!first_repeat) continue;
    const Step step(path_, keys[k]);
    refuse_here("duplicate-field", fact("field-twice", {FactValue::typed(keys[k])}), fact("field-keep-one"));
  }
}

void JobReader::refuse_missing(std::string_view name, std::string_view description) {
  const Step step(path_, name);
  refuse_here("missing-field", fact("field-missing", {FactValue::typed(name)}), fact("field-add", {description}));
}

void JobReader::refuse_name(Node node, std::span<const std::string_view> known) {
  const std::string_view near = nearest_name(tree_.text(node), known);
  refuse_here("unknown-name", fact("name-unknown", {FactValue::typed(tree_.text(node))}),
              near.empty() ? fact("name-write", {listed(FactValue::Kind::Or, known)}) : fact("name-meant", {near}));
}

void JobReader::refuse_choice(std::size_t present, std::span<const std::string_view> names) {
  refuse_here("choose-one",
              present == 0 ? fact("choice-none", {listed(FactValue::Kind::Or, names)})
                           : fact("choice-several", {present, listed(FactValue::Kind::Or, names)}),
              fact("choice-one", {listed(FactValue::Kind::Or, names)}));
}

void JobReader::refuse_order(ListOrder order) {
  const bool rising = order == ListOrder::Rising;
  refuse_here("list-order", fact(rising ? "list-not-rising" : "list-doubled"),
              fact(rising ? "list-rise" : "list-once"));
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
