#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <tuple>
#include <type_traits>
#include <utility>
#include <vector>

#include "job/enum_names.hpp"
#include "job/json_text.hpp"
#include "job/tables.hpp"
#include "job/write.hpp"

namespace stringcourse {
namespace {

/// Walks the field tables and writes what they allow. JSON Schema 2020-12 has no exact lengths: a length is a text
/// here, and the reader says more.
class SchemaWriter {
 public:
  std::string document() && {
    json_.open_object();
    json_.text_member("$schema", "https://json-schema.org/draft/2020-12/schema");
    json_.text_member("title", "Stringcourse job");
    object_keywords<Job>();
    json_.key("$defs");
    json_.open_object();
    definitions(Type<JobStructs>{});
    json_.close_object();
    json_.close_object();
    return std::move(json_).finish();
  }

 private:
  template <class First, class... Others>
  void definitions(Type<std::tuple<First, Others...>>) {
    (definition<Others>(), ...);
  }

  template <HasTable Struct>
  void definition() {
    json_.key(Table<Struct>::name);
    json_.open_object();
    object_keywords<Struct>();
    json_.close_object();
  }

  template <HasTable Struct>
  void object_keywords() {
    json_.text_member("description", Table<Struct>::description);
    json_.text_member("type", "object");
    json_.key("properties");
    json_.open_object();
    for_each_field<Struct>([&](const auto& field) { property(field); });
    json_.close_object();
    required<Struct>();
    json_.key("additionalProperties");
    json_.truth(false);
    choices<Struct>();
  }

  template <class Struct, class Member>
  void property(const Field<Struct, Member>& field) {
    json_.key(field.name);
    json_.open_object();
    json_.text_member("description", field.description);
    keywords(Type<Member>{}, field.bounds);
    json_.close_object();
  }

  template <HasTable Struct>
  void required() {
    json_.key("required");
    json_.open_list();
    for_each_field<Struct>([&](const auto& field) {
      if (field.need == Need::Required) json_.text(field.name);
    });
    json_.close_list();
  }

  template <HasTable Struct>
  void choices() {
    if constexpr (requires { Table<Struct>::exactly_one; }) {
      json_.key("oneOf");
      json_.open_list();
      for (const std::string_view name : Table<Struct>::exactly_one) presence(std::array{name});
      json_.close_list();
    }
    if constexpr (requires { Table<Struct>::at_most_one; }) {
      static_assert(Table<Struct>::at_most_one.size() == 2);  // "not both" says it only for two
      json_.key("not");
      presence(Table<Struct>::at_most_one);
    }
  }

  template <std::size_t Count>
  void presence(const std::array<std::string_view, Count>& names) {
    json_.open_object();
    json_.key("required");
    json_.open_list();
    for (const std::string_view name : names) json_.text(name);
    json_.close_list();
    json_.close_object();
  }

  void keywords(Type<bool>, const Bounds&) { json_.text_member("type", "boolean"); }
  void keywords(Type<int>, const Bounds& bounds) {
    json_.text_member("type", "integer");
    json_.whole_member("minimum", bounds.least);
    json_.whole_member("maximum", bounds.most);
  }
  void keywords(Type<std::string>, const Bounds& bounds) {
    json_.text_member("type", "string");
    if (bounds.text == TextRule::Name) json_.whole_member("minLength", 1);
    json_.whole_member("maxLength", static_cast<std::int64_t>(bounds.longest_text));
    json_.text_member("pattern", bounds.text == TextRule::Lines
                                     ? R"(^[^\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f]*$)"
                                     : R"(^[^\u0000-\u001f\u007f-\u009f]*$)");
  }
  void keywords(Type<Length>, const Bounds&) { length_keywords(); }
  void keywords(Type<StatedLength>, const Bounds&) { length_keywords(); }
  void length_keywords() {
    json_.text_member("type", "string");
    json_.whole_member("minLength", 1);
    json_.whole_member("maxLength", kLongestLengthText);
  }
  template <class Enum>
    requires std::is_enum_v<Enum>
  void keywords(Type<Enum>, const Bounds&) {
    json_.key("enum");
    json_.open_list();
    for (std::size_t index = 0; index < enum_count<Enum>(); ++index) json_.text(enum_name(static_cast<Enum>(index)));
    json_.close_list();
  }
  template <class Value>
  void keywords(Type<std::optional<Value>>, const Bounds& bounds) {
    keywords(Type<Value>{}, bounds);
  }
  template <class Entry>
  void keywords(Type<std::vector<Entry>>, const Bounds& bounds) {
    json_.text_member("type", "array");
    json_.whole_member("maxItems", static_cast<std::int64_t>(bounds.most_entries));
    if (bounds.order != ListOrder::Any) {
      json_.key("uniqueItems");
      json_.truth(true);
    }
    json_.key("items");
    json_.open_object();
    keywords(Type<Entry>{}, bounds);
    json_.close_object();
  }
  template <HasTable Struct>
  void keywords(Type<Struct>, const Bounds&) {
    json_.text_member("$ref", std::string("#/$defs/") + std::string(Table<Struct>::name));
  }

  JsonText json_;
};

}  // namespace

std::string job_schema() { return SchemaWriter{}.document(); }

}  // namespace stringcourse
