// JSON Schema 2020-12 of the documents, from their field tables.
#include <array>
#include <set>
#include <span>
#include <type_traits>

#include "document/answer_json.hpp"
#include "document/put.hpp"
#include "document/shown_answer.hpp"
#include "document/shown_refusals.hpp"
#include "job/json_text.hpp"

namespace stringcourse {
namespace {

using namespace document;

template <class Value>
struct EntryOf {
  using Type = void;
};
template <std::ranges::range List>
  requires(!std::convertible_to<List, std::string_view>)
struct EntryOf<List> {
  using Type = std::remove_cvref_t<std::ranges::range_value_t<List>>;
};
template <class Value>
struct LengthOfArray : std::integral_constant<std::size_t, 0> {};
template <class Value, std::size_t Count>
struct LengthOfArray<std::array<Value, Count>> : std::integral_constant<std::size_t, Count> {};

/// Walks the tables from one thing and writes what may stand in its document. Every thing on the way has a definition.
class SchemaOf {
 public:
  template <HasShown Of>
  std::string document(std::string_view title) && {
    json_.open_object();
    json_.text_member("$schema", "https://json-schema.org/draft/2020-12/schema");
    json_.text_member("title", title);
    thing<Of>();
    json_.key("$defs");
    json_.open_object();
    length_definition("length", "A length.", "exact, in the job's tape", "the same, whole nanometres");
    length_definition("found_length", "A value worked out of readings.", "rounded once, in the job's tape",
                      "not rounded to the tape");
    choice_definition<UnitKind>("kind");
    define_parts<Of>();
    json_.close_object();
    json_.close_object();
    return std::move(json_).finish();
  }

 private:
  template <HasShown Of>
  static constexpr bool is_list() {
    return requires { Shown<Of>::is_list; };
  }

  template <HasShown Of>
  void thing() {
    json_.text_member("description", Shown<Of>::description);
    if constexpr (is_list<Of>()) return list_of_fields<Of>();
    json_.text_member("type", "object");
    json_.key("additionalProperties");
    json_.truth(false);
    json_.key("required");
    json_.open_list();
    for_each_shown<Of>([&](const auto& field) {
      if (!is_optional<Of>(field)) json_.text(field.name);
    });
    json_.close_list();
    json_.key("properties");
    json_.open_object();
    for_each_shown<Of>([&](const auto& field) {
      json_.key(field.name);
      property<Of>(field);
    });
    json_.close_object();
  }

  template <HasShown Of>
  void list_of_fields() {
    json_.text_member("type", "array");
    std::int64_t least = 0;
    json_.key("prefixItems");
    json_.open_list();
    for_each_shown<Of>([&](const auto& field) {
      if (!is_optional<Of>(field)) ++least;
      property<Of>(field);
    });
    json_.close_list();
    json_.whole_member("minItems", least);
    json_.key("items");
    json_.truth(false);
  }

  template <class Of, class Read>
  static constexpr bool is_optional(const ShownField<Read>&) {
    return OptionalOf<ValueOf<Of, Read>>::value;
  }

  template <class Of, class Read>
  void property(const ShownField<Read>& field) {
    json_.open_object();
    if (!field.description.empty()) json_.text_member("description", field.description);
    keywords<typename OptionalOf<ValueOf<Of, Read>>::Type>();
    json_.close_object();
  }

  void refer(std::string_view name) { json_.text_member("$ref", "#/$defs/" + std::string(name)); }

