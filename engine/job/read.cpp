#include "job/read.hpp"

#include <cstdint>
#include <optional>
#include <utility>

#include "job/enum_names.hpp"
#include "job/json_tree.hpp"
#include "job/migrate.hpp"
#include "job/reader.hpp"
#include "job/words.hpp"

namespace stringcourse {

std::span<const Migration> migrations() { return {}; }

namespace {

Refusals only(Refusal refusal) {
  Refusals refusals;
  refusals.add(std::move(refusal));
  return refusals;
}

/// The document's version, if it says one.
std::optional<std::int64_t> version_of(const JsonTree& tree) {
  const JsonTree::Node node = tree.member(0, "stringcourse");
  if (node == JsonTree::kNoNode || tree.kind(node) != JsonKind::Whole) return std::nullopt;
  return tree.at(node).whole;
}

/// Lengths are read with the job's tape, wherever in the document it stands. A missing or broken one is refused by the
/// field table; the other lengths are then read as if it were inches.
Tape tape_of(const JsonTree& tree) {
  const JsonTree::Node node = tree.member(0, "tape");
  if (node == JsonTree::kNoNode || tree.kind(node) != JsonKind::Text) return Tape::Inches;
  return enum_from_name<Tape>(tree.text(node)).value_or(Tape::Inches);
}

Refusal newer_version(std::int64_t version) {
  return {"newer-version", "/stringcourse", fact("document-newer", {version, kJobVersion}),
          fact("document-open-newer")};
}

JsonTree lifted(JsonTree tree, std::int64_t version) {
  for (const Migration& migration : migrations()) {
    if (migration.from >= version) tree = migration.lift(tree);
  }
  return tree;
}

}  // namespace

std::expected<Job, Refusals> read_job(std::string_view text) {
  auto parsed = parse_json(text);
  if (!parsed) return std::unexpected(only(parsed.error()));
  const std::int64_t version = version_of(*parsed).value_or(kJobVersion);
  if (version > kJobVersion) return std::unexpected(only(newer_version(version)));
  const JsonTree tree = lifted(std::move(*parsed), version);
  JobReader reader(tree, tape_of(tree));
  Job job = reader.read_document();
  for (Refusal& refusal : shared_names(job)) reader.refuse(std::move(refusal));
  if (!reader.refusals().empty()) {
    Refusals refusals = reader.refusals();
    refusals.tape = tape_of(tree);
    return std::unexpected(std::move(refusals));
  }
  return job;
}

}  // namespace stringcourse
