#pragma once
// What a field table of a document is made of. One table for each thing that a document shows is the only place that
// knows the names and meanings of its fields: the JSON writer (put.hpp), the schema (schema.cpp) and through it the
// page's types all walk the tables.
//
// A field is read from the thing by a member or by a function of the view and the thing. What it reads says how it
// stands in the document: a Length as its exact text and nanometres, a Rounded one as the tape shows it, an enum by its
// name (job/enum_names.hpp), a thing that has a table as an object, a range as a list; an optional one is left out
// where it is empty.
#include <cstddef>
#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <tuple>
#include <type_traits>
#include <utility>

#include "answer/answer.hpp"
#include "words/language.hpp"

namespace stringcourse::document {

/// Whether the lists of what is placed (runs with their pieces, bars) are filled; Omit leaves them empty, for a page
/// whose user is moving something and looks at drawings and tallies.
enum class Placed { Write, Omit };

/// What fields are read in.
struct View {
  const Answer& answer;
  Placed placed = Placed::Write;
  const words::Language& language = words::english();

  [[nodiscard]] const Building& building() const { return answer.building; }
  [[nodiscard]] Tape tape() const { return answer.building.tape; }
  [[nodiscard]] words::Reader reader() const { return {tape(), language}; }
  [[nodiscard]] const Wall& wall(int index) const { return answer.building.walls[static_cast<std::size_t>(index)]; }
  [[nodiscard]] const ResolvedOpening& opening(int index) const {
    return answer.building.openings[static_cast<std::size_t>(index)];
  }
  [[nodiscard]] const std::string& series_id(int index) const {
    return answer.building.series[static_cast<std::size_t>(index)].id;
  }
};

/// A value that was worked out of readings: its text is rounded to the tape, its nanometres are not.
struct Rounded {
  Length length;
};
/// A count of nanometres and no text.
struct Nanometres {
  std::int64_t count = 0;
};
/// JSON already.
struct Verbatim {
  std::string json;
};

template <class Read>
struct ShownField {
  std::string_view name;
  Read read;                     // a member, or a function of (const View&, const Of&)
  std::string_view description;  // with the unit or sign where it has one; may be empty
};

template <class Read>
constexpr ShownField<Read> shown(std::string_view name, Read read, std::string_view description = {}) {
  return {name, read, description};
}

/// A field that a brief answer has too.
template <class Read>
struct BriefField : ShownField<Read> {};
template <class Read>
constexpr BriefField<Read> brief(ShownField<Read> field) {
  return {field};
}
template <class Field>
inline constexpr bool kIsBrief = false;
template <class Read>
inline constexpr bool kIsBrief<BriefField<Read>> = true;

/// A Length that was worked out of readings.
template <class Of>
constexpr auto rounded(std::string_view name, Length Of::* member, std::string_view description = {}) {
  return shown(name, [member](const View&, const Of& of) { return Rounded{of.*member}; }, description);
}
/// A Length as nanometres alone.
template <class Of>
constexpr auto nanometres(std::string_view name, Length Of::* member, std::string_view description = {}) {
  return shown(
      name, [member](const View&, const Of& of) { return Nanometres{(of.*member).in_nanometres()}; }, description);
}
/// The name of the side of that index.
template <class Of>
constexpr auto side(std::string_view name, std::int32_t Of::* member, std::string_view description = {}) {
  return shown(
      name, [member](const View& view, const Of& of) -> const std::string& { return view.wall(of.*member).name; },
      description);
}
/// The name of the opening of that index; left out below zero.
template <class Of>
constexpr auto opening(std::string_view name, std::int32_t Of::* member, std::string_view description = {}) {
  return shown(
      name,
      [member](const View& view, const Of& of) {
        return of.*member < 0 ? std::optional<std::string_view>()
                              : std::optional<std::string_view>(view.opening(of.*member).name);
      },
      description);
}
/// The id of the series of that index.
template <class Of>
constexpr auto series(std::string_view name, int Of::* member) {
  return shown(name,
               [member](const View& view, const Of& of) -> const std::string& { return view.series_id(of.*member); });
}

/// The table of one thing: `name` (of its type in schema and page), `description`, `fields` (a tuple of ShownField).
/// With `is_list` its fields stand in a list, without names, the optional ones last. With `on_own_line` each begins a
/// line.
template <class Of>
struct Shown;

template <class Of>
concept HasShown = requires { Shown<Of>::fields; };

template <class Value>
struct OptionalOf : std::false_type {
  using Type = Value;
};
template <class Value>
struct OptionalOf<std::optional<Value>> : std::true_type {
  using Type = Value;
};

/// What a field reads, without its reference.
template <class Of, class Read>
using ValueOf = std::remove_cvref_t<decltype([](const Read& read, const View& view, const Of& of) -> decltype(auto) {
  if constexpr (std::is_member_pointer_v<Read>) return (of.*read);
  else return read(view, of);
}(std::declval<const Read&>(), std::declval<const View&>(), std::declval<const Of&>()))>;

/// Calls visit(field) for every field, in the order of the document.
template <HasShown Of, class Visit>
constexpr void for_each_shown(Visit&& visit) {
  std::apply([&](const auto&... fields) { (visit(fields), ...); }, Shown<Of>::fields);
}

}  // namespace stringcourse::document
