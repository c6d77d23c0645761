#pragma once
// The JSON writer: walks the field tables. Internal to document/.
#include <concepts>
#include <ranges>
#include <string_view>
#include <type_traits>

#include "document/json_out.hpp"
#include "document/shown.hpp"
#include "job/enum_names.hpp"
#include "measure/notation.hpp"

namespace stringcourse::document {

inline void put(JsonOut& out, const View&, bool value) { out.truth(value); }
template <std::integral Number>
  requires(!std::same_as<Number, bool>)
void put(JsonOut& out, const View&, Number value) {
  out.number(static_cast<std::int64_t>(value));
}
inline void put(JsonOut& out, const View&, std::string_view value) { out.text(value); }
template <std::same_as<Fact> Of>
void put(JsonOut& out, const View& view, const Of& value) {
  out.text(words::told(value, view.reader()));
}
inline void put(JsonOut& out, const View&, const Nanometres& value) { out.number(value.count); }
inline void put(JsonOut& out, const View&, const Verbatim& value) { out.raw(value.json); }
void put(JsonOut& out, const View& view, Length value);
void put(JsonOut& out, const View& view, const Rounded& value);
void put(JsonOut& out, const View& view, PlanPoint value);
template <class Enum>
  requires std::is_enum_v<Enum>
void put(JsonOut& out, const View&, Enum value) {
  out.text(enum_name(value));
}
template <HasShown Of>
void put(JsonOut& out, const View& view, const Of& of);
template <std::ranges::range List>
  requires(!std::convertible_to<List, std::string_view>)
void put(JsonOut& out, const View& view, const List& list) {
  out.list([&] {
    for (const auto& entry : list) put(out, view, entry);
  });
}

template <class Read, class Of>
decltype(auto) read_of(const Read& read, const View& view, const Of& of) {
  if constexpr (std::is_member_pointer_v<Read>) return (of.*read);
  else return read(view, of);
}

/// One field; nothing where it is empty. `name`: "" in a list.
template <class Read, class Of>
void put_field(JsonOut& out, const View& view, std::string_view name, const Read& read, const Of& of) {
  decltype(auto) value = read_of(read, view, of);
  const auto put_named = [&](const auto& there) {
    if (!name.empty()) out.name(name);
    put(out, view, there);
  };
  if constexpr (OptionalOf<std::remove_cvref_t<decltype(value)>>::value) {
    if (value) put_named(*value);
  } else {
    put_named(value);
  }
}

/// Which fields of a table are put.
enum class Fields { All, Brief };

/// The field of that place in the table. Its name and how it is read are constants here, so that no program carries the
/// descriptions, which only the schema tells.
template <std::size_t Place, Fields Which, HasShown Of>
void put_nth(JsonOut& out, const View& view, const Of& of) {
  using Table = std::remove_cvref_t<decltype(Shown<Of>::fields)>;
  if constexpr (Which == Fields::All || kIsBrief<std::tuple_element_t<Place, Table>>) {
    constexpr bool is_list = requires { Shown<Of>::is_list; };
    constexpr std::string_view name = is_list ? std::string_view() : std::get<Place>(Shown<Of>::fields).name;
    constexpr auto read = std::get<Place>(Shown<Of>::fields).read;
    put_field(out, view, name, read, of);
  }
}

template <Fields Which, HasShown Of>
void put_fields(JsonOut& out, const View& view, const Of& of) {
  using Table = std::remove_cvref_t<decltype(Shown<Of>::fields)>;
  [&]<std::size_t... Place>(std::index_sequence<Place...>) {
    (put_nth<Place, Which>(out, view, of), ...);
  }(std::make_index_sequence<std::tuple_size_v<Table>>());
}

template <HasShown Of>
void put(JsonOut& out, const View& view, const Of& of) {
  constexpr bool is_list = requires { Shown<Of>::is_list; };
  if constexpr (requires { Shown<Of>::on_own_line; }) out.line_break();
  const auto fill = [&] { put_fields<Fields::All>(out, view, of); };
  if constexpr (is_list) out.list(fill);
  else out.object(fill);
}

}  // namespace stringcourse::document