  template <class Value>
  void keywords() {
    if constexpr (std::is_same_v<Value, bool>) json_.text_member("type", "boolean");
    else if constexpr (std::is_integral_v<Value> || std::is_same_v<Value, Nanometres>)
      json_.text_member("type", "integer");
    else if constexpr (std::is_same_v<Value, Length>) refer("length");
    else if constexpr (std::is_same_v<Value, Rounded>) refer("found_length");
    else if constexpr (std::is_same_v<Value, Verbatim>) json_.text_member("type", "object");
    else if constexpr (std::is_same_v<Value, PlanPoint>) tuple<std::int64_t>(2, "[east, north], whole nanometres");
    else if constexpr (std::is_same_v<Value, UnitKind>) refer("kind");
    else if constexpr (std::is_enum_v<Value>) choice<Value>();
    else if constexpr (HasShown<Value>) refer(Shown<Value>::name);
    else if constexpr (std::is_convertible_v<Value, std::string_view> || std::is_same_v<Value, Fact>)
      json_.text_member("type", "string");
    else list<Value>();
  }

  template <class List>
  void list() {
    using Entry = typename EntryOf<List>::Type;
    if constexpr (LengthOfArray<List>::value > 0) return tuple<Entry>(LengthOfArray<List>::value, {});
    json_.text_member("type", "array");
    json_.key("items");
    json_.open_object();
    keywords<Entry>();
    json_.close_object();
  }

  template <class Entry>
  void tuple(std::size_t count, std::string_view description) {
    if (!description.empty()) json_.text_member("description", description);
    json_.text_member("type", "array");
    json_.key("prefixItems");
    json_.open_list();
    for (std::size_t k = 0; k < count; ++k) {
      json_.open_object();
      keywords<Entry>();
      json_.close_object();
    }
    json_.close_list();
    json_.whole_member("minItems", static_cast<std::int64_t>(count));
    json_.key("items");
    json_.truth(false);
  }

  template <class Enum>
  void choice() {
    json_.key("enum");
    json_.open_list();
    if constexpr (std::is_same_v<Enum, UnitKind>) {
      for (std::size_t k = 0; k < kKindCount; ++k) json_.text(enum_name(static_cast<UnitKind>(k)));
    } else {
      for (const std::string_view word : kEnumNames<Enum>) json_.text(word);
    }
    json_.close_list();
  }
  template <class Enum>
  void choice_definition(std::string_view name) {
    json_.key(name);
    json_.open_object();
    choice<Enum>();
    json_.close_object();
  }

  void length_definition(std::string_view name, std::string_view description, std::string_view text,
                         std::string_view nm) {
    json_.key(name);
    json_.open_object();
    json_.text_member("description", description);
    json_.text_member("type", "object");
    json_.key("additionalProperties");
    json_.truth(false);
    json_.key("required");
    json_.open_list();
    json_.text("text"), json_.text("nm");
    json_.close_list();
    json_.key("properties");
    json_.open_object();
    json_.key("text");
    json_.open_object();
    json_.text_member("description", text), json_.text_member("type", "string");
    json_.close_object();
    json_.key("nm");
    json_.open_object();
    json_.text_member("description", nm), json_.text_member("type", "integer");
    json_.close_object();
    json_.close_object();
    json_.close_object();
  }

  /// Every thing that a thing's fields are made of, each once.
  template <HasShown Of>
  void define_parts() {
    for_each_shown<Of>(
        [&]<class Read>(const ShownField<Read>&) { define_within<typename OptionalOf<ValueOf<Of, Read>>::Type>(); });
  }
  template <class Value>
  void define_within() {
    using Entry = typename EntryOf<Value>::Type;
    if constexpr (HasShown<Value>) define<Value>();
    else if constexpr (!std::is_void_v<Entry>) define_within<Entry>();
  }
  template <HasShown Of>
  void define() {
    if (!defined_.insert(Shown<Of>::name).second) return;
    json_.key(Shown<Of>::name);
    json_.open_object();
    thing<Of>();
    json_.close_object();
    define_parts<Of>();
  }

  JsonText json_;
  std::set<std::string_view> defined_;
};

}  // namespace

std::string answer_schema() { return SchemaOf().document<Answer>("Stringcourse answer"); }
std::string refusals_schema() { return SchemaOf().document<Refusals>("Stringcourse refusals"); }

}  // namespace stringcourse
