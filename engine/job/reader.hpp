#pragma once
// The reader that walks the field tables over a parsed document. Internal to job/; the way in is read_job.
#include <algorithm>
#include <array>
#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <vector>

#include "job/checks.hpp"
#include "job/enum_names.hpp"
#include "job/field_table.hpp"
#include "job/json_tree.hpp"
#include "job/tables.hpp"
#include "job/trouble.hpp"
#include "job/words.hpp"
#include "measure/sorting.hpp"

namespace stringcourse {

/// Reads values of one document and gathers what is wrong with them. A value that is refused reads as its default, and
/// the reading goes on. The path of the value being read is kept as a JSON pointer.
class JobReader {
 public:
  using Node = JsonTree::Node;
  JobReader(const JsonTree& tree, Tape tape) : tree_(tree), tape_(tape) {}

  /// The whole job; then see refusals().
  Job read_document() { return read(Type<Job>{}, 0, {}); }
  void refuse(Refusal refusal) { refusals_.add(std::move(refusal)); }
  const Refusals& refusals() const { return refusals_; }

 private:
  // Scalars (reader.cpp).
  bool read(Type<bool>, Node node, const Bounds& bounds);
  int read(Type<int>, Node node, const Bounds& bounds);
  std::string read(Type<std::string>, Node node, const Bounds& bounds);
  Length read(Type<Length>, Node node, const Bounds& bounds);
  StatedLength read(Type<StatedLength>, Node node, const Bounds& bounds);

  template <class Enum>
    requires std::is_enum_v<Enum>
  Enum read(Type<Enum>, Node node, const Bounds&) {
    static const auto names = enum_names<Enum>();
    if (tree_.kind(node) != JsonKind::Text) {
      refuse_type(node, fact("type-a-name", {listed(FactValue::Kind::Or, names)}));
      return Enum{};
    }
    const std::optional<Enum> value = enum_from_name<Enum>(tree_.text(node));
    if (!value) refuse_name(node, names);
    return value.value_or(Enum{});
  }

  template <class Value>
  std::optional<Value> read(Type<std::optional<Value>>, Node node, const Bounds& bounds) {
    return read(Type<Value>{}, node, bounds);
  }

  template <class Entry>
  std::vector<Entry> read(Type<std::vector<Entry>>, Node node, const Bounds& bounds) {
    std::vector<Entry> entries;
    if (!expect(node, JsonKind::List, fact("type-a-list")) || !count_fits(node, bounds)) return entries;
    entries.reserve(tree_.at(node).count);
    const std::size_t before = refusals_so_far();
    for (Node child = tree_.first_child(node); child != JsonTree::kNoNode; child = tree_.next(child)) {
      const Step step(path_, number_text(entries.size()));
      entries.push_back(read(Type<Entry>{}, child, bounds));
    }
    if constexpr (requires(const Entry& entry) { entry < entry; }) {
      if (refusals_so_far() == before) check_order(entries, bounds.order);
    }
    return entries;
  }

  template <HasTable Struct>
  Struct read(Type<Struct>, Node node, const Bounds&) {
    Struct value{};
    if (!expect(node, JsonKind::Object, fact("type-an-object"))) return value;
    const std::size_t before = refusals_so_far();
    refuse_strangers(node, field_names<Struct>());
    for_each_field<Struct>([&]<class Owner, class Member>(const Field<Owner, Member>& field) {
      read_field(node, {field.name, field.need, field.description, field.bounds}, &read_into<Member>,
                 &(value.*field.member));
    });
    check_choices<Struct>(node);
    if (refusals_so_far() == before) refuse_misfits(misfits_of(value, tape_));
    return value;
  }

  /// A field without its type: one piece of code reads all fields of one type, which keeps the page's module small.
  struct AnyField {
    std::string_view name;
    Need need;
    std::string_view description;
    const Bounds& bounds;
  };
  using ReadInto = void (*)(JobReader& reader, Node node, const Bounds& bounds, void* into);
  template <class Member>
  [[gnu::noinline]] static void read_into(JobReader& reader, Node node, const Bounds& bounds, void* into) {
    *static_cast<Member*>(into) = reader.read(Type<Member>{}, node, bounds);
  }
  void read_field(Node node, const AnyField& field, ReadInto read, void* into);

  template <HasTable Struct>
  void check_choices(Node node) {
    if constexpr (requires { Table<Struct>::exactly_one; }) {
      const std::size_t present = count_present(node, Table<Struct>::exactly_one);
      if (present != 1) refuse_choice(present, Table<Struct>::exactly_one);
    }
    if constexpr (requires { Table<Struct>::at_most_one; }) {
      const std::size_t present = count_present(node, Table<Struct>::at_most_one);
      if (present > 1) refuse_choice(present, Table<Struct>::at_most_one);
    }
  }

  template <HasTable Struct>
  static constexpr auto field_names() {
    return std::apply([](const auto&... fields) { return std::array{fields.name...}; }, Table<Struct>::fields);
  }

  template <class Enum>
  static std::array<std::string_view, enum_count<Enum>()> enum_names() {
    std::array<std::string_view, enum_count<Enum>()> names;
    for (std::size_t index = 0; index < names.size(); ++index) names[index] = enum_name(static_cast<Enum>(index));
    return names;
  }

  template <class Entry>
  void check_order(const std::vector<Entry>& entries, ListOrder order) {
    if (order == ListOrder::Any) return;
    std::vector<Entry> sorted = entries;
    if (order == ListOrder::Distinct) sort_stably(sorted);
    const auto slack = std::ranges::adjacent_find(sorted, [](const Entry& a, const Entry& b) { return !(a < b); });
    if (slack != sorted.end()) refuse_order(order);
  }

  /// Goes one step down the path for as long as it lives.
  class Step {
   public:
    Step(std::string& path, std::string_view key);
    ~Step();
    Step(const Step&) = delete;
    Step& operator=(const Step&) = delete;

   private:
    std::string& path_;
    std::size_t size_;
  };

  std::size_t refusals_so_far() const { return refusals_.shown.size() + refusals_.beyond; }
  std::string here() const { return path_.empty() ? "/" : path_; }
  void refuse_here(Code code, Fact reason, Fact remedy);
  bool full() const { return refusals_.shown.size() >= kShownRefusals; }
  bool expect(Node node, JsonKind kind, Fact wanted);
  void refuse_type(Node node, Fact wanted);
  bool expect_length(Node node);
  bool count_fits(Node node, const Bounds& bounds);
  Fact described(Node node) const;
  std::string length_example() const;
  Length length_from(std::string_view text, const Bounds& bounds);
  void refuse_strangers(Node node, std::span<const std::string_view> known);
  void refuse_stranger(std::string_view key, std::span<const std::string_view> known);
  void refuse_duplicates(std::vector<std::string_view> keys);
  void refuse_missing(std::string_view name, std::string_view description);
  void refuse_name(Node node, std::span<const std::string_view> known);
  void refuse_choice(std::size_t present, std::span<const std::string_view> names);
  void refuse_order(ListOrder order);
  void refuse_misfits(const Misfits& misfits);
  std::size_t count_present(Node node, std::span<const std::string_view> names) const;

  const JsonTree& tree_;
  Tape tape_;
  std::string path_;
  Refusals refusals_;
};

}  // namespace stringcourse
