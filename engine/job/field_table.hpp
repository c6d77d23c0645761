#pragma once
// What a field table is made of. One table for each struct of the job (job/tables.hpp) is the only place that knows the
// names, limits and meanings of its fields; reader, writer and schema all walk the tables.
#include <cstddef>
#include <cstdint>
#include <string_view>
#include <tuple>

namespace stringcourse {

/// Required: must stand in the document. Shown: may be absent, is always written. Optional: left out at its default.
enum class Need { Required, Shown, Optional };

enum class LengthRange { AboveZero, ZeroOrMore, AnySign };  // all at most 10 km either way

/// Label: one line, may be empty. Name: one line, not empty. Lines: may have line breaks and tabs, may be empty.
enum class TextRule { Label, Name, Lines };

inline constexpr std::int64_t kLongestLengthText = 60;  // characters of a length's text

enum class ListOrder { Any, Distinct, Rising };

/// Limits of one field's value. Only those that belong to its type are used; a list's entries obey the same limits.
struct Bounds {
  std::int64_t least = 0, most = 0;  // whole numbers, both included
  LengthRange lengths = LengthRange::AboveZero;
  TextRule text = TextRule::Label;
  std::size_t longest_text = 200;    // characters (code points)
  std::size_t most_entries = 0;      // lists
  ListOrder order = ListOrder::Any;  // lists
};

template <class Struct, class Member>
struct Field {
  std::string_view name;  // in the document
  Member Struct::* member;
  Need need;
  std::string_view description;  // one sentence with the unit, for the schema and for remedies
  Bounds bounds;
};

template <class Struct, class Member>
constexpr Field<Struct, Member> field(std::string_view name, Member Struct::* member, Need need,
                                      std::string_view description, Bounds bounds = {}) {
  return {name, member, need, description, bounds};
}

/// The table of one struct: `name` (as in "a side"), `description`, `fields` (a tuple of Field); where they apply,
/// `exactly_one` and `at_most_one`, names of fields that exclude each other.
template <class Struct>
struct Table;

template <class T>
concept HasTable = requires { Table<T>::fields; };

/// Calls visit(field) for every field of the struct, in the order of the document.
template <HasTable Struct, class Visit>
constexpr void for_each_field(Visit&& visit) {
  std::apply([&](const auto&... fields) { (visit(fields), ...); }, Table<Struct>::fields);
}

template <class T>
struct Type {};  // names a type in a call

}  // namespace stringcourse
